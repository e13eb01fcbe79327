"""Where YAML bites: faults found line by line, in whole and broken files, and a text without them.

The mended text keeps every column: a dangerous sign is swapped for a private character, which ``unmask``
turns back, so values arrive as they were typed. Only tabs before a line's first word become the blanks that
put it in line (``tabs``); ``Traps.shifts`` tells by how much such a line grew.
"""

import re
from collections.abc import Iterator, Mapping
from typing import Final, NamedTuple

from setwright.findings import Finding, Seen
from setwright.places import Place
from setwright.reading import file_rules as rules
from setwright.reading.lines import Line, anatomy
from setwright.reading.looks import LOOKS, MASK, Trap, second_plan, tabs_out
from setwright.reading.tabs import Indents

UNMASK: Final = {MASK + code: chr(code) for code in range(0x80)}
MOST_SEEN: Final = 10
"""Lines that a fault found on many lines names (choice)."""
_ANCHOR = re.compile(r"(?:^|\s)&([\w-]+)")


class Traps(NamedTuple):
    """What was found, the text to read instead, which spans and lines have been spoken of, which to drop."""

    text: str
    findings: tuple[Finding, ...]
    covers: tuple[Place, ...]
    lines: frozenset[int]
    dropped: tuple[int, ...]
    shifts: Mapping[int, int]


def unmask(text: str) -> str:
    """The text as typed, private characters turned back into the signs they stand for."""
    return text if text.isascii() else text.translate(UNMASK)


def find_traps(file: str, rows: list[str]) -> Traps:
    """All faults of the lines of a file, and its text without them."""
    mended = ["" if row.isspace() else row for row in rows]
    found: list[tuple[Line, Trap]] = []
    shifts: dict[int, int] = {}
    anchors: set[str] = set()
    indents = Indents()
    for line in anatomy(rows):
        if line.number > 1 and line.text.startswith(("---", "...")) and _holds_words(rows[: line.number - 1]):
            found.append((line, second_plan(line)))
            mended[line.number - 1 :] = [""] * (len(rows) - line.number + 1)
            break
        indent = indents.of(line)
        traps = [trap for look in LOOKS for trap in look(line, anchors)]
        if "\t" in line.text[: line.end]:
            traps = [tabs_out(trap, line, indent) for trap in traps]
        anchors.update(_ANCHOR.findall(line.text))
        found += ((line, trap) for trap in traps)
        if traps or "\t" in line.text or not line.text.isascii():
            mended[line.number - 1] = _mend(line, indent, traps)
        if indent != line.indent:
            shifts[line.number] = indent - line.indent
    covers = tuple(_place(file, line, trap.covers, len(line.text)) for line, trap in found)
    numbers = frozenset(line.number for line, _ in found)
    dropped = tuple(line.number for line, trap in found if trap.swaps is None)
    return Traps("\n".join(mended), tuple(_findings(file, found)), covers, numbers, dropped, shifts)


def _holds_words(rows: list[str]) -> bool:
    """Whether any of the rows holds more than a remark."""
    return any(row.strip() and not row.lstrip().startswith("#") for row in rows)


def _place(file: str, line: Line, start: int, end: int) -> Place:
    return Place(file, line.number, start + 1, line.number, max(end, start) + 1)


def _mend(line: Line, indent: int, traps: list[Trap]) -> str:
    chars = [" " if char == "\t" or (char.isspace() and char != " ") else char for char in line.text]
    for trap in traps:
        for at, char in (trap.swaps or {}).items():
            chars[at] = char
    return " " * indent + "".join(chars[line.indent :])


def _findings(file: str, found: list[tuple[Line, Trap]]) -> Iterator[Finding]:
    """One finding a trap; a rule that whole files break (tabs, blanks) speaks once and names the lines."""
    whole = (rules.TAB, rules.ODD_BLANK, rules.ODD_BLANK_IN_VALUE, rules.CONTROL)
    for rule in whole:
        hits = [(line, trap) for line, trap in found if trap.rule is rule]
        if hits:
            line, trap = hits[0]
            also = f" (and on {len(hits) - 1} more lines)" if len(hits) > 1 else ""
            seen = tuple(Seen(trap.change, line.number) for line, trap in hits[1 : MOST_SEEN + 1])
            place = _place(file, line, trap.start, trap.end)
            yield rule.at(place, trap.message + also, trap.change, seen=seen)
    for line, trap in found:
        if trap.rule not in whole:
            yield trap.rule.at(_place(file, line, trap.start, trap.end), trap.message, trap.change)
