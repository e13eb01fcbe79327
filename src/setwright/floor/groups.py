"""People in groups that share a station: alike in load, then in height, as even in number as can be."""

import math
from collections.abc import Sequence
from itertools import pairwise
from typing import Final, NamedTuple

AT_A_STATION: Final = 4
"""Most people who share one station where the gym file does not say (common practice, no source)."""


class Person(NamedTuple):
    """Somebody on the floor. ``load_kg``: of the heaviest line with one; ``height_cm``: from the squad."""

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
