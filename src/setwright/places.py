"""Where something stands: file, line, column, end; and the lines of the file it stands in."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, order=True)
class Place:
    """A span of text in a file, lines and columns counted from 1, the end exclusive.

    ``file`` is the name as the coach gave it on the command line. A span that runs over
    several lines keeps its end line; messages underline the first line only.

    >>> Place("week.yaml", 12, 9, 12, 33).shifted(2, 6)
    Place(file='week.yaml', line=12, column=11, end_line=12, end_column=15)
    """

    file: str
    line: int
    column: int
    end_line: int
    end_column: int

    @staticmethod
    def top(file: str) -> "Place":
        """The top of a file, where nothing in it is meant."""
        return Place(file, 1, 1, 1, 1)

    def shifted(self, start: int, end: int) -> "Place":
        """The part of a one-line span between two offsets, in characters from its start."""
        return Place(self.file, self.line, self.column + start, self.line, self.column + end)


@dataclass(frozen=True, slots=True)
class Source:
    """The text of one file, kept so that a finding can show the line it speaks of."""

    file: str
    text: str

    def line(self, number: int) -> str:
        """Line ``number`` (from 1) without its line end; empty beyond the end."""
        lines = self.text.splitlines()
        return lines[number - 1] if 0 < number <= len(lines) else ""
