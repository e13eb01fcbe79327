"""Whether a gym has what a movement needs, for the rules: by the stations of ``floor.kit``."""

from collections.abc import Sequence
from typing import Final

from setwright.coverage import Movement
from setwright.floor.kit import common_kit, missing
from setwright.model.room import Gym

_KEYS: Final = {
    "rack": "`racks: 1`",
    "bench": "`benches: 1`",
    "bar": "`20 kg: 1` under `bars:`",
    "trap bar": "`trap bar 25 kg: 1` under `bars:`",
    "dumbbell": "`10 kg: 1 pair` under `dumbbells:`",
    "kettlebell": "`16 kg: 1` under `kettlebells:`",
    "stack": "`- name: cable` under `cables:`",
    "band": "`red: 60 N at 2 m` under `bands:`",
    "cable pair": "`- name: twin cable` under `cables:`",
    "kettlebells": "`16 kg: 1 pair` under `kettlebells:`",
}
"""How a gym file lists what is no station, by its pool or, of two, by name; the numbers are examples."""


def lines_to_add(needs: Sequence[str]) -> str:
    """What to write in a gym file so that it has some stations of the library, in words."""
    keys = [need if need in _KEYS else common_kit(need) or "" for need in needs]
    lines = [_KEYS.get(key, f"`{need}: 1` under `stations:`") for key, need in zip(keys, needs, strict=True)]
    return " and ".join(dict.fromkeys(lines))


def has(gym: Gym, movement: Movement) -> bool:
    """Whether the gym has every station that the movement needs."""
    return not missing(gym, movement)
