"""A load as it is put on: how heavy, in which words, and which pieces of iron it takes. Masses are exact."""

from collections.abc import Iterable
from fractions import Fraction
from typing import NamedTuple

from setwright.model.room import Stock, kilograms
from setwright.reading.measures import Unit


class Piece(NamedTuple):
    """One bar, plate or dumbbell as stamped."""

    mass: Fraction
    unit: Unit
    name: str | None = None

    @property
    def kg(self) -> Fraction:
        """Its mass in kg."""
        return kilograms(self.mass, self.unit)

    @property
    def words(self) -> str:
        """The mass as stamped: "20 kg"."""
        return f"{figure(self.mass)} {self.unit}"


class Use(NamedTuple):
    """How many of a piece are in use; ``what``: a field of the gym (bars, plates, dumbbells, kettlebells)."""

    what: str
    piece: Piece
    number: int


class Put(NamedTuple):
    """A load that can be put on. ``kg``: the whole load; one hand's or one stack's where it takes two."""

    kg: Fraction
    words: str
    uses: tuple[Use, ...] = ()


Around = tuple[Put | None, Put | None]
"""The heaviest load up to the one asked for, and the lightest from there up: the same where it is there."""


def around(asked: Fraction, puts: Iterable[Put]) -> Around:
    """The loads next to ``asked`` (kg) among ``puts``; of equal ones the first."""
    below = above = None
    for put in puts:
        if put.kg <= asked and (below is None or put.kg > below.kg):
            below = put
        if put.kg >= asked and (above is None or put.kg < above.kg):
            above = put
    return below, above


def pieces(stock: Stock) -> tuple[Piece, ...]:
    """Every mass of a stock as a piece, lightest first."""
    return tuple(Piece(mass, stock.unit, stock.name) for mass in stock.masses())


def figure(value: Fraction, decimals: int = 2) -> str:
    """A number without the noughts at its end.

    >>> figure(Fraction(5, 4)), figure(Fraction(20)), figure(Fraction(4535924, 100000))
    ('1.25', '20', '45.36')
    """
    return f"{round(float(value), decimals):.12g}"


def mass_words(kg: Fraction, unit: Unit, decimals: int = 2) -> str:
    """A mass in kg told in a unit.

    >>> mass_words(kilograms(Fraction(45), "lb"), "lb"), mass_words(kilograms(Fraction(45), "lb"), "kg")
    ('45 lb', '20.41 kg')
    """
    return f"{figure(kg / kilograms(Fraction(1), unit), decimals)} {unit}"
