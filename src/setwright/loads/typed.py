"""The kilograms that a line gives, and what a gym has for each of them."""

from collections.abc import Iterator, Mapping
from fractions import Fraction
from typing import Any, Final, NamedTuple

from setwright.loads.loadable import Loadable, Rounding, loadable
from setwright.loads.means_of import BOTH, LoadedBy, means_of
from setwright.loads.put import Piece, mass_words, pieces
from setwright.model.people import Athlete
from setwright.model.plan import Group, Item
from setwright.model.room import Gym, exactly, kilograms
from setwright.reading.dose import Load, SetGroup
from setwright.reading.measures import Unit

TYPED_DECIMALS: Final = 3
"""Decimals in which a load is said back as it was typed."""


class Asked(NamedTuple):
    """The kilograms that a line asks for, from ``low`` to ``high``; ``athlete`` None: of everybody.

    ``unit``: the one it was typed in.
    """

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

    @property
    def stamped_alike(self) -> Piece | None:
        """The weight with the same number in the other unit, where there is one: it may be what was meant."""
        unit = self.asked.unit
        stamped = (piece for stock in self.loadable.by.stock for piece in pieces(stock))
        others = (piece for piece in stamped if piece.unit != unit)
        return next((piece for piece in others if kilograms(piece.mass, unit) == self.asked.low), None)


def carried_by(
    gym: Gym, item: Item, group: Group | None, movement: Mapping[str, Any], rounding: Rounding
) -> tuple[Carried, ...]:
    """What the gym has for every mass that a line gives; nothing for a machine, a sled or the bare body."""
    by = means_of(movement, gym)
    if by.kind in ("bodyweight", "other"):
        return ()
    asked = loads_asked(item, group, by)
    return tuple(Carried(one, loadable(by, gym, one.low, rounding)) for one in asked)


def loads_asked(item: Item, group: Group | None, by: LoadedBy) -> Iterator[Asked]:
    """The masses that stand in a line, each once: the same for everybody. Warm-up sets are left out."""
    loads = (_kilograms(load, by) for load in dict.fromkeys(_loads(item, group)))
    yield from (Asked(None, *load) for load in loads if load is not None)


def _loads(item: Item, group: Group | None) -> Iterator[Load]:
    """Every load of the work sets and of the drops; the group's where a complex has one for all."""
    if group is not None and group.load is not None:
        yield group.load
    for sets in item.dose.groups if item.dose else ():
        yield from _of_sets(sets)


def _of_sets(sets: SetGroup) -> Iterator[Load]:
    for one in (*sets.works, *((sets.last,) if sets.last else ())):
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
