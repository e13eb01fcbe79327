"""A missed session and a missed week: taken up, left out, or the week again, by the plan's rule."""

import re
from pathlib import Path

import pytest

from tests.commands import run, said

WEEK = """\
plan: Hall, week 3
starts: 2027-11-15
unit: kg
next: add 2.5 kg every week
missed day: {rule}
sessions:
  - day: Monday
    name: Squat day
    start: 16:30
    work:
      - goblet squat: 2 x 8 at 20 kg
  - day: Wednesday
    name: Push day
    start: 17:00
    work:
      - push-up: 2 x 8
  - day: Friday
    name: Pull day
    start: 15:00
    work:
      - bench pull: 2 x 8 at 30 kg
  - day: Saturday
    name: Squat again
    start: 10:00
    like: Monday
"""
SQUAT = "Squat day", "2027-11-15", "goblet squat: 20 x 8, 8"
PUSH = "Push day", "2027-11-17", "push-up: 8, 8"
PULL = "Pull day", "2027-11-19", "bench pull: 30 x 8, 8"
AGAIN = "Squat again", "2027-11-20", "goblet squat: 20 x 8, 8"


def hall(folder: Path, text: str, *done: tuple[str, str, str]) -> Path:
    """A plan with a record of each session that was done."""
    file = folder / "week-3.yaml"
    file.write_text(text, encoding="utf-8")
    name = re.findall(r"^plan: (.*)", text)[0]
    for session, date, line in done:
        form = folder / "form.yaml"
        typed = f"record: {name}\nsession: {session}\ndate: {date}\ndone:\n  Zoe:\n    - {line}\n"
        form.write_text(typed, encoding="utf-8")
        kept = run("keep", form, "--plan", file)
        assert kept.exit_code == 0, kept.output
    return file


def days(file: Path) -> list[tuple[str, str, str]]:
    """The sessions with their days and starts, in the order of the file."""
    text = file.read_text(encoding="utf-8")
    return re.findall(r"day: (\w+)\n +name: ([\w ]+)\n +start: (\S+)", text)


def test_a_missed_session_comes_first(tmp_path: Path) -> None:
    file = hall(tmp_path, WEEK.format(rule="resume"), SQUAT, PUSH, AGAIN)
    told = said(run("next", file))
    assert days(tmp_path / "week-4.yaml") == [
        ("Wednesday", "Squat day", "17:00"), ("Friday", "Push day", "15:00"), ("Monday", "Pull day", "16:30"),
        ("Saturday", "Squat again", "10:00"),
    ]  # fmt: skip
    text = (tmp_path / "week-4.yaml").read_text(encoding="utf-8")
    assert "like: Wednesday\n" in text
    assert "Pull day on Monday, Squat day on Wednesday, Push day on Friday, Squat again on Saturday." in told
    assert "bench pull: 2 x 8 at 30 kg" in text
    assert "goblet squat: 2 x 8 at 22.5 kg" in text
    assert run("check", tmp_path / "week-4.yaml", "--fail-on", "error").exit_code == 0


@pytest.mark.parametrize(("rule", "missed"), [("skip", PULL), ("resume", SQUAT)])
def test_the_order_stays(rule: str, missed: tuple[str, str, str], tmp_path: Path) -> None:
    """A session that is left out, and the first one, which comes first anyway."""
    done = [one for one in (SQUAT, PUSH, PULL, AGAIN) if one is not missed]
    file = hall(tmp_path, WEEK.format(rule=rule), *done)
    assert run("next", file).exit_code == 0
    assert days(tmp_path / "week-4.yaml") == days(file)


def test_days_that_say_different_things_stay(tmp_path: Path) -> None:
    file = hall(tmp_path, WEEK.format(rule="resume").replace("    start: 15:00\n", ""), SQUAT, PUSH, AGAIN)
    told = said(run("next", file))
    assert "`missed day: resume`: they come first" in told
    assert days(tmp_path / "week-4.yaml") == days(file)


@pytest.mark.parametrize(
    ("rule", "file", "told"),
    [
        ("resume", "week-3-again.yaml", "the same week comes again, and nothing advances"),
        ("skip", "week-4.yaml", "the next week comes all the same, and nothing advances"),
        ("restart the week", "week-3-again.yaml", "the week starts again, so nothing advances"),
    ],
)
def test_a_missed_week(rule: str, file: str, told: str, tmp_path: Path) -> None:
    plan = hall(tmp_path, WEEK.format(rule=rule))
    assert "say so with --missed" in said(run("next", plan))
    result = run("next", plan, "--missed")
    assert result.exit_code == 0, result.output
    assert f"Nothing of the week was trained. `missed day: {rule}`: {told}." in said(result)
    text = (tmp_path / file).read_text(encoding="utf-8")
    assert "goblet squat: 2 x 8 at 20 kg" in text
    assert "starts: 2027-11-22" in text


