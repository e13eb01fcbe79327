"""The shoulder girdle: where clavicle, scapula and shoulder joint are for a direction of the upper arm.

Source: de Groot and Brand 2001, Clin Biomech 16:735-743 (linear regression on ten people); the smoothing at
the poles, the limits, the lowered clavicle and the protraction a movement adds are choices.
"""

from dataclasses import dataclass

import numpy as np

from setwright.engine.frames import Floats, plane_elevation
from setwright.engine.geometry import Geometry, GirdleLaw, Rhythm


@dataclass(frozen=True)
class Girdle:
    """Girdles for postures (...), thorax frame, metres.

    ``clavicle``, ``scapula``: rotations (..., 3, 3), axes in columns. ``AC``, ``GH``: joint centres (..., 3).
    """

    clavicle: Floats
    scapula: Floats
    AC: Floats
    GH: Floats


def girdle(u: Floats, protraction_deg: Floats | float, shoulder: Geometry) -> Girdle:
    """Girdles of upper-arm directions.

    ``u``: unit vectors GH to elbow (..., 3), thorax frame. ``protraction_deg``: what the movement adds to the
    rhythm, degrees (...), forward positive, on clavicle and scapula alike.

    >>> from setwright.engine.frames import elbow_direction
    >>> from setwright.engine.geometry import geometry
    >>> girdle(elbow_direction(0, 0), 0.0, geometry()).GH.round(3).tolist()
    [-0.04, -0.022, 0.164]
    """
    law = shoulder.girdle
    plane, elevation = _inputs(u * [1.0, 1.0, shoulder.side], law)
    clavicle = _rotation(law.clavicle, plane, elevation, protraction_deg, -law.clavicle_lowered)
    scapula = _rotation(law.scapula, plane, elevation, protraction_deg)
    if shoulder.side < 0:
        flip = np.diag([1.0, 1.0, -1.0])
        clavicle, scapula = flip @ clavicle @ flip, flip @ scapula @ flip
    AC = shoulder.SC + clavicle @ shoulder.AC
    return Girdle(clavicle, scapula, AC, AC + scapula @ shoulder.GH)


def _inputs(u: Floats, law: GirdleLaw) -> tuple[Floats, Floats]:
    plane, elevation = plane_elevation(u)
    plane = np.clip(plane, *law.plane_limits)
    weight = _smoothstep(elevation / law.blend_width) * _smoothstep((180 - elevation) / law.blend_width)
    plane = law.plane_at_poles + (plane - law.plane_at_poles) * weight
    return plane, np.clip(elevation, *law.elevation_limits)


def _smoothstep(t: Floats) -> Floats:
    t = np.clip(t, 0, 1)
    return t * t * (3 - 2 * t)


def _rotation(
    bone: dict[str, Rhythm],
    plane: Floats,
    elevation: Floats,
    protraction: Floats | float,
    raised: float = 0.0,
) -> Floats:
    """Turns about up, backward and lateral axis, (..., 3, 3): columns are the bone's X, Y, Z axes."""
    up = np.radians(bone["up"].angle(plane, elevation) + protraction)
    backward = np.radians(bone["backward"].angle(plane, elevation) + raised)
    lateral = np.radians(bone["lateral"].angle(plane, elevation)) if "lateral" in bone else np.zeros_like(up)
    up, backward, lateral = np.broadcast_arrays(up, backward, lateral)
    zero, one = np.zeros_like(up), np.ones_like(up)
    # In thorax axes up is Y, backward is -X, lateral is Z.
    c, s = np.cos(up), np.sin(up)
    about_up = _matrix([c, zero, s, zero, one, zero, -s, zero, c])
    c, s = np.cos(backward), np.sin(backward)
    about_backward = _matrix([one, zero, zero, zero, c, s, zero, -s, c])
    c, s = np.cos(lateral), np.sin(lateral)
    about_lateral = _matrix([c, -s, zero, s, c, zero, zero, zero, one])
    return about_up @ about_backward @ about_lateral


def _matrix(rows: list[Floats]) -> Floats:
    stacked = np.stack(rows, axis=-1)
    return stacked.reshape(*stacked.shape[:-1], 3, 3)
