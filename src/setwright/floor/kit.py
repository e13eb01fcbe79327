"""The stations of a gym as pools of equal things, and what a group holds while it does a movement."""

import math
from collections import Counter
from collections.abc import Callable, Mapping
from typing import Any, Final

from setwright.model.room import Gym, exactly, kilograms
from setwright.reading.dose import Load
from setwright.reading.measures import Unit

ALWAYS_THERE: Final = frozenset({
    "floor", "floor space", "wall", "walkway", "track", "road", "field", "none", "partner", "foot hold",
    "lines", "marked lines",
    "anchor at chest height", "one anchor at chest height", "two anchors at chest height",
})  # fmt: skip
"""Stations that every gym has (common practice, no source); anchors belong to the bands."""

Holds = Mapping[str, int]
"""How many of each pool are held at once."""

_OF: Final = {
    "bench": {"bench": 1}, "flat bench": {"bench": 1}, "incline bench": {"bench": 1},
    "upright bench": {"bench": 1}, "bench 60 cm": {"bench": 1},
    "rack": {"rack": 1, "bar": 1}, "rack set low": {"rack": 1, "bar": 1},
    "bar": {"bar": 1}, "bar and plates": {"bar": 1}, "bar and bumper plates": {"bar": 1},
    "trap bar and plates": {"trap bar": 1},
    "dumbbell": {"dumbbell": 1}, "dumbbells": {"dumbbell": 2}, "dumbbell pair": {"dumbbell": 2},
    "kettlebell": {"kettlebell": 1}, "kettlebells": {"kettlebell": 2},
    "weight": {"dumbbell": 1}, "pair of weights": {"dumbbell": 2},
    "cable": {"stack": 1}, "rope": {"stack": 1}, "cable pair": {"stack": 2},
    "band": {"band": 1}, "mini-band": {"band": 1}, "band pair": {"band": 2},
}  # fmt: skip
"""What a station of the library takes from the gym; every other one is a pool of its own, by its name."""
_BY_MASS: Final = ("dumbbell", "kettlebell")
"""Pools of many masses: only things of one mass stand in each other's way."""


def holds(movement: Mapping[str, Any], load: Load | None, gym: Gym) -> Holds:
    """What a group holds while it does a movement, by pool; of "A or B" the first that the gym has.

    Dumbbells and kettlebells are told by the mass that the line says, and not at all without one: then
    everybody takes what suits.
    """
    held: Counter[str] = Counter()
    for need in movement["needs"]:
        held.update(_held(need, load, gym))
    return {pool: number for pool, number in held.items() if not math.isinf(there(pool, gym))}


def there(pool: str, gym: Gym) -> float:
    """How many of a pool the gym has; infinite for what nobody counts."""
    mass, _, kind = pool.rpartition(" ")
    if mass and kind in _BY_MASS:
        number, unit = mass.split()
        return _of_mass(kind, float(number), "lb" if unit == "lb" else "kg", gym)
    count = _COUNTS.get(pool)
    if count is not None:
        return count(gym)
    return math.inf if pool in ALWAYS_THERE else gym.stations.get(pool, 0)


def is_fixed(pool: str) -> bool:
    """Whether it stays where it stands: racks, stacks and the stations that a gym file names."""
    return pool in ("rack", "stack") or (pool not in _COUNTS and not pool.endswith(_BY_MASS))


def _held(need: str, load: Load | None, gym: Gym) -> Holds:
    ways = [need] if need in gym.stations else need.split(" or ")
    each = [_OF.get(way, {way: 1}) for way in ways]
    found = next((way for way in each if all(there(pool, gym) for pool in way)), each[0])
    if load is None or load.kind != "mass" or load.low is None or load.low != load.high:
        return found
    mass = f"{load.low:g} {load.unit or gym.unit or 'kg'}"
    return {f"{mass} {pool}" if pool in _BY_MASS else pool: number for pool, number in found.items()}


def _of_mass(kind: str, mass: float, unit: Unit, gym: Gym) -> int:
    asked = kilograms(exactly(mass), unit)
    stocks = gym.dumbbells if kind == "dumbbell" else gym.kettlebells
    return sum(
        stock.singles
        for stock in stocks
        if any(kilograms(one, stock.unit) == asked for one in stock.masses())
    )


def _bands(gym: Gym) -> float:
    """A band without a number counts as enough: nobody lists bands one by one."""
    return sum((math.inf if band.number is None else band.number) for band in gym.bands)


def _bars(gym: Gym) -> int:
    return sum(bar.singles for bar in gym.straight_bars)


def _some(there_are: object) -> float:
    return math.inf if there_are else 0


_COUNTS: Final[Mapping[str, Callable[[Gym], float]]] = {
    "bench": lambda gym: math.inf if gym.benches is None else gym.benches,
    "rack": lambda gym: math.inf if gym.racks is None else gym.racks,
    "bar": _bars,
    "trap bar": lambda gym: sum(bar.singles for bar in gym.bars_named("trap")),
    "dumbbell": lambda gym: _some(gym.dumbbells or gym.kettlebells),
    "kettlebell": lambda gym: _some(gym.kettlebells),
    "stack": lambda gym: sum(cable.stacks for cable in gym.cables),
    "band": _bands,
}
"""How many of a pool a gym file lists."""
