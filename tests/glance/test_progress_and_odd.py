"""Where the block goes, what is odd, what changed."""

import pytest

from setwright.checked import check_plan
from setwright.glance import glance
from tests.glance.plans import answers, of, of_example
from tests.model.blocks import block
from tests.rules.plans import checked, week

BLOCK = block(
    4,
    "- back squat: 3 x 5\n  load: [100, 105, 110, 80]\n"
    "- flat barbell bench press: 3 x 3\n  load: [95%, 100%, 102%, 80%]\n"
    "- bench pull: [3 x 8 at 2 RIR, 4 x 8 at 2 RIR, 4 x 8 at 2 RIR, 2 x 8 at 2 RIR]",
    "next: add 2.5 kg when every set reaches the top\n",
)


def test_next_weeks_numbers() -> None:
    assert of(BLOCK, "progress", 1)[0] == (
        "Week 2: bench pull 4 x 8 at 2 RIR (now 3 x 8 at 2 RIR), barbell back squat 105 kg (now 100 kg) "
        "and flat barbell bench press 100 % (now 95 %)."
    )
    assert of(BLOCK, "progress", 4)[0] == "Next time: add 2.5 kg when every set reaches the top."


def test_movements_that_come_and_go_and_loads_in_the_dose() -> None:
    plan = block(
        2,
        "- back squat: [3 x 5 at 100 kg, 3 x 5 at 105 kg]\n- bench pull: [3 x 8, none]\n- dip: [none, 2 x 6]",
    )
    assert of(plan, "progress", 1)[0] == (
        "Week 2: back squat 3 x 5 at 105 kg (now 3 x 5 at 100 kg), dip 2 x 6 (new) and bench pull left out."
    )


def test_the_first_week_over_the_max_and_what_nobody_can_say() -> None:
    lighter, over, unknown = of(BLOCK, "progress", 1)[1:]
    assert lighter.startswith("Lighter: week 4 (by its sets or loads, not under `lighter weeks`)")
    assert over == "Week 3 is the first with a load over the tested max: flat barbell bench press."
    assert unknown == "No tested max is given to hold these loads against: back squat."


def test_no_percent_passes_the_max() -> None:
    calm = BLOCK.replace("102%", "100%").replace("  load: [100, 105, 110, 80]\n", "")
    assert of(calm, "progress", 1)[2:] == ("No planned load passes the tested max.",)


def test_a_week_that_asks_for_the_same_and_a_week_off() -> None:
    same = block(3, "- bench pull: 3 x 8 at 2 RIR", "lighter weeks:\n  week 3: no training\n")
    assert of(same, "progress", 1)[0] == "Week 2: the same numbers."
    assert of(same, "progress", 2)[:2] == (
        "Week 3: no training.",
        "Lighter: week 3 (no training), 0 hard sets; 3 in the fullest week.",
    )


def test_what_is_typed_for_a_lighter_week_is_not_told_as_done() -> None:
    told = of_example("block.yaml", "progress", 3)
    assert told[0] == (
        "Week 4 (half the sets): front plank left out, Romanian deadlift left out and "
        "goblet squat 20 kg (now 24 kg)."
    )
    assert told[1] == "Lighter: week 4 (half the sets), 16 hard sets; 32 in the fullest week."


def test_a_week_that_is_lighter_by_its_count_alone() -> None:
    plan = block(2, "- bench pull: [10 x 8 at 2 RIR, 5 x 8 at 2 RIR]")
    assert of(plan, "progress", 1)[1] == (
        "Lighter: week 2 (by its sets or loads, not under `lighter weeks`), 5 hard sets; "
        "10 in the fullest week."
    )


def test_one_week_alone() -> None:
    plain = week("Monday\nbench pull: 3 x 8 at 2 RIR")
    assert of(plain, "progress") == ("Next time: nothing is written.",)
    line = week("Monday\nbench pull: 3 x 8 at 2 RIR\n        next: repeat")
    assert of(line, "progress")[0] == "Next time: repeat."


def test_nothing_is_odd() -> None:
    assert of_example("week-flawed.yaml", "odd") == (
        "Nothing: all was read as typed, and nothing was taken for granted.",
    )


def test_what_was_not_written_and_is_taken() -> None:
    plan = week("Monday\nbench pull: 3 x 8\nback squat: 1 x 5 at 2 RIR\ndip: 3 x 8 at 2 RIR, rest 2:00")
    assert of(plan, "odd") == (
        "Taken where nothing is written: 3 hard sets without an effort and rest of 2:00 in 1 line.",
    )


