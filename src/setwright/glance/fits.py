"""Question 1: minutes against the time there, by session and by block, and stations against people."""

from collections.abc import Iterator, Sequence
from typing import Final

from setwright.checked import Checked, CheckedWeek
from setwright.coverage import SessionCover
from setwright.coverage.clock import SETUP_S, entry_seconds
from setwright.glance.shapes import few, told
from setwright.glance.stations import scarce
from setwright.model.plan import Week
from setwright.reading.words import MINUTE_S, listed, number, plural
from setwright.rules.aims import training
from setwright.rules.queues import people_at

RULES: Final = frozenset({"session-over-time", "too-few-stations", "rest-shorter-than-the-floor-allows"})
"""The rules about time and places."""
MOST_SESSIONS: Final = 4
"""Sessions told block by block; more are counted (choice)."""
MOST_STATIONS: Final = 6
"""Stations told, those that hold fewest first; more are counted (choice)."""


def fits(checked: Checked, one: CheckedWeek) -> Iterator[str]:
    """Sessions, blocks, stations."""
    sessions = one.coverage.sessions
    if not sessions:
        yield "No training this week."
        return
    yield _minutes(sessions)
    blocks = "; ".join(map(_blocks, sessions[:MOST_SESSIONS]))
    more = len(sessions) - MOST_SESSIONS
    uncounted = f"; and {plural(more, 'more session')}" if more > 0 else ""
    yield f"Minutes by block: {blocks}{uncounted}."
    yield _stations(one)
    yield from told(checked.findings, RULES)


def _minutes(sessions: Sequence[SessionCover]) -> str:
    used = ", ".join(map(_used, sessions))
    over = [f"{session.session.title} {_over(session)} min over" for session in sessions if _over(session)]
    unwritten = [session.session.title for session in sessions if session.session.minutes is None]
    if over:
        return f"{used}: {listed(over)}."
    return f"{used}: no minutes are written for {few(unwritten)}." if unwritten else f"{used}: it fits."


def _used(session: SessionCover) -> str:
    used, there = round(session.minutes), session.session.minutes
    return f"{session.session.title} {used}{'' if there is None else f' of {number(there)}'} min"


def _over(session: SessionCover) -> int:
    """Whole minutes beyond those written, 0 where none are."""
    there = session.session.minutes
    return 0 if there is None else max(round(session.minutes - there), 0)


def _blocks(covered: SessionCover) -> str:
    session = covered.session
    counts = covered.counts
    blocks = [round((SETUP_S + entry_seconds(entry, counts)) / MINUTE_S) for entry in session.work]
    warm_up = [f"warm-up {number(session.warm_up_minutes)}"] if session.warm_up_minutes else []
    return f"{session.title} {', '.join([*warm_up, *map(str, blocks)])}"


def _stations(one: CheckedWeek) -> str:
    gym, week = one.week.gym, one.week
    people = people_in(week)
    if not people:
        return "Nobody says how many train, so stations are not counted."
    if gym is None:
        return f"{_people(people)}, no gym written, so stations are not counted."
    short: dict[str, int] = {}
    for work in one.coverage.works:
        for place, held in scarce(gym, work, people_at(week, work)):
            short[place] = min(held, short.get(place, held))
    if not short:
        return f"{_people(people)}: every station that the gym file counts holds them."
    places = [f"{need} {short[need]}" for need in sorted(short, key=lambda need: short[need])]
    return f"{_people(people)}; at a time fit: {few(places, MOST_STATIONS)}."


def people_in(week: Week) -> int:
    """How many train: those of the squad who take part, else the number written; 0 when nobody says."""
    return len(training(week)) or week.people or 0


def _people(people: int) -> str:
    return "1 person" if people == 1 else f"{people} people"
