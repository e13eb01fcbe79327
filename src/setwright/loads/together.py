"""Several lifters at once: whether their loads can be put on at the same time, and what is short."""

from collections import Counter
from collections.abc import Iterator, Sequence
from fractions import Fraction
from itertools import islice
from typing import Final, NamedTuple

from setwright.loads.plates import SLEEVES, Rack, every_way
from setwright.loads.put import Piece, Put, Use, pieces
from setwright.model.room import Gym
from setwright.reading.words import plural

MOST_WAYS: Final = 100
"""Ways to one load that are tried, the fewest plates first (choice)."""

Thing = tuple[str, Piece]
State = tuple[int, frozenset[tuple[Thing, int]]]


class Short(NamedTuple):
    """A piece that is wanted more often than it is there; ``what``: bars, plates, dumbbells, kettlebells."""

    what: str
    piece: Piece
    wanted: int
    there: int

    @property
    def words(self) -> str:
        """In words, plates by the pair: "2 pairs of 20 kg plates wanted, 1 there"."""
        if self.what != "plates":
            return f"{self.wanted} of {self.piece.words} {self.what} wanted, {self.there} there"
        pairs, there = plural(self.wanted // SLEEVES, "pair"), self.there // SLEEVES
        return f"{pairs} of {self.piece.words} plates wanted, {there} there"


class Together(NamedTuple):
    """How the loads are put on at the same time, in the order of the lifters; or what is ``short``."""

    puts: tuple[Put, ...] = ()
    short: tuple[Short, ...] = ()

    @property
    def fits(self) -> bool:
        """Whether everybody has a load."""
        return not self.short


def together(puts: Sequence[Put], gym: Gym) -> Together:
    """Whether so many loads, one a lifter, are there at once.

    A bar may be loaded another way to the same load, of which the first hundred are tried. Plates told per
    rack are each rack's own and never short. ``short`` counts by the loads as they were given.
    """
    there = _there(gym)
    ways = [tuple(islice(_ways(put, gym), MOST_WAYS)) for put in puts]
    fitting = _fitting(ways, there, gym, set())
    if fitting is not None:
        return Together(tuple(fitting))
    wanted: Counter[Thing] = Counter()
    for put in puts:
        wanted.update(_shared(put, gym))
    return Together(
        short=tuple(
            Short(*thing, number, there[thing]) for thing, number in wanted.items() if number > there[thing]
        )
    )


def _there(gym: Gym) -> Counter[Thing]:
    """How many of each piece the gym has."""
    there: Counter[Thing] = Counter()
    for what in ("bars", "plates", "dumbbells", "kettlebells"):
        for stock in getattr(gym, what):
            there.update({(what, piece): stock.singles for piece in pieces(stock)})
    return there


def _shared(put: Put, gym: Gym) -> dict[Thing, int]:
    """What a load takes of what everybody shares."""
    return {(use.what, use.piece): use.number for use in put.uses if not _of_the_rack(use, gym)}


def _shared_kg(put: Put, gym: Gym) -> Fraction:
    """How much of what everybody shares a load takes, the same whichever way it is put on."""
    return sum((piece.kg * number for (_, piece), number in _shared(put, gym).items()), Fraction(0))


def _of_the_rack(use: Use, gym: Gym) -> bool:
    return use.what == "plates" and gym.plates_per_rack


def _ways(put: Put, gym: Gym) -> Iterator[Put]:
    """The load as it was given, then every other way to the same one on the same kind of bar."""
    yield put
    bar = next((use.piece for use in put.uses if use.what == "bars"), None)
    if bar is not None and bar.kg:
        alike = (stock for stock in gym.bars if stock.name == bar.name and stock.singles)
        bars = tuple(piece for stock in alike for piece in pieces(stock))
        rack = Rack(bars, gym.plates, SLEEVES, gym.mixed_plates)
        yield from (way for way in every_way(put.kg, rack) if way != put)


def _fitting(
    ways: list[tuple[Put, ...]], left: Counter[Thing], gym: Gym, dead: set[State]
) -> list[Put] | None:
    """One way for each lifter out of what is ``left``; None when there is none. ``dead``: tried in vain."""
    if not ways:
        return []
    if sum(_shared_kg(every[0], gym) for every in ways) > sum(piece.kg * n for (_, piece), n in left.items()):
        return None
    state = (len(ways), frozenset(left.items()))
    if state in dead:
        return None
    for put in ways[0]:
        takes = _shared(put, gym)
        if all(left[thing] >= number for thing, number in takes.items()):
            rest = _fitting(ways[1:], left - Counter(takes), gym, dead)
            if rest is not None:
                return [put, *rest]
    dead.add(state)
    return None
