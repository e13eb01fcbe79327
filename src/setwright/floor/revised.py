"""A week of the plan with one session as it is done today."""

from setwright.floor.today import Today
from setwright.model.plan import Session, Week


def session_of_today(today: Today) -> Session:
    """The session with what is kept of it, in today's minutes, and nothing in it for who is absent.

    Its blocks are numbered anew.
    """
    session = today.floor.session
    dropped = {block.number for block in today.cut.dropped} if today.cut else ()
    work = tuple(
        entry.model_copy(update={"not_for": (*entry.not_for, *today.absent)})
        for number, entry in enumerate(session.work, 1)
        if number not in dropped
    )
    return session.model_copy(update={"work": work})


def week_of_today(today: Today) -> Week:
    """The week with that session in the place of the plan's."""
    done = session_of_today(today)
    sessions = (done if one.place == done.place else one for one in today.week.sessions)
    return today.week.model_copy(update={"sessions": tuple(sessions)})
