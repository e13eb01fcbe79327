"""A plan of several weeks: the screen of a check, what programs read, and the plan said back."""

import json

import jsonschema

from setwright.report.machine import github, json_text, short
from setwright.report.read import read_text
from setwright.report.terminal import text
from tests.model.blocks import block
from tests.reading.plans import read
from tests.report.test_machine import SCHEMA
from tests.rules.plans import checked, example

PLAN = block(
    4,
    "- flat barbell bench press: [6 x 6 at 2 RIR, 6 x 6 at 2 RIR, 7 x 6 at 2 RIR, 6 x 6 at 2 RIR]\n"
    "- level cable crossover: 3 x 12 at 1 RIR\n  only in: week 2\n- bench pull: 6 x 8 at 2 RIR",
    "focus: [chest]\nlighter weeks:\n  week 4: no training\n",
)
BLOCK = checked(PLAN)
CLEAN = example("block.yaml")


def one_line(printed: str) -> str:
    return " ".join(printed.split())


def test_weeks_that_add_up_to_the_same_share_a_matrix() -> None:
    shown = text(CLEAN, colour=False)
    assert shown.startswith(
        "Winter block: 4 weeks, 6 people\nAim: chest focus (focus: [chest])\n\nWeeks 1-3: "
    )
    assert shown.count("chest part") == 2
    assert "Week 4 (half the sets): 2 sessions, 49 of 100 minutes" in shown
    assert shown.count("Mechanical figures") == 1
    assert shown.endswith("No findings.\n")
    assert max(map(len, shown.splitlines())) <= 80


def test_weeks_apart_and_a_week_off() -> None:
    shown = text(BLOCK, colour=False)
    heads = [line for line in shown.splitlines() if line.startswith("Week")]
    assert [head.split(":")[0] for head in heads] == ["Week 1", "Week 2", "Week 3", "Week 4"]
    assert heads[3] == "Week 4: no training"
    assert "   = weeks: 1 and 3\n" in shown
    assert "   = weeks: 1-3\n" in shown


def test_an_aim_that_differs_is_told_with_each_week() -> None:
    plan = block(2, "- push-up: [5 x 10 at 2 RIR, none]\n- bench pull: 5 x 8 at 2 RIR")
    shown = text(checked(plan), colour=False)
    assert "A block: 2 weeks\nNo gym and no squad written" in shown
    assert "Week 1: 1 session, about 22 minutes\nAim: general (no aim written)" in shown
    assert "Aim: no chest" in shown
    assert "chest: not trained this week" in shown


def test_a_block_without_any_session_is_told_as_such() -> None:
    plan = block(2, "- push-up: 3 x 8", "lighter weeks:\n  weeks 1-2: no training\n")
    assert "Weeks 1-2: no training" in text(checked(plan), colour=False)


def test_errors_of_a_block_are_told_once() -> None:
    shown = text(checked(block(3, "- push-up: 3 x")), colour=False)
    assert shown.count("error [") == 1
    assert "Until the errors below are mended" in shown


def test_json_of_a_block_holds_to_the_schema_and_has_every_week() -> None:
    for one in (BLOCK, CLEAN, checked(PLAN + "allow:\n  no-work-across-the-midline: shared room\n")):
        jsonschema.validate(json.loads(json_text([one])), SCHEMA)
    data = json.loads(json_text([BLOCK]))
    assert (data["aim"], data["coverage"]) == (None, None)
    (plan,) = data["plans"]
    assert [week["week"] for week in plan["weeks"]] == [1, 2, 3, 4]
    assert [week["lighter"] for week in plan["weeks"]] == [None, None, None, "no training"]
    sets = [week["coverage"]["parts"]["sternal"]["sets"]["low"] for week in plan["weeks"]]
    assert sets == [6, 9, 7, 0]
    assert all(finding["weeks"] for finding in data["findings"])


