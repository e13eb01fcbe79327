"""Question 5: hard sets a muscle, the change from the week before, heavy days and the match."""

from collections.abc import Iterator, Mapping
from itertools import pairwise
from typing import Final

from setwright.checked import Checked, CheckedWeek
from setwright.coverage import Coverage, Sets
from setwright.coverage.muscles import GROUPS
from setwright.coverage.shapes import PUSHES
from setwright.glance.before import week_before
from setwright.glance.shapes import few, told
from setwright.model.plan import DAYS
from setwright.reading.words import listed, plural

RULES: Final = frozenset({
    "sets-under-range", "sets-over-range", "big-jump-from-last-week", "same-part-hard-next-day",
    "heavy-close-to-the-match", "failure-while-on-call",
})  # fmt: skip
"""The rules about weekly sets, and about hard work before what has to go well."""
NO_JUMP: Final = "Against last week as it is typed, only what is told above is a jump."
MOST_JUMPS: Final = 4
"""Muscles whose change is told (choice)."""
WHOLE: Final = 100


def dose(checked: Checked, one: CheckedWeek) -> Iterator[str]:
    """The sets, what the ranges say of them, the jump; then the days."""
    muscles = ", ".join(f"{group} {sets}" for group, sets in in_order(one.coverage.muscles))
    yield f"Hard sets a muscle, helpers half (pelland2024, abstract): {muscles or 'none'}."
    yield from told(checked.findings, RULES)
    yield _jump(checked, one)
    if days := "; ".join(filter(None, (_heavy_days(one.coverage), _match(one.coverage)))):
        yield f"{days}."


def in_order(muscles: Mapping[str, Sets]) -> list[tuple[str, Sets]]:
    """The muscle groups with most sets first."""
    return sorted(muscles.items(), key=lambda one: (-one[1].high, list(GROUPS).index(one[0])))


def _jump(checked: Checked, one: CheckedWeek) -> str:
    """The change of the low end of each muscle's sets from the week before, in percent."""
    before = week_before(checked, one)
    if before is None:
        return NO_JUMP if one.week.last_week else "No week before it to compare the sets with."
    called, then = before
    changes = {
        group: (sets.low - was.low) / was.low * WHOLE
        for group, sets in one.coverage.muscles.items()
        if (was := then.muscles.get(group, Sets())).low and sets.low != was.low
    }
    ranked = sorted(changes, key=lambda group: -abs(changes[group]))
    moved = [f"{group} {changes[group]:+.0f} %" for group in ranked]
    moved += [f"{group} new" for group in one.coverage.muscles if group not in then.muscles]
    moved += [f"{group} gone" for group in then.muscles if group not in one.coverage.muscles]
    return (
        f"Against {called}: {few(moved, MOST_JUMPS)}." if moved else f"Against {called}: the same hard sets."
    )


def _heavy_days(coverage: Coverage) -> str:
    """The days with a heavy press and the fewest days from one to the next."""
    days = [
        covered.session.day
        for covered in coverage.sessions
        if any(
            work.load_class == "heavy" and work.movement["pattern"] in PUSHES and work.hard.high
            for work in covered.works
        )
    ]
    at = sorted({DAYS.index(day) for day in days if day})
    if len(at) < 2:  # noqa: PLR2004 - one day is far from itself
        return ""
    least = min(later - earlier for earlier, later in pairwise(at))
    named = listed([DAYS[day] for day in at])
    return f"Heavy pushes on {named}, at least {plural(least, 'day')} from one to the next"


def _match(coverage: Coverage) -> str:
    told = [
        f"{covered.session.title} {'on match day' if not days else plural(days, 'day') + ' before the match'}"
        for covered in coverage.sessions
        if (days := covered.session.days_to_match) is not None
    ]
    return listed(told) if told else ""
