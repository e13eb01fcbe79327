"""What changes over the weeks of a block, counted by hand from short plans."""

import pytest

from setwright.coverage import Coverage, Sets
from setwright.coverage.trend import (
    fullest,
    hard_sets,
    lifts_by_week,
    sets_by_week,
)
from tests.model.blocks import block
from tests.rules.plans import checked


def weeks(plan: str) -> list[Coverage]:
    one = checked(plan)
    assert not [finding for finding in one.findings if finding.level.name == "error"]
    return [week.coverage for week in one.weeks]


def lifts(work: str, number: int = 3, top: str = "") -> dict[tuple[str, str], list[float | None]]:
    return {
        (str(lift.movement["key"]), lift.kind): [one.amount if one else None for one in lift.planned]
        for lift in lifts_by_week(weeks(block(number, work, top)))
    }


def test_sets_of_parts_and_muscles_week_by_week() -> None:
    rows = {
        row.name: row.sets
        for row in sets_by_week(
            weeks(block(2, "- flat barbell bench press: [4 x 6 at 2 RIR, 6 x 6 at 2 RIR]"))
        )
    }
    assert rows["chest, sternal"] == (Sets(4, 4), Sets(6, 6))
    assert rows["chest"] == (Sets(4, 4), Sets(6, 6))
    assert rows["triceps"] == (Sets(2, 2), Sets(3, 3))
    assert "quadriceps" not in rows


def test_the_heaviest_load_of_each_kind() -> None:
    found = lifts(
        "- barbell back squat: sets of 5, 5, 5 at 80, 100, 90 kg\n"
        "- bench pull: 3 x 8\n  load: [50, none, 55-60]\n"
        "- flat barbell bench press: 4 x 5\n  load: [70%, 75%, 80%]\n"
        "- dip: 3 x 8 at bodyweight + 10 kg"
    )
    assert found == {
        ("back-squat", "mass"): [100, 100, 100],
        ("bench-pull", "mass"): [50, None, 60],
        ("flat-barbell-bench-press", "percent"): [70, 75, 80],
        ("parallel-bar-dip-leaning", "bodyweight"): [10, 10, 10],
    }


def test_heavy_lifts_come_first() -> None:
    found = list(lifts("- goblet squat: 3 x 8 at 24 kg\n- barbell back squat: 3 x 5 at 100 kg"))
    assert [key for key, _ in found] == ["back-squat", "goblet-squat"]


def test_a_percent_may_be_of_any_max() -> None:
    for of in ("", " of training max", " of estimated max", " of today's max"):
        assert lifts(f"- bench pull: 3 x 8 at 80%{of}", 2) == {("bench-pull", "percent"): [80, 80]}


def test_pounds_are_compared_as_kilograms() -> None:
    """1 lb is 0.45359237 kg (NIST Handbook 44, appendix C)."""
    found = lifts("- barbell back squat: 2 x 5 at 220 lb, then 1 x 5 at 99 kg", 2)
    assert found["back-squat", "mass"] == [pytest.approx(99.7903214)] * 2


def test_the_load_of_a_complex_and_of_one_athlete_are_planned_too() -> None:
    squad = "squad:\n  athletes:\n    - name: Isla\n    - name: Rory\n"
    own = "- barbell back squat: 3 x 5\n  load:\n    Isla: 110 kg\n    Rory: 100 kg"
    assert lifts(own, 2, squad)["back-squat", "mass"] == [110, 110]
    shared = "- complex:\n    - bent-over barbell row: 5\n  rounds: 3\n  load: 40 kg"
    assert lifts(shared, 2)["bent-over-barbell-row", "mass"] == [40, 40]


@pytest.mark.parametrize(
    "load", ["80% of back squat", "60% of bodyweight", "own choice", "bodyweight", "red band"]
)
def test_what_has_no_number_to_compare_is_no_planned_load(load: str) -> None:
    assert lifts(f"- bench pull: 3 x 8 at {load}", 2) == {}


def test_the_fullest_week_by_the_low_end_of_its_count() -> None:
    plan = weeks(block(3, "- bench pull: [6 x 8 at 2 RIR, 5-9 x 8 at 2 RIR, 4 x 8 at 2 RIR]"))
    assert [hard_sets(week) for week in plan] == [Sets(6, 6), Sets(5, 9), Sets(4, 4)]
    assert fullest(plan) == 6
    assert fullest([]) == 0
