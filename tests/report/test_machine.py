"""What programs read: JSON by the shipped schema, short lines, annotations; athletes' names stay out."""

import json
from dataclasses import replace
from importlib.resources import files

import jsonschema
import pytest

from setwright.checked import Checked
from setwright.places import Place
from setwright.report.machine import github, json_text, short
from tests.rules.plans import checked, example, week

SCHEMA = json.loads(files("setwright").joinpath("data", "findings.schema.json").read_text(encoding="utf-8"))
FLAWED = example("week-flawed.yaml")
OPEN = checked(
    week("Monday\ncircuit:\n          - push-up: 10\n          - goblet squat: 10\n        time: 12:00")
)
UNREAD = checked("- just\n- a list\n")


def with_a_name(one: Checked) -> Checked:
    first = replace(
        one.findings[0],
        where="Isla",
        message="Isla's press, 100 % of it",
        seen=(one.findings[0].seen[0]._replace(text="Isla and Islay"),),
        place=Place("a,b:c.yaml", 3, 2, 3, 9),
    )
    return one._replace(findings=(first,))


@pytest.mark.parametrize("plans", [[FLAWED], [OPEN], [UNREAD], [FLAWED, OPEN], [with_a_name(FLAWED)]])
def test_json_holds_to_the_schema(plans: list[Checked]) -> None:
    jsonschema.Draft202012Validator.check_schema(SCHEMA)
    jsonschema.validate(json.loads(json_text(plans)), SCHEMA)


def test_json_of_one_plan_has_aim_and_coverage_at_the_top() -> None:
    data = json.loads(json_text([FLAWED]))
    assert data["format"] == "setwright-findings/1"
    assert data["files"] == ["week-flawed.yaml"]
    assert data["aim"]["row"] == "chest focus"
    assert data["coverage"]["parts"]["sternal"]["heaviest"] == "flat barbell bench press"
    assert data["counts"] == {"advice": 0, "gap": 2, "error": 0, "allowed": 0}
    assert all(f["why"] and f["change"] and f["source"] for f in data["findings"])


def test_json_of_several_plans_has_them_apart() -> None:
    data = json.loads(json_text([FLAWED, OPEN]))
    assert data["aim"] is None
    assert [plan["file"] for plan in data["plans"]] == ["week-flawed.yaml", "week.yaml"]


def test_an_open_number_is_null() -> None:
    assert json.loads(json_text([OPEN]))["coverage"]["push"] == {"low": 0.0, "high": None}


def test_names_stay_out_unless_they_are_asked_for() -> None:
    one = with_a_name(FLAWED)
    for hidden in (json_text([one]), short(one), github(one)):
        assert "an athlete's press" in hidden
        assert "Isla'" not in hidden
    assert "an athlete and Islay" in json_text([one])
    for told in (
        json_text([one], with_names=True),
        short(one, with_names=True),
        github(one, with_names=True),
    ):
        assert "Isla's press" in told


def test_short_lines() -> None:
    lines = short(FLAWED).splitlines()
    assert len(lines) == 2
    assert lines[0].startswith("week-flawed.yaml:17:9: gap heavy-line-not-finished: Monday's flat barbell")


def test_annotations_escape_what_would_end_them() -> None:
    lines = github(with_a_name(FLAWED)).splitlines()
    assert len(lines) == 1
    assert lines[0].startswith(
        "::warning file=a%2Cb%3Ac.yaml,line=3,endLine=3,col=2,endColumn=9,title=heavy-line-not-finished::"
    )
    assert "100 %25 of it%0Awhy: " in lines[0]


def test_annotations_hold_no_control_character_of_the_plan() -> None:
    one = checked("plan: A\nwork:\n  - dip: 3 x 8\x1b[2J\n")
    assert "\x1b" not in github(one)
    assert "3 x 8" in github(one)
