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

_RACK: Final[Holds] = {"rack": 1, "bar": 1}
_ONE: Final[Mapping[str, tuple[Holds, ...]]] = {
    pool: ({pool: 1},) for pool in ("bench", "bar", "trap bar", "dumbbell", "kettlebell", "stack", "band")
}
_TWO: Final[Mapping[str, tuple[Holds, ...]]] = {
    pool: ({pool: 2},) for pool in ("dumbbell", "kettlebell", "stack", "band")
}
_OF: Final[Mapping[str, tuple[Holds, ...]]] = {
    **dict.fromkeys(("bench", "flat bench", "incline bench", "upright bench", "bench 60 cm"), _ONE["bench"]),
    **dict.fromkeys(("rack", "rack set low"), (_RACK,)),
    **dict.fromkeys(("bar", "bar and plates", "bar and bumper plates"), _ONE["bar"]),
    "trap bar and plates": _ONE["trap bar"],
    "dumbbell": _ONE["dumbbell"], "dumbbells": _TWO["dumbbell"], "dumbbell pair": _TWO["dumbbell"],
    "kettlebell": _ONE["kettlebell"], "kettlebells": _TWO["kettlebell"],
    "weight": (*_ONE["dumbbell"], *_ONE["kettlebell"]),
    "pair of weights": (*_TWO["dumbbell"], *_TWO["kettlebell"]),
    "cable": _ONE["stack"], "rope": ({},), "cable pair": _TWO["stack"],
    "band": _ONE["band"], "mini-band": _ONE["band"], "band pair": _TWO["band"],
}  # fmt: skip
"""What will do for a station of the library, the first best; every other one is a pool by its name.

A rope hangs on the cable that is held anyhow.
"""
_BY_MASS: Final = ("dumbbell", "kettlebell")
"""Pools of many masses: only things of one mass stand in each other's way."""


def holds(movement: Mapping[str, Any], load: Load | None, gym: Gym) -> Holds:
    """What a group holds while it does a movement, by pool; of "A or B" the first that the gym has.

    Dumbbells and kettlebells are told by the mass that the line says, and not at all without one: then
    everybody takes what suits.
    """
    held: Counter[str] = Counter()
    for need in movement["needs"]:
        ways = [_at_mass(way, load, gym) for way in _ways(need, gym)]
        held.update(next((way for way in ways if _is_there(way, gym)), ways[0]))
    return {pool: number for pool, number in held.items() if not math.isinf(there(pool, gym))}


def missing(gym: Gym, movement: Mapping[str, Any]) -> tuple[str, ...]:
    """What the movement needs and the gym lacks; "A or B" is one of the two."""
    return tuple(
        need for need in movement["needs"] if not any(_is_there(way, gym) for way in _ways(need, gym))
    )


def common_kit(need: str) -> str | None:
    """The pool that will do for a station of the library, None for one that has a place of its own.

    >>> common_kit("dumbbell pair"), common_kit("rack set low"), common_kit("dip bars")
    ('dumbbell', 'rack', None)
    """
    return next(iter(_OF[need][0]), None) if need in _OF else None


def there(pool: str, gym: Gym) -> float:
    """How many of a pool the gym has; infinite for what nobody counts."""
    if pool in gym.stations:
        return gym.stations[pool]
    mass, _, kind = pool.rpartition(" ")
    if mass and kind in _BY_MASS:
        number, unit = mass.split()
        return _of_mass(kind, float(number), "lb" if unit == "lb" else "kg", gym)
    if pool in _COUNTS:
        return _COUNTS[pool](gym)
    return math.inf if pool in ALWAYS_THERE else 0


def is_fixed(pool: str) -> bool:
    """Whether it stays where it stands: racks, stacks and the stations that a gym file names."""
    return pool in ("rack", "stack") or (pool not in _COUNTS and not pool.endswith(_BY_MASS))


def noun(number: float, pool: str) -> str:
    """What so many of a pool are called.

    >>> noun(2, "bench"), noun(1, "stack"), noun(2, "20 kg dumbbell"), noun(2, "dip bars")
    ('benches', 'cable', 'dumbbells of 20 kg', 'dip bars')
    """
    mass, _, kind = pool.rpartition(" ")
    if mass and kind in _BY_MASS:
        return f"{noun(number, kind)} of {mass}"
    pool = "cable" if pool == "stack" else pool
    if number == 1 or pool.endswith("s"):
        return pool
    return f"{pool}{'es' if pool.endswith(('ch', 'x')) else 's'}"


def pool_words(number: float, pool: str) -> str:
    """So many of a pool.

    >>> pool_words(1, "rack"), pool_words(4, "20 kg dumbbell")
    ('1 rack', '4 dumbbells of 20 kg')
    """
    return f"{number:g} {noun(number, pool)}"


def _ways(need: str, gym: Gym) -> tuple[Holds, ...]:
    """What will do for a need, the first best; what the gym file lists by that name comes before all."""
    if gym.stations.get(need):
        return ({need: 1},)
    words = need.split(" or ")
    return tuple(
        way for word in words for way in (() if gym.stations.get(word) else _OF.get(word, ())) or ({word: 1},)
    )


def _is_there(way: Holds, gym: Gym) -> bool:
    return all(there(pool, gym) >= number for pool, number in way.items())


def _at_mass(way: Holds, load: Load | None, gym: Gym) -> Holds:
    """The same with dumbbells and kettlebells of the one mass that a load says."""
    if load is None or load.kind != "mass" or load.low is None or load.low != load.high:
        return way
    mass = f"{load.low:g} {load.unit or gym.unit or 'kg'}"
    return {f"{mass} {pool}" if pool in _BY_MASS else pool: number for pool, number in way.items()}


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


def _some(there_are: object) -> float:
    return math.inf if there_are else 0


_COUNTS: Final[Mapping[str, Callable[[Gym], float]]] = {
    "bench": lambda gym: math.inf if gym.benches is None else gym.benches,
    "rack": lambda gym: math.inf if gym.racks is None else gym.racks,
    "bar": lambda gym: sum(bar.singles for bar in gym.straight_bars),
    "trap bar": lambda gym: sum(bar.singles for bar in gym.bars_named("trap")),
    "dumbbell": lambda gym: _some(gym.dumbbells),
    "kettlebell": lambda gym: _some(gym.kettlebells),
    "stack": lambda gym: sum(cable.stacks for cable in gym.cables),
    "band": _bands,
}
"""How many of a pool a gym file lists."""
