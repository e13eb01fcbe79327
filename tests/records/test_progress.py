"""The rules for next time applied to what was done, and the load that comes of them."""

import datetime as dt
from pathlib import Path

import pytest

from setwright.model.reader.record import read_record
from setwright.reading.done_typed import load_typed
from setwright.reading.gathering import Gathering
from setwright.records.changes import Change, Going, changes_of
from setwright.records.coming import After, coming
from setwright.records.fitting import fitted
from setwright.records.keeping import Plan
from setwright.records.names import next_name, next_stem, week_number
from setwright.records.next_head import Head, with_head
from setwright.records.week_done import WeekDone
from tests.records.plans import LIBRARY, week

SQUAD = """\
squad:
  athletes:
    - name: Ann
"""
GYM = """\
gym:
  bars:
    20 kg: 1
  plates per rack:
    10 kg: 2 pairs
    5 kg: 1 pair
    2.5 kg: 1 pair
  dumbbells:
    4-30 kg by 2: 1 pair
  bands:
    red: 60 N at 2 m
"""


def plan(line: str, rule: str = "", extra: str = "", name: str = "Hall, week 3") -> str:
    below = f"        next: {rule}\n" if rule else ""
    if rule.startswith("\n"):
        below = f"        next:{rule}\n"
    top = f"plan: {name}\nunit: kg\nsides: each\n{SQUAD}{extra}"
    return f"{top}sessions:\n  - day: Monday\n    work:\n      - {line}\n{below}"


def after(done: str, line: str, rule: str = "", extra: str = "", name: str = "Hall, week 3") -> Change:
    """What becomes of a line once a record says what was done of it."""
    text = plan(line, rule, extra, name)
    of = week(text)
    movement = line.partition(":")[0]
    typed = done if done.startswith("\n") else f"    - {movement}: {done}\n"
    top = f"record: {name}\nsession: Monday\ndate: 2027-11-15\ndone:\n  Ann:\n"
    read = read_record("r.yaml", top + typed.lstrip("\n"), "kg")
    assert read.record is not None, read.findings
    assert read.findings == ()
    fit = fitted(read.record, [of], LIBRARY, Gathering())
    assert fit is not None
    kept = Plan(Path("w.yaml"), (of,), LIBRARY)
    (change,) = changes_of(Going(WeekDone(of, (fit,), ()), kept, coming(After(kept, text, 1, 1))))
    return change


def new(change: Change) -> str:
    return load_typed(change.load.load) if change.load.load else ""


TOP = "add 2.5 kg when every set reaches the top"
FIRST = "add 2.5 kg when the first set reaches the top"
SQUAT = "goblet squat: 1 x 8 at 20 kg"
BENCH = "flat barbell bench press: 3 x 6-8 at 40 kg"


@pytest.mark.parametrize(
    ("done", "rule", "load", "reason"),
    [
        ("40 x 8, 8, 8", TOP, "42.5 kg", "8, 8, 8: every set reached 8"),
        ("40 x 8, 9, 8, 8", TOP, "42.5 kg", "8, 9, 8, 8: every set reached 8"),
        ("8, 8, 8", TOP, "42.5 kg", "8, 8, 8: every set reached 8"),
        ("40 x 8, 8, 7", TOP, "40 kg", "8, 8, 7: 8 is not reached yet"),
        ("40 x 8, 8, 0", TOP, "40 kg", "8, 8, 0: 8 is not reached yet"),
        ("37.5 x 8, 8, 8", TOP, "40 kg", "8, 8, 8: every set reached 8"),
        ("35 x 8, 8, 7", TOP, "35 kg", "8, 8, 7: 8 is not reached yet"),
        ("40 x 8, 8", TOP, "40 kg", "2 of 3 sets"),
        ("40 x 8, 8, then 35 x 8", TOP, "40 kg", "the load was changed between the sets"),
        ("done", TOP, "40 kg", "done as planned, and nobody wrote how many"),
        ("not done", TOP, "40 kg", "not done"),
        ("not done, pager went", "add 2.5 kg every week", "40 kg", "not done, pager went"),
        ("", "add 2.5 kg every week", "40 kg", "nobody wrote it down"),
        ("40 x 8, 6, 6", FIRST, "42.5 kg", "8, 6, 6: the first set reached 8"),
        ("40 x 7, 8, 8", FIRST, "40 kg", "7, 8, 8: 8 is not reached yet"),
        ("40 x 6, 6, 6", "add 2.5 kg every week", "42.5 kg", "every week"),
        ("done", "add 2.5 kg every week", "42.5 kg", "every week"),
        ("40 x 6, 6, 6", "add 2.5 kg every 3 weeks", "42.5 kg", "every 3 weeks"),
        ("40 x 6, 6, 6", "add 2.5 kg every 2 weeks", "40 kg", "every 2 weeks, and this was week 3"),
        ("40 x 6, 6, 6", "add 5% of last week's load every week", "42 kg", "every week"),
        ("40 x 8, 8, 8", "repeat", "40 kg", "the plan says repeat"),
        ("40 x 8, 8, 8", "", "40 kg", "the plan has no rule for next time here"),
        ("40 x 8, 8, 8", "take off 5 lb every week", "37.732 kg", "every week"),
    ],
)  # fmt: skip
def test_what_was_done_decides(done: str, rule: str, load: str, reason: str) -> None:
    change = after(done, BENCH, rule)
    assert (new(change), change.decision.reason) == (load, reason)


