"""Garble and check: ``python -m tests.fuzz --count 5000 --seed 1``; leaves with 1 at the first fault."""

import argparse
import gc
import sys
import time
from collections import Counter
from collections.abc import Iterable, Iterator
from functools import partial
from pathlib import Path
from tempfile import gettempdir

from tests.fuzz.garble import garbled
from tests.fuzz.seeds import NAMES, Input
from tests.fuzz.shrink import kind_of, shrunk
from tests.fuzz.verdict import fault

TOLD_EVERY = 10_000
PRINTED_EVERY = 10
"""Of so many inputs one is printed in every form (choice)."""


def run(numbers: Iterable[int], seed: int, out: Path, *, keep_going: bool = False) -> Counter[str]:
    """How often each kind of fault was met; the first of each kind is made small and written to ``out``."""
    met: Counter[str] = Counter()
    for number in numbers:
        look = partial(fault, printed=number % PRINTED_EVERY == 0)
        one = garbled(seed, number)
        said = look(one)
        if said is None:
            continue
        kind = kind_of(said)
        met[kind] += 1
        if met[kind] == 1:
            plan = _written(shrunk(one, look), out / f"{seed}-{number}")
            print(f"--seed {seed} --only {number}: {said}\n  setwright check {plan}", flush=True)
        if not keep_going:
            break
    return met


def _written(one: Input, folder: Path) -> Path:
    """The plan of an input, written with its files into a folder of its own."""
    folder.mkdir(parents=True, exist_ok=True)
    for name, raw in zip(NAMES, one, strict=True):
        (folder / name).write_bytes(raw)
    return folder / NAMES[0]


def _told(numbers: range) -> Iterator[int]:
    """The numbers, every ``TOLD_EVERY`` of them said when those before it are done."""
    for number in numbers:
        if number and number % TOLD_EVERY == 0:
            print(f"fuzz: {number:,} of {len(numbers):,}", flush=True)
        yield number


def main() -> int:
    """Garble, check, print what was met and how long it took."""
    ask = argparse.ArgumentParser(prog="python -m tests.fuzz", description=__doc__)
    ask.add_argument("--count", type=int, default=5_000, help="inputs to try")
    ask.add_argument("--seed", type=int, default=1)
    ask.add_argument("--only", type=int, help="try this input of the seed alone")
    ask.add_argument("--keep-going", action="store_true", help="go on behind a fault")
    ask.add_argument("--out", type=Path, default=Path(gettempdir()) / "setwright-fuzz")
    asked = ask.parse_args()
    numbers = range(asked.count) if asked.only is None else range(asked.only, asked.only + 1)
    start = time.perf_counter()
    gc.freeze()
    met = run(_told(numbers), asked.seed, asked.out, keep_going=asked.keep_going)
    for kind, times in met.most_common():
        print(f"fuzz: {times} x {kind}")
    print(f"fuzz: {len(numbers):,} inputs of seed {asked.seed} in {time.perf_counter() - start:.0f} s")
    return int(bool(met))


if __name__ == "__main__":
    sys.exit(main())
