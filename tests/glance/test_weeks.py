"""A block in sentences: what a cut week and a missed week lose, and loads as they were typed."""

import pytest

from setwright.coverage import Coverage
from setwright.coverage.trend import lifts_by_week
from setwright.glance.shapes import few
from setwright.glance.weeks import cut_sentences, missed_sentence, planned_text
from tests.model.blocks import block
from tests.rules.plans import checked


def weeks(plan: str) -> list[Coverage]:
    return [week.coverage for week in checked(plan).weeks]


CUT = (
    "- bench pull: 3 x 8 at 2 RIR\n  priority: 1\n"
    "- back squat: [3 x 5 at 2 RIR, 3 x 5 at 2 RIR, none]\n  priority: 3\n"
    "- standing calf raise: 3 x 12 at 1 RIR\n"
)


def test_weeks_that_lose_the_same_are_told_together() -> None:
    squat, both, last = cut_sentences(weeks(block(3, CUT)))
    assert squat.startswith(
        "Cut to priorities 1 and 2 in weeks 1-2 (out: back squat): no set for quadriceps, "
    )
    assert both.startswith("Cut to priority 1 in weeks 1-2 (out: back squat and standing calf raise): no set")
    assert both.endswith("glutes and calves.")
    assert last == "Cut to priority 1 in week 3 (out: standing calf raise): no set for calves."


def test_a_cut_that_loses_nothing() -> None:
    plan = block(2, "- bench pull: 3 x 8 at 2 RIR\n- one-arm dumbbell row: 3 x 8\n  priority: 3")
    assert list(cut_sentences(weeks(plan))) == [
        "Cut to priorities 1 and 2 (out: one-arm dumbbell row): every part and muscle keeps a set."
    ]


def test_a_week_missed() -> None:
    plan = block(2, "- bench pull: 3 x 8 at 2 RIR\n- standing calf raise: [3 x 12 at 1 RIR, none]")
    assert missed_sentence(weeks(plan)) == "One week missed, week 1: no set for calves."
    assert missed_sentence(weeks(block(2, "- bench pull: 3 x 8 at 2 RIR"))) == (
        "One week missed: the others train all that it trains."
    )


@pytest.mark.parametrize(
    ("typed", "said"),
    [
        ("62.5 kg", "62.5 kg"),
        ("135 lb", "135 lb"),
        ("20-22.5 kg", "22.5 kg"),
        ("75%", "75 %"),
        ("bodyweight + 10 kg", "+10 kg"),
        ("bodyweight - 20 kg", "-20 kg"),
        ("bodyweight + 5-10 kg", "+10 kg"),
    ],
)
def test_the_top_of_a_load_as_it_was_typed(typed: str, said: str) -> None:
    (lift,) = lifts_by_week(weeks(block(2, f"- pull-up: 3 x 5 at {typed}")))
    assert lift.planned[0] is not None
    assert planned_text(lift.planned[0]) == said


def test_one_in_each_hand() -> None:
    (lift,) = lifts_by_week(weeks(block(2, "- flat dumbbell bench press: 3 x 8 at 2 x 24 kg")))
    assert lift.planned[0] is not None
    assert planned_text(lift.planned[0]) == "2 x 24 kg"


def test_names_in_a_row_each_once() -> None:
    assert few(["a"]) == "a"
    assert few(["a", "b", "c", "d"]) == "a, b, c and d"
    assert few(["a", "b", "c", "d", "e", "f"], 2) == "a, b and 4 more"
