"""A masters lifter's bench weeks in kilograms, as he brings them: one week at a time. He is invented."""

import pytest

from setwright.checked import Checked
from tests.cases.told import told, told_by_week
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


def test_six_pushes_to_a_pull_are_said_and_long_rests_are_not() -> None:
    one = week("65 kg")
    assert of(one, "push-without-pull") == ["18 hard pushes and only 4 hard pulls in the week"]
    assert not of(one, "no-warm-up-for-heavy-lift")
    assert all("rest" not in finding.message for finding in one.findings)


def test_six_weeks_uphill_have_no_lighter_one() -> None:
    assert of(checked(BLOCK), "no-lighter-week") == [
        "weeks 1-6 are hard weeks in a row, and no lighter one comes after them in the plan"
    ]
    assert not of(
        checked(BLOCK.replace("sessions:", "lighter weeks:\n  week 6: half the sets\nsessions:")),
        "no-lighter-week",
    )


BLOCK = """\
plan: Bench and shoulder care
weeks: 6
unit: kg
dose order: sets x reps
sides: each
level: intermediate
sessions:
  - day: Monday
    work:
      - flat barbell bench press: 3 x 5
        load: [62.5, 65, 67.5, 70, 72.5, 75]
        rest: 3:00
      - one-arm dumbbell row: 2 x 12 each arm
"""


WEEKS = """\
plan: Bench and shoulder care
starts: 2027-11-01
weeks: 6
unit: kg
aim: strength
dose order: sets x reps
percent of: tested max
sides: each
{room}squad:
  athletes:
    - name: Henrik
      born: 1966
      level: intermediate
      note: left shoulder pinches overhead
      maxes:
        flat barbell bench press: 82 kg tested 2027-10-20
sessions:
  - day: Monday
    work: &bench-day
      - flat barbell bench press: 3 x 5, tempo 0310, rest 3:00
        load: [62.5, 65, 67.5, 70, 72.5, 75]
      - flat barbell bench press: 1 x 1 at RPE 8
      - close-grip barbell bench press: 3 x 8
      - incline 30 dumbbell bench press: 3 x 10 at 35 lb
      - behind-neck press: 2 x 10
      - one-arm dumbbell row: 2 x 12 each arm
  - day: Thursday
    work: *bench-day
"""


def test_this_is_said_of_his_six_weeks_and_nothing_else() -> None:
    """No word on the long rests, the small plates, the one line he presses behind the neck, or who spots."""
    every = (1, 2, 3, 4, 5, 6)
    bench = "- flat barbell bench press: 3 x 5, tempo 0310, rest 3:00"
    assert told_by_week(checked(WEEKS.format(room=ROOM))) == [
        ("no-lighter-week", "plan: Bench and shoulder care", (6,)),
        ("line-never-followed", "work: &bench-day", every),
        ("push-without-pull", "work: &bench-day", every),
        ("reps-not-possible-at-load", bench, (6,)),
        ("bottom-lines-hold-all-the-pulls", "- one-arm dumbbell row: 2 x 12 each arm", every),
    ]


def test_nine_numbers_for_six_weeks_are_refused() -> None:
    """Decimal commas in a list: 62 5 65 67 5 70 72 5 75."""
    commas = WEEKS.format(room=ROOM).replace(
        "[62.5, 65, 67.5, 70, 72.5, 75]", "[62,5, 65, 67,5, 70, 72,5, 75]"
    )
    assert told(checked(commas)) == [("list-not-one-a-week", "load: [62,5, 65, 67,5, 70, 72,5, 75]")]


ROOM = """\
gym:
  bars:
    20 kg: 1
  plates per rack:
    20 kg: 1 pair
    10 kg: 1 pair
    5 kg: 1 pair
    2.5 kg: 1 pair
    1.25 kg: 1 pair
    0.5 kg: 1 pair
    0.25 kg: 1 pair
  dumbbells:
    25 lb: 1 pair
    30 lb: 1 pair
    35 lb: 1 pair
    40 lb: 1 pair
"""


def at_home(line: str) -> list[str]:
    """What is said of the load of a line in his room."""
    top = "plan: A\nunit: kg\nsides: each\ndose order: sets x reps\npercent of: tested max\n"
    people = "squad:\n  athletes:\n    - name: Henrik\n      maxes:\n"
    best = "        flat barbell bench press: 82 kg tested 2027-10-20\n"
    one = checked(f"{top}starts: 2027-11-01\n{ROOM}{people}{best}work:\n  - {line}\n")
    return [f"{f.message}; {f.change}" for f in one.findings if f.rule == "load-not-loadable"]


def test_dumbbells_stamped_in_pounds_are_not_thirty_five_kilograms() -> None:
    (said,) = at_home("incline 30 dumbbell bench press: 3 x 10 at 35")
    assert "at 35 kg: more than anything here" in said
    assert "write `35 lb` if that is stamped on it" in said
    assert at_home("incline 30 dumbbell bench press: 3 x 10 at 35 lb") == []


@pytest.mark.parametrize("load", ["62,5 kg", "67,5 kg", "72,5 kg", "63 kg", "75%"])
def test_small_plates_make_his_loads(load: str) -> None:
    """75 % of 82 kg is 61.5 kg, which plates of 0.5 and 0.25 kg make."""
    assert at_home(f"flat barbell bench press: 3 x 5 at {load}, rest 3:00") == []