def test_a_week_with_records_was_not_missed(tmp_path: Path) -> None:
    plan = hall(tmp_path, WEEK.format(rule="resume"), SQUAT)
    result = run("next", plan, "--missed")
    assert result.exit_code == 2
    assert "so it was not missed" in said(result)


BLOCK = """\
plan: Hall block
weeks: 3
starts: 2027-11-15
unit: kg
training days: [Monday, Wednesday, Friday]
rotate: [A, B]
lighter weeks:
  week 2: no training
sessions:
  - name: A
    work:
      - goblet squat: 2 x 8
        load: [20, 22, 24]
  - name: B
    work:
      - push-up: [2 x 8, 2 x 9, 2 x 10]
"""


def test_turns_go_on_and_a_week_of_no_training_takes_none(tmp_path: Path) -> None:
    """A B A is done; after a week without training comes B."""
    file = hall(tmp_path, BLOCK)
    form = tmp_path / "form.yaml"
    for day, date, line in (
        ("Monday", "2027-11-15", "goblet squat: 20 x 8, 8"),
        ("Wednesday", "2027-11-17", "push-up: 8, 8"),
        ("Friday", "2027-11-19", "goblet squat: 20 x 8, 8"),
    ):
        form.write_text(
            f"record: Hall block\nweek: 1\nsession: {day}\ndate: {date}\ndone:\n  Zoe:\n    - {line}\n"
        )
        assert run("keep", form, "--plan", file).exit_code == 0
    assert run("next", file, "--week", "1").exit_code == 0
    assert "no training" in (tmp_path / "week-3-week-2.yaml").read_text(encoding="utf-8")
    result = run("next", file, "--week", "2")
    assert result.exit_code == 0, result.output
    text = (tmp_path / "week-3-week-3.yaml").read_text(encoding="utf-8")
    assert "rotate: [B, A]\n" in text
    assert "load: 24\n" in text


def test_a_missed_turn_comes_first(tmp_path: Path) -> None:
    top = "training days: Monday, Wednesday, Friday\nrotate: A, B, C\nsessions:\n"
    lines = "".join(
        f"  - name: {name}\n    work:\n      - push-up: 2 x {reps}\n"
        for name, reps in zip("ABC", (8, 9, 10), strict=True)
    )
    file = hall(
        tmp_path, f"plan: Hall, week 3\nstarts: 2027-11-15\n{top}{lines}",
        ("A", "2027-11-15", "push-up: 8, 8"), ("C", "2027-11-19", "push-up: 10, 10"),
    )  # fmt: skip
    assert run("next", file).exit_code == 0
    assert "rotate: B, C, A\n" in (tmp_path / "week-4.yaml").read_text(encoding="utf-8")


def test_stages_come_a_week_nearer(tmp_path: Path) -> None:
    stages = "stages:\n  hang:\n    earliest: week 2\n    latest: 5\n    enter when: no pain\n"
    text = WEEK.format(rule="resume").replace("sessions:", f"{stages}sessions:")
    file = hall(tmp_path, text, SQUAT, PUSH, PULL, AGAIN)
    assert run("next", file).exit_code == 0
    new = (tmp_path / "week-4.yaml").read_text(encoding="utf-8")
    assert "    earliest: week 1\n    latest: week 4\n" in new


def test_a_lighter_week_when_it_is_due(tmp_path: Path) -> None:
    often = "lighter weeks:\n  every 4 weeks: half the sets and 80% of the load\n"
    text = WEEK.format(rule="skip").replace("sessions:", f"{often}sessions:")
    file = hall(tmp_path, text, SQUAT, PUSH, PULL, AGAIN)
    assert "The week that comes is a lighter one" in said(run("next", file))
    new = tmp_path / "week-4.yaml"
    due = "lighter weeks:\n  week 1: half the sets and 80 % of the load\n  every 4 weeks:"
    assert due in new.read_text(encoding="utf-8")
    form = tmp_path / "form.yaml"
    form.write_text(
        "record: Hall, week 4\nsession: Squat day\ndate: 2027-11-22\n"
        "done:\n  Zoe:\n    - goblet squat: 18 x 8\n"
    )
    assert run("keep", form, "--plan", new).exit_code == 0
    told = said(run("next", new))
    assert "all: 22.5 kg again (a lighter week)" in told
    after = (tmp_path / "week-5.yaml").read_text(encoding="utf-8")
    assert "goblet squat: 2 x 8 at 22.5 kg" in after
    assert "week 1:" not in after
