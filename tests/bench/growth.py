"""How the cost of a check grows with weeks, athletes, own movements and movements of the library.

Processor time of checks in one process, sizes interleaved, best of five rounds. What counts is what one more
costs on the way to the largest size against the way to about half of it: 1 is a straight line, 2 grows with
the square. Growth with plans is ``many``.
"""

import gc
import json
import time
from collections.abc import Callable, Iterator
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any, Final, NamedTuple
from unittest.mock import patch

from setwright.checked import check_plan
from setwright.findings import Level
from setwright.library import table
from tests.bench.figures import Figure, at_most, seen
from tests.bench.startup import SESSION

ROUNDS: Final = 5
MOST: Final = 1.5
"""Times what one more costs up to about half the size: 1 is a straight line, 2 grows with the square."""
HEAD: Final = "plan: It grows\nstarts: 2027-03-01\nunit: kg\ndose order: sets x reps\nsides: each\n"
WEEK: Final = "sessions:\n" + "".join(
    SESSION.format(day=day, number=number) for number, day in enumerate(("Monday", "Wednesday", "Friday"), 1)
)
MAXES: Final = """\
    - name: Athlete {number}
      maxes:
        flat barbell bench press: {bench} kg tested 2027-02-01
        goblet squat: {squat} kg tested 2027-02-01
"""
OWN: Final = (
    "  our bench number {number}:\n    like: flat barbell bench press\n    grip: {width} shoulder widths\n"
)


class Growth(NamedTuple):
    """What grows: its sizes, smallest first, and what is timed at a size; files may be put in a folder."""

    what: str
    sizes: tuple[int, int, int, int]
    made: Callable[[int, Path], Callable[[], object]]


def check(text: str) -> Callable[[], object]:
    """The check of a plan, which must be free of errors."""
    found = check_plan("week.yaml", text, lambda _name: None).findings
    assert all(one.level < Level.error for one in found), found
    return lambda: check_plan("week.yaml", text, lambda _name: None)


def weeks(number: int, _folder: Path) -> Callable[[], object]:
    """A block of so many weeks of three sessions."""
    return check(f"{HEAD}weeks: {number}\n{WEEK}")


def athletes(number: int, _folder: Path) -> Callable[[], object]:
    """A week for so many athletes with maxes, who bench by percent."""
    people = "".join(MAXES.format(number=n, bench=60 + n % 60, squat=30 + n % 20) for n in range(number))
    work = WEEK.replace("3 x 6-8 at 2 RIR", "3 x 6 at 75%")
    return check(f"{HEAD}squad:\n  unit: kg\n  athletes:\n{people}{work}")


def own_movements(number: int, _folder: Path) -> Callable[[], object]:
    """A week whose plan brings so many movements of its own, each with an arm path to work out."""
    own = "".join(OWN.format(number=n, width=1.4 + n % 80 / 100) for n in range(number))
    return check(f"{HEAD}movements:\n{own}{WEEK}")


def library(times: int, folder: Path) -> Callable[[], object]:
    """Reading a library of so many times the movements, and checking a week with it."""
    shipped = json.loads(table.LIBRARY_FILE.read_text(encoding="utf-8"))
    file = folder / f"library-{times}.json"
    file.write_text(json.dumps(_multiplied(shipped, times)), encoding="utf-8")

    def run() -> None:
        table.library.cache_clear()
        with patch.object(table, "LIBRARY_FILE", file):
            check_plan("week.yaml", HEAD + WEEK, lambda _name: None)
        table.library.cache_clear()

    return run


def _multiplied(shipped: dict[str, Any], times: int) -> dict[str, Any]:
    """The library with copies of every movement under keys and names of their own."""
    copies = {
        f"{key}-copy-{n}": {**movement, "key": f"{key}-copy-{n}", "name": f"{movement['name']} copy {n}"}
        for n in range(1, times)
        for key, movement in shipped["movements"].items()
    }
    names = {
        f"{name}copy{n}": f"{key}-copy-{n}" for n in range(1, times) for name, key in shipped["names"].items()
    }
    movements = {**shipped["movements"], **copies}
    return {**shipped, "movements": movements, "names": {**shipped["names"], **names}}


GROWTHS: Final = (
    Growth("weeks of a block", (1, 4, 13, 26), weeks),
    Growth("athletes with maxes", (1, 15, 60, 120), athletes),
    Growth("own movements", (1, 10, 40, 80), own_movements),
    Growth("times the shipped library", (1, 2, 8, 16), library),
)


def figures() -> Iterator[Figure]:
    """Milliseconds at each size, and what one more costs at the largest size against the one before."""
    with TemporaryDirectory() as folder:
        for growth in GROWTHS:
            yield from _grown(growth, Path(folder))


def _grown(growth: Growth, folder: Path) -> Iterator[Figure]:
    runs = [growth.made(size, folder) for size in growth.sizes]
    rounds = [[milliseconds(run) for run in runs] for _ in range(ROUNDS)]
    took = [min(times) for times in zip(*rounds, strict=True)]
    for size, cost in zip(growth.sizes, took, strict=True):
        yield seen(f"{growth.what}: {size}", cost, "{:.0f} ms")
    half, whole = (_of_one_more(growth.sizes, took, at) for at in (-2, -1))
    yield seen(f"{growth.what}: one more", whole, "{:.2f} ms")
    yield at_most(f"{growth.what}: one more, largest over half of it", whole / half, MOST, "{:.2f} times")


def _of_one_more(sizes: tuple[int, ...], took: list[float], at: int) -> float:
    """What one more costs on the way from the smallest size to another."""
    return (took[at] - took[0]) / (sizes[at] - sizes[0])


def milliseconds(run: Callable[[], object]) -> float:
    """Processor time without collecting garbage, as in a command."""
    gc.collect()
    gc.disable()
    start = time.process_time()
    run()
    took = 1000 * (time.process_time() - start)
    gc.enable()
    return took
