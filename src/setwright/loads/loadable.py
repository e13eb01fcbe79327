"""The load that can really be put on, for the one that was asked for; or why there is none."""

from fractions import Fraction
from typing import Final, Literal, NamedTuple

from setwright.loads.bands import SPREAD_WORDS, bands_around
from setwright.loads.dumbbells import lonely, weights_around
from setwright.loads.means_of import LoadedBy
from setwright.loads.plates import SLEEVES, Rack, loads_around
from setwright.loads.put import Around, Piece, Put, mass_words, pieces
from setwright.loads.stack import pins_around
from setwright.model.room import Gym
from setwright.reading.measures import Unit

Rounding = Literal["nearest", "down", "up"]
Fault = Literal["not there", "below the bar", "too light", "too heavy"]

PIVOT: Final = Piece(Fraction(0), "kg")
"""The end of a bar in a floor pivot, or a belt: plates alone are counted on it."""
ON_THE_BODY: Final = "on the body"


class Loadable(NamedTuple):
    """What becomes of a load asked for, in kg. ``below`` and ``above``: the loads next to it that exist.

    ``note``: what else is to be known: one dumbbell without its other, how far a band can be trusted.
    """

    asked: Fraction
    by: LoadedBy
    below: Put | None
    above: Put | None
    rounding: Rounding
    note: str = ""

    @property
    def fault(self) -> Fault | None:
        """Why it can't be loaded: lighter or heavier than everything there, or nothing of the kind."""
        if self.below and self.above:
            return None
        if self.below:
            return "too heavy"
        if self.above is None:
            return "not there"
        return "below the bar" if self.by.kind == "bar" else "too light"

    @property
    def put(self) -> Put | None:
        """The load to put on, by the rounding; None where there is a fault."""
        if self.below is None or self.above is None:
            return None
        nearest = self.below if self.asked - self.below.kg <= self.above.kg - self.asked else self.above
        return {"nearest": nearest, "down": self.below, "up": self.above}[self.rounding]

    @property
    def tie(self) -> bool:
        """Whether the loads below and above are equally far: nearest then goes down."""
        return bool(
            self.below
            and self.above
            and self.below.kg < self.above.kg
            and self.asked - self.below.kg == self.above.kg - self.asked
        )

    def off_percent(self, put: Put) -> float:
        """How far a load is from the one asked for, in percent of it; negative is less."""
        return float((put.kg - self.asked) / self.asked * 100) if self.asked else 0.0

    def far(self, put: Put, unit: Unit) -> str:
        """How far a load is from the one asked for: "0.5 kg or 0.7 % less"; empty where it is that load."""
        off = put.kg - self.asked
        how_far = f"{mass_words(abs(off), unit)} or {abs(self.off_percent(put)):.1f} %"
        return f"{how_far} {'more' if off > 0 else 'less'}" if off else ""

    def words(self, put: Put, unit: Unit) -> str:
        """A load in words: "72.5 kg: 20 kg bar, 25 + 1.25 a side (0.5 kg or 0.7 % less)"."""
        total, far = mass_words(put.kg, unit), self.far(put, unit)
        told = put.words if put.words.startswith(f"{total} ") else f"{total}: {put.words}"
        return f"{told} ({far})" if far else told


def loadable(by: LoadedBy, gym: Gym, asked: Fraction, rounding: Rounding = "nearest") -> Loadable:
    """What this gym can load for ``asked`` kg on what a movement is loaded by (``means_of``).

    A weight in each hand and the pin of each of two stacks count once. Raises: ValueError for a movement
    without a load of its own (bodyweight, machine, sled).
    """
    below, above = _around(by, gym, asked)
    return Loadable(asked, by, below, above, rounding, _note(by, asked))


def _around(by: LoadedBy, gym: Gym, asked: Fraction) -> Around:
    match by.kind:
        case "bar":
            bars = tuple(piece for bar in by.stock if bar.singles for piece in pieces(bar))
            return loads_around(asked, Rack(bars, gym.plates, SLEEVES, gym.mixed_plates))
        case "sleeve":
            return loads_around(asked, Rack((PIVOT,), gym.plates, 1, gym.mixed_plates))
        case "belt":
            return loads_around(asked, Rack((PIVOT,), gym.plates, 1, gym.mixed_plates, ON_THE_BODY))
        case "weight":
            return weights_around(asked, by.stock, by.hands, gym)
        case "stack":
            return pins_around(asked, by.hands, gym)
        case "band":
            return bands_around(asked, by.hands, gym)
    raise ValueError(f"no gym file says what a movement loaded by {by.kind} can carry")


def _note(by: LoadedBy, asked: Fraction) -> str:
    if by.kind == "band":
        return SPREAD_WORDS
    alone = lonely(asked, by.stock, by.hands) if by.kind == "weight" else None
    return f"there is one {alone.words} only, and none for the other hand" if alone else ""
