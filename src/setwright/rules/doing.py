"""Who does what: the lines that one athlete does in a week, warm-ups too."""

from collections.abc import Iterator
from typing import NamedTuple

from setwright.model.people import Athlete
from setwright.model.plan import Group, Item, Session, Week, is_for


class Task(NamedTuple):
    """A line that an athlete does, in its session; ``as_written`` False where it was changed for somebody."""

    session: Session
    item: Item
    as_written: bool


def tasks(week: Week, athlete: Athlete) -> Iterator[Task]:
    """The lines of the week that the athlete does, in the order written; ``for`` and ``not for`` decide."""
    called = names_of(week, athlete)
    for session in week.sessions:
        for item in session.warm_up:
            yield from _task(session, item, (item,), called)
        for entry in session.work:
            if isinstance(entry, Group):
                for item in entry.items:
                    yield from _task(session, item, (entry, item), called)
            else:
                yield from _task(session, entry, (entry,), called)


def names_of(week: Week, athlete: Athlete) -> frozenset[str]:
    """The names that mean the athlete in ``for`` and ``not for``: their own and those of their groups."""
    groups = week.squad.groups if week.squad else {}
    return frozenset({athlete.name, *(name for name, members in groups.items() if athlete.name in members)})


def _task(
    session: Session, item: Item, said_of: tuple[Item | Group, ...], called: frozenset[str]
) -> Iterator[Task]:
    if all(is_for(one, called) for one in said_of):
        yield Task(session, item, not any(one.for_ or one.not_for for one in said_of))
