"""Who shares what on the floor, for the rules: by the groups and stations of ``floor``, not its search."""

from collections.abc import Iterator
from typing import TYPE_CHECKING, Final, NamedTuple

from setwright.coverage import SessionCover, Work
from setwright.floor.kit import holds, noun, there
from setwright.model.plan import Week
from setwright.model.room import Gym
from setwright.rules.aims import training
from setwright.rules.doing import tasks
from setwright.rules.rule import Case

if TYPE_CHECKING:
    from setwright.floor.blocks import Block
    from setwright.floor.room import Room

MANY: Final = 2


class Takes(NamedTuple):
    """What a line takes up while a set is done: so many of one kind of place, which the gym has ``there``."""

    kind: str
    number: int
    there: int


def takes(gym: Gym, work: Work) -> Iterator[Takes]:
    """The counted places that a line takes up; what the gym file does not count is left out."""
    for pool, number in holds(work.movement, None, gym).items():
        if counted := int(there(pool, gym)):
            yield Takes(pool if pool in gym.stations else noun(MANY, pool), number, counted)


def rooms(case: Case) -> Iterator[tuple[SessionCover, "Room"]]:
    """Each session with its room, where a gym file is there and somebody is known to come."""
    if case.coverage.week.gym is None:
        return
    for session in case.coverage.sessions:
        room = case.means.room(session.session)
        if room is not None:
            yield session, room


def sharing(room: "Room", block: "Block") -> int:
    """The most who do a block at one station."""
    return max(room.ways.sharing(block, group) for group in room.groups)


def alone(room: "Room", block: "Block") -> bool:
    """Whether in some group one person does the block without the others."""
    return any(len(room.ways.written(block, group).people) == 1 for group in room.groups)


def works_of(session: SessionCover, block: "Block") -> tuple[Work, ...]:
    """The lines of a block that are counted."""
    return tuple(work for work in session.works if work.item in block.items)


def people_at(week: Week, work: Work) -> int:
    """How many do the line: of a squad those it is for who do nothing instead, else the people written."""
    if week.squad:
        return sum(any(task.item is work.item for task in tasks(week, one)) for one in training(week))
    return work.session.people or week.people or 0
