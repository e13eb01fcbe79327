"""The loads that a line gives, as they come out for those who do it, with what the gym has for each."""

from fractions import Fraction
from typing import Final, NamedTuple

from setwright.library.table import Library
from setwright.loads.asked_for import Asked, Kilograms, load_asked_for
from setwright.loads.lines import Line, work_loads
from setwright.loads.loadable import Loadable, loadable
from setwright.loads.means_of import LoadedBy, means_of
from setwright.loads.put import Piece, Put, mass_words, pieces
from setwright.model.people import Athlete
from setwright.model.plan import Week
from setwright.model.room import Gym, exactly, kilograms
from setwright.reading.dose import Load

TYPED_DECIMALS: Final = 3
"""Decimals in which a load is said back as it was asked for."""
KG_DECIMALS: Final = 10
"""Decimals of a kilogram that count: a hundredth of a pound has as many, and rounding noise has more."""
ALIKE: Final = ("mass", "bar")
"""Kinds of load that are the same for everybody."""
ON_A_BAR: Final = ("bar", "sleeve")


class Carried(NamedTuple):
    """Kilograms of a line, whose they are, and what there is for them. ``everybody``: no one person's."""

    athletes: tuple[Athlete, ...]
    everybody: bool
    asked: Kilograms
    loadable: Loadable

    @property
    def words(self) -> str:
        """The load as it was asked for: "73 kg", "20-22.5 kg"."""
        return asked_words(self.asked)

    @property
    def put(self) -> Put | None:
        """The load to put on: one of the range that was asked for where there is one, else the rounded."""
        return self._in_range or self.loadable.put

    @property
    def lightest_put(self) -> Put | None:
        """The load to put on for a warm-up set or a drop: the lightest there is where less was asked for."""
        return self.put or (self.loadable.above if self.loadable.below is None else None)

    @property
    def in_range(self) -> bool:
        """Whether a load of the range that was asked for is there."""
        return self._in_range is not None

    @property
    def _in_range(self) -> Put | None:
        low, high = map(exact, self.asked.kg)
        there = filter(None, (self.loadable.put, self.loadable.below, self.loadable.above))
        return next((put for put in there if low <= put.kg <= high), None)

    def ends(self, gym: Gym) -> tuple[Put, Put] | None:
        """The lightest and the heaviest load there is in the range that was asked for; None without any."""
        low, high = (loadable(self.loadable.by, gym, exact(end)) for end in self.asked.kg)
        inside = low.above and high.below and low.above.kg <= high.below.kg
        return (low.above, high.below) if inside and low.above and high.below else None

    @property
    def stamped_alike(self) -> Piece | None:
        """The weight with the same number in the other unit, where there is one: it may be what was meant."""
        unit = self.asked.unit
        stamped = (piece for stock in self.loadable.by.stock for piece in pieces(stock))
        others = (piece for piece in stamped if piece.unit != unit)
        return next((one for one in others if kilograms(one.mass, unit) == self.loadable.asked), None)


class Wanted(NamedTuple):
    """A load of a line as it comes out for an athlete, or for everybody where it is the same for all.

    ``carried``: what there is for it; None without a number, and where no gym file says what can be put on.
    """

    load: Load
    athletes: tuple[Athlete, ...]
    asked: Asked
    carried: Carried | None = None

    @property
    def everybody(self) -> bool:
        """Whether the load is no one person's."""
        return self.load.kind in ALIKE


def asked_words(asked: Kilograms) -> str:
    """Kilograms as they were asked for, in the unit typed: "73 kg", "20-22.5 kg"."""
    low, high = (mass_words(exact(end), asked.unit, TYPED_DECIMALS) for end in asked.kg)
    return high if low == high else f"{low.removesuffix(f' {asked.unit}')}-{high}"


def exact(kg: float) -> Fraction:
    """Kilograms without the noise of their working out.

    >>> exact(0.1 + 0.2)
    Fraction(3, 10)
    """
    return exactly(round(kg, KG_DECIMALS))


def carried_by(line: Line, week: Week, table: Library) -> tuple[Carried, ...]:
    """What the gym has for every load of a line's work sets and drops that comes to kilograms."""
    wanted = (one for load in work_loads(line) for one in loads_asked(load, line, week, table))
    return tuple(one.carried for one in wanted if one.carried)


def loads_asked(load: Load, line: Line, week: Week, table: Library) -> tuple[Wanted, ...]:
    """What a load of a line comes to for each athlete who does it, or once where it is the same for all.

    A share of a max, a repetition maximum, bodyweight and last time are each athlete's own; without a squad
    they are nobody's, and only the others are left.
    """
    whose = (line.athletes,) if load.kind in ALIKE else tuple((athlete,) for athlete in line.athletes)
    wanted = (
        Wanted(load, athletes, load_asked_for(load, line.item, next(iter(athletes), None), week, table))
        for athletes in whose
    )
    return tuple(with_what_there_is(one, line, week) for one in wanted)


def with_what_there_is(wanted: Wanted, line: Line, week: Week) -> Wanted:
    """A load with what the gym has for it, where it came to kilograms and a gym file says."""
    asked = wanted.asked
    found = _loadable(asked, line, week) if isinstance(asked, Kilograms) else None
    if found is None or not isinstance(asked, Kilograms):
        return wanted
    return wanted._replace(carried=Carried(wanted.athletes, wanted.everybody, asked, found))


def _loadable(asked: Kilograms, line: Line, week: Week) -> Loadable | None:
    """What the gym has; nothing for a machine, a sled, help taken off, or two masses on one bar."""
    if week.gym is None:
        return None
    by = means_of(line.movement, week.gym)
    if asked.way == "added to the body" and asked.kg.low > 0 and week.gym.plates:
        by = LoadedBy("belt")
    on_one = asked.way == "in each hand" and by.kind in ON_A_BAR
    if by.kind in ("bodyweight", "other") or on_one:
        return None
    return loadable(by, week.gym, exact(asked.pick), week.squad.rounding if week.squad else "nearest")
