"""The gym: what there is to lift, pull and stand on."""

import re
from fractions import Fraction
from functools import lru_cache
from typing import Final, Literal, TypeVar

from pydantic import Field

from setwright.places import Place
from setwright.reading.frozen import Frozen
from setwright.reading.loads import KG_PER_LB
from setwright.reading.measures import Unit

Mass = TypeVar("Mass", float, Fraction)

NEWTON_A_KG: Final = 9.80665
"""Standard gravity, N/kg (3rd General Conference on Weights and Measures, 1901): a pull told in kg."""


class Stock(Frozen):
    """Some of one thing: a mass (or a run of masses by a step) and how many or how many pairs.

    ``name``: of a bar that is no straight one ("curl bar").
    """

    low: float
    high: float
    step: float | None = None
    unit: Unit
    number: int = 1
    pairs: bool = False
    name: str | None = None

    def masses(self) -> tuple[Fraction, ...]:
        """Every mass of the run, lightest first, exactly as typed, in its own unit."""
        low, high = exactly(self.low), exactly(self.high)
        if self.step is None:
            return (low,) if low == high else (low, high)
        step = exactly(self.step)
        return tuple(low + step * at for at in range(int((high - low) / step) + 1))

    @property
    def singles(self) -> int:
        """How many of each mass there are, the two of a pair counted as two."""
        return self.number * 2 if self.pairs else self.number


@lru_cache(maxsize=1024)
def exactly(typed: float) -> Fraction:
    """The decimal number that was typed, without the rounding of a float.

    >>> exactly(1.1)
    Fraction(11, 10)
    """
    return Fraction(str(typed))


def kilograms(mass: Mass, unit: str | None) -> Mass:
    """A mass in kg, exact for a fraction: the pound is so by definition (NIST Handbook 44, appendix C).

    >>> kilograms(Fraction(45), "lb"), kilograms(100.0, "lb")
    (Fraction(408233133, 20000000), 45.359237)
    """
    if unit != "lb":
        return mass
    return mass * exactly(KG_PER_LB) if isinstance(mass, Fraction) else mass * KG_PER_LB


_PAIR: Final = re.compile(r"\b(?:twin|dual|double|crossover|pair)", re.IGNORECASE)
"""Names of cable stations with two stacks (common practice, no source)."""


class Heights(Frozen):
    """Where a pulley can be set, in metres above the floor; ``between``: anywhere between the two."""

    at_m: tuple[float, ...]
    between: bool = False


class Cable(Frozen):
    """A cable station. ``pulley``: kilograms of the stack to one at the handle (2 halves the pin).

    An empty ``stack`` and None for the others mean "not written".
    """

    name: str
    number: int = 1
    heights: Heights | None = None
    stack: tuple[Stock, ...] = ()
    pulley: float | None = None

    @property
    def is_pair(self) -> bool:
        """Whether each of them has two stacks, by its name: a twin tower, a crossover."""
        return _PAIR.search(self.name) is not None

    @property
    def stacks(self) -> int:
        """How many stacks there are, each with its handle."""
        return self.number * (2 if self.is_pair else 1)


class BandPull(Frozen):
    """What a band pulls, in newtons, when it is stretched to a length in metres."""

    newton: float
    at_m: float


class Band(Frozen):
    """An elastic band by its measured pulls, shortest length first; ``written``: as they were typed."""

    name: str
    pulls: tuple[BandPull, ...] = ()
    written: str | None = None
    number: int | None = None


class Gym(Frozen):
    """The room. An empty tuple means "none there"; None (racks, benches) means "not written".

    ``mixed_plates``: kilogram and pound plates may go on one bar. ``places``: of the stations, as typed.
    """

    place: Place
    name: str | None = None
    unit: Unit | None = None
    racks: int | None = None
    people_per_rack: int | None = None
    benches: int | None = None
    bars: tuple[Stock, ...] = ()
    plates: tuple[Stock, ...] = ()
    plates_per_rack: bool = True
    mixed_plates: bool = False
    dumbbells: tuple[Stock, ...] = ()
    kettlebells: tuple[Stock, ...] = ()
    cables: tuple[Cable, ...] = ()
    bands: tuple[Band, ...] = ()
    stations: dict[str, int] = Field(default_factory=dict)
    places: dict[str, Place] = Field(default_factory=dict)
    spotter: Literal["yes", "none"] | None = None
    note: str | None = None
    private_note: str | None = None

    @property
    def straight_bars(self) -> tuple[Stock, ...]:
        """The bars without a name of their own: what a barbell lift is done with."""
        return tuple(bar for bar in self.bars if bar.name is None)

    def bars_named(self, *words: str) -> tuple[Stock, ...]:
        """The bars in whose name one of the words stands ("trap")."""
        named = ((bar, (bar.name or "").casefold()) for bar in self.bars)
        return tuple(bar for bar, name in named if any(word in name for word in words))
