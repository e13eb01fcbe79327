"""Names looked up, and the questions that only the movement can raise."""

import pytest

from setwright.model.plan import Group
from tests.reading.plans import read, rules, whole_plan


def test_names_find_their_key_in_items_groups_and_warm_ups() -> None:
    warm_up = "warm-up:\n  - Push-ups: 10\n  - own drill: 1 x 10\n"
    text = f"plan: A\n{warm_up}work:\n  - superset:\n      - BB bench press: 3 x 8\n"
    result = read(text)
    assert result.week is not None
    assert [f.rule for f in result.findings] == ["sets-missing"]
    (session,) = result.week.sessions
    assert [item.key for item in session.warm_up] == ["push-up", None]
    assert isinstance(session.work[0], Group)
    assert session.work[0].items[0].key == "flat-barbell-bench-press"


@pytest.mark.parametrize(
    ("text", "rule", "change"),
    [
        ("- flat barbel bench pres: 3 x 8", "unknown-movement", "`flat barbell bench press`"),
        ("- xyzzy: 3 x 8", "unknown-movement", "`setwright move`"),
        ("- row: 3 x 8", "movement-unclear", "bent-over barbell row"),
        ("- front plank: 3 x 30", "number-without-unit", "3 x 30 s"),
        ("- sled push: 3 x 30", "number-without-unit", "3 x 30 m"),
        ("- flat barbell bench press: 3 x 5 at +5 kg", "plus-without-base", "last time + 5 kg"),
    ],
)
def test_what_the_movement_leaves_open_is_asked(text: str, rule: str, change: str) -> None:
    (finding,) = read(whole_plan(text)).findings
    assert finding.rule == rule
    assert change in finding.change
    assert finding.where == "the session"


@pytest.mark.parametrize(
    ("sides", "text", "kind"),
    [
        ("each", "one-arm dumbbell row: 3 x 10", "each"),
        ("in all", "one-arm dumbbell row: 3 x 10", "in_all"),
        ("in all", "one-arm dumbbell row: 3 x 10 each arm", "each"),
        ("each", "dip: 3 x 10", None),
        ("each", "forward lunge: 3 x 20 m", None),
        ("each", "rowing ergometer: 30:00", None),
        ("each", "suitcase carry: 3 x 20 m", "each"),
    ],
)
def test_the_plans_own_word_for_sides_fills_open_doses(sides: str, text: str, kind: str | None) -> None:
    result = read(f"plan: A\nsides: {sides}\nwork:\n  - {text}\n")
    assert result.findings == ()
    assert result.week is not None
    dose = result.week.sessions[0].items()[0].dose
    assert dose is not None
    side = dose.groups[0].sides
    assert (side.kind if side else None) == kind


def test_without_a_word_for_sides_it_is_asked_once_a_line() -> None:
    text = "plan: A\nwork:\n  - one-arm dumbbell row: 3 x 10\n  - one-arm dumbbell row: 3 x 10 each arm\n"
    assert rules(text) == ["side-not-written"]


def test_movements_of_ones_own_are_not_unknown() -> None:
    text = "plan: A\nmovements:\n  crate press:\n    like: push press\nwork:\n  - crate press: 3 x 8\n"
    assert rules(text) == []


def test_what_cannot_be_read_at_all_stays_so() -> None:
    assert read("").week is None
