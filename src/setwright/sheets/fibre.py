"""The fibre picture: the chest as three fans of strands from the front, and the arm's travel from above.

Bones, arm, strands and paths are the engine's own points. The body outlines are reading aids, not model:
chin, neck and flank from the front, chest, head and nose from above. So are the widths of the bones.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

import numpy as np

from setwright.engine.geometry import PARTS, Part
from setwright.engine.picture import MovementPicture
from setwright.sheets.distance import distance, nearest
from setwright.sheets.fan import Tone, fan
from setwright.sheets.phrases import say
from setwright.sheets.projection import Layout, View
from setwright.sheets.svg import (
    Point,
    Points,
    arrow,
    capsule,
    curve,
    line,
    path,
    polygon,
    polyline,
    ring,
    tag,
    text,
)

Tones = Mapping[Part, Tone]

ARM_RADII_M: Final = (0.024, 0.018)
"""At the shoulder: the humeral head of Seth et al. 2019 (0.0245), rounded; at the elbow: choice."""

CLAVICLE_RADIUS_M: Final = 0.0065
"""Half the width of the bar drawn for the clavicle; choice."""

STERNUM_M: Final = (
    (0, 0.022),
    (-0.03, 0.022),
    (-0.045, 0.013),
    (-0.1, 0.017),
    (-0.14, 0.012),
    (-0.172, 0.004),
)
"""(Y, half-width) of the sternum's outline, notch to lower tip; widths are choices."""

CHIN_M: Final = (0.165, 0.072, 0.11)
"""Ellipse of the face from the front: centre Y, half-width, half-height; choice."""

NECK_M: Final = ((0.053, 0.1), (0.057, 0.06))
"""(Z, Y) of the neck's edge, top and foot; choice."""

SLOPE_M: Final = (0.03, 0.012)
"""How far above the AC joint the neck bends into the shoulder's slope and the slope ends; choice."""

FLANK_M: Final = ((0.157, -0.1), (0.152, -0.18), (0.13, -0.315))
"""(Z, Y) of the body's side below the arm pit; choice."""

CHEST_M: Final = (-0.05, 0.135, 0.092)
"""Ellipse of the chest from above: centre X, half-width, half-depth; choice."""

HEAD_M: Final = (-0.03, 0.075, 0.095)
"""Ellipse of the head from above; choice."""

NOSE_M: Final = ((0.017, 0.05), (0, 0.1), (-0.017, 0.05))
"""(Z, X) of the nose; choice."""

# Widths of lines, lengths of dashes and heads, mm. Choices: lines under 0.2 and dashes under 1.2 are lost
# when a copy is copied.
AID: Final = 0.2
GHOST: Final = 0.24
MIDLINE: Final = 0.3
LIMB: Final = 0.35
ELBOW_PATH: Final = 0.45
HAND_PATH: Final = 0.6
GHOST_DASH: Final = "1.3 0.8"
MIDLINE_DASH: Final = "3 0.9 0.6 0.9"
ELBOW_HEAD: Final = 2.2
HAND_HEAD: Final = 2.6
RING: Final = 0.8

LABEL_Z_M: Final = -0.042
"""Z of the labels' left edge, just off the sternum; choice."""

LABELS_Y_M: Final[Mapping[Part, float]] = {"clavicular": 0.024, "sternal": -0.072, "costal": -0.168}
"""Y of each label's first base line; choice: evenly spaced, so that pictures compare."""

PATH_POINTS: Final = 5
"""A drawn path is a curve through so many points at equal steps of the way; choice: the corners that an arm
path has at its key postures look like mistakes."""


@dataclass(frozen=True, slots=True)
class Names:
    """What the parts are called in a picture with labels, and the height of that type, mm."""

    phrases: Mapping[Part, str]
    size: float

    def of(self, part: Part) -> str:
        """The name of one part."""
        return say(f"picture.{self.phrases[part]}")


TECHNICAL: Final = Names({part: part for part in PARTS}, 4.2)
PLAIN: Final = Names({"clavicular": "collarbone", "sternal": "breastbone", "costal": "ribs"}, 3.75)
"""By where the parts come from, for readers who know no anatomy; sizes are choices: the names fit."""


def front_view(layout: Layout, picture: MovementPicture, tones: Tones, name: str, names: Names) -> str:
    """The view from the front: body, arm, and the three fans at the start; ``name`` is the id of its clip."""
    view = layout.front
    inside = [
        _outline_from_front(view, picture),
        _midline(view),
        *(_upper_arm(view, picture, sample, ghost=True) for sample in _later(picture)),
        _bones(view, picture),
        _upper_arm(view, picture, 0, ghost=False),
        *(_fan(layout, picture, part, tones[part]) for part in reversed(PARTS)),
    ]
    if layout.named:
        inside.append(_way(view, picture.elbow, ELBOW_PATH, ELBOW_HEAD))
        inside += [_label(layout, picture, part, tones[part], names) for part in PARTS]
    return view.clipped(name, "".join(inside))


