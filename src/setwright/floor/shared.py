"""Iron that is wanted more often than it is there, while the groups are where the timetable has them."""

from collections.abc import Iterator
from typing import NamedTuple

from setwright.floor.lifting import Lift
from setwright.floor.room import Floor, Stay
from setwright.loads.put import Put
from setwright.loads.together import Short, together
from setwright.model.room import Gym


class Wanted(NamedTuple):
    """A piece that is ``short`` for groups at ``stays`` which meet; the last to come is the last of them."""

    short: Short
    stays: tuple[Stay, ...]


def wanted_twice(floor: Floor) -> Iterator[Wanted]:
    """Each piece of iron once, with the first groups that want it at the same time.

    At a station one lifts at a time, so a group has its heaviest bar there and each of its dumbbells once;
    where nobody waits for a turn everybody has theirs.
    """
    if floor.gym is None or not floor.lifts:
        return
    said = set()
    for stay in floor.stays:
        meeting = [one for one in floor.stays if one.start_s <= stay.start_s < one.end_s]
        using = [(one, tuple(_puts(one, floor.lifts, floor.gym))) for one in meeting]
        for short in together([put for _, puts in using for put in puts], floor.gym).short:
            if (short.what, short.piece) not in said:
                said.add((short.what, short.piece))
                who = [one for one, puts in using if any(_takes(put, short) for put in puts)]
                yield Wanted(short, tuple(sorted(who, key=lambda one: one.start_s)))


def _puts(stay: Stay, lifts: tuple[Lift, ...], gym: Gym) -> Iterator[Put]:
    """What a group has in use at one moment, at most."""
    for way in stay.ways:
        mine = (one for one in lifts if one.block == stay.block.number and one.person in way.people)
        puts = [one.put for one in mine if one.put is not None]
        weights = [put for put in puts if not _on_a_bar(put)]
        bars = [put for put in puts if _on_a_bar(put)]
        yield from dict.fromkeys(weights) if way.holds else weights
        if bars and not gym.plates_per_rack:
            yield max(bars, key=lambda put: put.kg)


def _on_a_bar(put: Put) -> bool:
    return any(use.what in ("bars", "plates") for use in put.uses)


def _takes(put: Put, short: Short) -> bool:
    return any((use.what, use.piece) == (short.what, short.piece) for use in put.uses)
