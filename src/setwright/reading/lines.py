"""The anatomy of a line of YAML as a coach types it: indentation, hyphens, key, value, remark.

Works on broken files too, line by line; only block text (``|``, ``>``) and open brackets reach over lines.
"""

import re
from collections.abc import Iterator
from typing import Final, NamedTuple

KEY: Final = re.compile(
    r"""("[^"]*"|'[^']*'|[^\s#\[\]{}"'&*!|>%@`,](?:(?!\s\#).)*?)[^\S\n]*:(?=\s|$)""",
)
DASHES: Final = re.compile(r"(?:-\s+)*(?:-$)?")
BLOCK: Final = re.compile(r"[|>][+-]?[ \t]*(?:#.*)?$")
ANCHOR: Final = re.compile(r"&[\w-]+(?:\s+|$)")
_OPENS_IN_FLOW: Final = frozenset("[{,:")


class Line(NamedTuple):
    """One line of a file, by its ``number`` from 1; what is a place in it is an offset from 0 in ``text``.

    ``indent``: the first character that is no blank. ``start``: the first one behind the hyphens of a list.
    ``key_end``: behind the key (equal to ``start`` when there is none). ``value``: where the value starts.
    ``end``: where it ends, remark and blanks left out. ``hash``: the # behind a blank, if there is one.
    ``quote``: behind a quoted value's closing quote, -1 when it doesn't close, None when there is none.
    ``in_flow``: inside brackets that a line above opened. ``depth``: how many are open at its end.
    """

    number: int
    text: str
    indent: int
    start: int
    key_end: int
    value: int
    end: int
    hash: int | None
    quote: int | None
    in_flow: bool
    depth: int

    @property
    def key(self) -> str:
        """The key as typed, without quotes; empty when the line has none."""
        return self.text[self.start : self.key_end].strip("\"' ")

    @property
    def brackets(self) -> bool:
        """Whether the value stands in brackets or braces."""
        return self.in_flow or self.said[:1] in ("[", "{")

    @property
    def said(self) -> str:
        """The value as typed."""
        return self.text[self.value : self.end]

    def with_value(self, value: str) -> str:
        """The line, from its first word to its value, with another value."""
        return (self.text[self.indent : self.value] + value).rstrip()


def anatomy(rows: list[str]) -> Iterator[Line]:
    """Every line that holds more than a remark; lines of block text are left out."""
    block: int | None = None
    depth = 0
    for number, text in enumerate(rows, 1):
        indent = len(text) - len(text.lstrip())
        if indent == len(text):
            continue
        if block is not None:
            if indent > block:
                continue
            block = None
        if text[indent] == "#":
            continue
        line = _line(number, text, indent, depth)
        depth = line.depth
        if depth == 0 and BLOCK.match(text, line.value):
            block = line.start if line.key_end > line.start else line.indent
        yield line


def _line(number: int, text: str, indent: int, depth: int) -> Line:
    start = key_end = value = indent
    if depth == 0:
        dashes = DASHES.match(text, indent)
        start = key_end = value = dashes.end() if dashes else indent
        anchor = ANCHOR.match(text, value)
        value = anchor.end() if anchor else value
        key = KEY.match(text, value)
        if key:
            start, key_end = key.span(1)
            value = _past_blanks(text, key.end())
            anchor = ANCHOR.match(text, value)
            value = anchor.end() if anchor else value
    quote = _closing(text, value) if depth == 0 and text[value : value + 1] in ("'", '"') else None
    sign, depth_after = _walk(
        text, value if quote is None else max(quote, value), depth, quoted=quote is not None
    )
    end = len(text) if sign is None else sign
    return Line(
        number,
        text,
        indent,
        start,
        key_end,
        value,
        len(text[:end].rstrip()),
        sign,
        quote,
        depth > 0,
        depth_after,
    )


def _past_blanks(text: str, at: int) -> int:
    return at + len(text[at:]) - len(text[at:].lstrip())


def _closing(text: str, opening: int) -> int:
    """Behind the quote that closes the one at ``opening``; -1 when none does."""
    mark = text[opening]
    at = opening + 1
    while at < len(text):
        if mark == '"' and text[at] == "\\":
            at += 1
        elif text[at] == mark:
            if mark == '"' or text[at + 1 : at + 2] != "'":
                return at + 1
            at += 1
        at += 1
    return -1


def _walk(text: str, at: int, depth: int, *, quoted: bool) -> tuple[int | None, int]:
    """The first # behind a blank outside quotes, and how many brackets are open at the end of the line."""
    in_flow = depth > 0 or (not quoted and text[at : at + 1] in ("[", "{"))
    if not in_flow:
        found = text.find("#", at)
        while found > 0 and not text[found - 1].isspace():
            found = text.find("#", found + 1)
        return (found if found >= 0 else None), depth
    before = ","
    while at < len(text):
        char = text[at]
        if char in "'\"" and before in _OPENS_IN_FLOW:
            closing = _closing(text, at)
            at = closing if closing > 0 else len(text)
            before = char
            continue
        if char == "#" and text[at - 1].isspace():
            return at, depth
        depth += (char in "[{") - (char in "]}")
        before = before if char.isspace() else char
        at += 1
        if depth <= 0 and char in "]}":
            found = text.find(" #", at)
            return (found + 1 if found >= 0 else None), 0
    return None, depth
