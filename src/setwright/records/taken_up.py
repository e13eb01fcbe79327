"""Sessions that were missed put first in the week that comes; the others follow in their order."""

from collections.abc import Collection, Iterator
from typing import Final, NamedTuple

from setwright.model.plan import DAYS, Session, Week, day_named
from setwright.model.reader.keys import fold
from setwright.places import Place
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.tree import read_tree
from setwright.records.edits import Edits

SLOT: Final = ("day", "date", "start")
"""Keys of a session that belong to the day and not to what is done on it."""


class TakenUp(NamedTuple):
    """The text with the sessions on their new days, and each session with its day, in the order of the week.

    ``days`` is empty where the order stays, or can't be changed by the days alone.
    """

    text: str
    days: tuple[tuple[Session, Session], ...]


def taken_up(file: str, text: str, week: Week, missed: Collection[Session]) -> TakenUp:
    """The text of the week that comes with the ``missed`` sessions of the week before first.

    Days, dates and starting times stay where they are in the week; the sessions move.
    """
    entries = dict(_entries(read_tree(file, text).root))
    slots = {one: _slot(entry) for one, entry in entries.items() if "day" in _slot(entry)}
    there = sorted((one for one in week.sessions if one.place in slots), key=_weekday)
    first = [one for one in there if any(_is_same(one, other) for other in missed)]
    order = [*first, *(one for one in there if one not in first)]
    moves = [(session, slot) for session, slot in zip(order, there, strict=True) if session is not slot]
    keys = {tuple(slots[one.place]) for pair in moves for one in pair}
    if len(keys) != 1:
        return TakenUp(text, ())
    edits = Edits(text)
    for session, slot in moves:
        for key, value in slots[session.place].items():
            edits.take(value, slots[slot.place][key])
    days = {session.day: slot.day for session, slot in moves}
    for value in (like for entry in entries.values() if (like := _typed(entry).get("like"))):
        edits.put(value, days.get(day_named(value.text)) or value.text)
    return TakenUp(edits.text(), tuple(zip(order, there, strict=True)))


def _is_same(one: Session, other: Session) -> bool:
    return fold(one.name or one.title) == fold(other.name or other.title)


def _weekday(session: Session) -> int:
    return DAYS.index(session.day) if session.day else len(DAYS)


def _slot(entry: Pairs) -> dict[str, Scalar]:
    """What is typed of a session's day."""
    typed = _typed(entry)
    return {name: typed[name] for name in SLOT if name in typed}


def _typed(entry: Pairs) -> dict[str, Scalar]:
    return {fold(key.text): value for key, value in entry.pairs if isinstance(value, Scalar)}


def _entries(root: Node | None) -> Iterator[tuple[Place, Pairs]]:
    """The sessions of a plan by their places."""
    for key, value in root.pairs if isinstance(root, Pairs) else ():
        for entry in value.nodes if fold(key.text) == "sessions" and isinstance(value, Listing) else ():
            if isinstance(entry, Pairs) and entry.pairs:
                yield entry.pairs[0][0].place, entry
