"""What the commands share: their arguments, a plan read or checked, and one sentence to leave with."""

import sys
from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Literal, NoReturn

import typer

if TYPE_CHECKING:
    import datetime as dt

    from setwright.checked import Checked
    from setwright.files import CannotRun
    from setwright.library.table import Library
    from setwright.model.plan import Week as PlanWeek

AnyFile = Annotated[Path, typer.Argument(metavar="FILE", help="A plan, squad, gym or record file (YAML).")]
Week = Annotated[
    int | None, typer.Option("--week", metavar="N", help="Which week of a plan of several weeks.")
]
TextOrJson = Annotated[Literal["text", "json"], typer.Option("--format", help="Words, or JSON.")]
NamesInJson = Annotated[
    bool,
    typer.Option("--with-names", help="Athletes' names in JSON too; machine output is read by others."),
]
PlanFile = Annotated[Path, typer.Argument(metavar="FILE", help="A plan file (YAML).")]


def stop(message: str) -> NoReturn:
    """Print one sentence on the error stream and leave with 2, "could not run"."""
    stop_with(2, message)


def plan_text(file: Path) -> str:
    """The text of a plan, "-" being standard input, or the end of the command."""
    from setwright.files import MAX_BYTES, CannotRun, decode, read_text

    try:
        if str(file) == "-":
            return decode(sys.stdin.buffer.read(MAX_BYTES + 1), "standard input")
        return read_text(file)
    except CannotRun as error:
        stop_for(error)


def stop_for(error: "CannotRun") -> NoReturn:
    """Leave with what stands in the way; of a file that is not there with the nearest name beside it."""
    from setwright.files import NoSuchFile

    stop(f"{error}{_nearest(error.path)}" if isinstance(error, NoSuchFile) else str(error))


def _nearest(missing: Path) -> str:
    """The YAML file of that folder with the nearest name, as the end of a sentence; empty without one."""
    from setwright.files import CannotRun, yaml_in
    from setwright.reading.nearest import nearest

    try:
        there = {file.stem: file for file in yaml_in(missing.parent)}
    except CannotRun:
        return ""
    near = nearest(missing.stem, there)
    return f"; the nearest is {there[near[0]]}" if near else ""


def plans(named: list[Path]) -> list[Path]:
    """The plan files named, folders replaced by the plans in them."""
    from setwright.files import CannotRun, plans_in

    try:
        found = [plan for one in named for plan in plans_in(one)]
    except CannotRun as error:
        stop(str(error))
    if not found:
        stop(f"there is no plan in {named[0]}: a plan is a .yaml file with a line `plan: its name`")
    return found


def checked(file: Path, *, only_plans: bool = False) -> "Checked":
    """The plan read, resolved, covered and judged; a squad, gym or record read."""
    from functools import partial

    from setwright.checked import check_file, check_plan
    from setwright.files import read_beside

    check_one = check_plan if only_plans else check_file
    return check_one(str(file), plan_text(file), partial(read_beside, file), partial(_fed, file))


def _fed(file: Path, weeks: "tuple[PlanWeek, ...]", table: "Library") -> "tuple[PlanWeek, ...]":
    """The weeks of a plan with what its kept records say of last time; read only when a load asks for it."""
    from setwright.records.last_time import fed

    return fed(file, weeks, table)


def sound(file: Path, nothing: str) -> "Checked":
    """The plan checked, or the end of the command where it has errors; ``nothing``: what is not done then."""
    from setwright.findings import Level
    from setwright.report import terminal

    one = checked(file, only_plans=True)
    if any(finding.level is Level.error for finding in one.findings):
        typer.echo(terminal.text(one, colour=in_colour()), nl=False)
        stop(f"{nothing} while the plan has errors")
    return one


def today() -> "dt.date":
    """The coach's own date."""
    import datetime as dt

    return dt.date.today()  # noqa: DTZ011 - of this machine, wherever it stands


def week_of(weeks: int, named: int | None, file: Path) -> int:
    """The week that is asked for, or the end of the command when the plan has no such week or several."""
    if named is None and weeks > 1:
        stop(f"{file} has {weeks} weeks; say which one, from --week 1 to --week {weeks}")
    if named is not None and not 1 <= named <= weeks:
        stop(f"{file} has no week {named}: it has {'one week' if weeks == 1 else f'{weeks} weeks'}")
    return named or 1


def in_colour() -> bool:
    """Colour only on a terminal, and never against NO_COLOR (https://no-color.org)."""
    import os

    return sys.stdout.isatty() and not os.environ.get("NO_COLOR")


def stop_with(status: int, message: str) -> NoReturn:
    """Print one sentence on the error stream and leave with a status."""
    tell(message)
    raise typer.Exit(status)


def tell(message: str) -> None:
    """Print one sentence on the error stream, the names in it as the letters that they are."""
    from setwright.report.wrapping import plain

    typer.echo(f"setwright: {plain(message)}", err=True)


def write_new(path: Path, text: str, lost: str) -> None:
    """Write a file that is not there yet, or the end of the command; ``lost``: why none is written over."""
    from setwright.files import CannotRun, write_once

    try:
        write_once(path, text)
    except FileExistsError:
        stop(f"{path} is there already and is not written over: {lost}; name another file with --out")
    except CannotRun as error:
        stop(str(error))
