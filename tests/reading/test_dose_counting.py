"""Sets, hard sets, repetitions and seconds of a dose."""

import pytest

from setwright.reading.clock import Clock, set_seconds
from setwright.reading.counting import count
from setwright.reading.dose import Effort, Span
from setwright.reading.hardness import HANDBOOK_REPS_PERCENT, Hard, most_reps
from tests.reading.dose_lines import group, read


def span(low: float, high: float | None = -1) -> Span:
    return Span(low=low, high=low if high == -1 else high)


# the table of the plan language: sets, hard sets, repetitions (or metres), seconds of work, pauses and rests
TABLE = [
    ("4 x 6 at 75%, rest 3:00", span(4), span(4), span(24), (72, 0, 540)),
    ("3 x 10 each side, rest 60 s", span(3), span(3), span(30), (180, 0, 120)),
    ("4 x cluster 1 + 1 + 1, pause 20 s, rest 3:00", span(4), span(4), span(12), (36, 160, 540)),
    ("rest-pause 10 + 3 + 3, pause 20 s", span(1), span(1), span(16), (48, 40, 0)),
    ("3 x 10 at 40 kg, last set drop 20% for max", span(3), span(3), span(30, None), (120, 0, 0)),
    ("10 x 5 every 1:00", span(10), span(0, 10), span(50), (600, 0, 0)),
    ("ladder 1 to 10", span(10), span(0, 10), span(55), (165, 0, 0)),
    ("100 total", span(1, None), span(0, None), span(100), (300, 0, 0)),
    ("sets of 10, 8, 6 at 2 RIR, rest 90 s", span(3), span(3), span(24), (72, 0, 180)),
    ("3 x 40 m at 2 x 32 kg, rest 90 s", span(3), span(0, 3), span(120), (120, 0, 180)),
]


@pytest.mark.parametrize(("typed", "sets", "hard", "amount", "seconds"), TABLE, ids=[row[0] for row in TABLE])
def test_the_table_of_the_language(
    typed: str, sets: Span, hard: Span, amount: Span, seconds: tuple[float, float, float]
) -> None:
    counted = count(read(typed))
    assert (counted.sets, counted.hard) == (sets, hard)
    assert list(counted.amounts.values()) == [amount]
    assert (counted.work_s, counted.pause_s, counted.rest_s) == seconds
    assert counted.seconds == sum(seconds)


@pytest.mark.parametrize(
    ("typed", "hard", "stated"),
    [
        ("3 x 8", span(3), False),
        ("3 x 8 at 60 kg", span(3), False),
        ("3 x 8 at 4 RIR", span(3), True),
        ("3 x 8 at 5 RIR", span(0), True),
        ("3 x 8 at 3-5 RIR", span(0, 3), True),
        ("3 x 8 RPE 6", span(3), True),
        ("3 x 8 RPE 5", span(0), True),
        ("3 x 8 RPE 4", span(0), True),
        ("3 x 8 RPE 5-7", span(0, 3), True),
        ("3 x 8 Borg 13", span(0, 3), True),
        ("3 x 8 at 5, 4, 3 RIR", span(2), True),
        ("3 x 8, last set to failure", span(3), False),
        ("3 x 8 at 6 RIR, last set to failure", span(1), True),
        ("3 x max", span(3), True),
        ("3 x 5+", span(3), False),
        ("3 x 8 rising to 80 kg", span(1, 3), False),
        ("3 x 8 rising to 80 kg, 6 RIR", span(0), True),
        ("3-5 x 8", span(3, 5), False),
        ("3-5 x 8, last set to failure", span(3, 5), False),
        ("work up to 5RM", span(1), True),
        ("test max reps", span(1), True),
        ("50 total at 2 RIR", span(1, None), True),
        ("50 total at 8 RIR", span(0), True),
        ("6 x 40 s", span(0, 6), False),
        ("6 x 40 s RPE 8", span(6), True),
        ("3 x 20 steps", span(3), False),
        ("5 x ladder 1 to 3 at 2 RIR", span(15), True),
        # 10 repetitions at 75 %, 12 at 70 %, 15 at 65 % (handbook table)
        ("3 x 5 at 75%", span(0), True),
        ("3 x 4-6 at 75%", span(0, 3), True),
        ("3 x 5+ at 75%", span(0, 3), True),
        ("3 x 8 at 72.5%", span(3), True),
        ("3 x 7 at 72.5%", span(0), True),
        ("3 x 1 at 103%", span(3), True),
        ("3 x 8 at 50%", span(0), True),
        ("3 x 12 at 50%", span(0, 3), False),
        ("3 x 12 at 50% of back squat", span(3), False),
        ("3 x 12 at 60% of bodyweight", span(3), False),
    ],
)
def test_what_is_hard(typed: str, hard: Span, stated: bool) -> None:  # noqa: FBT001 - a column of the table
    counted = count(read(typed))
    assert (counted.hard, counted.effort_stated) == (hard, stated)


def test_thresholds_are_options() -> None:
    dose = read("3 x 8 at 4 RIR")
    assert count(dose, rule=Hard(rir_at_most=3)).hard == span(0)
    assert count(read("3 x 8 RPE 6"), rule=Hard(rpe_at_least=7)).hard == span(0)
    at_training_max = read("4 x 5 at 80% of training max")
    assert count(at_training_max).hard == span(4)
    assert count(at_training_max, rule=Hard(max_share=0.9)).hard == span(0)