def test_what_can_not_be_read_and_where() -> None:
    plan = week("Monday\nbench pull: 3 x\npush-upp: 3 x 8 at 2 RIR, rest 60 s", top="squad: crew.yaml\n")
    crew = "squad: Hall\nathletes:\n  - name: Isla\n    hight: 170\n"
    one = check_plan("week.yaml", plan, {"crew.yaml": crew}.get)
    assert answers(one)["odd"][0] == (
        "3 places in the text can't be read as typed: line 4 of crew.yaml, line 9 and line 10."
    )


def test_what_reads_in_an_unusual_way_and_with_a_guess() -> None:
    told = of(week("Monday\nbench pull: 3 x 8 at 62,5 kg, 2 RIR, rest 2:00"), "odd")
    assert told == ("Read with a guess: line 8, 62,5 is read as 62.5.",)


def test_one_movement_typed_in_two_ways() -> None:
    plan = week(
        "Monday\ndip: 3 x 8 at 2 RIR, rest 2:00\nleaning parallel-bar dip: 3 x 8 at 2 RIR, rest 2:00\n"
        "Dip: 3 x 8 at 2 RIR, rest 2:00"
    )
    assert of(plan, "odd") == ("One movement, typed in 2 ways: dip and leaning parallel-bar dip.",)


def test_own_movements_that_no_line_uses() -> None:
    own = "movements:\n  hall press:\n    like: push-up\n  deck press:\n    like: push-up\n"
    plan = week("Monday\nhall press: 3 x 8 at 2 RIR, rest 2:00", top=own)
    assert of(plan, "odd") == ("Movements of your own that no line uses: deck press.",)


PULLS = week("Monday\nbench pull: 3 x 8 at 2 RIR, rest 2:00")


def test_nothing_to_compare_with() -> None:
    assert of(PULLS, "changed") == (
        "No earlier plan is named under `follows:`, so there is nothing to compare with.",
    )
    assert of(PULLS + "follows: week-2.yaml\n", "changed") == (
        "It follows week-2.yaml, which can't be compared with; `setwright check` says why.",
    )


def test_what_changed_since_the_plan_that_is_followed() -> None:
    now = PULLS.replace("3 x 8", "5 x 8") + "follows: week-2.yaml\n"
    told = answers(checked(now, {"week-2.yaml": PULLS}.get))
    assert told["changed"] == ("Since week-2.yaml: bench pull 5 sets, before 3.",)
    assert "Against week-2.yaml: back +67 %" in told["dose"][1]
    same = answers(checked(PULLS + "follows: week-2.yaml\n", {"week-2.yaml": PULLS}.get))
    assert same["changed"] == ("Since week-2.yaml: nothing.",)


def test_lines_that_are_new_and_gone_since() -> None:
    plan = block(2, "- bench pull: 3 x 8\n- dip: [3 x 8, none]\n- push-up: [none, 3 x 8]")
    assert of(plan, "changed", 2) == ("Since week 1: new: push-up on Monday; gone: dip on Monday.",)


def test_what_changed_since_the_week_before_and_more_than_fits() -> None:
    lifts = ("bench pull", "dip", "back squat", "push-up", "pull-up", "front squat")
    plan = block(2, "\n".join(f"- {lift}: [3 x 8 at 2 RIR, 4 x 8 at 2 RIR]" for lift in lifts))
    (told,) = of(plan, "changed", 2)
    assert told.startswith("Since week 1: bench pull 4 sets, before 3; ")
    assert told.endswith("; and 2 more.")


def test_last_week_as_it_is_typed() -> None:
    plan = week("Monday\nbench pull: 3 x 8 at 2 RIR", top="last week:\n  bench pull: 3 sets\n")
    assert of(plan, "dose")[1] == "Against last week as it is typed, only what is told above is a jump."


def test_a_plan_that_can_not_be_read_has_no_summary() -> None:
    with pytest.raises(ValueError, match=r"week\.yaml: there is no plan to look at"):
        glance(checked("plan: [\n"))


def test_the_note_stands_where_figures_of_the_model_do() -> None:
    assert glance(checked(week("Monday\nback squat: 3 x 8 at 2 RIR"))).note == ""
    assert "cadaver" in glance(checked(week("Monday\nback squat: 3 x 8", top="focus: [chest]\n"))).note


def test_a_block_without_a_lighter_week() -> None:
    assert of(block(2, "- bench pull: 3 x 8 at 2 RIR"), "progress", 1)[1:] == ("Lighter week: none.",)
