"""Question 5: hard sets a muscle, the change from the week before, heavy days and the match."""

from collections.abc import Iterator, Mapping, Sequence
from itertools import pairwise
from typing import Final

from setwright.checked import Checked, CheckedWeek
from setwright.coverage import Coverage, Sets
from setwright.coverage.muscles import GROUPS
from setwright.coverage.shapes import PUSHES
from setwright.glance.shapes import few, told
from setwright.model.plan import DAYS
from setwright.reading.words import listed, plural

RULES: Final = frozenset({"sets-under-range", "sets-over-range"})
"""The rules about weekly sets."""
MOST_JUMPS: Final = 4
"""Muscles whose change is told (choice)."""
WHOLE: Final = 100


def dose(checked: Checked, one: CheckedWeek) -> Iterator[str]:
    """The sets, what the ranges say of them, the jump; then the days."""
    muscles = ", ".join(f"{group} {sets}" for group, sets in in_order(one.coverage.muscles))
    yield f"Hard sets a muscle, helpers half (pelland2024, abstract): {muscles or 'none'}."
    yield from told(checked.findings, RULES, most=1)
    yield _jump(checked.across, one)
    if days := "; ".join(filter(None, (_heavy_days(one.coverage), _match(one.coverage)))):
        yield f"{days}."


def in_order(muscles: Mapping[str, Sets]) -> list[tuple[str, Sets]]:
    """The muscle groups with most sets first."""
    return sorted(muscles.items(), key=lambda one: (-one[1].high, list(GROUPS).index(one[0])))


def _jump(block: Sequence[CheckedWeek], one: CheckedWeek) -> str:
    """The change of the low end of each muscle's sets from the week before, in percent."""
    before = next((week for week in block if week.week.number == one.week.number - 1), None)
    if before is None:
        return "No week before it in this plan to compare the sets with."
    changes = {
        group: (sets.low - was.low) / was.low * WHOLE
        for group, sets in one.coverage.muscles.items()
        if (was := before.coverage.muscles.get(group, Sets())).low and sets.low != was.low
    }
    new = [group for group in one.coverage.muscles if not before.coverage.muscles.get(group, Sets()).high]
    gone = [group for group in before.coverage.muscles if group not in one.coverage.muscles]
    ranked = sorted(changes, key=lambda group: -abs(changes[group]))
    moved = [f"{group} {changes[group]:+.0f} %" for group in ranked]
    moved += [f"{group} new" for group in new] + [f"{group} gone" for group in gone]
    since = f"Against week {before.week.number}"
    return f"{since}: {few(moved, MOST_JUMPS)}." if moved else f"{since}: the same hard sets."


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
