"""What a plan costs when many are checked in one process: as much for the thousandth as for the tenth.

Processor time and largest memory of whole commands in processes of their own; what a command with one plan
takes is start-up and is taken off.
"""

import os
import statistics
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import NamedTuple

from tests.bench.figures import Figure, at_most, seen
from tests.bench.startup import SESSION

FEW, MANY = 10, 1_000
RUNS = 6
"""Runs with few plans before the run with many, and as many after it: their time is short and varies."""
GOAL = 1.2
"""Times the time a plan and the memory with few plans."""
GATE = 1.35
"""Above this the benchmark fails: the goal, and the spread of one run on a busy machine (0.15)."""
COMMAND = "from setwright.cli import main; main()"


class Cost(NamedTuple):
    """Of one command: processor time in seconds, largest memory in MB."""

    seconds: float
    memory: float


def cost(plans: list[Path]) -> Cost:
    """Of one command that checks the plans."""
    child = subprocess.Popen(
        [sys.executable, "-c", COMMAND, "check", *map(str, plans)], stdout=subprocess.DEVNULL
    )
    _, _, used = os.wait4(child.pid, 0)
    child.returncode = 0
    return Cost(used.ru_utime + used.ru_stime, used.ru_maxrss / 1024)


def figures() -> Iterator[Figure]:
    """Time a plan and largest memory, with few plans and with many."""
    with TemporaryDirectory() as folder:
        plans = [Path(folder) / f"week-{number}.yaml" for number in range(MANY)]
        for number, plan in enumerate(plans):
            session = SESSION.format(day="Monday", number=number)
            plan.write_text(
                f"plan: Week {number}\nunit: kg\nsides: each\nsessions:\n{session}", encoding="utf-8"
            )
        rounds = [(cost(plans[:1]), cost(plans[:FEW])) for _ in range(RUNS)]
        many = cost(plans)
        rounds += [(cost(plans[:1]), cost(plans[:FEW])) for _ in range(RUNS)]
    start = statistics.median(one.seconds for one, _ in rounds)
    few = statistics.median((ten.seconds - start) / (FEW - 1) for _, ten in rounds)
    each = (many.seconds - start) / (MANY - 1)
    before = statistics.median(ten.memory for _, ten in rounds)
    yield seen("start-up with the first plan", 1000 * start, "{:.0f} ms")
    yield seen(f"each more of {FEW} plans", 1000 * few, "{:.1f} ms")
    yield seen(f"each more of {MANY:,} plans", 1000 * each, "{:.1f} ms")
    yield at_most("time of each", each / few, GATE, "{:.2f} times", goal=GOAL)
    yield seen(f"memory with {FEW} plans", before, "{:.0f} MB")
    yield at_most(f"memory with {MANY:,} plans", many.memory / before, GATE, "{:.2f} times", goal=GOAL)
