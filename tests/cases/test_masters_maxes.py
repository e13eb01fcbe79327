"""A masters lifter's bench weeks in kilograms, as he brings them: one week at a time. He is invented."""

import pytest

from setwright.checked import Checked
from tests.rules.plans import checked, of


def week(load: str, single: str = "1 x 1 at RPE 8") -> Checked:
    return checked(f"""\
plan: Bench and shoulder care
starts: 2027-11-01
unit: kg
dose order: sets x reps
percent of: tested max
sides: each
squad:
  athletes:
    - name: Henrik
      born: 1966
      level: intermediate
      maxes:
        flat barbell bench press: 82 kg tested 2027-10-20
sessions:
  - day: Monday
    work: &bench-day
      - flat barbell bench press: 3 x 5 at {load}, tempo 0310, rest 3:00
      - flat barbell bench press: {single}
      - close-grip barbell bench press: 3 x 8
      - behind-neck press: 2 x 10
      - one-arm dumbbell row: 2 x 12 each arm
  - day: Thursday
    work: *bench-day
""")


@pytest.mark.parametrize("load", ["62,5 kg", "65 kg", "67,5 kg", "70 kg", "72,5 kg"])
def test_the_first_five_weeks_are_possible(load: str) -> None:
    assert of(week(load), "reps-not-possible-at-load") == []


def test_the_sixth_week_overshoots_his_max() -> None:
    assert of(week("75 kg"), "reps-not-possible-at-load") == [
        "flat barbell bench press: 5 repetitions at 91.5 % of the max of Henrik: possible?"
    ]


@pytest.mark.parametrize(
    ("single", "agrees"),
    [
        ("1 x 1 at RPE 8", True),  # no percent beside it
        ("1 x 1 at 90%, RPE 8", True),  # 1 and 2 left: 93 in the table
        ("1 x 1 at 75 kg, RPE 8", True),  # 91.5 %
        ("1 x 1 at 65 kg, RPE 8", False),  # 79 %
    ],
)
def test_effort_and_percent_of_the_top_single_agree_or_are_questioned(single: str, *, agrees: bool) -> None:
    assert (of(week("65 kg", single), "effort-and-percent-disagree") == []) is agrees
