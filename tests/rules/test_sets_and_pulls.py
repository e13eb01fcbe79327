"""The rules about weekly sets, pushes and pulls, and one side: what they count, and when they are silent."""

import pytest

from setwright.findings import Level
from setwright.model.plan import Week
from setwright.model.weekly import WeeklySets
from setwright.places import Place
from setwright.report.terminal import text as screen
from setwright.rules.ranges import asked_for, pull_to_push
from tests.rules.plans import HEAD, checked, of, rules_in, week

PUSH = "push-up: {} x 10 at 2 RIR"
PULL = "bench pull: {} x 10 at 2 RIR"


def pushes(push: int, pull: int, top: str = "level: beginner\n") -> str:
    rest = f"\n{PULL.format(pull)}" if pull else ""
    return week(f"Monday\n{PUSH.format(push)}{rest}", "Thursday\nback extension: 4 x 10 at 3 RIR", top=top)


def test_no_pull_at_all_is_a_gap_from_six_pushes() -> None:
    assert of(checked(pushes(6, 0)), "push-without-pull") == ["6 hard pushes and no pull at all in the week"]
    assert not of(checked(pushes(5, 0)), "push-without-pull")


def test_over_two_to_one_is_advice_and_two_to_one_is_not() -> None:
    found = checked(pushes(9, 4)).findings
    assert [(f.rule, f.level) for f in found] == [("push-without-pull", Level.advice)]
    assert not of(checked(pushes(8, 4)), "push-without-pull")


def test_the_coach_may_ask_for_more_pulls() -> None:
    asked = "level: beginner\nsets a week:\n  pull to push: at least 1\n"
    assert of(checked(pushes(8, 4, asked)), "push-without-pull")


def test_the_wish_of_the_coach_holds_from_the_first_push_and_is_the_source() -> None:
    asked = "level: beginner\nsets a week:\n  pull to push: at least 1.5\n"
    (found,) = (f for f in checked(pushes(4, 5, asked)).findings if f.rule == "push-without-pull")
    assert found.message == ("4 hard pushes and only 5 hard pulls in the week; `pull to push` asks for 6")
    assert found.source == "the plan's own sets a week, line 7"
    assert not of(checked(pushes(4, 6, asked)), "push-without-pull")
    assert not of(checked(pushes(9, 0, asked.replace("1.5", "0"))), "push-without-pull")


def test_more_pull_than_push_is_one_line_and_no_finding() -> None:
    rowing = pushes(5, 12, "aim: sport\nsport: rowing\n")
    one = checked(rowing)
    assert not any("pull" in finding.message for finding in one.findings)
    assert "pull 12 sets, push 5 sets" in screen(one, colour=False)


def test_flies_and_raises_are_no_pushes() -> None:
    light = "dumbbell lateral raise: 4 x 12 at 1 RIR\nflat dumbbell fly: 4 x 12 at 1 RIR"
    text = week(f"Monday\n{light}\n{PUSH.format(5)}", "Thursday\nback extension: 4 x 10 at 3 RIR")
    assert not of(checked(text), "push-without-pull")


def test_a_single_session_may_have_its_pulls_on_another_day() -> None:
    text = f"{HEAD}work:\n  - {PUSH.format(6)}\n"
    assert rules_in(checked(text.replace("sides: each\n", "sides: each\nlevel: beginner\n"))) == []


@pytest.mark.parametrize(
    ("low", "high", "expected"), [(8, 12, (8, 12)), (10, 10, (10, 10)), (8, None, (8, float("inf")))]
)
def test_ranges_of_the_coach(low: float, high: float | None, expected: tuple[float, float]) -> None:
    place = Place("week.yaml", 1, 1, 1, 5)
    chest = WeeklySets(group="chest", low=low, high=high, text="", place=place)
    pulls = WeeklySets(group="pull to push", low=1.5, high=None, text="", place=place)
    one = Week(name="A week", place=place, sessions=(), sets_a_week=(chest,))
    assert asked_for(one) == {"chest": expected}
    assert pull_to_push(one) is None
    assert pull_to_push(one.model_copy(update={"sets_a_week": (chest, pulls)})) is pulls


def test_a_range_of_the_coach_replaces_the_row() -> None:
    text = week("Monday\nbench pull: 5 x 10 at 2 RIR\npush-up: 4 x 10 at 2 RIR", "Friday\nplank: 2 x 30 s")
    asked = "sets a week:\n  back: 6-8\n"
    assert of(checked(text.replace("sessions:", f"{asked}sessions:")), "sets-under-range")
    assert of(
        checked(text.replace("sessions:", f"{asked.replace('6-8', '3-4')}sessions:")), "sets-over-range"
    )
    assert rules_in(checked(text)) == []


def test_a_focus_is_judged_and_nothing_else() -> None:
    text = week(
        "Monday\nleg press: 3 x 10 at 2 RIR\nleg curl: 3 x 10 at 2 RIR",
        "Friday\npush-up: 4 x 8 at 2 RIR",
        top="focus: [hams]\n",
    )
    assert (
        of(checked(text), "sets-under-range") == ["too few hard sets in the week: hamstrings 3 of 4"]
        or of(checked(text), "sets-under-range") == []
    )


def test_a_muscle_of_the_focus_that_nothing_trains_is_missed_without_a_line_to_add_to() -> None:
    text = week(
        "Monday\npush-up: 4 x 8 at 2 RIR", "Friday\nbench pull: 4 x 8 at 2 RIR", top="focus: [calves]\n"
    )
    found = [f for f in checked(text).findings if f.rule == "sets-under-range"]
    assert [(f.message, f.change) for f in found] == [
        ("too few hard sets in the week: calves 0 of 4", "calves: 4 more")
    ]


def test_far_over_the_range_is_a_gap_for_size() -> None:
    def sets(number: int) -> str:
        return week(
            f"Monday\nbench pull: {number} x 8 at 2 RIR\npush-up: 4 x 8 at 2 RIR",
            "Friday\npull-up: 12 x 6 at 2 RIR",
            top="aim: size\n",
        )

    levels = {
        n: [f.level for f in checked(sets(n)).findings if f.rule == "sets-over-range"] for n in (8, 9, 12)
    }
    assert levels == {8: [], 9: [Level.advice], 12: [Level.advice]}
    more = sets(12).replace("12 x 6", "12 x 6 at 2 RIR, then 4 x 6", 1)
    assert [f.level for f in checked(more).findings if f.rule == "sets-over-range"] == [Level.gap]


@pytest.mark.parametrize(
    ("line", "silent"),
    [
        ("one-arm dumbbell row: 3 x 10 left at 20 kg", False),
        ("one-arm dumbbell row: 3 x 10 right at 20 kg", False),
        ("one-arm dumbbell row: 3 x 10 weaker side at 20 kg", True),
        ("one-arm dumbbell row: 3 x 10 left, then 3 x 10 right", True),
        ("one-arm dumbbell row: 3 x 10 left\n        note: until the cast is off", True),
    ],
)
def test_one_side_needs_the_other_or_a_reason(line: str, silent: bool) -> None:  # noqa: FBT001 - a parameter of the table
    assert (of(checked(week(f"Monday\n{line}")), "one-side-only") == []) is silent


def test_two_lines_make_both_sides() -> None:
    text = week("Monday\none-arm dumbbell row: 3 x 10 left", "Friday\none-arm dumbbell row: 3 x 10 right")
    assert not of(checked(text), "one-side-only")
