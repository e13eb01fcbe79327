"""Which stations of the library a gym file lists, in its own words."""

from collections.abc import Callable, Mapping
from typing import Final

from setwright.coverage import Movement
from setwright.model.room import Gym

ALWAYS_THERE: Final = frozenset({
    "floor", "floor space", "wall", "walkway", "track", "road", "field", "none", "partner", "foot hold",
    "lines", "marked lines",
    "anchor at chest height", "one anchor at chest height", "two anchors at chest height",
})  # fmt: skip
"""Stations that every gym has (common practice, no source); anchors belong to the bands."""


def _benches(gym: Gym) -> bool:
    return gym.benches is None or gym.benches > 0


def _racks(gym: Gym) -> bool:
    return _bars(gym) and (gym.racks is None or gym.racks > 0)


def _bars(gym: Gym) -> bool:
    return bool(gym.straight_bars)


def _dumbbells(gym: Gym) -> bool:
    return bool(gym.dumbbells)


def _kettlebells(gym: Gym) -> bool:
    return bool(gym.kettlebells)


def _weights(gym: Gym) -> bool:
    return bool(gym.dumbbells or gym.kettlebells)


def _cables(gym: Gym, at_least: int = 1) -> bool:
    return sum(cable.stacks for cable in gym.cables) >= at_least


def _bands(gym: Gym, at_least: int = 1) -> bool:
    """A band without a number counts as enough: nobody lists bands one by one."""
    return sum(at_least if band.number is None else band.number for band in gym.bands) >= at_least


STATIONS: Final[Mapping[str, Callable[[Gym], bool]]] = {
    "bench": _benches, "flat bench": _benches, "incline bench": _benches, "upright bench": _benches,
    "bench 60 cm": _benches, "rack": _racks, "rack set low": _racks,
    "bar": _bars, "bar and plates": _bars, "bar and bumper plates": _bars,
    "trap bar and plates": lambda gym: bool(gym.bars_named("trap")),
    "dumbbell": _dumbbells, "dumbbells": _dumbbells, "dumbbell pair": _dumbbells,
    "kettlebell": _kettlebells, "kettlebells": _kettlebells, "weight": _weights, "pair of weights": _weights,
    "cable": _cables, "rope": _cables, "cable pair": lambda gym: _cables(gym, 2),
    "band": _bands, "mini-band": _bands, "band pair": lambda gym: _bands(gym, 2),
}  # fmt: skip
"""How a station of the library is found in a gym file; every other one must be named under `stations:`."""


def has(gym: Gym, movement: Movement) -> bool:
    """Whether the gym has every station that the movement needs."""
    return not missing(gym, movement)


def missing(gym: Gym, movement: Movement) -> tuple[str, ...]:
    """What the movement needs and the gym lacks; "A or B" is one of the two."""
    return tuple(
        need
        for need in movement["needs"]
        if not gym.stations.get(need, 0) and not any(_station(gym, word) for word in need.split(" or "))
    )


def _station(gym: Gym, word: str) -> bool:
    listed = word in ALWAYS_THERE or gym.stations.get(word, 0) > 0
    return listed or (word in STATIONS and STATIONS[word](gym))
