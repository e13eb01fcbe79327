"""The command line: commands, options, exit statuses. Everything heavy is imported inside its command."""

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Literal

import typer

from setwright.commands import floor, folders, records
from setwright.commands.shared import AnyFile, PlanFile, Week
from setwright.commands.shared import checked as _checked
from setwright.commands.shared import in_colour as _in_colour
from setwright.commands.shared import plan_text as _plan_text
from setwright.commands.shared import plans as _plans
from setwright.commands.shared import stop as _stop
from setwright.commands.shared import week_of as _week_of

if TYPE_CHECKING:
    from collections.abc import Callable

    from setwright.checked import Checked
    from setwright.own.plan import Sized

app = typer.Typer(
    name="setwright",
    help="Check a strength week against the anatomy and print its sheets.",
    no_args_is_help=True,
    pretty_exceptions_enable=False,
    rich_markup_mode=None,
)


def _movements(plan: Path | None, athlete: str | None) -> "Sized":
    """The library, with a plan's own movements and at the size of one of its athletes."""
    from functools import partial

    from setwright.files import read_beside
    from setwright.library.table import library
    from setwright.model.reader import read_block
    from setwright.own.body import NoSuchBody
    from setwright.own.plan import NotToSize, Sized, sized_library

    if plan is None:
        if athlete is not None:
            _stop("--for needs --plan and the plan that the athlete is in")
        return Sized(library(), 1.0, ())
    read = read_block(str(plan), _plan_text(plan), partial(read_beside, plan))
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
    """Check plans before publishing: what they cover, what is missing, what can't be read.

    A squad, gym or record file named alone is read, and what can't be read in it is said.

    Exit status: 0 nothing at or above --fail-on, 1 findings, 2 could not run.
    """
    from functools import partial

    from setwright.findings import Level, exit_status

    if summary and form != "text":
        _stop("--summary names athletes and is for the coach's own screen: it is text, no other --format")
    if week is not None and not summary:
        _stop("--week goes with --summary: without it every week of the plan is checked")
    say = partial(_at_a_glance, week=week) if summary else _sayer(form, with_names=with_names)
    if watch:
        _watch(files, form, say)
    elif form == "json":
        from setwright.report import machine

        checked = [_checked(file) for file in _plans(files)]
        typer.echo(machine.json_text(checked, with_names=with_names), nl=False)
        raise typer.Exit(exit_status([f for one in checked for f in one.findings], Level[fail_on]))
    else:
        status = 0
        for number, file in enumerate(_plans(files)):
            one = _checked(file)
            typer.echo(("\n" if number and form == "text" else "") + say(one), nl=False)
            status = max(status, exit_status(one.findings, Level[fail_on]))
        raise typer.Exit(status)


def _sayer(form: str, *, with_names: bool) -> "Callable[[Checked], str]":
    """What prints one checked plan: as text, as short lines, or as annotations."""
    from functools import partial

    if form == "text":
        from setwright.report import terminal

        return partial(terminal.text, colour=_in_colour())
    from setwright.report import machine

    return partial(machine.short if form == "short" else machine.github, with_names=with_names)


def _at_a_glance(checked: "Checked", week: int | None) -> str:
    """The half-minute summary of a week; of what is no plan, or could not be read, the whole check."""
    from setwright.report import terminal

    if not checked.weeks:
        return terminal.text(checked, colour=_in_colour())
    from setwright.glance import glance
    from setwright.report.summary import summary_text

    number = _week_of(len(checked.weeks), week, Path(checked.file))
    return summary_text(glance(checked.only(number)))


def _watch(files: list[Path], form: str, say: "Callable[[Checked], str]") -> None:
    """Check and print at each save until Ctrl-C."""
    from functools import partial

    from setwright.watching import watch

    if form == "json":
        _stop("--watch prints again and again, and JSON is one document: take --format text or short")
    if Path("-") in files:
        _stop("--watch needs files: standard input can't be read again")
    watch(files, say, partial(typer.echo, nl=False), redraw=sys.stdout.isatty())


