"""Forms: what is filled in beforehand, how they read back, and that nothing typed is written over."""

from pathlib import Path

import pytest

from setwright.model.reader.record import read_record
from setwright.model.record import Record
from setwright.records.form import EVERYBODY, HEAD, form_of
from setwright.records.paper import as_yaml
from setwright.records.table import as_csv, read_table
from tests.commands import run, said
from tests.records.plans import PLAN, hall, week

CREW = Path(__file__).parents[2] / "examples" / "skerrow-bay"


def lines_of(form: str, name: str) -> list[str]:
    """What stands under an athlete in a form."""
    _, _, rest = form.partition(f"  {name}:\n")
    lines = rest.splitlines()
    end = next((n for n, line in enumerate(lines) if not line.startswith("    ")), len(lines))
    return [line.strip() for line in lines[:end]]


def states(record: Record | None) -> set[str]:
    assert record is not None
    return {line.done.kind if line.done else "unread" for one in record.athletes for line in one.lines}


def test_a_form_holds_each_athletes_own_lines() -> None:
    form = as_yaml(form_of(week(), week().sessions[0]))
    assert form.startswith("record: Hall, week 3\nsession: Monday\ndate: 2027-11-15\nunit: kg\ndone:\n")
    assert lines_of(form, "Ann") == [
        "- flat barbell bench press:  # plan: 3 x 6-8, with 40 kg",
        "- dip:  # plan: 1 x 8, 3 rounds, with bodyweight + 5 kg",
        "- pull-up:  # plan: 1 x 6, 3 rounds",
        "- front plank:  # plan: 2 x 30 s hold",
    ]
    assert lines_of(form, "Ben")[0] == "- flat barbell bench press:  # plan: 3 x 6-8, with 50, 55 and 60 kg"
    assert lines_of(form, "Cal") == ["- push-up:  # plan: 3 x 12"]
    assert "Dee" not in form


def test_the_load_of_a_complex_is_that_of_its_members() -> None:
    form = as_yaml(form_of(week(), week().sessions[1]))
    assert lines_of(form, "Ben")[:2] == [
        "- Romanian deadlift:  # plan: 1 x 5, 4 rounds, with 30 kg",
        "- bent-over barbell row:  # plan: 1 x 5, 4 rounds, with 30 kg",
    ]


def test_without_a_squad_there_is_one_list() -> None:
    text = "plan: Open\nwork:\n  - dip: 3 x 8\n  - circuit:\n      - push-up:\n    each: 40 s\n"
    form = form_of(week(text), week(text).sessions[0])
    assert [name for name, _ in form.athletes] == [EVERYBODY]
    assert form.top == {"record": "Open", "session": "the session", "date": ""}


@pytest.mark.parametrize("session", [0, 1])
def test_an_unedited_form_is_not_written_everywhere(session: int) -> None:
    form = form_of(week(), week().sessions[session])
    yaml = read_record("form.yaml", as_yaml(form, HEAD))
    table = read_table("form.csv", as_csv(form))
    assert yaml.findings == table.findings == ()
    assert states(yaml.record) == states(table.record) == {"not written"}


@pytest.mark.parametrize("kind", ["yaml", "csv"])
def test_the_forms_of_the_examples_pass_the_check(kind: str, tmp_path: Path) -> None:
    for file, day in (("week-good.yaml", "Friday"), ("week-flawed.yaml", "Thursday")):
        out = tmp_path / f"{day}.{kind}"
        assert run("record", CREW / file, "--day", day, "--format", kind, "--out", out).exit_code == 0
        assert b"\r\r" not in out.read_bytes()
        if kind == "yaml":
            assert "nothing to mend" in said(run("check", out))


def test_the_command_names_the_form_by_date_and_day(tmp_path: Path) -> None:
    plan = hall(tmp_path)
    result = run("record", plan, "--day", "press day")
    form = tmp_path / "record-2027-11-15-monday.yaml"
    assert result.exit_code == 0
    assert said(result) == f"{form} (Ann, Ben, Cal)"
    assert "# Then: setwright keep record-2027-11-15-monday.yaml\n" in form.read_text(encoding="utf-8")
    form.write_text("typed", encoding="utf-8")
    again = run("record", plan, "--day", "Mon")
    assert again.exit_code == 2
    assert "is there already and is not written over" in said(again)
    assert form.read_text(encoding="utf-8") == "typed"


def test_a_block_is_recorded_week_by_week(tmp_path: Path) -> None:
    text = PLAN.replace("starts: 2027-11-15\n", "weeks: 2\n").replace(
        "front plank: 2 x 30 s hold\n        for: [Ann]",
        "front plank:\n          week 1: 2 x 30 s\n          week 2: none",
    )
    plan = hall(tmp_path, text)
    assert "say which one, from --week 1 to --week 2" in said(run("record", plan, "--day", "Monday"))
    first, second = (run("record", plan, "--day", "Monday", "--week", n, "--out", "-").output for n in "12")
    assert "\nweek: 1\nsession: Monday\ndate:\n" in first
    assert "front plank" in first
    assert "front plank" not in second
    run("record", plan, "--day", "Monday", "--week", "2")
    assert (tmp_path / "record-week-2-monday.yaml").is_file()


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        ([], 'it has 2 sessions; say which one with --day "Monday" or "Thursday"'),
        (["--day", "Friday"], '"Friday" names no session; say which one'),
    ],
)
def test_which_session_is_asked(arguments: list[str], told: str, tmp_path: Path) -> None:
    result = run("record", hall(tmp_path), *arguments)
    assert result.exit_code == 2
    assert told in said(result)


def test_a_plan_with_errors_gets_no_form(tmp_path: Path) -> None:
    result = run(
        "record", hall(tmp_path, PLAN.replace("push-up: 3 x 12", "push-up: 3 by feel")), "--day", "Monday"
    )
    assert result.exit_code == 2
    assert "no form is written while the plan has errors" in said(result)


def test_a_week_without_training_has_nothing_to_record(tmp_path: Path) -> None:
    text = "plan: Two\nweeks: 2\nlighter weeks:\n  week 2: no training\nwork:\n  - dip: 3 x 8\n"
    result = run("record", hall(tmp_path, text), "--week", "2")
    assert result.exit_code == 2
    assert "there is no training in week 2" in said(result)


def test_a_form_that_cannot_be_written_is_one_sentence(tmp_path: Path) -> None:
    plan = hall(tmp_path)
    result = run("record", plan, "--day", "Monday", "--out", plan / "form.yaml")
    assert result.exit_code == 2
    assert "can't be written" in said(result)


def test_two_sessions_of_a_day_go_by_their_names(tmp_path: Path) -> None:
    plan = hall(tmp_path, PLAN.replace("- day: Thursday", "- day: Monday\n    name: Evening"))
    asked = run("record", plan, "--day", "Monday")
    assert 'say which one with --day "Press day" or "Evening"' in said(asked)
    assert run("record", plan, "--day", "Evening").exit_code == 0
    form = tmp_path / "record-2027-11-15-evening.yaml"
    form.write_text(form.read_text(encoding="utf-8").replace("dip:", "dip: 8", 1), encoding="utf-8")
    assert "2027-11-15-evening.1.yaml" in said(run("keep", form))
