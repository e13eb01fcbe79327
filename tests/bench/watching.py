"""How soon after a save ``check --watch`` has printed its answer, on a 200-line week."""

import os
import select
import statistics
import subprocess
import sys
import time
from collections.abc import Iterator
from pathlib import Path
from tempfile import TemporaryDirectory

from tests.bench.figures import Figure, at_most
from tests.bench.startup import long_week

SAVES = 15
LONGEST_S = 0.2
"""Median time from a save to the last line of the answer."""
COMMAND = """\
import signal
signal.signal(signal.SIGINT, signal.default_int_handler)
from setwright.cli import main
main()
"""
# A shell that starts this run in the background has Ctrl-C ignored; the child listens all the same.


def answered(out: int, last: str) -> float:
    """When the next report had been read to its ``last`` line."""
    text = ""
    while not text.endswith(last):
        select.select([out], [], [])
        text += os.read(out, 65536).decode()
    return time.perf_counter()


def figures() -> Iterator[Figure]:
    """Save and wait for the answer, again and again: median and quartiles."""
    with TemporaryDirectory() as folder:
        plan = Path(folder) / "week.yaml"
        plan.write_text(long_week(), encoding="utf-8")
        command = [sys.executable, "-c", COMMAND, "check", str(plan)]
        once = subprocess.run(command, capture_output=True, text=True, check=False)
        last = once.stdout[once.stdout.rindex("\n", 0, -1) :]
        with subprocess.Popen([*command, "--watch"], stdout=subprocess.PIPE) as child:
            assert child.stdout is not None
            out = child.stdout.fileno()
            answered(out, last)
            times = []
            for number in range(SAVES):
                time.sleep(0.1 + number / 100)
                saved = time.perf_counter()
                plan.write_text(f"{long_week()}# save {number}\n", encoding="utf-8")
                times.append(answered(out, last) - saved)
            child.terminate()
    low, middle, high = (1000 * one for one in statistics.quantiles(times, n=4))
    yield at_most("a save is answered, median", middle, 1000 * LONGEST_S, "{:.0f} ms")
    yield Figure("a save is answered, quartiles", f"{low:.0f} to {high:.0f} ms")
