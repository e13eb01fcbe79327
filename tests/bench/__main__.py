"""Run every benchmark or those named, print the figures, leave with 1 if one misses what is asked twice.

``python -m tests.bench [NAME]... [--table FILE]``: with ``--table`` the figures are written as a page, too.
"""

import argparse
import sys
from pathlib import Path
from types import ModuleType

from tests.bench import engine, floor, growth, many, mujoco_loop, sheets, startup, swap, watching
from tests.bench.figures import Figure, shown
from tests.bench.table import Ran, page

BENCHES = {
    "startup": startup, "many": many, "growth": growth, "watching": watching, "swap": swap, "floor": floor,
    "sheets": sheets, "engine": engine, "mujoco_loop": mujoco_loop,
}  # fmt: skip


def measured(bench: ModuleType) -> list[Figure]:
    """The figures of a benchmark, measured once more when one misses."""
    figures = shown(bench.figures())
    if all(figure.holds for figure in figures):
        return figures
    print("measured again")
    return shown(bench.figures())


def main() -> bool:
    """Run, print, write; whether every figure holds."""
    arguments = argparse.ArgumentParser(prog="python -m tests.bench")
    arguments.add_argument("names", nargs="*", metavar="NAME", help=", ".join(BENCHES))
    arguments.add_argument("--table", type=Path, metavar="FILE")
    asked = arguments.parse_args()
    if unknown := set(asked.names) - BENCHES.keys():
        arguments.error(f"there is no benchmark {', '.join(sorted(unknown))}")
    ran = [Ran(name, BENCHES[name], measured(BENCHES[name])) for name in asked.names or BENCHES]
    if asked.table is not None:
        asked.table.write_text(page(ran), encoding="utf-8")
    return all(figure.holds for one in ran for figure in one.figures)


if __name__ == "__main__":
    sys.exit(not main())
