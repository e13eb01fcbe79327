"""Sheets for the gym floor."""

import sys
from pathlib import Path
from typing import Annotated, Literal

import typer

from setwright.commands import shared

app = typer.Typer(rich_markup_mode=None)


@app.command(epilog="Example:  setwright sheet week-3.yaml --paper letter --out prints")
def sheet(
    file: shared.PlanFile,
    kind: Annotated[
        Literal["all", "coach", "week", "session", "rack", "board", "station", "log", "home", "summary"],
        typer.Option(help="Which sheets; coach: week and summary, which is not among all."),
    ] = "all",
    paper: Annotated[
        Literal["a4", "letter", "a3"], typer.Option(help="The paper they are printed on; a3 for the board.")
    ] = "a4",
    *,
    out: Annotated[Path, typer.Option(metavar="FOLDER", help="Where the files go.")] = Path("sheets"),
    week: shared.Week = None,
    large: Annotated[bool, typer.Option("--large", help="Session sheets in large print.")] = False,
    pdf: Annotated[bool, typer.Option("--pdf", help="Also a PDF of each (needs setwright[pdf]).")] = False,
    apart: Annotated[
        bool, typer.Option("--apart", help="One file a sheet, to send to each athlete.")
    ] = False,
    csv: Annotated[bool, typer.Option("--csv", help="Also the week as a table for spreadsheets.")] = False,
) -> None:
    """Write the sheets of a plan as files to print. docs/sheets.md says what each kind is for."""
    from setwright.files import CannotRun
    from setwright.sheets import NothingToPrint, Order, WrongPaper, asked, print_sheets

    try:
        wanted = asked(kind, paper, large=large)
    except WrongPaper as stop:
        shared.stop(str(stop))
    checked = shared.sound(file, "no sheet is written")
    number = shared.week_of(len(checked.weeks), week, file)
    checked = checked.only(number)
    if checked.week is None or not checked.week.sessions:
        from setwright.report.stages import left_out

        if checked.week is not None and (held := "; ".join(left_out(checked.week))):
            shared.stop(f"no session is in force, so no sheet is written: {held}")
        shared.stop(f"{file}: there is no training in week {number}, so nothing to print")
    order = Order(wanted, out, apart=apart, pdf=pdf, csv=csv)
    progress = _progress if sys.stderr.isatty() else None
    try:
        for line in print_sheets(checked, order, shared.today(), progress):
            typer.echo(line)
    except (CannotRun, NothingToPrint) as stop:
        shared.stop(str(stop))


def _progress(text: str) -> None:
    """How far a long print is, on one line of the terminal that the next text writes over."""
    typer.echo(f"\r\033[K{text}\r", nl=False, err=True)
