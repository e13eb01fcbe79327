"""What the week is for, and what that asks of it: the one table of rows, levels and weekly sets."""

from collections.abc import Mapping
from typing import Final, Literal, NamedTuple

from setwright.coverage import Coverage
from setwright.findings import Level
from setwright.model.people import Athlete
from setwright.model.plan import Week

Row = Literal["general", "size", "chest focus", "strength", "beginner", "sport", "return", "no chest"]

ERROR, GAP, ADVICE = Level.error, Level.gap, Level.advice
NO = None
ROWS: Final[tuple[Row, ...]] = (
    "general", "size", "chest focus", "strength", "beginner", "sport", "return", "no chest"
)  # fmt: skip

LEVELS: Final[Mapping[str, tuple[Level | None, ...]]] = {
    #                              general  size    chest   strength beginner sport   return  no
    #                                               focus                                     chest
    "half-a-pair":                (GAP,    GAP,    GAP,    GAP,    GAP,    GAP,    GAP,    GAP),
    "one-side-only":              (GAP,    GAP,    GAP,    GAP,    GAP,    GAP,    NO,     GAP),
    "crossing-work-only":         (GAP,    GAP,    GAP,    GAP,    GAP,    ADVICE, NO,     NO),
    "part-not-loaded":            (GAP,    GAP,    GAP,    ADVICE, NO,     ADVICE, NO,     NO),
    "line-never-followed":        (ADVICE, GAP,    GAP,    ADVICE, NO,     ADVICE, NO,     NO),
    "no-heavy-lift-for-part":     (ADVICE, GAP,    GAP,    GAP,    NO,     ADVICE, NO,     NO),
    "no-work-across-the-midline": (ADVICE, ADVICE, GAP,    NO,     NO,     ADVICE, NO,     NO),
    "heavy-line-not-finished":    (ADVICE, ADVICE, GAP,    NO,     NO,     ADVICE, NO,     NO),
    "no-work-at-long-length":     (ADVICE, GAP,    GAP,    ADVICE, NO,     ADVICE, NO,     NO),
    "no-work-at-short-length":    (ADVICE, ADVICE, GAP,    NO,     NO,     ADVICE, NO,     NO),
    "push-without-pull":          (GAP,    GAP,    GAP,    GAP,    GAP,    ADVICE, NO,     NO),
    "no-pull-from-overhead":      (ADVICE, ADVICE, ADVICE, ADVICE, NO,     NO,     NO,     NO),
    "light-before-heavy":         (ADVICE, ADVICE, ADVICE, ADVICE, NO,     ADVICE, NO,     NO),
    "same-part-hard-next-day":    (ADVICE, ADVICE, ADVICE, ADVICE, ADVICE, ADVICE, NO,     ADVICE),
    "big-jump-from-last-week":    (ADVICE, ADVICE, ADVICE, ADVICE, ADVICE, ADVICE, NO,     ADVICE),
    "no-lighter-week":            (ADVICE, ADVICE, ADVICE, ADVICE, NO,     ADVICE, NO,     ADVICE),
    "bottom-lines-hold-all-the-pulls":
                                  (ADVICE, ADVICE, ADVICE, ADVICE, ADVICE, ADVICE, NO,     NO),
}  # fmt: skip
"""Level of each rule in each row (common practice, no source); None: the rule is silent there."""

EVERYWHERE: Final[Mapping[str, Level]] = {
    "limit-broken": ERROR,
    "avoided-move": ERROR,
    "modified-but-nothing-changed": ERROR,
    "nobody-can-use": ERROR,
    "below-the-empty-bar": ERROR,
    "load-not-loadable": ADVICE,
    "name-in-a-public-title": ADVICE,
    "session-over-time": ADVICE,
    "too-few-stations": GAP,
    "rest-shorter-than-the-floor-allows": ADVICE,
    "no-warm-up-for-heavy-lift": ADVICE,
    "failure-while-on-call": ADVICE,
    "failure-without-spotter": ADVICE,
    "heavy-close-to-the-match": ADVICE,
    "no-max-for-percent": ERROR,
    "above-tested-max": ADVICE,
    "reps-not-possible-at-load": ADVICE,
    "effort-and-percent-disagree": ADVICE,
    "stale-max": ADVICE,
    "unit-looks-wrong": ADVICE,
    "beginner-maximal-test": ADVICE,
}
"""Level of the rules that ask the same of every week (common practice, no source)."""

CHEST_SETS_TO_SPEAK: Final[Mapping[Row, float]] = {"general": 6, "sport": 6}
"""Direct chest sets a week from which the coverage rules speak (choice, no source)."""

CHEST_SETS_TO_BE_TRAINED: Final = 4
"""Direct chest sets a week under which a week without chest focus is "no chest" (choice, no source)."""


class Bound(NamedTuple):
    """A weekly number of fractional sets for one muscle, the level of missing it, and whose number it is."""

    sets: float
    level: Level
    source: str


