"""Run every benchmark, print its figures, leave with 1 if one misses its floor twice."""

import sys

from tests.bench import engine, many, mujoco_loop, sheets, startup, watching

if __name__ == "__main__":
    results = [
        bench.main() or bench.main() for bench in (engine, mujoco_loop, startup, many, watching, sheets)
    ]
    sys.exit(not all(results))
