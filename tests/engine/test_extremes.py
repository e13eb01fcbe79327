"""Extremes of the shoulder's angles, as range limits ask for them."""

import numpy as np
import pytest

from setwright.engine.extremes import extremes, outside_trust, refusal, shoulder_angles
from setwright.engine.frames import elbow_direction
from setwright.engine.geometry import geometry
from setwright.engine.paths import arm_paths
from tests.engine.library_paths import ROWS, figures


def most(key: str, angle: str) -> float:
    value: float = figures(key)[0]["extremes"][angle]["max"]
    return value


@pytest.mark.parametrize(
    "key",
    ["parallel-bar-dip-leaning", "flat-barbell-bench-press", "flat-dumbbell-fly", "bench-dip", "push-up"],
)
def test_the_arm_goes_well_behind_the_body(key: str) -> None:
    assert most(key, "arm_behind") > 15


@pytest.mark.parametrize("key", ["barbell-floor-press", "dumbbell-floor-press"])
def test_the_floor_stops_the_arm_at_the_body(key: str) -> None:
    assert abs(most(key, "arm_behind")) < 5


def test_a_press_overhead_raises_the_arm_and_a_dip_does_not() -> None:
    assert most("barbell-overhead-press", "arm_up") > 140
    assert most("parallel-bar-dip-upright", "arm_up") < 60


def test_only_crossing_work_brings_the_arm_across() -> None:
    assert most("one-arm-cable-fly-across", "arm_across") > 30
    assert most("flat-barbell-bench-press", "arm_across") < 0


def test_behind_the_neck_the_arm_is_turned_out_most() -> None:
    assert most("behind-neck-press", "arm_turned_out") > 80
    assert most("flat-barbell-bench-press", "arm_turned_out") < 30


def test_a_straight_elbow_says_nothing_of_turning() -> None:
    assert figures("straight-arm-pulldown")[0]["extremes"]["arm_turned_out"] is None


def test_a_forearm_straight_up_beside_a_sideways_arm_is_turned_out_by_90() -> None:
    row = ROWS["dumbbell-lateral-raise"]
    assert row.path is not None
    posture = row.path.keys[0].model_copy(update={"plane_elevation_deg": (0, 90), "forearm": (0.0, 1.0, 0.0)})
    angles = shoulder_angles(arm_paths([row.path.model_copy(update={"keys": (posture, posture)})]))
    assert extremes(angles, 0) == {
        "arm_behind": {"min": 0, "max": 0},
        "arm_up": {"min": 90, "max": 90},
        "arm_across": {"min": -90, "max": -90},
        "arm_turned_out": {"min": 90, "max": 90},
        "plane": {"min": 0, "max": 0},
        "elbow": {"min": 90, "max": 90},
    }


def test_a_hanging_arm_has_no_plane() -> None:
    row = ROWS["dumbbell-lateral-raise"]
    assert row.path is not None
    posture = row.path.keys[0].model_copy(update={"plane_elevation_deg": (0, 2)})
    angles = shoulder_angles(arm_paths([row.path.model_copy(update={"keys": (posture, posture)})]))
    assert extremes(angles, 0)["plane"] is None


@pytest.mark.parametrize(
    ("plane", "elevation", "outside"),
    [
        (0, 90, False),
        (-45, 90, False),
        (-45, 100, True),
        (-80, 60, False),
        (-80, 66, True),
        (90, 157, False),
        (90, 159, True),
    ],
)
def test_zones_that_are_not_trusted(plane: float, elevation: float, *, outside: bool) -> None:
    u = elbow_direction(plane, elevation)
    assert outside_trust(u, geometry()) == outside
    assert outside_trust(u * np.array([1, 1, -1]), geometry().mirrored()) == outside


def test_only_the_pull_over_leaves_the_trusted_zone_and_is_then_not_scored() -> None:
    scored = {row.key: row for row in ROWS.values() if row.path is not None}
    fields = dict(zip(scored, figures(*scored), strict=True))
    refused = {key for key, one in fields.items() if one["refused"]}
    assert refused == {"dumbbell-pullover"}
    pullover = fields["dumbbell-pullover"]
    assert "165 deg" in pullover["refused"]
    assert pullover["serves"] == []
    assert [part["dose"] for part in pullover["parts"].values()] == [0, 0, 0]
    assert pullover["line"] == "costal"


def test_a_path_inside_the_zones_has_no_refusal() -> None:
    assert refusal(np.array([False, False]), np.array([10.0, 20.0])) is None
