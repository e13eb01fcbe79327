import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from setwright.engine.frames import (
    across,
    along_great_circle,
    axial_rotation,
    cross,
    elbow_direction,
    humerus_frames,
    plane_elevation,
    turned,
    unit,
    world_up,
)

planes = st.floats(-140, 200)
elevations = st.floats(1, 175)
axials = st.floats(-120, 120)


@pytest.mark.parametrize(
    ("plane", "elevation", "direction"),
    [
        (0, 0, (0, -1, 0)),
        (0, 90, (0, 0, 1)),
        (90, 90, (1, 0, 0)),
        (-90, 90, (-1, 0, 0)),
        (45, 180, (0, 1, 0)),
    ],
)
def test_the_arm_hangs_at_0_and_points_sideways_in_plane_0(
    plane: float, elevation: float, direction: tuple[float, ...]
) -> None:
    assert elbow_direction(plane, elevation) == pytest.approx(direction, abs=1e-12)


@given(planes, elevations)
def test_angles_and_direction_say_the_same(plane: float, elevation: float) -> None:
    assert plane_elevation(elbow_direction(plane, elevation)) == pytest.approx((plane, elevation), abs=1e-6)


@given(planes, elevations, axials)
def test_a_humerus_frame_is_a_rotation_along_the_arm(plane: float, elevation: float, axial: float) -> None:
    u = elbow_direction(plane, elevation)
    frame = turned(axial, u)
    assert frame.T @ frame == pytest.approx(np.eye(3), abs=1e-9)
    assert np.linalg.det(frame) == pytest.approx(1)
    assert frame[:, 1] == pytest.approx(-u, abs=1e-12)


@given(planes, elevations, axials)
def test_axial_rotation_is_what_the_arm_was_turned_by(plane: float, elevation: float, axial: float) -> None:
    assert axial_rotation(turned(axial, elbow_direction(plane, elevation))) == pytest.approx(axial, abs=1e-6)


def test_turning_inward_takes_the_hanging_forearm_across_the_belly() -> None:
    forearm = turned(90.0, elbow_direction(0, 0))[:, 0]
    assert forearm == pytest.approx((0, 0, -1), abs=1e-12)


def test_the_elbow_flexes_towards_the_forearm() -> None:
    u = np.tile(elbow_direction(0, 90), (1, 2, 1))
    forearm = unit(np.array([[[1.0, 0, 0], [0, 1.0, 0]]]))
    frames, bent = humerus_frames(u, forearm)
    assert frames[0, :, :, 0] == pytest.approx(forearm[0], abs=1e-12)
    assert bent.all()


def test_a_straight_elbow_keeps_the_turn_of_the_last_bent_one() -> None:
    u = np.tile(elbow_direction(0, 90), (1, 3, 1))
    forearm = np.array([[[0, 1.0, 0], [0, 0, 1.0], [0, 0, 1.0]]])
    frames, bent = humerus_frames(u, forearm)
    assert bent.tolist() == [[True, False, False]]
    assert axial_rotation(frames) == pytest.approx(np.full((1, 3), -90.0))


def test_a_path_that_starts_straight_takes_the_turn_of_its_first_bent_elbow() -> None:
    u = np.tile(elbow_direction(0, 90), (1, 2, 1))
    frames, _ = humerus_frames(u, np.array([[[0, 0, 1.0], [0, 1.0, 0]]]))
    assert axial_rotation(frames) == pytest.approx(np.full((1, 2), -90.0))


def test_a_path_that_never_bends_is_not_turned() -> None:
    u = elbow_direction(np.array([[0.0, 40.0]]), 70.0)
    frames, bent = humerus_frames(u, u)
    assert not bent.any()
    assert axial_rotation(frames) == pytest.approx(np.zeros((1, 2)), abs=1e-9)


@pytest.mark.parametrize(("recline", "up"), [(0, (0, 1, 0)), (90, (1, 0, 0)), (-90, (-1, 0, 0))])
def test_up_is_forward_of_the_chest_when_lying_on_the_back(recline: float, up: tuple[float, ...]) -> None:
    assert world_up(recline) == pytest.approx(up, abs=1e-12)


def test_great_circles_hold_still_between_equal_directions_and_keep_length_between_others() -> None:
    start, end = np.array([[1.0, 0, 0], [1.0, 0, 0]]), np.array([[1.0, 0, 0], [0, 0, 1.0]])
    middle = along_great_circle(start, end, np.array([0.5, 1 / 3]))
    assert middle[0] == pytest.approx((1, 0, 0))
    assert middle[1] == pytest.approx((np.cos(np.pi / 6), 0, 0.5))


def test_small_vector_helpers_agree_with_numpy() -> None:
    vectors = np.random.default_rng(1).normal(size=(2, 7, 3))
    assert cross(*vectors) == pytest.approx(np.cross(*vectors))
    axes = unit(vectors[1])
    assert np.einsum("ni,ni->n", across(vectors[0], axes), axes) == pytest.approx(np.zeros(7), abs=1e-12)
    assert unit(np.zeros(3)).tolist() == [0, 0, 0]
