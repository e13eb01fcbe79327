"""Gyms and racks written short."""

from fractions import Fraction
from typing import Any

from setwright.loads.put import Piece
from setwright.model.room import Gym, Stock, kilograms
from setwright.places import Place
from setwright.reading.measures import Unit
from tests.reading.plans import read

KG_PLATES = {20: 2, 10: 1, 5: 1, 2.5: 1, 1.25: 1}
"""Pairs of a small kilogram rack."""
LB_PLATES = {45: 1, 35: 1, 25: 1, 10: 2, 5: 1, 2.5: 1}
"""Pairs of a school's rack, in pounds."""


def plates(pairs: dict[float, int], unit: Unit = "kg") -> tuple[Stock, ...]:
    return tuple(
        Stock(low=mass, high=mass, unit=unit, number=number, pairs=True) for mass, number in pairs.items()
    )


def bar(mass: float, unit: Unit = "kg", number: int = 1) -> Stock:
    return Stock(low=mass, high=mass, unit=unit, number=number)


def piece(mass: float, unit: Unit = "kg") -> Piece:
    return Piece(Fraction(str(mass)), unit)


def kg(mass: float, unit: Unit = "kg") -> Fraction:
    return kilograms(Fraction(str(mass)), unit)


def room(**fields: Any) -> Gym:
    return Gym(place=Place("gym.yaml", 1, 1, 1, 4), **fields)


def typed(text: str) -> Gym:
    """The gym that a coach types."""
    result = read("plan: A\ngym: g.yaml\nwork:\n  - pull-up: 3 x 8\n", {"g.yaml": f"gym: Hall\n{text}\n"})
    assert result.findings == ()
    assert result.week is not None
    assert result.week.gym is not None
    return result.week.gym
