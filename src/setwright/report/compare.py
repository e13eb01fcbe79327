"""Movements side by side, three to a block of 80 columns."""

import textwrap
from collections.abc import Callable, Iterator, Mapping, Sequence
from itertools import zip_longest
from typing import Any, Final

from setwright.library.table import MODEL_NOTE
from setwright.report.phrases import PARTS, beyond, joined, lever, load_word, partners
from setwright.report.working import LEADING, TIE, WORDS, figure, ranking
from setwright.report.wrapping import plain, wrapped

LABEL: Final = 17
COLUMN: Final = 21
ABREAST: Final = 3
NOTHING: Final = "-"
RANKED: Final = 13

RANKING: Final = f"By work on one part, each movement near its own limit; under {TIE:.0f} apart is a tie:"

Movement = Mapping[str, Any]
Figure = Callable[[Movement], str]

FIGURES: Final[Mapping[str, Figure]] = {
    "line": lambda one: str(one["line"]),
    "serves": lambda one: joined(one["serves"], "and") or "none",
    "hand, midline": lambda one: beyond(one["past_midline"]["hand_cm"], "cm"),
    "arm, midline": lambda one: beyond(one["past_midline"]["arm_deg"], "deg"),
    "load arm": lambda one: f"{one['load_arm_cm']:.0f} cm",
    "finished by": lambda one: NOTHING if one["crossing"] else _best_partner(one),
    "finishes": lambda one: _best_partner(one) if one["crossing"] else NOTHING,
}
"""What is said of a whole movement, by the label of its row."""

PART_FIGURES: Final[Mapping[str, Callable[[str, Movement], str]]] = {
    "work, 0-100": lambda _, one: figure(one),
    "along its line": lambda _, one: lever(one),
    "length": lambda _, one: f"{one['length_start']:.0f} to {one['length_end']:.0f} %",
    "loaded long": lambda part, one: load_word(part, one, "long"),
    "loaded short": lambda part, one: load_word(part, one, "short"),
    "a hard set": lambda _, one: f"counts {one['dose']:g}",
}
"""What is said of one part of a movement, by the label of its row."""


def compared(movements: Sequence[Movement]) -> str:
    """Several movements in columns, three to a block, then ranked by work; ends with a line break."""
    blocks = [movements[n : n + ABREAST] for n in range(0, len(movements), ABREAST)]
    paragraphs = ["\n".join(_block(block)) for block in blocks]
    if ranks := [wrapped(line, rest=" " * RANKED) for line in ranking(movements)]:
        paragraphs.append("\n".join([wrapped(RANKING), *ranks]))
    return "\n\n".join([*paragraphs, wrapped(MODEL_NOTE)]) + "\n"


def _block(movements: Sequence[Movement]) -> Iterator[str]:
    yield from _row("", [one["name"] for one in movements])
    yield from _row("scored", ["yes" if one["scored"] else "no, counted" for one in movements])
    yield from _row("load", [one["class"] for one in movements])
    if not any(one["scored"] for one in movements):
        return
    for label, of_movement in FIGURES.items():
        yield from _row(label, [of_movement(one) if one["scored"] else NOTHING for one in movements])
    for part in PARTS:
        yield part
        for label, of_part in PART_FIGURES.items():
            cells = [of_part(part, one["parts"][part]) if one["scored"] else NOTHING for one in movements]
            yield from _row(f"  {label}", cells)
    yield "work beside it"
    for part in LEADING:
        cells = [figure(one["other_parts"][part]) if one["scored"] else NOTHING for one in movements]
        yield from _row(f"  {WORDS[part]}", cells)


def _best_partner(movement: Movement) -> str:
    return next(iter(partners(movement)), NOTHING)


def _row(label: str, cells: Sequence[str]) -> Iterator[str]:
    """The lines of one row, each cell wrapped in its column."""
    columns = [textwrap.wrap(plain(cell), COLUMN - 1) for cell in cells]
    for n, parts in enumerate(zip_longest(*columns, fillvalue="")):
        head = label if n == 0 else ""
        yield (f"{head:<{LABEL}}" + "".join(f"{part:<{COLUMN}}" for part in parts)).rstrip()
