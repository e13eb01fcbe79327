"""The report on a week: who came, what was changed, limits kept or not; private things stay out."""

import re
from pathlib import Path

import pytest

from setwright.records.keeping import plan_of
from setwright.records.limits_kept import limits_kept
from setwright.records.week_done import week_done
from tests.commands import run, said

PLAN = """\
plan: Hall, week 3
starts: 2027-11-15
unit: kg
dose order: sets x reps
sides: each
squad:
  squad: Old hall club
  athletes:
    - name: Isla Marrack
      body mass: 61.5 kg
      private note: sees Dr Quill about migraine
      limits:
        - arm behind at most: 0 deg
          until: cleared
          set by: nurse Pellow
        - load at most: 42 kg
          until: cleared
        - no: [jumping]
          until: 2027-11-10
        - avoid: [upright row]
          until: cleared
      avoid: [dip]
    - name: Tam Rae
      participation: modified
      avoid: [flat barbell bench press]
    - name: Wren
sessions:
  - day: Monday
    name: Press day
    work:
      - flat barbell bench press: 3 x 6-8 at 2 RIR
        instead:
          Tam Rae:
            - push-up: 3 x 12
      - pull-up: 3 x 6
        note: chin over the bar
  - day: Thursday
    work:
      - circuit:
          - dip
          - goblet squat: at 16 kg
        rounds: 3
        each: 40 s
        between moves: 20 s
"""
RECORD = """\
record: Hall, week 3
session: Monday
date: 2027-11-16
note: Isla's mother rang about the thyroid pills
done:
  Isla Marrack:
    - flat barbell bench press: 40 kg x 8, 8 at RPE 10, then 45 kg x 0
    - pull-up: not done, shoulder pinched again
    - box jump: 5, 5
    - jerry can carry: 20 m
    - note: slept badly, exams
    - private note: told me of the clinic
  Tam Rae:
    - push-up: 12, 12, 10 at RPE 10
      private note: cried
    - pull-up: 6, 6
      note: grip gave out
"""
THURSDAY = """\
record: Hall, week 3
session: Thursday
date: 2027-11-18
done:
  Isla Marrack:
    - dip: done
    - goblet squat: done
"""
PRIVATE = (
    "61.5", "mass", "Quill", "migraine", "Pellow", "limit", "deg", "cleared", "42", "jumping", "upright row",
    "avoid", "modified", "mother", "thyroid", "shoulder", "pinched", "exams", "slept", "clinic", "cried",
    "grip", "RPE", "harder", "note", "jerry",
)  # fmt: skip
"""Limits, lists, reasons, remarks, body mass and effort of the plan and records above, or words of them."""


def hall(folder: Path, *records: str, plan: str = PLAN) -> Path:
    """The plan with records kept beside it."""
    file = folder / "week-3.yaml"
    file.write_text(plan, encoding="utf-8")
    for record in records or (RECORD,):
        form = folder / "form.yaml"
        form.write_text(record, encoding="utf-8")
        kept = run("keep", form, "--plan", file)
        assert kept.exit_code == 0, kept.output
    return file


def report(file: Path, edition: str, *more: str) -> str:
    result = run("review", file, "--report", edition, *more)
    assert result.exit_code == 0, result.output
    return result.output


def test_the_crews_report_names_nobody(tmp_path: Path) -> None:
    assert (
        report(hall(tmp_path), "crew")
        == """\
Hall, week 3: what was done
For everybody

Who came
  Monday, 2027-11-16: 2 of 3 came.
  Thursday: nothing is on record.

What was done
  Monday: flat barbell bench press and pull-up.

What was changed
  Monday was moved from 2027-11-15 to 2027-11-16.

What comes next
  Missed, and taken up next: Thursday.
  Nothing about a single person stands here: ask the coach.
"""
    )


@pytest.mark.parametrize("more", [(), ("--for", "Isla Marrack"), ("--for", "Tam Rae"), ("--for", "Wren")])
def test_nothing_private_is_in_the_public_edition(more: tuple[str, ...], tmp_path: Path) -> None:
    """Every private word of plan and records, in the text and in every page that is written."""
    file = hall(tmp_path, RECORD, THURSDAY)
    for paper in ("a4", "letter"):
        told = report(file, "crew", *more, "--out", str(tmp_path / "out"), "--paper", paper)
        pages = [re.sub(r"<style>.*?</style>", "", path.read_text(encoding="utf-8"), flags=re.DOTALL)
                 for path in (tmp_path / "out").iterdir()]  # fmt: skip
        assert pages
        for text in (told.rpartition("\n" + str(tmp_path))[0] or told, *pages):
            assert [word for word in PRIVATE if word.casefold() in text.casefold()] == []
            others = {"Isla", "Tam", "Wren"} - {more[1].split()[0] if more else ""}
            assert [name for name in others if name in text] == []


