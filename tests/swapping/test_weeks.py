"""Plans of several weeks and days like another one: which week is meant, and what happens to the rest."""

import pytest

from setwright.report.swap import BY_HAND, swap_text
from setwright.swapping.instead import propose_for
from setwright.swapping.proposal import NotToSwap, Proposal, open_week, propose
from tests.rules.plans import HEAD, checked, nothing_beside

BLOCK = f"""\
{HEAD}weeks: 3
focus: [chest]
lighter weeks:
  week 3: half the sets
sessions:
  - day: Monday
    minutes: [45, 45, 30]
    work:
      - flat barbell bench press: 4 x 6 at 2 RIR
      - level cable crossover: 3 x 12 at 1 RIR
        only in: week 1
      - bench pull: 4 x 8 at 2 RIR
  - day: Thursday
    work:
      - incline 30 barbell bench press: 4 x 6 at 2 RIR
      - low-to-high cable crossover: 3 x 12 at 1 RIR
      - dip: 3 x 8 at 2 RIR
      - high-to-low cable crossover: 2 x 12 at 1 RIR
      - pull-up: 4 x 8 at 2 RIR
"""
PAIR = f"""\
{HEAD}level: beginner
sessions:
  - day: Monday
    work:
      - push-up: 3 x 10 at 2 RIR
      - goblet squat: 3 x 10 at 3 RIR
  - day: Thursday
    like: Monday
"""


def of_week(text: str, number: int) -> Proposal:
    return propose(checked(text), nothing_beside, number)


def test_the_first_week_with_an_open_gap_is_proposed_for() -> None:
    one = checked(BLOCK)
    assert open_week(one) == 2
    assert open_week(checked(BLOCK.replace("        only in: week 1\n", ""))) == 1
    text = swap_text(of_week(BLOCK, 2))
    assert text.startswith("A week, week 2 of 3: 1 open gap\n")
    assert "Stays open: nothing." in text


def test_the_matrix_before_and_after_is_that_of_the_week() -> None:
    proposal = of_week(BLOCK, 2)
    assert proposal.after
    assert [one.week.number for one in (*proposal.before.weeks, *proposal.after.weeks)] == [2, 2]


def test_what_the_lines_do_to_other_weeks_is_said() -> None:
    without = BLOCK.replace("        only in: week 1\n", "").replace(
        "      - level cable crossover: 3 x 12 at 1 RIR\n", ""
    )
    assert of_week(without, 2).elsewhere == ()
    tight = BLOCK.replace("[45, 45, 30]", "[24, 45, 45]")
    (words,) = of_week(tight, 2).elsewhere
    assert words == "week 1: Monday takes 26 of 24 min; Monday has level cable crossover twice"
    crowded = BLOCK.replace(
        "3 x 12 at 1 RIR\n        only in: week 1", "9 x 12 at 1 RIR\n        only in: week 1"
    )
    assert of_week(crowded, 2).elsewhere[0].startswith("week 1: gap sets-over-range; ")
    said = " ".join(swap_text(of_week(tight, 2)).split())
    assert f"The lines stand in other weeks too, and there: {words}." in said


def test_a_line_replaced_stays_in_its_weeks() -> None:
    text = f"""\
{HEAD}weeks: 2
gym:
  racks: 1
  benches: 1
  bars:
    20 kg: 1
sessions:
  - day: Monday
    work:
      - bent-over barbell row: 4 x 8 at 2 RIR
      - dip: 2 x 8 at 2 RIR
        only in: week 2
"""
    proposal = of_week(text, open_week(checked(text)))
    assert proposal.edits
    assert proposal.edits[0].new[-1] == "        only in: week 2"
    assert proposal.elsewhere == ()


def test_a_week_that_is_lighter_or_without_training_is_left_alone() -> None:
    with pytest.raises(NotToSwap, match="A week, week 3 of 3 is lighter on purpose"):
        of_week(BLOCK, 3)
    stages = "aim: return\nstages:\n  light:\n    signed off: not yet\n"
    day = "  - day: Monday\n    stage: light\n    work:\n      - dip: 3 x 8 at 2 RIR\n"
    with pytest.raises(NotToSwap, match="no session is in force"):
        of_week(f"{HEAD}{stages}sessions:\n{day}", 1)


def test_a_day_like_another_is_written_by_hand_and_how_is_said() -> None:
    said = swap_text(of_week(PAIR, 1))
    assert BY_HAND in said
    assert "  | - chest-supported dumbbell row: 3 x 10 at 2 RIR" in said
    words = " ".join(said.split())
    copied = "Thursday is like Monday: write the line under `add:` of Thursday"
    assert copied in words or "Thursday shares lines with Monday: what is typed there changes both" in words


def test_the_week_in_which_an_athlete_breaks_a_limit() -> None:
    limit = "        - arm behind at most: 0 deg\n          until: cleared\n          set by: the physio\n"
    squad = f"squad:\n  athletes:\n    - name: Isla\n      limits:\n{limit}"
    text = f"{HEAD}weeks: 2\n{squad}sessions:\n  - day: Monday\n    work:\n"
    text += "      - front plank: 3 x 30 s\n      - flat barbell bench press: 3 x 8 at 2 RIR\n"
    text += "        only in: week 2\n"
    one = checked(text)
    assert open_week(one, against_one=True) == 2
    assert not propose_for(one, "Isla", 1).lines
    (line,) = propose_for(one, "Isla", 2).lines
    assert line.edit
