"""The sharing solver against SciPy, and what must not change it."""

from itertools import product

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import linprog, lsq_linear

from setwright.engine.frames import Floats, norm, unit
from setwright.engine.geometry import geometry
from setwright.engine.muscles import part_forces, part_moments
from setwright.engine.paths import arm_paths
from setwright.engine.scores import scores
from setwright.engine.sharing import Joint, activations, largest_load
from tests.engine.library_paths import SCORED

COST = part_forces() / part_forces().mean()
RESERVE = 5.0
FIRM = 1e5
"""Weight of the moments in the reference solver, which knows no equations."""


def library_joint() -> tuple[Joint, Floats]:
    """Every ninth posture of the library, and the moments its loads ask for, a newton on the hand."""
    paths = arm_paths([row.path for row in SCORED if row.path is not None])
    moments = part_moments(scores(paths).arms_at, paths.frames, paths.bones, geometry())
    flat = slice(None, None, 9)
    joint = Joint(moments.reshape(-1, 13, 3)[flat], paths.u.reshape(-1, 3)[flat], COST, RESERVE)
    return joint, -paths.load_moment.reshape(-1, 3)[flat]


JOINT, NEED = library_joint()
LIMIT = largest_load(JOINT, NEED)


def reference(n: int, need: Floats) -> Floats:
    """The activations of one posture by SciPy's bounded least squares."""
    size = norm(need)
    equations = FIRM * np.column_stack([JOINT.moments[n].T, RESERVE * JOINT.axis[n]]) / size
    costs = np.diag([*np.sqrt(COST), 1.0])
    goal = np.concatenate([FIRM * need / size, np.zeros(14)])
    low, high = np.zeros(14), np.ones(14)
    low[-1], high[-1] = -np.inf, np.inf
    found = lsq_linear(np.vstack([equations, costs]), goal, (low, high), method="bvls", tol=1e-15)
    return np.asarray(found.x[:-1], dtype=float)


@pytest.mark.parametrize(("share", "error"), [(0.5, 1e-6), (0.95, 1e-6)])
def test_activations_are_those_of_scipy(share: float, error: float) -> None:
    need = share * LIMIT[:, None] * NEED
    ours = activations(JOINT, need)
    for n in range(len(need)):
        assert np.abs(ours[n] - reference(n, need[n])).max() < error


def test_the_largest_load_is_that_of_linear_programming() -> None:
    for n in range(0, len(NEED), 5):
        equations = np.column_stack([JOINT.moments[n].T, RESERVE * JOINT.axis[n], -NEED[n]])
        bounds = [*[(0, 1)] * 13, (-1, 1), (0, None)]
        best = linprog([*[0.0] * 14, -1.0], A_eq=equations, b_eq=np.zeros(3), bounds=bounds)
        assert -best.fun / LIMIT[n] == pytest.approx(1, abs=1e-9)


@pytest.mark.parametrize("share", [0.1, 0.5, 0.95, 0.98])
def test_the_need_is_held_and_no_activation_leaves_its_bounds(share: float) -> None:
    need = share * LIMIT[:, None] * NEED
    found = activations(JOINT, need)
    assert found.min() >= 0
    assert found.max() <= 1
    swing = (found[:, None, :] @ JOINT.moments)[:, 0] - need
    swing -= (swing * JOINT.axis).sum(axis=-1, keepdims=True) * JOINT.axis
    assert (norm(swing) <= 1e-6 * norm(need)).all()


def test_stronger_muscles_hold_more_by_the_same_activations() -> None:
    strong = Joint(2 * JOINT.moments, JOINT.axis, COST, 2 * RESERVE)
    assert largest_load(strong, NEED) == pytest.approx(2 * LIMIT)
    need = 0.9 * LIMIT[:, None] * NEED
    assert activations(strong, 2 * need) == pytest.approx(activations(JOINT, need), abs=1e-8)


def test_what_lies_beyond_the_largest_load_is_not_solved() -> None:
    with pytest.raises(ArithmeticError, match="2 of 3 postures are not solved"):
        activations(JOINT.of(slice(0, 3)), np.array([1.5, 0.5, 1.5])[:, None] * LIMIT[:3, None] * NEED[:3])


def test_where_nothing_is_needed_the_load_has_no_limit_and_no_part_works() -> None:
    assert largest_load(JOINT.of(slice(0, 1)), np.zeros((1, 3))).tolist() == [np.inf]
    assert not activations(JOINT.of(slice(0, 1)), np.zeros((1, 3))).any()


@settings(max_examples=60, deadline=None)
@given(st.integers(0, 2**32 - 1), st.floats(0.05, 0.97))
def test_any_joint_is_shared_at_least_cost(seed: int, share: float) -> None:
    """Moving along any direction that keeps the moments makes it dearer."""
    random = np.random.default_rng(seed)
    joint = Joint(
        random.normal(scale=20, size=(1, 8, 3)), unit(random.normal(size=(1, 3))), np.ones(8), RESERVE
    )
    need = random.normal(size=(1, 3))
    need *= share * largest_load(joint, need)[:, None]
    found = activations(joint, need)[0]
    equations = np.column_stack([joint.moments[0].T, joint.axis[0]])
    rest = (need[0] - joint.moments[0].T @ found) @ joint.axis[0]
    x = np.append(found, rest)
    assert equations @ x == pytest.approx(need[0], abs=1e-6)
    keeping = np.linalg.svd(equations)[2][3:]
    cost = 0.5 * (x[:8] @ x[:8] + (rest / RESERVE) ** 2)
    for direction, sign in product(keeping, (-1e-3, 1e-3)):
        other = x + sign * direction
        if ((other[:8] >= 0) & (other[:8] <= 1)).all():
            assert 0.5 * (other[:8] @ other[:8] + (other[8] / RESERVE) ** 2) >= cost - 1e-9