def test_the_private_words_are_there_to_be_found(tmp_path: Path) -> None:
    """The search above would find them: each stands in the plan, in a record or in another edition."""
    everything = PLAN + RECORD + report(hall(tmp_path, RECORD, THURSDAY), "coach")
    assert [word for word in PRIVATE if word.casefold() not in everything.casefold()] == []


def test_one_athletes_report_is_theirs_alone(tmp_path: Path) -> None:
    told = report(hall(tmp_path), "crew", "--for", "isla marrack")
    assert (
        told
        == """\
Isla Marrack, Hall, week 3: what was done
For Isla Marrack and who looks after them

Came to
  1 of 2 sessions.

What was done
  Monday, 2027-11-16: flat barbell bench press 40 kg x 8, 8, then 45 kg x 0; box
    jump 5, 5; another movement 20 m.

Left open
  pull-up.

What comes next
  Missed, and taken up next: Thursday.
"""
    )
    assert "Came to 0 of 2 sessions. What was done Nothing is on record. Left open Nothing." in " ".join(
        report(tmp_path / "week-3.yaml", "crew", "--for", "Wren").split()
    )


def test_the_coachs_report(tmp_path: Path) -> None:
    told = " ".join(report(hall(tmp_path), "coach").split())
    head = "Hall, week 3: what was done For the coach: not for the wall Not on record Missed, and taken up"
    assert told.startswith(head)
    note = (
        "Monday, 2027-11-16: Isla's mother rang about the thyroid pills Isla Marrack Came to 1 of 2 sessions."
    )
    assert f"Notes on the sessions {note}" in told
    assert "note on Monday: Isla's mother rang" in said(run("review", tmp_path / "week-3.yaml"))
    assert "Changed: flat barbell bench press: the load was changed between the sets; pull-up: not" in told
    assert "done, shoulder pinched again; box jump, not planned: 5, 5; jerry can carry, not" in told
    assert "Flagged: flat barbell bench press was 2 repetitions harder than planned. Note: slept" in told
    assert "Tam Rae Came to 1 of 2 sessions. Changed: pull-up: 2 of 3 sets." in told
    assert "told me of the clinic" not in told
    assert "cried" not in told
    assert "Load at most 42 kg (until cleared): not kept: 2027-11-16 flat barbell bench press 45 kg" in told
    assert told.endswith("Wren Came to 0 of 2 sessions.")


def test_effort_stalls_and_jumps_are_flagged(tmp_path: Path) -> None:
    records = [
        f"record: Hall, week 3\nsession: Monday\ndate: 2027-11-{day}\ndone:\n  Wren:\n"
        f"    - flat barbell bench press: {bench} kg x 8, 8, 8 at RPE 9\n"
        "    - pull-up: bodyweight x 6, 6, 6\n"
        for day, bench in ((15, 40), (16, 40), (17, 50))
    ]
    told = " ".join(report(hall(tmp_path, *records), "coach").split())
    assert "Flagged: flat barbell bench press was 1 repetition harder than planned; " in told
    assert "flat barbell bench press went up by 25% in the last record" in told
    assert "pull-up is the same or less for 3 records" in told
    own = " ".join(report(tmp_path / "week-3.yaml", "crew", "--for", "Wren").split())
    assert "flat barbell bench press: 40 kg in the first of 3 records, 50 kg in the last." in own
    assert "pull-up: 0 kg in the first and the last of 3 records." in own


def test_a_weeks_report_knows_nothing_of_later_weeks(tmp_path: Path) -> None:
    plan = "plan: A, week {}\nunit: kg\nwork:\n  - goblet squat: 2 x 8\n"
    for number, load in enumerate((20, 24, 24, 24), 1):
        file, form = tmp_path / f"w{number}.yaml", tmp_path / "form.yaml"
        file.write_text(plan.format(number), encoding="utf-8")
        line = f"done:\n  Zoe:\n    - goblet squat: {load} kg x 8, 8\n"
        form.write_text(f"record: A, week {number}\ndate: 2027-11-0{number}\n{line}", encoding="utf-8")
        assert run("keep", form, "--plan", file).exit_code == 0
    first, second, third, fourth = report(tmp_path, "coach").split("what was done")[1:]
    assert "Flagged" not in first
    assert "goblet squat went up by 20% in the last record" in second
    assert "Flagged" not in third
    assert "goblet squat is the same or less for 3 records" in fourth


