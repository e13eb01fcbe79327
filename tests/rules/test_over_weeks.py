"""What is found alike in several weeks is told once, with its weeks."""

from setwright.findings import Level
from tests.rules.plans import HEAD, checked, example, rules_in

PRESS = "      - flat barbell bench press: 6 x 6 at 2 RIR\n"
CROSS = "      - level cable crossover:\n          week 1: none\n          weeks 2-3: 3 x 12 at 1 RIR\n"


def block(*days: str, weeks: int = 3, top: str = "focus: [chest]\n") -> str:
    sessions = "".join(f"  - {day}\n" for day in days)
    return f"{HEAD}weeks: {weeks}\n{top}sessions:\n{sessions}"


def test_one_finding_for_all_weeks_in_which_it_holds() -> None:
    one = checked(block(f"day: Monday\n    work:\n{PRESS}{CROSS}"))
    told = [f for f in one.findings if f.rule == "no-work-across-the-midline"]
    assert [(f.weeks, f.level) for f in told] == [((1,), Level.gap)]
    always = checked(block(f"day: Monday\n    work:\n{PRESS}"))
    told = [f for f in always.findings if f.rule == "no-work-across-the-midline"]
    assert [f.weeks for f in told] == [(1, 2, 3)]


def test_numbers_that_differ_are_told_under_it() -> None:
    lines = "      - push-up: [8 x 10 at 2 RIR, 9 x 10 at 2 RIR, 8 x 10 at 2 RIR]\n"
    (finding,) = (
        f
        for f in checked(block(f"day: Monday\n    work:\n{lines}", top="")).findings
        if f.rule == "push-without-pull"
    )
    assert finding.weeks == (1, 2, 3)
    assert finding.message.startswith("8 hard pushes")
    assert [also.split(" and ")[0] for also in finding.also] == ["week 2: 9 hard pushes"]


def test_pushes_without_pulls_are_told_once_at_the_worst_level_wherever_they_stand() -> None:
    """Weeks 1 and 3 push most on Thursday and pull a little, week 2 does on Monday and pulls nothing."""
    monday = "      - push-up: [4 x 10 at 2 RIR, 8 x 10 at 2 RIR, 3 x 10 at 2 RIR]\n"
    thursday = (
        "      - dip: [8 x 10 at 2 RIR, 4 x 10 at 2 RIR, 8 x 10 at 2 RIR]\n"
        "      - bench pull: [3 x 10 at 2 RIR, none, 3 x 10 at 2 RIR]\n"
    )
    one = checked(
        block(
            f"day: Monday\n    work:\n{monday}",
            f"day: Thursday\n    work:\n{thursday}",
            top="level: beginner\n",
        )
    )
    (finding,) = (f for f in one.findings if f.rule == "push-without-pull")
    assert (finding.level, finding.weeks, finding.place.line) == (Level.gap, (1, 2, 3), 9)
    assert finding.message == "12 hard pushes and no pull at all in the week"
    assert finding.also == (
        "week 1: 12 hard pushes and only 3 hard pulls in the week",
        "week 3: 11 hard pushes and only 3 hard pulls in the week",
    )
    assert finding.change == (
        "weeks 1 and 3: add close-grip pulldown: 3 x 8 at 2 RIR (about 5 min); "
        "week 2: add chest-supported dumbbell row: 3 x 10 at 2 RIR (about 6 min)"
    )


def test_a_change_that_costs_something_else_in_each_week_says_so() -> None:
    lines = "      - push-up: [8 x 10 at 2 RIR, 9 x 10 at 2 RIR, 8 x 10 at 2 RIR]\n"
    one = checked(block(f"day: Monday\n    minutes: 30\n    work:\n{lines}", top="level: beginner\n"))
    (finding,) = (f for f in one.findings if f.rule == "push-without-pull")
    assert finding.change == (
        "add chest-supported dumbbell row: 3 x 10 at 2 RIR (weeks 1 and 3: about 6 min; "
        "Monday has 11 min left; week 2: about 6 min; Monday has 8 min left)"
    )


