"""People in groups that share a station: alike in load, then in height, as even in number as can be."""

import math
from collections.abc import Sequence
from itertools import pairwise
from typing import Final, NamedTuple

from setwright.floor.blocks import Block
from setwright.model.room import Gym

AT_A_STATION: Final = 4
"""Most people who share one station where the gym file does not say (common practice, no source)."""


class Person(NamedTuple):
    """Somebody on the floor. ``load_kg``: the most they lift, where it is known."""

    name: str
    load_kg: float | None = None
    height_cm: float | None = None


Group = tuple[Person, ...]


def groups_of(people: Sequence[Person], at_most: int) -> tuple[Group, ...]:
    """Groups of at most so many, the strongest first; sizes differ by one at most.

    Who has no load comes last, so that one unknown does not part two who are alike.
    """
    number = math.ceil(len(people) / at_most)
    if not number:
        return ()
    alike = sorted(people, key=lambda one: (-(one.load_kg or 0.0), -(one.height_cm or 0.0), one.name))
    size, more = divmod(len(alike), number)
    cuts = [at * size + min(at, more) for at in range(number + 1)]
    return tuple(tuple(alike[a:b]) for a, b in pairwise(cuts))


def sizes(people: int, done: Sequence[Block], gym: Gym | None) -> list[int]:
    """Sizes of groups worth trying, the largest first: up to what a rack takes.

    Where nobody waits for a turn at a station, as many as a circuit has moves may go round together. Where
    racks are shared and not counted, every one is taken to be full.
    """
    most = (gym.people_per_rack if gym else None) or AT_A_STATION
    in_turn = any(block.holds and not block.at_once for block in done)
    if not in_turn:
        most = max([most, *(len(block.moves) for block in done if block.at_once)])
    uncounted = gym is not None and gym.racks is None and gym.people_per_rack is not None
    return [min(most, people)] if uncounted else list(range(min(most, people), 0, -1))