def test_the_medical_report_names_those_with_a_limit_alone(tmp_path: Path) -> None:
    told = report(hall(tmp_path, RECORD, THURSDAY), "medical")
    assert (
        told
        == """\
Hall, week 3: what was done
For the medical person of these athletes alone

Isla Marrack
  Came to 2 of 2 sessions; takes part: full.
  Arm behind at most 0 deg (set by nurse Pellow, until cleared): not kept:
    2027-11-16 flat barbell bench press takes the arm 21 deg behind the body;
    2027-11-18 dip takes the arm 49 deg behind the body; 2027-11-16 jerry can
    carry, not known; 2027-11-18 goblet squat, not known.
  Load at most 42 kg (until cleared): not kept: 2027-11-16 flat barbell bench
    press 45 kg; 2027-11-16 jerry can carry, not known; 2027-11-18 dip 59 kg
    with the body, not known.
  No jumping (until 2027-11-10): not to be said: 2027-11-16 box jump, after its
    last day; 2027-11-16 jerry can carry, not known.
  To avoid, upright row (until cleared): kept in all 5 lines done.
  To avoid, dip: not kept: 2027-11-18 dip.

Tam Rae
  Came to 1 of 2 sessions; takes part: modified.
  To avoid, flat barbell bench press: kept in both lines done.

What was done is held against what was written. Angles are those of each
movement in a model of one body, 5 degrees either way. No diagnosis, no advice.
"""
    )
    for word in ("migraine", "pinched", "slept", "clinic", "cried", "61.5", "Wren", "grip"):
        assert word not in told


def test_a_plan_without_a_squad_is_told_of_those_on_record(tmp_path: Path) -> None:
    plan = "plan: Hall, week 3\nunit: kg\nwork:\n  - dip: 3 x 8\n  - push-up: 3 x 8\n  - bench pull: 3 x 8\n"
    record = (
        "record: Hall, week 3\ndate: 2027-11-16\ndone:\n  Wren:\n    - dip: done\n    - push-up: not done\n"
    )
    file = hall(tmp_path, record, plan=plan)
    crew = report(file, "crew")
    assert "the session, 2027-11-16: 1 came." in crew
    assert "the session: nothing is on record of push-up and bench pull." in crew
    coach = report(file, "coach")
    assert "Not written down: bench pull." in coach
    assert "Not on record" not in coach
    assert "The week goes on as planned." in report(file, "crew", "--for", "Wren")


def test_nobody_has_a_limit(tmp_path: Path) -> None:
    plan = "plan: Hall, week 3\nunit: kg\nsquad:\n  athletes:\n    - name: Wren\nwork:\n  - dip: 3 x 8\n"
    record = "record: Hall, week 3\ndate: 2027-11-16\ndone:\n  Wren:\n    - dip: done\n"
    assert "No limit and no list of what to avoid" in " ".join(
        report(hall(tmp_path, record, plan=plan), "medical").split()
    )


LIMIT = """\
plan: Hall, week 3
unit: kg
squad:
  athletes:
    - name: Ann
      limits:
        - {limit}
          until: cleared
gym:
  dumbbells:
    4-32 kg by 4: 1 pair
work:
  - {line}
  - plank: 1 x 30 s hold
"""


