"""What is looked for on each line: one function a kind of trap."""

import re
from collections.abc import Callable, Iterator, Mapping
from typing import Final, NamedTuple

from setwright.reading import file_rules as rules
from setwright.reading import guess_fills as fills
from setwright.reading.faults import TextRule
from setwright.reading.habits import Habits
from setwright.reading.lines import BLOCK, Line
from setwright.reading.retyping import as_text, name_of, plain_blanks, without_hash, without_sign

MASK: Final = 0xE000
"""First of the private characters that stand for dangerous signs (Unicode private use area)."""
TEXT_KEYS: Final = frozenset(
    {"note", "private note", "stop", "if interrupted", "after", "place", "name", "plan", "next", "set by"}
)
"""Keys of free text: blanks in them are nobody's business, and a colon belongs in quotes."""

_REMARK = re.compile(r"#+\s.*[^\W\d_]")
_COLON = re.compile(r":(?=\s|$)")
_EVERY_MINUTE = re.compile(r"(?P<before>)e(?P<step>[2-9])?mom(?P<behind>\s*\d+\s*:\s*\d+)$", re.IGNORECASE)
_NAME_AND_DOSE = re.compile(r"([^\d:]*[^\W\d][^\d:]*?)\s+(\d[^:]*)$")
_TIED = re.compile(r"[a-f][1-9]?$|[1-9][a-f]$", re.IGNORECASE)
_SIGNS = "@%*!>|`"
_SIGN_IN_FLOW = re.compile(rf"[\[{{,:]\s*([{re.escape(_SIGNS)}])")
_ALIAS = re.compile(r"\*([\w-]+)(?=\s*(?:$|[,\]}]|#))")
_BULLET = re.compile(r"[•·‣▪–—*](?=\s)|\d+[.)](?=\s)|-(?=[^\W\d_])")
_CELLS = re.compile(r"^(-\s+[^\t:]*[^\W\d_])\t+(?=\d)")
"""The movement of a row that was pasted, in front of its numbers."""
_TIGHT = re.compile(r"[^\W\d_](?:[\w '()-]*[^\W\d_])?(:)(?=[^\s/:\\])")
_CONTROL = r"[^\t\x20-\x7e\xa0-\ud7ff\ue080-\ufefe\uff00-\ufffd\U00010000-\U0010ffff\ufeff]"
"""No text: compiled where a line holds something that can't be printed, because its table is large."""
_ODD = "[\u00a0\u1680\u2000-\u200f\u202a-\u202f\u205f-\u2064\u3000\ufeff\u00ad]"


class Trap(NamedTuple):
    """A fault on a line: offsets ``start`` to ``end`` to underline, ``swaps`` to make it harmless.

    Without ``swaps`` (None) the line must be left out for the rest to be read.
    ``covers``: from this offset to the end of the line nothing more is to be said.
    """

    rule: TextRule
    start: int
    end: int
    message: str
    change: str
    covers: int
    swaps: Mapping[int, str] | None


def masked(sign: str) -> str:
    """The private character that stands for a sign where YAML must not see it."""
    return chr(MASK + ord(sign))


def second_plan(line: Line) -> Trap:
    """The trap of a line that ends the plan in mid-file."""
    change = "put the second plan into a file of its own, or take this line out"
    message = f"{line.text[:3]} ends the plan here; what stands below is not read"
    return Trap(rules.SECOND_PLAN, 0, len(line.text), message, change, 0, {})


def _tab(line: Line, _: set[str]) -> Iterator[Trap]:
    at = line.text.find("\t", 0, line.end)
    if at >= 0:
        yield Trap(rules.TAB, at, at + 1, "a tab instead of blanks", "", line.end, {})


