"""Plates on a bar: the loads next to the one asked for, with the fewest plates, the largest first.

Sums are made of whole thousandths of a unit, so that nothing is rounded; pounds meet kilograms as fractions.
"""

from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Iterator, Mapping, Sequence
from fractions import Fraction
from typing import Final, NamedTuple

from setwright.loads.put import Around, Piece, Put, Use, around, figure, pieces
from setwright.model.room import Stock, kilograms
from setwright.reading.measures import Unit

SLEEVES: Final = 2
"""Ends of a bar that carry the same plates."""
THOUSANDTHS: Final = 1000
"""Parts of a unit to which a weight is typed at most."""

Sums = Mapping[int, tuple[int, ...]]
"""Each sum in thousandths that some plates make, with how many of each of them, heaviest kind first."""


class Side(NamedTuple):
    """The plates on one end of a bar, heaviest first, and what they weigh in kg."""

    kg: Fraction
    plates: tuple[Piece, ...] = ()


class Rack(NamedTuple):
    """Bars and plates that can be put together. ``sleeves``: 2, or 1 where one end alone is loaded.

    ``mixed``: plates in kg and lb may go on one bar; without it a bar takes those of its own unit, and
    those of the other where there are none of its own.
    """

    bars: tuple[Piece, ...]
    plates: tuple[Stock, ...]
    sleeves: int = SLEEVES
    mixed: bool = False

    def on_a_side(self, plate: Stock) -> int:
        """How many plates of one kind can go on one end."""
        return plate.singles // self.sleeves

    def units_on(self, bar: Piece) -> tuple[Unit, ...]:
        """The units of the plates that may go on a bar."""
        units = {plate.unit for plate in self.plates}
        if self.mixed or bar.unit not in units:
            return tuple(sorted(units))
        return (bar.unit,)


def loads_around(asked: Fraction, rack: Rack) -> Around:
    """The loads on a bar next to ``asked`` (kg, with the bar; on one sleeve without it).

    Of bars that carry the same load the one listed first.
    """
    return around(asked, (put for bar in rack.bars for put in _on(bar, asked, rack)))


def _on(bar: Piece, asked: Fraction, rack: Rack) -> Iterator[Put]:
    """The loads of one bar next to ``asked``, those with the fewest plates first."""
    want = (asked - _counted(bar, rack)) / rack.sleeves
    yield from (_put(bar, side, rack) for side in sorted(_sides_around(want, bar, rack), key=_rank))


def every_way(kg: Fraction, rack: Rack) -> Iterator[Put]:
    """Every way to put exactly ``kg`` on a bar, in the order of the bars, the heaviest plates first."""
    for bar in rack.bars:
        kinds = _kinds(rack, rack.units_on(bar))
        for plates in _exactly((kg - _counted(bar, rack)) / rack.sleeves, kinds):
            yield _put(bar, Side(sum((plate.kg for plate in plates), Fraction(0)), plates), rack)


