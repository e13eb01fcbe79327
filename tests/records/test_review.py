"""``review``: who came, what was done of what was planned, and how loads went; each athlete alone."""

import datetime as dt
from pathlib import Path

import pytest

from setwright.coverage import cover
from setwright.records.achieved import week_of_done, week_planned
from setwright.records.keeping import plan_of
from setwright.records.trend import Point, Trend
from setwright.records.week_done import week_done
from tests.commands import run, said
from tests.records.plans import LIBRARY, hall

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
    assert "Cal: 0 of 2 sessions Ann, max from one record: flat barbell bench press 48 to 51.1 kg" in told


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
    assert f"planned 2 x 8, 2 left{told} no hard set of a push or a pull" in said(run("review", plan))


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
    assert "\nZoe: 4 of 4 sessions in the 4 weeks with a record\n" in result.output
    assert (
        "Zoe: the heaviest set of each record\n\n"
        "  goblet squat, kg: the same or less for 3 records\n"
        f"    2027-11-08      20 x 8   {'#' * 23}       max at least 24\n"
        f"    2027-11-15      24 x 8   {'#' * 28}  max at least 28.8\n"
        f"    2027-11-22      24 x 8   {'#' * 28}  max at least 28.8\n"
        f"    2027-11-29      24 x 8   {'#' * 28}  max at least 28.8\n\n"
        "  dip, kg added to the body, max with the body: the same or less for 4 records\n"
        + "".join(f"    2027-11-{day}       0 x 5\n" for day in ("08", "15", "22", "29"))
        + "\nmax: estimated from that set, not tested: the lowest and the highest of Epley,\n"
    ) in result.output
    assert max(map(len, result.output.splitlines())) <= 80
    first = run("review", tmp_path / "w1.yaml")
    assert "the heaviest set" not in first.output


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


def trends_of(folder: Path, typed: str, squad: str = "athletes: [{name: Zoe}]", unit: str = "kg") -> str:
    """What review says of maxes when Zoe's one line was ``typed``."""
    plan = folder / "a.yaml"
    work = "  - flat barbell bench press: 3 x 8\n  - pull-up: 3 x 8\n"
    plan.write_text(f"plan: A\nunit: {unit}\nsquad: {{{squad}}}\nwork:\n{work}", encoding="utf-8")
    form = folder / "form.yaml"
    form.write_text(f"record: A\ndate: 2027-11-15\ndone:\n  Zoe:\n    - {typed}\n", encoding="utf-8")
    assert run("keep", form).exit_code == 0
    return said(run("review", plan))


@pytest.mark.parametrize(
    ("typed", "told"),
    [
        ("flat barbell bench press: 40 x 8, 8 at RPE 8", "flat barbell bench press 50 to 53.9 kg"),
        ("flat barbell bench press: 40 x 8, 6 at 4, 0 RIR", None),
        ("flat barbell bench press: 40 x 8, 8 at 4, 0 RIR", "flat barbell bench press 48 to 51.1 kg"),
        ("flat barbell bench press: 40 x 5 at 0 RIR", "flat barbell bench press 45 to 47.6 kg"),
        ("flat barbell bench press: 40 x 5", "flat barbell bench press at least 45 kg"),
        ("flat barbell bench press: 40 x 1 at RPE 10", "flat barbell bench press 40 kg"),
        ("flat barbell bench press: 40 x 5 at Borg 15", "flat barbell bench press at least 45 kg"),
        ("flat barbell bench press: 40 x 9 at 2 RIR", None),
        ("flat barbell bench press: 40 x 11", None),
        ("pull-up: bodyweight + 2 kg x 5 at 0 RIR", "pull-up 56.2 to 59.5 kg with the body"),
        ("pull-up: 5, 5", None),
    ],
)  # fmt: skip
def test_a_max_is_estimated_from_what_was_done(typed: str, told: str | None, tmp_path: Path) -> None:
    """By hand from the formulas: 8 and 2 left are 10 to failure, O'Conner 40 x 1.25, Wathan 40 x 1.347; ...

    pull-up: with 96 % of the body 50 kg are lifted, 50 x 1.125 to 50 x 1.19.
    """
    said_of = trends_of(tmp_path, typed, "athletes: [{name: Zoe, body mass: 50 kg}]")
    assert ("max from one record" in said_of) == (told is not None)
    assert told is None or f"Zoe, max from one record: {told} " in said_of


def test_a_max_is_told_in_the_unit_of_the_plan(tmp_path: Path) -> None:
    told = trends_of(tmp_path, "flat barbell bench press: 100 x 5 at 0 RIR", unit="lb")
    assert "flat barbell bench press 112.5 to 119 lb" in told


def test_of_a_bodyweight_movement_without_a_body_mass_no_max_is_told(tmp_path: Path) -> None:
    assert "max from" not in trends_of(tmp_path, "pull-up: bodyweight + 10 kg x 5 at 0 RIR")


def test_the_matrix_is_of_what_was_done(tmp_path: Path) -> None:
    """Ann did 2 sets of the bench and 3 of the dip, of which the dip alone follows the costal line."""
    told = run("review", kept(tmp_path), "--for", "Ann").output
    rows = [line.split()[:2] for line in told.splitlines() if line.split()[:1] in (["sternal"], ["costal"])]
    assert rows == [["sternal", "3.5/6.5"], ["costal", "4/8.5"]]
    assert "Mechanical figures from one cadaver-sized model" in told


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
