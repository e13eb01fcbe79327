"""An on-duty crew of five in an interval circuit, as a fire station brings it. Everyone is invented."""

import re

import pytest

from setwright.checked import Checked
from setwright.findings import Level
from setwright.floor.conflicts import conflicts
from setwright.floor.room import Floor
from setwright.floor.today import Change, today
from setwright.report.floor import floor_text
from tests.cases.told import told
from tests.floor.rooms import floor_of
from tests.glance.plans import answers
from tests.rules.plans import checked, of

PLAN = """\
plan: Station 9 crew circuit
unit: kg
sides: each
people: 5
minutes: 40
if interrupted: finish the station, note its number, start again at the next one
work:
  - circuit:
      - dumbbell floor press: at 2 x 20 kg
      - sled drag: 15 m
      - chest-supported dumbbell row: at 2 x 20 kg
      - step-up
      - push-up
      - standing barbell overhead press
    rounds: 4
    each: 35 s
    between moves: 25 s
    rest: 2:00
  - front plank: 1 x 1:00
  - side plank: 1 x 0:30 each side
  - push-up: 2 x to failure, rest equal to the work
    priority: 3
gym:
  racks: 1
  benches: 1
  bars:
    20 kg: 1
  dumbbells:
    20 kg: 1 pair
  stations:
    sled: 1
    box: 1
"""


def circuit(text: str = PLAN) -> Checked:
    one = checked(text)
    assert one.coverage is not None
    return one


def test_one_pair_of_dumbbells_at_two_stations_at_once_is_a_gap() -> None:
    (found,) = (f for f in circuit().findings if f.rule == "too-few-stations")
    assert found.level is Level.gap
    assert found.message == (
        "the session's circuit needs 4 dumbbells of 20 kg at once, 2 there: "
        "dumbbell floor press and chest-supported dumbbell row"
    )
    assert not of(circuit(PLAN.replace("20 kg: 1 pair", "20 kg: 2 pairs")), "too-few-stations")


def test_it_fits_forty_minutes_and_an_empty_station_is_fine() -> None:
    """Four rounds of six times a minute and three rests of two: 30 min, then the planks."""
    one = circuit()
    assert one.coverage is not None
    assert 30 <= one.coverage.sessions[0].minutes <= 40
    assert not of(one, "session-over-time")
    assert [f.rule for f in one.findings if f.level >= Level.gap] == ["too-few-stations"]


FAILURE = ("failure-while-on-call", "- push-up: 2 x to failure, rest equal to the work")


def test_this_is_said_of_one_session_and_nothing_else() -> None:
    """How hard a set on the clock is nobody knows: it is no gap of the chest, and no complaint about it."""
    assert told(circuit()) == [
        ("push-without-pull", "work:"),
        ("too-few-stations", "- dumbbell floor press: at 2 x 20 kg"),
        FAILURE,
    ]


def test_three_stations_and_a_finisher_push_and_one_pulls() -> None:
    """By hand: three stations of four rounds and two sets at the end, against four rounds of the row."""
    (found,) = (f for f in circuit().findings if f.rule == "push-without-pull")
    assert found.level is Level.advice
    assert found.message == "14 sets of pushes and only 4 of pulls in the session"
    bars = circuit(PLAN.replace("box: 1", "box: 1\n    pull-up bar: 5"))
    (found,) = (f for f in bars.findings if f.rule == "push-without-pull")
    assert found.change.startswith("add pull-up: ")


def test_a_finisher_to_failure_on_duty_is_for_somebody_to_sign_off() -> None:
    (found,) = (f for f in circuit().findings if f.rule == "failure-while-on-call")
    assert found.level is Level.advice
    assert found.message == "the session may be interrupted, and push-up goes to failure"
    off_duty = re.sub(r"if interrupted: .*\n", "", PLAN)
    short = PLAN.replace("2 x to failure", "2 x max at 2 RIR")
    signed = PLAN.replace(
        "gym:\n", "allow:\n  failure-while-on-call: signed off by the watch officer\ngym:\n"
    )
    assert not any(of(circuit(text), "failure-while-on-call") for text in (off_duty, short, signed))


def test_a_vest_that_is_known_by_its_colour_alone_is_one_line_of_the_summary_and_no_finding() -> None:
    own = PLAN.replace("- step-up\n", "- step-up in red vest\n")
    text = f"{own}movements:\n  step-up in red vest:\n    like: step-up\n"
    assert told(circuit(text)) == told(circuit())
    said = next(line for line in answers(circuit(text))["odd"] if "colour" in line)
    assert said == (
        "Told apart by a colour alone: step-up in red vest (line 12); a number or a word beside it helps."
    )
    numbered = text.replace("red vest", "red vest 2")
    assert not any("colour" in line for line in answers(circuit(numbered))["odd"])


