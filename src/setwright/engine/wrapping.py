"""Strands round two surfaces: the humeral head (a sphere), the chest (elliptic cylinders); closed form."""

from dataclasses import dataclass
from functools import lru_cache
from typing import Final

import numpy as np
from numpy.typing import NDArray

from setwright.engine.frames import Floats, cross, dot, norm, unit
from setwright.engine.geometry import Chest

ARC_STEPS: Final = 4096
"""Steps of the arc-length table round an ellipse (choice: its error is below 0.001 mm)."""


@dataclass(frozen=True)
class HeadWrap:
    """Strands from their insertion round the head; lengths in metres, angles in radians.

    ``leaves`` (..., 3): where the strand leaves the head, the insertion without contact. ``axis`` (..., 3),
    ``angle`` (...): the turn about the centre that took it there from where it met the head, 0 without
    contact. ``length`` (...): insertion to ``leaves``. ``touches`` (...).
    """

    leaves: Floats
    axis: Floats
    angle: Floats
    length: Floats
    touches: NDArray[np.bool_]


def round_head(
    insertion: Floats,
    centre: Floats,
    towards: Floats,
    free_side: Floats | None,
    *,
    radius: Floats | float,
    side_from_deg: float = 180.0,
) -> HeadWrap:
    """Shortest ways from ``insertion`` round a sphere towards the points ``towards``, all (..., 3), metres.

    ``radius``: of the sphere, (...) or one for all. ``free_side`` (..., 3): unit vector from the centre to
    the side on which a strand may pass once its ends are more than ``side_from_deg`` apart as seen from the
    centre; None lets it take the shorter way always.

    >>> a, b = np.array([0.05, 0.0, 0.0]), np.array([-0.05, 0.001, 0.0])
    >>> wrap = round_head(a, np.zeros(3), b, np.array([0.0, 1.0, 0.0]), radius=0.03, side_from_deg=75.0)
    >>> bool(wrap.touches), float(wrap.length.round(4))
    (True, 0.078)
    """
    i, q = insertion - centre, towards - centre
    far_i, far_q = norm(i), norm(q)
    i_hat, q_hat = i / far_i[..., None], q / far_q[..., None]
    apart = np.arccos(np.clip(dot(i_hat, q_hat), -1, 1))
    axis = unit(cross(i_hat, q_hat))
    if free_side is not None:
        wrong_side = (dot(i_hat + q_hat, free_side) < 0) & (apart > np.radians(side_from_deg))
        axis = np.where(wrong_side[..., None], -axis, axis)
        apart = np.where(wrong_side, 2 * np.pi - apart, apart)
    a = np.arccos(np.clip(radius / far_i, -1, 1))
    b = np.arccos(np.clip(radius / far_q, -1, 1))
    angle = apart - a - b
    touches = angle > 0
    # The ray to the far end, turned back about the axis by the angle that makes the rest a tangent.
    turned_back = np.cos(b)[..., None] * q_hat - np.sin(b)[..., None] * cross(axis, q_hat)
    leaves = centre + np.asarray(radius)[..., None] * turned_back
    length = np.sqrt(np.maximum(far_i**2 - radius**2, 0)) + radius * angle
    return HeadWrap(
        leaves=np.where(touches[..., None], leaves, insertion),
        axis=axis,
        angle=np.where(touches, angle, 0.0),
        length=np.where(touches, length, 0.0),
        touches=touches,
    )


@dataclass(frozen=True)
class ChestWrap:
    """Strands from a point off the chest to their origin on it; metres, radians; n strands.

    ``meets`` (..., n, 3): first point on the chest, the origin without contact. ``length`` (..., n): the
    whole way. ``angle`` (..., n): of ``meets`` round the ellipse, in the affine picture of ``Chest.flat``.
    ``touches`` (..., n).
    """

    meets: Floats
    length: Floats
    angle: Floats
    touches: NDArray[np.bool_]


def over_chest(start: Floats, origin: Floats, chest: Chest) -> ChestWrap:
    """Shortest ways from ``start`` (..., n, 3) over the front of n cylinders to ``origin`` (n, 3) on them.

    There is no contact when the start lies inside the cylinder (arm across the chest) or past the origin.

    >>> from setwright.engine.geometry import geometry
    >>> shoulder = geometry()
    >>> chest_strands = shoulder.origin[~shoulder.on_clavicle]
    >>> over_chest(np.array([0.0, -0.03, 0.17]), chest_strands, shoulder.chest).touches.tolist()
    [True, True, True, True, True]
    """
    flat, flat_origin = chest.flat(start), chest.flat(origin)
    far = np.hypot(flat[..., 0], flat[..., 1])
    end = np.arctan2(flat_origin[..., 1], flat_origin[..., 0])
    angle = np.arctan2(flat[..., 1], flat[..., 0]) - np.arccos(1 / np.maximum(far, 1))
    touches = (far > 1) & (angle > end)
    angle = np.where(touches, angle, end)
    tangent = np.stack([np.cos(angle), np.sin(angle)], axis=-1)
    gap = (tangent - flat) * chest.semi
    free = np.hypot(gap[..., 0], gap[..., 1])
    flat_length = free + arc(angle, chest) - arc(end, chest)
    low, high = chest.height(start), chest.height(origin)
    height = low + (high - low) * free / flat_length
    return ChestWrap(
        meets=np.where(touches[..., None], chest.at(tangent, height), origin),
        length=np.where(touches, np.hypot(flat_length, high - low), norm(start - origin)),
        angle=angle,
        touches=touches,
    )


def arc(angle: Floats, chest: Chest) -> Floats:
    """Arc lengths round each ellipse, metres (..., n), up to affine angles in -pi to pi (..., n).

    >>> from setwright.engine.geometry import geometry
    >>> (2 * arc(np.zeros(5), geometry().chest)).round(3).tolist()  # round the whole chest
    [0.617, 0.617, 0.617, 0.619, 0.619]
    """
    place = (np.clip(angle, -np.pi, np.pi) + np.pi) * (ARC_STEPS / (2 * np.pi))
    whole = np.minimum(place.astype(np.intp), ARC_STEPS - 1)
    table = _arc_tables(tuple(map(tuple, chest.semi.tolist())))
    strand = np.arange(len(table))
    low = table[strand, whole]
    lengths: Floats = low + (table[strand, whole + 1] - low) * (place - whole)
    return lengths


@lru_cache(maxsize=64)
def _arc_tables(semi: tuple[tuple[float, ...], ...]) -> Floats:
    """Arc lengths at ARC_STEPS + 1 equal angles from -pi to pi, one row an ellipse (midpoint rule)."""
    middle = (np.arange(ARC_STEPS) + 0.5) * (2 * np.pi / ARC_STEPS) - np.pi
    front, side = np.array(semi).T[..., None]
    speed = np.hypot(front * np.sin(middle), side * np.cos(middle))
    steps = np.cumsum(speed, axis=1) * (2 * np.pi / ARC_STEPS)
    return np.concatenate([np.zeros_like(front), steps], axis=1)
