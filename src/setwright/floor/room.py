"""The floor of one session: groups, their timetable, what everybody lifts."""

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass, replace
from functools import cached_property
from string import ascii_uppercase
from typing import Final, NamedTuple

from setwright.floor.blocks import Block, blocks
from setwright.floor.groups import Group, Person, groups_of, sizes
from setwright.floor.kit import Holds, there
from setwright.floor.lifting import Lift, lifts
from setwright.floor.schedule import Slot, Task, taken, timetable, usual_finish
from setwright.floor.ways import Way, Ways, ways
from setwright.library.table import Library
from setwright.model.people import Athlete
from setwright.model.plan import Session, Week
from setwright.model.room import Gym
from setwright.model.theirs import names_of
from setwright.reading.words import MINUTE_S

ABOUT: Final = 1.1
"""Of the soonest finish, what more groups have to save to be worth it (choice)."""


class NobodyKnown(Exception):
    """Nobody comes, or how many come is written nowhere."""


class Stay(NamedTuple):
    """A group at a block. Seconds from the end of the common warm-up.

    ``people``: who of the group do it as it is written; ``sharing``: how many take turns at its stations;
    ``rest_s``: what each of them rests after a set, None by the clock. ``otherwise``: what others of the
    group do in its place. ``holds``: what the group keeps for all of that.
    """

    group: int
    block: Block
    start_s: float
    end_s: float
    people: tuple[str, ...]
    sharing: int
    rest_s: float | None
    otherwise: tuple[Way, ...]
    holds: Holds

    @property
    def ways(self) -> tuple[Way, ...]:
        """Everything that some of the group do at that time."""
        written = (Way(self.people, (self.block,)),) if self.people else ()
        return (*written, *self.otherwise)

    @property
    def everyone(self) -> tuple[str, ...]:
        """Who of the group have something to do at that time."""
        return tuple(name for way in self.ways for name in way.people)


class Floor(NamedTuple):
    """A session in its room. ``groups`` from the strongest; ``stays`` by their start.

    ``there``: how many of each pool that is held. ``available_s``: its minutes without the common warm-up,
    None when they are not written. ``least_s``: no timetable of these groups ends before it; ``proved``:
    every order was tried.
    """

    session: Session
    gym: Gym | None
    groups: tuple[Group, ...]
    blocks: tuple[Block, ...]
    stays: tuple[Stay, ...]
    lifts: tuple[Lift, ...]
    there: Mapping[str, float]
    warm_up_s: float
    available_s: float | None
    least_s: float
    proved: bool

    @property
    def finish_s(self) -> float:
        """When the last group is through, from the end of the common warm-up."""
        return max((stay.end_s for stay in self.stays), default=0.0)

    @property
    def whole_s(self) -> float:
        """How long the session is, with the common warm-up."""
        return self.warm_up_s + self.finish_s

    @property
    def spotter(self) -> bool:
        """Whether somebody may be there to spot: only a gym file can say that nobody is."""
        return self.gym is None or self.gym.spotter != "none"

    def of_group(self, group: int) -> tuple[Stay, ...]:
        """Where a group is, in the order of the clock."""
        return tuple(stay for stay in self.stays if stay.group == group)


def letter(group: int) -> str:
    """What a group is called on paper: A to Z, then AA.

    >>> letter(0), letter(25), letter(26)
    ('A', 'Z', 'AA')
    """
    before, last = divmod(group, len(ascii_uppercase))
    return (letter(before - 1) if before else "") + ascii_uppercase[last]


