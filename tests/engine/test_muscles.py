"""The parts outside the chest: their data, their strands in postures, their zones."""

from dataclasses import replace

import numpy as np
import pytest

from setwright.engine.frames import Floats, cross, dot, elbow_direction, norm, turned
from setwright.engine.geometry import PARTS, geometry
from setwright.engine.girdle import Girdle, girdle
from setwright.engine.muscles import (
    ALL_PARTS,
    CUFF,
    OTHER_PARTS,
    in_zone,
    model_muscles,
    muscle_data,
    muscles_of,
    other_strands,
    part_forces,
    part_moments,
)
from setwright.engine.paths import arm_paths
from tests.engine.library_paths import SCORED

TURN = 1e-4
GRID = [grid.ravel() for grid in np.meshgrid(np.arange(-40.0, 131, 10), np.arange(10.0, 131, 10))]


def test_every_part_has_strands_with_a_source_and_a_trust() -> None:
    data = muscle_data()
    assert tuple(data["parts"]) == (*OTHER_PARTS, *CUFF)
    for part in data["parts"].values():
        assert part["strands"]
        assert set(part["source"].split(", ")) <= set(data["sources"])
        assert part["trust"] in {"solid", "soft", "not usable"}
        assert ("why" in part) is (part["trust"] != "solid")


def test_largest_forces_a_part() -> None:
    forces = dict(zip(ALL_PARTS, part_forces().round(1).tolist(), strict=True))
    assert forces["deltoid_middle"] == 2597.7
    assert forces["latissimus_dorsi"] == 786.8
    assert forces["subscapularis"] == 2003.4


def moved(frame: Floats, axis: Floats, bones: Girdle) -> Floats:
    """Lengths after a small turn of the humerus about an axis through a joint that stays where it is."""
    x, y, z = axis
    skew = np.array([[0, -z, y], [z, 0, -x], [-y, x, 0]])
    turn = np.eye(3) + np.sin(TURN) * skew + (1 - np.cos(TURN)) * skew @ skew
    return other_strands(turn @ frame, bones, model_muscles()).length


def test_moment_arms_are_what_the_lengths_lose_by_a_turn() -> None:
    paths = arm_paths([row.path for row in SCORED if row.path is not None])
    u, frames = paths.u[:, ::10].reshape(-1, 3), paths.frames[:, ::10].reshape(-1, 3, 3)
    bones = girdle(u, 0.0, geometry())
    moment = other_strands(frames, bones, model_muscles()).moment
    for axis in (np.array([1.0, 0, 0]), np.array([0, 0.6, 0.8])):
        lost = (moved(frames, -axis, bones) - moved(frames, axis, bones)) / (2 * TURN)
        assert np.abs(lost - dot(moment, axis)).max() < 1e-4


def test_no_length_jumps_within_reach() -> None:
    plane, elevation = np.meshgrid(np.arange(-40.0, 131, 1), np.arange(10.0, 131, 5))
    u = elbow_direction(plane, elevation)
    for axial in (-40.0, 0.0, 40.0):
        length = other_strands(turned(axial, u), girdle(u, 0.0, geometry()), model_muscles()).length
        assert np.abs(np.diff(length, axis=1)).max() < 0.003


def moments(size: float, *, left: bool) -> Floats:
    shoulder = geometry().scaled(size)
    flip = np.array([1.0, 1.0, -1.0]) if left else np.ones(3)
    shoulder = shoulder.mirrored() if left else shoulder
    u = elbow_direction(*GRID)
    right = turned(20.0, u)
    frames = right * flip[:, None] * (np.array([1.0, 1.0, -1.0]) if left else 1.0)
    chest = np.zeros((*u.shape[:-1], len(PARTS), 3))
    return part_moments(chest, frames, girdle(u * flip, 0.0, shoulder), shoulder)


def test_the_left_arm_is_the_mirror_of_the_right() -> None:
    mirrored = moments(1.0, left=True) * [-1.0, -1.0, 1.0]  # a moment turns the other way round
    assert mirrored == pytest.approx(moments(1.0, left=False), abs=1e-9)


def test_moments_grow_with_the_body() -> None:
    assert moments(1.2, left=False) == pytest.approx(1.2 * moments(1.0, left=False), abs=1e-9)
    assert muscles_of(geometry().scaled(1.2)).reserve == pytest.approx(1.2 * model_muscles().reserve)


def test_cutting_strands_in_two_changes_no_moment() -> None:
    muscles = model_muscles()
    split = replace(
        muscles,
        origin=np.repeat(muscles.origin, 2, axis=0),
        insertion=np.repeat(muscles.insertion, 2, axis=0),
        radius=np.repeat(muscles.radius, 2),
        on_scapula=np.repeat(muscles.on_scapula, 2),
        part=np.repeat(muscles.part, 2),
        force=np.repeat(muscles.force / 2, 2),
    )
    u = elbow_direction(*GRID)
    bones = girdle(u, 0.0, geometry())
    whole, halves = (
        np.einsum("ps,...si->...pi", one.pulls, other_strands(turned(0.0, u), bones, one).moment)
        for one in (muscles, split)
    )
    assert halves == pytest.approx(whole, abs=1e-9)


def test_strands_pull_with_unit_vectors_off_the_head() -> None:
    u = elbow_direction(*GRID)
    found = other_strands(turned(0.0, u), girdle(u, 0.0, geometry()), model_muscles())
    assert norm(found.pull) == pytest.approx(1.0)
    assert norm(found.moment).min() > 0.001
    assert cross(found.pull, found.moment).shape == found.pull.shape


def test_zones_by_plane_and_elevation_or_by_the_angle_behind() -> None:
    zone = {"plane": [-30, -8], "elevation": [42, 80]}
    u = elbow_direction([-20.0, -20.0, 0.0], [60.0, 90.0, 60.0])
    assert in_zone(zone, u, 1).tolist() == [True, False, False]
    assert in_zone(zone, u * [1.0, 1.0, -1.0], -1).tolist() == [True, False, False]
    assert in_zone({"behind": 15}, elbow_direction([-90.0, 90.0], [20.0, 20.0]), 1).tolist() == [True, False]
