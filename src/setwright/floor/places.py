"""Which of several equal stations a group is at, for paper that has a number on it."""

from collections.abc import Mapping
from itertools import chain, count

from setwright.floor.room import Floor


def places(floor: Floor, pool: str) -> Mapping[tuple[int, int], int]:
    """The number of the station, from 1, by group and number of the block.

    A group goes back to its last one where that is free, else to the first that is.
    """
    found: dict[tuple[int, int], int] = {}
    free_from: dict[int, float] = {}
    last: dict[int, int] = {}
    for stay in floor.stays:
        if stay.holds.get(pool):
            wanted = [last[stay.group]] if stay.group in last else []
            at = next(one for one in chain(wanted, count(1)) if free_from.get(one, 0.0) <= stay.start_s)
            found[stay.group, stay.block.number] = last[stay.group] = at
            free_from[at] = stay.end_s
    return found
