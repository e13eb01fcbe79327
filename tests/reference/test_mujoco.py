"""Lengths and moment arms from an independent library on a small scene of our own.

MuJoCo (mujoco on PyPI) routes a tendon round one sphere and one round cylinder as we do. The scene holds
our points only: a ball joint at the origin, the model's sphere, a cylinder of one radius. Tolerance 0.1 mm:
both are exact but for MuJoCo's choice of side and our rounds between the two surfaces; MuJoCo wraps one
surface between two points.
"""

import mujoco
import numpy as np
import pytest

from setwright.engine.frames import cross, elbow_direction, turned, unit
from setwright.engine.geometry import Chest, geometry
from setwright.engine.girdle import girdle
from setwright.engine.muscles import model_muscles, other_strands
from setwright.engine.wrapping import over_chest, round_head

RADIUS = 0.03
PLANES, ELEVATIONS = (
    grid.ravel() for grid in np.meshgrid(np.arange(-35.0, 90.0, 15.0), np.arange(15.0, 100.0, 20.0))
)

SPHERE = """
<mujoco><worldbody>
  <geom name="head" type="sphere" size="{radius}" pos="0 0 0"/>
  <site name="origin" pos="{origin}"/><site name="side" pos="{side}"/>
  <body name="arm"><joint type="ball"/>
    <geom type="sphere" size="0.01" pos="0 -0.3 0" mass="1"/><site name="insertion" pos="{insertion}"/></body>
</worldbody><tendon><spatial name="strand">
  <site site="insertion"/><geom geom="head" sidesite="side"/><site site="origin"/></spatial>
</tendon></mujoco>
"""
CYLINDER = """
<mujoco><worldbody>
  <geom name="chest" type="cylinder" size="{radius} 0.5" pos="0 0 0" euler="90 0 0"/>
  <site name="origin" pos="{origin}"/><site name="side" pos="{side}"/>
  <body name="arm" pos="{start}"><joint type="slide" axis="1 0 0"/>
    <joint type="slide" axis="0 1 0"/><joint type="slide" axis="0 0 1"/>
    <geom type="sphere" size="0.01" mass="1"/><site name="insertion"/></body>
</worldbody><tendon><spatial name="strand">
  <site site="insertion"/><geom geom="chest" sidesite="side"/><site site="origin"/></spatial>
</tendon></mujoco>
"""


def numbers(values: np.ndarray[tuple[int, ...], np.dtype[np.float64]] | list[float]) -> str:
    return " ".join(f"{value:.12g}" for value in values)


@pytest.mark.parametrize("strand", range(8))
def test_round_the_head_lengths_and_moment_arms_agree(strand: int) -> None:
    insertion, origin = geometry().insertion[strand], np.array([0.05, -0.05, -0.15])
    free_side = unit(np.array([1.0, -1.0, 0.0]))
    sites = {"origin": numbers(origin), "insertion": numbers(insertion), "side": numbers(0.05 * free_side)}
    model = mujoco.MjModel.from_xml_string(SPHERE.format(radius=RADIUS, **sites))
    data = mujoco.MjData(model)
    touched = []
    for frame in turned(10.0, elbow_direction(PLANES, ELEVATIONS)):
        mujoco.mju_mat2Quat(data.qpos, frame.ravel())
        mujoco.mj_forward(model, data)
        ours = round_head(
            frame @ insertion, np.zeros(3), origin, free_side, radius=RADIUS, side_from_deg=75.0
        )
        touched.append(bool(ours.touches))
        length = ours.length + np.linalg.norm(origin - ours.leaves)
        assert data.ten_length[0] == pytest.approx(length, abs=1e-4)
        moment = frame.T @ cross(
            ours.leaves, unit(origin - ours.leaves)
        )  # a ball joint turns about its own axes
        assert -data.ten_J.ravel()[:3] == pytest.approx(moment, abs=1e-4)
    assert sum(touched) >= 3
    assert not all(touched)


@pytest.mark.parametrize("strand", range(22))
def test_the_other_strands_take_the_shorter_way_round_their_spheres(strand: int) -> None:
    """The joint and the scapula stand still here; only the humerus turns, as in MuJoCo's scene."""
    muscles, still = model_muscles(), girdle(elbow_direction(30.0, 60.0), 0.0, geometry())
    joint = still.AC + still.scapula @ muscles.origin[strand]
    origin = (joint if muscles.on_scapula[strand] else muscles.origin[strand]) - still.GH
    sites = {"origin": numbers(origin), "insertion": numbers(muscles.insertion[strand]), "side": "0 0 0"}
    scene = SPHERE.format(radius=muscles.radius[strand], **sites).replace(' sidesite="side"', "")
    model = mujoco.MjModel.from_xml_string(scene)
    data = mujoco.MjData(model)
    for frame in turned(10.0, elbow_direction(PLANES, ELEVATIONS)):
        mujoco.mju_mat2Quat(data.qpos, frame.ravel())
        mujoco.mj_forward(model, data)
        ours = other_strands(frame, still, muscles)
        assert data.ten_length[0] == pytest.approx(ours.length[strand], abs=1e-4)
        assert -data.ten_J.ravel()[:3] == pytest.approx(frame.T @ ours.moment[strand], abs=1e-4)


def test_over_a_round_chest_lengths_and_pulls_agree() -> None:
    radius = 0.1
    unit_axes = np.eye(3)[:, None, :]
    chest = Chest(np.zeros((1, 3)), unit_axes[1], unit_axes[0], unit_axes[2], np.full((1, 2), radius))
    origin = radius * np.array([np.cos(-0.1), 0, np.sin(-0.1)]) + np.array([0, -0.05, 0])
    model = mujoco.MjModel.from_xml_string(
        CYLINDER.format(
            radius=radius, origin=numbers(origin * [1.0001, 1, 1.0001]), side="0.2 0 0.1", start="0 0 0"
        )
    )
    data = mujoco.MjData(model)
    for start in ([0.02, 0.03, 0.18], [0.06, -0.02, 0.2], [-0.03, 0.1, 0.16], [-0.02, 0.0, 0.15]):
        data.qpos[:] = start
        mujoco.mj_forward(model, data)
        ours = over_chest(np.array([start]), origin[None], chest)
        assert data.ten_length[0] == pytest.approx(float(ours.length[0]), abs=1e-4)
        assert ours.touches.all()
        pull = unit(ours.meets - np.array([start]))[0]
        assert -data.ten_J.ravel()[:3] == pytest.approx(pull, abs=1e-3)
