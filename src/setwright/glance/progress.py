"""Question 6: what next week asks for, where it is lighter, and when somebody passes the tested max."""

from collections.abc import Iterator
from typing import Final

from setwright.checked import Checked, CheckedWeek
from setwright.coverage import Coverage
from setwright.coverage.trend import lifts_by_week
from setwright.glance.maxes import max_sentences
from setwright.glance.shapes import few, told
from setwright.glance.weeks import lighter_sentence, planned_text
from setwright.library.table import library
from setwright.model.next import typed_next
from setwright.model.plan import Week

RULES: Final = frozenset({"no-lighter-week"})
"""The rules about the way of a block."""
MOST_CHANGES: Final = 2
"""Lines told that change to next week (choice)."""


def progress(checked: Checked, one: CheckedWeek) -> Iterator[str]:
    """Next week's numbers, or the rule for next time; then the block."""
    block = [week.coverage for week in checked.across]
    after = next((week for week in block if week.week.number == one.week.number + 1), None)
    yield _rules(one.week) if after is None else _next_week(one.coverage, after)
    table = checked.table or library()
    if len(block) > 1:
        yield lighter_sentence(block, checked.before, table)
    yield from max_sentences(checked.across, table)
    yield from told(checked.findings, RULES)


def _next_week(now: Coverage, after: Coverage) -> str:
    lighter = f" ({after.week.lighter.text})" if after.week.lighter else ""
    lead = f"Week {after.week.number}{lighter}"
    if not after.week.sessions:
        return f"Week {after.week.number}: no training."
    changes = [*_changed(now, after), *_new_loads(now, after)]
    return f"{lead}: {few(changes, MOST_CHANGES)}." if changes else f"{lead}: the same numbers."


def _changed(now: Coverage, after: Coverage) -> Iterator[str]:
    """Movements that come, go, or have another dose as typed; in a lighter week what is typed is not done."""
    old, new = _doses(now), _doses(after)
    lighter = now.week.lighter or after.week.lighter
    for name, dose in new.items():
        if name not in old:
            yield f"{name} {dose} (new)"
        elif dose != old[name] and not lighter:
            yield f"{name} {dose} (now {old[name]})"
    yield from (f"{name} left out" for name in old if name not in new)


def _doses(week: Coverage) -> dict[str, str]:
    """The dose of each movement as typed, of its first line in the week."""
    last_first = {work.name: work.item.dose.text for work in reversed(week.works) if work.item.dose}
    return dict(reversed(last_first.items()))


def _new_loads(now: Coverage, after: Coverage) -> Iterator[str]:
    """The heaviest loads that are others than now, where the dose as typed does not hold them."""
    typed = " ".join(_doses(after).values())
    for lift in lifts_by_week([now, after]):
        was, to = (planned and planned_text(planned) for planned in lift.planned)
        if was and to and was != to and f" {to}" not in typed:
            yield f"{lift.movement['name']} {to} (now {was})"


def _rules(week: Week) -> str:
    """What is said about next time, in the words of the plan."""
    entries = [entry for session in week.sessions for entry in session.work]
    items = [item for session in week.sessions for item in session.items()]
    found = [week.next, *(entry.next for entry in entries), *(item.next for item in items)]
    rules = [typed_next(one.rule) for one in found if one]
    return f"Next time: {few(rules, MOST_CHANGES)}." if rules else "Next time: nothing is written."
