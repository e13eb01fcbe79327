"""Limits and lists of what to avoid held against what was done: kept, not kept, or not to be said."""

import datetime as dt
from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import Final, Literal, NamedTuple

from setwright.library.table import Library
from setwright.model.people import Athlete, Limit
from setwright.model.plan import Item, Week
from setwright.records.achieved import item_done
from setwright.records.fitting import Fitted, Line
from setwright.rules.avoided_move import Listed, listed
from setwright.rules.limit_broken import met, reached
from setwright.rules.limits import Answer

_ON_LIST: Final[Mapping[str, Answer]] = {"is": "broken", "sounds like": "not known", "ended": "ended"}
Verdict = Literal["kept", "not kept", "not to be said", "nothing done"]


class Against(NamedTuple):
    """A line that was done and is not well inside a limit: its day, movement, and what is known of it.

    ``on`` None: the record has no date. ``said``: "takes the arm 34 deg behind the body", or empty.
    """

    on: dt.date | None
    movement: str
    answer: Answer
    said: str = ""


class LimitKept(NamedTuple):
    """One limit, or a name on a list of what to avoid, and every line that stands against it.

    ``limit`` None: the athlete's own list. ``avoided``: the name on a list, else empty. ``done``: how many
    lines were held against it.
    """

    limit: Limit | None
    avoided: str
    lines: tuple[Against, ...]
    done: int

    @property
    def verdict(self) -> Verdict:
        """Not kept by one line that breaks it; not to be said by one that may."""
        if any(line.answer == "broken" for line in self.lines):
            return "not kept"
        return "not to be said" if self.lines else "kept" if self.done else "nothing done"


def limits_kept(records: Sequence[Fitted], athlete: Athlete, table: Library) -> tuple[LimitKept, ...]:
    """Every limit and list of an athlete, in the order written, held against all that was recorded of them.

    A set of no repetitions was tried and counts. What a record says nothing of, warm-ups, is not held.
    """
    days = [_done(fit, athlete, table) for fit in records]
    number = sum(len(day.sessions[0].work) for day in days)
    found = []
    for limit in athlete.limits:
        if limit.no or limit.angle is not None or limit.load_at_most is not None:
            lines = (line for day in days for line in _against(limit, day, athlete, table))
            found.append(LimitKept(limit, "", tuple(lines), number))
    for at, name in [(one, name) for one in (*athlete.limits, None) for name in (one or athlete).avoid]:
        lines = (line for day in days for line in _avoiding(at, name, listed(day, table, athlete)))
        found.append(LimitKept(at, name, tuple(lines), number))
    return tuple(found)


def _done(fit: Fitted, athlete: Athlete, table: Library) -> Week:
    """A session that was recorded of an athlete as a week of its own, on the day that it was done.

    Loads are those that were lifted, so no gym rounds them.
    """
    theirs = (one for one in fit.athletes if one.is_called(athlete.name))
    work = tuple(_item(line, table) for one in theirs for line in one.lines if line.is_done)
    day = {"work": work, "warm_up": (), "date": fit.record.date or fit.session.date}
    session = fit.session.model_copy(update=day)
    return fit.week.model_copy(update={"sessions": (session,), "held_back": (), "gym": None})


def _item(line: Line, table: Library) -> Item:
    """The line as it was done; without its sets where nothing says how many, or nobody knows the movement."""
    done = line.done
    assert done is not None
    key = line.planned.line.key if line.planned and not done.instead_of else table.find(done.name).key
    return item_done(line, table, tried=True) or Item(name=done.name, place=done.place, key=key)


def _against(limit: Limit, day: Week, athlete: Athlete, table: Library) -> Iterator[Against]:
    """The lines of a day that are not well inside a limit, and those of movements that nobody knows."""
    (session,) = day.sessions
    for one in met(day, table, athlete):
        if one.limit == limit:
            yield Against(session.date, one.task.item.name, one.held.answer, reached(one))
    yield from (
        Against(session.date, line.name, "not known") for line, _ in session.lines() if line.key is None
    )


def _avoiding(limit: Limit | None, name: str, on_lists: Iterable[Listed]) -> Iterator[Against]:
    """The lines of a day that are on a list under a name; ``limit`` None: the athlete's own list."""
    for one in on_lists:
        if one.avoided == name and one.limit == limit:
            yield Against(one.task.session.date, one.task.item.name, _ON_LIST[one.how])
