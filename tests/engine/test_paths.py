"""Arm paths of the library: a body can do them, and the load points where the words say."""

import numpy as np
import pytest

from setwright.engine.frames import Floats, dot, norm, unit
from setwright.engine.geometry import geometry
from setwright.engine.paths import SAMPLES, ArmPaths, arm_paths
from setwright.engine.strands import strands
from setwright.library.rows import Force
from tests.engine.library_paths import ROWS, SCORED, changed

PATHS = arm_paths([row.path for row in SCORED if row.path is not None])
AT = {row.key: n for n, row in enumerate(SCORED)}
UNTRUSTED = "dumbbell-pullover"


def one(key: str) -> tuple[ArmPaths, int]:
    return PATHS, AT[key]


def load(key: str) -> Floats:
    found: Floats = PATHS.load[AT[key]]
    return found


def test_every_hand_is_within_reach() -> None:
    assert PATHS.stretch.max() == pytest.approx(0, abs=5e-5)


def test_limbs_keep_their_lengths_and_directions_are_of_length_one() -> None:
    shoulder = geometry()
    assert norm(PATHS.elbow - PATHS.bones.GH) == pytest.approx(np.full(PATHS.bent.shape, shoulder.upper_arm))
    assert norm(PATHS.hand - PATHS.elbow) == pytest.approx(np.full(PATHS.bent.shape, shoulder.elbow_to_grip))
    for directions in (PATHS.u, PATHS.forearm, PATHS.load):
        assert norm(directions) == pytest.approx(np.ones(PATHS.bent.shape))


def test_hands_are_where_the_row_puts_them() -> None:
    for row in SCORED:
        assert row.path is not None
        if row.path.given == "hand":
            ends = PATHS.hand[AT[row.key]][[0, -1]]
            assert ends == pytest.approx(
                np.array([row.path.keys[0].hand_m, row.path.keys[-1].hand_m]), abs=0.0005
            ), row.key


def test_no_elbow_bends_further_than_an_elbow_can() -> None:
    bend = np.degrees(np.arccos(np.clip(dot(PATHS.u, PATHS.forearm), -1, 1)))
    assert bend.max() < 150


@pytest.mark.parametrize("implement", ["barbell", "bodyweight"])
def test_grips_on_a_bar_or_the_floor_stay_in_place(implement: str) -> None:
    for row in SCORED:
        if row.hands == "fixed apart" and row.implement == implement and row.pattern != "fly":
            assert np.ptp(PATHS.hand[AT[row.key], :, 2]) < 0.035, row.key


def test_no_strand_jumps_along_a_path() -> None:
    pulls = strands(PATHS.frames, PATHS.bones, geometry())
    turn = np.einsum("mnij,mnij->mn", PATHS.frames[:, :-1], PATHS.frames[:, 1:])
    degrees = np.degrees(np.arccos(np.clip((turn - 1) / 2, -1, 1)))
    step = 1000 * np.abs(np.diff(pulls.length, axis=1)).max(axis=-1)
    for row in SCORED:
        if row.key != UNTRUSTED:
            moving = degrees[AT[row.key]] > 0.2
            assert (step[AT[row.key]][moving] < 3 * degrees[AT[row.key]][moving] + 0.1).all(), row.key


def test_gravity_pulls_toward_the_bench_and_a_side_share_turns_it_inward() -> None:
    dumbbell, bar = load("flat-dumbbell-bench-press"), load("flat-barbell-bench-press")
    assert dumbbell[0] == pytest.approx((-1, 0, 0))
    assert bar[0] == pytest.approx(unit(np.array([-1, 0, -0.25])))


def test_the_floor_and_the_bar_of_a_dip_push_upward() -> None:
    assert (load("parallel-bar-dip-upright")[:, 1] > 0.8).all()


def test_a_raised_push_up_is_pushed_square_to_the_trunk() -> None:
    assert load("hands-raised-push-up")[0] == pytest.approx((-1, 0, 0))


def test_a_cable_pulls_the_hand_toward_its_pulley() -> None:
    paths, n = one("level-cable-crossover")
    path = ROWS["level-cable-crossover"].path
    assert path is not None
    assert path.force.point_m is not None
    assert dot(np.array(path.force.point_m) - paths.hand[n], paths.load[n]).min() > 0.5


def test_a_guided_arm_resists_along_its_own_way() -> None:
    paths, n = one("machine-fly")
    assert (dot(np.diff(paths.hand[n], axis=0), paths.load[n, 1:]) < 0).all()


def test_a_squeeze_is_resisted_by_the_other_hand() -> None:
    pressed = changed("flat-dumbbell-bench-press", force=_other_hand())
    assert pressed.path is not None
    assert arm_paths([pressed.path]).load[0, 3] == pytest.approx((0, 0, -1))


def _other_hand() -> Force:
    row = next(row for row in SCORED if row.path is not None and row.path.force.kind == "toward other hand")
    assert row.path is not None
    return row.path.force.model_copy(update={"side_share": 0.0})


def test_a_bar_in_a_floor_pivot_cannot_pull_along_itself() -> None:
    paths, n = one("one-arm-landmine-press")
    path = ROWS["one-arm-landmine-press"].path
    assert path is not None
    bar = unit(paths.hand[n] - np.array(path.force.point_m))
    assert dot(bar, paths.load[n]) == pytest.approx(np.zeros(SAMPLES), abs=1e-9)
    assert (paths.load[n, :, 1] < 0).all()


def test_a_hand_out_of_reach_is_pulled_back_and_said() -> None:
    row = ROWS["flat-barbell-bench-press"]
    assert row.path is not None
    far = [key.model_copy(update={"hand_m": (0.8, 0.0, 0.3)}) for key in row.path.keys]
    paths = arm_paths([row.path.model_copy(update={"keys": tuple(far)})])
    assert paths.stretch.max() > 0.2
    assert dot(paths.u[0, 0], paths.forearm[0, 0]) == pytest.approx(1, abs=1e-3)


def test_paths_scale_with_the_body() -> None:
    path = ROWS["flat-barbell-bench-press"].path
    assert path is not None
    large = arm_paths([path], geometry().scaled(1.2))
    assert large.u == pytest.approx(PATHS.u[AT["flat-barbell-bench-press"]][None], abs=1e-6)
    assert large.hand == pytest.approx(1.2 * PATHS.hand[AT["flat-barbell-bench-press"]][None], abs=1e-6)


def test_elbow_paths_alone_are_read_too() -> None:
    path = ROWS["dumbbell-lateral-raise"].path
    assert path is not None
    assert path.given == "elbow"
    assert arm_paths([path]).u[0] == pytest.approx(PATHS.u[AT["dumbbell-lateral-raise"]])
