"""Heavy work near a match, and sets to failure where people may be called away."""

import pytest

from tests.rules.plans import HEAD, checked, of, week

SQUATS = "back squat: {} x 5 at 3 RIR"


def near(days: str, sets: int = 6, line: str = SQUATS) -> list[str]:
    text = week(f"Friday\n{line.format(sets)}").replace("    work:", f"    days to match: {days}\n    work:")
    return of(checked(text), "heavy-close-to-the-match")


@pytest.mark.parametrize(
    ("days", "away"),
    [
        ("0", "on the day of the match"),
        ("1", "1 day before the match"),
        ("2", "2 days before the match"),
    ],
)
def test_many_heavy_sets_are_asked_about_up_to_two_days_before(days: str, away: str) -> None:
    assert near(days) == [f"Friday: 6 hard sets of heavy lifts {away}"]


def test_three_days_few_sets_and_light_or_explosive_work_are_fine() -> None:
    assert near("3") == near("1", sets=5) == []
    assert near("1", line="power clean: {} x 3") == near("1", line="face pull: {} x 15 at 2 RIR") == []


def test_without_a_match_nothing_is_near() -> None:
    assert not of(checked(week(f"Friday\n{SQUATS.format(9)}")), "heavy-close-to-the-match")


@pytest.mark.parametrize(
    ("line", "fails"),
    [
        ("push-up: 2 x max", True),
        ("push-up: 2 x max at 2 RIR", False),
        ("push-up: 2 x 12, last set to failure", True),
        ("back squat: work up to 3RM", True),
        ("back squat: 3 x 5 at 3 RIR", False),
    ],
)
@pytest.mark.parametrize("where", ["plan", "session"])
def test_a_set_to_failure_where_a_call_may_come(line: str, where: str, *, fails: bool) -> None:
    rule = "if interrupted: go, and start again at the next line"
    top = f"{rule}\n" if where == "plan" else ""
    text = week(f"Friday\n{line}", top=top)
    if where == "session":
        text = text.replace("    work:", f"    {rule}\n    work:")
    assert bool(of(checked(text), "failure-while-on-call")) is fails


def test_a_station_without_a_dose_goes_to_no_failure() -> None:
    text = f"{HEAD}if interrupted: go\nwork:\n  - circuit:\n      - push-up\n    rounds: 3\n    each: 40 s\n"
    assert not of(checked(text), "failure-while-on-call")


def test_nobody_is_called_away_where_nothing_is_written_of_it() -> None:
    assert not of(checked(week("Friday\npush-up: 2 x max")), "failure-while-on-call")
