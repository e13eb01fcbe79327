"""Flat SVG: tags, numbers and outlines in millimetres, y downward. It knows nothing of what it draws."""

from collections.abc import Iterable, Sequence
from math import acos, atan2, cos, hypot, pi, sin
from typing import Final
from xml.sax.saxutils import escape, quoteattr

import numpy as np
from numpy.typing import NDArray

Point = tuple[float, float]
Points = NDArray[np.float64]
"""(n, 2) points on the page, mm."""

Box = tuple[float, float, float, float]
"""Left, top, right and bottom edge, mm."""

FONT: Final = "Liberation Sans, Arial, Helvetica, sans-serif"
"""A plain face that every desktop has one of; choice."""

TURN: Final = 0.5**0.5
"""Cosine of 45 degrees, the slant of all hatching."""


def num(value: float) -> str:
    """A length in mm with at most two decimals, so that the same picture is the same bytes.

    >>> num(4.2), num(-0.001), num(10 / 3)
    ('4.2', '0', '3.33')
    """
    written = f"{value:.2f}".rstrip("0").rstrip(".")
    return "0" if written == "-0" else written


def tag(name: str, *content: str, **attributes: str | float) -> str:
    """One element; underscores in attribute names become hyphens, numbers are rounded, text is quoted.

    >>> tag("line", x1=0, stroke_width=0.25)
    '<line x1="0" stroke-width="0.25"/>'
    """
    written = "".join(
        f" {key.replace('_', '-')}={quoteattr(value if isinstance(value, str) else num(value))}"
        for key, value in attributes.items()
    )
    inner = "".join(content)
    return f"<{name}{written}>{inner}</{name}>" if inner else f"<{name}{written}/>"


def drawing(width: float, height: float, label: str, body: Iterable[str]) -> str:
    """A picture of ``width`` x ``height`` mm, black lines, with ``label`` for those who can't see it."""
    return tag(
        "svg",
        *body,
        xmlns="http://www.w3.org/2000/svg",
        width=f"{num(width)}mm",
        height=f"{num(height)}mm",
        viewBox=f"0 0 {num(width)} {num(height)}",
        role="img",
        aria_label=label,
        font_family=FONT,
        fill="none",
        stroke="#000",
        stroke_linejoin="round",
    )


def text(at: Point, words: str, size: float, **attributes: str | float) -> str:
    """Words with their base line at ``at``, ``size`` mm high."""
    look: dict[str, str | float] = {"font_size": size, "fill": "#000", "stroke": "none", **attributes}
    return tag("text", escape(words), x=at[0], y=at[1], **look)


def line(start: Point, end: Point, width: float, **attributes: str | float) -> str:
    """A straight stroke of ``width`` mm."""
    return tag("line", x1=start[0], y1=start[1], x2=end[0], y2=end[1], stroke_width=width, **attributes)


def rectangle(box: Box, **attributes: str | float) -> str:
    """A box; ``attributes`` say how it looks."""
    left, top, right, bottom = box
    return tag("rect", x=left, y=top, width=right - left, height=bottom - top, **attributes)


def ring(centre: Point, radius: float, width: float) -> str:
    """A small white circle with a black edge."""
    return tag("circle", cx=centre[0], cy=centre[1], r=radius, fill="#fff", stroke_width=width)


def path(d: str, width: float, **attributes: str | float) -> str:
    """A stroked outline from path data."""
    return tag("path", d=d, stroke_width=width, **attributes)


def polygon(points: Points | Sequence[Point]) -> str:
    """Path data of a closed outline through ``points``."""
    return polyline(points) + "Z"


def polyline(points: Points | Sequence[Point]) -> str:
    """Path data of straight strokes through ``points``."""
    return "M" + "L".join(_pair(point) for point in points)


def curve(start: Point, bend: Point, end: Point) -> str:
    """Path data of one smooth bend: it leaves and arrives in the directions of ``bend``."""
    return f"M{_pair(start)}Q{_pair(bend)} {_pair(end)}"


def _pair(point: Point | Points) -> str:
    return f"{num(point[0])} {num(point[1])}"