def tabs_out(trap: Trap, line: Line, indent: int) -> Trap:
    """A tab's trap with its change: the line with blanks, ``indent`` of them for tabs in front."""
    if trap.rule is not rules.TAB:
        return trap
    lead = " " * indent if trap.start < line.indent else ""
    said = line.text[line.indent : line.end]
    if not line.key:
        said = _CELLS.sub(r"\1: ", said)
    return trap._replace(change=_write(lead + said.replace("\t", " ")))


def _odd_blank(line: Line, _: set[str]) -> Iterator[Trap]:
    odd = [] if line.text.isascii() else [match.start() for match in re.finditer(_ODD, line.text[: line.end])]
    if not odd:
        return
    first = odd[0]
    name = name_of(line.text[first])
    change = _write(plain_blanks(line.text[0 if first < line.indent else line.indent : line.end]))
    swaps = {at: " " for at in odd if at < line.value}
    if first < line.value or (line.key.casefold() not in TEXT_KEYS and not line.text[first].isspace()):
        yield Trap(
            rules.ODD_BLANK, first, first + 1, f"{name} instead of a plain blank", change, line.end, swaps
        )
    elif line.key.casefold() not in TEXT_KEYS:
        yield Trap(
            rules.ODD_BLANK_IN_VALUE,
            first,
            first + 1,
            f"{name} is read as a plain blank",
            change,
            line.end,
            {},
        )


def _control(line: Line, _: set[str]) -> Iterator[Trap]:
    if line.text.isprintable():
        return
    bad = {match.start(): " " for match in re.finditer(_CONTROL, line.text)}
    if bad:
        first = min(bad)
        message = f"a character that is no text (U+{ord(line.text[first]):04X})"
        change = _write(re.sub(_CONTROL, "", line.text[: line.end]).strip())
        yield Trap(rules.CONTROL, first, first + 1, message, change, line.end, bad)


def _hash(line: Line, _: set[str]) -> Iterator[Trap]:
    if line.hash is None or _REMARK.match(line.text, line.hash):
        return
    lost = line.text[line.hash :].rstrip()
    said = without_hash(line.text[line.value :].rstrip())
    words = lost.lstrip("#").strip()
    remark = f"a remark is written `# {words}`" if words else "a remark has words"
    change = f"{_write(line.with_value(said))} if it belongs to the line; {remark}, with a blank behind the #"
    message = f'"{lost}" would be lost: a # behind a blank starts a remark'
    swaps = {at: masked("#") for at in range(line.hash, len(line.text)) if line.text[at] == "#"}
    yield Trap(rules.HASH, line.hash, len(line.text.rstrip()), message, change, line.value, swaps)


def _second_colon(line: Line, _: set[str]) -> Iterator[Trap]:
    if line.brackets or line.quote is not None or not line.key:
        return
    colon = _COLON.search(line.text, line.value, line.end)
    if colon is None:
        return
    at = colon.start()
    if line.start > line.indent and line.key.casefold() not in TEXT_KEYS:
        change = _one_colon(line, at)
        covers = line.start
    else:
        change = _write(line.with_value(as_text(line.said)))
        covers = line.value
    message = f'a second colon, behind "{line.text[line.value : at].strip()}"'
    swaps = {m.start(): masked(":") for m in _COLON.finditer(line.text, line.value, line.end)}
    yield Trap(rules.SECOND_COLON, at, at + 1, message, change, covers, swaps)


def _one_colon(line: Line, second: int) -> str:
    """What to write instead of a line of a list with a second colon at ``second``."""
    every = _EVERY_MINUTE.match(line.said)
    if every:
        return _write(
            "- {key}: {sets} x {reps} every {clock}".format(key=line.key, **fills.every(every, Habits()))
        )
    first = line.text[line.value : second]
    if _TIED.match(line.key):
        return f"one movement, one colon: `- {line.said}`; moves that go together stand under `superset:`"
    if any(char.isdigit() for char in first):
        dose = first.rpartition(",")[0] or first
        return f"{_write(f'- {line.key}: {dose}')}, and what is no dose underneath, under `note:`"
    return f"one movement, one colon: `- {line.said}`; or put the text in quotes"