def test_movements_that_never_count_have_no_hard_sets() -> None:
    counted = count(read("3 x max"), counts=False)
    assert (counted.sets, counted.hard) == (span(3), span(0))


def test_the_handbook_table_falls_and_is_read_along_straight_lines() -> None:
    percents = list(HANDBOOK_REPS_PERCENT.values())
    assert percents == sorted(percents, reverse=True)
    assert [most_reps(percent) for percent in (110, 100, 87, 72.5, 65, 64)] == [
        (1, True), (1, True), (5, True), (pytest.approx(11 + 1 / 6), True), (15, True), (15, False),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("typed", "amounts", "per_side", "extras"),
    [
        ("3 x 20 in all", {"reps": span(30)}, True, 0),
        ("3 x 10 each side", {"reps": span(30)}, True, 0),
        ("1 x 6 + 4 lowering only", {"reps": span(6)}, False, 4),
        ("3 x 10, drop to 30 kg for 8", {"reps": span(54)}, False, 0),
        ("1 x 5+, cap 8", {"reps": span(5, 8)}, False, 0),
        ("3 x 8-10", {"reps": span(24, 30)}, False, 0),
        ("3-5 x 10", {"reps": span(30, 50)}, False, 0),
        ("3 x 8, then 2 x 30 s", {"reps": span(24), "s": span(60)}, False, 0),
        ("2 km", {"m": span(2000)}, False, 0),
    ],
)
def test_amounts_are_of_one_side(typed: str, amounts: dict[str, Span], per_side: bool, extras: int) -> None:  # noqa: FBT001
    counted = count(read(typed))
    assert (counted.amounts, counted.per_side, counted.extras) == (amounts, per_side, extras)


def test_left_and_right_are_kept_apart() -> None:
    counted = count(read("3 x 12 left, then 2 x 12 right"))
    assert (counted.sets, counted.hard, counted.reps) == (span(3), span(3), span(36))
    assert (counted.left, counted.right) == (span(3), span(2))
    other = count(read("1 x 12 weaker side, then 2 x 12 stronger side"))
    assert (other.sets, other.left, other.right) == (span(2), span(1), span(2))
    same = count(read("3 x 12 left, then 3 x 12 right"))
    assert (same.sets, same.left, same.right) == (span(3), None, None)
    assert count(read("30 min")).reps == span(0)


@pytest.mark.parametrize(
    ("typed", "work", "rest", "known"),
    [
        ("3 x 8", 72, 0, False),
        ("1 x 8", 24, 0, True),
        ("3 x 8, rest as needed", 72, 0, False),
        ("3 x 8, rest none", 72, 0, True),
        ("3 x 8, rest when partner is done", 72, 48, True),
        ("6 x 40 s, rest half the work", 240, 100, True),
        ("4 x 400 m, rest 400 m", 1600, 1200, True),
        ("2 x 30 m in 24 s, rest 60 s", 48, 60, True),
        ("3 x 8, then 2 x 6, rest 2:00", 108, 480, True),
        ("3 x max, rest 1:00", 90, 120, True),
        ("3 x max, cap 6, rest 1:00", 54, 120, True),
        ("3 x 5+, rest 1:00", 45, 120, True),
        ("3 x 20 steps, rest 1:00", 60, 120, True),
        ("3 x 8, tempo 31X1, rest 1:00", 144, 120, True),
        ("3 x 8, 4 s down, rest 1:00", 120, 120, True),
        ("3 x 8, 4 s up, pause 2 s at the chest, rest 1:00", 192, 120, True),
        ("1 x 6 + 4 lowering only", 30, 0, True),
        ("10 x 5 every 1:00, then 2 x 5, rest 60 s", 630, 60, True),
    ],
)
def test_the_clock(typed: str, work: float, rest: float, known: bool) -> None:  # noqa: FBT001 - a column of the table
    counted = count(read(typed))
    assert (counted.work_s, counted.rest_s, counted.rest_known) == (work, rest, known)


def test_seconds_of_each_set_and_their_assumptions() -> None:
    sets = set_seconds(group("sets of 10, 8, 6"), Clock(rep_s=2))
    assert [part.work for part in sets] == [20, 16, 12]
    (ladder,) = set_seconds(group("ladder 1 to 4, pause 10 s"), Clock())
    assert ladder == (30, 30)
    (cluster,) = set_seconds(group("1 x cluster 2 + 2 each side, pause 20 s"), Clock())
    assert cluster == (24, 40)


def test_warm_up_sets_are_never_counted() -> None:
    assert count(read("2 warm-up sets, then 3 x 8")).sets == span(3)
    assert count(read("2 warm-up sets")).sets == span(0)


@pytest.mark.parametrize(
    ("effort", "rir"),
    [
        (Effort(scale="RIR", low=1, high=2), (1, 2)),
        (Effort(scale="RPE", low=7, high=8), (2, 3)),
        (Effort(scale="RPE", low=4, high=8), None),
        (Effort(scale="Borg", low=13, high=13), None),
    ],
)
def test_reserve_of_an_effort(effort: Effort, rir: tuple[float, float] | None) -> None:
    assert effort.rir == rir
