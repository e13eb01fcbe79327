"""Run every benchmark, print its figures, leave with 1 if one misses its floor."""

import sys

from tests.bench import engine, mujoco_loop, startup

if __name__ == "__main__":
    results = [engine.main(), mujoco_loop.main(), startup.main()]
    sys.exit(not all(results))
