"""Moment arms of the model's parts about named axes, for comparison with what others measured."""

import numpy as np

from setwright.engine.frames import Floats, cross, dot, elbow_direction, unit
from setwright.engine.geometry import geometry
from setwright.engine.strands import Strands, posed
from setwright.library.table import library

CLAVICULAR, STERNAL, COSTAL = range(3)
FORWARD, SCAPULAR, SIDEWAYS = 90.0, 30.0, 0.0
"""Planes of elevation, degrees: flexion, abduction in the plane of the scapula, abduction."""


def pulls(plane: float | Floats, elevation: float | Floats, axial: float = 0.0) -> Strands:
    return posed(elbow_direction(plane, elevation), axial, 0.0, geometry())


def by_part(values: Floats) -> Floats:
    """Mean a part (..., 3) of values a strand (..., S)."""
    return values @ geometry().averaging.T


def raising(plane: float, elevation: Floats) -> Floats:
    """Moment arms that raise the arm in its plane, mm (n, 3); negative lowers (adducts, extends)."""
    u = elbow_direction(plane, elevation)
    axis = cross(u, elbow_direction(plane, elevation + 90))
    return 1000 * by_part(dot(pulls(plane, elevation).moment, axis[..., None, :]))


def across(plane: Floats, elevation: float) -> Floats:
    """Moment arms that bring the arm across at one height (about the vertical), mm (n, 3)."""
    return 1000 * by_part(pulls(plane, elevation).moment[..., 1])


def turning_in(plane: float, elevation: Floats) -> Floats:
    """Moment arms that turn the arm inward about itself, mm (n, 3)."""
    along = -elbow_direction(plane, elevation)
    return 1000 * by_part(dot(pulls(plane, elevation).moment, along[..., None, :]))


def degrees_between(one: Floats, other: Floats) -> Floats:
    return np.degrees(np.arccos(np.clip(dot(unit(one), unit(other)), -1, 1)))


def bench(angle: str, part: str, figure: str) -> float:
    """A figure of one part in the library's barbell press at a bench angle ("flat", "incline-30" ...)."""
    value: float = library().movement(f"{angle}-barbell-bench-press")["parts"][part][figure]
    return value
