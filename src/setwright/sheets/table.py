"""The week as a table for spreadsheets: one row a line of a session and athlete, in the sheets' words."""

import csv
import io
from collections.abc import Iterator, Sequence
from typing import Final

from setwright.checked import Checked
from setwright.sheets.phrases import series
from setwright.sheets.style import stationery_of
from setwright.sheets.view import Block, Line, SessionSheet

MARK: Final = "\ufeff"
"""A byte-order mark: by it spreadsheet programs know UTF-8."""

FORMULA: Final = ("=", "+", "-", "@", "\t", "\r", "\n", "＝", "＋", "－", "＠")
"""What may begin a formula in a spreadsheet (OWASP, "CSV Injection"; the wide signs count in some)."""


def plan_csv(checked: Checked, sheets: Sequence[SessionSheet]) -> str:
    """Session sheets of a plan as CSV (RFC 4180, with a byte-order mark); the heads alone without any.

    Where decimals have a comma, semicolons part the cells, as spreadsheets there expect. A cell that a
    spreadsheet would take for a formula starts with an apostrophe instead. "sets" counts the boxes of the
    sheet; "done with" is the group that a line is part of.
    """
    text = io.StringIO()
    comma = stationery_of(checked).decimals == "comma"
    writer = csv.writer(text, delimiter=";" if comma else ",", lineterminator="\r\n")
    writer.writerow(series("table.heads"))
    for sheet in sheets:
        writer.writerows(map(harmless, row) for row in _rows(sheet))
    return MARK + text.getvalue()


def harmless(cell: str) -> str:
    """A cell that is read as text by every spreadsheet.

    >>> harmless("=1+1"), harmless("row")
    ("'=1+1", 'row')
    """
    return f"'{cell}" if cell.startswith(FORMULA) else cell


def _rows(sheet: SessionSheet) -> Iterator[tuple[str, ...]]:
    for block in sheet.blocks:
        for line in block.lines:
            yield (sheet.day or "", sheet.title, sheet.athlete or "", *_cells(line, block))


def _cells(line: Line, block: Block) -> tuple[str, ...]:
    return (
        line.number,
        line.name,
        str(len(line.boxes) or ""),
        line.dose,
        f"{line.load.large} {line.load.small}".strip(),
        block.heading or "",
        "; ".join(line.remarks),
        line.next_time or block.next_time or "",
    )
