"""What to leave out when time is short: lowest priority first, and of equals the later one."""

from dataclasses import dataclass
from typing import Final

from setwright.coverage.clock import session_minutes
from setwright.coverage.counts import count_items
from setwright.coverage.cut import KEEP, USUAL, leaves
from setwright.coverage.shapes import Counts
from setwright.model.plan import Group, Item, Session
from setwright.model.theirs import Known, entry_of, meant
from setwright.sheets.phrases import say
from setwright.sheets.words import letter, listed

MOST_LEFT_OUT: Final = 2
"""Things named to leave out (choice: what can be taken in at a glance)."""


@dataclass(frozen=True, slots=True)
class _Droppable:
    """A block, or one line of a group that matters less than its group."""

    label: str
    priority: int
    place: int
    without: tuple[Item | Group, ...]


def short_of_time(session: Session, athlete: Known) -> str | None:
    """The sentence about what to drop first, with the minutes each saves; None when nothing may go.

    At least one block always stays, and nothing of priority 1 is named.
    """
    blocks = [(n, entry) for n, entry in enumerate(session.work) if meant(entry, athlete)]
    whole = [_whole(session, n, entry) for n, entry in blocks]
    parts = [
        part
        for n, entry in blocks
        if isinstance(entry, Group)
        for part in _members(session, n, entry, athlete)
    ]
    first = sorted(
        (one for one in whole + parts if one.priority > KEEP), key=lambda one: leaves(one.priority, one.place)
    )
    first = first[: min(MOST_LEFT_OUT, len(blocks) - 1)]
    if not first:
        return None
    counts = count_items(_as_done(session, session.work, athlete))
    saved = [_saved(session, one, counts, athlete) for one in first]
    name = "session.leave_out" if len(first) == 1 else "session.leave_out_two"
    drop = say(name, line=first[0].label, minutes=saved[0], second=first[-1].label, more=saved[-1])
    kept = [one.label for one in whole if one.priority == KEEP]
    return f"{drop} {say('session.keep', lines=listed(kept))}" if kept else drop


def _whole(session: Session, place: int, entry: Item | Group) -> _Droppable:
    without = session.work[:place] + session.work[place + 1 :]
    return _Droppable(str(place + 1), entry.priority, place, without)


def _members(session: Session, place: int, group: Group, athlete: Known) -> list[_Droppable]:
    """The lines of a group that go before the group itself."""
    found = []
    for n, item in enumerate(group.items):
        if item.priority > max(group.priority, USUAL) and meant(item, athlete):
            left = group.model_copy(update={"items": group.items[:n] + group.items[n + 1 :]})
            without = (*session.work[:place], left, *session.work[place + 1 :])
            found.append(_Droppable(f"{place + 1}{letter(n)}", item.priority, place, without))
    return found


def _saved(session: Session, one: _Droppable, counts: Counts, athlete: Known) -> int:
    """Whole minutes, at least 1."""
    longer, shorter = (_as_done(session, work, athlete) for work in (session.work, one.without))
    return max(round(session_minutes(longer, counts) - session_minutes(shorter, counts)), 1)


def _as_done(session: Session, work: tuple[Item | Group, ...], athlete: Known) -> Session:
    """The session with its work as this person does it."""
    done = tuple(own for entry in work for own in entry_of(entry, athlete))
    return session.model_copy(update={"work": done})
