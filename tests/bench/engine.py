"""How fast the engine is on one core: strands and load sharing in batches as large as the library, then all.

Each figure is the best of several runs: what else the machine does must not count.
"""

import time
from collections.abc import Callable, Iterator

import numpy as np
from scipy.optimize import lsq_linear

from setwright.engine.frames import Floats
from setwright.engine.geometry import geometry
from setwright.engine.movement import scored_fields
from setwright.engine.muscles import model_muscles, part_forces, part_moments
from setwright.engine.paths import ArmPaths, arm_paths
from setwright.engine.scores import scores
from setwright.engine.sharing import Joint, activations, largest_load
from setwright.engine.strands import strands, unit_length_range
from setwright.library.rows import load_rows
from tests.bench.figures import Figure, at_least, at_most, seen

RUNS = 10
LEAST_POSE_STRANDS = 200_000  # a second
LONGEST_LIBRARY = 0.8  # seconds, a goal: 28 movements in 0.25, with work found three times
SLOW_MACHINE = 2.0  # times the goal: where the benchmark fails, as the machine's speed varies by that much
LEAST_SHARED = 20_000  # postures a second
LEAST_RATIO = 10  # to a loop of SciPy's bounded least squares over the same postures
SHARE = 0.9  # of the largest load
FIRM = 1e3  # weight of the moments in SciPy's problem, which knows no equations
LOOPED = 200  # postures that SciPy is timed on


def best(run: Callable[[], object]) -> float:
    """Shortest wall time of ``RUNS`` runs, in seconds."""
    times = []
    for _ in range(RUNS):
        start = time.perf_counter()
        run()
        times.append(time.perf_counter() - start)
    return min(times)


def scipy_loop(joint: Joint, need: Floats) -> None:
    """The same postures shared one by one."""
    costs = np.diag([*np.sqrt(joint.cost), 1.0])
    parts = len(joint.cost)
    bounds = (np.array([*[0.0] * parts, -np.inf]), np.array([*[1.0] * parts, np.inf]))
    for moments, axis, moment in zip(joint.moments, joint.axis, need, strict=True):
        equations = FIRM * np.column_stack([moments.T, joint.reserve * axis])
        goal = np.concatenate([FIRM * moment, np.zeros(parts + 1)])
        lsq_linear(np.vstack([equations, costs]), goal, bounds, method="bvls")


def sharing(paths: ArmPaths) -> Iterator[Figure]:
    """Load sharing in postures a second, and against SciPy's loop."""
    moments = part_moments(scores(paths).arms_at, paths.frames, paths.bones, geometry())
    joint = Joint(
        moments.reshape(-1, *moments.shape[2:]),
        paths.u.reshape(-1, 3),
        part_forces() / part_forces().mean(),
        model_muscles().reserve,
    )
    asked = -paths.load_moment.reshape(-1, 3)
    need = SHARE * largest_load(joint, asked)[:, None] * asked
    limits = len(need) / best(lambda: largest_load(joint, asked))
    shared = len(need) / best(lambda: activations(joint, need))
    some = joint.of(slice(0, None, len(need) // LOOPED))
    loop = len(some.axis) / best(lambda: scipy_loop(some, need[:: len(need) // LOOPED]))
    yield at_least("postures shared", shared, LEAST_SHARED, "{:,.0f} a second")
    yield seen("postures shared by a SciPy loop", loop, "{:,.0f} a second")
    yield at_least("sharing against that loop", shared / loop, LEAST_RATIO, "{:.0f} times")
    yield seen("largest loads", limits, "{:,.0f} a second")


def figures() -> Iterator[Figure]:
    """Strands, the library scored, load sharing."""
    rows = [row for row in load_rows() if row.path is not None]
    shoulder = geometry()
    unit_length_range()
    paths = arm_paths([row.path for row in rows if row.path is not None])
    pose_strands = paths.u[..., 0].size * len(shoulder.part)
    rate = pose_strands / best(lambda: strands(paths.frames, paths.bones, shoulder))
    library = best(lambda: scored_fields(rows))
    yield at_least("pose-strands", rate, LEAST_POSE_STRANDS, "{:,.0f} a second")
    slowest = SLOW_MACHINE * LONGEST_LIBRARY
    yield at_most(f"{len(rows)} movements scored", library, slowest, "{:.2f} s", goal=LONGEST_LIBRARY)
    yield from sharing(paths)
