"""The file under `follows`: read beside the plan, and one line when it can't be."""

import pytest

from setwright.checked import check_plan
from setwright.findings import Level
from tests.rules.plans import week

BEFORE = week("Monday\nbench pull: 4 x 8 at 2 RIR")
SQUAD = "athletes:\n  - name: Ann\n"


def follows(name: str) -> str:
    return week("Monday\nbench pull: 4 x 8 at 2 RIR", top=f"follows: {name}\n")


def check(name: str, files: dict[str, str]) -> list[tuple[str, str, int]]:
    one = check_plan("week-3.yaml", follows(name), files.get)
    return [(f.level.name, f.message, f.place.line) for f in one.findings]


def test_a_plan_beside_is_read() -> None:
    one = check_plan("week-3.yaml", follows("week-2.yaml"), {"week-2.yaml": BEFORE}.get)
    assert one.findings == ()
    assert one.before is not None
    assert one.before.file == "week-2.yaml"
    assert one.before.coverage.muscles["back"].low == 4


def test_of_a_block_its_last_week_is_followed() -> None:
    lines = BEFORE.replace("4 x 8 at 2 RIR", "[4 x 8 at 2 RIR, 6 x 8 at 2 RIR]")
    block = lines.replace("sessions:", "weeks: 2\nsessions:")
    one = check_plan("week-3.yaml", follows("block.yaml"), {"block.yaml": block}.get)
    assert one.before is not None
    assert one.before.coverage.muscles["back"].low == 6


def test_of_a_block_the_week_that_is_named_is_followed() -> None:
    lines = BEFORE.replace("4 x 8 at 2 RIR", "[4 x 8 at 2 RIR, 6 x 8 at 2 RIR]")
    block = lines.replace("sessions:", "weeks: 2\nsessions:")
    one = check_plan("week-3.yaml", follows("block.yaml, week 1"), {"block.yaml": block}.get)
    assert one.before is not None
    assert one.before.coverage.muscles["back"].low == 4
    assert check("block.yaml, week 3", {"block.yaml": block}) == [
        ("error", "follows: block.yaml has 2 weeks, so no week 3", 5)
    ]


def test_what_it_names_is_looked_up_beside_it() -> None:
    before = BEFORE.replace("sessions:", "squad: squad.yaml\nsessions:")
    files = {"last/week-2.yaml": before, "last/squad.yaml": SQUAD}
    assert check("last/week-2.yaml", files) == []


@pytest.mark.parametrize("name", ["gone.yaml", "/etc/passwd"])
def test_a_missing_file_is_one_error_at_its_key(name: str) -> None:
    assert check(name, {"/etc/passwd": BEFORE}) == [
        ("error", f"follows: {name!r} can't be read beside the plan", 5)
    ]


def test_a_faulty_file_is_one_error_and_not_its_own() -> None:
    two = BEFORE.replace("bench pull", "bench pulley of doom").replace("day: Monday", "day: Mnday")
    assert check("week-2.yaml", {"week-2.yaml": two}) == [
        ("error", "follows: week-2.yaml has 2 errors, so nothing is compared with it", 5)
    ]
    assert check("week-2.yaml", {"week-2.yaml": SQUAD}) == [
        ("error", "follows: week-2.yaml has 1 error, so nothing is compared with it", 5)
    ]


def test_a_plan_that_follows_itself_is_asked() -> None:
    assert check("week-3.yaml", {"week-3.yaml": BEFORE}) == [
        ("error", "follows: week-3.yaml is this plan itself", 5)
    ]


def test_gaps_of_the_week_before_are_its_own() -> None:
    pushes = week("Monday\npush-up: 8 x 8 at 2 RIR", "Friday\nplank: 2 x 30 s")
    files = {"week-2.yaml": pushes}
    assert any(f.level is Level.gap for f in check_plan("week-2.yaml", pushes, files.get).findings)
    assert all("push" not in message for _, message, _ in check("week-2.yaml", files))


def test_what_the_week_leaves_out_is_judged_without_it() -> None:
    text = week("Monday\npush-up: 8 x 8 at 2 RIR", "Friday\nplank: 2 x 30 s", top="follows: gone.yaml\n")
    one = check_plan("week-3.yaml", text, lambda _: None)
    assert not one.waiting
    assert "push-without-pull" in {f.rule for f in one.findings}
