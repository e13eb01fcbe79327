"""Lines that begin with tabs: the blanks that put them in line with what stands above."""

from typing import Final, NamedTuple

from setwright.reading.lines import Line

STEP: Final = 2
"""Blanks by which a line stands further in than the key above it (choice)."""


class _Above(NamedTuple):
    """The line above: the tabs it begins with, where its first word is put, and whether it opens a list."""

    tabs: int = 0
    start: int = 0
    opens: bool = False


class Indents:
    """How many blanks each line begins with, in the order of the file, or needs where it begins with tabs.

    Below a key that opens a list a line stands a step further in; a list goes on where it began, words
    under a movement in line with its name; and what begins as some line before does stands in line with it.
    """

    def __init__(self) -> None:
        self._above = _Above()
        self._list = 0
        self._like: dict[tuple[str, bool], int] = {}

    def of(self, line: Line) -> int:
        """The blanks of the next line."""
        lead = line.text[: line.indent]
        tabs = lead.count("\t")
        listed = line.text.startswith("-", line.indent)
        further = not listed and line.key_end == line.start
        indent = self._in_line(lead, tabs, listed=listed, further=further) if tabs else len(lead)
        opens = line.text.endswith(":", 0, line.end)
        mark = line.start - line.indent
        self._above = _Above(tabs, indent + mark, opens)
        self._list = indent if listed else self._list
        if tabs:
            self._like[lead, listed] = indent
            self._like[lead + " " * mark, False] = indent + mark
        return indent

    def _in_line(self, lead: str, tabs: int, *, listed: bool, further: bool) -> int:
        """The blanks of a line with tabs; ``further``: it has no key, so it goes on with the text above."""
        before = self._like.get((lead, listed))
        if before is not None and (tabs < self._above.tabs or (listed and not self._above.opens)):
            return before
        if self._above.opens or further:
            return self._above.start + STEP
        return self._list if listed else self._above.start
