"""A look back at what was done."""

from pathlib import Path
from typing import TYPE_CHECKING, Annotated, Literal

import typer

from setwright.commands import shared

if TYPE_CHECKING:
    from collections.abc import Sequence

    from setwright.model.plan import Week
    from setwright.records.review import LookBack
    from setwright.records.told import Told
    from setwright.records.trend import Seen
    from setwright.sheets.kinds import Paper

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
    report: Annotated[
        Literal["crew", "coach", "medical"] | None,
        typer.Option(help="Instead, a short report: for everybody, the coach, or the medical person."),
    ] = None,
    *,
    form: shared.TextOrJson = "text",
    with_names: shared.NamesInJson = False,
    out: Annotated[
        Path | None, typer.Option(metavar="FOLDER", help="Also write the report as a page into this folder.")
    ] = None,
    paper: Annotated[
        Literal["a4", "letter"], typer.Option(help="The paper that the page is printed on.")
    ] = "a4",
    pdf: Annotated[
        bool, typer.Option("--pdf", help="Also a PDF of the page (needs setwright[pdf]).")
    ] = False,
) -> None:
    """Look back at who came, what was done, and how loads went. Beside what was planned, and added up.

    Names and what was not done are printed: the page is for the coach. ``--report crew`` alone is for others.
    """
    from setwright.records.review import look_back
    from setwright.records.told import told
    from setwright.report.review import look_back_text
    from setwright.report.told import told_text

    if (out or pdf) and not (out and report):
        shared.stop("a page is made of a report: write --report crew, coach or medical, and --out FOLDER")
    if form == "json" and report:
        shared.stop("a report is words: leave --report or --format json away")
    seen = _seen(named, week)
    found = look_back(seen).only(athlete)
    if not found.names:
        shared.stop(f'no athlete of these plans is called "{athlete}"')
    if picture is not None:
        _draw(picture, found)
    if form == "json":
        from setwright.report.review_machine import review_json

        typer.echo(review_json(found, with_names=with_names), nl=False)
    elif report is None:
        typer.echo(look_back_text(found), nl=False)
    else:
        every = told(found, report, athlete)
        typer.echo("\n".join(map(told_text, every)), nl=False)
        if out:
            _print(every, out, paper, pdf=pdf)


def _print(every: "Sequence[Told]", out: Path, paper: "Paper", *, pdf: bool) -> None:
    """Write each report as a page, or the end of the command."""
    from setwright.files import CannotRun
    from setwright.sheets.told import Print, print_told

    try:
        for one in every:
            checked = shared.checked(one.review.plan.file, only_plans=True)
            only = checked.only(one.review.done.week.number)
            for target in print_told(only, one, Print(out, paper, pdf), shared.today()):
                typer.echo(f"{target}  (report, {paper})")
    except CannotRun as stop:
        shared.stop(str(stop))


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
        shared.stop_for(error)
    for told in dict.fromkeys(told for _, done in every for told in done.unread):
        shared.tell(f"{told}; it is left out")
    seen = [(plan, done) for plan, done in every if done.records]
    if not seen:
        nothing = f"no record is kept beside {named}, so there is nothing to look back at"
        shared.stop(f"{nothing}; `setwright record` writes a form")
    return sorted(seen, key=lambda one: str(one[1].records[0].record.date))


def _weeks(weeks: "tuple[Week, ...]", number: int | None, file: Path) -> "tuple[Week, ...]":
    """The week that is named, or all of them."""
    return weeks if number is None else (weeks[shared.week_of(len(weeks), number, file) - 1],)
