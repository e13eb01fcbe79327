"""A plan as typed models: a week of sessions, their items, and what the week is for."""

import datetime as dt
from collections.abc import Iterator
from typing import Final, Literal

from pydantic import Field, InstanceOf

from setwright.findings import Finding
from setwright.model.next import NextTime
from setwright.model.own import OwnMovement, Word
from setwright.model.people import Squad
from setwright.model.room import Gym
from setwright.model.stages import Stage
from setwright.model.weekly import DoneBefore, WeeklySets, WeekOf
from setwright.places import Place
from setwright.reading.dose import BARE_PERCENT_OF, Amount, Dose, Load, MaxKind, Rest, Sides, Tempo, WarmUp
from setwright.reading.frozen import Frozen
from setwright.reading.habits import Member

Aim = Literal["general", "size", "strength", "sport", "return"]
TrainingLevel = Literal["beginner", "intermediate", "advanced"]
Day = Literal["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"]
DAYS: tuple[Day, ...] = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")

SHORTEST_DAY: Final = 3
"""Letters from which the beginning of a day's name is read; choice: Mon, Tue, Thurs."""


def day_named(typed: str) -> Day | None:
    """The day that a typed word names, in full or by its first letters; None when it is no day."""
    folded = typed.casefold().rstrip(".")
    return next((d for d in DAYS if len(folded) >= SHORTEST_DAY and d.casefold().startswith(folded)), None)


class Allowed(Frozen):
    """A rule that is silenced here, with the coach's reason."""

    rule: str
    reason: str
    place: Place


class AthleteLoad(Frozen):
    """What an athlete or group lifts in a line: one load for all sets or one a set.

    Empty: no load, on purpose.
    """

    who: str
    place: Place
    loads: tuple[Load, ...] = ()


class Item(Frozen):
    """One movement with its dose. ``name`` as typed; ``key`` is the library's, from ``library.resolve``.

    ``loads`` and ``instead``: those of athletes before those of groups, each person in one of them at most
    unless a line names them. ``none``: what is none this week on purpose, by field.
    """

    name: str
    place: Place
    key: str | None = None
    dose: Dose | None = None
    rest: Rest | None = None
    tempo: Tempo | None = None
    sides: Sides | None = None
    load: Load | None = None
    loads: tuple[AthleteLoad, ...] = ()
    none: tuple[str, ...] = ()
    warm_up: WarmUp | None = None
    next: NextTime | None = None
    priority: int = 2
    for_: tuple[str, ...] = ()
    not_for: tuple[str, ...] = ()
    instead: tuple["Instead", ...] = ()
    kit: tuple[str, ...] = ()
    stop: str | None = None
    allow: tuple[Allowed, ...] = ()
    note: str | None = None
    private_note: str | None = None

    @property
    def line_loads(self) -> tuple[Load, ...]:
        """Every load that the line says of its work sets; the item's own where it has no dose."""
        if self.dose is None:
            return () if self.load is None else (self.load,)
        works = (work for group in self.dose.groups for work in group.every_work)
        return tuple(work.load for work in works if work.load is not None)


class Instead(Frozen):
    """What an athlete or group does in place of a line.

    ``movement``: another one with the dose of the line; ``lines`` has it then once ``library.resolve`` has
    looked it up. Without it ``lines`` is what was typed.
    """

    who: str
    place: Place
    movement: Word | None = None
    lines: tuple[Item, ...] = ()


class Group(Frozen):
    """Movements done in turn: superset, circuit or complex. Times in seconds; ``none`` as in an item."""

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
    none: tuple[str, ...] = ()
    next: NextTime | None = None
    priority: int = 2
    for_: tuple[str, ...] = ()
    not_for: tuple[str, ...] = ()
    stop: str | None = None
    allow: tuple[Allowed, ...] = ()
    note: str | None = None
    private_note: str | None = None

    @property
    def member(self) -> Member:
        """What a line of the group may say."""
        if self.each_s is not None:
            return "each"
        if self.ladder:
            return "ladder"
        return "alone" if self.rounds is None and self.time_s is None else "rounds"


class Swap(Frozen, defer_build=True):
    """A movement of the day that a session is like, and the one that is done in its place."""

    old: Word
    new: Word


class Reading(Frozen, defer_build=True):
    """A line as it is read in one place, and what is wrong with it there."""

    item: Item
    findings: tuple[Finding, ...] = ()


class Change(Frozen, defer_build=True):
    """A line with a new dose for a movement of the day that a session is like.

    What it says depends on where that movement stands, which is known once its name is looked up:
    ``readings`` has one of each kind.
    """

    name: Word
    readings: dict[Member, Reading]


class Reuse(Frozen, defer_build=True):
    """What makes a session out of another one. ``like`` is a day or the name of a session, as typed.

    ``along``: what came along with the work, in words; from ``library.reuse``.
    """

    like: Word
    leave_out: tuple[Word, ...] = ()
    swap: tuple[Swap, ...] = ()
    change: tuple[Change, ...] = ()
    add: tuple[Item | Group, ...] = ()
    along: tuple[str, ...] = ()


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