def days(*names: str) -> str:
    """The circuit on several days of a week, with two pairs of dumbbells and bars to hang from."""
    head, rest = PLAN.split("work:\n")
    work, gym = rest.split("gym:\n")
    lines = "".join(f"    {line}\n" for line in work.splitlines())
    room = gym.replace("20 kg: 1 pair", "20 kg: 2 pairs").replace("box: 1", "box: 1\n    pull-up bar: 5")
    sessions = "".join(f"  - day: {name}\n    minutes: 40\n    work:\n{lines}" for name in names)
    top = head.replace("minutes: 40\n", "")
    return f"{top}gym:\n{room}sessions:\n{sessions}"


def test_three_such_days_a_week_have_rows_only_and_a_pull_from_overhead_is_proposed() -> None:
    one = circuit(days("Monday", "Wednesday", "Friday"))
    assert told(one) == [
        ("line-never-followed", "work:"),
        ("line-never-followed", "work:"),
        ("push-without-pull", "work:"),
        ("no-heavy-lift-for-part", "- dumbbell floor press: at 2 x 20 kg"),
        ("no-work-at-short-length", "- dumbbell floor press: at 2 x 20 kg"),
        FAILURE,
    ]
    assert {f.level for f in one.findings} == {Level.advice}
    (pull,) = (f for f in one.findings if f.rule == "push-without-pull")
    assert pull.change.startswith("add pull-up: ")
    assert pull.also == ("0 to 12 hard pulls in the week and none from overhead",)


def test_a_circuit_for_fitness_without_the_finisher_has_no_advice_about_the_chest() -> None:
    """What nobody knows to be hard is not held against the parts of the chest; the pulls are still told."""
    bare = re.sub(
        r" *- push-up: 2 x to failure.*\n *priority: 3\n", "", days("Monday", "Wednesday", "Friday")
    )
    assert told(circuit(bare)) == [("push-without-pull", "work:")]


def test_a_minute_and_half_a_minute_of_holding_are_both_seconds() -> None:
    one = circuit()
    assert one.week is not None
    holds = [item.dose for item in one.week.sessions[0].items()[6:8]]
    amounts = [dose.groups[0].works[0].amount for dose in holds if dose]
    assert [(amount.unit, amount.span.low) for amount in amounts] == [("s", 60), ("s", 30)]


def called_away(text: str) -> str:
    """What the floor says of the session in one line, where somebody is called away."""
    one = circuit(text)
    assert one.week is not None
    assert one.table is not None
    return " ".join(floor_text(today(one.week.sessions[0], one.week, one.table, Change())).split())


def test_without_a_rule_for_a_call_the_floor_says_that_none_is_written() -> None:
    unwritten = "Called away: no rule is written; `if interrupted:` in the plan says it."
    assert unwritten in called_away(re.sub(r"if interrupted: .*\n", "", PLAN))
    assert "Called away: finish the station, note its number" in called_away(PLAN)


def crew(text: str = PLAN) -> Floor:
    return floor_of(text)


def test_the_floor_says_the_same_of_the_moment() -> None:
    (wrong,) = [one for one in conflicts(crew()) if one.kind == "stations"]
    assert wrong.text == "the circuit wants 4 dumbbells of 20 kg at the same moment, and the room has 2"
    assert wrong.change.startswith("give one of the moves another load or another piece of kit")


@pytest.mark.parametrize(
    ("old", "new"),
    [
        ("20 kg: 1 pair", "20 kg: 2 pairs"),
        ("row: at 2 x 20 kg", "row: at 2 x 16 kg"),
        ("people: 5", "people: 3"),
    ],
)
def test_two_pairs_another_load_or_few_people_are_no_fault(old: str, new: str) -> None:
    room = PLAN.replace("20 kg: 1 pair", "20 kg: 1 pair\n    16 kg: 1 pair").replace(old, new)
    assert conflicts(crew(room)) == ()


def test_five_go_round_six_stations_together_and_the_time_is_the_sum() -> None:
    """By hand: 6 x (35 + 25) s x 4 rounds are 24 min, three rests of 2 min make 30, setting up 31."""
    one = crew()
    assert [len(group) for group in one.groups] == [5]
    assert one.stays[0].end_s - one.stays[0].start_s == 31 * 60
    assert one.finish_s < 40 * 60
