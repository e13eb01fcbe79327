"""A plan as typed models: a week of sessions, their items, and what the week is for."""

import datetime as dt
from typing import Literal

from pydantic import Field

from setwright.model.own import OwnMovement
from setwright.model.people import Squad
from setwright.model.room import Gym
from setwright.places import Place
from setwright.reading.dose import Amount, Dose, Load, MaxKind, Rest, Sides, Tempo, WarmUp
from setwright.reading.frozen import Frozen

Aim = Literal["general", "size", "strength", "sport", "return"]
TrainingLevel = Literal["beginner", "intermediate", "advanced"]
Day = Literal["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"]
DAYS: tuple[Day, ...] = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")


class Allowed(Frozen):
    """A rule that is silenced here, with the coach's reason."""

    rule: str
    reason: str
    place: Place


class Item(Frozen):
    """One movement with its dose. ``name`` as typed; ``key`` is the library's, from ``library.resolve``."""

    name: str
    place: Place
    key: str | None = None
    dose: Dose | None = None
    rest: Rest | None = None
    tempo: Tempo | None = None
    sides: Sides | None = None
    load: Load | None = None
    warm_up: WarmUp | None = None
    next: str | None = None
    priority: int = 2
    for_: tuple[str, ...] = ()
    not_for: tuple[str, ...] = ()
    kit: tuple[str, ...] = ()
    stop: str | None = None
    allow: tuple[Allowed, ...] = ()
    note: str | None = None
    private_note: str | None = None


class Group(Frozen):
    """Movements done in turn: a superset, a circuit or a complex. Times in seconds."""

    kind: Literal["superset", "circuit", "complex"]
    place: Place
    items: tuple[Item, ...]
    rounds: int | None = None
    rest: Rest | None = None
    between_moves: Rest | None = None
    each_s: float | None = None
    time_s: float | None = None
    cap: Amount | None = None
    every_s: float | None = None
    ladder: tuple[int, ...] = ()
    load: Load | None = None
    next: str | None = None
    priority: int = 2
    for_: tuple[str, ...] = ()
    not_for: tuple[str, ...] = ()
    stop: str | None = None
    allow: tuple[Allowed, ...] = ()
    note: str | None = None
    private_note: str | None = None


class Session(Frozen):
    """One session; ``place`` is its first key (day, name or work). Minutes are whole or decimal minutes."""

    place: Place
    work_place: Place
    day: Day | None = None
    date: dt.date | None = None
    name: str | None = None
    minutes: float | None = None
    start: str | None = None
    where: str | None = None
    after: str | None = None
    days_to_match: int | None = None
    people: int | None = None
    staff: int | None = None
    warm_up_minutes: float | None = None
    warm_up: tuple[Item, ...] = ()
    work: tuple[Item | Group, ...] = ()
    cool_down: tuple[str, ...] = ()
    if_interrupted: str | None = None
    allow: tuple[Allowed, ...] = ()
    note: str | None = None
    private_note: str | None = None

    @property
    def title(self) -> str:
        """What a coach calls it: the day, else the name, else "the session"."""
        return self.day or self.name or "the session"

    def items(self) -> tuple[Item, ...]:
        """Every work item in order, those inside groups too."""
        return tuple(
            item for entry in self.work for item in (entry.items if isinstance(entry, Group) else (entry,))
        )


def is_for(entry: Item | Group, called: frozenset[str]) -> bool:
    """Whether a line or group is for the person who goes by these names: their own, and their groups'."""
    return (not entry.for_ or bool(called & set(entry.for_))) and not called & set(entry.not_for)


class Week(Frozen):
    """A plan: one week of sessions, or a single session. ``place`` is the ``plan`` key.

    ``unread_movements``: names under ``movements:`` that could not be read.
    """

    name: str
    place: Place
    sessions: tuple[Session, ...]
    starts: dt.date | None = None
    unit: Literal["kg", "lb"] | None = None
    dose_order: Literal["sets x reps", "reps x sets"] | None = None
    percent_of: MaxKind = "tested max"
    sides: Literal["each", "in all"] | None = None
    aim: Aim | None = None
    aim_place: Place | None = None
    sport: str | None = None
    level: TrainingLevel | None = None
    focus: tuple[str, ...] = ()
    sets_a_week: dict[str, str] = Field(default_factory=dict)
    follows: str | None = None
    last_week: dict[str, str] = Field(default_factory=dict)
    own_movements: tuple[OwnMovement, ...] = ()
    unread_movements: tuple[str, ...] = ()
    people: int | None = None
    ages: str | None = None
    staff: int | None = None
    squad: Squad | None = None
    gym: Gym | None = None
    next: str | None = None
    missed_day: Literal["resume", "skip", "restart the week"] = "resume"
    if_interrupted: str | None = None
    allow: tuple[Allowed, ...] = ()
    note: str | None = None
    private_note: str | None = None