_MIN_TIME_POOR = "iversen2021: at least 4 sets a muscle a week (review, abstract)"
_UPPER_BAND = "bazvalle2022: 12 to 20 sets recommended, above 20 high (review, abstract)"
_MIN_SIZE = "acsm2026: at least 10 sets a muscle a week for size (position stand, second hand)"
_MAINTAIN = (
    "choice, no source; a ninth to a third of the sets kept size in young adults: bickel2011 (second hand)"
)
_CHOICE = "choice, no source"

UNDER: Final[Mapping[Row, Bound]] = {
    "general": Bound(4, ADVICE, _MIN_TIME_POOR),
    "size": Bound(10, GAP, _MIN_SIZE),
    "chest focus": Bound(10, GAP, _MIN_SIZE),
    "strength": Bound(4, ADVICE, _MIN_TIME_POOR),
    "beginner": Bound(4, ADVICE, _MIN_TIME_POOR),
    "sport": Bound(2, ADVICE, _MAINTAIN),
}
UNDER_FOR_A_BEGINNER: Final = Bound(4, GAP, _MIN_TIME_POOR)
"""In the rows size and chest focus, when the level is beginner."""

OVER: Final[Mapping[Row, tuple[Bound, ...]]] = {
    "general": (Bound(20, ADVICE, _UPPER_BAND),),
    "size": (Bound(20, ADVICE, _UPPER_BAND), Bound(25, GAP, f"{_CHOICE} for 25; {_UPPER_BAND}")),
    "chest focus": (Bound(20, ADVICE, _UPPER_BAND), Bound(25, GAP, f"{_CHOICE} for 25; {_UPPER_BAND}")),
    "beginner": (Bound(12, ADVICE, _CHOICE),),
}
"""Upper bounds, mildest first; a row that is missing has none."""


class AimInForce(NamedTuple):
    """The row of the table that holds, and where it came from ("written in line 4").

    ``beginner``: the level written is beginner. ``held_back``: in the row "return", what the matrix says.
    """

    row: Row
    came_from: str
    beginner: bool = False
    held_back: str | None = None

    def level(self, rule: str, coverage: Coverage) -> Level | None:
        """The level at which a rule speaks in this week, None when it is silent.

        The rules about weekly sets are not in the table: they are as bad as the bound they find broken.
        """
        if rule not in LEVELS:
            return EVERYWHERE.get(rule, ADVICE)
        if rule in CHEST_RULES and coverage.chest.low < CHEST_SETS_TO_SPEAK.get(self.row, 0):
            return None
        return LEVELS[rule][ROWS.index(self.row)]

    @property
    def under(self) -> Bound | None:
        """The least sets a muscle a week, or None."""
        if self.beginner and self.row in ("size", "chest focus"):
            return UNDER_FOR_A_BEGINNER
        return UNDER.get(self.row)

    @property
    def over(self) -> tuple[Bound, ...]:
        """The most sets a muscle a week, mildest first."""
        return OVER.get(self.row, ())


CHEST_RULES: Final = frozenset({
    "crossing-work-only", "part-not-loaded", "line-never-followed", "no-heavy-lift-for-part",
    "no-work-across-the-midline", "heavy-line-not-finished", "no-work-at-long-length",
    "no-work-at-short-length",
})  # fmt: skip
"""The coverage rules: what a week does for the parts of the chest."""


def aim_in_force(week: Week, coverage: Coverage) -> AimInForce:
    """The row that holds for this week.

    A stated return, or a limit on the shoulder of everyone who trains, comes first; then a focus on the
    chest or the aim size; then sport; then the level beginner; then what is left of the aim. A week with
    under four direct chest sets and no focus on the chest is a week without chest, whatever its aim.
    """
    beginner = week.level == "beginner"
    stated = f"written in line {week.aim_place.line}" if week.aim_place else "no aim written"
    limits = shoulder_limits(week)
    if week.aim == "return":
        return AimInForce("return", stated, beginner, _held_back(limits))
    if limits:
        return AimInForce(
            "return", "everyone who trains has a limit on the shoulder", beginner, _held_back(limits)
        )
    if "chest" in week.focus:
        return AimInForce("chest focus", "focus: [chest]", beginner)
    if coverage.chest.high < CHEST_SETS_TO_BE_TRAINED:
        return AimInForce(
            "no chest", f"{coverage.chest} direct chest sets and no focus on the chest", beginner
        )
    if week.aim in ("size", "sport"):
        return AimInForce(week.aim, stated, beginner)
    if beginner:
        return AimInForce("beginner", "level: beginner", beginner)
    return AimInForce(week.aim or "general", stated)


def training(week: Week) -> tuple[Athlete, ...]:
    """The athletes of the squad who take part."""
    return week.squad.training if week.squad else ()


def shoulder_limits(week: Week) -> tuple[Athlete, ...]:
    """The athletes who train, when every one of them has a limit on a shoulder angle; else nobody."""
    athletes = training(week)
    limited = tuple(a for a in athletes if any(limit.angle for limit in a.limits))
    return athletes if athletes and limited == athletes else ()


def _held_back(limited: tuple[Athlete, ...]) -> str:
    sides = {limit.side for athlete in limited for limit in athlete.limits if limit.angle}
    return f"held back: {sides.pop()}" if len(sides) == 1 and sides != {None} else "held back"
