"""Moment arms of the model's parts about named axes, for comparison with what others measured."""

import numpy as np

from setwright.engine.frames import Floats, cross, dot, elbow_direction, turned, unit
from setwright.engine.geometry import geometry
from setwright.engine.girdle import girdle
from setwright.engine.muscles import ALL_PARTS, OtherStrands, model_muscles, other_strands, part_moments
from setwright.engine.sharing import Joint, largest_load
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


def other_pulls(plane: float | Floats, elevation: float | Floats, axial: float = 0.0) -> OtherStrands:
    """Strands of the parts outside the chest."""
    u = elbow_direction(plane, elevation)
    return other_strands(turned(axial, u), girdle(u, 0.0, geometry()), model_muscles())


def arms_about(axes: Floats, plane: float | Floats, elevation: float | Floats) -> dict[str, Floats]:
    """Moment arms about ``axes`` (n, 3), mm (n,), of every part by its name, those of the chest too."""
    muscles = model_muscles()
    weights = muscles.pulls / muscles.pulls.sum(axis=1, keepdims=True)
    others = dot(other_pulls(plane, elevation).moment, axes[..., None, :]) @ weights.T
    chest = by_part(dot(pulls(plane, elevation).moment, axes[..., None, :]))
    arms = 1000 * np.concatenate([chest, others], axis=-1)
    return {part: arms[..., p] for p, part in enumerate(ALL_PARTS)}


def all_raising(plane: float, elevation: Floats) -> dict[str, Floats]:
    """As ``raising``, for every part."""
    up = elbow_direction(plane, elevation + 90)
    return arms_about(cross(elbow_direction(plane, elevation), up), plane, elevation)


def all_across(plane: Floats, elevation: float) -> dict[str, Floats]:
    """As ``across``, for every part."""
    return arms_about(np.broadcast_to([0.0, 1.0, 0.0], (*plane.shape, 3)), plane, elevation)


def all_turning_in(plane: float, elevation: Floats) -> dict[str, Floats]:
    """As ``turning_in``, for every part."""
    return arms_about(-elbow_direction(plane, elevation), plane, elevation)


def work(key: str, part: str) -> float:
    """Work of one part, of the chest or not, in a movement of the library."""
    one = library().movement(key)
    value: float = {**one["parts"], **one["other_parts"]}[part]["work"]
    return value


def strongest(plane: float, elevation: float, axis: Floats) -> float:
    """Largest moment about a unit axis that all parts hold together in a posture, N m."""
    u = elbow_direction(plane, elevation)[None]
    frames, bones = turned(0.0, u), girdle(u, 0.0, geometry())
    arms = geometry().averaging @ pulls(plane, elevation).moment
    moments = part_moments(arms[None], frames, bones, geometry())
    joint = Joint(moments, u, np.ones(moments.shape[1]), model_muscles().reserve)
    return float(largest_load(joint, axis[None])[0])
