"""What the reports on a week share: their sections, and how sessions and loads are told."""

import datetime as dt
from typing import Final, NamedTuple

from setwright.model.plan import Session
from setwright.reading.words import listed
from setwright.records.fitting import Fitted
from setwright.records.review import LookBack, Review, Reviewed
from setwright.records.trend import Trend

NEXT: Final = {
    "resume": "Missed, and taken up next: {}.",
    "skip": "Missed, and left out: {}.",
    "restart the week": "Missed, so the week starts again: {}.",
}
"""What follows from missed sessions, by the plan's ``missed day``."""


class Section(NamedTuple):
    """A heading with its lines."""

    head: str
    lines: tuple[str, ...]


def day(session: Session, on: dt.date | None) -> str:
    """A session with its date: "Monday, 2027-11-15"."""
    return f"{session.title}, {on}" if on else session.title


def record_of(review: Review, session: Session) -> Fitted | None:
    """The record of a session; None where none is kept."""
    return next((fit for fit in review.done.records if fit.session is session), None)


def came(one: Reviewed) -> str:
    """How often an athlete came: "2 of 3 sessions"."""
    return f"{one.came} of {one.planned_sessions} session{'' if one.planned_sessions == 1 else 's'}"


def loads_of(found: LookBack, review: Review, name: str) -> tuple[Trend, ...]:
    """How an athlete's loads went up to the end of a week, where a movement is on record more than once."""
    last = max((fit.record.date for fit in review.done.records if fit.record.date), default=None)
    so_far = (
        trend._replace(points=tuple(point for point in trend.points if last and point.on <= last))
        for trend in dict(found.loads).get(name, ())
    )
    return tuple(trend for trend in so_far if len(trend.points) > 1)


def comes_next(review: Review) -> tuple[str, ...]:
    """What follows from missed sessions; nothing where none was missed."""
    missed = review.done.missed
    return (NEXT[review.done.week.missed_day].format(listed(list(missed))),) if missed else ()
