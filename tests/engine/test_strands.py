"""Strands: virtual work, no jumps, both arms, any size. Figures to demand: docs/engine.md."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.engine.frames import Floats, cross, dot, elbow_direction, turned, unit
from setwright.engine.geometry import PARTS, geometry
from setwright.engine.girdle import girdle
from setwright.engine.strands import Strands, length_percent, posed, strands, unit_length_range

SHOULDER = geometry()
LARGEST_STEP_M = 0.003  # a degree
AXES = np.vstack([np.eye(3), unit(np.array([[1.0, 1, 1], [1, -1, 2]]))])


def part_mean(values: Floats) -> Floats:
    return values @ SHOULDER.averaging.T


def rotated(frames: Floats, axis: Floats, angle: float) -> Floats:
    c, s = np.cos(angle), np.sin(angle)
    columns = np.moveaxis(frames, -1, -2)
    turned_columns = c * columns + s * cross(axis, columns) + (1 - c) * dot(columns, axis)[..., None] * axis
    return np.moveaxis(turned_columns, -2, -1)


def worst_work_error(plane: Floats, elevation: Floats, axial: Floats) -> float:
    """Largest difference between -dL/dtheta and the moment arm, metres, with the girdle held still."""
    u = elbow_direction(plane, elevation)
    frames, bones = turned(axial, u), girdle(u, 0.0, SHOULDER)
    moment = strands(frames, bones, SHOULDER).moment
    worst = 0.0
    for axis in AXES:
        step = 1e-3
        ends = [strands(rotated(frames, axis, sign * step), bones, SHOULDER).length for sign in (-1, 1)]
        worst = max(worst, float(np.abs((ends[1] - ends[0]) / (2 * step) + moment @ axis).max()))
    return worst


def test_moment_arm_is_minus_the_change_of_length_on_a_thousand_postures() -> None:
    plane, elevation, axial = (
        values.ravel()
        for values in np.meshgrid(
            np.arange(-37, 131, 9.0), np.arange(10, 131, 7.0), [-40.0, 0, 40], indexing="ij"
        )
    )
    assert plane.size > 900
    assert worst_work_error(plane, elevation, axial) < 0.0001


@settings(max_examples=40)
@given(st.floats(-37, 130), st.floats(10, 130), st.floats(-40, 40))
def test_moment_arm_is_minus_the_change_of_length_anywhere(
    plane: float, elevation: float, axial: float
) -> None:
    assert worst_work_error(np.array(plane), np.array(elevation), np.array(axial)) < 0.0001


@pytest.mark.parametrize("axial", [-40.0, 0.0, 40.0])
def test_no_length_jumps(axial: float) -> None:
    plane, elevation = np.meshgrid(np.arange(-40, 131, 2.0), np.arange(10, 131, 2.0), indexing="ij")
    length = posed(elbow_direction(plane, elevation), axial, 0.0, SHOULDER).length
    assert np.abs(np.diff(length, axis=0)).max() < 2 * LARGEST_STEP_M
    assert np.abs(np.diff(length, axis=1)).max() < 2 * LARGEST_STEP_M


@settings(max_examples=40)
@given(st.floats(-40, 129), st.floats(10, 129), st.sampled_from([-40.0, 0.0, 40.0]))
def test_no_length_step_over_3_mm_a_degree(plane: float, elevation: float, axial: float) -> None:
    here, next_plane, next_elevation = (
        posed(elbow_direction(plane + dp, elevation + de), axial, 0.0, SHOULDER).length
        for dp, de in ((0, 0), (1, 0), (0, 1))
    )
    assert np.abs(next_plane - here).max() < LARGEST_STEP_M
    assert np.abs(next_elevation - here).max() < LARGEST_STEP_M


@pytest.mark.parametrize("elevation", [60.0, 90.0])
def test_sternal_and_clavicular_strands_shorten_all_the_way_across(elevation: float) -> None:
    length = posed(elbow_direction(np.arange(-30, 131, 1.0), elevation), 0.0, 0.0, SHOULDER).length
    across = part_mean(length)
    assert (np.diff(across[:, PARTS.index("clavicular")]) < 0).all()
    assert (np.diff(across[:, PARTS.index("sternal")]) < 0).all()


@pytest.mark.parametrize("protraction", [0.0, 10.0])
def test_the_left_arm_has_the_same_figures(protraction: float) -> None:
    flip = np.array([1.0, 1.0, -1.0])
    u = elbow_direction(np.array([-35.0, 0, 60, 120]), np.array([30.0, 80, 100, 60]))
    right, left = turned(20.0, u), turned(-20.0, u * flip)
    one = strands(right, girdle(u, protraction, SHOULDER), SHOULDER)
    other_shoulder = SHOULDER.mirrored()
    other = strands(left, girdle(u * flip, protraction, other_shoulder), other_shoulder)
    assert other.length == pytest.approx(one.length, abs=1e-9)
    assert other.moment == pytest.approx(
        -one.moment * flip, abs=1e-9
    )  # a turn mirrors with the opposite sign


@settings(max_examples=20)
@given(st.floats(0.7, 1.4), st.floats(-40, 120), st.floats(10, 120))
def test_a_larger_body_has_longer_levers_and_the_same_directions(
    size: float, plane: float, elevation: float
) -> None:
    u = elbow_direction(plane, elevation)
    one, other = posed(u, 0.0, 0.0, SHOULDER), posed(u, 0.0, 0.0, SHOULDER.scaled(size))
    assert other.moment == pytest.approx(one.moment * size, abs=1e-6)
    assert other.pull == pytest.approx(one.pull, abs=1e-5)
    assert length_percent(other.length, SHOULDER.scaled(size)) == pytest.approx(
        length_percent(one.length, SHOULDER), abs=1e-3
    )


def raising_arm(plane: float, elevation: Floats, axial: float = 0.0) -> Floats:
    """Moment arms of the parts about the axis that raises the arm in its plane, mm; + raises."""
    u = elbow_direction(plane, elevation)
    axis = cross(u, elbow_direction(plane, elevation + 90))
    return 1000 * part_mean(dot(posed(u, axial, 0.0, SHOULDER).moment, axis[:, None, :]))


def adducting_arm(plane: Floats, elevation: float) -> Floats:
    """Moment arms of the parts about the vertical axis, mm; + brings the arm across."""
    return 1000 * part_mean(posed(elbow_direction(plane, elevation), 0.0, 0.0, SHOULDER).moment[..., 1])


def test_the_clavicular_part_flexes_and_adducts_horizontally() -> None:
    assert (raising_arm(90, np.arange(0, 76, 5.0))[:, 0] > 0).all()
    assert (adducting_arm(np.arange(-30, 131, 10.0), 90)[:, 0] >= 15).all()


def test_the_sternal_part_adducts_and_turns_from_flexor_to_extensor() -> None:
    assert (raising_arm(0, np.arange(0, 121, 10.0))[:, 1] < 0).all()
    assert (adducting_arm(np.arange(-30, 131, 10.0), 90)[:, 1] > 0).all()
    assert (raising_arm(90, np.arange(0, 30, 5.0))[:, 1] > 0).all()
    assert (raising_arm(90, np.arange(75, 121, 5.0))[:, 1] < 0).all()


def test_the_costal_part_adducts_and_extends() -> None:
    assert (raising_arm(0, np.arange(0, 121, 10.0))[:, 2] < 0).all()
    assert (raising_arm(90, np.arange(40, 121, 5.0))[:, 2] < 0).all()


def test_horizontal_adduction_arms_with_the_arm_forward() -> None:
    arms = adducting_arm(np.array([90.0]), 90)[0]
    for arm, low, high in zip(arms, (55, 38, 18), (80, 55, 32), strict=True):
        assert low <= arm <= high


def test_no_insertion_lies_inside_the_head_and_no_origin_off_the_chest() -> None:
    assert (np.linalg.norm(SHOULDER.insertion, axis=1) > SHOULDER.head_radius).all()
    flat = SHOULDER.chest.flat(SHOULDER.origin[~SHOULDER.on_clavicle])
    assert np.hypot(*flat.T) == pytest.approx(np.ones(5))


def test_ranges_of_length_are_those_of_long_and_short_muscles() -> None:
    short, long = unit_length_range()
    assert (long > 1.8 * short).all()
    assert (np.diff(part_mean(long)) > 0).all()  # costal longest


def test_a_strand_is_never_shorter_than_the_straight_line() -> None:
    u = elbow_direction(*np.meshgrid(np.arange(-40, 131, 10.0), np.arange(10, 131, 10.0)))
    pulls: Strands = posed(u, 0.0, 0.0, SHOULDER)
    assert (pulls.length >= np.linalg.norm(pulls.origin - pulls.insertion, axis=-1) - 1e-9).all()
    assert pulls.head.touches.any()
    assert not pulls.head.touches.all()
    assert pulls.chest.touches.any()
    assert not pulls.chest.touches.all()