def capsule(start: Point, end: Point, start_radius: float, end_radius: float) -> str:
    """Path data of the outline round two circles: a limb from any side, a disc when seen from its end."""
    distance = hypot(end[0] - start[0], end[1] - start[1])
    if distance <= abs(start_radius - end_radius):
        (x, y), radius = max((start, start_radius), (end, end_radius), key=lambda disc: disc[1])
        left, right = _pair((x - radius, y)), _pair((x + radius, y))
        half = f"A{num(radius)} {num(radius)} 0 1 1 "
        return f"M{left}{half}{right}{half}{left}Z"
    along = atan2(end[1] - start[1], end[0] - start[0])
    side = acos((start_radius - end_radius) / distance)

    def touch(centre: Point, radius: float, turn: float) -> str:
        return _pair((centre[0] + radius * cos(along + turn), centre[1] + radius * sin(along + turn)))

    def cap(centre: Point, radius: float, turn: float) -> str:
        arc = f"A{num(radius)} {num(radius)} 0 {int((side < pi / 2) == (turn > 0))} 1 "
        return touch(centre, radius, turn) + arc + touch(centre, radius, -turn)

    return f"M{cap(start, start_radius, side)}L{cap(end, end_radius, -side)}Z"


def arrow(points: Points, width: float, head: float) -> str:
    """A smooth stroke through ``points`` with a solid head ``head`` mm long whose tip is the last of them.

    Tangents are second-order differences, so the head points where the curve was going. Nothing
    where the way is shorter than the head: an arrow of two millimetres says nothing.
    """
    if np.hypot(*np.diff(points, axis=0).T).sum() < head:
        return ""
    tangents = np.gradient(points, axis=0, edge_order=2) / 3
    outgoing, incoming, ends = points[:-1] + tangents[:-1], points[1:] - tangents[1:], points[1:].copy()
    heading = tangents[-1] / np.hypot(*tangents[-1])
    incoming[-1] -= 0.7 * head * heading
    ends[-1] -= 0.7 * head * heading
    bends = "".join(
        "C" + " ".join(_pair(point) for point in bend)
        for bend in np.stack([outgoing, incoming, ends], axis=1)
    )
    return path(f"M{_pair(points[0])}{bends}", width) + arrow_head(points[-1], heading, head)


def arrow_head(tip: Points | Point, heading: Points | Point, length: float) -> str:
    """A solid head, two thirds as wide as long, pointing along the unit vector ``heading``."""
    point, forward = np.asarray(tip, dtype=float), np.asarray(heading, dtype=float)
    base, across = point - length * forward, length / 3 * np.array([-forward[1], forward[0]])
    return tag("path", d=polygon(np.stack([point, base + across, base - across])), fill="#000", stroke="none")


def hatch(box: Box, width: float, pitch: float) -> str:
    """Slanted lines filling a box, as solid outlines cut exactly at its edges: no clip, so no id is needed.

    ``width`` and ``pitch`` are measured across the lines, mm. Lines of neighbouring boxes meet.
    """
    left, top, right, bottom = box
    step, thick, rise = pitch / TURN, width / TURN, bottom - top
    outlines = []
    for index in range(int((left - rise - thick) // step), int(right // step) + 1):
        foot = index * step
        corners = [(foot, bottom), (foot + thick, bottom), (foot + thick + rise, top), (foot + rise, top)]
        cut = _cut(_cut(corners, left, 1), right, -1)
        if cut:
            outlines.append(polygon(cut))
    return tag("path", d="".join(outlines), fill="#000", stroke="none") if outlines else ""


def _cut(corners: list[Point], edge: float, side: int) -> list[Point]:
    """The part of a convex outline on one side of the upright line x = ``edge`` (side 1: right of it)."""
    kept: list[Point] = []
    for (x0, y0), (x1, y1) in zip(corners, corners[1:] + corners[:1], strict=True):
        if (x0 - edge) * side >= 0:
            kept.append((x0, y0))
        if (x0 - edge) * (x1 - edge) < 0:
            kept.append((edge, y0 + (y1 - y0) * (edge - x0) / (x1 - x0)))
    return kept
