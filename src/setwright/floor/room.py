"""The floor of one session: groups, their timetable, and what will go wrong on the day."""

from collections.abc import Collection, Mapping, Sequence
from typing import NamedTuple

from setwright.floor.blocks import Block, blocks, load_of
from setwright.floor.groups import AT_A_STATION, Group, Person, groups_of
from setwright.floor.kit import there
from setwright.floor.schedule import Slot, Task, timetable, usual_finish
from setwright.floor.timing import rest_given, seconds
from setwright.library.table import Library
from setwright.model import plan
from setwright.model.people import Athlete
from setwright.model.room import Gym, exactly, kilograms
from setwright.model.theirs import lines_of, meant, names_of, own_load
from setwright.reading.dose import Load


class NobodyKnown(Exception):
    """How many people come is written nowhere."""


class Stay(NamedTuple):
    """A group at a block. Seconds from the start.

    ``people``: how many of the group do it; ``rest_s``: what each rests after a set, None by the clock.
    """

    group: int
    block: Block
    start_s: float
    end_s: float
    people: int
    rest_s: float | None


class Floor(NamedTuple):
    """A session in its room. ``groups`` from the strongest; ``stays`` by their start.

    ``there``: how many of each pool that is held. ``available_s``: its minutes without the common warm-up,
    None when they are not written. ``least_s``: no timetable of these groups ends before it; ``proved``:
    every order was tried.
    """

    session: plan.Session
    groups: tuple[Group, ...]
    blocks: tuple[Block, ...]
    stays: tuple[Stay, ...]
    there: Mapping[str, float]
    spotter: bool
    warm_up_s: float
    available_s: float | None
    least_s: float
    proved: bool

    @property
    def finish_s(self) -> float:
        """When the last group is through, from the end of the common warm-up."""
        return max((stay.end_s for stay in self.stays), default=0.0)

    def of_group(self, group: int) -> tuple[Stay, ...]:
        """Where a group is, in the order of the clock."""
        return tuple(stay for stay in self.stays if stay.group == group)


def letter(group: int) -> str:
    """What a group is called on paper: A, B, C."""
    return chr(ord("A") + group)


def floor(
    session: plan.Session,
    week: plan.Week,
    table: Library,
    *,
    absent: Collection[str] = (),
    without: Mapping[str, int] | None = None,
) -> Floor:
    """The timetable of a session for everyone who comes.

    ``absent``: athletes who don't. ``without``: pools with how many are out of order. Raises: NobodyKnown.
    """
    people = everyone(week, session, absent)
    if not people:
        raise NobodyKnown
    gym = week.gym
    done = blocks(session, table, gym)
    pools = {pool for block in done for pool in block.holds}
    number = {pool: max(there(pool, gym) - (without or {}).get(pool, 0), 0) for pool in pools} if gym else {}
    warm_up = 60 * (session.warm_up_minutes or 0)
    available = None if session.minutes is None else 60 * session.minutes - warm_up
    athletes = {one.name: one for one in week.squad.athletes} if week.squad else {}

    def tasks(groups: Sequence[Group]) -> list[Task]:
        return [
            Task(
                {pool: min(held, int(number.get(pool, held))) for pool, held in block.holds.items()},
                tuple(_seconds(block, group, week, athletes) for group in groups),
                block.entry.priority,
            )
            for block in done
        ]

    ways = [groups_of(people, size) for size in _sizes(len(people), done, gym)]
    groups = min(ways, key=lambda way: (_late(usual_finish(tasks(way), number), available), len(way)))
    found = timetable(tasks(groups), number, available)
    stays = tuple(_stay(slot, done, groups, week, athletes) for slot in found.slots)
    spotter = gym is None or gym.spotter != "none"
    return Floor(
        session, groups, done, stays, number, spotter, warm_up, available, found.least_s, found.proved
    )


def everyone(week: plan.Week, session: plan.Session, absent: Collection[str]) -> list[Person]:
    """Who comes: the squad without those who are out or absent, or so many as the plan says."""
    if week.squad is None or not week.squad.athletes:
        return [Person(f"person {at}") for at in range(1, (session.people or week.people or 0) + 1)]
    here = [one for one in week.squad.athletes if one.participation != "out" and one.name not in absent]
    return [Person(one.name, _heaviest(one, week, session), one.height_cm) for one in here]


def _heaviest(athlete: Athlete, week: plan.Week, session: plan.Session) -> float | None:
    """The most that an athlete lifts in a line of the session, in kg, as far as it is written as a load."""
    names = names_of(week, athlete)
    found = []
    for item in session.items():
        own = own_load(item, names)
        for line in lines_of(item, names):
            loads = own.loads if own else tuple(filter(None, [load_of(line)]))
            found += [
                _kilograms(load, week) for load in loads if load.kind == "mass" and load.low is not None
            ]
    return max(found, default=None)


def _kilograms(load: Load, week: plan.Week) -> float:
    return float(
        kilograms(exactly(load.high or load.low or 0.0), "lb" if (load.unit or week.unit) == "lb" else "kg")
    )


def _sizes(people: int, done: Sequence[Block], gym: Gym | None) -> list[int]:
    """Sizes of groups worth trying: up to what a rack takes, and everybody where a circuit has room."""
    most = (gym.people_per_rack if gym else None) or AT_A_STATION
    in_turn = list(range(min(most, people), 0, -1))
    circuit = max((len(block.moves) for block in done if block.at_once), default=0)
    return [people, *in_turn] if most < people <= circuit else in_turn


def _seconds(block: Block, group: Group, week: plan.Week, athletes: Mapping[str, Athlete]) -> float:
    people = _doing(block, group, week, athletes)
    return seconds(block, people) if people else 0.0


def _doing(block: Block, group: Group, week: plan.Week, athletes: Mapping[str, Athlete]) -> int:
    """How many of a group do the block."""
    return sum(
        person.name not in athletes or meant(block.entry, names_of(week, athletes[person.name]))
        for person in group
    )


def _stay(
    slot: Slot,
    done: Sequence[Block],
    groups: Sequence[Group],
    week: plan.Week,
    athletes: Mapping[str, Athlete],
) -> Stay:
    block = done[slot.turn.block]
    people = _doing(block, groups[slot.turn.group], week, athletes)
    rest = rest_given(block, people) if block.whole_s is None and block.sets > 1 else None
    return Stay(slot.turn.group, block, slot.start, slot.end, people, rest)


def _late(finish: float, available: float | None) -> float:
    return max(finish - (available or 0.0), 0.0)
