"""``next``: next week's plan as text, every other line as it was typed, and what is left to the coach."""

import re
from pathlib import Path

import pytest

from setwright.own.plan import read_plan
from tests.commands import run, said

PLAN = """\
# The hall's third week.
plan: Hall, week 3     # of six
starts: 2027-11-15
unit: kg
squad:
  athletes:
    - name: Ann
    - name: Ben
    - name: Cal
  groups:
    juniors: [Ben, Cal]
next: add 2.5 kg when every set reaches the top
sessions:
  - day: Monday
    work:
      - flat barbell bench press: 3 x 6-8 at 40 kg, 2 RIR, rest 2:00   # slow down
      - superset:
          - dip: 2 x 8 at bodyweight + 5 kg
          - pull-up: 2 x 5-8
            next: add 1 rep every week
        rest: 2:00
      - bench pull: 2 x 8
        load:
          Ann: 30 kg        # her bar
          juniors: 40 kg
      - face pull: 2 x 12
        load: 15 kg
        next: add 1 set every week
  - day: Thursday
    work:
      - goblet squat: 2 x 8 at 20 kg
        instead:
          Cal:
            - leg press: 2 x 8 at 60 kg
"""
RECORD = """\
record: Hall, week 3
session: Monday
date: 2027-11-15
done:
  Ann:
    - flat barbell bench press: 40 x 8, 8, 8
    - dip: done
    - pull-up: 5, 5
    - bench pull: 30 x 8, 8
    - face pull: done
  Ben:
    - flat barbell bench press: 40 x 8, 8, 8
    - dip: done
    - pull-up: 5, 5
    - bench pull: 40 x 8, 8
    - face pull: done
  Cal:
    - flat barbell bench press: 40 x 8, 8, 8
    - dip: done
    - pull-up: 5, 5
    - bench pull: 40 x 8, 8
    - face pull: done
"""


def hall(folder: Path, plan: str = PLAN, record: str = RECORD, name: str = "week-3.yaml") -> Path:
    """A plan with a record kept beside it."""
    file = folder / name
    file.write_text(plan, encoding="utf-8")
    form = folder / "form.yaml"
    form.write_text(record, encoding="utf-8")
    kept = run("keep", form, "--plan", file)
    assert kept.exit_code == 0, kept.output
    return file


def changed(file: Path, to: Path) -> list[str]:
    """The lines of a plan that are not in the one before."""
    old = file.read_text(encoding="utf-8").splitlines()
    return [line for line in to.read_text(encoding="utf-8").splitlines() if line not in old]


def test_everybody_advances_in_the_line_itself(tmp_path: Path) -> None:
    file = hall(tmp_path)
    result = run("next", file)
    new = tmp_path / "week-4.yaml"
    assert result.exit_code == 0, result.output
    assert file.read_text(encoding="utf-8") == PLAN
    assert changed(file, new) == [
        "plan: Hall, week 4     # of six",
        "follows: week-3.yaml",
        "starts: 2027-11-22",
        "      - flat barbell bench press: 3 x 6-8 at 42.5 kg, 2 RIR, rest 2:00   # slow down",
        "          - dip: 2 x 8 at bodyweight + 7.5 kg",
        "          - pull-up: 2 x 6-9",
        "          Ann: 32.5 kg        # her bar",
        "          juniors: 42.5 kg",
        "      - face pull: 3 x 12",
    ]
    assert len(new.read_text(encoding="utf-8").splitlines()) == len(PLAN.splitlines()) + 1
    assert "Ann, Ben, Cal: 42.5 kg, was 40 kg (8, 8, 8: every set reached 8)" in said(result)
    assert "No record is kept of Thursday: nothing advances there." in said(result)
    assert "To do by hand" not in result.output
    assert run("next", file).exit_code == 2


