"""Rules about the heaviest sets: what leads up to them, and who is there when they go to failure."""

import pytest

from setwright.findings import Level
from tests.rules.plans import checked, of, week

COLD, ALONE = "no-warm-up-for-heavy-lift", "failure-without-spotter"
GYM = "gym:\n  racks: 1\n  benches: 1\n  bars:\n    20 kg: 1\n  spotter: {}\n"
UNSAID = GYM.replace("  spotter: {}\n", "")


@pytest.mark.parametrize(
    "line",
    [
        "back squat: 5 x 5 at 80%",
        "back squat: 5 x 5\n        load: 82.5%",
        "back squat: 4 x 6 at 2 RIR",
        "back squat: 4 x 5 at RPE 8",
        "flat barbell bench press: sets of 3, 3 at 85, 90%",
    ],
)
def test_a_barbell_lift_that_begins_heavy_is_asked_for_its_warm_up(line: str) -> None:
    assert of(checked(week(f"Monday\n{line}")), COLD) == [
        f"Monday: no warm-up sets are written for {line.partition(':')[0]}"
    ]


@pytest.mark.parametrize(
    "line",
    [
        "back squat: 5 x 5 at 77.5%",
        "back squat: 4 x 8 at 2 RIR",
        "back squat: 4 x 6-8 at 2 RIR",
        "back squat: 4 x 5 at RPE 7",
        "back squat: 4 x 5 at RPE 4",
        "back squat: 4 x 5 at 100 kg",
        "back squat: 3 x max at 1 RIR",
        "back squat: 5 x 5 rising to 85%",
        "back squat: sets of 5, 3, 1 at 60, 75, 90%",
        "back squat: work up to 3RM",
        "back squat: 2 warm-up sets, then 5 x 5 at 80%",
        "back squat: 5 x 5 at 80%\n        warm-up: none",
        "back squat: 5 x 5 at 80%\n        warm-up: 8 at bar, 5 at 50%",
        "dumbbell bench press: 4 x 5 at RPE 9",
        "barbell curl: 4 x 5 at RPE 9",
    ],
)
def test_lighter_rising_warmed_or_not_on_a_bar_is_silent(line: str) -> None:
    assert not of(checked(week(f"Monday\n{line}")), COLD)


def test_a_warm_up_of_the_session_is_enough() -> None:
    text = week("Monday\nback squat: 5 x 5 at 80%")
    assert of(checked(text), COLD)
    for written in ("8 min", "\n      - back squat: 2 x 5 at 50%"):
        assert not of(checked(text.replace("    work:", f"    warm-up: {written}\n    work:")), COLD)


def test_an_earlier_line_of_the_movement_leads_up_to_the_next() -> None:
    text = week("Monday\nback squat: 3 x 5 at 70%\nback squat: 1 x 1 at RPE 8")
    assert not of(checked(text), COLD)


def test_a_circuit_against_the_clock_has_no_first_set_to_warm_up_for() -> None:
    lines = "circuit:\n          - back squat\n          - push-up\n        rounds: 3\n        each: 40 s"
    assert not of(checked(week(f"Monday\n{lines}", top=GYM.format("none"))), COLD)
    assert not of(checked(week(f"Monday\n{lines}", top=GYM.format("none"))), ALONE)


def test_sessions_without_a_warm_up_are_one_finding() -> None:
    days = [f"{day}\nback squat: 5 x 5 at 80%\ndeadlift: 3 x 3 at 85%" for day in ("Monday", "Thursday")]
    (found,) = (f for f in checked(week(*days)).findings if f.rule == COLD)
    assert found.message.endswith("for back squat, deadlift")
    assert found.also == ("Thursday: no warm-up sets are written for back squat, deadlift",)


@pytest.mark.parametrize(
    "line",
    [
        "flat barbell bench press: 3 x 8, last set to failure",
        "flat barbell bench press: 3 x max at 60 kg",
        "back squat: 3 x 5 at RPE 9-10",
        "standing barbell overhead press: 3 x 8 at 0 RIR",
        "flat barbell bench press: work up to 3RM",
        "machine chest press: 1 x max + 3 assisted",
    ],
)
def test_failure_under_a_bar_without_a_spotter_is_a_gap(line: str) -> None:
    found = [f for f in checked(week(f"Monday\n{line}", top=GYM.format("none"))).findings if f.rule == ALONE]
    assert [f.level for f in found] == [Level.gap]
    assert "has no spotter" in found[0].message


@pytest.mark.parametrize(
    "line",
    [
        "flat barbell bench press: 3 x 8 at 1 RIR",
        "flat barbell bench press: 3 x 8 at RPE 4",
        "flat barbell bench press: 3 x max at 2 RIR",
        "push-up: 3 x max",
        "barbell curl: 3 x 8 to failure",
        "flat barbell bench press: 3 x 5+",
    ],
)
def test_short_of_failure_or_with_nothing_over_the_body_is_silent(line: str) -> None:
    assert not of(checked(week(f"Monday\n{line}", top=GYM.format("none"))), ALONE)


def test_not_written_is_advice_and_a_spotter_or_no_gym_file_is_silence() -> None:
    line = "Monday\nflat barbell bench press: 3 x 8 to failure"
    found = [f for f in checked(week(line, top=UNSAID)).findings if f.rule == ALONE]
    assert [(f.level, "does not say" in f.message) for f in found] == [(Level.advice, True)]
    assert not of(checked(week(line, top=GYM.format("yes"))), ALONE)
    assert not of(checked(week(line)), ALONE)


@pytest.mark.parametrize(("people", "said"), [(1, 1), (2, 0), (4, 0)])
def test_who_shares_the_rack_may_spot_where_the_file_does_not_say(people: int, said: int) -> None:
    line = "Monday\nflat barbell bench press: 3 x 8 to failure"
    assert len(of(checked(week(line, top=f"people: {people}\n{UNSAID}")), ALONE)) == said
    assert of(checked(week(line, top=f"people: {people}\n{GYM.format('none')}")), ALONE)
