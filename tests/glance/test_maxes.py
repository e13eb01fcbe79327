"""Planned loads against tested maxes: by kilograms, by percent, for the first week and whom it is of."""

from setwright.glance.maxes import max_sentences
from setwright.library.table import library
from tests.model.blocks import block
from tests.rules.plans import checked, week

SQUAD = """\
squad:
  athletes:
    - name: Ann
      maxes:
        back squat: 110 kg tested 2027-09-06
    - name: Bo
      maxes:
        back squat: 120 kg tested 2027-09-06
"""


def told(plan: str) -> list[str]:
    one = checked(plan)
    return list(max_sentences(one.weeks, one.table or library()))


def squat(loads: str, top: str = SQUAD) -> str:
    return block(3, f"- back squat: 1 x 1\n  load: [{loads}]", top)


def test_the_first_week_over_a_tested_max_in_kilograms_and_whose() -> None:
    assert told(squat("100, 112.5, 122.5")) == [
        "Week 2 is the first with a load over the tested max: back squat (Ann)."
    ]
    assert told(squat("100, 110, 122.5")) == [
        "Week 3 is the first with a load over the tested max: back squat (Ann) and back squat (Bo)."
    ]
    assert told(squat("100, 105, 110")) == ["No planned load passes the tested max."]


def test_the_first_week_over_it_by_percent_is_nobodys_own() -> None:
    assert told(squat("100%, 101%, 102%", "")) == [
        "Week 2 is the first with a load over the tested max: back squat."
    ]


def test_pounds_are_held_against_kilograms() -> None:
    """242 lb are 109.77 kg and 243 lb 110.22 kg (1 lb = 0.45359237 kg: NIST Handbook 44, appendix C)."""
    assert told(squat("242 lb, 242 lb, 243 lb"))[0].startswith("Week 3 is the first")


def test_a_week_alone_and_a_lift_without_a_max() -> None:
    plan = week(
        "Monday\nback squat: 1 x 1 at 112.5 kg\nbench pull: 3 x 8 at 50 kg\npull-up: 3 x 5 at bodyweight\n"
        "band pull-apart: 2 x 15",
        top=SQUAD,
    )
    assert told(plan) == [
        "The week is one with a load over the tested max: back squat (Ann).",
        "No tested max is given to hold these loads against: bench pull.",
    ]


def test_without_a_load_there_is_nothing_to_say() -> None:
    assert told(week("Monday\nbench pull: 3 x 8 at 2 RIR")) == []