@app.command(epilog="Example:  setwright read week-3.yaml --count")
def read(
    file: AnyFile,
    week: Week = None,
    count: Annotated[
        bool,
        typer.Option(
            "--count", help="Under each line what it counts: sets, hard sets and why, amounts, time."
        ),
    ] = False,
) -> None:
    """Say every line of a plan, squad, gym or record back in plain words, with the answers in force."""
    from functools import partial

    from setwright.files import read_beside
    from setwright.findings import exit_status
    from setwright.model.reader.alone import kind_of, read_alone
    from setwright.own.plan import read_plan
    from setwright.report.read import alone_text, read_text

    text = _plan_text(file)
    kind = kind_of(text)
    if kind is not None:
        alone = read_alone(kind, str(file), text)
        typer.echo(alone_text(alone), nl=False)
        raise typer.Exit(exit_status(alone.findings))
    plan, table = read_plan(str(file), text, partial(read_beside, file))
    if week is not None and plan.weeks:
        _week_of(len(plan.weeks), week, file)
    typer.echo(read_text(plan, table, week, count=count), nl=False)
    raise typer.Exit(exit_status(plan.findings))


@app.command(epilog="Example:  setwright loads week-3.yaml --for juniors")
def loads(
    file: PlanFile,
    week: Week = None,
    who: Annotated[
        str | None, typer.Option("--for", metavar="NAME", help="Of this athlete or group of the squad alone.")
    ] = None,
    form: Annotated[Literal["text", "json"], typer.Option("--format", help="Words, or JSON.")] = "text",
) -> None:
    """Work out each athlete's loads: what was asked, what can be put on here, the plates, and how far off.

    Names stand in it: it is for the coach. Exit status: 0 every load is there, 1 one is not or needs a max,
    2 could not run.
    """
    from setwright.report.loads_view import loads_of, members

    checked = _checked(file, only_plans=True)
    number = _week_of(len(checked.weeks), week, file)
    checked = checked.only(number) if checked.weeks else checked
    if checked.week is None or checked.table is None:
        _stop(f"nothing of {file} could be read; `setwright check {file}` says why")
    names = None if who is None else members(checked.week, who)
    if names is not None and not names:
        _stop(f"nobody in the squad of {file} is called {who}")
    days = loads_of(checked.weeks[0], checked.table, names)
    if form == "json":
        from setwright.report.loads_json import loads_json

        typer.echo(loads_json(checked.week, days), nl=False)
    else:
        from setwright.report.loads import loads_text

        typer.echo(loads_text(checked, checked.week, days), nl=False)
    raise typer.Exit(any(row.missing for day in days for line in day.lines for row in line.rows))


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
    kind: Annotated[
        Literal["all", "week", "session", "rack", "board", "station", "log", "home", "summary"],
        typer.Option(help="Which sheets; the summary is for the coach alone and not among all."),
    ] = "all",
    paper: Annotated[
        Literal["a4", "letter", "a3"], typer.Option(help="The paper they are printed on; a3 for the board.")
    ] = "a4",
    *,
    out: Annotated[Path, typer.Option(metavar="FOLDER", help="Where the files go.")] = Path("sheets"),
    week: Week = None,
    large: Annotated[bool, typer.Option("--large", help="Session sheets in large print.")] = False,
    pdf: Annotated[bool, typer.Option("--pdf", help="Also a PDF of each (needs setwright[pdf]).")] = False,
    apart: Annotated[
        bool, typer.Option("--apart", help="One file a sheet, to send to each athlete.")
    ] = False,
    csv: Annotated[bool, typer.Option("--csv", help="Also the week as a table for spreadsheets.")] = False,
) -> None:
    """Write the sheets of a plan as HTML files to print: docs/sheets.md says what each kind is for."""
    import datetime as dt

    from setwright.files import CannotRun
    from setwright.findings import Level
    from setwright.report import terminal
    from setwright.sheets import NothingToPrint, Order, WrongPaper, asked, print_sheets

    try:
        wanted = asked(kind, paper, large=large)
    except WrongPaper as stop:
        _stop(str(stop))
    checked = _checked(file, only_plans=True)
    if any(f.level is Level.error for f in checked.findings):
        typer.echo(terminal.text(checked, colour=_in_colour()), nl=False)
        _stop("no sheet is written while the plan has errors")
    number = _week_of(len(checked.weeks), week, file)
    checked = checked.only(number)
    if checked.week is None or not checked.week.sessions:
        from setwright.report.stages import left_out

        if checked.week is not None and (held := "; ".join(left_out(checked.week))):
            _stop(f"no session is in force, so no sheet is written: {held}")
        _stop(f"{file}: there is no training in week {number}, so nothing to print")
    order = Order(wanted, out, apart=apart, pdf=pdf, csv=csv)
    today = dt.date.today()  # noqa: DTZ011 - the coach's own date
    try:
        for line in print_sheets(checked, order, today, _progress if sys.stderr.isatty() else None):
            typer.echo(line)
    except (CannotRun, NothingToPrint) as stop:
        _stop(str(stop))