def test_json_of_a_plan_of_one_week_has_no_weeks() -> None:
    data = json.loads(json_text([example("week-flawed.yaml")]))
    assert "weeks" not in data["plans"][0]
    assert not [finding for finding in data["findings"] if "weeks" in finding]


def test_what_was_allowed_in_some_weeks_names_them() -> None:
    allowed = checked(PLAN + "allow:\n  no-work-across-the-midline: shared room\n")
    assert json.loads(json_text([allowed]))["plans"][0]["allowed"] == [
        {"rule": "no-work-across-the-midline", "reason": "shared room", "weeks": [1, 3]}
    ]


def test_short_lines_and_annotations_name_the_weeks() -> None:
    assert " gap no-work-across-the-midline: weeks 1 and 3: Monday has 6 hard" in short(BLOCK)
    assert "::weeks 1 and 3: Monday has 6 hard" in github(BLOCK)


READ = """\
plan: A block
unit: kg
sides: each
weeks: 3
lighter weeks:
  week 3: half the sets and 80% of the load
training days: [Monday, Wednesday, Friday]
rotate: [A, B]
sessions:
  - name: A
    warm-up:
      - push-up: [1 x 10, 1 x 12, 1 x 14]
    work:
      - bench pull: 4 x 8, rest 2:00
        load: [50, 55, none]
      - superset:
          - push-up: [3 x 8, 3 x 8, none]
          - dip: 3 x 5, then 2 x 8
        rest: 2:00
    cool-down: walk
  - name: B
    warm-up: 5 min
    work:
      - front plank:
          week 1: 3 x 30 s
          week 2: stop
      - dip: 3 x 8
      - complex:
          - power clean: 3
        rounds: 3
        load: [40, none, 40]
  - day: Sunday
    only in: week 2
    work:
      - rowing ergometer: 20 min
"""


def test_a_block_is_said_back_once_with_what_changes() -> None:
    said = one_line(read_text(read(READ)))
    for words in (
        "weeks: 3 week 3: half the sets and 80 % of the load, applied to all that follows",
        "Monday and Friday, A (weeks 1 and 3); Wednesday, A (week 2)",
        "warm-up, never counted: push-up week 1: 1 set of 10 week 2: 1 set of 12",
        "1. bench pull: 2 minutes between sets week 1: 4 sets of 8 with 50 kg week 2: 4 sets of 8 with 55 kg",
        "week 3: 2 sets of 8; load: none this week, on purpose",
        "2. superset: 2 minutes after each round; straight on between moves 2a push-up: 3 sets of 8 week 3:",
        "week 3: not done, on purpose 2b leaning",
        '2b leaning parallel-bar dip: typed "dip" weeks 1-2: 3 sets of 5, then 2 sets of 8',
        "cool-down: walk",
        "warm-up: 5 minutes, never counted 1. front plank: 3 sets of 30 seconds weeks 2-3: not done, on",
        "week 2: 3 rounds; load: none this week, on purpose week 3: 2 rounds; all with 32 kg",
        "Sunday (week 2) 1. rowing ergometer: 20 minutes",
    ):
        assert words in said


def test_one_week_of_a_block_is_said_back_like_a_plan() -> None:
    said = one_line(read_text(read(READ), week=3))
    assert "A block, week 3 of 3: what holds for the whole plan" in said
    assert "week 3: half the sets and 80 % of the load, applied to all that follows" in said
    assert "1. bench pull: 2 sets of 8; 2 minutes between sets; load: none this week, on purpose" in said
    assert "week 2" not in said


def test_a_week_without_sessions_is_said() -> None:
    assert "week 1: no session" in read_text(read(block(2, "- push-up: 3 x 8\n  only in: week 2")))
    assert "\n\nMonday\n  1. push-up: 3 sets of 8\n" in read_text(read(block(2, "- push-up: 3 x 8")))


def test_lines_of_a_block_keep_to_80_columns() -> None:
    assert max(map(len, read_text(read(READ)).splitlines())) <= 80
