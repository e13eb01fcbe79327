"""``review``: who came, what was done of what was planned, and how loads went; each athlete alone."""

import datetime as dt
from pathlib import Path

import pytest

from setwright.coverage import cover
from setwright.records.achieved import week_of_done, week_planned
from setwright.records.keeping import plan_of
from setwright.records.review import Point, Trend
from setwright.records.week_done import week_done
from tests.records.plans import LIBRARY, hall, run, said

RECORD = """\
record: Hall, week 3
session: Monday
date: 2027-11-15
done:
  Ann:
    - flat barbell bench press: 40 x 8, 8, 0 at RPE 10
    - dip: done
    - pull-up: not done
    - plank: 30 s
    - seal row: 30 x 10, 10
    - something odd: 5
    - note: slept badly
  Ben:
    - push-up: 20, 20, 20
      instead of: bench press
    - dip: 8, 8
  Cal:
"""


def kept(folder: Path, text: str = RECORD) -> Path:
    """The plan of the hall with a record kept beside it."""
    plan = hall(folder)
    form = folder / "form.yaml"
    form.write_text(text, encoding="utf-8")
    result = run("keep", form, "--plan", plan)
    assert result.exit_code == 0, result.output
    return plan


def test_each_athlete_is_told_alone(tmp_path: Path) -> None:
    result = run("review", kept(tmp_path))
    told = said(result)
    assert result.exit_code == 0
    assert told.startswith(
        "Hall, week 3: 1 of 2 sessions recorded No record is kept of Thursday. Ann: 1 of 2"
    )
    assert (
        "flat barbell bench press: 40 kg x 8, 8, 0 at RPE 10; planned 3 x 6-8, with 40 kg dip: done" in told
    )
    assert "pull-up: not done; planned 1 x 6, 3 rounds plank: 30 s; planned 2 x 30 s hold" in told
    assert "seal row: 30 kg x 10, 10; not planned something odd: 5; not planned note: slept badly" in told
    assert (
        "push-up instead of flat barbell bench press: 20, 20, 20; planned 3 x 6-8, with 50, 55 and 60 kg"
        in told
    )
    assert told.endswith("Cal: 0 of 2 sessions")


def test_one_athlete_alone(tmp_path: Path) -> None:
    plan = kept(tmp_path)
    told = said(run("review", plan, "--for", "ben"))
    assert "Ben: 1 of 2 sessions" in told
    assert "Ann" not in told
    nobody = run("review", plan, "--for", "Zoe")
    assert nobody.exit_code == 2
    assert 'no athlete of these plans is called "Zoe"' in said(nobody)


def test_what_was_done_is_counted_like_a_plan(tmp_path: Path) -> None:
    """By hand: Ann bench 2 sets (a set of 0 is none), dip 3 rounds, row 2; Ben 3 push-ups, 2 dips."""
    plan = plan_of(kept(tmp_path))
    done = week_done(plan, plan.weeks[0])
    for name, push, pull in (("Ann", 5, 2), ("Ben", 5, 0), ("Cal", 0, 0)):
        achieved = cover(week_of_done(done.week, done.records, name, LIBRARY), LIBRARY)
        assert ((achieved.push.low, achieved.push.high), (achieved.pull.low, achieved.pull.high)) == (
            (push, push), (pull, pull),
        )  # fmt: skip
    assert done.week.squad is not None
    ann, _, cal, _ = done.week.squad.athletes
    meant = cover(week_planned(done.week, ann), LIBRARY)
    assert (meant.push.low, meant.pull.low) == (3 + 3 + 3 + 1, 3 + 4)
    assert cover(week_planned(done.week, cal), LIBRARY).push.low == 3 + 3 + 1


EFFORT = """\
plan: A
unit: kg
sessions:
  - day: Monday
    work:
      - goblet squat: 2 x 8 at 2 RIR
"""


@pytest.mark.parametrize(
    ("typed", "told"),
    [
        ("20 kg x 8, 8 at RPE 9", "; 1 repetition harder than planned"),
        ("20 kg x 8, 8 at 4 RIR", "; 2 repetitions easier than planned"),
        ("20 kg x 8, 8 at RPE 8", ""), ("20 kg x 8, 8", ""), ("20 kg x 8, 8 at Borg 15", ""), ("done", ""),
    ],
)  # fmt: skip
def test_effort_against_the_plan(typed: str, told: str, tmp_path: Path) -> None:
    plan = tmp_path / "a.yaml"
    plan.write_text(EFFORT, encoding="utf-8")
    form = tmp_path / "form.yaml"
    form.write_text(
        f"record: A\ndate: 2027-11-15\ndone:\n  Zoe:\n    - goblet squat: {typed}\n", encoding="utf-8"
    )
    run("keep", form)
    assert f"planned 2 x 8, 2 left{told} no hard set" in said(run("review", plan))


