"""A plan read with its own movements, and its library at the size of one of its athletes."""

from collections.abc import Callable
from typing import NamedTuple

from setwright.library.resolve import resolve
from setwright.library.table import Library, Movement, library
from setwright.model.in_force import in_force
from setwright.model.people import Athlete
from setwright.model.plan import Week
from setwright.model.reader import BlockRead, read_block
from setwright.own.body import model_size, size_of
from setwright.own.sized import sized
from setwright.own.table import own_table
from setwright.reading.gathering import Gathering


class PlanRead(NamedTuple):
    """What became of a plan, and the library that its names are looked up in."""

    read: BlockRead
    table: Library


class NotToSize(ValueError):
    """No such plan or athlete; the text says what was looked for and what there is."""


class Sized(NamedTuple):
    """The library of a plan for a lifter of some size; ``unread``: own movements with a fault."""

    table: Library
    factor: float
    unread: tuple[str, ...]

    def movement(self, key: str) -> Movement:
        """One movement at the lifter's size. Raises: KeyError."""
        return sized(self.table.movement(key), self.factor)


def sized_library(read: BlockRead, athlete: str | None) -> Sized:
    """The library of a plan that was read, at the size of the named athlete, the model's when None.

    Raises: NotToSize; NoSuchBody.
    """
    if read.week is None:
        raise NotToSize("the plan can't be read; `setwright check` says why")
    size = model_size() if athlete is None else size_of(_athlete(read.week, athlete))
    own = own_table(read.week, size)
    return Sized(own.table, size.factor, own.unread)


def _athlete(week: Week, name: str) -> Athlete:
    squad = week.squad.athletes if week.squad else ()
    for one in squad:
        if one.name.casefold() == name.casefold():
            return one
    known = ", ".join(one.name for one in squad)
    raise NotToSize(
        f'"{name}" is no athlete of the plan; ' + (f"there are {known}" if known else "it has no squad")
    )


def read_plan(file: str, text: str, beside: Callable[[str], str | None]) -> PlanRead:
    """The plan in ``text`` with every name looked up, and with the sessions that are not in force held back.

    ``beside`` gives the text of files that the plan names.
    """
    read = read_block(file, text, beside)
    if read.week is None:
        return PlanRead(read, library())
    own = own_table(read.week)
    resolved = [resolve(week, own.table, own.unread) for week in read.weeks]
    asked = Gathering()
    asked.add(*(finding for _, findings in resolved for finding in findings))
    told = (*read.findings, *own.findings, *asked.findings)
    weeks = tuple(in_force(week) for week, _ in resolved)
    return PlanRead(read._replace(weeks=weeks, findings=told), own.table)
