"""Rules that look at what came before a week: jumps in hard sets, and hard weeks in a row."""

from collections.abc import Callable

import pytest

from setwright.findings import Finding, Level
from tests.model.blocks import block
from tests.rules.plans import checked, nothing_beside, of, rules_in, week

JUMP, NO_REST = "big-jump-from-last-week", "no-lighter-week"
SETS = "Monday\nleg extension: {} x 8 at 2 RIR"


def quads(sets: int, top: str = "") -> str:
    return week(SETS.format(sets), "Thursday\nbarbell curl: 2 x 10 at 2 RIR", top=top)


def beside(text: str) -> Callable[[str], str | None]:
    return {"week-2.yaml": text}.get


def jumps(sets: int, before: int, top: str = "follows: week-2.yaml\n") -> list[str]:
    return of(checked(quads(sets, top), beside(quads(before))), JUMP)


def test_both_the_percent_and_the_sets_are_asked() -> None:
    assert jumps(10, 6) == ["many more hard sets than in week-2.yaml: quadriceps 10 after 6"]
    assert not jumps(9, 6)  # three sets more, 50 %
    assert not jumps(13, 10)  # three sets and 30 %
    assert not jumps(12, 10)
    assert not jumps(6, 10)


def test_four_sets_of_many_are_no_jump() -> None:
    twelve = quads(12).replace("12 x 8 at 2 RIR", "12 x 8 at 2 RIR, then 2 x 10 at 2 RIR")
    sixteen = twelve.replace("then 2 x", "then 6 x")
    followed = sixteen.replace("sessions:", "follows: week-2.yaml\nsessions:")
    assert not of(checked(followed, beside(twelve)), JUMP)


def test_the_same_sets_done_harder_are_no_jump() -> None:
    easy = quads(10).replace("at 2 RIR", "at 6 RIR", 1)
    assert not of(checked(quads(10, "follows: week-2.yaml\n"), beside(easy)), JUMP)


def test_a_muscle_that_got_nothing_is_known_to_have_got_nothing() -> None:
    before = week("Monday\npush-up: 4 x 8 at 3 RIR")
    said = of(checked(quads(6, "follows: week-2.yaml\n"), beside(before)), JUMP)
    assert said == ["many more hard sets than in week-2.yaml: quadriceps 6 after 0"]


def test_the_cure_is_the_most_that_is_no_jump() -> None:
    text = quads(12, "follows: week-2.yaml\n")
    (found,) = (f for f in checked(text, beside(quads(6))).findings if f.rule == JUMP)
    assert found.change == "add them over several weeks, this week for example quadriceps 9"
    assert not jumps(9, 6)
    assert found.level is Level.advice
    assert "risk" not in f"{found.message} {found.why} {found.change}"


def test_a_lighter_week_before_or_now_and_the_way_back_compare_nothing() -> None:
    lighter = "weeks: 2\nlighter weeks:\n  week 2: half the sets\n"
    text = quads(12, "follows: week-2.yaml\n")
    assert not of(checked(text, beside(quads(6, lighter))), JUMP)
    assert not jumps(12, 6, "follows: week-2.yaml\naim: return\n")
    now = "follows: week-2.yaml\nweeks: 1\nlighter weeks:\n  week 1: 80% of the load\n"
    assert not jumps(12, 6, now)


def test_weeks_of_a_block_are_compared_and_a_lighter_one_is_passed_over() -> None:
    lines = "- leg extension: [6 x 8 at 2 RIR, 8 x 8 at 2 RIR, 4 x 8 at 2 RIR, 10 x 8 at 2 RIR]"
    assert not of(checked(block(4, lines)), JUMP)
    steep = lines.replace("10 x 8", "12 x 8")
    (found,) = (f for f in checked(block(4, steep)).findings if f.rule == JUMP)
    assert found.message == "many more hard sets than in week 2: quadriceps 12 after 8"
    assert found.weeks == (4,)


LAST = "last week:\n  {}\n"


