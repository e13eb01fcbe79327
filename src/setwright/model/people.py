"""The squad: who trains, and what limits hold for them."""

from typing import Literal

from pydantic import Field

from setwright.places import Place
from setwright.reading.frozen import Frozen

LimitAngle = Literal["arm behind", "arm up", "arm across", "arm turned out"]


class Limit(Frozen):
    """What a clinician set: an angle, a load, banned kinds of work or movements. Never a diagnosis."""

    place: Place
    angle: LimitAngle | None = None
    at_most_deg: float | None = None
    load_at_most: float | None = None
    unit: Literal["kg", "lb"] | None = None
    no: tuple[str, ...] = ()
    avoid: tuple[str, ...] = ()
    side: Literal["left", "right"] | None = None
    until: str
    set_by: str | None = None


class Max(Frozen):
    """A best lift as written; parsed in full with the loads."""

    movement: str
    text: str
    place: Place


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
    note: str | None = None
    private_note: str | None = None