def test_each_has_a_load_of_their_own_once_they_differ(tmp_path: Path) -> None:
    record = RECORD.replace(
        "  Ben:\n    - flat barbell bench press: 40 x 8, 8, 8\n    - dip: done",
        "  Ben:\n    - flat barbell bench press: 40 x 8, 8, 7\n    - dip: not done",
    ).replace(
        "  Cal:\n    - flat barbell bench press: 40 x 8, 8, 8\n", "  Cal:\n    - flat barbell bench press:\n"
    )
    record = record.replace("40 x 8, 8\n    - face pull: done\n  Cal", "40 x 8, 7\n    - face pull:\n  Cal")
    file = hall(tmp_path, record=record)
    result = run("next", file)
    text = (tmp_path / "week-4.yaml").read_text(encoding="utf-8")
    assert (
        "      - flat barbell bench press: 3 x 6-8, 2 RIR, rest 2:00   # slow down\n"
        "        load:\n          Ann: 42.5 kg\n          Ben: 40 kg\n          Cal: 40 kg\n"
    ) in text
    assert (
        "          - dip: 2 x 8\n            load:\n              Ann: bodyweight + 7.5 kg\n"
        "              Ben: bodyweight + 5 kg\n              Cal: bodyweight + 7.5 kg\n"
    ) in text
    assert (
        "          Cal: 42.5 kg\n          Ann: 32.5 kg        # her bar\n          juniors: 40 kg\n" in text
    )
    assert (
        "      - face pull: 3 x 12\n        instead:\n          Ben:\n            - face pull: 2 x 12\n"
        "              load: 15 kg\n              next: add 1 set every week\n        load: 15 kg\n"
    ) in text
    assert "To do by hand" not in result.output
    assert read_plan("week-4.yaml", text, lambda _: None).read.findings == ()


def test_without_a_squad_the_only_list_is_everybodys(tmp_path: Path) -> None:
    plan = "plan: Hall\nunit: kg\nnext: add 5 lb every week\nwork:\n"
    plan += "  - move: goblet squat\n    do: 2 x 8 at 62,5 kg\n"
    record = "record: Hall\ndate: 2027-11-15\ndone:\n  Everybody:\n    - goblet squat: done\n"
    file = hall(tmp_path, plan, record, "hall.yaml")
    result = run("next", file, "--out", tmp_path / "then.yaml")
    assert result.exit_code == 0, result.output
    assert changed(file, tmp_path / "then.yaml") == [
        "plan: Hall, next week", "follows: hall.yaml", "    do: 2 x 8 at 64.768 kg",
    ]  # fmt: skip
    assert "all: 64.768 kg, was 62.5 kg (every week)" in said(result)


def test_a_line_without_a_load_gets_the_one_that_was_lifted(tmp_path: Path) -> None:
    plan = "plan: Hall\nunit: kg\nnext: repeat\nwork:\n  - goblet squat: 2 x 8 at 2 RIR, rest 2:00\n"
    record = "record: Hall\ndate: 2027-11-15\ndone:\n  Everybody:\n    - goblet squat: 20 x 8, 8\n"
    file = hall(tmp_path, plan, record, "hall.yaml")
    assert run("next", file).exit_code == 0
    assert (tmp_path / "hall-next.yaml").read_text(encoding="utf-8").endswith("rest 2:00\n    load: 20 kg\n")


def test_percents_repeat_and_are_replaced_by_a_step(tmp_path: Path) -> None:
    squad = "squad:\n  athletes:\n    - name: Ann\n      maxes:\n"
    squad += "        flat barbell bench press: 80 kg tested 2027-10-01\n"
    plan = f"plan: A, week 1\nunit: kg\n{squad}work:\n  - flat barbell bench press: 2 x 5 at 75%, rest 3:00\n"
    record = "record: A, week 1\ndate: 2027-11-15\ndone:\n  Ann:\n    - flat barbell bench press: 60 x 5, 5\n"
    file = hall(tmp_path, plan, record, "w1.yaml")
    run("next", file)
    assert changed(file, tmp_path / "w2.yaml") == ["plan: A, week 2", "follows: w1.yaml"]
    file.write_text(plan.replace("unit", "next: add 2.5 kg every week\nunit"), encoding="utf-8")
    run("next", file, "--out", tmp_path / "again.yaml")
    assert changed(file, tmp_path / "again.yaml") == [
        "plan: A, week 2", "follows: w1.yaml", "  - flat barbell bench press: 2 x 5, rest 3:00", "    load:",
        "      Ann: 62.5 kg",
    ]  # fmt: skip


OPEN = "plan: A, week 1\nunit: kg\nwork:\n"


