"""How long a session takes, every assumption stated. Seconds, but for a whole session minutes."""

from typing import Final

from setwright.coverage.counts import count_items
from setwright.coverage.shapes import Counts
from setwright.model.plan import Group, Item, Session
from setwright.reading.counting import Counted
from setwright.reading.dose import Rest

REP_S: Final = 3.0
"""One repetition without a written tempo (common practice, no source)."""
REST_S: Final = 120.0
"""Rest between sets or rounds when none is written (common practice, no source)."""
SETUP_S: Final = 60.0
"""Setting up each line or group (common practice, no source: 60 to 90 s)."""
SWAP_S: Final = 10.0
"""Changing over inside a group when nothing is written (common practice, no source)."""
WARM_UP_SET_S: Final = 90.0
"""One warm-up set of a line with its rest (choice, no source)."""


def session_minutes(session: Session, counts: Counts | None = None) -> float:
    """Minutes of a session: warm-up, sets, rests and set-ups by the constants here; no cool-down.

    ``counts``: its doses, where they are counted already.
    """
    counts = count_items(session) if counts is None else counts
    seconds = sum(SETUP_S + entry_seconds(entry, counts) for entry in session.work)
    return (session.warm_up_minutes or 0) + seconds / 60


def entry_seconds(entry: Item | Group, counts: Counts) -> float:
    """Seconds of a line or a group with its rests and its warm-up sets, setting up left out."""
    return _group_seconds(entry, counts) if isinstance(entry, Group) else _item_seconds(entry, counts)


def added_minutes(sets: int, reps: int, *, sides: int = 1) -> float:
    """Minutes of some more straight sets with the rests between them; ``sides`` 2 for each side in turn."""
    return (sets * reps * sides * REP_S + (sets - 1) * REST_S) / 60


def _item_seconds(item: Item, counts: Counts) -> float:
    counted = counts.get(item.place)
    if counted is None:
        return 0.0
    rest = counted.rest_s if counted.rest_known else (counted.sets.low - 1) * REST_S
    return counted.work_s + counted.pause_s + max(rest, 0.0) + warm_up_seconds(item)


def warm_up_seconds(item: Item) -> float:
    """Seconds of the warm-up sets of a line."""
    warm_up = item.warm_up_sets
    if warm_up is None:
        return 0.0
    return WARM_UP_SET_S * (warm_up.count or sum(step.sets for step in warm_up.steps))


def _group_seconds(group: Group, counts: Counts) -> float:
    """By the plan language; in a circuit with ``each`` everybody moves on after the last move too."""
    warm_up = sum(warm_up_seconds(item) for item in group.items)
    if group.time_s is not None:
        return warm_up + group.time_s
    counted = [counts.get(item.place) for item in group.items]
    rounds = group.rounds or len(group.ladder) or max((c.sets.low for c in counted if c), default=1)
    if group.every_s is not None:
        return warm_up + rounds * group.every_s
    moves = sum(_move_seconds(group, c) for c in counted)
    changes = len(group.items) - (group.each_s is None)
    swaps = rounds * changes * rest_seconds(group.between_moves, SWAP_S)
    return warm_up + moves + swaps + (rounds - 1) * rest_seconds(group.rest, REST_S)


def _move_seconds(group: Group, counted: Counted | None) -> float:
    """Work of one member over all rounds."""
    if group.each_s is not None:
        return group.each_s * (group.rounds or 1)
    if counted is None:
        return 0.0
    if group.ladder:
        return sum(group.ladder) * REP_S
    return (counted.work_s + counted.pause_s) * (group.rounds or 1)


def rest_seconds(rest: Rest | None, default: float) -> float:
    """Seconds of a rest as written; ``default`` where no number of seconds is."""
    if rest is None:
        return default
    if rest.kind == "none":
        return 0.0
    return rest.low if rest.kind == "seconds" and rest.low is not None else default
