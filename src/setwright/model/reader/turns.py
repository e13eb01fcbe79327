"""Sessions without a day, taken in turn through the training days of all weeks."""

from collections.abc import Mapping
from typing import NamedTuple

from setwright.model.plan import DAYS, Day, Session
from setwright.model.reader.keys import Keys
from setwright.model.reader.session import read_day
from setwright.reading import week_rules as rules
from setwright.reading.fields import placed_names
from setwright.reading.gathering import Gathering
from setwright.reading.nearest import nearest
from setwright.reading.nodes import Scalar
from setwright.reading.weeks import say_weeks


class Turns(NamedTuple):
    """The days of a week, in their order, and the names of the sessions that are taken in turn."""

    days: tuple[Day, ...]
    names: tuple[Scalar, ...]


def read_turns(read: Keys, found: Gathering) -> Turns | None:
    """``training days`` and ``rotate``, or None when neither is written or one is missing."""
    node = read.values.pop("training_days", None)
    names = read.values.pop("rotate", None)
    typed = () if node is None else placed_names(node, found)
    days = {day for name in typed if (day := read_day(name, found, lead=""))}
    for there, missing, example in (
        ("training days", "rotate", "`rotate: [A, B]` with the names of the sessions without a day"),
        ("rotate", "training days", "`training days: [Monday, Wednesday, Friday]`"),
    ):
        if there in read.keys and missing not in read.keys:
            message = f"`{there}` is written, and `{missing}` is not"
            found.say(rules.TURNS, read.keys[there].place, message, f"write {example}")
    return Turns(tuple(sorted(days, key=DAYS.index)), names) if days and names else None


def dealt(sessions: tuple[Session, ...], turns: Turns | None, before: int) -> tuple[Session, ...]:
    """The sessions of a week, those taken in turn on their days; ``before``: training weeks before it.

    A name that no session carries leaves its day empty (``check_turns`` has said so).
    """
    if turns is None:
        return sessions
    in_turn = {name.text.casefold() for name in turns.names}
    waiting = {
        _name(session): session for session in sessions if _waits(session) and _name(session) in in_turn
    }
    others = tuple(session for session in sessions if session not in waiting.values())
    first = before * len(turns.days)
    chosen = (
        (day, waiting.get(turns.names[(first + at) % len(turns.names)].text.casefold()))
        for at, day in enumerate(turns.days)
    )
    return (*others, *(session.model_copy(update={"day": day}) for day, session in chosen if session))


def check_turns(weeks: Mapping[int, tuple[Session, ...]], turns: Turns | None, found: Gathering) -> None:
    """Faults of a rotation: a name that no session of some week carries, or several, or one with a day."""
    for name in () if turns is None else turns.names:
        called = {
            week: [session for session in sessions if _name(session) == name.text.casefold()]
            for week, sessions in weeks.items()
        }
        missing = [week for week, sessions in called.items() if not sessions]
        most = max(called.values(), key=len)
        if missing:
            message = f"no session is called {name.text} in {say_weeks(missing)}"
            known = [session.name for sessions in weeks.values() for session in sessions if session.name]
            near = [] if most else nearest(name.text, known)
            change = (
                f"write `{near[0]}`"
                if near
                else f"write `- name: {name.text}` under `sessions:`, without `only in`"
            )
        elif len(most) > 1:
            message, change = f"{len(most)} sessions are called {name.text}", "give each a name of its own"
        elif not _waits(most[0]):
            message = f"{name.text} is taken in turn and has a day of its own"
            change = "take its `day` and `date` out, or take it out of `rotate`"
        else:
            continue
        found.say(rules.TURNS, name.place, message, change)


def _name(session: Session) -> str:
    return (session.name or "").casefold()


def _waits(session: Session) -> bool:
    """Whether a session has no day yet."""
    return session.day is None and session.date is None
