"""A block in sentences: where it is lighter, and what a cut week or a missed one loses."""

from collections.abc import Iterator, Sequence
from typing import Final

from setwright.coverage import Coverage
from setwright.coverage.cut import cuts, without_week
from setwright.coverage.trend import Planned, fullest, hard_sets
from setwright.glance.shapes import few
from setwright.library.table import Library
from setwright.reading.weeks import say_weeks
from setwright.reading.words import HANDS, listed, number
from setwright.rules.past import pasts

Before = tuple[str, Coverage] | None

NO_LIGHTER: Final = "Lighter week: none."
PRIORITIES: Final = {1: "priority 1", 2: "priorities 1 and 2"}


def lighter_sentence(weeks: Sequence[Coverage], before: Before, table: Library) -> str:
    """Which weeks are lighter, how, and how many hard sets are left of those of the fullest week.

    ``before``: the last week of the plan that is followed; what is lighter is what the rules take for it.
    """
    known = zip(weeks, pasts(weeks, before, table), strict=True)
    found = [_lighter(week) for week, past in known if not past.hard_in_a_row]
    return f"Lighter: {'; '.join(found)}; {fullest(weeks):g} in the fullest week." if found else NO_LIGHTER


def _lighter(week: Coverage) -> str:
    written = week.week.lighter
    how = written.text if written else "by its sets or loads, not under `lighter weeks`"
    return f"week {week.week.number} ({how}), {hard_sets(week)} hard sets"


def cut_sentences(weeks: Sequence[Coverage]) -> Iterator[str]:
    """What gets no set in a week cut to its first priorities, weeks that lose the same told together."""
    alike: dict[tuple[int, tuple[str, ...], tuple[str, ...]], list[int]] = {}
    for week in weeks:
        for cut in cuts(week):
            alike.setdefault(cut, []).append(week.week.number)
    for (to, gone, loses), numbers in sorted(alike.items(), key=lambda one: (-one[0][0], one[1])):
        held = f" in {say_weeks(numbers)}" if len(numbers) < len(weeks) else ""
        yield f"Cut to {PRIORITIES[to]}{held} (out: {few(gone)}): {_loses(loses)}."


def missed_sentence(weeks: Sequence[Coverage]) -> str:
    """What the block no longer trains when one of its weeks is missed."""
    lost = {week.week.number: names for at, week in enumerate(weeks) if (names := without_week(weeks, at))}
    if not lost:
        return "One week missed: the others train all that it trains."
    told = "; ".join(f"week {week}: {_loses(names)}" for week, names in lost.items())
    return f"One week missed, {told}."


def planned_text(planned: Planned) -> str:
    """The top of a load as it was typed: "62.5 kg", "2 x 24 kg", "75 %", "+10 kg"."""
    load = planned.load
    if load.kind == "bodyweight":
        plus = load.plus if load.plus_high is None else load.plus_high
        return f"{'+' if (plus or 0) >= 0 else '-'}{number(abs(plus or 0))} {load.unit}"
    figure = number((load.low if load.high is None else load.high) or 0)
    return f"{'2 x ' if load.hands == HANDS else ''}{figure} {'%' if load.kind == 'percent' else load.unit}"


def _loses(names: Sequence[str]) -> str:
    return f"no set for {listed(list(names))}" if names else "every part and muscle keeps a set"
