"""One print: every file that is asked for, each written whole, and the small file that remembers it."""

import datetime as dt
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

from setwright.checked import Checked
from setwright.files import write_whole
from setwright.sheets.editions import Edition, Sheets, all_sheets, last_print, record_of, this_print
from setwright.sheets.html import file_html, pages_html
from setwright.sheets.kinds import Kind, NothingToPrint, Paper
from setwright.sheets.names import sheet_name, stem
from setwright.sheets.table import plan_csv


@dataclass(frozen=True, slots=True)
class Order:
    """What is to be printed: kinds with their paper, and the folder.

    ``apart``: one file a sheet, to hand out one by one. ``pdf``: a PDF beside each HTML file. ``csv``: the
    week as a table for spreadsheets too.
    """

    wanted: tuple[tuple[Kind, Paper], ...]
    out: Path
    apart: bool = False
    pdf: bool = False
    csv: bool = False


def print_sheets(
    checked: Checked, order: Order, today: dt.date, tell: Callable[[str], None] | None = None
) -> Iterator[str]:
    """Write the files of an order; a line for each as soon as it stands.

    ``tell`` hears how far a PDF is.

    Raises: CannotRun; NothingToPrint when one kind is wanted and the plan gives none.
    """
    to_pdf = _pdf_printer(tell) if order.pdf else None
    files = pages_html if order.apart else _one_file
    record = record_of(checked, order.out)
    sheets = all_sheets(checked)
    kept = this_print(checked, sheets, last_print(record), today)
    for kind, paper in order.wanted:
        try:
            for name, html in files(checked, sheets, kind, paper, kept.edition):
                target = order.out / name
                write_whole(target, html)
                yield f"{target}  ({kind}, {paper})"
                if to_pdf:
                    target = target.with_suffix(".pdf")
                    write_whole(target, to_pdf(html, target.name))
                    yield f"{target}  ({kind}, {paper})"
        except NothingToPrint as none:
            if len(order.wanted) == 1:
                raise NothingToPrint(f"no {kind} sheet: {none}") from None
            yield f"no {kind} sheet: {none}"
    if order.csv:
        target = order.out / f"{stem(checked)}-table.csv"
        write_whole(target, plan_csv(checked, sheets["session"]))
        yield f"{target}  (table)"
    write_whole(record, kept.model_dump_json(indent=1) + "\n")


def _pdf_printer(tell: Callable[[str], None] | None) -> Callable[[str, str], bytes]:
    from setwright.sheets.pdf import printer  # noqa: PLC0415 - WeasyPrint is slow to load

    return printer(tell)


def _one_file(
    checked: Checked, sheets: Sheets, kind: Kind, paper: Paper, edition: Edition
) -> list[tuple[str, str]]:
    """The name of the one file of a kind, and its HTML."""
    return [(sheet_name(checked, kind, paper), file_html(checked, sheets, kind, paper, edition))]
