"""How the parts of a joint share a load: static optimisation in many postures at once.

In one posture, with M_p the moment of part p at full activation, u the axis of the humerus and T the moment
that the load asks for, the activations a_p and the reserve r about the humerus are those that

    minimise  1/2 sum c_p a_p^2 + 1/2 (r / R)^2   subject to   sum M_p a_p + r u = T,   0 <= a_p <= 1.

Its dual has three variables y: a_p = clip(M_p.y / c_p, 0, 1), r = R^2 u.y. It is solved by a semismooth
Newton method. With c_p proportional to the largest force the criterion is the sum of F^2 / F_max, which
depends neither on how a muscle is cut into parts nor on its size within one balance. Criterion and R: choice.
"""

from dataclasses import dataclass
from itertools import combinations
from typing import Final

import numpy as np
from numpy.typing import NDArray

from setwright.engine.frames import Floats, cross, dot, norm

ROUNDS: Final = 100
"""Newton rounds at most (choice: 6 to 15 are needed up to 98 % of the largest load)."""

RESIDUAL: Final = 1e-9
"""Moment left over, as a share of the need, at which a posture is solved (choice)."""

STEEP: Final = 1e-4
"""Share of the promised fall that a step must bring (choice, Armijo's rule)."""

SHORTEST: Final = 1e-6
"""Shortest step that is tried (choice)."""

NO_WIDTH: Final = 1e-12
"""Share of the generators' lengths below which the zonotope has no width: rounding."""

ROUNDING: Final = 1e-14
"""Share of the dual below which its fall cannot be told from rounding."""

FIRST_WEIGHT, LEAST_WEIGHT, MOST_WEIGHT = 1e-6, 1e-10, 1.0
"""Weight of the clipped parts in the Hessian, so that it never gets singular (choice) ..."""

HEAVIER, LIGHTER = 10.0, 0.2
"""... and how it changes after a short step and after a full one (choice)."""

AT_ONCE: Final = 512
"""Postures in one round of ``largest_load``: what fits the cache of a core (choice)."""


@dataclass(frozen=True)
class Joint:
    """N postures of a joint crossed by P parts.

    ``moments`` (N, P, 3): at full activation, N m. ``axis`` (N, 3): unit, along the humerus. ``cost`` (P,).
    ``reserve``: R, N m.
    """

    moments: Floats
    axis: Floats
    cost: Floats
    reserve: float

    def of(self, postures: NDArray[np.intp] | slice) -> "Joint":
        """Some of the postures."""
        return Joint(self.moments[postures], self.axis[postures], self.cost, self.reserve)


def largest_load(joint: Joint, need: Floats) -> Floats:
    """Largest multiples (N,) of the moments ``need`` (N, 3) that parts and reserve can hold.

    What they can hold is a zonotope; each of its faces is normal to two of its generators, so the smallest of
    the ratios of its width to the need's along all those normals is exact. Infinite where nothing is needed,
    0 where they hold nothing in that direction.

    >>> joint = Joint(np.eye(3)[None], np.array([[0.0, 1.0, 0.0]]), np.ones(3), 0.0)
    >>> largest_load(joint, np.array([[0.5, 0.25, 0.0]])).tolist()
    [2.0]
    """
    loads = [
        _largest_load(joint.of(slice(first, first + AT_ONCE)), need[first : first + AT_ONCE])
        for first in range(0, len(need), AT_ONCE)
    ]
    return np.concatenate(loads)


def _largest_load(joint: Joint, need: Floats) -> Floats:
    reserve = joint.reserve * joint.axis[:, None, :]
    generators = np.concatenate([joint.moments, reserve], axis=1)
    one, other = np.array(list(combinations(range(generators.shape[1]), 2))).T
    normals = cross(generators[:, one], generators[:, other])
    asked = (normals @ need[..., None])[..., 0]
    along = np.abs(normals @ generators.transpose(0, 2, 1))
    whole = along.sum(axis=-1)
    # A part reaches from 0 to its moment and the reserve both ways: half of all, shifted towards the need.
    shift = np.sign(asked) * (normals @ joint.moments.sum(axis=1)[..., None])[..., 0]
    width = (whole + along[..., -1] + shift) / 2
    width[width < NO_WIDTH * whole] = 0
    ratio = np.divide(width, np.abs(asked), out=np.full_like(width, np.inf), where=asked != 0)
    least: Floats = ratio.min(axis=-1)
    return least


