"""Directions and frames of the upper arm.

Thorax frame (ISB): X forward, Y up, Z to the right, origin at the suprasternal notch; right arm.
Humerus frame: origin GH, Y from the elbow to GH, X to the side towards which the elbow flexes.
Source: Wu et al. 2005, J Biomech 38:981-992.
"""

from typing import Final

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]

STRAIGHT_ELBOW: Final = 0.08
"""Sine of the elbow bend below which the forearm says nothing of the axial rotation (choice; 4.6 deg)."""

LEAST_PLANE: Final = -150.0
"""Planes of elevation run from here, degrees, for one turn: the cut lies where no arm reaches (choice)."""

SAME_DIRECTION: Final = 1e-9
"""Sine of the angle from which two directions have a great circle between them."""


def norm(vectors: Floats) -> Floats:
    """Lengths of vectors (..., 3), as (...).

    >>> float(norm(np.array([0.0, 3.0, 4.0])))
    5.0
    """
    return np.sqrt(dot(vectors, vectors))


def unit(vectors: Floats) -> Floats:
    """Vectors (..., 3) at length 1; a zero vector stays zero.

    >>> unit(np.array([0.0, 3.0, 4.0])).round(12).tolist()
    [0.0, 0.6, 0.8]
    """
    size = norm(vectors)[..., None]
    scaled: Floats = np.divide(vectors, size, out=np.zeros_like(vectors), where=size > 0)
    return scaled


def dot(one: Floats, other: Floats) -> Floats:
    """Inner products over the last axis, broadcast.

    >>> float(dot(np.array([1.0, 2.0, 3.0]), np.array([1.0, 0.0, 1.0])))
    4.0
    """
    product: Floats = np.einsum("...i,...i->...", one, other)
    return product


def cross(one: Floats, other: Floats) -> Floats:
    """Cross products (..., 3), broadcast; several times faster than np.cross on many short vectors.

    >>> cross(np.array([1.0, 0.0, 0.0]), np.array([0.0, 1.0, 0.0])).tolist()
    [0.0, 0.0, 1.0]
    """
    one, other = np.broadcast_arrays(one, other)
    product = np.empty_like(one)
    for i, j, k in ((0, 1, 2), (1, 2, 0), (2, 0, 1)):
        product[..., i] = one[..., j] * other[..., k] - one[..., k] * other[..., j]
    return product


def across(vectors: Floats, axes: Floats) -> Floats:
    """Vectors (..., 3) without their part along the unit ``axes`` (..., 3).

    >>> across(np.array([1.0, 2.0, 3.0]), np.array([0.0, 1.0, 0.0])).tolist()
    [1.0, 0.0, 3.0]
    """
    return vectors - dot(vectors, axes)[..., None] * axes


def elbow_direction(plane_deg: ArrayLike, elevation_deg: ArrayLike) -> Floats:
    """Unit vectors GH to elbow, thorax frame, (..., 3).

    ``plane_deg``: plane of elevation, degrees; 0 sideways, 90 forward, negative behind.
    ``elevation_deg``: 0 hanging, 180 straight up. Source: ISB, thoracohumeral Y-X-Y angles.

    >>> elbow_direction(90, 90).round(12).tolist()
    [1.0, -0.0, 0.0]
    """
    p, e = np.broadcast_arrays(np.radians(plane_deg), np.radians(elevation_deg))
    return np.stack([np.sin(p) * np.sin(e), -np.cos(e), np.cos(p) * np.sin(e)], axis=-1)


def plane_elevation(u: Floats) -> tuple[Floats, Floats]:
    """Plane of elevation and elevation, degrees (...), of unit upper-arm directions (..., 3).

    The plane runs from LEAST_PLANE for one turn; it has no meaning at elevations 0 and 180.

    >>> [round(float(angle), 9) for angle in plane_elevation(elbow_direction(120, 80))]
    [120.0, 80.0]
    """
    plane = np.degrees(np.arctan2(u[..., 0], u[..., 2]))
    return np.where(plane < LEAST_PLANE, plane + 360, plane), np.degrees(
        np.arccos(np.clip(-u[..., 1], -1, 1))
    )


