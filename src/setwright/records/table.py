"""A form or a record as a table for a spreadsheet: one row a line, with the same meaning as the YAML."""

import csv
import io
from collections.abc import Iterator, Mapping
from typing import Final

from setwright.model.reader.keys import fold
from setwright.model.reader.record import RecordRead, record_of
from setwright.places import Place, Source
from setwright.reading.cells import cells, guarded
from setwright.reading.file_rules import TOO_BIG
from setwright.reading.gathering import Gathering
from setwright.reading.measures import Unit
from setwright.reading.nearest import nearest
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.table_rules import CELLS_DIFFER, COLUMN, NO_TABLE, WHO
from setwright.records.paper import REMARKS, Row, Sheet

TOP: Final = ("record", "week", "session", "date", "unit", "corrects")
"""Columns that say the same in every row."""
BELOW: Final = ("instead of", "note", "private note")
"""Columns that stand underneath a line of YAML."""
COLUMNS: Final = (*TOP, "athlete", "movement", "planned", "done", *BELOW)

MOST_COLUMNS: Final = 100
MOST_ROWS: Final = 5_000
"""Largest table that is read (choice: 200 athletes with 25 lines each)."""

_Row = Mapping[str, Scalar]


def as_csv(sheet: Sheet) -> str:
    """The table of a sheet, its first row the names of the columns; remarks on the whole are rows too."""
    out = io.StringIO()
    write = csv.writer(out, lineterminator="\r\n").writerow
    write(COLUMNS)
    top = [sheet.top.get(key, "") for key in TOP]
    remarks = tuple(Row(key, sheet.top[key]) for key in REMARKS if key in sheet.top)
    lines = [("", row) for row in remarks]
    lines += [(name, row) for name, rows in sheet.athletes for row in rows or (Row(""),)]
    for name, row in lines:
        write([guarded(value) for value in (*top, name, *_values(row))])
    return out.getvalue()


def _values(row: Row) -> tuple[str, ...]:
    return (row.movement, row.planned, row.done, row.instead_of, row.note, row.private_note)


def read_table(file: str, text: str, unit: Unit | None = None) -> RecordRead:
    """The record in a table, as far as it can be trusted, and a finding for everything else.

    ``unit``: the plan's, for loads without one where the table names none. What stands under "planned" is
    not read.
    """
    found = Gathering()
    sources = {file: Source(file, text.removeprefix("\ufeff"))}
    head, *rows = [*cells(file, sources[file].text)] or [[]]
    if not {"athlete", "movement"} <= {fold(cell.text) for cell in head}:
        place = head[0].place if head else Place(file, 1, 1, 1, 1)
        change = f"write the names of the columns into the first row: {', '.join(COLUMNS)}"
        found.say(NO_TABLE, place, "the first row does not name an athlete and a movement", change)
        return RecordRead(None, found.findings, sources)
    if len(head) > MOST_COLUMNS or len(rows) > MOST_ROWS:
        message = f"the table has {len(head):,} columns and {len(rows):,} rows, which no form has"
        most = f"keep a table of at most {MOST_COLUMNS} columns and {MOST_ROWS:,} rows: one form a session"
        found.say(TOO_BIG, head[0].place, message, most)
        return RecordRead(None, found.findings, sources)
    names = _named(head, found)
    told = [_told(names, row, found) for row in rows]
    root = Pairs((*_top(told, found), *_done(told, head[0].place, found)), head[0].place)
    record = record_of(root, unit, found)
    return RecordRead(record, found.findings, sources)


def _named(head: list[Scalar], found: Gathering) -> list[str]:
    """The columns by their known names; empty for one that is not known."""
    names: list[str] = []
    for cell in head:
        name = fold(cell.text)
        if name not in COLUMNS or name in names:
            known = nearest(name, [column for column in COLUMNS if column not in names])
            change = (
                f"write `{known[0]}`" if known else f"use {', '.join(COLUMNS)}; other columns are not read"
            )
            again = "stands twice" if name in names else "is no column of a record"
            if cell.text:
                found.say(COLUMN, cell.place, f'"{cell.text}" {again}', change)
            name = ""
        names.append(name)
    return names


def _told(names: list[str], row: list[Scalar], found: Gathering) -> _Row:
    """The cells of a row that say something, by column; what stands beside the table is said."""
    for cell in row[len(names) :]:
        if cell.text:
            change = "put a cell with a comma in it between quotes, or move this one under its column"
            found.say(COLUMN, cell.place, f'"{cell.text}" stands in no column', change)
    cells_of = zip(names, row, strict=False)
    return {name: cell for name, cell in cells_of if name and cell.text}


def _top(rows: list[_Row], found: Gathering) -> Iterator[tuple[Scalar, Node]]:
    """What the rows say of the whole record, each once; who says something else is told."""
    for key in TOP:
        said = [row[key] for row in rows if key in row]
        for other in said[1:]:
            if other.text != said[0].text:
                first = f"line {said[0].place.line}"
                message = f'{key} is "{said[0].text}" on {first} and "{other.text}" here'
                found.say(
                    CELLS_DIFFER, other.place, message, "write one record a table, and the same in each row"
                )
        if said:
            yield Scalar(key, said[0].place), said[0]
    for row in rows:
        remark = row.get("movement")
        if "athlete" not in row and remark and fold(remark.text) in REMARKS and "done" in row:
            yield remark, row["done"]


def _done(rows: list[_Row], place: Place, found: Gathering) -> Iterator[tuple[Scalar, Node]]:
    """The athletes with their lines, in the order in which they come first."""
    lines: dict[str, list[Node]] = {}
    names: dict[str, Scalar] = {}
    for row in rows:
        name, movement = row.get("athlete"), row.get("movement")
        if name is None:
            _say_nobody(row, found)
            continue
        names.setdefault(name.text.casefold(), name)
        entries = lines.setdefault(name.text.casefold(), [])
        if movement is not None:
            entries.append(_line(movement, row))
        elif loose := [row[column] for column in ("done", *BELOW) if column in row]:
            change = "write the movement into its column, or `note` there for a remark"
            found.say(WHO, loose[0].place, "this row does not say of which movement", change)
    athletes = [(names[name], _listed(names[name], lines[name])) for name in names]
    yield Scalar("done", place), Pairs(tuple(athletes), place)


def _listed(name: Scalar, lines: list[Node]) -> Node:
    return Listing(tuple(lines), name.place) if lines else Scalar("", name.place)


def _say_nobody(row: _Row, found: Gathering) -> None:
    movement = row.get("movement")
    if movement is not None and fold(movement.text) not in REMARKS:
        found.say(WHO, movement.place, "this row does not say who did it", "write the name under `athlete`")


def _line(movement: Scalar, row: _Row) -> Pairs:
    end = movement.place
    nothing = Scalar("", Place(end.file, end.line, end.end_column, end.line, end.end_column))
    below = ((Scalar(key, row[key].place), row[key]) for key in BELOW if key in row)
    return Pairs(((movement, row.get("done", nothing)), *below), movement.place)
