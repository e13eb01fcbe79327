"""Which max holds on a day, what stands for it, and how old it is."""

import datetime as dt

import pytest

from setwright.library.table import library
from setwright.loads.maxes import MaxFound, NoMax, max_of
from setwright.reading.dose import MaxKind
from tests.loads.plans import week

OLD, NEW = dt.date(2026, 9, 7), dt.date(2027, 1, 4)
TWICE = "bench press: [50 kg tested 2026-09-07, 55 kg tested 2027-01-04, from 52.5 kg x 5 on 2027-01-11]"
BENCH = library().movement("flat-barbell-bench-press")


def found(maxes: str, kind: MaxKind, day: dt.date | None = None, athlete: str = "") -> MaxFound | NoMax:
    one = week("dip: 3 x 5", maxes=maxes, athlete=athlete)
    assert one.squad is not None
    return max_of(one.squad.athletes[0], BENCH, kind, day)


def on(maxes: str, kind: MaxKind, day: dt.date | None) -> tuple[dt.date, float]:
    best = found(maxes, kind, day)
    assert isinstance(best, MaxFound)
    return best.on, round(best.kg.low, 3)


@pytest.mark.parametrize(
    ("day", "expected"),
    [
        (None, (NEW, 55)),
        (dt.date(2027, 2, 1), (NEW, 55)),
        (dt.date(2027, 1, 4), (NEW, 55)),
        (dt.date(2027, 1, 3), (OLD, 50)),
        (dt.date(2026, 9, 6), (OLD, 50)),
    ],
)
def test_the_latest_up_to_the_day_holds_else_the_first(
    day: dt.date | None, expected: tuple[dt.date, float]
) -> None:
    assert on(TWICE, "tested max", day) == expected


def test_an_estimate_stands_for_a_tested_max_but_not_the_other_way() -> None:
    lifted = "flat barbell bench press: from 50 kg x 5 on 2027-01-04"
    best = found(lifted, "tested max")
    assert isinstance(best, MaxFound)
    assert (best.kind, best.how) == ("estimated max", "from 5 repetitions on 2027-01-04")
    assert best.said == "56.2 to 59.5 kg"
    assert isinstance(found("flat barbell bench press: 55 kg tested 2027-01-04", "estimated max"), NoMax)


def test_todays_max_is_on_nobodys_file() -> None:
    assert isinstance(found(TWICE, "today's max"), NoMax)


def test_a_number_in_kilograms_is_taken_before_one_in_repetitions() -> None:
    both = "flat barbell bench press: 9 reps tested 2027-01-11, from 50 kg x 1 on 2027-01-04"
    assert on(both, "tested max", None) == (NEW, 50)


def test_a_training_max_is_of_the_max_beside_it_or_a_load_of_its_own() -> None:
    share = found("flat barbell bench press: 55 kg tested 2027-01-04, training max 90%", "training max")
    assert isinstance(share, MaxFound)
    assert share.kg.low == pytest.approx(49.5)
    assert share.how == "90 % of the max tested on 2027-01-04"
    own = found("flat barbell bench press: 55 kg tested 2027-01-04, training max 100 lb", "training max")
    assert isinstance(own, MaxFound)
    assert own.kg.low == pytest.approx(45.359237)
    assert (own.unit, own.on, own.said) == ("lb", NEW, "100 lb")


def test_a_max_under_another_name_of_the_movement_is_found() -> None:
    assert on("bench press: 55 kg tested 2027-01-04", "tested max", None) == (NEW, 55)


def test_a_max_of_body_mass_on_a_bar() -> None:
    best = found("bench: bodyweight + 10 kg tested 2027-01-04", "tested max", athlete="body mass: 140 lb")
    assert isinstance(best, MaxFound)
    assert best.kg.low == pytest.approx(140 * 0.45359237 + 10)


def test_help_that_leaves_nothing_to_lift_is_no_max() -> None:
    for best in ("bodyweight - 60 kg tested 2027-01-04", "from bodyweight - 70 kg x 5 on 2027-01-04"):
        missing = found(f"bench: {best}", "tested max", athlete="body mass: 60 kg")
        assert missing == NoMax("with that much help nothing is left to lift")


def test_its_age_in_weeks() -> None:
    best = found(TWICE, "tested max")
    assert isinstance(best, MaxFound)
    assert best.weeks_old(dt.date(2027, 2, 1)) == 4
    assert best.weeks_old(dt.date(2026, 12, 28)) == -1
