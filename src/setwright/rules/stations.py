"""Whether a gym has what a movement needs, for the rules: by the stations of ``floor.kit``."""

from setwright.coverage import Movement
from setwright.floor.kit import missing
from setwright.model.room import Gym

__all__ = ["has", "missing"]


def has(gym: Gym, movement: Movement) -> bool:
    """Whether the gym has every station that the movement needs."""
    return not missing(gym, movement)
