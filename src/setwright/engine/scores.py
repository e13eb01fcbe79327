"""What arm paths and their loads do to each part of pectoralis major."""

from dataclasses import dataclass
from typing import Final

import numpy as np

from setwright.engine.frames import Floats, across, cross, dot, norm, unit
from setwright.engine.geometry import Geometry, geometry
from setwright.engine.paths import ArmPaths
from setwright.engine.strands import length_percent, strands

LEAST_TRAVEL: Final = 1e-6
"""Points of length below which a part stands still: all its samples are then in the long third."""


@dataclass(frozen=True)
class Scores:
    """M movements of n samples; parts last, in the order of ``PARTS``, each the mean of its strands.

    ``align_path``, ``align_load`` (M, 3): mean cosine between what a part's pull does to the arm and how the
    arm travels, and what the load asks for. ``lever`` (M, 3): mean moment arm against the load, mm. ``share``
    (M, 3): part of the chest's moment at equal activation, 0 to 1 (not muscle activity). ``length`` (M, n,
    3): percent of the attainable range, may lie outside 0 to 100. ``lever_at`` (M, n, 3), mm, and
    ``cosine_at`` (M, n, 3): as ``lever`` and ``align_load``, at each sample. ``arms_at`` (M, n, 3, 3): moment
    of a unit pull of each part, metres. ``resistance`` (M, n): the load's moment over its peak.
    ``arm_past`` (M,), degrees, and ``hand_past`` (M,), cm: farthest beyond the midline, negative short of it.
    ``load_arm`` (M,): largest arm of the load about the shoulder, cm.
    """

    align_path: Floats
    align_load: Floats
    lever: Floats
    share: Floats
    length: Floats
    lever_at: Floats
    cosine_at: Floats
    arms_at: Floats
    resistance: Floats
    arm_past: Floats
    hand_past: Floats
    load_arm: Floats


def scores(paths: ArmPaths, shoulder: Geometry | None = None) -> Scores:
    """Scores of arm paths. Moments are taken without their part along the upper arm, for pull and load alike.

    >>> from setwright.engine.paths import arm_paths
    >>> from setwright.library.rows import load_rows
    >>> press = next(row.path for row in load_rows() if row.key == "flat-barbell-bench-press")
    >>> scores(arm_paths([press])).lever.round().tolist()
    [[39.0, 39.0, 27.0]]
    """
    shoulder = geometry() if shoulder is None else shoulder
    pulls = strands(paths.frames, paths.bones, shoulder)
    moment = across(pulls.moment, paths.u[..., None, :])
    turning = unit(moment)
    mean = shoulder.averaging.T
    asked = -across(paths.load_moment, paths.u)
    size = norm(asked)
    needed = unit(asked)[..., None, :]
    weight = (size / size.sum(axis=-1, keepdims=True))[..., None]
    lever_at, cosine_at = 1000 * dot(moment, needed) @ mean, dot(turning, needed) @ mean
    lever = (lever_at * weight).sum(axis=-2)
    pull = shoulder.force * np.maximum(lever, 0)
    whole = pull.sum(axis=-1, keepdims=True)
    return Scores(
        align_path=_align_path(turning, paths.u) @ mean,
        align_load=(cosine_at * weight).sum(axis=-2),
        lever=lever,
        share=np.divide(pull, whole, out=np.zeros_like(pull), where=whole > 0),
        length=length_percent(pulls.length, shoulder) @ mean,
        lever_at=lever_at,
        cosine_at=cosine_at,
        arms_at=shoulder.averaging @ pulls.moment,
        resistance=size / size.max(axis=-1, keepdims=True),
        arm_past=np.degrees(np.arcsin(np.clip(-paths.u[..., 2], -1, 1))).max(axis=-1),
        hand_past=-100 * paths.hand[..., 2].min(axis=-1),
        load_arm=100 * size.max(axis=-1),
    )


def _align_path(turning: Floats, u: Floats) -> Floats:
    """Mean over the steps of a path, weighted by angle, of the cosine between pull and step (M, S)."""
    step = cross(u[..., :-1, :], u[..., 1:, :])
    angle = np.arcsin(np.clip(norm(step), 0, 1))[..., None]
    between = (turning[..., :-1, :, :] + turning[..., 1:, :, :]) / 2
    aligned: Floats = (dot(between, unit(step)[..., None, :]) * angle).sum(axis=-2) / angle.sum(axis=-2)
    return aligned


def resistance_by_length(resistance: Floats, length: Floats) -> list[float | None]:
    """Mean resistance while a part is in the long, middle and short third of its way along one path.

    ``resistance``, ``length`` (n,): as in ``Scores``, one movement and part. None for a third without a
    sample.

    >>> resistance_by_length(np.array([1.0, 0.5, 0.25]), np.array([90.0, 50.0, 10.0]))
    [1.0, 0.5, 0.25]
    """
    third = np.clip(3 * (length.max() - length) / max(float(np.ptp(length)), LEAST_TRAVEL), 0, 2.999).astype(
        int
    )
    return [float(resistance[third == n].mean()) if (third == n).any() else None for n in range(3)]
