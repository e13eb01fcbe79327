"""Each line of a session as a Work: how many sets it holds, and how many of them are hard."""

import math
from typing import Final

from setwright.coverage.shapes import Counts, Sets, Work
from setwright.library.table import Library
from setwright.model.plan import Group, Item, Session
from setwright.reading.counting import Counted, count
from setwright.reading.dose import Span

NEVER_HARD: Final = frozenset({"explosive lift", "jump", "throw", "carry", "locomotion"})
"""Patterns whose sets are never hard sets, whatever the line says (choice, no source)."""


def count_items(session: Session, library: Library | None = None) -> Counts:
    """The dose of every work item that has one, counted, by the item's place.

    Without the library no movement is known, so hard sets are counted for explosive work too.
    """
    return {item.place: _count(item, library) for item, _ in session.lines() if item.dose is not None}


def works(session: Session, day: int, library: Library, counts: Counts) -> tuple[Work, ...]:
    """The works of a session in order; lines whose movement or dose could not be read are left out."""
    done = []
    for item, group in session.lines():
        if item.key is None or not readable(item, group):
            continue
        counted = counts.get(item.place)
        sets, hard = grouped(counted, group)
        stated = counted is not None and counted.effort_stated
        done.append(Work(day, session, item, group, library.movement(item.key), sets, hard, stated))
    return tuple(done)


def readable(item: Item, group: Group | None) -> bool:
    """Whether movement and dose are known; in a timed circuit the group is the dose."""
    return item.key is not None and (
        item.dose is not None or (group is not None and group.each_s is not None)
    )


def _count(item: Item, library: Library | None) -> Counted:
    assert item.dose is not None
    pattern = library.movement(item.key)["pattern"] if library and item.key else ""
    return count(item.dose, counts=pattern not in NEVER_HARD)


def grouped(counted: Counted | None, group: Group | None) -> tuple[Sets, Sets]:
    """Sets and hard sets of a member over all rounds of its group.

    Rounds against the clock without an effort are "0 to n": nobody knows how hard they were.
    """
    sets, hard = (_sets(counted.sets), _sets(counted.hard)) if counted else (Sets(1, 1), Sets(0, 1))
    if group is None:
        return sets, hard
    if on_the_clock(group) and not (counted and counted.effort_stated):
        hard = Sets(0, hard.high)
    if group.time_s is not None:
        return Sets(sets.low, math.inf), Sets(0, math.inf if hard.high else 0)
    rounds = group.rounds or len(group.ladder) or 1
    return sets.times(rounds), hard.times(rounds)


def on_the_clock(group: Group | None) -> bool:
    """Whether a group goes by the clock or up a ladder, so that nobody knows how hard its sets are."""
    return group is not None and bool(group.each_s or group.time_s or group.every_s or group.ladder)


def _sets(span: Span) -> Sets:
    return Sets(span.low, math.inf if span.high is None else span.high)
