"""Plates on a bar: the loads next to the one asked for, with the fewest plates, the largest first.

Nothing is rounded: masses are fractions of a kilogram, and pounds are exact.
"""

from collections.abc import Iterator
from fractions import Fraction
from typing import Final, NamedTuple

from setwright.loads.put import Around, Piece, Put, Use, around, figure, pieces
from setwright.loads.sums import Sums, sums_of
from setwright.model.room import Stock, kilograms
from setwright.reading.measures import Unit

SLEEVES: Final = 2
"""Ends of a bar that carry the same plates."""


class Rack(NamedTuple):
    """Bars and plates that can be put together. ``sleeves``: 2, or 1 where one end alone is loaded.

    ``mixed``: plates in kg and lb may go on one bar; without it a bar takes those of its own unit, and
    those of the other where there are none of its own. ``end``: where plates hang that are on no bar.
    """

    bars: tuple[Piece, ...]
    plates: tuple[Stock, ...]
    sleeves: int = SLEEVES
    mixed: bool = False
    end: str = "on the sleeve"

    def on_a_side(self, plate: Stock) -> int:
        """How many plates of one kind can go on one end."""
        return plate.singles // self.sleeves

    def units_on(self, bar: Piece) -> tuple[Unit, ...]:
        """The units of the plates that may go on a bar."""
        units = {plate.unit for plate in self.plates}
        if self.mixed or bar.unit not in units:
            return tuple(sorted(units))
        return (bar.unit,)


class Pile(NamedTuple):
    """The plates of one unit that may go on one end of a bar, heaviest kind first. Masses in kg."""

    unit: Unit
    kinds: tuple[tuple[Piece, int], ...] = ()

    def next_to(self, want: Fraction) -> tuple[Fraction, ...]:
        """The sums just below and above ``want``, or the one that is there."""
        a_unit, sums = self._sums()
        found = (sums.below(want / a_unit), sums.above(want / a_unit))
        return tuple(dict.fromkeys(a_unit * total for total in found if total is not None))

    def every(self) -> tuple[Fraction, ...]:
        """Every sum, nothing at all among them."""
        a_unit, sums = self._sums()
        return tuple(a_unit * total for total in sums.every())

    def ways(self, total: Fraction) -> Iterator[tuple[Piece, ...]]:
        """The plates that weigh ``total``: the fewest first, of those the largest."""
        a_unit, sums = self._sums()
        for counts in sums.ways(total / a_unit):
            yield tuple(
                piece for (piece, _), number in zip(self.kinds, counts, strict=True) for _ in range(number)
            )

    def _sums(self) -> tuple[Fraction, Sums]:
        """The unit in kg, and what the plates add up to in it."""
        kinds = tuple((piece.mass, there) for piece, there in self.kinds)
        return kilograms(Fraction(1), self.unit), sums_of(kinds)


def loads_around(asked: Fraction, rack: Rack) -> Around:
    """The loads on a bar next to ``asked`` (kg, with the bar; on one sleeve without it).

    Of bars that carry the same load the one listed first.
    """
    return around(asked, (put for bar in rack.bars for put in _on(bar, asked, rack)))


def every_way(kg: Fraction, rack: Rack) -> Iterator[Put]:
    """Every way to put exactly ``kg`` on a bar, bar by bar, the fewest plates of a unit first."""
    for bar in rack.bars:
        want = _a_side(kg, bar, rack)
        first, second = _piles(bar, rack)
        for total in first.every():
            for others in second.ways(want - total):
                for plates in first.ways(total):
                    yield _put(bar, (*plates, *others), rack)


def _on(bar: Piece, asked: Fraction, rack: Rack) -> Iterator[Put]:
    """The loads of one bar next to ``asked``; of two units each sum of one with the best of the other.

    Of the sums that are too heavy by themselves the lightest alone can be next to it.
    """
    want = _a_side(asked, bar, rack)
    first, second = _piles(bar, rack)
    lighter = [total for total in first.every() if total <= want] if second.kinds else []
    sides = [
        (total, other) for total in (*lighter, *first.next_to(want)) for other in second.next_to(want - total)
    ]
    below = max((side for side in sides if sum(side) <= want), key=sum, default=None)
    above = min((side for side in sides if sum(side) >= want), key=sum, default=None)
    for total, other in filter(None, dict.fromkeys((below, above))):
        yield _put(bar, (*next(first.ways(total)), *next(second.ways(other))), rack)


def _a_side(kg: Fraction, bar: Piece, rack: Rack) -> Fraction:
    """What has to be on one end for a load of ``kg``."""
    return (kg - _counted(bar, rack)) / rack.sleeves


def _counted(bar: Piece, rack: Rack) -> Fraction:
    """What of the bar counts as load: nothing where one end alone is loaded."""
    return bar.kg if rack.sleeves == SLEEVES else Fraction(0)


def _piles(bar: Piece, rack: Rack) -> tuple[Pile, Pile]:
    """The plates that may go on one end of a bar, by their unit; the second pile may be empty."""
    piles = [Pile(unit, _kinds(rack, unit)) for unit in rack.units_on(bar)]
    first, second, *_ = (*piles, Pile(bar.unit), Pile(bar.unit))
    return first, second


def _kinds(rack: Rack, unit: Unit) -> tuple[tuple[Piece, int], ...]:
    """Every kind of plate in this unit with how many go on a side, heaviest first."""
    kinds = (
        (piece, rack.on_a_side(plate))
        for plate in rack.plates
        if plate.unit == unit
        for piece in pieces(plate)
    )
    return tuple(sorted(kinds, key=lambda kind: -kind[0].mass))


def _put(bar: Piece, plates: tuple[Piece, ...], rack: Rack) -> Put:
    side = tuple(sorted(plates, key=lambda plate: -plate.kg))
    used = (Use("plates", piece, side.count(piece) * rack.sleeves) for piece in dict.fromkeys(side))
    counted = _counted(bar, rack)
    bars = (Use("bars", bar, 1),) if counted else ()
    kg = counted + rack.sleeves * sum(plate.kg for plate in side)
    return Put(kg, _words(bar, side, rack), (*bars, *used))


def _words(bar: Piece, side: tuple[Piece, ...], rack: Rack) -> str:
    """The bar and what goes on it: "20 kg bar, 20 + 5 + 1.25 a side"; units where they differ."""
    named = f"{bar.words} {bar.name or 'bar'}"
    if not side:
        return f"the empty {named}" if rack.sleeves == SLEEVES else f"nothing {rack.end}"
    units = {plate.unit for plate in side} | ({bar.unit} if rack.sleeves == SLEEVES else set())
    one_unit = len(units) == 1
    plates = " + ".join(figure(plate.mass) if one_unit else plate.words for plate in side)
    if rack.sleeves == SLEEVES:
        return f"{named}, {plates} a side"
    return f"{plates} {side[0].unit} {rack.end}" if one_unit else f"{plates} {rack.end}"
