"""A school's full-body weeks by percent, as a coach brings them: one week at a time. Everyone is invented."""

import pytest

from setwright.checked import Checked
from setwright.findings import Finding, Level
from tests.rules.plans import checked, of

SQUAD = """\
squad:
  squad: Brackwater school, autumn
  unit: lb
  athletes:
    - name: Adaeze
      level: beginner
      maxes:
        flat barbell bench press: 95 lb tested 2027-08-30
        barbell back squat: 135 lb tested 2027-08-30
    - name: Bo
      level: intermediate
      maxes:
        flat barbell bench press: 185 lb tested 2027-08-30
        barbell back squat: 275 lb tested 2027-08-30
    - name: Cass
      level: beginner
      maxes:
        flat barbell bench press: none yet
        barbell back squat: 155 lb tested 2027-08-30
    - name: Dov
      level: intermediate
      maxes:
        flat barbell bench press: 92 lb tested 2027-08-30
        barbell back squat: 275 lb tested 2027-08-30
    - name: Emi
      level: beginner
      maxes:
        flat barbell bench press: 60 lb tested 2027-08-30
        barbell back squat: from 85 lb x 5 on 2027-08-30
"""
DAYS = """\
sessions:
  - day: Monday
    work:
      - flat barbell bench press: {dose}
        rest: 2:00
      - barbell back squat: {dose}
        rest: 2:00
      - one-arm dumbbell row: 3 x 10 each arm
      - barbell curl: 3 x 12
      - dip: 3 x max
  - day: Wednesday
    work:
      - incline 30 barbell bench press: 3 x 8 at own choice
      - standing barbell overhead press: 3 x 8
      - forward lunge: 3 x 10 each leg
  - day: Friday
    work:
      - flat barbell bench press: {dose}
      - barbell front squat: 3 x 5 at 70% of barbell back squat
      - pull-up: 3 x max
      - push-up: 2 x 20
"""


def week(dose: str, kind: str = "percent of: tested max\n") -> Checked:
    top = "plan: Autumn full-body week\nstarts: 2027-09-06\nunit: lb\ndose order: sets x reps\nsides: each\n"
    return checked(f"{top}{kind}{SQUAD}{DAYS.format(dose=dose)}")


def only(one: Checked, rule: str) -> Finding:
    (found,) = [finding for finding in one.findings if finding.rule == rule]
    return found


def test_who_has_no_max_is_an_error_with_the_lines_and_a_light_start() -> None:
    found = only(week("3 x 8 at 65%"), "no-max-for-percent")
    assert found.level is Level.error
    assert found.message == "flat barbell bench press: no max for Cass to take a percent of"
    assert "on 2 lines" in found.why
    assert [seen.line for seen in found.seen if seen.line] == [39, 53]
    assert "`- flat barbell bench press: 3 x 8 at 4 RIR` and `for: [Cass]`" in found.change


def test_a_max_typed_in_kilograms_among_pounds_is_asked_about_and_not_converted() -> None:
    found = only(week("3 x 8 at 65%"), "unit-looks-wrong")
    assert found.level is Level.advice
    assert found.message == "flat barbell bench press of Dov, 92 lb: typed in kg?"
    assert "0.33 of barbell back squat" in found.why
    assert "nothing is converted" in found.change


@pytest.mark.parametrize("kind", ["percent of: tested max\n", ""])
def test_three_or_more_at_97_5_percent_of_a_tested_max_is_a_question(kind: str) -> None:
    found = only(week("3 x 3 at 90%, then 1 x 3+ at 97.5%", kind), "reps-not-possible-at-load")
    assert found.level is Level.advice
    assert "3 or more repetitions at 97.5 % of the tested max" in found.message
    assert "the handbook table has 93 %" in found.why
    assert ("training max" in found.change) is (kind == "")


def test_the_other_weeks_are_possible() -> None:
    for dose in ("3 x 8 at 65%", "4 x 6 at 72.5%", "5 x 5 at 80%"):
        assert of(week(dose), "reps-not-possible-at-load") == []


def test_the_test_week_names_its_beginners_and_needs_no_max() -> None:
    one = week("test 1RM")
    assert of(one, "no-max-for-percent") == []
    assert of(one, "beginner-maximal-test") == [
        "flat barbell bench press is a maximal test for Adaeze, Cass and Emi"
    ]


def test_maxes_of_a_week_ago_are_fresh() -> None:
    assert of(week("3 x 8 at 65%"), "stale-max") == []


def test_a_lesson_of_thirty_minutes_names_what_to_leave_out_first() -> None:
    text = DAYS.replace("- day: Monday", "- day: Monday\n    minutes: 30")
    text = text.replace("barbell curl: 3 x 12", "barbell curl: 3 x 12\n        priority: 3")
    one = checked(
        f"plan: Autumn\nunit: lb\ndose order: sets x reps\nsides: each\n{text.format(dose='5 x 5 at 80%')}"
    )
    assert only(one, "session-over-time").change.startswith("leave out barbell curl (")


def test_pushes_to_pulls_and_a_warm_up_on_no_day_are_said_once_each() -> None:
    one = week("5 x 5 at 80%")
    assert only(one, "push-without-pull").message == "21 hard pushes and only 6 hard pulls in the week"
    cold = only(one, "no-warm-up-for-heavy-lift")
    assert (cold.where, len(cold.also)) == ("Monday", 1)
    assert all("elbow flexors" not in finding.message for finding in one.findings)