@pytest.mark.parametrize(
    ("line", "done", "load"),
    [
        ("dip: 3 x 8 at bodyweight + 5 kg", "bodyweight + 5 kg x 8, 8, 8", "bodyweight + 7.5 kg"),
        ("dip: 3 x 8 at bodyweight + 5 kg", "done", "bodyweight + 7.5 kg"),
        ("dip: 3 x 8 at bodyweight + 5 kg", "8, 8, 8", "bodyweight + 7.5 kg"),
        ("one-arm dumbbell row: 2 x 8 each arm", "20 x 8 left, 8 right, 8 left, 8 right", "22.5 kg"),
        ("one-arm dumbbell row: 2 x 8 each arm", "20 x 8 left, 8 right", "20 kg"),
        ("flat barbell bench press: sets of 10, 8, 6 at 2 RIR", "50 kg x 10, 8, 6", "52.5 kg"),
        ("flat barbell bench press: sets of 10, 8, 6 at 2 RIR", "50 kg x 10, 8, 5", "50 kg"),
        ("flat barbell bench press: 3 x 5+ at 60 kg", "60 kg x 9, 9, 9", "60 kg"),
        ("flat barbell bench press: 3 x 8 at 60, 65, 70 kg", "done", ""),
        ("flat barbell bench press: 3 x 8", "8, 8, 8", ""),
        ("flat barbell bench press: 3 x 8 with red band", "8, 8, 8", "red band"),
    ],
)  # fmt: skip
def test_kinds_of_lines(line: str, done: str, load: str) -> None:
    change = after(done, line, TOP)
    assert new(change) == ("" if load == "red band" else load)


@pytest.mark.parametrize(
    ("done", "load"),
    [
        ("60 x 5 at RPE 8", "60 kg"), ("60 x 5 at RPE 7", "62.4 kg"), ("60 x 5 at 1 RIR", "57.6 kg"),
        ("60 x 5 at RPE 6.5", "63.6 kg"), ("60 x 5", "60 kg"),
    ],
)  # fmt: skip
def test_by_effort(done: str, load: str) -> None:
    """2 % of 60 kg is 1.2 kg for each half point that the effort was off RPE 8."""
    rule = "2% for each half point of effort"
    assert new(after(done, "flat barbell bench press: 1 x 5 at 60 kg, RPE 8", rule)) == load


def test_by_effort_needs_one_in_the_plan() -> None:
    change = after(
        "60 x 5 at RPE 8", "flat barbell bench press: 1 x 5 at 60 kg", "2% for each half point of effort"
    )
    assert change.decision.reason == "no effort is planned"


CASES = "\n          - 12 or more: add 5 lb\n          - 8-11: repeat\n          - otherwise: take off 5 lb"


