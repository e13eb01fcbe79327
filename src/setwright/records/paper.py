"""A form or a record as rows of plain text, whatever it is written as; and the YAML of it."""

import json
import re
from collections.abc import Iterable, Iterator
from typing import Final, NamedTuple

from setwright.model.record import AthleteDone, LineDone, Record

REMARKS: Final = ("note", "private note")
"""Names in the place of a movement under which a remark stands."""
TOP: Final = ("record", "week", "session", "date", "unit", "corrects", "note", "private note")
"""The keys above ``done``, in the order in which they are written."""

_PLAIN: Final = re.compile(r"[^\W_](?:[\w .,()/'+&–-]*[\w.)'+])?")
"""Text that means itself in YAML without quotes; what is not like it is quoted."""


class Row(NamedTuple):
    """One line: a movement with what was done of it, or a remark. Empty text is "not written".

    ``planned``: what the plan says, in a few words; it is shown and never read back.
    """

    movement: str
    done: str = ""
    planned: str = ""
    instead_of: str = ""
    note: str = ""
    private_note: str = ""


class Sheet(NamedTuple):
    """The keys at the top with their values, then each athlete with their rows."""

    top: dict[str, str]
    athletes: tuple[tuple[str, tuple[Row, ...]], ...]


def as_yaml(sheet: Sheet, head: Iterable[str] = ()) -> str:
    """The file of a sheet; ``head`` are lines of remarks above it."""
    return "\n".join([*(f"# {line}".rstrip() for line in head), *_lines(sheet)]) + "\n"


def _lines(sheet: Sheet) -> Iterator[str]:
    yield from (f"{key}: {typed(sheet.top[key])}".rstrip() for key in TOP if key in sheet.top)
    yield "done:"
    for name, rows in sheet.athletes:
        yield f"  {typed(name)}:"
        for row in rows:
            remark = f"  # plan: {_remark(row.planned)}" if row.planned else ""
            yield f"    - {typed(row.movement)}:{f' {typed(row.done)}' if row.done else ''}{remark}"
            for key, value in _below(row):
                yield f"      {key}: {typed(value)}"


def _below(row: Row) -> Iterator[tuple[str, str]]:
    for key, value in (
        ("instead of", row.instead_of),
        ("note", row.note),
        ("private note", row.private_note),
    ):
        if value:
            yield key, value


def typed(text: str) -> str:
    """The text as a value of YAML that reads back as itself; as a key too, unless it holds both quotes."""
    if not text or _PLAIN.fullmatch(text):
        return text
    if '"' in text and "'" not in text and text.isprintable():
        return f"'{text}'"
    quoted = json.dumps(text, ensure_ascii=False)
    return "".join(sign if sign.isprintable() else json.dumps(sign)[1:-1] for sign in quoted)


def _remark(text: str) -> str:
    """The text as it may stand behind a #: printable, on one line, without another #."""
    printable = "".join(sign if sign.isprintable() else " " for sign in text)
    return " ".join(printable.replace("#", " ").split())


def sheet_of(record: Record) -> Sheet:
    """A record that was read as rows, each with what was typed."""
    values = {
        "record": record.plan,
        "week": record.week,
        "session": record.session,
        "date": record.date,
        "unit": record.unit,
        "corrects": record.corrects,
        "note": record.note,
        "private note": record.private_note,
    }
    top = {key: str(value) for key, value in values.items() if value is not None}
    return Sheet(top, tuple((one.name, tuple(_rows(one))) for one in record.athletes))


def _rows(athlete: AthleteDone) -> Iterator[Row]:
    yield from map(_row, athlete.lines)
    yield from (Row("note", note) for note in athlete.notes)
    yield from (Row("private note", note) for note in athlete.private_notes)


def _row(line: LineDone) -> Row:
    return Row(
        line.name,
        line.done.text.strip() if line.done else "",
        instead_of=line.instead_of or "",
        note=line.note or "",
        private_note=line.private_note or "",
    )
