"""Strands: the way of every line of pull from the humerus to the trunk, its length and its moment arm."""

from dataclasses import dataclass
from functools import cache, partial
from typing import Final

import numpy as np

from setwright.engine.frames import Floats, cross, elbow_direction, norm, turned, unit
from setwright.engine.geometry import Geometry, geometry
from setwright.engine.girdle import Girdle, girdle
from setwright.engine.wrapping import ChestWrap, HeadWrap, over_chest, round_head

ROUNDS: Final = 5
"""Rounds of head and chest in turn; at their fixed point the way is a geodesic (choice: good to 0.02 mm)."""


@dataclass(frozen=True)
class Strands:
    """S strands in postures (...), thorax frame, metres.

    ``length`` (..., S). ``pull`` (..., S, 3): unit vector of the pull on the humerus. ``moment`` (..., S, 3):
    moment about GH of a unit pull; its part along an axis n is the moment arm about n, positive when the
    strand turns the arm that way, and equals minus the change of length a radian. ``insertion``, ``origin``
    (..., S, 3). ``centre`` (..., 1, 3): GH. ``head`` (..., S), ``chest`` (..., strands not on the clavicle).
    """

    length: Floats
    pull: Floats
    moment: Floats
    insertion: Floats
    origin: Floats
    centre: Floats
    head: HeadWrap
    chest: ChestWrap


def strands(frames: Floats, bones: Girdle, shoulder: Geometry) -> Strands:
    """All strands of ``shoulder`` in postures (...).

    ``frames`` (..., 3, 3): humerus axes in columns, thorax frame. ``bones``: girdles of the same postures.

    >>> u = elbow_direction([20.0, 60.0], 90.0)
    >>> strands(turned(0.0, u), girdle(u, 0.0, geometry()), geometry()).length.shape
    (2, 8)
    """
    GH = bones.GH[..., None, :]
    insertion = GH + np.einsum("...ij,sj->...si", frames, shoulder.insertion)
    origin = np.broadcast_to(shoulder.origin, insertion.shape).copy()
    rides, wraps = shoulder.on_clavicle, ~shoulder.on_clavicle
    origin[..., rides, :] = shoulder.SC + np.einsum("...ij,sj->...si", bones.clavicle, shoulder.origin[rides])
    free_side = unit(bones.scapula[..., 0] - bones.scapula[..., 1])[..., None, :]
    round_the_head = partial(
        round_head, radius=shoulder.head_radius, side_from_deg=shoulder.side_from_deg, free_side=free_side
    )
    over_the_chest = partial(over_chest, origin=shoulder.origin[wraps], chest=shoulder.chest)

    meets = over_the_chest(np.broadcast_to(GH, origin.shape)[..., wraps, :]).meets
    for _ in range(ROUNDS - 1):
        meets = over_the_chest(round_the_head(insertion[..., wraps, :], GH, meets).leaves).meets
    following = origin.copy()
    following[..., wraps, :] = meets
    head = round_the_head(insertion, GH, following)
    chest = over_the_chest(head.leaves[..., wraps, :])
    following[..., wraps, :] = chest.meets

    length = head.length + norm(origin - head.leaves)
    length[..., wraps] = head.length[..., wraps] + chest.length
    pull = unit(following - head.leaves)
    return Strands(length, pull, cross(head.leaves - GH, pull), insertion, origin, GH, head, chest)


def posed(
    u: Floats, axial_deg: Floats | float, protraction_deg: Floats | float, shoulder: Geometry
) -> Strands:
    """Strands for arms swung to ``u`` (..., 3) and turned inward, with added protraction, degrees (...).

    >>> posed(elbow_direction(0.0, 90.0), 0.0, 0.0, geometry()).moment.shape
    (8, 3)
    """
    return strands(turned(axial_deg, u), girdle(u, protraction_deg, shoulder), shoulder)


def attainable_postures(shoulder: Geometry) -> tuple[Floats, Floats, Floats]:
    """Upper-arm directions (n, 3), axial turns and protractions (n,), degrees, that span every length.

    >>> attainable_postures(geometry())[0].shape
    (2970, 3)
    """
    law = shoulder.attainable
    plane = np.arange(law["plane"][0], law["plane"][1] + 1, law["step"])
    elevation = np.arange(law["elevation"][0], law["elevation"][1] + 1, law["step"])
    grid = np.meshgrid(plane, elevation, law["axial"], law["protraction"], indexing="ij")
    p, e, axial, protraction = (values.ravel() for values in grid)
    within = (p >= law["behind"]) | (e <= law["behind_elevation"])
    return elbow_direction(p[within], e[within]), axial[within], protraction[within]


@cache
def unit_length_range() -> Floats:
    """Shortest and longest attainable lengths (2, S) of the model's own shoulder, metres.

    >>> (1000 * unit_length_range()).round()[:, 0].tolist()
    [61.0, 174.0]
    """
    shoulder = geometry()
    lengths = posed(*attainable_postures(shoulder), shoulder).length
    span: Floats = np.percentile(lengths, shoulder.attainable["percentiles"], axis=0)
    return span


def length_percent(length: Floats, shoulder: Geometry) -> Floats:
    """Lengths (..., S), metres, as percent of each strand's attainable range; may lie outside 0 to 100.

    >>> length_percent(unit_length_range(), geometry())[:, 0].tolist()
    [0.0, 100.0]
    """
    short, long = unit_length_range() * (shoulder.upper_arm / geometry().upper_arm)
    percent: Floats = 100 * (length - short) / (long - short)
    return percent