@dataclass(frozen=True, eq=False)
class Room:
    """A session with who comes and what there is, before anybody is told when.

    ``ways``: who does a block how. ``there`` and ``available_s`` as in a ``Floor``.
    """

    session: Session
    gym: Gym | None
    people: tuple[Person, ...]
    ways: Ways
    lifts: tuple[Lift, ...]
    blocks: tuple[Block, ...]
    there: Mapping[str, float]
    available_s: float | None

    def only(self, numbers: Collection[int]) -> "Room":
        """The same with some of its blocks."""
        return replace(
            self,
            blocks=tuple(block for block in self.blocks if block.number in numbers),
            lifts=tuple(lift for lift in self.lifts if lift.block in numbers),
        )

    def held(self, block: Block, group: Group) -> Holds:
        """What a group keeps while it is at a block; what the room lacks is never more than all there is."""
        holds = self.ways.holds(block, group)
        return {pool: min(held, int(self.there.get(pool, held))) for pool, held in holds.items()}

    def tasks(self, groups: Sequence[Group]) -> list[Task]:
        """The blocks as the search takes them."""
        return [
            Task(
                tuple(self.held(block, group) for group in groups),
                tuple(self.ways.seconds(block, group) for group in groups),
                block.entry.priority,
            )
            for block in self.blocks
        ]

    @cached_property
    def groups(self) -> tuple[Group, ...]:
        """The fewest groups that get through about as soon as any, in the usual orders."""
        ways = [groups_of(self.people, size) for size in sizes(len(self.people), self.blocks, self.gym)]
        ends = [usual_finish(self.tasks(way), self.there) for way in ways]
        return next(way for way, end in zip(ways, ends, strict=True) if end <= ABOUT * min(ends))

    @property
    def busiest(self) -> dict[int, float]:
        """Seconds of each block, by its number, of the group that has most to do."""
        each = (
            {block.number: self.ways.seconds(block, group) for block in self.blocks} for group in self.groups
        )
        return max(each, key=lambda one: sum(one.values()))

    def taken_s(self, pool: str) -> float:
        """Seconds that all groups together take up what there is of a pool, were it never idle."""
        return taken(pool, self.tasks(self.groups)) / self.there[pool]


def room(
    session: Session,
    week: Week,
    table: Library,
    *,
    absent: Collection[str] = (),
    without: Mapping[str, int] | None = None,
    by_load: bool = True,
) -> Room:
    """The session with everyone who comes.

    ``absent``: athletes who don't. ``without``: pools with how many are out of order. ``by_load``: whether
    loads are worked out, and groups made by them. Raises: NobodyKnown.
    """
    training = week.squad.training if week.squad else ()
    who = [one for one in training if one.name not in absent]
    done = tuple(lifts(session, week, table, [one.name for one in who])) if by_load else ()
    named = week.squad is not None and week.squad.athletes
    people = _people(who, done) if named else _counted(session.people or week.people or 0)
    if not people:
        raise NobodyKnown
    gym, found = week.gym, blocks(session, table, week.gym)
    done_by = ways(found, session, {one.name: names_of(week, one) for one in who}, table, gym)
    pools = {pool for block in found for pool in block.holds} | {
        pool for others in done_by.others.values() for way in others for pool in way.holds
    }
    number = {pool: max(there(pool, gym) - (without or {}).get(pool, 0), 0) for pool in pools} if gym else {}
    warm_up = MINUTE_S * (session.warm_up_minutes or 0)
    available = None if session.minutes is None else MINUTE_S * session.minutes - warm_up
    return Room(session, gym, people, done_by, done, found, number, available)


def floor(here: Room) -> Floor:
    """The timetable of a room."""
    groups = here.groups
    found = timetable(here.tasks(groups), here.there, here.available_s)
    return Floor(
        session=here.session,
        gym=here.gym,
        groups=groups,
        blocks=here.blocks,
        stays=tuple(_stay(slot, here, groups) for slot in found.slots),
        lifts=here.lifts,
        there=here.there,
        warm_up_s=MINUTE_S * (here.session.warm_up_minutes or 0),
        available_s=here.available_s,
        least_s=found.least_s,
        proved=found.proved,
    )


def _people(who: Sequence[Athlete], done: Sequence[Lift]) -> tuple[Person, ...]:
    """Each with the most that they lift."""
    most: dict[str, float] = {}
    for lift in done:
        most[lift.person] = max(lift.kg, most.get(lift.person, 0.0))
    return tuple(Person(one.name, most.get(one.name), one.height_cm) for one in who)


def _counted(number: int) -> tuple[Person, ...]:
    """So many as the plan says, where it names nobody."""
    return tuple(Person(f"person {at}") for at in range(1, number + 1))


def _stay(slot: Slot, here: Room, groups: Sequence[Group]) -> Stay:
    block, group = here.blocks[slot.turn.block], groups[slot.turn.group]
    return Stay(
        slot.turn.group,
        block,
        slot.start,
        slot.end,
        people=here.ways.written(block, group).people,
        sharing=here.ways.sharing(block, group),
        rest_s=here.ways.rest_s(block, group),
        otherwise=here.ways.otherwise(block, group),
        holds=here.held(block, group),
    )