def _sign(line: Line, anchors: set[str]) -> Iterator[Trap]:
    for at in _signs(line):
        sign = line.text[at]
        alias = _ALIAS.match(line.text, at)
        if alias and (alias[1] in anchors or f"&{alias[1]}" in line.text[:at]):
            continue
        said = line.text[line.value : at] + without_sign(line.text[at : line.end], line.key)
        covers = line.value if line.key else line.start
        message = f"a value can't start with {sign}"
        yield Trap(rules.SIGN, at, at + 1, message, _write(line.with_value(said)), covers, {at: masked(sign)})


def _signs(line: Line) -> list[int]:
    """Where a value of the line starts with a sign."""
    if line.quote is not None:
        return []
    if line.brackets:
        return [match.start(1) for match in _SIGN_IN_FLOW.finditer(line.text, line.value, line.end)]
    starts = line.said[:1] and line.said[0] in _SIGNS and not BLOCK.match(line.text, line.value)
    return [line.value] if starts else []


def _lone_dash(line: Line, _: set[str]) -> Iterator[Trap]:
    if line.said == "-" and line.key and not line.in_flow:
        at = line.value
        change = (
            f"{_write(line.with_value('').rstrip())} if nothing is written down, or write words: `none` in a"
            " plan, `not done` in a record"
        )
        yield Trap(rules.SIGN, at, at + 1, "a dash alone is no value", change, line.start, {at: masked("-")})


def _quote(line: Line, _: set[str]) -> Iterator[Trap]:
    if line.quote is None:
        return
    behind = line.text[max(line.quote, 0) : line.end].strip()
    if line.quote >= 0 and not behind:
        return
    typed = line.said
    swaps = {at: masked(line.text[at]) for at in range(line.value, line.end) if line.text[at] in "\"'"}
    change = _write(line.with_value(typed.replace(typed[0], "").strip()))
    if line.quote < 0:
        message = f"the quote {typed[0]} opens here and does not close on this line"
        yield Trap(rules.OPEN_QUOTE, line.value, line.value + 1, message, change, line.value, swaps)
    else:
        message = f'the text ends with the second quote; "{behind}" stands behind it'
        yield Trap(rules.AFTER_QUOTE, line.quote, line.end, message, change, line.value, swaps)


def _list_mark(line: Line, _: set[str]) -> Iterator[Trap]:
    mark = None if line.in_flow else _BULLET.match(line.text, line.indent)
    if mark is None:
        return
    start, end = mark.span()
    swaps = None if mark[0] == "-" else {at: "-" if at == start else " " for at in range(start, end)}
    said = line.text[end : line.end].strip()
    bare = None if line.key else _NAME_AND_DOSE.match(said)
    change = _write(f"- {bare[1]}: {bare[2]}" if bare else f"- {said}")
    message = f'"{mark[0]}" starts no line of a list'
    yield Trap(rules.LIST_MARK, start, end, message, change, end if bare else line.end, swaps)


def _no_blank(line: Line, _: set[str]) -> Iterator[Trap]:
    if line.brackets or line.quote is not None or line.key:
        return
    tight = _TIGHT.match(line.text, line.value, line.end)
    if tight:
        at = tight.start(1)
        change = _write(f"{line.text[line.indent : at]}: {line.text[at + 1 : line.end]}")
        swaps: Mapping[int, str] | None = {} if line.start > line.indent else None
        yield Trap(rules.NO_BLANK, at, at + 1, "no blank behind the colon", change, line.start, swaps)


def _write(typed: str) -> str:
    return f"write `{typed}`"


LOOKS: Final[tuple[Callable[[Line, set[str]], Iterator[Trap]], ...]] = (
    _control, _tab, _odd_blank, _list_mark, _lone_dash, _quote, _sign, _hash, _second_colon, _no_blank,
)  # fmt: skip
