"""How many people a station of the gym holds at once, by a plain count."""

from collections.abc import Iterator
from typing import Final

from setwright.coverage import Work
from setwright.model.room import Gym

BENCHES: Final = frozenset({"bench", "flat bench", "incline bench", "upright bench"})
RACKS: Final = frozenset({"rack", "rack set low"})
BARS: Final = frozenset({"bar", "bar and plates", "bar and bumper plates"})
PAIR: Final = 2


def places(gym: Gym, need: str) -> int | None:
    """How many people train at a station at the same time; None where the gym file does not say.

    A rack and a loaded bar are shared by as many as the gym file says for a rack, else by one.
    """
    sharing = gym.people_per_rack or 1
    if need in gym.stations:
        return gym.stations[need]
    if need in RACKS:
        return None if gym.racks is None else gym.racks * sharing
    if need in BENCHES:
        return gym.benches
    if need in BARS:
        return sum(bar.number for bar in gym.straight_bars) * sharing
    if need in ("cable", "cable pair"):
        return sum(cable.stacks for cable in gym.cables) // (PAIR if need == "cable pair" else 1)
    return None


def scarce(gym: Gym, work: Work, people: int) -> Iterator[tuple[str, int]]:
    """The stations of a line that hold fewer than ``people``, and how many; a rack has its bench in it."""
    needs = work.movement["needs"]
    racked = not RACKS.isdisjoint(needs)
    for need in needs:
        held = None if racked and need in BENCHES else places(gym, need)
        if held is not None and held < people:
            yield need, held
