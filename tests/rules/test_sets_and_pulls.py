"""The rules about weekly sets, pushes and pulls, and one side: what they count, and when they are silent."""

import pytest

from setwright.checked import Checked
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


def alone(*lines: str) -> Checked:
    """A plan of one session, which has no day."""
    return checked(f"{HEAD}level: beginner\nwork:\n" + "".join(f"  - {line}\n" for line in lines))


def test_a_single_session_without_a_pull_is_advice_and_may_have_its_pulls_in_another_plan() -> None:
    (found,) = alone(PUSH.format(6)).findings
    assert (found.rule, found.level) == ("push-without-pull", Level.advice)
    assert found.message == "6 hard pushes and no pull at all in the session"
    assert found.change.startswith("add chest-supported dumbbell row: 3 x 10 at 2 RIR (")
    assert found.change.endswith("write `allow:` and under it `push-without-pull: where`")


def test_a_single_session_may_push_three_times_as_much_as_it_pulls() -> None:
    assert not of(alone(PUSH.format(6), PULL.format(2)), "push-without-pull")
    assert of(alone(PUSH.format(7), PULL.format(2)), "push-without-pull") == [
        "7 hard pushes and only 2 hard pulls in the session"
    ]


STATIONS = "{}      - push-up\n      - dip\n      - bench pull\n    rounds: {}\n    each: 40 s\n"


def circuit(rounds: int, more: str = "") -> str:
    return f"circuit:\n{STATIONS.format(more, rounds)}".removesuffix("\n")


def test_stations_on_the_clock_count_with_their_rounds_and_are_never_a_gap() -> None:
    assert not of(alone(circuit(4)), "push-without-pull")
    one = alone(circuit(4, "      - wide push-up\n      - narrow push-up\n"))
    (found,) = (f for f in one.findings if f.rule == "push-without-pull")
    assert found.message == "16 sets of pushes and only 4 of pulls in the session"
    assert found.seen[0].text.endswith("push-up, 4 rounds")
    assert found.change.startswith("add close-grip pulldown: ")
    pushes = circuit(4).replace("      - bench pull\n", "")
    week_of = f"{HEAD}level: beginner\nsessions:\n  - day: Monday\n    work:\n" + "".join(
        f"    {line}\n" for line in f"  - {pushes}".splitlines()
    )
    (found,) = (f for f in checked(week_of).findings if f.rule == "push-without-pull")
    assert (found.level, found.message) == (
        Level.advice,
        "8 sets of pushes and no pull at all in the week",
    )


def test_rows_that_are_too_few_are_joined_by_a_pull_from_overhead_which_closes_both() -> None:
    text = week(
        f"Monday\n{PUSH.format(10)}\n{PULL.format(4)}", f"Thursday\n{PUSH.format(7)}\n{PULL.format(4)}"
    )
    (found,) = (f for f in checked(text).findings if "pull" in f.rule)
    assert found.rule == "push-without-pull"
    assert found.change.startswith("add close-grip pulldown: 3 x 8 at 2 RIR")
    assert found.also == ("8 hard pulls in the week and none from overhead",)


def test_no_pull_is_left_out_to_make_room_for_a_pull() -> None:
    text = week(f"Monday\n{PUSH.format(9)}\ngoblet squat: 3 x 10 at 3 RIR\n{PULL.format(3)}")
    tight = text.replace("    work:", "    minutes: 20\n    work:")
    (found,) = (f for f in checked(tight).findings if f.rule == "push-without-pull")
    assert found.change.endswith("Monday has 0 min left: leave out goblet squat)")
    alone_there = tight.replace("      - goblet squat: 3 x 10 at 3 RIR\n", "").replace(
        "minutes: 20", "minutes: 12"
    )
    (found,) = (f for f in checked(alone_there).findings if f.rule == "push-without-pull")
    assert found.change.endswith("Monday has 0 min left: leave out push-up)")


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