def sums_of(kinds: Sequence[tuple[int, int]], most: int) -> Sums:
    """What plates can add up to, up to ``most``: kinds (mass, how many), masses in thousandths, falling.

    Of several ways to one sum the one with the fewest plates, and of those the one with the largest.
    """
    best: dict[int, tuple[int, ...]] = {0: ()}
    for mass, there in kinds:
        grown: dict[int, tuple[int, ...]] = {}
        for under, counts in best.items():
            for number in range(min(there, (most - under) // mass) + 1):
                total, way = under + number * mass, (*counts, number)
                if total not in grown or _fewer(way) < _fewer(grown[total]):
                    grown[total] = way
        best = grown
    return best


def _fewer(counts: tuple[int, ...]) -> tuple[int, tuple[int, ...]]:
    return sum(counts), tuple(-number for number in counts)


def _rank(side: Side) -> tuple[int, tuple[Fraction, ...]]:
    """Fewest plates first, then the largest."""
    return len(side.plates), tuple(-plate.kg for plate in side.plates)


def _counted(bar: Piece, rack: Rack) -> Fraction:
    """What of the bar counts as load: nothing where one end alone is loaded."""
    return bar.kg if rack.sleeves == SLEEVES else Fraction(0)


def _kinds(rack: Rack, units: Iterable[Unit]) -> tuple[tuple[Piece, int], ...]:
    """Every kind of plate in these units with how many go on a side, heaviest first."""
    kinds = (
        (piece, rack.on_a_side(plate))
        for plate in rack.plates
        if plate.unit in units
        for piece in pieces(plate)
    )
    return tuple(sorted(kinds, key=lambda kind: -kind[0].kg))


def _sides_around(want: Fraction, bar: Piece, rack: Rack) -> Iterator[Side]:
    """The sides next to ``want`` kg: of one unit, or of the best sum of both."""
    first, *others = rack.units_on(bar) or (bar.unit,)
    most = want + max((kind.kg for kind, _ in _kinds(rack, (first, *others))), default=Fraction(0))
    light = _by_kg(rack, others[0], most) if others else [Side(Fraction(0))]
    at = [side.kg for side in light]
    for side in _by_kg(rack, first, most):
        below, above = bisect_right(at, want - side.kg) - 1, bisect_left(at, want - side.kg)
        for index in {below, above} & set(range(len(light))):
            other = light[index]
            plates = sorted((*side.plates, *other.plates), key=lambda plate: -plate.kg)
            yield Side(side.kg + other.kg, tuple(plates))


def _by_kg(rack: Rack, unit: Unit, most: Fraction) -> list[Side]:
    """The sides that plates of one unit make, lightest first, up to ``most`` kg; the empty one always."""
    kinds = _kinds(rack, (unit,))
    a_unit = kilograms(Fraction(1), unit)
    whole = [(int(piece.mass * THOUSANDTHS), there) for piece, there in kinds]
    sums = sums_of(whole, max(0, int(most / a_unit * THOUSANDTHS)))
    return [
        Side(a_unit * total / THOUSANDTHS, tuple(_each(zip(kinds, counts, strict=True))))
        for total, counts in sorted(sums.items())
    ]


def _each(counted: Iterable[tuple[tuple[Piece, int], int]]) -> Iterator[Piece]:
    for (piece, _), number in counted:
        yield from (piece for _ in range(number))


def _exactly(want: Fraction, kinds: Sequence[tuple[Piece, int]]) -> Iterator[tuple[Piece, ...]]:
    """Every choice of plates that weighs ``want`` kg."""
    if want == 0:
        yield ()
    elif 0 < want <= sum(piece.kg * there for piece, there in kinds):
        (piece, there), *lighter = kinds
        for number in range(min(there, int(want / piece.kg)), -1, -1):
            for rest in _exactly(want - number * piece.kg, lighter):
                yield (*(piece for _ in range(number)), *rest)


def _put(bar: Piece, side: Side, rack: Rack) -> Put:
    plates = tuple(
        Use("plates", piece, side.plates.count(piece) * rack.sleeves) for piece in dict.fromkeys(side.plates)
    )
    counted = _counted(bar, rack)
    bars = (Use("bars", bar, 1),) if counted else ()
    return Put(counted + rack.sleeves * side.kg, _words(bar, side, rack), (*bars, *plates))


def _words(bar: Piece, side: Side, rack: Rack) -> str:
    """The bar and what goes on it: "20 kg bar, 20 + 5 + 1.25 a side"; units where they differ."""
    one_unit = {bar.unit, *(plate.unit for plate in side.plates)} == {bar.unit}
    named = f"{bar.words} {bar.name or 'bar'}"
    if not side.plates:
        return f"the empty {named}"
    plates = " + ".join(figure(plate.mass) if one_unit else plate.words for plate in side.plates)
    if rack.sleeves == SLEEVES:
        return f"{named}, {plates} a side"
    return f"{plates} {bar.unit} on the sleeve" if one_unit else f"{plates} on the sleeve"
