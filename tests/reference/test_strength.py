"""Strength of the shoulder: ratios of opposite directions, all muscles together.

Shoulder strength of adults, isokinetic (PubMed 4004537, read: abstract): adduction to abduction 2 : 1,
extension to flexion 5 : 4, inward to outward rotation 3 : 2. The model is static and of one body: ratios are
tested, never moments, and within a wide band.
"""

import numpy as np

from setwright.engine.frames import Floats, cross, elbow_direction
from tests.reference.model import FORWARD, SIDEWAYS, strongest


def up(plane: float, elevation: float) -> Floats:
    """The axis about which the arm is raised in its plane."""
    return cross(elbow_direction(plane, elevation), elbow_direction(plane, elevation + 90))


def ratio(plane: float, elevation: float, axis: Floats) -> float:
    return strongest(plane, elevation, -axis) / strongest(plane, elevation, axis)


def test_adduction_is_twice_as_strong_as_abduction() -> None:
    assert 1.7 <= ratio(SIDEWAYS, 0.0, up(SIDEWAYS, 0.0)) <= 2.4


def test_extension_is_a_little_stronger_than_flexion() -> None:
    assert 1.0 <= np.mean([ratio(FORWARD, angle, up(FORWARD, angle)) for angle in (0.0, 45.0)]) <= 1.5


def test_turning_in_is_stronger_than_turning_out() -> None:
    hanging = elbow_direction(SIDEWAYS, 0.0)
    assert 1.0 <= ratio(SIDEWAYS, 0.0, hanging) <= 1.7
