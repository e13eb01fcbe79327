"""The dimension under the view from above: how far the hand is short of the body's midline or past it."""

from typing import Final

import numpy as np
from numpy.typing import NDArray

from setwright.sheets.phrases import say
from setwright.sheets.projection import View
from setwright.sheets.svg import Point, arrow_head, line, rectangle, text

EXTENSION: Final = 0.22
DIMENSION: Final = 0.24
HEAD: Final = 1.7
"""Widths of lines and length of a head, mm; choice."""

ROOM: Final = 4.2
"""Under this many mm between the two lines the arrows come from outside; choice, as on a machine drawing."""

TAIL: Final = 3.0
"""Length of an arrow that comes from outside, mm; choice."""

ADVANCE: Final = 0.52
"""Mean width of a bold character as a share of its height, for the white ground; measured."""


def hand_words(hand: NDArray[np.float64]) -> str:
    """How near the midline the right hand comes on its path (n, 3), or how far past it, in a few words.

    >>> hand_words(np.array([[0.1, 0, 0.6], [0.5, 0, -0.104]]))
    'hand ends 10 cm past the midline'
    >>> hand_words(np.array([[0.1, 0, 0.2], [0.1, 0, 0.6]]))
    'hand stays 20 cm short of the midline'
    """
    sample = nearest(hand)
    past = round(_centimetres_past(hand[sample]))
    ends = sample == len(hand) - 1
    if past == 0:
        return say("picture.hand_at" if ends else "picture.hand_stays_at")
    if past > 0:
        return say("picture.hand_past" if ends else "picture.hand_goes_past", cm=past)
    return say("picture.hand_short" if ends else "picture.hand_stays_short", cm=-past)


def nearest(hand: NDArray[np.float64]) -> int:
    """The sample of a path (n, 3) at which the right hand is nearest to the midline or farthest past it."""
    return int(hand[:, 2].argmin())


def _centimetres_past(hand: NDArray[np.float64]) -> float:
    """To one decimal, as the library keeps it, so that paper and text round alike."""
    return round(float(-100 * hand[2]), 1)


def _on_the_line(centimetres: float) -> str:
    whole = round(centimetres)
    if whole == 0:
        return say("picture.at")
    return say("picture.past" if whole > 0 else "picture.short", cm=abs(whole))


def distance(view: View, hand: NDArray[np.float64], size: float) -> str:
    """Extension line, dimension line and words of ``size`` mm for the (3,) place of the hand."""
    x, y = view.place(hand)
    level = view.bottom - 0.6 * size
    words = _on_the_line(_centimetres_past(hand))
    past = x > view.midline
    outside = past and x - view.midline < ROOM
    end = (view.midline - (TAIL if outside else 0) - 1, level + size / 3 if past else level - 1)
    return (
        line((x, y + 1.2), (x, level + 1), EXTENSION)
        + _ground(end, words, size)
        + _dimension(x, view.midline, level)
        + text(end, words, size, font_weight="bold", text_anchor="end")
    )


def _ground(end: Point, words: str, size: float) -> str:
    right, base = end
    box = (right - ADVANCE * size * len(words), base - 0.85 * size, right, base + 0.15 * size)
    return rectangle(box, fill="#fff", stroke="none")


def _dimension(hand: float, midline: float, level: float) -> str:
    left, right = sorted((hand, midline))
    if right - left >= ROOM:
        heads = arrow_head((left, level), (-1, 0), HEAD) + arrow_head((right, level), (1, 0), HEAD)
        return line((left, level), (right, level), DIMENSION) + heads
    heads = arrow_head((left, level), (1, 0), HEAD) + arrow_head((right, level), (-1, 0), HEAD)
    return line((left - TAIL, level), (right + TAIL, level), DIMENSION) + heads
