"""The matrix of a week: parts of the chest down, questions across, each answer tied to its finding."""

from collections.abc import Iterable, Mapping
from typing import Final, Literal, NamedTuple

from setwright.coverage import Coverage, Part, PartCover
from setwright.coverage.cover import NEVER_ACROSS
from setwright.findings import Finding
from setwright.reading.words import plural
from setwright.rules.aims import AimInForce

Column = Literal["sets", "follows", "long", "short", "across", "heaviest"]
Tone = Literal["yes", "partly", "no", "cannot be", "held back", "number"]
Marks = Mapping[tuple[Part, str], Finding]

COLUMNS: Final[tuple[Column, ...]] = ("sets", "follows", "long", "short", "across", "heaviest")

SHORT_NAME: Final = 16
"""Longest name of a lift in a cell, in letters (choice: what is left of 80 columns)."""
LEFT_OUT_FIRST: Final = ("barbell", "bench", "parallel-bar", "standing", "dumbbell", "cable", "machine")
"""Words of a movement's name that a cell can do without, the most dispensable first (choice)."""


class Cell(NamedTuple):
    """One answer: its words, its tone, and the finding that speaks of it, if any."""

    text: str
    tone: Tone
    finding: Finding | None = None


class MatrixRow(NamedTuple):
    """The answers for one part of the chest."""

    part: Part
    sets: Cell
    follows: Cell
    long: Cell
    short: Cell
    across: Cell
    heaviest: Cell

    @property
    def cells(self) -> tuple[Cell, ...]:
        """The answers in the order of the columns."""
        return tuple(getattr(self, column) for column in COLUMNS)


def matrix(coverage: Coverage, aim: AimInForce, marks: Marks) -> tuple[MatrixRow, ...]:
    """One row a part; none in a week without chest."""
    if aim.row == "no chest":
        return ()
    return tuple(_row(part, aim.held_back, marks) for part in coverage.parts)


def _row(cover: PartCover, held_back: str | None, marks: Marks) -> MatrixRow:
    part = cover.part
    moves = len({work.movement["key"] for work in cover.served_by})
    cells = {
        "sets": Cell(str(cover.sets), "number"),
        "follows": Cell(plural(moves, "move"), "yes") if moves else Cell("no", "no"),
        "long": _long(cover),
        "short": Cell(cover.loaded_short, cover.loaded_short),
        "across": _across(cover, marked=(part, "across") in marks),
        "heaviest": Cell(short_name(cover.heaviest.name), "yes") if cover.heaviest else Cell("none", "no"),
    }
    if held_back:
        cells = {
            at: Cell(held_back, "held back") if cell.tone == "no" else cell for at, cell in cells.items()
        }
    tied = {at: Cell(cell.text, cell.tone, marks.get((part, at))) for at, cell in cells.items()}
    if tied["across"].finding and tied["across"].tone == "no":
        tied["heaviest"] = cells["heaviest"]
    elif tied["across"].tone != "no":
        tied["across"] = cells["across"]
    return MatrixRow(part, **tied)


def _long(cover: PartCover) -> Cell:
    if cover.part in NEVER_ACROSS and cover.loaded_by:
        percent = cover.loaded_long_percent
        return Cell(f"{percent:.0f} %", "number") if percent is not None else Cell("no", "no")
    return Cell(cover.loaded_long, cover.loaded_long)


def _across(cover: PartCover, *, marked: bool) -> Cell:
    if cover.part in NEVER_ACROSS:
        return Cell("cannot be", "cannot be")
    if cover.across_deg is None:
        return Cell("NEVER" if marked else "no", "no")
    return Cell(f"yes, {cover.across_deg:.0f} deg", "yes")


def short_name(name: str) -> str:
    """A movement's name short enough for a cell: dispensable words out, then cut."""
    words = name.split()
    for word in LEFT_OUT_FIRST:
        if len(" ".join(words)) <= SHORT_NAME:
            break
        if len(words) > 1 and word in words:
            words.remove(word)
    text = " ".join(words)
    return text if len(text) <= SHORT_NAME else f"{text[: SHORT_NAME - 1].rstrip()}."


def marks_of(tied: Iterable[tuple[frozenset[Part], tuple[str, ...], Finding]]) -> Marks:
    """Which finding speaks of which cell; the first one keeps a cell."""
    marks: dict[tuple[Part, str], Finding] = {}
    for parts, columns, finding in tied:
        for part in sorted(parts):
            for column in columns:
                marks.setdefault((part, column), finding)
    return marks
