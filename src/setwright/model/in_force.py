"""Which sessions of a week are in force: those of a stage only while it is the current one."""

from setwright.model.plan import Session, Week
from setwright.model.stages import current


def in_force(week: Week) -> Week:
    """The week with the sessions of every stage but the current one moved to ``held_back``."""
    now = current(week.stages, week.number)

    def holds(session: Session) -> bool:
        return session.stage is None or (now is not None and now.is_called(session.stage.text))

    sessions = tuple(session for session in week.sessions if holds(session))
    held_back = tuple(session for session in week.sessions if not holds(session))
    return week.model_copy(update={"sessions": sessions, "held_back": held_back})
