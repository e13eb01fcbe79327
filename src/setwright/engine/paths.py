"""Arm paths: rows of the library as postures of the shoulder and loads on the hand, all in one batch."""

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from setwright.engine.frames import (
    Floats,
    across,
    along_great_circle,
    cross,
    elbow_direction,
    humerus_frames,
    norm,
    unit,
    world_up,
)
from setwright.engine.geometry import Geometry, geometry
from setwright.engine.girdle import Girdle, girdle
from setwright.library.rows import ElbowPath, HandPath, Path

SAMPLES: Final = 31
"""Postures along a path, equal steps of its parameter (choice)."""

ELBOW_ROUNDS: Final = 10
"""Rounds of elbow against girdle, half steps in all but the last (choice: enough for 0.1 mm)."""


@dataclass(frozen=True)
class ArmPaths:
    """M arm paths of n samples, thorax frame, metres.

    ``u``, ``forearm`` (M, n, 3): unit directions GH to elbow, elbow to grip. ``bones``: the girdles.
    ``frames`` (M, n, 3, 3): humerus axes in columns. ``bent`` (M, n): False where the elbow is too straight
    to tell the axial rotation. ``elbow``, ``hand`` (M, n, 3). ``load`` (M, n, 3): unit vector of the force on
    the hand. ``stretch`` (M, n): how far a hand that was asked for lies beyond the arm's length (0: within
    reach).
    """

    u: Floats
    forearm: Floats
    bones: Girdle
    frames: Floats
    bent: NDArray[np.bool_]
    elbow: Floats
    hand: Floats
    load: Floats
    stretch: Floats

    @property
    def load_moment(self) -> Floats:
        """Moment of the unit load about GH, metres (M, n, 3)."""
        return cross(self.hand - self.bones.GH, self.load)


def arm_paths(paths: Sequence[Path], shoulder: Geometry | None = None) -> ArmPaths:
    """The arm paths of library rows (right arm), in their order.

    ``shoulder``: the model's own when None; hands and pulleys scale with its upper arm.

    >>> from setwright.library.rows import load_rows
    >>> arm_paths([row.path for row in load_rows() if row.path][:2]).hand.shape
    (2, 31, 3)
    """
    shoulder = geometry() if shoulder is None else shoulder
    scale = shoulder.upper_arm / geometry().upper_arm
    t = np.linspace(0, 1, SAMPLES)
    protraction = np.array([_linear([key.protraction_deg for key in path.keys], t) for path in paths])
    u, forearm = np.empty((2, len(paths), SAMPLES, 3))
    stretch = np.zeros((len(paths), SAMPLES))
    by_hand = [n for n, path in enumerate(paths) if isinstance(path, HandPath)]
    if by_hand:
        u[by_hand], forearm[by_hand], stretch[by_hand] = _from_hand(
            *_hands([path for path in paths if isinstance(path, HandPath)], t, scale),
            protraction[by_hand],
            shoulder,
        )
    for n, path in enumerate(paths):
        if isinstance(path, ElbowPath):
            u[n] = _turning([elbow_direction(*key.plane_elevation_deg) for key in path.keys], t)
            forearm[n] = _turning([unit(np.array(key.forearm)) for key in path.keys], t)
    bones = girdle(u, protraction, shoulder)
    frames, bent = humerus_frames(u, forearm)
    elbow = bones.GH + shoulder.upper_arm * u
    hand = elbow + shoulder.elbow_to_grip * forearm
    load = np.stack([_load(path, grip, t, scale) for path, grip in zip(paths, hand, strict=True)])
    return ArmPaths(u, forearm, bones, frames, bent, elbow, hand, load, stretch)


def _hands(paths: Sequence[HandPath], t: Floats, scale: float) -> tuple[Floats, Floats]:
    """Grips, metres, and unit swivels (M, n, 3) of paths given by the hand."""
    hand = scale * np.array([_linear([key.hand_m for key in path.keys], t) for path in paths])
    return hand, unit(np.array([_linear([key.swivel for key in path.keys], t) for path in paths]))


def _linear(values: Sequence[object], t: Floats) -> Floats:
    """Values at keys, equally spaced, interpolated at ``t`` (n,): (n,) or (n, 3)."""
    keyed = np.array(values, dtype=float)
    at = np.linspace(0, 1, len(keyed))
    if keyed.ndim == 1:
        return np.asarray(np.interp(t, at, keyed), dtype=float)
    values_at: Floats = np.stack([np.interp(t, at, column) for column in keyed.T], axis=-1)
    return values_at


def _turning(directions: Sequence[Floats], t: Floats) -> Floats:
    """Unit directions at keys, equally spaced, followed along great circles at ``t`` (n,): (n, 3)."""
    keyed = np.array(directions)
    place = t * (len(keyed) - 1)
    leg = np.minimum(place.astype(int), len(keyed) - 2)
    return along_great_circle(keyed[leg], keyed[leg + 1], place - leg)


def _from_hand(
    hand: Floats, swivel: Floats, protraction: Floats, shoulder: Geometry
) -> tuple[Floats, Floats, Floats]:
    """Upper arm and forearm for grips, and how far the grips lie beyond reach.

    The shoulder joint moves with the arm that it carries, so both are found in turns. A grip out of reach is
    pulled back along the line to the joint.
    """
    L1, L2 = shoulder.upper_arm, shoulder.elbow_to_grip
    u = unit(hand - girdle(elbow_direction(45.0, 45.0), protraction, shoulder).GH)
    for n in range(ELBOW_ROUNDS):
        to_hand = hand - girdle(u, protraction, shoulder).GH
        far = norm(to_hand)
        d = np.minimum(far, L1 + L2)
        line = to_hand / far[..., None]
        along = (L1**2 - L2**2 + d**2) / (2 * d)
        aside = np.sqrt(np.maximum(L1**2 - along**2, 0))
        elbow = along[..., None] * line + aside[..., None] * unit(across(swivel, line))
        u = unit(elbow if n == ELBOW_ROUNDS - 1 else unit(elbow) + u)
    return u, unit(d[..., None] * line - elbow), far - d


def _load(path: Path, hand: Floats, t: Floats, scale: float) -> Floats:
    """Unit vectors of the force on the hand (n, 3) along one path; ``hand`` (n, 3), metres."""
    force = path.force
    up = world_up(_linear([path.recline_deg(key) for key in path.keys], t))
    point = scale * np.array(force.point_m or (0.0, 0.0, 0.0))
    match force.kind:
        case "gravity":
            load = -up
        case "support vertical":
            load = up
        case "support square":
            load = np.broadcast_to([-1.0, 0.0, 0.0], hand.shape)
        case "toward point":
            load = unit(point - hand)
        case "against path":
            load = -unit(np.gradient(hand, axis=0))
        case "toward other hand":
            load = np.broadcast_to([0.0, 0.0, -1.0], hand.shape)
        case _:  # pivoting bar
            load = unit(across(-up, unit(hand - point)))
    return unit(load + np.array([0.0, 0.0, force.side_share]))
