"""What is left out when time is short."""

import pytest

from setwright.sheets import cutting
from setwright.sheets.cutting import short_of_time
from tests.sheets.hand import group, item, session


@pytest.fixture(autouse=True)
def ten_minutes_a_line(monkeypatch: pytest.MonkeyPatch) -> None:
    """A clock that is easy to check: each line takes ten minutes."""
    monkeypatch.setattr(cutting, "session_minutes", lambda session, _counts: 10.0 * len(session.items()))


def test_lowest_priority_first_then_the_later_one() -> None:
    work = session(item(priority=3), item(priority=1), item(), item())
    assert short_of_time(work, None) == ("Leave out 1 first (saves 10 min), then 4 (10 min). Keep 2.")


def test_one_thing_to_leave_out() -> None:
    assert short_of_time(session(item(priority=1), item()), None) == (
        "Leave out 2 first (saves 10 min). Keep 1."
    )


def test_one_block_always_stays() -> None:
    assert short_of_time(session(item(), item()), None) == "Leave out 2 first (saves 10 min)."
    assert short_of_time(session(item()), None) is None
    assert short_of_time(session(item(priority=1), item(priority=1)), None) is None


def test_a_line_that_matters_less_than_its_group_goes_alone() -> None:
    work = session(item(priority=1), item(priority=1), group(item(), item(), item(priority=3)))
    assert short_of_time(work, None) == ("Leave out 3c first (saves 10 min), then 3 (30 min). Keep 1 and 2.")


def test_a_line_that_says_nothing_goes_with_its_group() -> None:
    assert short_of_time(session(item(priority=1), group(item(), item(), priority=1)), None) is None


def test_what_is_not_for_the_athlete_is_not_named() -> None:
    pair = group(item(), item(priority=3, not_for=("Isla",)), priority=1)
    work = session(pair, item(), item(not_for=("Isla",)))
    assert short_of_time(work, frozenset({"Isla"})) == "Leave out 2 first (saves 10 min). Keep 1."
