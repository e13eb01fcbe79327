"""Whether those who do a line can have their loads at the same time, and what is short when they can't."""

from collections.abc import Iterator, Sequence
from math import ceil
from typing import NamedTuple

from setwright.loads.put import Put
from setwright.loads.together import Short, together
from setwright.model.people import Athlete
from setwright.model.room import Gym

Lifter = tuple[Athlete, Put]


class Crowd(NamedTuple):
    """Lifters at the same time whose loads are not all there, and what is short."""

    lifters: tuple[Athlete, ...]
    short: tuple[Short, ...]


def at_once(lifters: Sequence[Lifter], gym: Gym) -> Crowd | None:
    """The first of those lifting at once who can't have their loads; None when everybody can.

    At a rack one lifts and the others wait: neighbours in load share one, and the first of each rack lift at
    once, then the second of each. Without a bar everybody lifts at once.
    """
    racks = _racks(lifters, gym)
    for turn in _turns(lifters, racks) if racks else [lifters]:
        short = together([put for _, put in turn], gym).short
        if short:
            return Crowd(tuple(athlete for athlete, _ in turn), short)
    return None


def _racks(lifters: Sequence[Lifter], gym: Gym) -> int | None:
    """The racks in use: those of the gym, else one a bar; None when nobody lifts a bar."""
    if not any(use.what == "bars" for _, put in lifters for use in put.uses):
        return None
    there = gym.racks or sum(bar.singles for bar in gym.bars)
    return min(there, len(lifters))


def _turns(lifters: Sequence[Lifter], racks: int) -> Iterator[list[Lifter]]:
    """Who lifts at the same time, turn by turn."""
    in_order = sorted(lifters, key=lambda one: one[1].kg)
    a_rack = ceil(len(in_order) / racks)
    return (in_order[turn::a_rack] for turn in range(a_rack))
