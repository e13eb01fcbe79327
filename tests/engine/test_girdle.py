import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from setwright.engine.frames import Floats, elbow_direction
from setwright.engine.geometry import geometry
from setwright.engine.girdle import girdle


def gh(plane: float, elevation: float, protraction: float = 0.0) -> Floats:
    return girdle(elbow_direction(plane, elevation), protraction, geometry()).GH


def test_the_joint_is_continuous_through_the_hanging_arm() -> None:
    assert np.linalg.norm(gh(-90, 1) - gh(90, 1)) < 0.001


def test_the_joint_is_continuous_through_the_arm_straight_up() -> None:
    assert np.linalg.norm(gh(-90, 179) - gh(90, 179)) < 0.001


@given(st.floats(-85, 145), st.floats(0, 179))
def test_the_joint_moves_little_for_a_degree_of_the_arm(plane: float, elevation: float) -> None:
    assert np.linalg.norm(gh(plane, elevation + 1) - gh(plane, elevation)) < 0.003


@given(st.floats(-90, 150), st.floats(0, 180), st.floats(-20, 20))
def test_bones_keep_their_lengths(plane: float, elevation: float, protraction: float) -> None:
    shoulder = geometry()
    bones = girdle(elbow_direction(plane, elevation), protraction, shoulder)
    assert np.linalg.norm(bones.AC - shoulder.SC) == pytest.approx(0.1252)
    assert np.linalg.norm(bones.GH - bones.AC) == pytest.approx(np.linalg.norm(shoulder.GH))
    for rotation in (bones.clavicle, bones.scapula):
        assert rotation.T @ rotation == pytest.approx(np.eye(3), abs=1e-9)
        assert np.linalg.det(rotation) == pytest.approx(1)


def test_protraction_brings_the_joint_forward_and_raising_the_arm_lifts_it() -> None:
    forward, lifted = gh(30, 60, 15) - gh(30, 60), gh(30, 120) - gh(30, 20)
    assert forward[0] > 0.02
    assert lifted[1] > 0.02


def test_beyond_its_planes_the_rhythm_is_not_followed() -> None:
    assert gh(160, 90) == pytest.approx(gh(150, 90))


def test_the_left_girdle_mirrors_the_right_one() -> None:
    flip = np.array([1.0, 1.0, -1.0])
    u = elbow_direction(np.array([-40.0, 10.0, 110.0]), np.array([20.0, 80.0, 100.0]))
    right, left = girdle(u, 5.0, geometry()), girdle(u * flip, 5.0, geometry().mirrored())
    assert pytest.approx(right.GH * flip) == left.GH
    assert pytest.approx(right.AC * flip) == left.AC
