"""A clinician's limits held against movements: inside, at the limit, broken, or not known."""

import datetime as dt
from collections.abc import Mapping
from typing import Final, Literal, NamedTuple

from setwright.coverage import Movement
from setwright.library.names import fold, split
from setwright.model.people import Athlete, Limit
from setwright.model.plan import DAYS, Item, Session, Week
from setwright.reading.measures import Unit

Answer = Literal["inside", "at the limit", "broken", "not known", "ended"]

TOLERANCE_DEG: Final = 5.0
"""Degrees about a limit within which a movement is "at the limit" (choice, no source)."""

ANGLES: Final[Mapping[str, str]] = {
    "arm behind": "arm_behind",
    "arm up": "arm_up",
    "arm across": "arm_across",
    "arm turned out": "arm_turned_out",
}
"""The library's extreme for each angle that a limit names."""

_ARMS_IDLE: Final = frozenset({
    "squat", "lunge", "knee extension", "knee flexion", "hinge", "calf raise", "hip abduction",
    "hip adduction", "jump", "trunk brace", "trunk flexion", "locomotion",
})  # fmt: skip
"""Patterns that leave the arms alone where the hands are free."""


class Held(NamedTuple):
    """What became of one limit: the answer, and the greatest angle reached in degrees where one is known.

    ``asked``: of a limit on the load, what the line asks for, in words.
    """

    answer: Answer
    reached_deg: float | None = None
    asked: str = ""


def hold(limit: Limit, movement: Movement, *, tolerance_deg: float = TOLERANCE_DEG) -> Held:
    """A limit on an angle or a kind of work held against a movement, whatever its load and its side.

    Angles are the greatest along the movement's arm path (degrees, ``engine.extremes``); a movement without
    a path is not known, unless its arms have nothing to do.
    """
    if limit.no:
        bans = movement.get("banned_by")
        return Held("not known" if bans is None else "broken" if set(limit.no) & set(bans) else "inside")
    if limit.angle is None or limit.at_most_deg is None:
        return Held("inside")
    if not movement["scored"]:
        return Held("inside" if _arms_idle(movement) else "not known")
    extreme = movement["extremes"][ANGLES[limit.angle]]
    if extreme is None:
        return Held("not known")
    over = extreme["max"] - limit.at_most_deg
    answer: Answer = (
        "broken" if over > tolerance_deg else "at the limit" if over > -tolerance_deg else "inside"
    )
    return Held(answer, extreme["max"])


def nears(movement: Movement, athlete: Athlete, *, touching: bool = False) -> bool:
    """Whether the movement breaks a limit of the athlete, comes near it, or can't be held against it.

    ``touching`` True: one that is just at a limit is taken as inside it.
    """
    inside = ("inside", "at the limit") if touching else ("inside",)
    return any(hold(limit, movement).answer not in inside for limit in athlete.limits)


def avoids(athlete: Athlete) -> tuple[str, ...]:
    """The names of what an athlete is to avoid, as typed: on their list and under their limits."""
    return (*athlete.avoid, *(name for limit in athlete.limits for name in limit.avoid))


def sounds_like(avoided: str, name: str) -> bool:
    """Whether the name of a movement holds every word of a name on a list of what to avoid."""
    return {fold(word) for word in split(avoided)} <= {fold(word) for word in split(name)}


def touches(limit: Limit, item: Item, movement: Movement, athlete: Athlete) -> bool:
    """Whether a line works the side that a limit is for; a limit without a side is for both."""
    if limit.side is None or movement["sides"] == "both" or item.dose is None:
        return True
    kinds = {group.sides.kind if group.sides else "each" for group in item.dose.groups}
    sides = {_side(kind, athlete) for kind in kinds}
    return limit.side in sides or None in sides


def unit_of(limit: Limit, week: Week) -> Unit | Literal["%"] | None:
    """The unit of a limit on the load: its own ("kg", "lb" or "%"), else the squad's, else the plan's."""
    return limit.unit or (week.squad and week.squad.unit) or week.unit


def has_ended(limit: Limit, week: Week, session: Session) -> bool:
    """Whether the day behind ``until`` lies before the session; without dates in the plan it never does."""
    on = date_of(week, session)
    return limit.until != "cleared" and on is not None and on > dt.date.fromisoformat(limit.until)


def date_of(week: Week, session: Session) -> dt.date | None:
    """The date of a session: its own, else from the plan's ``starts`` and its day, else None."""
    if session.date or not (week.starts and session.day):
        return session.date
    days = (DAYS.index(session.day) - week.starts.weekday()) % len(DAYS)
    return week.starts + dt.timedelta(days=days)


def _side(kind: str, athlete: Athlete) -> str | None:
    """Which side a line works; None for both, or where the weaker side is not known."""
    if kind in {"left", "right"}:
        return kind
    if kind in {"weaker", "stronger"} and athlete.weaker_side:
        other = "left" if athlete.weaker_side == "right" else "right"
        return athlete.weaker_side if kind == "weaker" else other
    return None


def _arms_idle(movement: Movement) -> bool:
    return movement["pattern"] in _ARMS_IDLE and movement["hands"] == "free"