def test_a_change_that_is_another_in_each_week_is_told_for_each() -> None:
    pushes = "      - push-up: [6 x 10 at 2 RIR, 8 x 10 at 2 RIR, 10 x 10 at 2 RIR]\n"
    pulls = "      - bench pull: 10 x 8 at 2 RIR\n"
    one = checked(block(f"day: Monday\n    work:\n{pushes}{pulls}", top="aim: size\nfocus: [triceps]\n"))
    (finding,) = (f for f in one.findings if f.rule == "sets-under-range")
    assert finding.change == ("week 1: triceps: 7 more; week 2: triceps: 6 more; week 3: triceps: 5 more")


def test_days_that_differ_make_no_second_finding() -> None:
    top = "focus: [chest]\ntraining days: [Monday, Friday]\nrotate: [A, B]\n"
    days = (f"name: A\n    work:\n{PRESS}", "name: B\n    work:\n      - goblet squat: 3 x 8 at 2 RIR\n")
    told = [f for f in checked(block(*days, top=top)).findings if f.rule == "no-work-across-the-midline"]
    assert [f.weeks for f in told] == [(1, 2, 3)]
    on_one = block(days[0], weeks=2, top=top.replace("[A, B]", "[A]"))
    told = [f for f in checked(on_one).findings if f.rule == "no-work-across-the-midline"]
    assert [f.weeks for f in told] == [(1, 2)]
    assert not [also for also in told[0].also if also.startswith("week ")]


def test_an_allow_that_is_needed_in_one_week_is_not_idle_in_the_others() -> None:
    top = "focus: [chest]\nallow:\n  no-work-across-the-midline: shared cable\n"
    one = checked(block(f"day: Monday\n    work:\n{PRESS}{CROSS}", top=top))
    assert "allow-silences-nothing" not in rules_in(one)
    assert [(each.finding.weeks, each.reason) for each in one.allowed] == [((1,), "shared cable")]
    idle = "allow:\n  one-side-only: no\n"
    (finding,) = (
        f
        for f in checked(block(f"day: Monday\n    work:\n{PRESS}", top=idle)).findings
        if f.rule == "allow-silences-nothing"
    )
    assert finding.weeks == (1, 2, 3)


def test_a_week_is_judged_alone_when_it_is_asked_for() -> None:
    one = checked(block(f"day: Monday\n    work:\n{PRESS}{CROSS}"))
    assert "no-work-across-the-midline" in rules_in(one.only(1))
    assert "no-work-across-the-midline" not in rules_in(one.only(2))
    assert all(not f.weeks for f in one.only(1).findings)
    assert [cell.finding for row in one.only(1).matrix for cell in row.cells if cell.finding]
    flawed = example("week-flawed.yaml")
    assert flawed.only(1) == flawed


def test_a_lighter_week_is_not_told_that_it_has_too_few_sets() -> None:
    lines = "      - flat barbell bench press: 8 x 8 at 2 RIR\n      - bench pull: 8 x 8 at 2 RIR\n"
    days = (f"day: Monday\n    work:\n{lines}", f"day: Thursday\n    work:\n{lines}")
    assert "sets-under-range" not in rules_in(checked(block(*days, weeks=2, top="aim: size\n")))
    fewer = lines.replace("8 x 8", "[8 x 8 at 2 RIR, 2 x 8").replace(" at 2 RIR\n", " at 2 RIR]\n")
    days = (f"day: Monday\n    work:\n{fewer}", f"day: Thursday\n    work:\n{fewer}")
    (finding,) = (
        f for f in checked(block(*days, weeks=2, top="aim: size\n")).findings if f.rule == "sets-under-range"
    )
    assert finding.weeks == (2,)
    light = "aim: size\nlighter weeks:\n  week 2: half the sets\n"
    assert "sets-under-range" not in rules_in(checked(block(*days, weeks=2, top=light)))


def test_a_week_without_training_is_not_judged() -> None:
    top = "focus: [chest]\nlighter weeks:\n  week 2: no training\n"
    one = checked(block(f"day: Monday\n    work:\n{PRESS}", top=top))
    assert {f.weeks for f in one.findings} == {(1, 3)}
    assert one.weeks[1].matrix == ()


def test_the_block_of_the_example_checks_clean() -> None:
    one = example("block.yaml")
    assert one.findings == ()
    assert len(one.weeks) == 4
