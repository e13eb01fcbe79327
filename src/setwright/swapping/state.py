"""What the rules say of a week, as counts that can be compared before and after a change."""

from collections import Counter
from typing import Final, NamedTuple

from setwright.coverage import Coverage, cover
from setwright.findings import Level
from setwright.library.table import Library
from setwright.model.plan import Week
from setwright.rules import RULES
from setwright.rules.aims import aim_in_force
from setwright.rules.judging import standing
from setwright.rules.means import Means
from setwright.rules.rule import Case
from setwright.rules.sets_under_range import too_few
from setwright.rules.spoken import Spoken

NOT_OURS: Final = frozenset({
    "limit-broken", "avoided-move", "modified-but-nothing-changed", "sets-over-range", "half-a-pair",
    "one-side-only",
})  # fmt: skip
"""Rules whose faults no movement is to settle: limits, doses that are too high, slips of typing."""


class Key(NamedTuple):
    """What makes two faults alike: the rule and the parts of the chest it speaks of."""

    rule: str
    parts: frozenset[str]


class State(NamedTuple):
    """A week judged. ``gaps`` and ``advice`` count faults; ``found`` are the gaps themselves.

    ``short``: the muscle groups with too few sets. ``minutes`` a session, in the order of the plan.
    """

    week: Week
    coverage: Coverage
    found: tuple[Spoken, ...]
    gaps: Counter[Key]
    advice: Counter[Key]
    short: frozenset[str]
    minutes: tuple[float, ...]


class Judge:
    """Judges weeks with the movements that are at hand for the plan as it was written."""

    def __init__(self, means: Means, table: Library) -> None:
        self.means = means
        self._table = table
        self._rules = tuple(rule for rule in RULES if rule.id not in NOT_OURS)

    def __call__(self, week: Week) -> State:
        """The state of a week; what ``allow`` silences is no fault."""
        coverage = cover(week, self._table)
        aim = aim_in_force(week, coverage)
        case = Case(coverage, aim, self.means)
        standing_now = standing(case, self._rules)
        found = tuple(one for one in standing_now if one.level >= Level.gap)
        minutes = {id(one.session): one.minutes for one in coverage.sessions}
        return State(
            week=week,
            coverage=coverage,
            found=found,
            gaps=Counter(map(key_of, found)),
            advice=Counter(key_of(one) for one in standing_now if one.level < Level.gap),
            short=frozenset(
                too_few(case) if Key("sets-under-range", frozenset()) in map(key_of, found) else ()
            ),
            minutes=tuple(minutes[id(session)] for session in week.sessions),
        )


def key_of(one: Spoken) -> Key:
    """The key of a fault."""
    return Key(one.rule.id, frozenset(one.fault.parts))


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
