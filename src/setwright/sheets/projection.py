"""Where the thorax frame lies on the page: two views, each with one scale for all movements, in two sizes."""

from dataclasses import dataclass
from typing import Final, Literal, TypeVar

import numpy as np
from numpy.typing import NDArray

from setwright.sheets.svg import Point, Points, rectangle, tag

Size = Literal["60", "120"]
"""Width of the picture, mm."""

Metres = TypeVar("Metres", float, NDArray[np.float64])


@dataclass(frozen=True, slots=True)
class View:
    """One view of the athlete, who faces the reader: the right side is on the left.

    ``left``, ``top``: corner on the page, mm; ``scale``: mm on the page per metre of body. ``right_m``:
    Z at the left edge, ``across_m``: Z from edge to edge. ``down``: which way of the thorax frame runs
    down the page (X forward for the view from above, -Y for the view from the front), ``first_m`` its
    coordinate (X or Y) at the top edge and ``deep_m`` how much of it is shown.
    """

    left: float
    top: float
    scale: float
    right_m: float
    across_m: float
    down: Literal["X", "-Y"]
    first_m: float
    deep_m: float

    @property
    def bottom(self) -> float:
        """Lower edge, mm on the page."""
        return self.top + self.deep_m * self.scale

    @property
    def midline(self) -> float:
        """Where the body's midline (Z = 0) lies across the page, mm."""
        return self.left + self.right_m * self.scale

    def at(self, z: Metres, other: Metres) -> tuple[Metres, Metres]:
        """Page place, mm, of Z and, in the view from the front, Y, else X; metres."""
        sign = 1 if self.down == "X" else -1
        across, deep = self.right_m - z, sign * (other - self.first_m)
        return self.left + across * self.scale, self.top + deep * self.scale

    def page(self, points: Points) -> Points:
        """(..., 2) places on the page of (..., 3) points of the thorax frame, metres."""
        x, y = self.at(points[..., 2], points[..., 0 if self.down == "X" else 1])
        return np.stack([x, y], axis=-1)

    def place(self, point: Points) -> Point:
        """Page place of one (3,) point of the thorax frame, metres."""
        x, y = self.page(point)
        return float(x), float(y)

    def clipped(self, name: str, body: str) -> str:
        """``body`` cut off at the edges of the view; ``name`` is an id, unique in the file."""
        edge = rectangle((self.left, self.top, self.left + self.across_m * self.scale, self.bottom))
        return tag("clipPath", edge, id=name) + tag("g", body, clip_path=f"url(#{name})")


@dataclass(frozen=True, slots=True)
class Layout:
    """One size of the picture. ``text``: height of type, mm; ``pitch``: width of one slice of a fan, mm."""

    width: float
    height: float
    front: View
    above: View
    text: float
    pitch: float
    named: bool


LAYOUTS: Final[dict[Size, Layout]] = {
    "120": Layout(
        width=120,
        height=57,
        front=View(0, 0, 1000 / 8, 0.405, 0.617, "-Y", 0.14, 0.456),
        above=View(77.2, 6, 1000 / 22, 0.70, 0.94, "X", -0.36, 1.122),
        text=4.2,
        pitch=1.35,
        named=True,
    ),
    "60": Layout(
        width=60,
        height=35,
        front=View(0, 4.5, 1000 / 10, 0.255, 0.305, "-Y", 0.09, 0.305),
        above=View(31, 0, 1000 / 32.5, 0.70, 0.94, "X", -0.36, 1.1375),
        text=3.5,
        pitch=1.15,
        named=False,
    ),
}
"""Scales, frames and type are choices: every hand path of the library stays inside the view from above."""
