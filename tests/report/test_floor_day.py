"""What holds on the day: a call, odd numbers, who comes late."""

import pytest

from tests.floor.rooms import RACKS, plan
from tests.report.test_floor import printed

SQUAT = "back squat: 3 x 8 at 3 RIR, rest 2:00"
PUSH = "push-up: 3 x 10, rest 60 s"
PLANK = "front plank: 2 x 30 s hold, rest 30 s\n        priority: 3"


def said(*lines: str, people: int = 8, minutes: str = "60", **change: object) -> str:
    told = printed(plan(*lines, top=f"people: {people}\n", gym=RACKS.format(2), minutes=minutes), **change)
    return " ".join(" ".join(told[told.index("On the day") + 1 :]).split())


def test_the_rule_for_a_call_is_the_plan_s_own() -> None:
    assert "Called away: no rule is written; `if interrupted:` in the plan says it." in said(SQUAT)
    text = plan(SQUAT).replace("unit: kg\n", "unit: kg\nif interrupted: finish here\n", 1)
    assert any(line.startswith("  Called away: finish here.") for line in printed(text))


@pytest.mark.parametrize(
    ("minutes", "ends"),
    [
        ("60", "After more than 44 min away leave out 3 front plank first."),
        ("16", "No minute is to spare for it: leave out 3 front plank first."),
    ],
)
def test_how_long_a_call_may_last_before_something_goes(minutes: str, ends: str) -> None:
    """Squats 60 + 2 x 156 + 24 + 132 s, push-ups 60 + 3 x 30 + 120, planks 60 + 60 + 30: 948 s, 15.8 min."""
    assert ends in said(SQUAT, PUSH, PLANK, minutes=minutes)


def test_what_goes_after_a_call_is_what_a_cut_leaves_out_first() -> None:
    first = f"{SQUAT}\n        priority: 1"
    assert "min away do fewer sets of what is left." in said(first)
    assert "min away leave out 2 push-up first." in said(first, PUSH)
    open_end = plan(SQUAT).replace("    minutes: 60\n", "")
    assert not any("away leave" in line or "to spare" in line for line in printed(open_end))


def test_odd_numbers_say_which_groups_are_smaller() -> None:
    assert "Odd numbers: group B has 3, the others 4" in said(SQUAT, people=7)
    assert "Odd numbers: groups B and C have 3, the others 4" in said(SQUAT, people=10)
    assert "Odd numbers" not in said(SQUAT, people=8)


@pytest.mark.parametrize(
    ("line", "people", "ends"),
    [
        (SQUAT, 7, "."),
        (SQUAT, 8, "; with one more each rests up to 44 s longer."),
        (PUSH, 8, "; with one more the rest stays."),
    ],
)
def test_who_comes_late_joins_the_smallest_group_and_a_full_one_rests_longer(
    line: str, people: int, ends: str
) -> None:
    """Five at a rack with sets of 24 s and 20 s between rest 4 x 44 s, four 3 x 44 s."""
    joins = "Who comes late joins group B at its next block, after a warm-up alone"
    assert said(line, people=people).endswith(f"{joins}{ends}")
