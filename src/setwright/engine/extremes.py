"""The extremes of every shoulder angle along an arm path, and the postures the model is not trusted in."""

from collections.abc import Mapping
from typing import Final

import numpy as np
from numpy.typing import NDArray

from setwright.engine.frames import Floats, axial_rotation, dot, plane_elevation
from setwright.engine.geometry import Geometry
from setwright.engine.paths import ArmPaths

AXIAL_UP_TO: Final = 150.0
"""Elevation, degrees, above which turning in and out has no firm zero any more (choice)."""

PLANE_FROM: Final = 10.0
"""Elevation, degrees, below which (and as far from straight up) the plane has no meaning (choice)."""


def shoulder_angles(paths: ArmPaths) -> dict[str, Floats]:
    """Angles in degrees at every sample (M, n); NaN where an angle has no meaning.

    - ``arm_behind``: of the upper arm behind the frontal plane through the shoulder; negative in front.
    - ``arm_up``: elevation, from hanging (0) to straight up (180), in whatever plane.
    - ``arm_across``: of the upper arm past the sagittal plane through the shoulder, towards the other side;
      negative short of it.
    - ``arm_turned_out``: outward turn about the upper arm. 0 is where a straight swing from hanging, elbow
      flexing forward, takes it: with the arm sideways at shoulder height, 0 is forearm forward and 90 forearm
      up. NaN with a straight elbow or above AXIAL_UP_TO.
    - ``plane``: plane of elevation, 0 sideways, 90 forward, negative behind. NaN near the poles.
    - ``elbow``: bend of the elbow, 0 straight.

    >>> from setwright.engine.paths import arm_paths
    >>> from setwright.library.rows import load_rows
    >>> shoulder_angles(arm_paths([load_rows()[0].path]))["arm_behind"].max().round()
    np.float64(21.0)
    """
    plane, elevation = plane_elevation(paths.u)
    has_plane = (elevation >= PLANE_FROM) & (elevation <= 180 - PLANE_FROM)
    has_turn = paths.bent & (elevation <= AXIAL_UP_TO)
    return {
        "arm_behind": np.degrees(np.arcsin(np.clip(-paths.u[..., 0], -1, 1))),
        "arm_up": elevation,
        "arm_across": np.degrees(np.arcsin(np.clip(-paths.u[..., 2], -1, 1))),
        "arm_turned_out": np.where(has_turn, -axial_rotation(paths.frames), np.nan),
        "plane": np.where(has_plane, plane, np.nan),
        "elbow": np.degrees(np.arccos(np.clip(dot(paths.u, paths.forearm), -1, 1))),
    }


def extremes(angles: Mapping[str, Floats], movement: int) -> dict[str, dict[str, float] | None]:
    """Least and greatest of each angle (degrees, one decimal) along one movement; None without meaning.

    >>> extremes({"arm_up": np.array([[10.0, 90.04]])}, 0)
    {'arm_up': {'min': 10.0, 'max': 90.0}}
    """
    found: dict[str, dict[str, float] | None] = {}
    for name, values in angles.items():
        known = values[movement][~np.isnan(values[movement])]
        ends = {"min": rounded(known.min(), 1), "max": rounded(known.max(), 1)} if known.size else None
        found[name] = ends
    return found


def rounded(value: float, digits: int) -> float:
    """A number with so many decimals, and no minus before a zero.

    >>> rounded(-0.04, 1)
    0.0
    """
    return round(float(value), digits) + 0.0


def outside_trust(u: Floats, shoulder: Geometry) -> NDArray[np.bool_]:
    """Whether upper-arm directions ``u`` (..., 3) lie where a strand of the model jumps: bool (...).

    Two zones, from the data file: raised behind the body, and straight overhead.

    >>> from setwright.engine.frames import elbow_direction
    >>> from setwright.engine.geometry import geometry
    >>> outside_trust(elbow_direction([0.0, -80.0, 90.0], [90.0, 90.0, 170.0]), geometry()).tolist()
    [False, True, True]
    """
    plane, elevation = plane_elevation(u * [1.0, 1.0, shoulder.side])
    behind, overhead = shoulder.refused["behind"], shoulder.refused["overhead"]
    raised = elevation >= np.interp(plane, behind["plane"], behind["elevation_from"])
    outside: NDArray[np.bool_] = (raised & (plane <= behind["plane"][-1])) | (
        elevation >= overhead["elevation_from"]
    )
    return outside


def refusal(outside: NDArray[np.bool_], elevation: Floats) -> str | None:
    """The sentence for one path that enters an untrusted zone, else None.

    ``outside`` bool (n,) from ``outside_trust``; ``elevation`` (n,), degrees.

    >>> refusal(np.array([True, False]), np.array([165.0, 90.0]))[:36]
    'In 1 of 2 postures (arm raised to 16'
    """
    if not outside.any():
        return None
    counted = (
        f"{int(outside.sum())} of {outside.size} postures (arm raised to {elevation[outside].max():.0f} deg)"
    )
    return f"In {counted} the arm is where a strand of the model jumps: reported, not scored."