@pytest.mark.parametrize(
    ("limit", "line", "typed", "verdict"),
    [
        ("load at most: 20 kg", "goblet squat: 3 x 8", "goblet squat: 20 kg x 8", "kept"),
        ("load at most: 20 kg", "goblet squat: 3 x 8", "goblet squat: 20.5 kg x 8", "not kept"),
        ("load at most: 20 kg", "goblet squat: 3 x 8", "goblet squat: 45 lb x 8", "not kept"),
        ("load at most: 20 kg", "goblet squat: 3 x 8", "goblet squat: 21 kg x 0", "not kept"),
        ("load at most: 20 kg", "goblet squat: 3 x 8 at 24 kg", "goblet squat: done", "not kept"),
        ("load at most: 20 kg", "goblet squat: 3 x 8 at 16 kg", "goblet squat: done", "kept"),
        ("load at most: 20 kg", "goblet squat: 3 x 8", "goblet squat: 8, 8", "not to be said"),
        ("load at most: 20 kg", "goblet squat: 3 x 8", "goblet squat: not done", "nothing done"),
        ("load at most: 20 kg", "goblet squat: 3 x 8", "goblet squat:", "nothing done"),
        ("arm behind at most: 0 deg", "dip: 3 x 8", "dip: 8, 8", "not kept"),
        ("arm behind at most: 0 deg", "dip: 3 x 8", "dip: 0", "not kept"),
        ("arm behind at most: 0 deg", "dip: 3 x 8", "dip: not done", "nothing done"),
        ("arm behind at most: 0 deg", "dip: 3 x 8", "leg press: 8", "kept"),
        ("avoid: [dip]", "dip: 3 x 8", "parallel-bar dip: 8", "not kept"),
        ("avoid: [dip]", "dip: 3 x 8", "ring dip hold: 8 s", "not to be said"),
    ],
)  # fmt: skip
def test_a_limit_against_what_was_done(
    limit: str, line: str, typed: str, verdict: str, tmp_path: Path
) -> None:
    """What was lifted counts as it was, whatever the gym's steps; a set of 0 was tried."""
    record = f"record: Hall, week 3\ndate: 2027-11-16\ndone:\n  Ann:\n    - {typed}\n    - note: here\n"
    plan = plan_of(hall(tmp_path, record, plan=LIMIT.format(limit=limit, line=line)))
    done = week_done(plan, plan.weeks[0])
    squad = plan.weeks[0].squad
    assert squad is not None
    (found,) = limits_kept(done.records, squad.athletes[0], plan.table)
    assert found.verdict == verdict, found


@pytest.mark.parametrize(("typed", "verdict"), [("12, 12 left", "kept"), ("12, 12 right", "not kept")])
def test_a_limit_on_one_side(typed: str, verdict: str, tmp_path: Path) -> None:
    plan = LIMIT.format(limit="arm up at most: 60 deg\n          side: right", line="landmine press: 3 x 8")
    line = f"    - one-arm dumbbell overhead press: {typed}\n"
    record = f"record: Hall, week 3\ndate: 2027-11-16\ndone:\n  Ann:\n{line}"
    read = plan_of(hall(tmp_path, record, plan=plan))
    done = week_done(read, read.weeks[0])
    squad = read.weeks[0].squad
    assert squad is not None
    (found,) = limits_kept(done.records, squad.athletes[0], read.table)
    assert found.verdict == verdict, found


def test_pages_are_written_for_each_edition(tmp_path: Path) -> None:
    file, out = hall(tmp_path), tmp_path / "out"
    told = report(file, "medical", "--out", str(out))
    assert told.endswith(f"{out / 'hall-week-3-9-report-medical-a4.html'}  (report, a4)\n")
    page = (out / "hall-week-3-9-report-medical-a4.html").read_text(encoding="utf-8")
    assert '<p class="mark">For the medical person of these athletes alone</p>' in page
    assert "nurse Pellow" in page
    report(file, "crew", "--for", "Isla Marrack", "--out", str(out), "--paper", "letter", "--pdf")
    assert (out / "hall-week-3-9-report-crew-isla-marrack-letter.pdf").read_bytes().startswith(b"%PDF")
    assert "45\u00a0kg\u00a0×\u00a00" in (
        out / "hall-week-3-9-report-crew-isla-marrack-letter.html"
    ).read_text("utf-8")
    again = (out / "hall-week-3-9-report-medical-a4.html").read_bytes()
    report(file, "medical", "--out", str(out))
    assert (out / "hall-week-3-9-report-medical-a4.html").read_bytes() == again


@pytest.mark.parametrize("more", [("--out", "x"), ("--pdf", "--report", "crew"), ("--pdf",)])
def test_a_page_is_made_of_a_report(more: tuple[str, ...], tmp_path: Path) -> None:
    result = run("review", hall(tmp_path), *more)
    assert result.exit_code == 2
    assert "write --report crew, coach or medical, and --out FOLDER" in said(result)


def test_a_page_that_cannot_be_written_is_said(tmp_path: Path) -> None:
    result = run("review", hall(tmp_path), "--report", "crew", "--out", tmp_path / "week-3.yaml")
    assert result.exit_code == 2
    assert "week-3.yaml" in said(result)
