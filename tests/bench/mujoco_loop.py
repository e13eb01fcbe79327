"""Strands round the head of the humerus against MuJoCo's loop over the same strands, in postures a second.

The scene is our own: the 22 strands outside the chest as tendons round their spheres, joint and scapula
still, the humerus turning. MuJoCo takes one posture at a time: kinematics, then tendons.
"""

import time
from collections.abc import Iterator

import mujoco
import numpy as np

from setwright.engine.frames import elbow_direction, turned
from setwright.engine.geometry import geometry
from setwright.engine.girdle import Girdle, girdle
from setwright.engine.muscles import model_muscles, other_strands
from tests.bench.engine import best
from tests.bench.figures import Figure, at_least, seen

POSTURES = 2_000
LEAST_RATIO = 0.5  # to a compiled loop over one body: information, not a goal

SCENE = """
<mujoco><worldbody>{fixed}
  <body name="arm"><joint type="ball"/>
    <geom type="sphere" size="0.01" pos="0 -0.3 0" mass="1"/>{moving}</body>
</worldbody><tendon>{tendons}</tendon></mujoco>
"""


def scene(still: Girdle) -> mujoco.MjModel:
    """A tendon a strand, round a sphere of its own radius at the joint."""
    muscles = model_muscles()
    origins = np.where(
        muscles.on_scapula[:, None], still.AC + muscles.origin @ still.scapula.T, muscles.origin
    )
    fixed, moving, tendons = [], [], []
    for n, (origin, insertion, radius) in enumerate(
        zip(origins - still.GH, muscles.insertion, muscles.radius, strict=True)
    ):
        at, to = (" ".join(f"{value:.12g}" for value in point) for point in (origin, insertion))
        fixed.append(f'<geom name="g{n}" type="sphere" size="{radius}"/><site name="o{n}" pos="{at}"/>')
        moving.append(f'<site name="i{n}" pos="{to}"/>')
        tendons.append(f'<spatial><site site="i{n}"/><geom geom="g{n}"/><site site="o{n}"/></spatial>')
    return mujoco.MjModel.from_xml_string(
        SCENE.format(fixed="".join(fixed), moving="".join(moving), tendons="".join(tendons))
    )


def figures() -> Iterator[Figure]:
    """Postures a second, and against the compiled loop."""
    still = girdle(elbow_direction(30.0, 60.0), 0.0, geometry())
    model = scene(still)
    data = mujoco.MjData(model)
    frames = turned(10.0, elbow_direction(np.linspace(-35.0, 90.0, POSTURES), 60.0))
    quaternions = np.empty((POSTURES, 4))
    for quaternion, frame in zip(quaternions, frames, strict=True):
        mujoco.mju_mat2Quat(quaternion, frame.ravel())
    start = time.perf_counter()
    for quaternion in quaternions:
        data.qpos[:] = quaternion
        mujoco.mj_kinematics(model, data)
        mujoco.mj_comPos(model, data)
        mujoco.mj_tendon(model, data)
    loop = POSTURES / (time.perf_counter() - start)
    muscles = model_muscles()
    ours = POSTURES / best(lambda: other_strands(frames, still, muscles))
    yield seen("postures of 22 strands", ours, "{:,.0f} a second")
    yield at_least("against MuJoCo's loop", ours / loop, LEAST_RATIO, "{:.1f} times")
