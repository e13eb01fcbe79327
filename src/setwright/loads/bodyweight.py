"""How much of the body a movement lifts, and what a load comes to with it."""

from collections.abc import Mapping
from typing import Final

from setwright.library.table import Movement
from setwright.loads.ranges import Range, one
from setwright.model.people import Athlete
from setwright.model.room import kilograms
from setwright.reading.dose import Load

NOTHING: Final = one(0.0)


def by_bodyweight(movement: Movement) -> bool:
    """Whether the body is the load, with more added to it or help taken off."""
    return movement["load_kind"] in ("bodyweight", "assisted")


def share(movement: Movement) -> Range | None:
    """The share of the body mass (0 to 1) that is lifted, None where none is published.

    A range where it changes on the way up, with the height of hands or feet or with the lean. Source:
    ``share_source`` of the movement in the library.
    """
    found = movement.get("body_share")
    if found is None:
        return None
    return Range(min(found.values()), max(found.values())) if isinstance(found, Mapping) else one(found)


def body_kg(athlete: Athlete | None) -> float | None:
    """The body mass in kg, None when it or its unit is not written, and for nobody in particular."""
    if athlete is None or athlete.body_mass is None or athlete.body_mass_unit is None:
        return None
    return kilograms(athlete.body_mass, athlete.body_mass_unit)


def lifted_body(athlete: Athlete | None, movement: Movement) -> Range | None:
    """The kilograms of the body that the movement lifts, None when mass or share is not known."""
    if not by_bodyweight(movement):
        return NOTHING
    mass, part = body_kg(athlete), share(movement)
    return None if mass is None or part is None else part.times(one(mass))


def added(load: Load, movement: Movement) -> Range:
    """The kilograms that a mass, or bodyweight with more or less, adds to the body; help is below zero.

    A mass on an assisted movement is help: the more of it, the less is lifted.
    """
    if load.kind == "bodyweight":
        ends = (load.plus or 0.0, load.plus_high or 0.0)
    else:
        ends = (load.low or 0.0, load.high or 0.0)
        if movement["load_kind"] == "assisted":
            ends = (-ends[0], -ends[1])
    low, high = sorted(kilograms(end, load.unit) for end in ends)
    return Range(low, high)


def lifted(load: Load, athlete: Athlete | None, movement: Movement) -> Range | None:
    """The kilograms that are lifted with a mass, or bodyweight with more or less; the body's share with them.

    None when the body mass, or its share in a bodyweight movement, is not known.
    """
    body = lifted_body(athlete, movement)
    if load.kind == "bodyweight" and not by_bodyweight(movement):
        mass = body_kg(athlete)
        body = None if mass is None else one(mass)
    return None if body is None else body.plus(added(load, movement))
