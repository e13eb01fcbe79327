"""The dates on which a plan's sessions fall."""

import datetime as dt

from setwright.model.plan import DAYS, Session, Week


def session_date(week: Week, session: Session) -> dt.date | None:
    """The date of a session: its own, else its day in the week that the plan has come to since its start."""
    if session.date or not (week.starts and session.day):
        return session.date
    first = (DAYS.index(session.day) - week.starts.weekday()) % len(DAYS)
    return week.starts + dt.timedelta(days=first, weeks=week.number - 1)