@pytest.mark.parametrize(
    ("plan", "told"),
    [
        (
            "plan: A, week 1\nunit: kg\nwork:\n  - {goblet squat: 2 x 8}\n",
            "goblet squat: load: 22 kg",
        ),
        (
            f"{OPEN}  - goblet squat: 2 x 8\n    next: add 5 kg to the training max every week\n",
            "goblet squat, all: every week 5 kg to the training max, and none is on file",
        ),
    ],
)
def test_what_is_left_to_the_coach(plan: str, told: str, tmp_path: Path) -> None:
    record = "record: A, week 1\ndate: 2027-11-15\ndone:\n  Everybody:\n    - goblet squat: 22 kg x 8, 8\n"
    result = run("next", hall(tmp_path, plan, record))
    assert result.exit_code == 0
    assert f"To do by hand: - {told}" in said(result)


def test_of_a_day_that_another_repeats_the_one_that_was_done_decides(tmp_path: Path) -> None:
    """The lines are the same text, so they say the same of both days."""
    plan = (
        "plan: A, week 1\nunit: kg\nnext: add 1 rep every week\nsessions:\n  - day: Monday\n    work: &day\n"
        "      - goblet squat: 2 x 8 at 20 kg\n  - day: Friday\n    work: *day\n"
    )
    record = (
        "record: A, week 1\nsession: Monday\ndate: 2027-11-15\ndone:\n  Zoe:\n    - goblet squat: 20 x 8, 8\n"
    )
    run("next", hall(tmp_path, plan, record))
    assert "- goblet squat: 2 x 9 at 20 kg" in (tmp_path / "week-4.yaml").read_text(encoding="utf-8")


def test_without_records_nothing_is_known(tmp_path: Path) -> None:
    file = tmp_path / "week-3.yaml"
    file.write_text(PLAN, encoding="utf-8")
    result = run("next", file)
    assert result.exit_code == 2
    assert "so nothing is known of what was done" in said(result)
    file.write_text(PLAN.replace("3 x 6-8", "3 by feel"), encoding="utf-8")
    assert "no next week is written while the plan has errors" in said(run("next", file))


def test_records_that_cannot_be_used_are_said(tmp_path: Path) -> None:
    file = hall(tmp_path)
    for name, text in {
        "a.1.yaml": "", "b.1.yaml": "record: Hall, week 3\nsession: Sunday\ndone:\n",
        "c.1.yaml": "record: Other\ndone:\n",
    }.items():  # fmt: skip
        (tmp_path / "record" / name).write_text(text, encoding="utf-8")
    (tmp_path / "record" / "d.1.yaml").write_bytes(b"\xff\xff\x00")
    result = run("next", file)
    assert result.exit_code == 0
    told = said(result)
    assert "a.1.yaml: nothing of this record can be read" in told
    assert "b.1.yaml: it names no session of Hall, week 3" in told
    assert "c.1.yaml" not in told
    assert "d.1.yaml" in told


def test_the_crews_week_goes_on_without_a_hand_edit(tmp_path: Path) -> None:
    """What was done on the Monday of the example week makes a week that passes the check."""
    crew = Path(__file__).parents[2] / "examples" / "skerrow-bay"
    for name in ("week-good.yaml", "squad.yaml", "gym.yaml", "record-week-3-monday.yaml"):
        (tmp_path / name).write_bytes((crew / name).read_bytes())
    run("keep", tmp_path / "record-week-3-monday.yaml")
    result = run("next", tmp_path / "week-good.yaml")
    assert result.exit_code == 0
    assert (
        "Isla: 18 kg, was 16 kg (12, 12, 12: every set reached 12; for 18.5 kg this gym has 18 kg)"
        in said(result)
    )
    assert run("check", tmp_path / "week-good-next.yaml").exit_code == 0


@pytest.mark.parametrize(
    ("rule", "told", "load"),
    [
        (
            "resume",
            "then the others in their order: Thursday's session on Monday, Monday's session on Thursday",
            "42.5",
        ),
        ("skip", "they are left out", "42.5"),
        ("restart the week", "the week starts again, so nothing advances", "40"),
    ],
)
def test_a_missed_day(rule: str, told: str, load: str, tmp_path: Path) -> None:
    file = hall(tmp_path, PLAN.replace("unit: kg", f"unit: kg\nmissed day: {rule}"))
    result = run("next", file)
    assert f"`missed day: {rule}`: " in said(result)
    assert f"{told}." in said(result)
    again = rule == "restart the week"
    text = (tmp_path / f"week-{'3-again' if again else '4'}.yaml").read_text(encoding="utf-8")
    assert f"3 x 6-8 at {load} kg, 2 RIR" in text
    assert f"plan: Hall, week {'3 again' if again else '4'} " in text
    days = re.findall(r"- day: (\w+)", text)
    assert days == (["Thursday", "Monday"] if rule == "resume" else ["Monday", "Thursday"])
    assert ("Thursday was missed, so the week starts again" in said(result)) == (rule == "restart the week")


