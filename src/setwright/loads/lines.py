"""The lines of a session with a movement of the library, as they are done and by whom, and their loads."""

from collections.abc import Iterator
from typing import Final, NamedTuple

from setwright.library.table import Library, Movement
from setwright.model.people import Athlete
from setwright.model.plan import Group, Item, Session, Week
from setwright.model.theirs import lines_done
from setwright.reading.dose import Load, SetGroup, SetWork

FOUND_ON_THE_DAY: Final = ("top_set", "test")
"""Kinds of sets whose load is worked up to, not worked out."""


class Line(NamedTuple):
    """A line of work as the ``athletes`` do it; ``day`` is the place of its session in the week."""

    day: int
    session: Session
    item: Item
    group: Group | None
    movement: Movement
    athletes: tuple[Athlete, ...]

    @property
    def name(self) -> str:
        """The movement's name as the coach typed it."""
        return self.item.name

    @property
    def line(self) -> int:
        """The line of the plan it stands on."""
        return self.item.place.line


class Lift(NamedTuple):
    """Sets of one kind of a line, with their load. ``group`` is None in a circuit by the clock."""

    work: Line
    load: Load
    sets: SetWork | None = None
    group: SetGroup | None = None


def lines(session: Session, day: int, week: Week, table: Library) -> Iterator[Line]:
    """Every line of a session as written, then as those do it who have a load or a movement of their own.

    Lines whose movement nobody knows are left out.
    """
    for item, group, athletes in lines_done(session, week):
        if item.key is not None:
            yield Line(day, session, item, group, table.movement(item.key), athletes)


def lifts_of(line: Line) -> Iterator[Lift]:
    """Every kind of set of a line with a load that can be worked out, in the order it is done."""
    dose, shared = line.item.dose, line.group.load if line.group else None
    if dose is None and (alone := line.item.load or shared):
        yield Lift(line, alone)
    for group in dose.groups if dose else ():
        for sets in group.every_work:
            load = sets.load or shared
            if load is not None and group.kind not in FOUND_ON_THE_DAY:
                yield Lift(line, load, sets, group)


def work_loads(line: Line) -> tuple[Load, ...]:
    """The loads of the work sets and of the drops to another load, each once."""
    found: dict[Load, None] = {}
    for lift in lifts_of(line):
        drops = lift.sets.drops if lift.sets else ()
        found |= dict.fromkeys((lift.load, *(drop.to for drop in drops if drop.to)))
    return tuple(found)
