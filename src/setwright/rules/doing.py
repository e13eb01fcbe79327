"""Who does what: the lines that one athlete does in a week, warm-ups too."""

from collections.abc import Iterator
from typing import NamedTuple

from setwright.model.people import Athlete
from setwright.model.plan import Group, Item, Session, Week
from setwright.model.theirs import lines_of, meant, names_of, own_load, with_own_load


class Task(NamedTuple):
    """A line that an athlete does, in its session and group, with a load of their own in it.

    ``as_written``: False where it was changed for somebody.
    """

    session: Session
    item: Item
    as_written: bool
    group: Group | None = None


def tasks(week: Week, athlete: Athlete) -> Iterator[Task]:
    """The lines of the week that the athlete does, in the order written; ``for`` and ``not for`` decide."""
    called = names_of(week, athlete)
    for session in week.sessions:
        for entry in (*session.warm_up, *session.work):
            for item in entry.items if isinstance(entry, Group) else (entry,):
                if meant(entry, called) and meant(item, called):
                    yield from _task(session, entry, item, called)


def _task(session: Session, entry: Item | Group, item: Item, called: frozenset[str]) -> Iterator[Task]:
    """The line as it stands, or what the athlete does instead of it."""
    chosen = any(one.for_ or one.not_for for one in (entry, item)) or own_load(item, called) is not None
    for line in lines_of(item, called):
        own = with_own_load(line, called)
        group = entry if isinstance(entry, Group) and own is line else None
        yield Task(session, own, line is item and not chosen, group)
