"""What a week adds up to: sets, parts, muscles, pushes and pulls."""

import math

import pytest

from setwright.coverage import Coverage, Sets
from setwright.coverage.muscles import GROUPS, group_named
from setwright.model.muscles import GROUP_WORDS
from tests.rules.plans import HEAD, checked, week


def cover(*days: str, top: str = "") -> Coverage:
    found = checked(week(*days, top=top)).coverage
    assert found is not None
    return found


def test_a_flat_press_serves_the_sternal_line_and_loads_the_others_by_half() -> None:
    one = cover("Monday\nflat barbell bench press: 4 x 8 at 2 RIR")
    assert [str(part.sets) for part in one.parts] == ["2", "4", "2"]
    assert [len(part.served_by) for part in one.parts] == [0, 1, 0]
    assert one.chest == Sets(4, 4)
    assert one.push == Sets(4, 4)
    assert one.parts[1].heaviest is not None
    assert one.parts[1].across_deg is None


def test_a_crossing_move_is_direct_chest_work_and_no_push() -> None:
    one = cover("Monday\nlevel cable crossover: 3 x 12 at 1 RIR")
    assert one.chest == Sets(3, 3)
    assert one.push == Sets()
    assert [part.across_deg is not None for part in one.parts] == [True, True, False]


@pytest.mark.parametrize(
    "line", ["explosive push-up: 4 x 5", "sled push: 4 x 20 m", "farmer's walk: 3 x 40 m"]
)
def test_explosive_work_and_carries_are_never_hard_sets(line: str) -> None:
    one = cover(f"Monday\n{line}")
    assert one.works[0].hard == Sets()
    assert one.muscles == {}
    assert one.effort_not_stated == Sets()


def test_a_helper_gets_half_a_set_and_the_triceps_helps_in_every_push() -> None:
    one = cover(
        "Monday\nflat barbell bench press: 4 x 8 at 2 RIR\nstanding barbell overhead press: 2 x 8 at 2 RIR\n"
        "lying triceps extension: 3 x 10 at 2 RIR"
    )
    assert str(one.muscles["chest"]) == "4"
    assert str(one.muscles["triceps"]) == "6"
    assert str(one.muscles["front deltoid"]) == "4"
    assert "triceps" in one.trained


def test_a_push_pull_legs_week_counts_the_triceps_as_half_counting_does() -> None:
    push = (
        "flat barbell bench press: 4 x 6-8\nincline 30 dumbbell bench press: 4 x 8-10\n"
        "machine chest press: 3 x 10-12\n"
        "pec deck: 3 x 12-15, last set to failure\nstanding barbell overhead press: 3 x 8\n"
        "dumbbell lateral raise: 4 x 15, last set to failure\nlying triceps extension: 3 x 10"
    )
    one = cover(f"Monday\n{push}", f"Thursday\n{push}")
    assert str(one.muscles["chest"]) == "28"
    assert str(one.muscles["triceps"]) == "20"
    assert str(one.muscles["side deltoid"]) == "14"


@pytest.mark.parametrize(
    ("group", "sets", "hard"),
    [
        ("rounds: 3\n        rest: 1:00", Sets(3, 3), Sets(3, 3)),
        ("time: 12:00", Sets(1, math.inf), Sets(0, math.inf)),
        ("rounds: 5\n        every: 3:00", Sets(5, 5), Sets(0, 5)),
    ],
)
def test_rounds_multiply_and_the_clock_leaves_the_effort_open(group: str, sets: Sets, hard: Sets) -> None:
    one = cover(f"Monday\ncircuit:\n          - push-up: 10\n          - goblet squat: 10\n        {group}")
    assert (one.works[0].sets, one.works[0].hard) == (sets, hard)


def test_rounds_of_a_time_are_zero_to_n_hard_sets() -> None:
    timed = "circuit:\n          - push-up:\n          - goblet squat:\n        rounds: 4\n        each: 40 s"
    one = cover(f"Monday\n{timed}")
    assert [work.hard for work in one.works] == [Sets(0, 4), Sets(0, 4)]


def test_rungs_of_a_group_count_as_rounds() -> None:
    one = cover(
        "Monday\ncircuit:\n          - push-up: rung\n          - goblet squat: rung\n        ladder: 1 to 10"
    )
    assert one.works[0].hard == Sets(0, 10)


def test_a_dose_that_could_not_be_read_is_left_out() -> None:
    one = cover("Monday\npush-up: a few\nbench pull: 3 x 8 at 2 RIR")
    assert [work.name for work in one.works] == ["bench pull"]


def test_days_decide_the_order_and_dates_before_them() -> None:
    one = cover("Friday\npush-up: 3 x 8", "Monday\npush-up: 2 x 8")
    assert [session.session.day for session in one.sessions] == ["Monday", "Friday"]


def test_one_session_without_a_day_is_no_week() -> None:
    found = checked(f"{HEAD}work:\n  - push-up: 3 x 8 at 2 RIR\n").coverage
    assert found is not None
    assert found.single_session
    assert not cover("Monday\npush-up: 3 x 8").single_session


@pytest.mark.parametrize(("word", "group"), [("Chest", "chest"), ("lats", "back"), ("tail", None)])
def test_words_for_muscle_groups(word: str, group: str | None) -> None:
    assert group_named(word) == group
    assert set(GROUP_WORDS.values()) == set(GROUPS)


def test_a_pull_that_loads_the_chest_counts_nothing_for_it() -> None:
    one = cover("Monday\nchin-up: 4 x 6 at 2 RIR")
    assert one.chest == Sets()
    assert all(part.sets == Sets() for part in one.parts)


def test_work_that_only_helps_the_chest_counts_half() -> None:
    one = cover("Monday\ncable woodchop: 2 x 10 each side at 2 RIR")
    assert str(one.muscles["chest"]) == "1"
    assert one.chest == Sets()