def turned(axial_deg: ArrayLike, u: Floats) -> Floats:
    """Humerus frames (..., 3, 3), axes in columns, of arms swung straight from hanging to ``u``, then turned.

    ``axial_deg``: turn about the upper arm, degrees, inward positive; at 0 the elbow flexes to where the
    straight swing from hanging (elbow flexing forward) takes it. Not defined with the arm straight up.

    >>> turned(0, elbow_direction(0, 90))[:, 0].round(12).tolist()  # arm sideways: the elbow flexes forward
    [1.0, 0.0, -0.0]
    """
    y = -u
    # Smallest rotation that takes (0, 1, 0) to y, applied to (1, 0, 0).
    x = np.stack(
        [1 - y[..., 0] ** 2 / (1 + y[..., 1]), -y[..., 0], -y[..., 0] * y[..., 2] / (1 + y[..., 1])], axis=-1
    )
    c = np.radians(axial_deg)
    x = np.cos(c)[..., None] * x + np.sin(c)[..., None] * cross(y, x)
    return np.stack([x, y, cross(x, y)], axis=-1)


def humerus_frames(u: Floats, forearm: Floats) -> tuple[Floats, NDArray[np.bool_]]:
    """Humerus frames along arm paths, and where the forearm decides them.

    ``u``, ``forearm``: unit upper-arm and forearm directions along paths, (..., samples, 3), thorax frame.
    Returns frames (..., samples, 3, 3), axes in columns, and a mask (..., samples) that is False where
    the elbow is straight. There the frame turns about the arm as at the last bent sample of the path, else
    as at the first one; a path without any stays unturned.

    >>> arm = np.tile(elbow_direction(0, 90), (2, 1))
    >>> frames, bent = humerus_frames(arm, np.array([[0.0, 1.0, 0.0], [0.0, 0.0, 1.0]]))
    >>> bent.tolist(), axial_rotation(frames).round().tolist()
    ([True, False], [-90.0, -90.0])
    """
    towards = across(forearm, u)
    bent = norm(towards) >= STRAIGHT_ELBOW
    plain = turned(0.0, u)
    turn = np.arctan2(-dot(towards, plain[..., 2]), dot(towards, plain[..., 0]))
    turn = np.where(bent, turn, np.take_along_axis(turn, _nearest_bent(bent), axis=-1))
    turn = np.where(bent.any(axis=-1, keepdims=True), turn, 0.0)
    return turned(np.degrees(turn), u), bent


def _nearest_bent(bent: NDArray[np.bool_]) -> NDArray[np.intp]:
    samples = np.arange(bent.shape[-1])
    last = np.maximum.accumulate(np.where(bent, samples, -1), axis=-1)
    first = bent.argmax(axis=-1)[..., None]
    return np.where(last >= 0, last, first)


def axial_rotation(frames: Floats) -> Floats:
    """Turn about the upper arm, degrees (...), inward positive, of humerus ``frames``; see ``turned``.

    >>> float(axial_rotation(turned(-40.0, elbow_direction(30, 70))).round(9))
    -40.0
    """
    plain = turned(0.0, -frames[..., 1])
    x = frames[..., 0]
    return np.degrees(np.arctan2(-dot(x, plain[..., 2]), dot(x, plain[..., 0])))


def world_up(recline_deg: ArrayLike) -> Floats:
    """Unit vector straight up in the thorax frame, (..., 3).

    ``recline_deg``: trunk turned back from upright, degrees; 90 lying on the back, negative leaning forward.

    >>> world_up(90).round(12).tolist()
    [1.0, 0.0, 0.0]
    """
    r = np.radians(recline_deg)
    return np.stack([np.sin(r), np.cos(r), np.zeros_like(r)], axis=-1)


def along_great_circle(start: Floats, end: Floats, fraction: Floats) -> Floats:
    """Unit vectors (..., 3) a ``fraction`` (...) of the way from ``start`` to ``end`` on the sphere.

    >>> along_great_circle(np.array([1.0, 0, 0]), np.array([0, 1.0, 0]), np.array(0.5)).round(4).tolist()
    [0.7071, 0.7071, 0.0]
    """
    angle = np.arccos(np.clip(dot(start, end), -1, 1))[..., None]
    t = fraction[..., None]
    small = np.sin(angle) < SAME_DIRECTION
    whole = np.where(small, 1.0, np.sin(angle))
    first = np.where(small, 1 - t, np.sin((1 - t) * angle) / whole)
    second = np.where(small, t, np.sin(t * angle) / whole)
    return unit(first * start + second * end)
