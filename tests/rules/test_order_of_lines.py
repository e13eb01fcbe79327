"""Rules about the order of days and lines: what follows what, what is dropped first, what is light."""

import pytest

from setwright.findings import Level
from tests.rules.plans import HEAD, checked, of, rules_in, week

NEXT_DAY, BOTTOM, LIGHT = "same-part-hard-next-day", "bottom-lines-hold-all-the-pulls", "light-before-heavy"


def two_days(first: str, then: str, *, sets: int = 4, top: str = "") -> str:
    return week(
        f"{first}\nback squat: {sets} x 8 at 3 RIR", f"{then}\nleg press: {sets} x 10 at 3 RIR", top=top
    )


def test_a_part_trained_hard_on_two_following_days_is_said_on_the_second() -> None:
    (found,) = (f for f in checked(two_days("Monday", "Tuesday")).findings if f.rule == NEXT_DAY)
    assert found.where == "Tuesday"
    assert found.message == (
        "Tuesday trains hard again what Monday trained the day before: quadriceps 4 and 4 sets, "
        "glutes 4 and 4 sets"
    )
    assert found.level is Level.advice


@pytest.mark.parametrize(
    ("first", "then", "sets", "top"),
    [
        ("Monday", "Wednesday", 4, ""),
        ("Monday", "Tuesday", 3, ""),
        ("Sunday", "Monday", 4, ""),
        ("Monday", "Tuesday", 7, "aim: sport\nsport: rowing\n"),
        ("Monday", "Tuesday", 4, "aim: return\n"),
    ],
)
def test_a_day_between_few_sets_sport_and_the_way_back_are_silent(
    first: str, then: str, sets: int, top: str
) -> None:
    assert not of(checked(two_days(first, then, sets=sets, top=top)), NEXT_DAY)


def test_sport_is_asked_from_eight_sets_a_day() -> None:
    push = "\npush-up: 4 x 10 at 2 RIR"
    days = [f"{day}\nback squat: 8 sets of 8 at 3 RIR" for day in ("Monday", "Tuesday")]
    assert of(checked(week(days[0] + push, days[1], top="aim: sport\nsport: rowing\n")), NEXT_DAY)


def test_dates_follow_each_other_over_a_weekend_and_a_session_without_a_day_follows_nothing() -> None:
    text = two_days("Monday", "Tuesday")
    dated = text.replace("day: Monday", "date: 2027-10-31").replace("day: Tuesday", "date: 2027-11-01")
    assert of(checked(dated), NEXT_DAY)
    assert not of(checked(text.replace("day: Tuesday", "name: Legs")), NEXT_DAY)


def test_two_lines_of_the_chest_are_two_parts() -> None:
    flat, incline = (
        "flat dumbbell bench press: 4 x 10 at 2 RIR",
        "incline 45 dumbbell bench press: 4 x 10 at 2 RIR",
    )
    assert not of(checked(week(f"Monday\n{flat}", f"Tuesday\n{incline}")), NEXT_DAY)
    again = of(checked(week(f"Monday\n{flat}", f"Tuesday\n{flat}")), NEXT_DAY)
    assert "sternal part of the chest 4 and 4 sets" in again[0]


FIVE = """Monday
push-up: 4 x 10 at 2 RIR
goblet squat: 4 x 10 at 3 RIR
glute bridge: 4 x 12 at 3 RIR
{}: 4 x 10 at 2 RIR
front plank: 3 x 30 s hold"""
ROW = "bench pull"


def test_pulls_that_are_dropped_first_are_said_with_what_to_move() -> None:
    (found,) = (f for f in checked(week(FIVE.format(ROW))).findings if f.rule == BOTTOM)
    assert found.change == "move bench pull up behind the first push, or write `priority: 1` under it"
    assert "cut first: bench pull" in found.message


def test_a_pull_that_stays_on_any_day_is_enough() -> None:
    kept = "Thursday\nbench pull: 4 x 10 at 2 RIR\npush-up: 4 x 10 at 2 RIR"
    assert not of(checked(week(FIVE.format(ROW), kept)), BOTTOM)


