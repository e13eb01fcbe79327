"""Nodes from the events of the YAML parser: own copies of repeated lines, doubles and splits reported."""

from collections.abc import Iterator, Mapping
from typing import Any, Final

import yaml

from setwright.findings import Finding
from setwright.places import Place
from setwright.reading import file_rules as rules
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.traps import unmask

MOST_NODES: Final = 60_000
"""Most values in a file, repeated lines counted each time (choice: a plan of 10,000 lines has 40,000)."""
DEEPEST: Final = 40
"""Deepest nesting (choice: a plan needs 10)."""


PARSER: Final = getattr(yaml, "CBaseLoader", yaml.BaseLoader)
"""The parser in C where PyYAML was built with it; its own in Python, slower, reads the same."""

TOO_DEEP: Final = "maximum nesting depth"
"""Words of the parser when it gives up before we do."""


class TooBigError(Exception):
    """The file is beyond a limit; the text says which."""


class Builder:
    """Nodes from parser events, one document."""

    def __init__(self, file: str, typed: list[str], shifts: Mapping[int, int]) -> None:
        self.findings: list[Finding] = []
        self._file = file
        self._typed = typed
        self._shifts = shifts
        self._anchors: dict[str, tuple[Node, int]] = {}
        self._count = 0

    def document(self, text: str) -> Node | None:
        """The root of the first document; None when there is none.

        Raises: yaml.YAMLError, TooBigError.
        """
        events = iter(yaml.parse(text, Loader=PARSER))
        for event in events:
            if isinstance(event, yaml.DocumentStartEvent):
                first = next(events)
                root = self._node(first, events, 0)
                for _ in events:
                    pass
                return None if _is_nothing(first) else root
        return None

    def _node(self, event: Any, events: Iterator[Any], depth: int) -> Node:
        if depth > DEEPEST:
            raise TooBigError(f"values more than {DEEPEST} levels deep")
        if isinstance(event, yaml.AliasEvent):
            return self._alias(event)
        before = self._count
        self._step(1)
        node: Node
        if isinstance(event, yaml.ScalarEvent):
            node = self._scalar(event)
        elif isinstance(event, yaml.SequenceStartEvent):
            node = self._listing(event, events, depth)
        else:
            node = self._pairs(event, events, depth)
        if event.anchor:
            self._anchors[event.anchor] = node, self._count - before
        return node

    def _step(self, nodes: int) -> None:
        self._count += nodes
        if self._count > MOST_NODES:
            raise TooBigError(f"more than {MOST_NODES:,} values")

    def _alias(self, event: Any) -> Node:
        place = self._place(event.start_mark, event.end_mark)
        known = self._anchors.get(event.anchor)
        if known is None:
            message = f"*{event.anchor} stands inside the lines that it repeats"
            change = "write the lines out"
            self.findings.append(rules.ALIAS.at(place, message, change))
            return Scalar("", place)
        self._step(known[1])
        return known[0]

    def _place(self, start: Any, end: Any, quote: int = 0) -> Place:
        line, last = start.line + 1, end.line + 1
        column = start.column + 1 - self._shifts.get(line, 0) + quote
        end_column = end.column + 1 - self._shifts.get(last, 0) - quote
        if last == line:
            return Place(self._file, line, max(column, 1), line, max(end_column, column, 1))
        return Place(self._file, line, max(column, 1), last, max(end_column, 1))

    def _scalar(self, event: Any) -> Scalar:
        quoted = event.style in ("'", '"')
        text = unmask(event.value)
        place = self._place(event.start_mark, event.end_mark, int(quoted))
        if event.style in ("|", ">"):
            return Scalar(text.strip(), place, lines=1 + text.strip().count("\n"))
        lines = place.end_line - place.line + 1
        if lines > 1 and not quoted and self._is_glued(place):
            row = self._typed[place.line - 1]
            return Scalar(row[place.column - 1 :].strip(), self._to_end(place.line, place.column))
        lead = len(text) - len(text.lstrip()) if lines == 1 else 0
        return Scalar(
            text.strip(), place.shifted(lead, lead + len(text.strip())) if lead else place, quoted, lines
        )

    def _is_glued(self, place: Place) -> bool:
        """Whether a line of a list was read as the end of the text at ``place``; then it is reported."""
        glued = False
        for number in range(place.line + 1, place.end_line + 1):
            words = self._typed[number - 1].lstrip()
            if words.startswith("- "):
                glued = True
                above = self._typed[place.line - 1]
                indent = " " * (len(above) - len(above.lstrip()))
                change = f"write it with {len(indent)} blanks in front: `{indent}{words}`"
                at = self._to_end(number, len(self._typed[number - 1]) - len(words) + 1)
                self.findings.append(rules.GLUED.at(at, "this line is read as part of the one above", change))
        return glued

    def _to_end(self, line: int, column: int) -> Place:
        return Place(self._file, line, column, line, len(self._typed[line - 1]) + 1)

    def _listing(self, event: Any, events: Iterator[Any], depth: int) -> Listing:
        nodes = []
        while not isinstance(child := next(events), yaml.SequenceEndEvent):
            nodes.append(self._node(child, events, depth + 1))
        return Listing(tuple(nodes), self._place(event.start_mark, event.start_mark))

    def _pairs(self, event: Any, events: Iterator[Any], depth: int) -> Pairs:
        pairs: list[tuple[Scalar, Node]] = []
        split: list[Scalar] = []
        seen: dict[str, Scalar] = {}
        while not isinstance(child := next(events), yaml.MappingEndEvent):
            key = self._node(child, events, depth + 1)
            value = self._node(next(events), events, depth + 1)
            if not isinstance(key, Scalar):
                message = "a key is one word or a few words, not a list"
                change = "write `name: value`; moves that go together stand under `superset:`, one line each"
                self.findings.append(rules.UNREADABLE.at(key.place, message, change))
            elif event.flow_style and isinstance(value, Scalar) and value.is_empty and _no_colon(key, value):
                split.append(key)
                pairs[-1:] = [_joined(pairs[-1], key)] if pairs else [(key, value)]
            elif (first := seen.get(key.text.casefold())) is not None:
                self._double(key, first)
            else:
                pairs.append((key, value))
                seen[key.text.casefold()] = key
        if split:
            self._split(split[0], pairs)
        return Pairs(tuple(pairs), self._place(event.start_mark, event.start_mark))

    def _double(self, key: Scalar, first: Scalar) -> None:
        message = f'"{key.text}" stands twice, on line {first.place.line} and on line {key.place.line}'
        change = f"keep line {first.place.line} or line {key.place.line}, and take the other out"
        self.findings.append(rules.DOUBLE_KEY.at(key.place, message, change))

    def _split(self, key: Scalar, pairs: list[tuple[Scalar, Node]]) -> None:
        texts = [
            f"{name.text}: {value.text if isinstance(value, Scalar) else '...'}" for name, value in pairs
        ]
        message = f'the comma in front of "{key.text}" starts a new key here'
        lines = "; ".join(f"`{text}`" for text in texts)
        self.findings.append(rules.SPLIT.at(key.place, message, f"write without braces, one a line: {lines}"))


def _is_nothing(event: Any) -> bool:
    """Whether a document holds no character at all."""
    start, end = event.start_mark, event.end_mark
    return isinstance(event, yaml.ScalarEvent) and start.index == end.index


def _no_colon(key: Scalar, value: Scalar) -> bool:
    """Whether nothing, not even a colon, stands between a key and its empty value."""
    return (value.place.line, value.place.column) == (key.place.end_line, key.place.end_column)


def _joined(pair: tuple[Scalar, Node], more: Scalar) -> tuple[Scalar, Node]:
    """The pair with a value that a comma had cut off put back."""
    name, value = pair
    if not isinstance(value, Scalar):
        return pair
    place = Place(
        value.place.file, value.place.line, value.place.column, more.place.end_line, more.place.end_column
    )
    return name, Scalar(f"{value.text}, {more.text}", place, value.quoted, value.lines)