CREW = "squad:\n  athletes:\n    - name: Ann\n    - name: Ben\n"


def becomes(
    folder: Path, line: str, *done: str, rule: str = "add 2.5 kg every week"
) -> tuple[list[str], str]:
    """The lines that are new in next week's plan, and what the command says; Ann and Ben did ``done``."""
    movement = re.findall(r"- ([a-z -]+):", line)[-1]
    plan = f"plan: A, week 1\nunit: kg\nnext: {rule}\n{CREW}work:\n{line}\n  - push-up: 2 x 8\n"
    lines = "".join(
        f"  {who}:\n    - {movement}: {one}\n" for who, one in zip(("Ann", "Ben"), done, strict=True)
    )
    file = hall(folder, plan, f"record: A, week 1\ndate: 2027-11-15\ndone:\n{lines}", "w1.yaml")
    result = run("next", file)
    assert result.exit_code == 0, result.output
    return changed(file, folder / "w2.yaml")[2:], said(result)


@pytest.mark.parametrize(
    ("line", "done", "new"),
    [
        (
            "  - goblet squat: 2 x 8\n    load: 20 kg   # both\n    rest: 2:00", ("done", "done"),
            ["    load: 22.5 kg   # both"],
        ),
        (
            "  - goblet squat: 2 x 8\n    load: 20 kg\n    rest: 2:00", ("done", ""),
            ["    load:", "      Ann: 22.5 kg", "      Ben: 20 kg"],
        ),
        (
            "  - goblet squat: 2 x 8 with 2 RIR at 20 kg", ("done", ""),
            ["  - goblet squat: 2 x 8 with 2 RIR", "    load:", "      Ann: 22.5 kg", "      Ben: 20 kg"],
        ),
        (
            "  - circuit:\n      - goblet squat:\n    each: 40 s", ("20 x 12", "16 x 12"),
            ["        load:", "          Ann: 22.5 kg", "          Ben: 18.5 kg"],
        ),
        ("  - dip: 2 x 8 at bodyweight", ("done", "done"), ["  - dip: 2 x 8 at bodyweight + 2.5 kg"]),
        (
            "  - goblet squat: 2 x 8 at 20.0 kg", ("done", "done"),
            ["  - goblet squat: 2 x 8", "    load:", "      Ann: 22.5 kg", "      Ben: 22.5 kg"],
        ),
    ],
)  # fmt: skip
def test_where_a_load_is_written(line: str, done: tuple[str, str], new: list[str], tmp_path: Path) -> None:
    assert becomes(tmp_path, line, *done)[0] == new


@pytest.mark.parametrize(
    ("line", "rule", "done", "told"),
    [
        ("  - push-up: sets of 8, 6", "add 1 rep every week", "8, 6", "push-up: add 1 rep"),
        (
            "  - band pull-apart: 2 x 8 with red band",
            "add 2.5 kg every week",
            "done",
            "band pull-apart, Ann: every week, but the step",
        ),
    ],
)
def test_what_cannot_be_written_is_listed(line: str, rule: str, done: str, told: str, tmp_path: Path) -> None:
    new, output = becomes(tmp_path, line, done, done, rule=rule)
    assert "goblet squat" not in " ".join(new)
    assert told in output


def test_different_steps_in_one_line_are_lines_of_their_own(tmp_path: Path) -> None:
    rule = "\n  - 12 or more: add 2 reps\n  - 10-11: add 1 rep"
    new, output = becomes(tmp_path, "  - goblet squat: 1 x 10-12", "20 x 12", "20 x 10", rule=rule)
    assert "To do by hand" not in output
    assert new == [
        "  - goblet squat: 1 x 11-13", "    instead:", "      Ann:", "        - goblet squat: 1 x 12-14",
        "          load: 20 kg", "    load: 20 kg",
    ]  # fmt: skip
