"""How fast the engine is on one core: strands in a batch of the library's size, and the whole library scored.

Each figure is the best of several runs: what else the machine does must not count.
"""

import time
from collections.abc import Callable

from setwright.engine.geometry import geometry
from setwright.engine.movement import scored_fields
from setwright.engine.paths import arm_paths
from setwright.engine.strands import strands, unit_length_range
from setwright.library.rows import load_rows

RUNS = 10
LEAST_POSE_STRANDS = 200_000  # a second
LONGEST_LIBRARY = 0.3  # seconds


def best(run: Callable[[], object]) -> float:
    """Shortest wall time of ``RUNS`` runs, in seconds."""
    times = []
    for _ in range(RUNS):
        start = time.perf_counter()
        run()
        times.append(time.perf_counter() - start)
    return min(times)


def main() -> bool:
    """Measure, print, and say whether both figures hold."""
    rows = [row for row in load_rows() if row.path is not None]
    shoulder = geometry()
    unit_length_range()
    paths = arm_paths([row.path for row in rows if row.path is not None])
    pose_strands = paths.u[..., 0].size * len(shoulder.part)
    rate = pose_strands / best(lambda: strands(paths.frames, paths.bones, shoulder))
    library = best(lambda: scored_fields(rows))
    print(f"engine: {rate:,.0f} pose-strands a second (at least {LEAST_POSE_STRANDS:,})")
    print(f"engine: {len(rows)} movements scored in {library:.3f} s (at most {LONGEST_LIBRARY})")
    return rate >= LEAST_POSE_STRANDS and library <= LONGEST_LIBRARY


if __name__ == "__main__":
    raise SystemExit(not main())
