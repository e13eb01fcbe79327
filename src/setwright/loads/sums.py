"""What plates can add up to, with how few of them: a set of sums is a whole number, bit n for n grains."""

from collections.abc import Iterator
from fractions import Fraction
from functools import lru_cache
from math import ceil, floor, gcd
from typing import Final

THOUSANDTHS: Final = 1000
"""Parts of a unit to which a weight is typed at most."""
MOST_ON_A_SIDE: Final = 20
"""Most plates on one end of a bar (choice: a sleeve is 0.42 to 0.45 m, plates are 2 cm thick or more)."""

Kinds = tuple[tuple[Fraction, int], ...]
"""Masses in one unit, falling, each with how many there are."""
Counts = tuple[int, ...]


class Sums:
    """The sums of some kinds of plates, up to twenty of them together. Masses in the unit of the kinds."""

    def __init__(self, kinds: Kinds) -> None:
        whole = [int(mass * THOUSANDTHS) for mass, _ in kinds]
        self._grain = Fraction(gcd(*whole) or 1, THOUSANDTHS)
        self._kinds = [(int(mass / self._grain), there) for mass, there in kinds]
        most = min(MOST_ON_A_SIDE, sum(there for _, there in kinds))
        self._made = [[1, *[0] * most]]
        for mass, there in reversed(self._kinds):
            self._made.insert(0, _with(mass, there, self._made[0]))
        self._all = 0
        for with_so_many in self._made[0]:
            self._all |= with_so_many

    def below(self, want: Fraction) -> Fraction | None:
        """The largest sum up to ``want``; None for less than nothing."""
        kept = self._all & ((1 << floor(want / self._grain) + 1) - 1) if want >= 0 else 0
        return self._grain * (kept.bit_length() - 1) if kept else None

    def above(self, want: Fraction) -> Fraction | None:
        """The smallest sum from ``want`` up; None when all is lighter."""
        least = max(0, ceil(want / self._grain))
        left = self._all >> least
        return self._grain * (least + (left & -left).bit_length() - 1) if left else None

    def every(self) -> list[Fraction]:
        """Every sum, lightest first; nothing at all is one of them."""
        return [self._grain * at for at, bit in enumerate(reversed(f"{self._all:b}")) if bit == "1"]

    def ways(self, total: Fraction) -> Iterator[Counts]:
        """How many of each kind make ``total``: the fewest plates first, of those the largest first."""
        grains = total / self._grain
        if grains.denominator == 1 and grains >= 0:
            for plates in range(len(self._made[0])):
                yield from self._ways(0, int(grains), plates)

    def _ways(self, kind: int, grains: int, plates: int) -> Iterator[Counts]:
        """The ways with exactly so many plates of this kind and the lighter ones."""
        if not self._made[kind][plates] >> grains & 1:
            return
        if kind == len(self._kinds):
            yield ()
            return
        mass, there = self._kinds[kind]
        for taken in range(min(there, plates, grains // mass), -1, -1):
            for lighter in self._ways(kind + 1, grains - taken * mass, plates - taken):
                yield (taken, *lighter)


def _with(mass: int, there: int, made: list[int]) -> list[int]:
    """The sums by number of plates once one more kind may be taken."""
    grown = []
    for plates in range(len(made)):
        sums = 0
        for taken in range(min(there, plates) + 1):
            sums |= made[plates - taken] << taken * mass
        grown.append(sums)
    return grown


@lru_cache(maxsize=64)
def sums_of(kinds: Kinds) -> Sums:
    """The sums of these kinds, worked out once."""
    return Sums(kinds)