def _progress(text: str) -> None:
    """How far a long print is, on one line of the terminal that the next text writes over."""
    typer.echo(f"\r\033[K{text}\r", nl=False, err=True)


@app.command(epilog="Example:  setwright swap week-3.yaml")
def swap(
    file: PlanFile,
    athlete: Annotated[
        str | None,
        typer.Option("--for", metavar="NAME", help="What one athlete does instead, inside their limits."),
    ] = None,
    week: Week = None,
) -> None:
    """Propose the smallest set of changes that closes the open gaps; prints the lines to type, edits nothing.

    Of a plan of several weeks the first with an open gap is taken, unless --week names one.

    Exit status: 0 nothing stays open, 1 something does, 2 could not run.
    """
    from functools import partial

    from setwright.files import read_beside
    from setwright.report.swap import swap_text
    from setwright.report.swap_for import swap_for_text
    from setwright.swapping.instead import propose_for
    from setwright.swapping.proposal import NotToSwap, open_week, propose

    checked = _checked(file, only_plans=True)
    first = open_week(checked, against_one=athlete is not None)
    number = first if week is None else _week_of(len(checked.weeks), week, file)
    try:
        if athlete is not None:
            one = propose_for(checked, athlete, number)
            text, left = swap_for_text(one), any(line.movement is None for line in one.lines)
        else:
            proposal = propose(checked, partial(read_beside, file), number)
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


@app.command(epilog="Example:  setwright schema plan --out plan.schema.json")
def schema(
    kind: Annotated[
        Literal["plan", "squad", "gym", "record"],
        typer.Argument(metavar="KIND", help="The kind of file: plan, squad, gym or record."),
    ],
    out: Annotated[
        Path | None, typer.Option(metavar="FILE", help="Write it into this file instead of printing it.")
    ] = None,
) -> None:
    """Print the JSON Schema with which an editor completes and explains what is typed: docs/editor.md."""
    from setwright.files import CannotRun, write_whole
    from setwright.schema import schema_text

    text = schema_text(kind)
    if out is None:
        typer.echo(text, nl=False)
        return
    try:
        write_whole(out, text)
    except CannotRun as stop:
        _stop(str(stop))
    typer.echo(f"{out}  (first line of a {kind} beside it: # yaml-language-server: $schema={out.name})")


app.add_typer(floor.app)
app.add_typer(records.app)
app.add_typer(folders.app)


def main() -> None:
    """Run the command line, without collecting garbage: a command is over before it would matter."""
    import gc

    gc.disable()
    app()
