"""A table of comma-separated values as cells that know where they stand (RFC 4180).

A comma, a semicolon or a tab parts the cells, whichever the first line holds most of.
"""

import re
from collections.abc import Iterator
from typing import Final

from setwright.places import Place
from setwright.reading.nodes import Scalar

SIGNS: Final = (",", ";", "\t")
"""What parts two cells; a semicolon where the decimal sign is a comma, a tab in what was copied."""
GUARD: Final = "'"
"""Before a cell that starts like a formula: a spreadsheet then shows it and does not work it out."""
GUARDED: Final = ("=", "+", "-", "@", GUARD)
"""How such a cell starts (OWASP, CSV injection), and the guard itself."""

_CELL: Final = r'(?:"(?P<quoted>(?:[^"]|"")*)"(?P<rest>[^{sign}\r\n]*)|(?P<bare>[^{sign}\r\n]*))'
_END: Final = r"(?P<end>{sign}|\r\n|\r|\n|$)"


def cells(file: str, text: str) -> Iterator[list[Scalar]]:
    """The rows of a table, blank ones left out; the guard of a formula is taken off.

    A quoted cell may hold line ends and doubled quotes; what stands behind its closing quote belongs to it.
    """
    sign = max(SIGNS, key=text.partition("\n")[0].count)
    pattern = re.compile((_CELL + _END).replace("{sign}", re.escape(sign)))
    at, row = 0, list[Scalar]()
    line, start = 1, 0
    while True:
        match = pattern.match(text, at)
        assert match is not None
        row.append(_cell(match, file, line, start))
        within = match.group(0)[: len(match.group(0)) - len(match["end"])]
        breaks = _breaks(within)
        if breaks:
            line += len(breaks)
            start = match.start() + breaks[-1]
        at = match.end()
        if match["end"] != sign:
            if any(cell.text for cell in row):
                yield row
            row, line, start = [], line + 1, at
            if not match["end"] or at == len(text):
                return


def guarded(text: str) -> str:
    """The text, without blanks at its ends, as a cell that no spreadsheet takes for a formula."""
    shown = text.strip()
    return f"{GUARD}{shown}" if shown.startswith(GUARDED) else shown


def _breaks(text: str) -> list[int]:
    """Where the lines after the first one start."""
    return [found.end() for found in re.finditer("\r\n|\r|\n", text)]


def _cell(match: re.Match[str], file: str, line: int, start: int) -> Scalar:
    if match["quoted"] is None:
        typed, first = match["bare"], match.start("bare")
    else:
        typed, first = match["quoted"].replace('""', '"') + match["rest"], match.start("quoted")
    shown = typed.strip()
    lines = len(_breaks(shown)) + 1
    first += len(typed) - len(typed.lstrip())
    if shown.startswith(GUARD) and shown[1:].startswith(GUARDED):
        shown, first = shown[1:], first + 1
    column = first - start + 1
    return Scalar(shown, Place(file, line, column, line, column + len(shown)), lines=lines)
