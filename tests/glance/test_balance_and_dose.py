"""Balance and dose at a glance: pull and push, parts, gaps with their change, sets, jumps, days."""

from setwright.glance.balance import OF_BALANCE
from setwright.glance.dose import RULES as OF_DOSE
from setwright.glance.fits import RULES as OF_FITS
from setwright.glance.loading import RULES as OF_LOADING
from setwright.glance.odd import RULES as OF_ODD
from setwright.glance.progress import RULES as OF_PROGRESS
from setwright.rules import EVERY_RULE
from tests.glance.plans import of, of_example
from tests.model.blocks import block
from tests.rules.plans import week

PRESS = "flat barbell bench press: 6 x 6 at 2 RIR"


TOLD_IN_THEIR_OWN_WORDS = {
    "limit-broken",
    "avoided-move",
    "modified-but-nothing-changed",
    "above-tested-max",
}


def test_every_rule_is_spoken_of_by_one_answer() -> None:
    spoken = [OF_BALANCE, OF_DOSE, OF_LOADING, OF_FITS, OF_PROGRESS, OF_ODD, TOLD_IN_THEIR_OWN_WORDS]
    assert sorted(rule for rules in spoken for rule in rules) == sorted(rule.id for rule in EVERY_RULE)


def test_a_week_without_a_gap() -> None:
    sums, nothing = of_example("week-good.yaml", "balance")
    assert sums == (
        "Hard sets: pull 15, push 11. Chest: clavicular 13.5 (incline 30 press); "
        "sternal 12 (flat bench press); costal 9.5 (dip, long 85 %)."
    )
    assert nothing == "No gap and no advice."


def test_each_gap_with_the_change_that_closes_it() -> None:
    sums, first, second = of_example("week-flawed.yaml", "balance")
    assert sums.startswith("Hard sets: pull 8, push 12. Chest: ")
    assert first.startswith(
        "Gap: Monday's flat barbell bench press is never finished past the midline. Change: "
    )
    assert "level cable crossover: 3 x 12" in first
    assert second.startswith("Gap: Thursday has 6 hard chest sets")


def test_more_than_two_gaps_are_counted_and_what_is_allowed_is_said() -> None:
    plan = week(f"Monday\n{PRESS}", f"Thursday\n{PRESS}", top="focus: [chest]\n")
    told = of(plan, "balance")
    assert told[0].endswith("costal 6 (flat bench press, line no, long 65 %, short no).")
    assert told[3].startswith("And ")
    allowed = of(plan + "allow:\n  push-without-pull: pulls are rowed on water\n", "balance")
    assert allowed[-1] == "Allowed on purpose: push-without-pull (pulls are rowed on water)."


def test_more_on_one_side_than_on_the_other() -> None:
    plan = week("Monday\none-arm dumbbell row: 3 x 8 left, then 2 x 8 right\nbench pull: 3 x 8 at 2 RIR")
    told = of(plan, "balance")
    assert told[1] == "More sets on one side: one-arm dumbbell row (left 3, right 2)."


def test_a_week_without_chest_and_one_that_is_not_judged_yet() -> None:
    legs = of(week("Monday\nback squat: 4 x 8 at 2 RIR\nbench pull: 4 x 8 at 2 RIR"), "balance")
    assert legs == ("Hard sets: pull 4, push 0. The chest is not trained this week.", "No gap and no advice.")
    little = of(week("Monday\nback squat: 4 x 8 at 2 RIR\ndip: 3 x 8 at 2 RIR"), "balance")
    assert little[0].endswith("The chest has 3, too few to say what is left out.")
    waiting = of(week(f"Monday\n{PRESS}\nbench pull: 3 x"), "balance")
    assert waiting[-1] == "What the week leaves out is not judged until its errors are mended."


def test_sets_a_muscle_most_first_with_the_way_of_counting() -> None:
    sets, before, days = of_example("week-good.yaml", "dose")
    assert sets.startswith(
        "Hard sets a muscle, helpers half (pelland2024, abstract): chest 20, back 16.5, rear"
    )
    assert before == "No week before it to compare the sets with."
    assert days == "Heavy pushes on Monday, Wednesday and Friday, at least 2 days from one to the next."


def test_what_the_ranges_say() -> None:
    told = of(week(f"Monday\n{PRESS}", top="aim: size\n"), "dose")
    assert told[1] == "Gap: too few hard sets in the week: chest 6 of 10."


JUMPS = block(
    4,
    "- bench pull: [4 x 8 at 2 RIR, 5 x 8 at 2 RIR, 5 x 8 at 2 RIR, none]\n"
    "- back squat: [none, 4 x 5 at 2 RIR, 4 x 5 at 2 RIR, 4 x 5 at 2 RIR]\n"
    "- standing calf raise: [4 x 8 at 2 RIR, 3 x 8 at 2 RIR, 3 x 8 at 2 RIR, 3 x 8 at 2 RIR]",
)


def test_the_change_from_the_week_before() -> None:
    """5 sets on 4 are a quarter more, 3 on 4 a quarter less."""
    jump, told = of(JUMPS, "dose", 2)[1:]
    assert jump.startswith("Advice: many more hard sets than in week 1: ")
    assert told.startswith("Against week 1: ")
    assert "back +25 %" in told
    assert "calves -25 %" in told
    assert of(JUMPS, "dose", 3)[1] == "Against week 2: the same hard sets."


def test_what_is_new_and_what_is_gone() -> None:
    two = block(2, "- back squat: [none, 4 x 5 at 2 RIR]\n- dumbbell curl: [3 x 8 at 2 RIR, none]")
    assert of(two, "dose", 2)[-1] == (
        "Against week 1: quadriceps new, hamstrings new, glutes new and elbow flexors gone."
    )


def test_a_week_that_trains_nothing_hard() -> None:
    assert of(week("Monday\nsuitcase carry: 3 x 30 m each side"), "dose")[0].endswith(": none.")


def test_days_to_the_match_and_one_heavy_day() -> None:
    plan = week(f"Monday\n{PRESS}", f"Tuesday\n{PRESS}", "Friday\nbench pull: 3 x 8 at 2 RIR")
    near = plan.replace("- day: Friday\n", "- day: Friday\n    days to match: 1\n")
    assert of(near, "dose")[-1] == (
        "Heavy pushes on Monday and Tuesday, at least 1 day from one to the next; "
        "Friday 1 day before the match."
    )
    there = week("Friday\nbench pull: 3 x 8 at 2 RIR").replace(
        "- day: Friday\n", "- day: Friday\n    days to match: 0\n"
    )
    assert of(there, "dose")[-1] == "Friday on match day."