@pytest.mark.parametrize(
    ("done", "load"),
    [("60 lb x 12", "65 lb"), ("60 lb x 11", "60 lb"), ("60 lb x 7", "55 lb"), ("done", "60 lb")],
)
def test_by_the_repetitions_of_the_last_set(done: str, load: str) -> None:
    assert new(after(done, "goblet squat: 1 x 8-12 at 60 lb", CASES)) == load


@pytest.mark.parametrize("over", [1, 2])
def test_a_published_progression(over: int) -> None:
    """Ratamess et al., Med Sci Sports Exerc 2009;41:687-708 (ACSM, read in the abstract): 2 to 10 % more once
    one or two repetitions over the desired number are done; as a list under ``next``.
    """
    rule = "\n          - 11 or more: add 5 kg\n          - otherwise: repeat"
    line = "flat barbell bench press: 1 x 10 at 80 kg"
    heavier = after(f"80 kg x {10 + over}", line, rule).load.load
    assert heavier is not None
    assert 1.02 <= (heavier.low or 0) / 80 <= 1.10
    assert new(after("80 kg x 10", line, rule)) == "80 kg"


@pytest.mark.parametrize(
    ("line", "done", "rule", "load", "note"),
    [
        (SQUAT, "done", "add 1 kg every week", "22 kg", "for 21 kg this gym has 22 kg"),
        (SQUAT, "done", "add 2.5 kg every week", "22 kg", "for 22.5 kg this gym has 22 kg"),
        (SQUAT, "done", "take off 1 kg every week", "18 kg", "for 19 kg this gym has 18 kg"),
        (SQUAT.replace("20", "30"), "done", "add 2 kg every week", "30 kg", "for 32 kg this gym has 30 kg"),
        (BENCH, "40 x 8, 8, 8", "add 5 kg every week", "45 kg", ""),
        (BENCH, "40 x 8, 8, 8", "add 2.5 kg every week", "45 kg", "for 42.5 kg this gym has 45 kg"),
        ("leg press: 1 x 8 at 91 kg", "done", "add 1 kg every week", "92 kg", ""),
    ],
)  # fmt: skip
def test_the_smallest_step_of_the_gym(line: str, done: str, rule: str, load: str, note: str) -> None:
    change = after(done, line, rule, GYM)
    assert (new(change), change.load.note) == (load, note)


