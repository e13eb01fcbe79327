"""Question 6: what next week asks for, where it is lighter, and when somebody passes the tested max."""

from collections.abc import Iterator
from typing import Final

from setwright.checked import Checked, CheckedWeek
from setwright.coverage import Coverage
from setwright.coverage.trend import lifts_by_week
from setwright.glance.maxes import max_sentences
from setwright.glance.shapes import few
from setwright.glance.weeks import lighter_sentence, planned_text
from setwright.library.table import library
from setwright.model.next import typed_next
from setwright.model.plan import Week

MOST_CHANGES: Final = 2
"""Lines told that change to next week (choice)."""


def progress(checked: Checked, one: CheckedWeek) -> Iterator[str]:
    """Next week's numbers, or the rule for next time; then the block."""
    block = [week.coverage for week in checked.across]
    after = next((week for week in block if week.week.number == one.week.number + 1), None)
    yield _rules(one.week) if after is None else _next_week(one.coverage, after)
    if len(block) > 1:
        yield lighter_sentence(block)
    yield from max_sentences(checked.across, checked.table or library())


def _next_week(now: Coverage, after: Coverage) -> str:
    lighter = f" ({after.week.lighter.text})" if after.week.lighter else ""
    lead = f"Week {after.week.number}{lighter}"
    if not after.week.sessions:
        return f"Week {after.week.number}: no training."
    loads = {
        str(lift.movement["name"]): f"{planned_text(to)} (now {planned_text(was)})"
        for lift in lifts_by_week([now, after])
        for was, to in [lift.planned]
        if was and to and planned_text(was) != planned_text(to)
    }
    typed = {} if now.week.lighter or after.week.lighter else _new_doses(now, after)
    changes = [f"{name} {what}" for name, what in {**typed, **loads}.items()]
    return f"{lead}: {few(changes, MOST_CHANGES)}." if changes else f"{lead}: the same numbers."


def _new_doses(now: Coverage, after: Coverage) -> dict[str, str]:
    """The doses that are typed anew; in a lighter week what is typed is not what is done."""
    doses = _doses(now)
    return {
        name: f"{text} (now {doses[name]})"
        for name, text in _doses(after).items()
        if doses.get(name, text) != text
    }


def _doses(week: Coverage) -> dict[str, str]:
    """The dose of each movement as typed, of its first line in the week."""
    doses: dict[str, str] = {}
    for work in week.works:
        if work.item.dose:
            doses.setdefault(work.name, work.item.dose.text)
    return doses


def _rules(week: Week) -> str:
    """What is said about next time, in the words of the plan."""
    entries = [entry for session in week.sessions for entry in session.work]
    items = [item for session in week.sessions for item in session.items()]
    found = [week.next, *(entry.next for entry in entries), *(item.next for item in items)]
    rules = [typed_next(one.rule) for one in found if one]
    return f"Next time: {few(rules, MOST_CHANGES)}." if rules else "Next time: nothing is written."
