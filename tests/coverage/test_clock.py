"""How long a session takes, by the stated assumptions."""

import pytest

from setwright.coverage.clock import added_minutes
from tests.rules.plans import HEAD, checked


def minutes(work: str, top: str = "") -> float:
    found = checked(f"{HEAD}{top}work:\n{work}").coverage
    assert found is not None
    return found.sessions[0].minutes * 60


PAIR = "  - superset:\n      - push-up: 3 x 10 at 2 RIR\n      - bench pull: 3 x 10 at 2 RIR\n"


@pytest.mark.parametrize(
    ("work", "seconds"),
    [
        ("  - push-up: 3 x 10, rest 60 s\n", 60 + 90 + 120),
        ("  - push-up: 3 x 10\n", 60 + 90 + 240),
        ("  - push-up: 3 x 10, rest 60 s\n    warm-up: 2 sets\n", 60 + 90 + 120 + 180),
        ("  - push-up: 3 x 10, rest 60 s\n    warm-up: 8 at bar, 5 at 40 kg\n", 60 + 90 + 120 + 180),
        (f"{PAIR}    rest: 2:00\n", 60 + 180 + 30 + 240),
        (PAIR, 60 + 180 + 30 + 240),
        (f"{PAIR}    rest: 1:00\n    between moves: none\n", 60 + 180 + 120),
        (f"{PAIR}    rest: as needed\n", 60 + 180 + 30 + 240),
        (
            "  - circuit:\n      - push-up: 10\n      - goblet squat: 10\n    rounds: 3\n    rest: 1:00\n",
            60 + 180 + 30 + 120,
        ),
        ("  - circuit:\n      - push-up: 10\n      - goblet squat: 10\n    time: 12:00\n", 60 + 720),
        (
            "  - circuit:\n      - push-up: 10\n      - goblet squat: 10\n    rounds: 4\n    every: 2:00\n",
            60 + 480,
        ),
        (
            "  - circuit:\n      - push-up:\n      - goblet squat:\n    rounds: 2\n    each: 40 s\n",
            60 + 160 + 40 + 120,
        ),
        (
            "  - circuit:\n      - push-up: rung\n      - goblet squat: rung\n    ladder: 1 to 3\n",
            60 + 36 + 30 + 240,
        ),
        ("  - push-up: a few\n", 60),
    ],
)
def test_sets_rests_and_setting_up(work: str, seconds: float) -> None:
    assert minutes(work) == pytest.approx(seconds)


def test_the_warm_up_counts() -> None:
    work = "  - push-up: 3 x 10, rest 60 s\n"
    assert minutes(work, "warm-up: 8 min\n") == minutes(work) + 480


def test_a_member_that_could_not_be_read_takes_no_time() -> None:
    assert (
        minutes("  - superset:\n      - push-up: a few\n      - bench pull: 3 x 10\n    rest: 2:00\n")
        == 60 + 90 + 30 + 240
    )


def test_each_side_takes_twice_the_lifting_and_once_the_rest() -> None:
    assert added_minutes(3, 12) == pytest.approx((108 + 240) / 60)
    assert added_minutes(3, 12, sides=2) == pytest.approx((216 + 240) / 60)


def test_the_clock_of_a_group_follows_its_weeks() -> None:
    work = (
        "  - superset:\n      - push-up: [3 x 10, 3 x 10, none]\n      - bench pull: [3 x 10, none, none]\n"
        "    rest: [2:00, none, none]\n  - goblet squat: 3 x 10, rest 60 s\n"
    )
    weeks = checked(f"{HEAD}weeks: 3\nwork:\n{work}").weeks
    squat = 60 + 90 + 120
    assert [round(one.coverage.sessions[0].minutes * 60) for one in weeks] == [
        squat + 60 + 180 + 30 + 240,
        squat + 60 + 90,
        squat,
    ]


def test_a_lighter_week_takes_less_time() -> None:
    work = "  - circuit:\n      - push-up: 10\n      - goblet squat: 10\n    rounds: 3\n    rest: 1:00\n"
    top = "weeks: 2\nlighter weeks:\n  week 2: half the sets\n"
    weeks = checked(f"{HEAD}{top}work:\n{work}").weeks
    assert [round(one.coverage.sessions[0].minutes * 60) for one in weeks] == [
        60 + 180 + 30 + 120,
        60 + 120 + 20 + 60,
    ]
