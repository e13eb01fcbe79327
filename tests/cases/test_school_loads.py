"""A school's weights room in pounds: shares of small maxes, worked out by hand, on its plates.

The shares that the plan asks for are typed as the pounds that they make.
"""

import pytest

from setwright.findings import Level
from tests.rules.plans import checked, of, week

ROOM = """\
gym:
  unit: lb
  racks: 8
  people per rack: 4
  bars:
    45 lb: 8
  plates per rack:
    45 lb: 1 pair
    35 lb: 1 pair
    25 lb: 1 pair
    10 lb: 2 pairs
    5 lb: 1 pair
    2.5 lb: 1 pair
  dumbbells:
    10-50 lb by 5: 1 pair
  stations:
    dip bars: 1
    pull-up bar: 4
"""


def test_a_small_max_falls_below_the_empty_bar() -> None:
    """65 % of 60 lb is 39 lb and 72.5 % is 43.5 lb; the bar weighs 45."""
    one = checked(week("Monday\nbench press: sets of 8, 6 at 39, 43.5 lb", top=ROOM))
    (finding,) = [f for f in one.findings if f.rule == "below-the-empty-bar"]
    assert finding.level is Level.error
    assert finding.message == "bench press at 39 lb, 43.5 lb is less than the empty 45 lb bar"
    assert "flat dumbbell bench press instead" in finding.change
    assert "a bar of at most 39 lb" in finding.change
    assert of(one, "load-not-loadable") == []


@pytest.mark.parametrize(
    ("asked", "instead"),
    [
        ("61.75", "60 lb: 45 lb bar, 5 + 2.5 a side (1.75 lb or 2.8 % less)"),
        ("68.875", "70 lb: 45 lb bar, 10 + 2.5 a side (1.12 lb or 1.6 % more)"),
    ],
)
def test_a_share_that_no_plates_make_is_told_with_the_load_and_the_change(asked: str, instead: str) -> None:
    """65 % and 72.5 % of 95 lb with steps of 5 lb."""
    one = checked(week(f"Monday\nbench press: 3 x 8 at {asked} lb", top=ROOM))
    (finding,) = [f for f in one.findings if f.rule == "load-not-loadable"]
    assert finding.level is Level.advice
    assert instead in finding.change


def test_a_quarter_of_a_pound_is_not_worth_a_word() -> None:
    """65 % of 185 lb is 120.25 lb: 120 lb is 0.2 % less."""
    assert of(checked(week("Monday\nbench press: 3 x 8 at 120.25 lb", top=ROOM)), "load-not-loadable") == []
