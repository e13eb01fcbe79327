"""Plans of several weeks, written short."""

import textwrap

from setwright.model.plan import Group, Item, Week
from tests.reading.plans import read

HEAD = "plan: A block\nunit: kg\nsides: each\n"


def block(weeks: int, work: str, top: str = "") -> str:
    """A plan of one session on Monday; ``work`` is its list, ``top`` more keys of the plan."""
    listed = textwrap.indent(work, "      ")
    return f"{HEAD}weeks: {weeks}\n{top}sessions:\n  - day: Monday\n    work:\n{listed}\n"


def weeks_of(text: str) -> tuple[Week, ...]:
    """The weeks of a plan about which nothing is to be said."""
    result = read(text)
    assert result.findings == ()
    return result.weeks


def entries(text: str) -> list[tuple[Item | Group, ...]]:
    """The work of the first session, week by week; empty where it does not take place."""
    return [week.sessions[0].work if week.sessions else () for week in weeks_of(text)]


def doses(text: str) -> list[str | None]:
    """What the first line of the first session says, week by week; None where it is not done."""
    found: list[str | None] = []
    for work in entries(text):
        first = work[0] if work else None
        found.append(first.dose.text if isinstance(first, Item) and first.dose else None)
    return found


def loads(text: str) -> list[float | None]:
    """The load of the first line, week by week."""
    found: list[float | None] = []
    for work in entries(text):
        load = work[0].load if work else None
        found.append(load.low if load else None)
    return found


def messages(text: str) -> list[tuple[str, int, str]]:
    """Rule, line and change of every finding."""
    return [(one.rule, one.place.line, one.change) for one in read(text).findings]
