"""A school's block by percent in its own room, as a coach brings it: weeks by table. Everyone is invented."""

import json
import re
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from typer.testing import CliRunner

from setwright.checked import Checked
from setwright.cli import app
from setwright.findings import Level
from tests.cases.test_school_loads import ROOM
from tests.cases.test_school_maxes import SQUAD
from tests.cases.told import told_by_week
from tests.rules.plans import checked

BLOCK = f"""\
plan: Autumn full-body block
starts: 2027-09-06
weeks: 5
unit: lb
dose order: sets x reps
percent of: tested max
sides: each
{ROOM}    platform: 2
    floor pivot: 1
{SQUAD}schemes:
  table:
    week 1: 3 x 8 at 65%
    week 2: 4 x 6 at 72.5%
    week 3: 5 x 5 at 80%
    week 4: 3 x 3 at 90%, then 1 x 3+ at 97.5%
    week 5: test 1RM
sessions:
  - day: Monday
    minutes: 30
    work:
      - flat barbell bench press: table
        rest: 2:00
        priority: 1
      - barbell back squat: table
        rest: 2:00
        priority: 1
      - one-arm dumbbell row: 3 x 10 each arm
      - barbell curl: 3 x 12
        priority: 3
      - dip: 3 x max
        priority: 3
  - day: Wednesday
    minutes: 30
    work:
      - incline 30 barbell bench press: 3 x 8 at own choice
      - power clean: 5 x 3 at 70 lb
      - standing barbell overhead press: 3 x 8
      - forward lunge: 3 x 10 each leg
  - day: Friday
    minutes: 30
    work:
      - flat barbell bench press: table
      - barbell front squat: 3 x 5 at 70% of barbell back squat
      - pull-up: 3 x max
      - push-up: 2 x 20
"""


@cache
def block() -> Checked:
    return checked(BLOCK)


def said(rule: str) -> list[str]:
    return [finding.message for finding in block().findings if finding.rule == rule]


def loads(tmp_path: Path, week: int) -> dict[str, dict[str, Any]]:
    """What each athlete puts on for the bench press on Monday, from the machine's copy."""
    file = tmp_path / "block.yaml"
    file.write_text(BLOCK, encoding="utf-8")
    told = CliRunner().invoke(app, ["loads", str(file), "--week", str(week), "--format", "json"])
    monday, *_ = json.loads(told.output)["sessions"]
    return {row["athletes"][0]: row for row in monday["lines"][0]["sets"][0]["loads"]}


def test_who_has_no_max_is_said_once_for_all_weeks() -> None:
    assert said("no-max-for-percent") == [
        "flat barbell bench press: no max for Cass to take a percent of",
    ]


def test_two_weeks_fall_below_the_empty_bar_and_what_to_do_instead() -> None:
    """65 % of 60 lb is 39 lb, 72.5 % is 43.5 lb; 80 % is 48 lb and over the bar."""
    found = [f for f in block().findings if f.rule == "below-the-empty-bar"]
    assert {f.level for f in found} == {Level.error}
    assert all("for Emi" in f.message and "the empty 45 lb bar" in f.message for f in found)
    assert {weeks for f in found for weeks in f.weeks} == {1, 2}
    assert "flat dumbbell bench press" in found[0].change


@pytest.mark.parametrize(("week", "asked", "load"), [(1, 61.75, "60 lb"), (2, 68.875, "70 lb")])
def test_rounding_is_shown_with_its_size(tmp_path: Path, week: int, asked: float, load: str) -> None:
    row = loads(tmp_path, week)["Adaeze"]
    assert row["asked_kg"][0] == pytest.approx(asked * 0.45359237, abs=1e-4)
    assert row["load"] == load
    assert row["off_percent"] == round((float(load.split(maxsplit=1)[0]) - asked) / asked * 100, 1)


def test_the_rounding_that_is_felt_is_told_by_check() -> None:
    told = [f for f in block().findings if f.rule == "load-not-loadable"]
    assert any("Adaeze: 61.75 lb asked, 60 lb" in seen.text for f in told for seen in f.seen)
    assert {f.level for f in told} == {Level.advice}


def test_a_max_in_the_wrong_unit_is_asked_once_and_the_open_set_of_week_four_too() -> None:
    assert said("unit-looks-wrong") == ["flat barbell bench press of Dov, 92 lb: typed in kg?"]
    assert len(said("reps-not-possible-at-load")) == 1
    assert said("effort-and-percent-disagree") == []


def test_this_is_said_of_the_block_and_nothing_else() -> None:
    """Nothing against curls, fresh maxes, five rising weeks, or the test of those who are no beginners.

    Weeks 1 and 2 at 65 and 72.5 % leave more than three repetitions: no hard presses, so no balance to judge.
    """
    bench = "- flat barbell bench press: table"
    assert told_by_week(block()) == [
        ("unit-looks-wrong", "flat barbell bench press: 92 lb tested 2027-08-30", (1, 2, 3, 4, 5)),
        ("session-over-time", "- day: Monday", (1, 2, 3, 4)),
        ("no-work-across-the-midline", "work:", (3, 4)),
        ("push-without-pull", "work:", (3, 4, 5)),
        ("beginner-maximal-test", bench, (5,)),
        ("below-the-empty-bar", bench, (1, 2)),
        ("heavy-line-not-finished", bench, (3, 4, 5)),
        ("load-not-loadable", bench, (1, 2, 3, 4)),
        ("no-max-for-percent", bench, (1, 2, 3, 4)),
        ("no-warm-up-for-heavy-lift", bench, (3, 4)),
        ("reps-not-possible-at-load", bench, (4,)),
        ("load-not-loadable", "- barbell back squat: table", (1,)),
        ("heavy-line-not-finished", "- dip: 3 x max", (1, 2, 3, 4, 5)),
        ("session-over-time", "- day: Wednesday", (1, 2, 3, 4, 5)),
        (
            "heavy-line-not-finished",
            "- incline 30 barbell bench press: 3 x 8 at own choice",
            (1, 2, 3, 4, 5),
        ),
        ("no-work-across-the-midline", "work:", (3, 4)),
        ("failure-without-spotter", bench, (5,)),
        ("no-heavy-lift-for-part", "- push-up: 2 x 20", (1, 2)),
    ]


def test_the_upper_chest_is_not_complained_of_while_the_incline_press_is_in() -> None:
    spoken_of = ("part-not-loaded", "line-never-followed", "no-heavy-lift-for-part")
    assert not [f for f in block().findings if f.rule in spoken_of and "clavicular" in f.message]
    without = checked(re.sub(r".*incline 30 barbell.*\n|.*standing barbell overhead press.*\n", "", BLOCK))
    assert [f.rule for f in without.findings if "clavicular" in f.message] == ["line-never-followed"]


def test_thirty_minutes_name_the_line_to_leave_out() -> None:
    monday = next(f for f in block().findings if f.rule == "session-over-time")
    assert re.fullmatch(r"week 1: leave out (dip|barbell curl) \(\d+ min\), pair lines .*", monday.change)
    assert [seen.text.rpartition(" ")[0].rpartition(" ")[0] for seen in monday.seen] == [
        "flat barbell bench press",
        "barbell back squat",
        "one-arm dumbbell row",
        "barbell curl",
        "dip",
    ]
