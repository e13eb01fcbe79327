"""Changes to a text by the places of its nodes, made all at once: no change moves the place of another."""

import re
from collections.abc import Sequence
from typing import Final, NamedTuple

from setwright.places import Place
from setwright.reading.nodes import Listing, Node, Scalar
from setwright.records.paper import typed

_CLOSERS: Final = {"[": "]", "{": "}"}
_REMARK: Final = re.compile(r"\s+#\s.*$")


class Spot(NamedTuple):
    """A place between two letters, row and column counted from 0."""

    row: int
    column: int


class Edits:
    """A text and what is to become of it; what is asked for twice is done once."""

    def __init__(self, text: str) -> None:
        self.rows = text.splitlines()
        self._new: dict[tuple[Spot, Spot], str] = {}
        self._gone: set[int] = set()
        self._below: dict[int, Sequence[str]] = {}

    def typed(self, value: Scalar) -> str:
        """A value as it stands in the text, with its quotes."""
        (row, start), (_, end) = _span(value)
        return self.rows[row][start:end]

    def put(self, value: Scalar, text: str) -> None:
        """Another text in the place of a value on one line; its quotes stay."""
        quote = self.typed(value)[0] if value.quoted else ""
        kept = quote and quote not in text
        self._new[_span(value)] = f"{quote}{text}{quote}" if kept else typed(text)

    def take(self, value: Scalar, other: Scalar) -> None:
        """Another value of the text in the place of one, as it is typed there."""
        self._new[_span(value)] = self.typed(other)

    def set(self, key: Scalar, value: Node, text: str) -> None:
        """A value on the key's own line in the place of a list or of keys underneath; a remark stays."""
        start, end = _span(key)[1], self._end(value, key.place)
        remark = _REMARK.search(self.rows[start.row], start.column) if end.row > start.row else None
        self._new[start, end] = f": {text}{remark[0] if remark else ''}"

    def drop(self, key: Scalar, value: Node) -> None:
        """Take out the rows of a key, or of a list's entry that starts with it, to the end of ``value``."""
        row = key.place.line - 1
        self._gone.update(range(row, self._end(value, key.place).row + 1))

    def below(self, key: Scalar, lines: Sequence[str]) -> None:
        """New lines under the row of a key."""
        self._below[key.place.line - 1] = lines

    def text(self) -> str:
        """The text with everything changed."""
        rows: list[str | None] = list(self.rows)
        for (start, end), new in sorted(self._new.items(), reverse=True):
            head, tail = rows[start.row] or "", rows[end.row] or ""
            rows[start.row] = f"{head[: start.column]}{new}{tail[end.column :]}"
            rows[start.row + 1 : end.row + 1] = [None] * (end.row - start.row)
        lines: list[str] = []
        for at, row in enumerate(rows):
            lines += [] if row is None or at in self._gone else [row]
            lines += self._below.get(at, ())
        return "\n".join(lines) + "\n"

    def _end(self, node: Node, least: Place) -> Spot:
        """Where a node ends, with its bracket; what stands before ``least`` is repeated from there."""
        last = max(_ends(node, least), default=Spot(least.end_line - 1, least.end_column - 1))
        at = node.place
        opened = "" if isinstance(node, Scalar) or at < least else self.rows[at.line - 1][at.column - 1 :][:1]
        closer = _CLOSERS.get(opened)
        row, column = last
        while closer and row < len(self.rows):
            if closer in self.rows[row][column:]:
                return Spot(row, self.rows[row].index(closer, column) + 1)
            row, column = row + 1, 0
        return last


def _span(value: Scalar) -> tuple[Spot, Spot]:
    at, quote = value.place, int(value.quoted)
    return Spot(at.line - 1, at.column - 1 - quote), Spot(at.end_line - 1, at.end_column - 1 + quote)


def _ends(node: Node, least: Place) -> list[Spot]:
    if isinstance(node, Scalar):
        return [_span(node)[1]] if node.place >= least else []
    inside = node.nodes if isinstance(node, Listing) else [one for pair in node.pairs for one in pair]
    return [end for one in inside for end in _ends(one, least)]
