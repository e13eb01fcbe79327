"""The loads that a week asks for, and what this gym can put on for each of them."""

from collections.abc import Iterable, Iterator
from fractions import Fraction
from typing import Final, NamedTuple

from setwright.coverage import Work
from setwright.loads.loadable import Loadable, loadable
from setwright.loads.means_of import BOTH, LoadedBy, means_of
from setwright.loads.put import mass_words
from setwright.model.people import Athlete
from setwright.model.room import exactly, kilograms
from setwright.reading.dose import Load, SetGroup
from setwright.reading.measures import Unit
from setwright.rules.rule import Case

TYPED_DECIMALS: Final = 3
"""Decimals in which a load is said back as it was typed."""


class Asked(NamedTuple):
    """The kilograms that a line asks for, from ``low`` to ``high``; ``athlete`` None: of everybody.

    ``unit``: the one it was typed in.
    """

    work: Work
    athlete: Athlete | None
    low: Fraction
    high: Fraction
    unit: Unit

    @property
    def words(self) -> str:
        """The load as it was asked for: "73 kg", "20-22.5 kg"."""
        low, high = (mass_words(end, self.unit, TYPED_DECIMALS) for end in (self.low, self.high))
        return high if low == high else f"{low.removesuffix(f' {self.unit}')}-{high}"


class Carried(NamedTuple):
    """A load asked for, and what there is for it."""

    asked: Asked
    loadable: Loadable

    @property
    def in_range(self) -> bool:
        """Whether a load of the range that was asked for is there."""
        above = self.loadable.above
        return above is not None and above.kg <= self.asked.high


def loads_asked(work: Work, by: LoadedBy) -> Iterator[Asked]:
    """The masses that stand in a line, each once: the same for everybody. Warm-up sets are left out."""
    loads = (_kilograms(load, by) for load in dict.fromkeys(_loads(work)))
    yield from (Asked(work, None, *load) for load in loads if load is not None)


def carried(case: Case) -> Iterator[tuple[Work, tuple[Carried, ...]]]:
    """Every line that asks for kilograms, with what this gym has for them; nothing without a gym file."""
    week = case.coverage.week
    if week.gym is None:
        return
    rounding = week.squad.rounding if week.squad else "nearest"
    for work in case.coverage.works:
        by = means_of(work.movement, week.gym)
        if by.kind not in ("bodyweight", "other"):
            asked = loads_asked(work, by)
            yield work, tuple(Carried(one, loadable(by, week.gym, one.low, rounding)) for one in asked)


def listed(loads: Iterable[Carried]) -> str:
    """The loads as they were asked for, side by side."""
    return ", ".join(one.asked.words for one in loads)


def _loads(work: Work) -> Iterator[Load]:
    """Every load of the work sets and of the drops; the group's where a complex has one for all."""
    if work.group is not None and work.group.load is not None:
        yield work.group.load
    for group in work.item.dose.groups if work.item.dose else ():
        yield from _of_group(group)


def _of_group(group: SetGroup) -> Iterator[Load]:
    for one in (*group.works, *((group.last,) if group.last else ())):
        yield from (load for load in (one.load, *(drop.to for drop in one.drops)) if load is not None)


def _kilograms(load: Load, by: LoadedBy) -> tuple[Fraction, Fraction, Unit] | None:
    """Low and high in kg with the unit typed, None for a load that says no mass of what carries it."""
    if load.unit not in ("kg", "lb"):
        return None
    unit: Unit = "kg" if load.unit == "kg" else "lb"
    if load.kind == "bar" and load.plus is not None and by.kind == "bar" and by.stock:
        ends = (load.plus, load.plus if load.plus_high is None else load.plus_high)
        bar = by.stock[0]
        empty = kilograms(bar.masses()[0], bar.unit)
        low, high = (empty + 2 * kilograms(exactly(end), unit) for end in ends)
        return low, high, unit
    pair_on_a_bar = load.hands == BOTH and by.kind in ("bar", "sleeve")
    if load.kind != "mass" or load.low is None or pair_on_a_bar:
        return None
    low, high = (kilograms(exactly(end), unit) for end in (load.low, load.high or load.low))
    return low, high, unit