def test_priorities_decide_before_the_order_of_lines() -> None:
    text = week(FIVE.format(ROW))
    first = text.replace("bench pull: 4 x 10 at 2 RIR", "bench pull: 4 x 10 at 2 RIR\n        priority: 1")
    assert not of(checked(first), BOTTOM)
    dropped = text.replace("push-up: 4 x 10 at 2 RIR", "push-up: 4 x 10 at 2 RIR\n        priority: 3")
    assert not of(checked(dropped), BOTTOM)


def test_a_session_without_a_push_or_without_a_pull_is_not_judged() -> None:
    assert not of(checked(week(FIVE.format(ROW).replace("push-up", "leg press"))), BOTTOM)
    assert not of(checked(week(FIVE.format("leg curl"))), BOTTOM)


FLY, PRESS = "level cable crossover: 2 x 12 at 1 RIR", "flat barbell bench press: 3 x 8 at 2 RIR"


def test_a_crossover_before_its_press_is_said_once() -> None:
    twice = week(f"Monday\n{FLY}\n{PRESS}\nclose-grip barbell bench press: 3 x 8 at 2 RIR\n{PRESS}")
    found = [f for f in checked(twice).findings if f.rule == LIGHT]
    assert [f.message for f in found] == [
        "Monday: level cable crossover before the heavy flat barbell bench press of the same line"
    ]
    assert found[0].change.startswith("put level cable crossover after flat barbell bench press")


@pytest.mark.parametrize(
    "lines",
    [
        f"{PRESS}\n{FLY}",
        f"low-to-high cable crossover: 2 x 12 at 1 RIR\n{PRESS}",
        f"level cable crossover: 2 x 12 at 6 RIR\n{PRESS}",
        f"flat dumbbell bench press: 2 x 12 at 1 RIR\n{PRESS}",
    ],
)
def test_after_it_on_another_line_easy_or_a_press_itself_is_fine(lines: str) -> None:
    assert not of(checked(week(f"Monday\n{lines}")), LIGHT)


def test_sessions_that_do_it_are_one_finding() -> None:
    days = [f"{day}\n{FLY}\n{PRESS}\nbench pull: 4 x 8 at 2 RIR" for day in ("Monday", "Thursday")]
    found = [f for f in checked(week(*days, top="aim: strength\n")).findings if f.rule == LIGHT]
    assert len(found) == 1
    assert found[0].also == (
        "Thursday: level cable crossover before the heavy flat barbell bench press of the same line",
    )


def test_an_allow_in_one_session_leaves_the_other() -> None:
    days = [f"{day}\n{FLY}\n{PRESS}" for day in ("Monday", "Thursday")]
    text = week(*days, top="aim: strength\n")
    allow = f"    allow:\n      {LIGHT}: on purpose, the shoulder is warm then\n"
    found = checked(text.replace("  - day: Thursday\n", f"  - day: Thursday\n{allow}")).findings
    assert [(f.where, f.also) for f in found if f.rule == LIGHT] == [("Monday", ())]
    assert "allow-silences-nothing" not in {f.rule for f in found}


def test_one_session_alone_may_have_its_pulldown_elsewhere() -> None:
    text = f"{HEAD}work:\n  - bench pull: 10 x 8 at 2 RIR\n"
    assert "no-pull-from-overhead" not in rules_in(checked(text))
    rows = week("Monday\nbench pull: 8 x 8 at 2 RIR", "Friday\npush-up: 4 x 8 at 2 RIR")
    assert of(checked(rows), "no-pull-from-overhead") == ["8 hard pulls in the week and none from overhead"]
    above = rows.replace(
        "push-up: 4 x 8 at 2 RIR", "push-up: 4 x 8 at 2 RIR\n      - straight-arm pulldown: 2 x 12"
    )
    assert not of(checked(above), "no-pull-from-overhead")
