"""Work: how hard every part works when the weakest point of a movement is nearly at its limit.

The load is put at ``NEARLY`` of the largest one that the weakest posture of the path, or the elbow, can hold;
the muscles share it (``sharing``). What a part does counts as far as it has a lever against the load:
activation that only steadies the joint is no work on the part.
"""

from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from setwright.engine.frames import Floats, across, cross, dot, norm, unit
from setwright.engine.geometry import PARTS, Geometry, geometry
from setwright.engine.muscles import muscles_of, part_forces, part_moments
from setwright.engine.paths import ArmPaths
from setwright.engine.scores import Scores
from setwright.engine.sharing import Joint, activations, largest_load
from setwright.engine.tones import LEAST_LEVER, LONG, SHORT

NEARLY: Final = 0.98
"""Share of the largest load at which work is told (choice: the last hard repetition; 1 is degenerate)."""

OTHER_RESERVES: Final = (0.1, 4.0)
"""Multiples of the reserve with which work is found again, to see what hangs on it (choice)."""


@dataclass(frozen=True)
class Works:
    """M movements of n samples; parts in the order of ``ALL_PARTS``, those of the chest first.

    ``work`` (M, parts), 0 to 100: mean activation that has a lever. ``lever`` (M, parts): mean moment arm
    against the load, mm. ``long``, ``short`` (M, 3): most work of a chest part in a posture where it is long,
    short; ``past`` (M, 3): mean where the arm is past the sagittal plane; NaN without such a posture.
    ``spread`` (M, parts): how far work moves with the
    other reserves. ``load`` (M,): N on the hand, never shown. ``weakest`` (M,): place of the weakest point
    along the path, 0 to 1. ``elbow_limited`` (M,).
    """

    work: Floats
    lever: Floats
    long: Floats
    short: Floats
    past: Floats
    spread: Floats
    load: Floats
    weakest: Floats
    elbow_limited: NDArray[np.bool_]


def works(paths: ArmPaths, score: Scores, shoulder: Geometry | None = None) -> Works:
    """Work of arm paths with their scores, for one shoulder (the model's own when None).

    >>> from setwright.engine.paths import arm_paths
    >>> from setwright.engine.scores import scores
    >>> from setwright.library.rows import load_rows
    >>> paths = arm_paths([next(row.path for row in load_rows() if row.key == "flat-barbell-bench-press")])
    >>> works(paths, scores(paths)).work.shape
    (1, 13)
    """
    shoulder = geometry() if shoulder is None else shoulder
    moments = part_moments(score.arms_at, paths.frames, paths.bones, shoulder)
    asked = -paths.load_moment
    swing = across(asked, paths.u)
    lever_at = 1000 * dot(across(moments, paths.u[..., None, :]), unit(swing)[..., None, :]) / part_forces()
    size = shoulder.upper_arm / geometry().upper_arm
    gate = np.clip(lever_at / (size * LEAST_LEVER), 0, 1)
    elbow = _elbow_limit(paths, shoulder)
    reserve = muscles_of(shoulder).reserve
    limit, shared = _shared(moments, paths.u, asked, elbow, reserve)
    worked = 100 * shared * gate
    mean = worked.mean(axis=1)
    others = [_shared(moments, paths.u, asked, elbow, times * reserve)[1] * gate for times in OTHER_RESERVES]
    spread = np.max([np.abs(100 * one.mean(axis=1) - mean) for one in others], axis=0)
    weight = norm(swing)[..., None]
    chest = worked[..., : len(PARTS)]
    return Works(
        work=mean,
        lever=(lever_at * weight).sum(axis=1) / weight.sum(axis=1),
        long=_most(chest, score.length >= LONG),
        short=_most(chest, score.length <= SHORT),
        past=_mean(chest, (paths.u[..., 2] < 0)[..., None]),
        spread=spread,
        load=limit.min(axis=1),
        weakest=limit.argmin(axis=1) / (limit.shape[1] - 1),
        elbow_limited=elbow.min(axis=1) <= limit.min(axis=1),
    )


def _shared(
    moments: Floats, u: Floats, asked: Floats, elbow: Floats, reserve: float
) -> tuple[Floats, Floats]:
    """Load each posture can nearly hold, N (M, n), and activations under the least of them (M, n, parts)."""
    joint = Joint(
        moments.reshape(-1, *moments.shape[2:]),
        u.reshape(-1, 3),
        part_forces() / part_forces().mean(),
        reserve,
    )
    limit = np.minimum(NEARLY * largest_load(joint, asked.reshape(-1, 3)).reshape(elbow.shape), elbow)
    need = asked * limit.min(axis=1)[:, None, None]
    return limit, activations(joint, need.reshape(-1, 3)).reshape(moments.shape[:-1])


def _elbow_limit(paths: ArmPaths, shoulder: Geometry) -> Floats:
    """Loads that the elbow can hold, N (M, n)."""
    extension, flexion = muscles_of(shoulder).elbow
    bends = dot(cross(paths.hand - paths.elbow, paths.load), paths.frames[..., 2])
    most = np.where(bends > 0, extension, flexion)
    limit: Floats = np.divide(most, np.abs(bends), out=np.full_like(bends, np.inf), where=bends != 0)
    return limit


def _most(worked: Floats, where: NDArray[np.bool_]) -> Floats:
    """Most work (M, 3) over the samples where a part is so long; NaN without one."""
    most = np.where(where, worked, -1.0).max(axis=1)
    return np.where(where.any(axis=1), most, np.nan)


def _mean(worked: Floats, where: NDArray[np.bool_]) -> Floats:
    """Mean work (M, 3) over some samples; NaN without one."""
    count = where.sum(axis=1)
    total = (worked * where).sum(axis=1)
    mean: Floats = np.divide(total, count, out=np.full_like(total, np.nan), where=count > 0)
    return mean
