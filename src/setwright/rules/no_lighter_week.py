"""Rule no-lighter-week: hard weeks in a row, and no lighter one comes after them."""

from collections.abc import Iterator

from setwright.reading.weeks import say_weeks
from setwright.rules.past import LOAD_OF_A_LIGHTER_WEEK, SETS_OF_A_LIGHTER_WEEK
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule

BAD = """\
plan: Six weeks uphill
unit: kg
dose order: sets x reps
weeks: 6
sessions:
  - day: Monday
    work:
      - leg press: 4 x 10 at 3 RIR
"""
GOOD = BAD.replace("sessions:", "lighter weeks:\n  week 6: half the sets\nsessions:")

AFTER = Option(
    "hard weeks in a row",
    6,
    "weeks",
    "deload_survey: every 5.8th week is a lighter one, standard deviation 3.4 weeks (survey, mirror)",
)


def find(case: Case) -> Iterator[Fault]:
    """One fault for a row of hard weeks, in the week in which it is full and no lighter one comes next."""
    week, past = case.coverage.week, case.past
    if past.hard_in_a_row != AFTER.value or past.lighter_next:
        return
    row = say_weeks(range(week.number - past.hard_in_a_row + 1, week.number + 1))
    yield Fault(
        place=week.place,
        where="the block",
        message=f"{row} are hard weeks in a row, and no lighter one comes after them in the plan",
        why="tiredness adds up over weeks, and a lighter week lets it out before it is seen in the loads",
        cure=Cure(f"write `lighter weeks:` and under it for example `week {week.number}: half the sets`"),
    )


RULE = Rule(
    id="no-lighter-week",
    looks_at="block",
    summary="six hard weeks in a row in a plan of several weeks, with no lighter week after them",
    why="what athletes report and a panel agrees on, not what a trial has shown: lighter weeks differ from "
    "one athlete to the next by more than half their mean distance (deload_survey), and the panel gives "
    "opinions (bell2023). A week counts as lighter when it is written so, has no training, or has clearly "
    "fewer sets or less load than the one before",
    change="make one week lighter: under `lighter weeks`, or by its own sets and loads",
    source="deload_survey (survey of 246 athletes, mirror)",
    bad=BAD,
    good=GOOD,
    find=find,
    sources=("deload_survey", "bell2023"),
    options=(
        AFTER,
        Option(
            "hard sets of a lighter week, at most", SETS_OF_A_LIGHTER_WEEK, "% of the week before", CHOICE
        ),
        Option("load of a lighter week, at most", LOAD_OF_A_LIGHTER_WEEK, "% of the week before", CHOICE),
    ),
)
