"""Which line of one week is which of another, for each athlete: by session, movement and order."""

from collections import Counter
from collections.abc import Iterator
from typing import NamedTuple

from setwright.library.names import fold
from setwright.model.people import Athlete
from setwright.model.plan import Session, Week
from setwright.model.reader.keys import fold as fold_key
from setwright.places import Place
from setwright.records.form import training
from setwright.records.planned import Planned, planned


class LineKey(NamedTuple):
    """What a line is known by in every week. ``nth``: session of that name; ``at``: line of that movement."""

    session: str
    nth: int
    who: str | None
    movement: str
    at: int


class Told(NamedTuple):
    """A line of a session as an athlete does it."""

    key: LineKey
    session: Session
    planned: Planned
    athlete: Athlete | None


def lines_of(week: Week) -> Iterator[Told]:
    """Every line of a week, session by session and athlete by athlete, those that are held back at the end.

    A session that is taken in turn twice has the same keys twice.
    """
    places: dict[str, list[Place]] = {}
    for session in (*week.sessions, *week.held_back):
        name = fold_key(session.name or session.title)
        there = places.setdefault(name, [])
        if session.place not in there:
            there.append(session.place)
        for athlete in training(week):
            seen: Counter[str] = Counter()
            who = athlete.name if athlete else None
            for line in planned(week, session, athlete):
                movement = line.line.key or fold(line.line.name)
                key = LineKey(name, there.index(session.place), who, movement, seen[movement])
                seen[movement] += 1
                yield Told(key, session, line, athlete)
