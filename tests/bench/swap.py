"""How long ``setwright swap`` searches on the example week, and how fast it judges: on one core, in process.

The best of a few runs counts; a command adds its start-up (``startup``).
"""

import time
from collections.abc import Iterator
from functools import partial
from pathlib import Path

from setwright.checked import check_plan
from setwright.files import read_beside
from setwright.rules.crossing_work_only import BAD as LONG_SEARCH
from setwright.swapping.proposal import Proposal, propose
from tests.bench.figures import Figure, at_most, seen

EXAMPLE = Path(__file__).parents[2] / "examples" / "skerrow-bay" / "week-flawed.yaml"
RUNS = 3
LONGEST_S = 3.0
"""Seconds for the example week."""
LONGEST_A_SET_MS = 6.0
"""Milliseconds for one set of changes, covered and judged: three times what an idle core takes."""


def timed(file: Path, text: str) -> tuple[float, Proposal]:
    """Seconds of processor time for the best of ``RUNS`` proposals, and the proposal."""
    beside = partial(read_beside, file)
    checked = check_plan(str(file), text, beside)
    times = []
    for _ in range(RUNS):
        start = time.process_time()
        proposal = propose(checked, beside)
        times.append(time.process_time() - start)
    return min(times), proposal


def figures() -> Iterator[Figure]:
    """The example week, and one set of changes of the longest search."""
    example, _ = timed(EXAMPLE, EXAMPLE.read_text(encoding="utf-8"))
    whole, longest = timed(Path("week.yaml"), LONG_SEARCH)
    a_set = 1000 * whole / longest.found.tried
    yield at_most("proposal for the example week", example, LONGEST_S, "{:.2f} s")
    yield at_most("one set of changes, covered and judged", a_set, LONGEST_A_SET_MS, "{:.1f} ms")
    yield seen("the longest search", whole, "{:.1f} s")
