"""What a week adds up to, as plain frozen data: counts that stay spans, works, parts, sessions, the whole."""

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Final, Literal, NamedTuple

from setwright.library.table import Movement
from setwright.model.plan import Group, Item, Session, Week
from setwright.places import Place
from setwright.reading.counting import Counted

Counts = Mapping[Place, Counted]
Part = Literal["clavicular", "sternal", "costal"]
Answer = Literal["yes", "partly", "no"]
PARTS: Final[tuple[Part, ...]] = ("clavicular", "sternal", "costal")

CLASSES: Final = ("light", "moderate", "heavy")
"""Load classes of the library, lightest first."""

PUSHES: Final = frozenset({"horizontal push", "vertical push", "downward push"})
PULLS: Final = frozenset({"horizontal pull", "vertical pull"})
FROM_OVERHEAD: Final = frozenset({"vertical pull", "shoulder extension"})
"""Patterns that bring the arm down from above the head under load."""


@dataclass(frozen=True, slots=True)
class Sets:
    """A number of sets that may be a span: ``low`` to ``high``, ``high`` infinite when open.

    Rules about too little read ``high``, rules about too much read ``low``; the middle is never read.

    >>> str(Sets(8, 18)), str(Sets(11.5, 11.5)), str(Sets(1, math.inf))
    ('8 to 18', '11.5', '1 or more')
    """

    low: float = 0.0
    high: float = 0.0

    def __add__(self, other: "Sets") -> "Sets":
        return Sets(self.low + other.low, self.high + other.high)

    def times(self, factor: float) -> "Sets":
        """Both ends multiplied; nothing times an open end is nothing."""
        return Sets(self.low * factor, self.high * factor) if factor else Sets()

    def __str__(self) -> str:
        if self.high == math.inf:
            return f"{self.low:g} or more"
        return f"{self.low:g}" if self.low == self.high else f"{self.low:g} to {self.high:g}"


def total(sets: Iterable[Sets]) -> Sets:
    """The sum of some counts, ends apart."""
    return sum(sets, Sets())


class Work(NamedTuple):
    """One line of work, counted. ``day`` is the place of its session in the week, ``hard`` its hard sets."""

    day: int
    session: Session
    item: Item
    group: Group | None
    movement: Movement
    sets: Sets
    hard: Sets
    effort_stated: bool

    @property
    def name(self) -> str:
        """The movement's name as the coach typed it."""
        return self.item.name

    @property
    def line(self) -> int:
        """The line of the plan it stands on."""
        return self.item.place.line

    @property
    def load_class(self) -> str:
        """heavy, moderate or light, by equipment."""
        return str(self.movement["class"])

    @property
    def serves(self) -> tuple[Part, ...]:
        """The parts whose line of pull the movement follows."""
        return tuple(self.movement.get("serves", ()))

    @property
    def crossing(self) -> bool:
        """Whether it brings hand and arm past the midline under load."""
        return bool(self.movement.get("crossing", False))

    @property
    def direct_chest(self) -> bool:
        """Whether its sets are direct chest sets: it serves the line of a part of the chest."""
        return bool(self.serves)

    @property
    def press(self) -> bool:
        """Whether it is a push that follows a line of the chest and stops short of the midline."""
        return self.movement["pattern"] in PUSHES and bool(self.serves) and not self.crossing

    def dose(self, part: Part) -> float:
        """Per hard set 1 when it serves the part's line, 0.5 when it only loads the part along it, else 0."""
        scores = self.movement.get("parts")
        return float(scores[part]["dose"]) if scores else 0.0


class PartCover(NamedTuple):
    """What the week does for one part of the chest. ``sets`` are hard sets weighted by dose."""

    part: Part
    sets: Sets
    served_by: tuple[Work, ...]
    loaded_by: tuple[Work, ...]
    loaded_long: Answer
    loaded_long_percent: float | None
    loaded_short: Answer
    across_deg: float | None
    heaviest: Work | None


class SessionCover(NamedTuple):
    """One session: its works, its direct chest sets, and its clock in minutes (``coverage.clock``).

    ``counts``: the dose of every line that has one, counted, by the line's place.
    """

    session: Session
    works: tuple[Work, ...]
    chest: Sets
    minutes: float
    counts: Counts


class Coverage(NamedTuple):
    """What a week adds up to, sessions in the order of their days.

    ``muscles``: fractional hard sets by muscle group; ``trained``: the groups with a direct set.
    ``unscored``: movements counted by their muscles only; ``effort_not_stated``: hard sets without effort.
    """

    week: Week
    sessions: tuple[SessionCover, ...]
    parts: tuple[PartCover, ...]
    chest: Sets
    muscles: Mapping[str, Sets]
    trained: frozenset[str]
    push: Sets
    pull: Sets
    unscored: int
    effort_not_stated: Sets

    @property
    def works(self) -> tuple[Work, ...]:
        """Every counted work of the week, in the order it is done."""
        return tuple(work for session in self.sessions for work in session.works)

    @property
    def single_session(self) -> bool:
        """Whether the plan is one session and no week: what it leaves out may stand on other days."""
        return len(self.week.sessions) == 1 and self.week.sessions[0].day is None