@pytest.mark.parametrize(
    ("below", "load", "note"),
    [
        (
            "maxes:\n        flat barbell bench press: 41 kg tested 2027-10-01", "40 kg",
            "42.5 kg would be above the tested max of 41 kg",
        ),
        ("maxes:\n        flat barbell bench press: 42.5 kg tested 2027-10-01", "42.5 kg", ""),
        ("maxes:\n        flat barbell bench press: from 30 kg x 5 on 2027-10-01", "42.5 kg", ""),
        ("limits:\n        - load at most: 41 kg\n          until: cleared", "40 kg", "held where it is"),
        ("limits:\n        - load at most: 100 lb\n          until: cleared", "42.5 kg", ""),
    ],
)  # fmt: skip
def test_never_up_beyond_the_max_or_a_limit(
    below: str, load: str, note: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("tests.records.test_progress.SQUAD", f"{SQUAD}      {below}\n")
    change = after("40 x 8, 8, 8", BENCH, TOP)
    assert (new(change), change.load.note) == (load, note)


def test_above_the_max_where_it_is_allowed(monkeypatch: pytest.MonkeyPatch) -> None:
    best = "      maxes:\n        flat barbell bench press: 41 kg tested 2027-10-01\n"
    monkeypatch.setattr("tests.records.test_progress.SQUAD", f"{SQUAD}{best}")
    allow = "allow:\n  above-tested-max: a new max is tried\n"
    assert new(after("40 x 8, 8, 8", BENCH, TOP, allow)) == "42.5 kg"


def test_a_step_of_the_training_max_leaves_the_line_alone() -> None:
    change = after("40 x 8, 8, 8", BENCH, "add 5 kg to the training max every 3 weeks")
    assert change.decision.reason == "every 3 weeks 5 kg to the training max"
    assert change.decision.to_max is not None
    assert new(change) == "40 kg"


def test_a_share_of_the_first_weeks_load() -> None:
    change = after("40 x 8, 8, 8", BENCH, "add 2.5% of the first week's load every week")
    assert (new(change), change.decision.reason) == ("41 kg", "every week 2.5% of the first week's 40 kg")


def test_without_a_load_in_the_first_week_there_is_no_share_of_it() -> None:
    change = after("8", "push-up: 1 x 8", "add 2.5% of the first week's load every week")
    assert change.decision.by_hand
    assert change.decision.reason == "every week, and the first week's load is not known"


@pytest.mark.parametrize(
    ("line", "done", "load"),
    [
        ("flat barbell bench press: 3 x 5 at 50%", "done", "42.5 kg"),
        ("flat barbell bench press: 3 x 5 at 50%", "37.5 x 5, 5, 5", "40 kg"),
        ("flat barbell bench press: 3 x 10 at 10RM", "done", "62.5 kg"),
        ("dip: 3 x 5 at bodyweight", "done", "bodyweight + 2.5 kg"),
        ("dip: 3 x 5 at bodyweight - 10 kg", "done", "bodyweight - 7.5 kg"),
    ],
)
def test_a_step_in_kilograms_on_a_share_of_a_max_or_the_body(
    line: str, done: str, load: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    """10RM is 75 % by the handbook chart, so 60 kg of a tested 80 kg."""
    best = "      maxes:\n        flat barbell bench press: 80 kg tested 2027-10-01\n"
    monkeypatch.setattr("tests.records.test_progress.SQUAD", f"{SQUAD}{best}")
    assert new(after(done, line, "add 2.5 kg every week")) == load


def test_every_few_weeks_needs_a_number() -> None:
    change = after("40 x 8, 8, 8", BENCH, "add 2.5 kg every 2 weeks", name="Hall")
    assert change.decision.by_hand


def test_a_gym_without_a_bar_says_so() -> None:
    change = after("40 x 8, 8, 8", BENCH, TOP, "gym:\n  benches: 1\n")
    assert (new(change), change.load.note) == ("42.5 kg", "this gym has nothing to load it with")


def test_help_of_a_machine_is_no_step_up() -> None:
    change = after("20 kg x 8", "assisted pull-up: 1 x 8 at 20 kg", TOP)
    assert change.load == (None, "the load is help here: less of it is the step")


def test_something_else_instead_does_not_advance() -> None:
    change = after("\n    - push-up: 8, 8, 8\n      instead of: flat barbell bench press\n", BENCH, TOP)
    assert (new(change), change.decision.reason) == ("40 kg", "push-up was done instead")


@pytest.mark.parametrize(
    ("name", "number", "then"),
    [
        ("Autumn block, week 3", 3, "Autumn block, week 4"), ("Week 9 at 3 pm", 9, "Week 10 at 3 pm"),
        ("Winter 2027", None, "Winter 2027, next week"),
    ],
)  # fmt: skip
def test_names_of_weeks(name: str, number: int | None, then: str) -> None:
    assert (week_number(name), next_name(name)) == (number, then)


@pytest.mark.parametrize(
    ("stem", "then"),
    [("week-3", "week-4"), ("2027-w09", "2027-w10"), ("hall", "hall-next"), ("week-9b", "week-10b")],
)
def test_file_names_of_weeks(stem: str, then: str) -> None:
    assert next_stem(stem) == then


def test_dates_move_by_a_week() -> None:
    text = 'plan: "A, week 1"   # kept\nstarts: 2027-12-27\nfollows: w0.yaml\nsessions:\n'
    text += "  - date: 2027-12-28\n    work:\n      - dip: 3 x 8\n  - date: soon\n"
    head = Head("A, week 2", "w1.yaml", starts=dt.date(2028, 1, 3), late=1)
    assert with_head("w1.yaml", text, head).splitlines() == [
        'plan: "A, week 2"   # kept', "starts: 2028-01-03", "follows: w1.yaml", "sessions:",
        "  - date: 2028-01-04", "    work:", "      - dip: 3 x 8", "  - date: soon",
    ]  # fmt: skip
