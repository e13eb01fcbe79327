"""A plan checked, watched, and read back."""

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Literal

import typer

from setwright.commands import shared

if TYPE_CHECKING:
    from collections.abc import Callable

    from setwright.checked import Checked

app = typer.Typer(rich_markup_mode=None)


@app.command(epilog="Example:  setwright check week-3.yaml --format short")
def check(
    files: Annotated[
        list[Path],
        typer.Argument(
            metavar="FILE|FOLDER|-...",
            help="Plans, squads, gyms or records (YAML), folders of plans and records, - for standard input.",
        ),
    ],
    form: Annotated[
        Literal["text", "short", "json", "github"], typer.Option("--format", help="How findings are printed.")
    ] = "text",
    fail_on: Annotated[
        Literal["error", "gap", "advice"],
        typer.Option(help="The mildest finding that makes the exit status 1."),
    ] = "gap",
    with_names: Annotated[
        bool,
        typer.Option("--with-names", help="Athletes' names in machine output too; logs are read by others."),
    ] = False,
    watch: Annotated[
        bool, typer.Option("--watch", help="Check again at each save of the plans or of files they name.")
    ] = False,
    *,
    summary: Annotated[
        bool, typer.Option("--summary", help="Eight answers in half a minute, for the coach's own screen.")
    ] = False,
    week: Annotated[
        int | None, typer.Option("--week", metavar="N", help="With --summary: which week of several.")
    ] = None,
) -> None:
    """Say what plans cover, what is missing, what can't be read.

    A squad, gym or record file named alone is read, and what can't be read in it is said.

    Exit status: 0 nothing at or above --fail-on, 1 findings, 2 could not run.
    """
    from functools import partial

    from setwright.findings import Level, exit_status

    if summary and form != "text":
        shared.stop(
            "--summary names athletes and is for the coach's own screen: it is text, no other --format"
        )
    if week is not None and not summary:
        shared.stop("--week goes with --summary: without it every week of the plan is checked")
    say = partial(_at_a_glance, week=week) if summary else _sayer(form, with_names=with_names)
    if watch:
        _watch(files, form, say)
    elif form == "json":
        from setwright.report import machine

        checked = [shared.checked(file) for file in shared.plans(files)]
        typer.echo(machine.json_text(checked, with_names=with_names), nl=False)
        raise typer.Exit(exit_status([f for one in checked for f in one.findings], Level[fail_on]))
    else:
        status = 0
        for number, file in enumerate(shared.plans(files)):
            one = shared.checked(file)
            typer.echo(("\n" if number and form == "text" else "") + say(one), nl=False)
            status = max(status, exit_status(one.findings, Level[fail_on]))
        raise typer.Exit(status)


def _sayer(form: str, *, with_names: bool) -> "Callable[[Checked], str]":
    """What prints one checked plan: as text, as short lines, or as annotations."""
    from functools import partial

    if form == "text":
        from setwright.report import terminal

        return partial(terminal.text, colour=shared.in_colour())
    from setwright.report import machine

    return partial(machine.short if form == "short" else machine.github, with_names=with_names)


def _at_a_glance(checked: "Checked", week: int | None) -> str:
    """The half-minute summary of a week; of what is no plan, or could not be read, the whole check."""
    from setwright.report import terminal

    if not checked.weeks:
        return terminal.text(checked, colour=shared.in_colour())
    from setwright.glance import glance
    from setwright.report.summary import summary_text

    number = shared.week_of(len(checked.weeks), week, Path(checked.file))
    return summary_text(glance(checked.only(number)))


def _watch(files: list[Path], form: str, say: "Callable[[Checked], str]") -> None:
    """Check and print at each save until Ctrl-C."""
    from functools import partial

    from setwright.watching import watch

    if form == "json":
        shared.stop("--watch prints again and again, and JSON is one document: take --format text or short")
    if Path("-") in files:
        shared.stop("--watch needs files: standard input can't be read again")
    watch(files, say, partial(typer.echo, nl=False), redraw=sys.stdout.isatty())


@app.command(epilog="Example:  setwright read week-3.yaml --count")
def read(
    file: shared.AnyFile,
    week: shared.Week = None,
    count: Annotated[
        bool,
        typer.Option(
            "--count", help="Under each line what it counts: sets, hard sets and why, amounts, time."
        ),
    ] = False,
) -> None:
    """Say every line back in plain words. Of a plan, squad, gym or record, with the answers in force."""
    from functools import partial

    from setwright.files import read_beside
    from setwright.findings import exit_status
    from setwright.model.reader.alone import kind_of, read_alone
    from setwright.own.plan import read_plan
    from setwright.report.read import alone_text, read_text

    text = shared.plan_text(file)
    kind = kind_of(text)
    if kind is not None:
        alone = read_alone(kind, str(file), text)
        typer.echo(alone_text(alone), nl=False)
        raise typer.Exit(exit_status(alone.findings))
    plan, table = read_plan(str(file), text, partial(read_beside, file))
    if week is not None and plan.weeks:
        shared.week_of(len(plan.weeks), week, file)
    typer.echo(read_text(plan, table, week, count=count), nl=False)
    raise typer.Exit(exit_status(plan.findings))
