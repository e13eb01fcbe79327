"""The command line: commands, options, exit statuses. Everything heavy is imported inside its command."""

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Literal, NoReturn

import typer

if TYPE_CHECKING:
    from setwright.checked import Checked
    from setwright.own.plan import Sized

app = typer.Typer(
    name="setwright",
    help="Check a strength week against the anatomy and print its sheets.",
    no_args_is_help=True,
    pretty_exceptions_enable=False,
    rich_markup_mode=None,
)

PlanFile = Annotated[Path, typer.Argument(metavar="FILE", help="A plan file (YAML).")]


def _stop(message: str) -> NoReturn:
    """Print one sentence on the error stream and leave with 2, "could not run"."""
    typer.echo(f"setwright: {message}", err=True)
    raise typer.Exit(2)


def _plan_text(file: Path) -> str:
    """The text of a plan, "-" being standard input, or the end of the command."""
    from setwright.files import CannotRun, decode, read_text

    try:
        return decode(sys.stdin.buffer.read(), "standard input") if str(file) == "-" else read_text(file)
    except CannotRun as stop:
        _stop(str(stop))


def _plans(named: list[Path]) -> list[Path]:
    """The plan files named, folders replaced by the plans in them."""
    from setwright.files import plans_in

    plans = [plan for one in named for plan in plans_in(one)]
    if not plans:
        _stop(f"there is no plan in {named[0]}: a plan is a .yaml file with a line `plan: its name`")
    return plans


def _checked(file: Path) -> "Checked":
    """The plan read, resolved, covered and judged."""
    from functools import partial

    from setwright.checked import check_plan
    from setwright.files import read_beside

    return check_plan(str(file), _plan_text(file), partial(read_beside, file))


def _movements(plan: Path | None, athlete: str | None) -> "Sized":
    """The library, with a plan's own movements and at the size of one of its athletes."""
    from functools import partial

    from setwright.files import read_beside
    from setwright.library.table import library
    from setwright.model.reader import read_week
    from setwright.own.body import NoSuchBody
    from setwright.own.plan import NotToSize, Sized, sized_library

    if plan is None:
        if athlete is not None:
            _stop("--for needs --plan and the plan that the athlete is in")
        return Sized(library(), 1.0, ())
    read = read_week(str(plan), _plan_text(plan), partial(read_beside, plan))
    try:
        return sized_library(read, athlete)
    except (NotToSize, NoSuchBody) as stop:
        _stop(str(stop))


def _key(name: str, movements: "Sized") -> str:
    """The key of a movement, or the end of the command."""
    from setwright.report.move import not_found

    match = movements.table.find(name)
    if name in movements.unread:
        _stop(f"{name} can't be read as written; `setwright check` and the plan say why")
    if match.key is None:
        _stop(not_found(name, match))
    return match.key


def _in_colour() -> bool:
    """Colour only on a terminal, and never against NO_COLOR (https://no-color.org)."""
    import os

    return sys.stdout.isatty() and not os.environ.get("NO_COLOR")


def _version(wanted: bool) -> None:
    if wanted:
        from setwright import __version__

        typer.echo(f"setwright {__version__}")
        raise typer.Exit


@app.callback()
def setwright(
    version: Annotated[
        bool, typer.Option("--version", callback=_version, is_eager=True, help="Print the version and leave.")
    ] = False,
) -> None:
    """Check a strength week against the anatomy and print its sheets."""


