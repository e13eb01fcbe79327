"""The squad: who trains, and what limits hold for them."""

import datetime as dt
from collections.abc import Mapping
from typing import Final, Literal

from pydantic import Field

from setwright.model.stationery import Stationery
from setwright.places import Place
from setwright.reading.dose import Load, MaxKind
from setwright.reading.frozen import Frozen

How = Literal["tested", "estimated"]
HOW_KINDS: Final[Mapping[How, MaxKind]] = {"tested": "tested max", "estimated": "estimated max"}
LimitAngle = Literal["arm behind", "arm up", "arm across", "arm turned out"]


class Limit(Frozen):
    """What a clinician set: an angle, a load, banned kinds of work or movements. Never a diagnosis.

    ``unit``: of the load; a percent is of the tested max.
    """

    place: Place
    angle: LimitAngle | None = None
    at_most_deg: float | None = None
    load_at_most: float | None = None
    unit: Literal["kg", "lb", "%"] | None = None
    no: tuple[str, ...] = ()
    avoid: tuple[str, ...] = ()
    side: Literal["left", "right"] | None = None
    until: str
    set_by: str | None = None


class Best(Frozen):
    """A best of one day: a load tested or lifted ``reps`` times, or a tested number of repetitions alone.

    ``load`` is a mass or bodyweight with more or less, in kg or lb as typed; None for repetitions alone.
    """

    how: How
    on: dt.date
    load: Load | None = None
    reps: int | None = None


class TrainingMax(Frozen):
    """What percents of the training max are taken of: a percent of the best, or a load of the coach's own."""

    percent: float | None = None
    load: Load | None = None


class Max(Frozen):
    """The maxes of one movement, ``movement`` and ``text`` as typed; ``key`` from ``library.resolve``.

    ``none_yet``: none on purpose. ``unread``: something in it was asked about, so more may be on file.
    """

    movement: str
    text: str
    place: Place
    key: str | None = None
    bests: tuple[Best, ...] = ()
    training: TrainingMax | None = None
    none_yet: bool = False
    unread: bool = False

    @property
    def kinds(self) -> frozenset[MaxKind]:
        """The kinds of max that are on file here."""
        kinds: set[MaxKind] = {HOW_KINDS[best.how] for best in self.bests}
        return frozenset(kinds | {"training max"} if self.training else kinds)


class Athlete(Frozen):
    """One person of the squad. Lengths in cm, body mass in ``body_mass_unit``.

    ``arm_length_cm``: from the bony tip of the shoulder to the wrist, arm hanging. ``shoulder_breadth_cm``:
    between the two tips.
    """

    name: str
    place: Place
    born: int | None = None
    sex: str | None = None
    height_cm: float | None = None
    arm_length_cm: float | None = None
    shoulder_breadth_cm: float | None = None
    body_mass: float | None = None
    body_mass_unit: Literal["kg", "lb"] | None = None
    level: Literal["beginner", "intermediate", "advanced"] | None = None
    handed: Literal["left", "right"] | None = None
    weaker_side: Literal["left", "right"] | None = None
    participation: Literal["full", "modified", "out"] = "full"
    maxes: tuple[Max, ...] = ()
    limits: tuple[Limit, ...] = ()
    avoid: tuple[str, ...] = ()
    note: str | None = None
    private_note: str | None = None


class Squad(Frozen):
    """The people a plan is for."""

    name: str | None = None
    unit: Literal["kg", "lb"] | None = None
    rounding: Literal["nearest", "down", "up"] = "nearest"
    pick_in_a_range: Literal["low", "middle", "high"] = "low"
    athletes: tuple[Athlete, ...] = ()
    groups: dict[str, tuple[str, ...]] = Field(default_factory=dict)
    paper: Stationery = Stationery()
    note: str | None = None
    private_note: str | None = None

    @property
    def training(self) -> tuple[Athlete, ...]:
        """The athletes who take part."""
        return tuple(athlete for athlete in self.athletes if athlete.participation != "out")
