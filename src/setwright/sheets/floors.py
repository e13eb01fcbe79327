"""The timetable of each session on the sheets: that of ``setwright floor``, worked out once a print."""

from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from functools import wraps
from typing import Final, ParamSpec, TypeVar

from setwright.floor.room import Floor
from setwright.floor.today import Change, NotHere, today
from setwright.library.table import Library
from setwright.model.plan import Session, Week
from setwright.places import Place

Args = ParamSpec("Args")
Made = TypeVar("Made")

_ON_THE_DAY: Final[ContextVar[Mapping[Place, Change] | None]] = ContextVar("what is otherwise", default=None)
_KNOWN: Final[ContextVar[dict[Place, Floor | None] | None]] = ContextVar("timetables", default=None)


def floor_of(session: Session, week: Week, table: Library) -> Floor | None:
    """Its timetable; None where the plan names no gym, or nobody says who comes."""
    known = _KNOWN.get()
    if known is None:
        return _worked_out(session, week, table)
    if session.place not in known:
        known[session.place] = _worked_out(session, week, table)
    return known[session.place]


def once_a_print(make: Callable[Args, Made]) -> Callable[Args, Made]:
    """A function that makes the sheets of one plan, for all of which a timetable is worked out once."""

    @wraps(make)
    def made(*args: Args.args, **kwargs: Args.kwargs) -> Made:
        before = _KNOWN.set({})
        try:
            return make(*args, **kwargs)
        finally:
            _KNOWN.reset(before)

    return made


@contextmanager
def on_the_day(changes: Mapping[Place, Change]) -> Iterator[None]:
    """Sheets made meanwhile are those of a day on which something is otherwise in some sessions."""
    before = _ON_THE_DAY.set(changes)
    try:
        yield
    finally:
        _ON_THE_DAY.reset(before)


def _worked_out(session: Session, week: Week, table: Library) -> Floor | None:
    if week.gym is None:
        return None
    change = (_ON_THE_DAY.get() or {}).get(session.place, Change())
    try:
        return today(session, week, table, change).floor
    except NotHere:
        return None
