"""A plan as typed models: a week of sessions, their items, and what the week is for."""

import datetime as dt
from collections.abc import Iterator
from typing import Literal

from pydantic import Field, InstanceOf

from setwright.model.days import DAYS, Day, day_named
from setwright.model.lines import Allowed, AthleteLoad, Group, Instead, Item
from setwright.model.next import NextTime
from setwright.model.own import OwnMovement, Word
from setwright.model.people import Squad
from setwright.model.reused import Change, Reading, Reuse, Swap
from setwright.model.room import Gym
from setwright.model.stages import Stage
from setwright.model.weekly import DoneBefore, WeeklySets, WeekOf
from setwright.places import Place
from setwright.reading.dose import BARE_PERCENT_OF, MaxKind
from setwright.reading.frozen import Frozen

__all__ = [
    "DAYS", "Aim", "Allowed", "AthleteLoad", "Change", "Day", "Group", "Instead", "Item", "Lighter",
    "Reading", "Reuse", "Session", "Swap", "TrainingLevel", "Week", "day_named",
]  # fmt: skip

Aim = Literal["general", "size", "strength", "sport", "return"]
TrainingLevel = Literal["beginner", "intermediate", "advanced"]


class Session(Frozen):
    """One session; ``place`` is its first key (day, name or work). Minutes are whole or decimal minutes.

    ``reuse``: what was typed when it is like another one; ``work`` is then filled by ``library.resolve``.
    Its model is built when a plan first needs it, so that no other plan waits for it.
    """

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
    stage: Word | None = None
    work: tuple[Item | Group, ...] = ()
    reuse: InstanceOf[Reuse] | None = None
    cool_down: tuple[str, ...] = ()
    if_interrupted: str | None = None
    allow: tuple[Allowed, ...] = ()
    note: str | None = None
    private_note: str | None = None

    @property
    def title(self) -> str:
        """What a coach calls it: the day, else the name, else "the session"."""
        return self.day or self.name or "the session"

    def lines(self) -> Iterator[tuple[Item, Group | None]]:
        """Every work item in order with the group it stands in."""
        for entry in self.work:
            if isinstance(entry, Group):
                yield from ((item, entry) for item in entry.items)
            else:
                yield entry, None

    def is_called(self, typed: str) -> bool:
        """Whether a typed word is the day or the name of this session."""
        named = self.name is not None and self.name.casefold() == typed.casefold()
        return named or (self.day is not None and self.day == day_named(typed))

    def items(self) -> tuple[Item, ...]:
        """Every work item in order, those inside groups too."""
        return tuple(item for item, _ in self.lines())


class Lighter(Frozen):
    """What is done less of in a lighter week; ``load_percent`` is what is left of the load."""

    half_the_sets: bool = False
    load_percent: float | None = None
    no_training: bool = False

    @property
    def text(self) -> str:
        """What is less, in words: "half the sets and 80 % of the load"."""
        if self.no_training:
            return "no training"
        load = f"{self.load_percent:g} % of the load" if self.load_percent is not None else ""
        return " and ".join(filter(None, ("half the sets" if self.half_the_sets else "", load)))


class Lifted(Frozen):
    """What somebody lifted last time in the movement of a line that asks for it; ``place``: of the line."""

    who: str
    place: Place
    kg: float


class Week(Frozen):
    """One week of a plan, or a single session. ``place`` is the ``plan`` key.

    ``number``: which week it is, of ``of``. Sessions are those of this week, made lighter where ``lighter``.
    ``lighter_every``: what is less in every so many weeks. ``block``: what a plan of one week is a week of.
    ``held_back``: sessions of stages that are not in force (``model.in_force``), never counted or printed.
    ``lifted``: what was lifted last time, from the records (``records.last_time``).
    ``unread_movements``: names under ``movements:`` that could not be read.
    """

    name: str
    place: Place
    sessions: tuple[Session, ...]
    number: int = 1
    of: int = 1
    lighter: Lighter | None = None
    lighter_every: dict[int, Lighter] = Field(default_factory=dict)
    held_back: tuple[Session, ...] = ()
    stages: tuple[Stage, ...] = ()
    starts: dt.date | None = None
    unit: Literal["kg", "lb"] | None = None
    dose_order: Literal["sets x reps", "reps x sets"] | None = None
    percent_of: MaxKind | None = None
    sides: Literal["each", "in all"] | None = None
    aim: Aim | None = None
    aim_place: Place | None = None
    sport: str | None = None
    level: TrainingLevel | None = None
    focus: tuple[str, ...] = ()
    sets_a_week: tuple[WeeklySets, ...] = ()
    follows: str | None = None
    follows_place: Place | None = None
    block: WeekOf | None = None
    last_week: tuple[DoneBefore, ...] = ()
    lifted: tuple[Lifted, ...] = ()
    own_movements: tuple[OwnMovement, ...] = ()
    unread_movements: tuple[str, ...] = ()
    people: int | None = None
    ages: str | None = None
    staff: int | None = None
    squad: Squad | None = None
    gym: Gym | None = None
    next: NextTime | None = None
    missed_day: Literal["resume", "skip", "restart the week"] = "resume"
    if_interrupted: str | None = None
    allow: tuple[Allowed, ...] = ()
    note: str | None = None
    private_note: str | None = None

    @property
    def title(self) -> str:
        """The plan's name, and in a plan of several weeks which one this is."""
        return self.name if self.of == 1 else f"{self.name}, week {self.number} of {self.of}"

    @property
    def max_kind(self) -> MaxKind:
        """The max that a percent without further words is taken of."""
        return self.percent_of or BARE_PERCENT_OF


def asks_for_last_time(week: Week) -> bool:
    """Whether a load of the week is more or less than last time."""
    items = [item for session in week.sessions for item in session.items()]
    items += [line for item in items for one in item.instead for line in one.lines]
    loads = [load for item in items for load in item.line_loads]
    loads += [load for item in items for own in item.loads for load in own.loads]
    return any(load.kind == "last" for load in loads)
