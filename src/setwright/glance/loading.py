"""Question 2: whether every load can be put on, and for how many lines nobody has written one."""

from collections.abc import Iterator
from typing import Final

from setwright.checked import Checked, CheckedWeek
from setwright.coverage.trend import loads_of
from setwright.glance.shapes import told
from setwright.reading.words import listed, plural

RULES: Final = frozenset(
    {
        "nobody-can-use",
        "below-the-empty-bar",
        "load-not-loadable",
        "no-max-for-percent",
        "stale-max",
        "unit-looks-wrong",
        "reps-not-possible-at-load",
        "effort-and-percent-disagree",
        "beginner-maximal-test",
        "failure-without-spotter",
        "no-warm-up-for-heavy-lift",
    }
)
"""The rules about what this gym can give, the maxes that loads are taken of, and how a load is got under."""


def loading(checked: Checked, one: CheckedWeek) -> Iterator[str]:
    """What can't be put on, then how the lines say their load."""
    faults = list(told(checked.findings, RULES))
    if one.week.gym is None:
        yield "No gym written, so no load is held against what is there."
    elif not faults:
        yield "Every movement has its kit here, and no load in kg or lb is out of reach."
    yield from faults
    yield _kinds(one)


def _kinds(one: CheckedWeek) -> str:
    """How many lines say their load in which way; of two ways the percent is the one that is open."""
    works = one.coverage.works
    if not works:
        return "No line is counted."
    kinds = [{kind for kind, _ in loads_of(work)} for work in works]
    masses = sum("percent" not in kind for kind in kinds if kind)
    percents = sum("percent" in kind for kind in kinds)
    none = len(works) - masses - percents
    told = {"in kg or lb": masses, "as a percent": percents, "without a number": none}
    counted = listed([f"{plural(number, 'line')} {what}" for what, number in told.items() if number])
    return f"Loads: {counted}."
