"""Who does what when on the gym floor, and a session cut on the day."""

from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Literal

import typer

from setwright.commands import shared

if TYPE_CHECKING:
    from collections.abc import Iterator

    from setwright.checked import Checked
    from setwright.floor.today import Change, Today
    from setwright.model.plan import Session, Week

app = typer.Typer(rich_markup_mode=None)


@app.command(epilog="Example:  setwright floor week-3.yaml --day Monday --minutes 45 --absent Tam")
def floor(
    file: shared.PlanFile,
    *,
    day: Annotated[
        str | None,
        typer.Option("--day", metavar="DAY", help="The session's day or name; none takes them all."),
    ] = None,
    week: shared.Week = None,
    minutes: Annotated[
        int | None,
        typer.Option("--minutes", metavar="N", min=1, help="Today's minutes: says what is left out."),
    ] = None,
    without: Annotated[
        list[str] | None,
        typer.Option("--without", metavar="KIT", help="Out of order today: rack, rack-2, dip bars."),
    ] = None,
    absent: Annotated[
        list[str] | None, typer.Option("--absent", metavar="NAME", help="An athlete who is not there today.")
    ] = None,
    out: Annotated[
        Path | None,
        typer.Option("--out", metavar="FOLDER", help="Also write the sheets of today's session there."),
    ] = None,
    paper: Annotated[Literal["a4", "letter"], typer.Option(help="The paper they are printed on.")] = "a4",
    form: shared.TextOrJson = "text",
    with_names: shared.NamesInJson = False,
) -> None:
    """Print the timetable of a session in its room. Groups, clock, conflicts, what to put out.

    Exit status: 0 nothing stands in the way, 1 conflicts, 2 could not run.
    """
    from setwright.floor.today import Change

    checked = shared.sound(file, "no timetable is made")
    change = Change(minutes, tuple(without or ()), tuple(absent or ()))
    checked = checked.only(shared.week_of(len(checked.weeks), week, file))
    of_week = checked.weeks[0].week
    sessions = _sessions(of_week, day, file)
    if out is not None and len(sessions) > 1:
        named = ", ".join(session.title for session in sessions)
        shared.stop(f"sheets of today are those of one session; say which with --day: {named}")
    found = [_today(session, of_week, checked, change) for session in sessions]
    if form == "json":
        from setwright.report.floor_machine import floor_json

        typer.echo(floor_json(found, with_names=with_names), nl=False)
    else:
        from setwright.report.floor import floor_text

        typer.echo("\n".join(map(floor_text, found)), nl=False)
    if out is not None:
        for line in _print(checked, found[0], out, paper):
            typer.echo(line, err=form == "json")
    raise typer.Exit(int(any(one.conflicts for one in found)))


def _sessions(week: "Week", day: str | None, file: Path) -> "tuple[Session, ...]":
    """The sessions that are asked for, or the end of the command."""
    if not week.sessions:
        shared.stop(f"{file}: there is no training in {week.title}, so nothing to set up")
    found = tuple(session for session in week.sessions if day is None or session.is_called(day))
    if not found:
        named = ", ".join(session.title for session in week.sessions)
        shared.stop(f"{file} has no session {day}: it has {named}")
    return found


def _today(session: "Session", week: "Week", checked: "Checked", change: "Change") -> "Today":
    """The session as it can be done today, or the end of the command."""
    from setwright.floor.today import NotHere, today

    assert checked.table is not None, "a plan that was read has its library"
    try:
        return today(session, week, checked.table, change)
    except NotHere as error:
        shared.stop(f"{checked.file}: {error}")


def _print(checked: "Checked", today: "Today", out: Path, paper: Literal["a4", "letter"]) -> "Iterator[str]":
    """Write the sheets of today's session; where each went."""
    from setwright.files import CannotRun
    from setwright.sheets.today import print_today

    try:
        yield from print_today(checked, today, out, paper, shared.today())
    except CannotRun as error:
        shared.stop(str(error))
