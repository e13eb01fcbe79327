"""What the YAML parser can't read, in a coach's words, and which lines to leave out to read on."""

import re
from typing import Final, NamedTuple

import yaml

from setwright.findings import Finding
from setwright.places import Place
from setwright.reading import file_rules as rules
from setwright.reading.faults import TextRule
from setwright.reading.lines import Line, anatomy
from setwright.reading.traps import unmask

_STARTED_EARLIER: Final = (
    "could not find expected ':'",
    "unexpected end of stream",
    "',' or ']'",
    "',' or '}'",
)
"""Problems that show only behind the line that has the fault; their context says where it started."""


_PROBLEMS: Final[tuple[tuple[str, TextRule, str, str], ...]] = (
    ("',' or ']'", rules.OPEN_BRACKET, "[ opens here and does not close", "write `{typed}]`"),
    ("',' or '}'", rules.OPEN_BRACKET, "{ opens here and does not close", "write `{typed}}}`"),
    ("end of stream", rules.OPEN_QUOTE, "a quote opens here and does not close", "close it or take it out"),
    ("unknown escape", rules.UNREADABLE, "a backslash in double quotes starts a code", "write `{escaped}`"),
)
"""Words of the parser, and what is said about the line instead; `typed` and `escaped` are filled in."""


_WORDS: Final = re.compile(r"[^\W\d_]+(?:[ -][^\W\d_]+)*")
"""A word or more, without a number."""


_KEYS: Final = frozenset({"rest", "tempo", "load", "rounds", "minutes", "priority", "note", "day", "start"})
"""Keys whose colon is often forgotten (choice)."""


class Broken(NamedTuple):
    """Where the parser stopped: the row (from 0), and the finding about it."""

    row: int
    finding: Finding


def explain(error: yaml.YAMLError, file: str, rows: list[str]) -> Broken:
    """The fault behind a parser error in the ``rows`` it was given, at least one of which is not blank."""
    problem = str(getattr(error, "problem", ""))
    mark = getattr(error, "problem_mark", None)
    context = getattr(error, "context_mark", None)
    if context is not None and any(words in problem for words in _STARTED_EARLIER):
        mark = context
    row = _with_words(rows, mark.line if mark else 0)
    above = _without_colon(rows, row)
    row = row if above is None else above
    typed = unmask(rows[row]).rstrip()
    indent = len(typed) - len(typed.lstrip())
    if above is None:
        rule, message, change = _known(problem, typed.strip()) or _layout(rows, row, indent, typed.strip())
    else:
        rule, message, change = rules.NO_COLON, "a list, and no colon above it", f"write `{typed.strip()}:`"
    place = Place(file, row + 1, indent + 1, row + 1, len(typed) + 1)
    return Broken(row, rule.at(place, message, change))


def _without_colon(rows: list[str], row: int) -> int | None:
    """The row above a line of a list that is to hold it, and is only a word or two."""
    *_, opener, line = (None, None, *anatomy(rows[: row + 1]))
    if opener is None or line is None or line.number != row + 1:
        return None
    if line.start == line.indent or line.indent <= opener.start:
        return None
    return opener.number - 1 if _WORDS.fullmatch(opener.text[opener.start :].rstrip()) else None


def _known(problem: str, typed: str) -> tuple[TextRule, str, str] | None:
    """Rule, message and change of a problem that names its cause."""
    for words, rule, message, change in _PROBLEMS:
        if words in problem:
            return rule, message, change.format(typed=typed, escaped=typed.replace("\\", "\\\\"))
    return None


def _layout(rows: list[str], row: int, indent: int, typed: str) -> tuple[TextRule, str, str]:
    """Rule, message and change of a line that stands in the wrong column, or is no line of a plan."""
    column = _column(rows, row)
    if column is None or column == indent:
        word, _, value = typed.partition(" ")
        change = f"write it as a key with a value, `note: {typed}`, or as a movement with its dose"
        if word in _KEYS and value:
            change = f"write `{word}: {value.strip()}`"
        return rules.UNREADABLE, f'"{typed}" is no key with a value', change
    blanks = "blank" if column == 1 else "blanks"
    message = "this line starts in a column that nothing above it starts in"
    return rules.OUT_OF_LINE, message, f"write it with {column} {blanks} in front: `{' ' * column}{typed}`"


def block_of(rows: list[str], row: int) -> range:
    """The rows to leave out with ``row``: those below it that are indented further."""
    indent = len(rows[row]) - len(rows[row].lstrip())
    end = row + 1
    while end < len(rows) and (not rows[end].strip() or len(rows[end]) - len(rows[end].lstrip()) > indent):
        end += 1
    return range(row, end)


def _with_words(rows: list[str], row: int) -> int:
    """The nearest row that is not blank, at ``row`` or above it, else below."""
    up = next((at for at in range(min(row, len(rows) - 1), -1, -1) if rows[at].strip()), None)
    return next(at for at in range(len(rows)) if rows[at].strip()) if up is None else up


def _column(rows: list[str], row: int) -> int | None:
    """Where the line at ``row`` should start: the nearest column of a block that is open above it."""
    found = list(anatomy(rows[: row + 1]))
    if not found or found[-1].number != row + 1:
        return None
    line = found.pop()
    open_lines: list[Line] = []
    for above in found:
        open_lines = [one for one in open_lines if one.indent < above.indent] + [above]
    if line.start > line.indent:
        columns = [one.indent for one in open_lines if one.start > one.indent]
    else:
        columns = [one.start for one in open_lines if one.key_end > one.start]
    return min(columns, key=lambda column: (abs(column - line.indent), -column), default=None)
