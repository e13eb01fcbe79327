"""What the rules say of a week, as counts that can be compared before and after a change."""

from collections import Counter
from collections.abc import Iterable, Mapping
from typing import Final, NamedTuple

from setwright.coverage import Coverage, SessionCover
from setwright.coverage.cover import added_up, cover_session, in_turn
from setwright.findings import Level
from setwright.library.table import Library
from setwright.model.plan import Session, Week
from setwright.rules import RULES, too_few_stations
from setwright.rules.aims import aim_in_force
from setwright.rules.judging import standing
from setwright.rules.means import Means
from setwright.rules.ranges import sets_of
from setwright.rules.rule import Case
from setwright.rules.sets_under_range import too_few
from setwright.rules.spoken import Spoken

NOT_ASKED: Final = frozenset({
    "limit-broken", "avoided-move", "modified-but-nothing-changed", "name-in-a-public-title",
    "below-the-empty-bar", "load-not-loadable", "no-max-for-percent", "above-tested-max",
    "reps-not-possible-at-load", "effort-and-percent-disagree", "stale-max", "unit-looks-wrong",
    "beginner-maximal-test", "big-jump-from-last-week", "no-lighter-week", "session-over-time",
    "too-few-stations", "rest-shorter-than-the-floor-allows", "bottom-lines-hold-all-the-pulls",
    "no-warm-up-for-heavy-lift", "failure-without-spotter",
})  # fmt: skip
"""Rules about one person's lines, typed loads, other weeks, the order of a session, and the floor,
which ``queues`` asks about."""

NEVER_CLOSED: Final = frozenset({"sets-over-range", "half-a-pair", "one-side-only"})
"""Rules whose faults nothing that is done closes: too much, or a slip of typing; nor may one open them."""


class Key(NamedTuple):
    """What makes two faults alike: the rule, and the session or the parts of the chest it speaks of."""

    rule: str
    about: frozenset[str]


class State(NamedTuple):
    """A week judged. ``gaps``, ``others`` and ``advice`` count faults; ``found`` are the gaps themselves.

    ``others``: gaps that no movement is to close, such as too many sets. ``short``: the muscle groups with
    too few sets, where that is a gap, and how many are missing. ``minutes`` a session, in the order of the
    plan.
    """

    week: Week
    coverage: Coverage
    found: tuple[Spoken, ...]
    gaps: Counter[Key]
    others: Counter[Key]
    advice: Counter[Key]
    short: Mapping[str, float]
    minutes: tuple[float, ...]

    @property
    def proposed(self) -> frozenset[str]:
        """The keys of the movements that the gaps' own findings propose."""
        cures = (one.fault.cure for one in self.found if one.fault.cure)
        return frozenset(cure.movement["key"] for cure in cures if cure.movement)


class Judge:
    """Judges weeks with the movements that are at hand for the plan as it was written."""

    def __init__(self, means: Means, table: Library) -> None:
        self.means = means
        self._table = table
        self._rules = tuple(rule for rule in RULES if rule.id not in NOT_ASKED)
        self._covered: dict[tuple[int, int], SessionCover] = {}

    def __call__(self, week: Week) -> State:
        """The state of a week; what ``allow`` silences is no fault."""
        coverage = added_up(week, tuple(self._cover(session, day) for day, session in in_turn(week)))
        aim = aim_in_force(week, coverage)
        case = Case(coverage, aim, self.means)
        standing_now = standing(case, self._rules)
        gaps = [one for one in standing_now if one.level >= Level.gap]
        found = tuple(one for one in gaps if one.rule.id not in NEVER_CLOSED)
        minutes = {id(one.session): one.minutes for one in coverage.sessions}
        return State(
            week=week,
            coverage=coverage,
            found=found,
            gaps=_counted(found),
            others=_counted(one for one in gaps if one.rule.id in NEVER_CLOSED),
            advice=_counted(one for one in standing_now if one.level < Level.gap),
            short=_missing(case) if any(one.rule.id == "sets-under-range" for one in found) else {},
            minutes=tuple(minutes[id(session)] for session in week.sessions),
        )

    def queues(self, week: Week) -> int:
        """How many times too many people want one station of the gym in a week; takes as long as the rest."""
        coverage = added_up(week, tuple(self._cover(session, day) for day, session in in_turn(week)))
        case = Case(coverage, aim_in_force(week, coverage), self.means)
        return len(standing(case, (too_few_stations.RULE,)))

    def _cover(self, session: Session, day: int) -> SessionCover:
        """A session covered; one that no change has touched is the same object, and covered once."""
        at = id(session), day
        if at not in self._covered:
            self._covered[at] = cover_session(session, day, self._table)
        return self._covered[at]


def _missing(case: Case) -> dict[str, float]:
    return {group: bound.sets - sets_of(case.coverage, group).high for group, bound in too_few(case).items()}


def _counted(found: Iterable[Spoken]) -> Counter[Key]:
    """Faults by key; of a rule about lines each line counts, so that mending one of two is seen."""
    faults: Counter[Key] = Counter()
    for one in found:
        session = one.rule.looks_at == "session"
        key = Key(one.rule.id, frozenset({one.fault.where} if session else one.fault.parts))
        faults[key] += len(one.fault.seen) if one.rule.looks_at == "item" else 1
    return faults


def lost(before: Coverage, after: Coverage) -> tuple[str, ...]:
    """What a week has less of after a change, in words: sets of a part, of a muscle, of pulling."""
    told = [
        f"{old.part} part {old.sets} to {new.sets} sets"
        for old, new in zip(before.parts, after.parts, strict=True)
        if new.sets.high < old.sets.high
    ]
    told += [
        f"{group} {sets} to {after.muscles.get(group, 0)} sets"
        for group, sets in before.muscles.items()
        if group not in after.muscles or after.muscles[group].high < sets.high
    ]
    if after.pull.high < before.pull.high:
        told.append(f"pull {before.pull} to {after.pull} sets")
    return tuple(told)
