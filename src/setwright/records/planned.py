"""What somebody is to do in a session, line by line, and how a line is told in a few words."""

from typing import NamedTuple

from setwright.model import theirs
from setwright.model.people import Athlete
from setwright.model.plan import Group, Item, Session, Week
from setwright.reading import words
from setwright.reading.dose import Effort, Load, SetGroup, SetWork
from setwright.reading.habits import Habits
from setwright.reading.short import dose_short


class Planned(NamedTuple):
    """One line of a session as somebody does it.

    ``base``: the line of the plan; ``line`` is another one where they do something else instead.
    """

    line: Item
    base: Item
    group: Group | None = None

    @property
    def sets(self) -> tuple[SetGroup, ...]:
        """The sets of its dose, kind by kind; none where it has no dose."""
        return self.line.dose.groups if self.line.dose else ()

    @property
    def works(self) -> tuple[SetWork, ...]:
        """What a set of it holds, over all kinds of its sets."""
        return tuple(work for group in self.sets for work in group.works)

    @property
    def effort(self) -> Effort | None:
        """The first effort that is planned."""
        return next((work.effort for work in self.works if work.effort), None)

    @property
    def rounds(self) -> int:
        """How often it is done: the rounds of its group, else once."""
        return (self.group.rounds if self.group else None) or 1


def planned(week: Week, session: Session, athlete: Athlete | None) -> tuple[Planned, ...]:
    """The lines of a session that are for an athlete, in order; for everybody when None."""
    known = None if athlete is None else theirs.names_of(week, athlete)
    found: list[Planned] = []
    for entry in session.work:
        group = entry if isinstance(entry, Group) else None
        for item in entry.items if isinstance(entry, Group) else (entry,):
            if theirs.meant(entry, known) and theirs.meant(item, known):
                found += (Planned(line, item, group) for line in theirs.lines_of(item, known))
    return tuple(found)


def loads_of(one: Planned, week: Week, athlete: Athlete | None) -> tuple[Load, ...]:
    """The loads written for an athlete in a line: their own, else the line's, else its complex's."""
    own = None if athlete is None else theirs.own_load(one.line, theirs.names_of(week, athlete))
    if own is not None:
        return own.loads
    works = (work for group in one.sets for work in (*group.works, *((group.last,) if group.last else ())))
    written = tuple(dict.fromkeys(work.load for work in works if work.load is not None))
    return written or ((one.group.load,) if one.group and one.group.load else ())


def in_short(one: Planned, week: Week, athlete: Athlete | None) -> str:
    """The line in a few words: "4 x 6-8, 2 left, with 60 kg", "1 x 12, 3 rounds"."""
    habits = Habits(unit=week.unit, percent_of=week.percent_of)
    loads = loads_of(one, week, athlete)
    told = [dose_short(one.line.dose)] if one.line.dose else []
    told += [f"{one.group.rounds} rounds"] if one.group and one.group.rounds else []
    told += [words.merged([words.load(load, habits) for load in loads])] if loads else []
    return ", ".join(told)
