"""How many people a station of the gym holds at once, by a plain count."""

from collections.abc import Iterator
from typing import Final

from setwright.coverage import Work
from setwright.model.room import Gym
from setwright.rules.queues import takes

SHARED: Final = ("racks", "bars")
"""Places that as many share as the gym file says for a rack."""
IN_A_RACK: Final = ("benches", "bars")


def scarce(gym: Gym, work: Work, people: int) -> Iterator[tuple[str, int]]:
    """The places of a line that hold fewer than ``people``, and how many; a rack holds its bench and bar."""
    taken = tuple(takes(gym, work))
    racked = any(one.kind == "racks" for one in taken)
    for one in taken:
        sharing = gym.people_per_rack or 1 if one.kind in SHARED else 1
        held = one.there // one.number * sharing
        if held < people and not (racked and one.kind in IN_A_RACK):
            yield one.kind, held
