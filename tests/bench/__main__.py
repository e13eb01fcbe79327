"""Run every benchmark, print its figures, leave with 1 if one misses its floor twice."""

import sys

from tests.bench import engine, floor, many, mujoco_loop, sheets, startup, swap, watching

BENCHES = (engine, mujoco_loop, startup, many, watching, sheets, swap, floor)

if __name__ == "__main__":
    results = [bench.main() or bench.main() for bench in BENCHES]
    sys.exit(not all(results))