def view_from_above(layout: Layout, picture: MovementPicture, name: str) -> str:
    """The view from above: the arm, the hand's way, and its distance from the midline; ``name`` as above."""
    view = layout.above
    hand = view.place(picture.hand[0])
    inside = [
        _body_from_above(view),
        _midline(view),
        *(_whole_arm(view, picture, sample, ghost=True) for sample in _later(picture)),
        _whole_arm(view, picture, 0, ghost=False),
        _way(view, picture.hand, HAND_PATH, HAND_HEAD),
        ring(hand, RING, LIMB),
    ]
    nearest_hand = picture.hand[nearest(picture.hand)]
    return view.clipped(name, "".join(inside)) + distance(view, nearest_hand, layout.text)


def _later(picture: MovementPicture) -> tuple[int, int]:
    """The samples drawn as ghosts: half way and the end."""
    last = len(picture.hand) - 1
    return last // 2, last


def _midline(view: View) -> str:
    top, bottom = (view.midline, view.top), (view.midline, view.bottom)
    return line(top, bottom, MIDLINE, stroke_dasharray=MIDLINE_DASH)


def _upper_arm(view: View, picture: MovementPicture, sample: int, *, ghost: bool) -> str:
    shoulder, elbow = view.place(picture.GH[sample]), view.place(picture.elbow[sample])
    outline = capsule(shoulder, elbow, *(radius * view.scale for radius in ARM_RADII_M))
    return path(outline, GHOST, stroke_dasharray=GHOST_DASH) if ghost else path(outline, LIMB, fill="#fff")


def _whole_arm(view: View, picture: MovementPicture, sample: int, *, ghost: bool) -> str:
    elbow, hand = view.place(picture.elbow[sample]), view.place(picture.hand[sample])
    look = {"stroke_dasharray": GHOST_DASH} if ghost else {}
    forearm = line(elbow, hand, GHOST if ghost else LIMB, **look)
    return forearm + _upper_arm(view, picture, sample, ghost=ghost)


def _way(view: View, points: Points, width: float, head: float) -> str:
    way = view.page(points)
    gone = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(way, axis=0).T))])
    at = np.linspace(0, gone[-1], PATH_POINTS)
    return arrow(np.stack([np.interp(at, gone, column) for column in way.T], axis=-1), width, head)


def _ellipse(view: View, middle: float, half_width: float, half_height: float, width: float) -> str:
    x, y = view.at(0, middle)
    radii = {"rx": half_width * view.scale, "ry": half_height * view.scale}
    return tag("ellipse", cx=x, cy=y, **radii, fill="#fff", stroke_width=width)


def _outline_from_front(view: View, picture: MovementPicture) -> str:
    _, height, out = map(float, picture.AC[0])
    (neck, jaw), turn, foot = NECK_M[0], *(height + above for above in SLOPE_M)
    slope = curve(view.at(neck, jaw), view.at(neck, turn), view.at(out, foot))
    other_side = polyline([view.at(-z, y) for z, y in NECK_M])
    flank = curve(*(view.at(z, y) for z, y in FLANK_M))
    edges = "".join(path(edge, AID) for edge in (slope, other_side, flank))
    return edges + _ellipse(view, *CHIN_M, AID)


def _body_from_above(view: View) -> str:
    nose = polyline([view.at(z, x) for z, x in NOSE_M])
    return _ellipse(view, *CHEST_M, GHOST) + path(nose, GHOST, fill="#fff") + _ellipse(view, *HEAD_M, GHOST)


def _bones(view: View, picture: MovementPicture) -> str:
    half = CLAVICLE_RADIUS_M * view.scale
    clavicle = capsule(view.place(picture.SC), view.place(picture.AC[0]), half, half)
    right = [view.at(half_width, y) for y, half_width in STERNUM_M]
    left = [view.at(-half_width, y) for y, half_width in reversed(STERNUM_M)]
    return path(clavicle, AID, fill="#fff") + path(polygon(right + left), AID, fill="#fff")


def _fan(layout: Layout, picture: MovementPicture, part: Part, tone: Tone) -> str:
    own = picture.part == PARTS.index(part)
    strands = picture.strands[0, own]
    lengths = np.linalg.norm(np.diff(strands, axis=1), axis=-1).sum(axis=1)
    return fan(layout.front.page(strands), picture.tendon[own] / lengths, tone, layout.pitch)


def _label(layout: Layout, picture: MovementPicture, part: Part, tone: Tone, names: Names) -> str:
    view, size = layout.front, names.size
    origin = view.place(picture.strands[0, picture.part == PARTS.index(part), -1].mean(axis=0))
    x, y = view.at(LABEL_Z_M, LABELS_Y_M[part])
    leader_end: Point = (x - 0.6, y - size / 3)
    return (
        line(origin, leader_end, AID)
        + ring(origin, RING / 1.5, AID)
        + text((x, y), names.of(part), size, font_weight="bold")
        + text((x, y + 1.2 * size), say(f"tone.{tone}"), size)
    )
