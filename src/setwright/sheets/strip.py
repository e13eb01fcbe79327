"""The length-and-resistance strip: how short and long each part gets, and where it is loaded."""

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import groupby
from typing import Final

import numpy as np
from numpy.typing import NDArray

from setwright.engine.geometry import PARTS
from setwright.engine.picture import MovementPicture
from setwright.sheets.fan import Tone
from setwright.sheets.phrases import say
from setwright.sheets.projection import Size
from setwright.sheets.svg import Box, hatch, line, rectangle, text

TONES: Final[Sequence[Tone]] = ("none", "some", "much")
"""Tones by the engine's number for a posture."""

LINES: Final = {"much": (0.6, 1.0), "some": (0.2, 1.4)}
"""Width and pitch of the slanted lines, mm; choice."""

BAR: Final = 0.52
"""Height of the bar as a share of its row; choice."""

NARROWEST: Final = 1.4
"""Least width of a bar, mm, so that a part that hardly changes length is still seen; choice."""

TICKS: Final = (0, 100 / 3, 200 / 3, 100)
"""Percent of the range; the outer thirds are what "short" and "long" mean (choice)."""

TICK: Final = 0.2
FRAME: Final = 0.25
END: Final = 0.7
"""Widths of lines, mm; choice."""

DOTS: Final = "0.2 0.8"


@dataclass(frozen=True, slots=True)
class Strip:
    """Measures of one size, mm: ``left`` is where the bars' frame begins, ``row`` the height of a row."""

    width: float
    left: float
    row: float
    text: float

    @property
    def right(self) -> float:
        """Where the frame ends; the last tick's half width stays inside the picture."""
        return self.width - END / 2

    @property
    def height(self) -> float:
        """The line of words and three rows."""
        return self.text * 1.35 + 3 * self.row

    def at(self, percent: float) -> float:
        """Where a length lies across the page, mm; percent of the part's range."""
        return self.left + percent / 100 * (self.right - self.left)


STRIPS: Final[dict[Size, Strip]] = {
    "120": Strip(width=120, left=22, row=6.2, text=4.2),
    "60": Strip(width=60, left=18.5, row=5, text=3.5),
}


def strip(size: Size, picture: MovementPicture) -> str:
    """The three rows, clavicular to costal, short at the left; the thick tick is where the movement ends."""
    form = STRIPS[size]
    base = form.text * 0.85
    words = [
        text((form.left, base), say("picture.shortest"), form.text),
        text((form.right, base), say("picture.longest"), form.text, text_anchor="end"),
    ]
    first = form.height - 2.5 * form.row
    rows = [
        _row(form, first + index * form.row, part, picture.length[:, index], picture.tone[:, index])
        for index, part in enumerate(PARTS)
    ]
    return "".join(words + rows)


def stretches(length: NDArray[np.float64], tone: NDArray[np.int8]) -> list[tuple[float, float, Tone]]:
    """Stretches of one tone, (shortest, longest, tone), percent of the range, the most loaded last.

    ``length`` percent and ``tone`` (n,) along a path. A length that is met twice, as where a part first
    shortens and then lengthens, lies in two stretches: painted in this order, the better loaded one shows.

    >>> stretches(np.array([90.0, 70, 50, 30]), np.array([2, 2, 1, 0]))
    [(30.0, 40.0, 'none'), (40.0, 60.0, 'some'), (60.0, 90.0, 'much')]
    """
    length = length.clip(0, 100)
    edges = np.concatenate([length[:1], (length[1:] + length[:-1]) / 2, length[-1:]])
    found = []
    for level, run in groupby(range(len(length)), key=lambda sample: int(tone[sample])):
        samples = list(run)
        way = np.concatenate([edges[samples[0] : samples[-1] + 2], length[samples]])
        found.append((level, float(way.min()), float(way.max())))
    return [(shortest, longest, TONES[level]) for level, shortest, longest in sorted(found)]


def _row(form: Strip, middle: float, part: str, length: NDArray[np.float64], tone: NDArray[np.int8]) -> str:
    half = BAR * form.row / 2
    ticks = [line((form.at(share), middle - half), (form.at(share), middle + half), TICK) for share in TICKS]
    base = line((form.left, middle), (form.right, middle), TICK, stroke_dasharray=DOTS)
    name = text((0, middle + form.text / 3), say(f"picture.{part}"), form.text)
    return "".join([name, base, *ticks, _bar(form, middle, length.clip(0, 100), tone)])


def _bar(form: Strip, middle: float, length: NDArray[np.float64], tone: NDArray[np.int8]) -> str:
    top, bottom = middle - BAR * form.row / 2, middle + BAR * form.row / 2
    left, right = form.at(float(length.min())), form.at(float(length.max()))
    spare = max(0.0, NARROWEST - (right - left)) / 2
    whole = (max(form.left, left - spare), top, min(form.right, right + spare), bottom)
    filled = [
        _filled((form.at(shortest), top, form.at(longest), bottom), value)
        for shortest, longest, value in stretches(length, tone)
    ]
    finish = form.at(float(length[-1]))
    return (
        rectangle(whole, fill="#fff", stroke="none")
        + "".join(filled)
        + rectangle(whole, stroke_width=FRAME)
        + line((finish, top - 1), (finish, bottom + 1), END)
    )


def _filled(box: Box, tone: Tone) -> str:
    if tone == "none":
        return ""
    return rectangle(box, fill="#fff", stroke="none") + hatch(box, *LINES[tone])