def activations(joint: Joint, need: Floats) -> Floats:
    """Activations (N, P), 0 to 1, that hold the moments ``need`` (N, 3), N m, at the least cost.

    ``need`` must lie within ``largest_load``; at exactly that load the problem is degenerate.
    Raises: ArithmeticError when a posture is not solved.

    >>> joint = Joint(np.eye(3)[None], np.array([[0.0, 1.0, 0.0]]), np.ones(3), 1e-9)
    >>> activations(joint, np.array([[0.5, 0.25, 0.0]])).round(6).tolist()
    [[0.5, 0.25, 0.0]]
    """
    found = np.zeros(joint.moments.shape[:2])
    open_, y, weight = np.arange(len(need)), np.zeros_like(need), np.full(len(need), FIRST_WEIGHT)
    for _ in range(ROUNDS):
        here, asked = joint.of(open_), need[open_]
        drive = _drive(here, y)
        active = np.clip(drive, 0, 1)
        gradient = _held(here, active, y) - asked
        left = norm(gradient) > RESIDUAL * norm(asked)
        found[open_[~left]] = active[~left]
        open_, y, weight = open_[left], y[left], weight[left]
        if not len(open_):
            return found
        here, asked, gradient = here.of(left.nonzero()[0]), asked[left], gradient[left]
        free = (drive[left] > 0) & (drive[left] < 1)
        step = _newton_step(_hessian(here, free, weight), gradient)
        length = _step_length(here, asked, y, step, dot(gradient, step))
        y += length[:, None] * step
        weight = np.clip(weight * np.where(length < 1, HEAVIER, LIGHTER), LEAST_WEIGHT, MOST_WEIGHT)
    raise ArithmeticError(f"{len(open_)} of {len(need)} postures are not solved")


def _newton_step(hessian: Floats, gradient: Floats) -> Floats:
    return -np.asarray(np.linalg.solve(hessian, gradient[..., None])[..., 0], dtype=float)


def _drive(joint: Joint, y: Floats) -> Floats:
    """Activations before they are clipped (N, P)."""
    drive: Floats = (joint.moments @ y[..., None])[..., 0] / joint.cost
    return drive


def _held(joint: Joint, active: Floats, y: Floats) -> Floats:
    """Moments (N, 3) that parts and reserve give together."""
    by_parts = (active[:, None, :] @ joint.moments)[:, 0]
    held: Floats = by_parts + joint.reserve**2 * dot(joint.axis, y)[:, None] * joint.axis
    return held


def _hessian(joint: Joint, free: NDArray[np.bool_], weight: Floats) -> Floats:
    """Second derivative of the dual (N, 3, 3), clipped parts with their ``weight`` (N,)."""
    counts = np.where(free, 1.0, weight[:, None]) / joint.cost
    hessian: Floats = (joint.moments * counts[..., None]).transpose(0, 2, 1) @ joint.moments
    return hessian + joint.reserve**2 * joint.axis[:, :, None] * joint.axis[:, None, :]


def _dual(joint: Joint, need: Floats, y: Floats) -> Floats:
    """The dual (N,), to be minimised."""
    drive = _drive(joint, y)
    active = np.clip(drive, 0, 1)
    by_parts = (joint.cost * active * (drive - active / 2)).sum(axis=-1)
    dual: Floats = by_parts + (joint.reserve * dot(joint.axis, y)) ** 2 / 2 - dot(need, y)
    return dual


def _step_length(joint: Joint, need: Floats, y: Floats, step: Floats, slope: Floats) -> Floats:
    """Lengths (N,) of the Newton steps: 1, halved until the dual falls enough."""
    start = _dual(joint, need, y)
    slack = ROUNDING * np.abs(start)
    length = np.ones(len(y))
    trying = np.arange(len(y))
    while len(trying):
        part = length[trying]
        reached = _dual(joint.of(trying), need[trying], y[trying] + part[:, None] * step[trying])
        short = reached > start[trying] + STEEP * part * slope[trying] + slack[trying]
        trying = trying[short & (part > SHORTEST)]
        length[trying] /= 2
    return length
