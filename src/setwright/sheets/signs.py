"""Small signs beside words: a swatch for each tone, and the three lines of pull as a fan at its smallest."""

from typing import Final

from setwright.sheets.fan import FAN_DASH, Tone
from setwright.sheets.phrases import say
from setwright.sheets.svg import Point, drawing, hatch, line, rectangle

SWATCH: Final = (11.0, 4.6)
SIGN: Final = (8.0, 5.5)
"""Width and height, mm; choice."""

TONES: Final[tuple[Tone, ...]] = ("much", "some", "none")
"""Every tone, in the order of a key."""

SWATCH_LINES: Final = {"much": (0.75, 1.15), "some": (0.22, 1.5)}
"""Width and pitch of the slanted lines, mm; choice."""

FRAME: Final = 0.25

ARM: Final[Point] = (0.6, 2.75)
LINE_ENDS: Final[dict[str, Point]] = {"clavicular": (7.4, 0.7), "sternal": (7.4, 2.75), "costal": (7.4, 4.8)}
"""The arm is the one point on the left; the lines run to collarbone, breastbone and ribs, top to bottom."""

FOLLOWED: Final = 1.1
OTHER: Final = 0.2
"""Widths of the strokes, mm; choice."""


def swatch_svg(tone: Tone, width: float = SWATCH[0]) -> str:
    """The swatch of one tone, ``width`` x 4.6 mm; a word stands beside it. It needs no id.

    >>> swatch_svg("none")[-34:]
    'stroke-dasharray="1.3 0.8"/></svg>'
    """
    return drawing(width, SWATCH[1], say(f"tone.{tone}"), [swatch((0, 0), tone, width)])


def swatch(corner: Point, tone: Tone, width: float = SWATCH[0]) -> str:
    """The swatch as a piece of another picture, with its upper left corner at ``corner``."""
    inset = FRAME / 2
    left, top = corner
    box = (left + inset, top + inset, left + width - inset, top + SWATCH[1] - inset)
    if tone == "none":
        return rectangle(box, stroke_width=FRAME, stroke_dasharray=FAN_DASH)
    return hatch(box, *SWATCH_LINES[tone]) + rectangle(box, stroke_width=FRAME)


def line_sign_svg(followed: str) -> str:
    """The sign of a movement's line, 8 x 5.5 mm, from the library's word for it.

    ``followed``: a part, "between" two parts (both strokes are thick), or "none" (no stroke is).
    """
    strokes = [
        line(ARM, end, FOLLOWED if part in followed else OTHER, stroke_linecap="round")
        for part, end in LINE_ENDS.items()
    ]
    return drawing(*SIGN, say("picture.line_of_pull", line=followed), strokes)