@pytest.mark.parametrize(
    ("before", "said"),
    [
        ("leg extension: 6 sets", ["quadriceps 10 after 6"]),
        ("leg extension: 48 reps", ["quadriceps 10 after 6"]),  # 6 sets of this week's 8
        ("leg extension: 8 sets", []),
        ("leg extension: 60 kg", []),
        ("push-up: 6 sets", []),
        (
            "leg extension: 6 sets\n  leg press: 30 reps",
            [],
        ),  # no leg press this week: nobody knows how many sets
        ("leg extension: 4 sets\n  leg press: 2 sets", ["quadriceps 10 after 6"]),
    ],
)
def test_what_is_written_of_last_week_is_what_is_compared(before: str, said: list[str]) -> None:
    found = of(checked(quads(10, LAST.format(before))), JUMP)
    assert [message.partition(": ")[2] for message in found] == said


def test_a_block_that_begins_with_a_week_off_compares_nothing_with_last_week() -> None:
    top = "last week:\n  leg extension: 2 sets\nlighter weeks:\n  week 1: no training\n"
    assert not of(checked(block(2, "- leg extension: 8 x 8 at 2 RIR", top)), JUMP)


def test_a_movement_of_last_week_that_nobody_knows_is_an_error_and_no_more() -> None:
    one = checked(quads(10, LAST.format("leg extensioney of doom: 6 sets")))
    assert JUMP not in rules_in(one)
    assert [f.level for f in one.findings] == [Level.error]


def test_a_jump_is_allowed_with_a_reason() -> None:
    allow = f"follows: week-2.yaml\nallow:\n  {JUMP}: back from two weeks at sea\n"
    one = checked(quads(12, allow), beside(quads(6)))
    assert [silenced.reason for silenced in one.allowed] == ["back from two weeks at sea"]


SQUAT = "- back squat: 4 x 8 at 3 RIR"


def no_rest(text: str) -> list[Finding]:
    return [found for found in checked(text).findings if found.rule == NO_REST]


def test_six_hard_weeks_in_a_row_are_asked_about_once() -> None:
    (found,) = no_rest(block(9, SQUAT))
    assert found.message == (
        "weeks 1-6 are hard weeks in a row, and no lighter one comes after them in the plan"
    )
    assert found.weeks == (6,)
    assert not no_rest(block(5, SQUAT))
    assert len(no_rest(block(6, SQUAT))) == 1


def test_a_beginner_is_not_asked() -> None:
    push = f"{SQUAT}\n- push-up: 4 x 10 at 3 RIR"
    assert no_rest(block(6, push))
    assert not no_rest(block(6, push, "level: beginner\n"))


@pytest.mark.parametrize(
    "line",
    [
        "- back squat: [{4}, {4}, {4}, {4}, {4}, {4}, {2}]",
        "- back squat:\n    weeks 1-6: 4 x 8 at 3 RIR\n    week 7: 2 x 8 at 3 RIR",
        "- back squat: 4 x 8\n  load: [60, 62.5, 65, 67.5, 70, 72.5, 60]",
    ],
)
def test_a_week_with_fewer_sets_or_less_load_is_a_lighter_one(line: str) -> None:
    for sets in (4, 2):
        line = line.replace(f"{{{sets}}}", f"{sets} x 8 at 3 RIR")
    assert not no_rest(block(7, line))


def test_a_seventh_week_as_heavy_is_no_lighter_one() -> None:
    assert no_rest(block(7, "- back squat: 4 x 8\n  load: [60, 62.5, 65, 67.5, 70, 72.5, 67.5]"))
    line = "- back squat:\n    weeks 1-6: 4 x 8 at 3 RIR\n    week 7: 3 x 8 at 3 RIR"
    assert no_rest(block(7, line))


def test_a_lighter_week_or_one_without_training_starts_the_count_anew() -> None:
    assert not no_rest(block(9, SQUAT, "lighter weeks:\n  week 5: half the sets\n"))
    assert not no_rest(block(9, SQUAT, "lighter weeks:\n  week 4: no training\n"))
    assert no_rest(block(9, SQUAT, "lighter weeks:\n  week 3: half the sets\n"))


def test_a_plan_of_one_week_has_no_row() -> None:
    assert not no_rest(quads(6))
    assert checked(quads(6), nothing_beside).weeks[0].week.number == 1