def test_loads_through_the_weeks_as_a_chart(tmp_path: Path) -> None:
    for number, load in enumerate((20, 24, 24, 24), 1):
        plan = tmp_path / f"w{number}.yaml"
        plan.write_text(EFFORT.replace("plan: A", f"plan: A, week {number}"), encoding="utf-8")
        form = tmp_path / "form.yaml"
        text = f"record: A, week {number}\ndate: 2027-11-{8 + 7 * number - 7:02}\ndone:\n  Zoe:\n"
        form.write_text(
            f"{text}    - goblet squat: {load} kg x 8, 8\n    - dip: bodyweight x 5\n", encoding="utf-8"
        )
        assert run("keep", form).exit_code == 0
    result = run("review", tmp_path)
    assert result.exit_code == 0
    assert result.output.endswith(
        "Zoe: the heaviest set of each record\n\n"
        "  goblet squat, kg: the same or less for 3 records\n"
        f"    2027-11-08      20 x 8   {'#' * 33}\n"
        f"    2027-11-15      24 x 8   {'#' * 40}\n"
        f"    2027-11-22      24 x 8   {'#' * 40}\n"
        f"    2027-11-29      24 x 8   {'#' * 40}\n\n"
        "  dip, kg added to the body: the same or less for 4 records\n"
        + "".join(f"    2027-11-{day}       0 x 5\n" for day in ("08", "15", "22", "29"))
    )
    assert max(map(len, result.output.splitlines())) <= 80
    first = run("review", tmp_path / "w1.yaml")
    assert "heaviest" not in first.output


def trend(*lifted: tuple[float, float]) -> Trend:
    day = dt.date(2027, 11, 1)
    return Trend(
        movement="dip",
        added=False,
        points=tuple(Point(day + dt.timedelta(weeks=n), *one) for n, one in enumerate(lifted)),
    )


@pytest.mark.parametrize(
    ("lifted", "stalled", "jump"),
    [
        ([(40, 8), (42.5, 8)], 0, 0.0), ([(40, 8), (40, 8), (40, 8)], 3, 0.0),
        ([(40, 8), (40, 9), (40, 9)], 0, 0.0),
        ([(40, 8), (45, 8)], 0, 0.125), ([(40, 8), (44, 8)], 0, 0.0), ([(0, 8), (5, 8)], 0, 0.0),
        ([(40, 8), (42, 8), (40, 8), (41, 8)], 3, 0.0), ([(40, 8)], 0, 0.0),
    ],
)  # fmt: skip
def test_stalls_and_jumps(lifted: list[tuple[float, float]], stalled: int, jump: float) -> None:
    assert (trend(*lifted).stalled, round(trend(*lifted).jump, 6)) == (stalled, jump)


def test_a_jump_is_said(tmp_path: Path) -> None:
    plan = kept(tmp_path)
    form = tmp_path / "form.yaml"
    form.write_text(
        RECORD.replace("11-15", "11-17").replace("40 x 8, 8, 0", "50 x 8, 8, 8"), encoding="utf-8"
    )
    run("keep", form, "--plan", plan)
    assert "flat barbell bench press, kg: up by 25% in the last one" in said(run("review", plan))


def test_nothing_to_look_back_at(tmp_path: Path) -> None:
    plan = hall(tmp_path)
    result = run("review", plan)
    assert result.exit_code == 2
    assert "so there is nothing to look back at" in said(result)
    assert run("review", tmp_path / "none.yaml").exit_code == 2
    empty = tmp_path / "empty"
    empty.mkdir()
    assert "there is no plan in" in said(run("review", empty))
    assert "has no week 2" in said(run("review", plan, "--week", "2"))
    (tmp_path / "record").mkdir()
    (tmp_path / "record" / "a.1.yaml").write_text("", encoding="utf-8")
    assert "a.1.yaml: nothing of this record can be read; it is left out" in said(run("review", plan))