@app.command(epilog="Example:  setwright check week-3.yaml --format short")
def check(
    files: Annotated[
        list[Path],
        typer.Argument(
            metavar="FILE|FOLDER|-...", help="Plan files (YAML), folders of them, - for standard input."
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
) -> None:
    """Check plans before publishing: what they cover, what is missing, what can't be read.

    Exit status: 0 nothing at or above --fail-on, 1 findings, 2 could not run.
    """
    from setwright.findings import Level, exit_status

    checked = [_checked(file) for file in _plans(files)]
    if form == "text":
        from setwright.report import terminal

        typer.echo("\n".join(terminal.text(one, colour=_in_colour()) for one in checked), nl=False)
    else:
        from setwright.report import machine

        if form == "json":
            typer.echo(machine.json_text(checked, with_names=with_names), nl=False)
        else:
            lines = machine.short if form == "short" else machine.github
            typer.echo("".join(lines(one, with_names=with_names) for one in checked), nl=False)
    raise typer.Exit(exit_status([f for one in checked for f in one.findings], Level[fail_on]))


@app.command(epilog="Example:  setwright read week-3.yaml")
def read(file: PlanFile) -> None:
    """Say every line of a plan back in plain words, with the answers in force for what was not written."""
    from functools import partial

    from setwright.files import read_beside
    from setwright.findings import exit_status
    from setwright.own.plan import read_plan
    from setwright.report.read import read_text

    plan, table = read_plan(str(file), _plan_text(file), partial(read_beside, file))
    typer.echo(read_text(plan, table), nl=False)
    raise typer.Exit(exit_status(plan.findings))


@app.command(epilog='Example:  setwright move "flat barbell bench press" "level cable crossover"')
def move(
    names: Annotated[
        list[str] | None, typer.Argument(metavar="[NAME]...", help="Movements; none lists them all.")
    ] = None,
    form: Annotated[Literal["text", "json"], typer.Option("--format", help="Words, or JSON.")] = "text",
    picture: Annotated[
        Path | None, typer.Option(metavar="FILE.svg", help="Also draw the movement's picture into this file.")
    ] = None,
    plan: Annotated[
        Path | None, typer.Option(metavar="FILE", help="Know the movements of this plan's own too.")
    ] = None,
    athlete: Annotated[
        str | None, typer.Option("--for", metavar="NAME", help="Figures for this athlete of the plan.")
    ] = None,
) -> None:
    """Explain one movement, compare several, or list them all."""
    from setwright.files import CannotRun, write_whole
    from setwright.report import move as moves

    movements = _movements(plan, athlete)
    table = movements.table
    keys = [_key(name, movements) for name in names or ()]
    if picture is not None:
        if len(keys) != 1:
            _stop("--picture draws one movement: name one")
        if table.movement(keys[0]).get("own"):
            _stop("--picture draws movements of the library, not those of a plan's own")
        from setwright.sheets.figures import NoPicture, movement_picture_svg

        try:
            write_whole(picture, movement_picture_svg(keys[0]))
        except (CannotRun, NoPicture) as stop:
            _stop(str(stop))
    chosen = [movements.movement(key) for key in keys or table.keys()]
    if form == "json":
        typer.echo(moves.move_json(chosen), nl=False)
    elif keys:
        typer.echo(moves.move_text(chosen), nl=False)
        if athlete is not None:
            typer.echo(moves.sized_for(athlete, movements.factor), nl=False)
    else:
        typer.echo(moves.list_text(chosen), nl=False)


@app.command(epilog="Example:  setwright sheet week-3.yaml --paper letter --out prints")
def sheet(
    file: PlanFile,
    kind: Annotated[Literal["all", "session", "week"], typer.Option(help="Which sheets.")] = "all",
    paper: Annotated[Literal["a4", "letter"], typer.Option(help="The paper they are printed on.")] = "a4",
    out: Annotated[Path, typer.Option(metavar="FOLDER", help="Where the HTML files go.")] = Path("sheets"),
) -> None:
    """Write the sheets of a plan as HTML files to print: session sheets and the week overview."""
    import datetime as dt

    from setwright.files import CannotRun, write_whole
    from setwright.findings import Level
    from setwright.report import terminal
    from setwright.sheets import sheet_html, sheet_name

    checked = _checked(file)
    if any(f.level is Level.error for f in checked.findings):
        typer.echo(terminal.text(checked, colour=_in_colour()), nl=False)
        _stop("no sheet is written while the plan has errors")
    for one in ("session", "week") if kind == "all" else (kind,):
        target = out / sheet_name(checked, one, paper)
        try:
            write_whole(target, sheet_html(checked, kind=one, paper=paper, printed=dt.date.today()))  # noqa: DTZ011 - the coach's own date
        except CannotRun as stop:
            _stop(str(stop))
        typer.echo(f"{target}  ({one}, {paper})")


@app.command(epilog="Example:  setwright swap week-3.yaml")
def swap(
    file: PlanFile,
    athlete: Annotated[
        str | None,
        typer.Option("--for", metavar="NAME", help="What one athlete does instead, inside their limits."),
    ] = None,
) -> None:
    """Propose the smallest set of changes that closes the open gaps; prints the lines to type, edits nothing.

    Exit status: 0 nothing stays open, 1 something does, 2 could not run.
    """
    from functools import partial

    from setwright.files import read_beside
    from setwright.report.swap import swap_text
    from setwright.report.swap_for import swap_for_text
    from setwright.swapping.instead import propose_for
    from setwright.swapping.proposal import NotToSwap, propose

    checked = _checked(file)
    try:
        if athlete is not None:
            one = propose_for(checked, athlete)
            text, left = swap_for_text(one), any(line.movement is None for line in one.lines)
        else:
            proposal = propose(checked, partial(read_beside, file))
            text, left = swap_text(proposal), bool(proposal.found.left)
    except NotToSwap as stop:
        _stop(str(stop))
    typer.echo(text, nl=False)
    raise typer.Exit(int(left))


@app.command(epilog="Example:  setwright explain heavy-line-not-finished")
def explain(
    rule: Annotated[
        str | None,
        typer.Argument(metavar="[RULE|sources]", help="A rule's id, or sources; none lists the rules."),
    ] = None,
) -> None:
    """Say what a rule looks at, why, what to change, and on whose word; or list every source."""
    from setwright.report.explain import explain as told

    text, known = told(rule)
    if not known:
        _stop(text)
    typer.echo(text, nl=False)


def main() -> None:
    """Run the command line, without collecting garbage: a command is over before it would matter."""
    import gc

    gc.disable()
    app()
