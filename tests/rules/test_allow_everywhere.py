"""An `allow` of the whole plan, of a session and of a line, for each rule about the week and its order."""

import pytest

from setwright.rules import RULES, Rule
from tests.rules.plans import checked, rules_in

BY_ID = {rule.id: rule for rule in RULES}
OF_A_LINE = (
    "light-before-heavy", "bottom-lines-hold-all-the-pulls", "no-warm-up-for-heavy-lift",
    "failure-without-spotter", "too-few-stations", "rest-shorter-than-the-floor-allows",
)  # fmt: skip
OF_A_SESSION = (
    *OF_A_LINE, "push-without-pull", "no-pull-from-overhead", "same-part-hard-next-day", "session-over-time",
)  # fmt: skip
OF_THE_PLAN = (*OF_A_SESSION, "big-jump-from-last-week", "no-lighter-week")


def allowed(rule: Rule, line: int, indent: int) -> list[str]:
    """What is found in the rule's bad plan with an `allow` after a line of it; the rule must be silenced."""
    lines = rule.bad.splitlines()
    allow = [f"{' ' * indent}allow:", f"{' ' * indent}  {rule.id}: meant so"]
    one = checked("\n".join([*lines[:line], *allow, *lines[line:], ""]))
    assert [silenced.reason for silenced in one.allowed] == ["meant so"]
    return rules_in(one)


@pytest.mark.parametrize("name", OF_THE_PLAN)
def test_an_allow_at_the_top_holds_for_the_whole_plan(name: str) -> None:
    assert allowed(BY_ID[name], 1, 0) == []


@pytest.mark.parametrize("name", OF_A_SESSION)
def test_an_allow_in_its_session_is_enough(name: str) -> None:
    rule = BY_ID[name]
    found = next(f for f in checked(rule.bad).findings if f.rule == name)
    lines = rule.bad.splitlines()
    day = max(at for at, line in enumerate(lines[: found.place.line], 1) if "- day:" in line)
    assert allowed(rule, day, 4) == []


@pytest.mark.parametrize("name", OF_A_LINE)
def test_an_allow_under_its_line_is_enough(name: str) -> None:
    rule = BY_ID[name]
    found = next(f for f in checked(rule.bad).findings if f.rule == name)
    assert allowed(rule, found.place.line, 8) == []
