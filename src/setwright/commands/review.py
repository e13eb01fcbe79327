"""A look back at what was done."""

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from setwright.commands import shared

if TYPE_CHECKING:
    from setwright.model.plan import Week
    from setwright.records.review import LookBack
    from setwright.records.trend import Seen

app = typer.Typer(rich_markup_mode=None)


@app.command(epilog="Example:  setwright review week-3.yaml")
def review(
    named: Annotated[Path, typer.Argument(metavar="FILE|FOLDER", help="A plan, or a folder of plans.")],
    week: shared.Week = None,
    athlete: Annotated[str | None, typer.Option("--for", metavar="NAME", help="One athlete alone.")] = None,
    picture: Annotated[
        Path | None,
        typer.Option(metavar="FILE.svg", help="Also draw one athlete's loads into this file."),
    ] = None,
) -> None:
    """Look back: who came, what was done of what was planned, what it added up to, and how loads went.

    Names and what was not done are printed: the page is for the coach.
    """
    from setwright.records.review import look_back
    from setwright.report.review import look_back_text

    seen = _seen(named, week)
    found = look_back(seen).only(athlete)
    if not found.names:
        shared.stop(f'no athlete of these plans is called "{athlete}"')
    if picture is not None:
        _draw(picture, found)
    typer.echo(look_back_text(found), nl=False)


def _draw(picture: Path, found: "LookBack") -> None:
    """Draw the loads of the one athlete that is looked back at, or the end of the command."""
    from setwright.files import CannotRun, write_whole
    from setwright.sheets.trend import NothingToDraw, trend_svg

    if len(found.names) != 1:
        shared.stop("--picture draws the loads of one athlete: say whose with --for NAME")
    try:
        write_whole(picture, trend_svg(*found.loads[0]))
    except (CannotRun, NothingToDraw) as stop:
        shared.stop(str(stop))


def _seen(named: Path, week: int | None) -> "Seen":
    """The weeks of the plans named that something is on record of, by date, or the end of the command."""
    from setwright.files import CannotRun
    from setwright.records.keeping import plan_of, plans_of
    from setwright.records.week_done import week_done

    try:
        plans = [plan_of(file) for file in plans_of(named)]
        weeks = [(plan, one) for plan in plans for one in _weeks(plan.weeks, week, plan.file)]
        every = [(plan, week_done(plan, one)) for plan, one in weeks]
    except CannotRun as error:
        shared.stop(str(error))
    for told in dict.fromkeys(told for _, done in every for told in done.unread):
        shared.tell(f"{told}; it is left out")
    seen = [(done, plan.table) for plan, done in every if done.records]
    if not seen:
        nothing = f"no record is kept beside {named}, so there is nothing to look back at"
        shared.stop(f"{nothing}; `setwright record` writes a form")
    return sorted(seen, key=lambda one: str(one[0].records[0].record.date))


def _weeks(weeks: "tuple[Week, ...]", number: int | None, file: Path) -> "tuple[Week, ...]":
    """The week that is named, or all of them."""
    return weeks if number is None else (weeks[shared.week_of(len(weeks), number, file) - 1],)
