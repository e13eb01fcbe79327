"""`read --count`: the plan language's table of counts, through the command line, and what else it says."""

from pathlib import Path

import pytest
from typer.testing import CliRunner

from setwright.cli import app

BLOCK = Path(__file__).parents[2] / "examples/skerrow-bay/block.yaml"
TOP = """\
plan: Counted
unit: kg
sides: each
movements:
  sled row:
    pattern: horizontal pull
    counted in: m
    muscles:
      direct: [latissimus dorsi]
"""


def counted(*lines: str, folder: Path, top: str = TOP) -> str:
    """What is said back about items of work, on one line so that wrapping does not matter."""
    plan = folder / "week.yaml"
    plan.write_text(f"{top}work:\n" + "".join(f"  {line}\n" for line in lines), encoding="utf-8")
    result = CliRunner().invoke(app, ["read", str(plan), "--count"])
    assert result.exit_code == 0, result.output
    return " ".join(result.output.split())


# The table of the plan language: sets, hard sets, repetitions, metres, seconds. No rest is written in some
# lines; what the clock takes for it is said apart.
TABLE = [
    (
        "flat barbell bench press: 4 x 6 at 75%, rest 3:00",
        (
            "= 4 sets, 4 hard: 75 % allows about 10 repetitions by the handbook table; 24 reps; "
            "72 s of work, 540 s of rest"
        ),
    ),
    (
        "flat barbell bench press: 3 x 3 at 82.5%, rest 3:00",
        (
            "= 3 sets, none hard: 82.5 % allows about 7.2 repetitions by the handbook table; 9 reps; "
            "27 s of work, 360 s of rest"
        ),
    ),
    (
        "one-arm dumbbell row: 3 x 10 each side, rest 60 s",
        "= 3 sets, 3 hard: effort not stated, so counted; 30 reps a side; 180 s of work, 120 s of rest",
    ),
    (
        "bench pull: 4 x cluster 1 + 1 + 1, pause 20 s, rest 3:00",
        (
            "= 4 sets, 4 hard: effort not stated, so counted; 12 reps; "
            "36 s of work, 160 s of pauses inside sets, 540 s of rest"
        ),
    ),
    (
        "bench pull: rest-pause 10 + 3 + 3, pause 20 s",
        "= 1 set, 1 hard: effort not stated, so counted; 16 reps; 48 s of work, 40 s of pauses inside sets",
    ),
    (
        "barbell curl: 3 x 10 at 40 kg, last set drop 20% for max",
        (
            "= 3 sets, 3 hard: effort not stated, so counted; 30 or more reps; "
            "120 s of work, rest not written, 240 s taken"
        ),
    ),
    (
        "goblet squat: 10 x 5 every 1:00",
        (
            "= 10 sets, 0 to 10 hard: no effort written, and such sets may be easy; 50 reps; "
            "600 s of work and rest together"
        ),
    ),
    (
        "push-up: ladder 1 to 10",
        "= 10 sets, 0 to 10 hard: no effort written, and such sets may be easy; 55 reps; 165 s of work",
    ),
    (
        "push-up: 100 total",
        (
            "= 1 or more sets, 0 or more hard: no effort written, and such sets may be easy; 100 reps; "
            "300 s of work, breaks as they come"
        ),
    ),
    (
        "bench pull: sets of 10, 8, 6 at 2 RIR, rest 90 s",
        "= 3 sets, 3 hard: effort written (2 repetitions left); 24 reps; 72 s of work, 180 s of rest",
    ),
    (
        "sled row: 3 x 40 m at 2 x 32 kg, rest 90 s",
        (
            "= 3 sets, 0 to 3 hard: no effort written, and such sets may be easy; 120 m; "
            "120 s of work, 180 s of rest"
        ),
    ),
]


@pytest.mark.parametrize(("line", "said"), TABLE, ids=[line for line, _ in TABLE])
def test_the_table_of_the_language(line: str, said: str, tmp_path: Path) -> None:
    text = counted(f"- {line}", folder=tmp_path)
    assert said + " = The session: " in text


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("farmer's walk: 3 x 40 m", "3 sets, none hard: a movement of this kind (carry) never counts"),
        ("power clean: 5 x 2 RPE 9", "5 sets, none hard: a movement of this kind (explosive lift) never"),
        ("bench pull: 3 x 8 at 5 RIR", "3 sets, none hard: effort written (5 repetitions left)"),
        ("bench pull: 3 x 8 at 3-5 RIR", "3 sets, 0 to 3 hard: effort written (3 to 5 repetitions left)"),
        (
            "bench pull: 3 x 12 at 50%",
            "0 to 3 hard: 50 % allows 15 or more repetitions by the handbook table",
        ),
        ("bench pull: 3 x 8 rising to 80 kg", "1 to 3 hard: only the last set is sure to be hard"),
        ("pull-up: 3 x max", "3 sets, 3 hard: as many as possible; 0 or more reps"),
        ("bench pull: 3 x 8, rest as needed", "72 s of work, rest without a number, 240 s taken"),
        (
            "bench pull: 3 x 5 at 2 RIR, then 2 x 8 at 6 RIR",
            "5 sets, 3 hard: effort written (2 repetitions left), effort",
        ),
        ("pull-up: 1 x 6 + 4 lowering only", "6 reps; 4 lowering only repetitions apart"),
        ("bench pull: 2 warm-up sets, then 3 x 8", "2 warm-up sets never counted"),
        ("bench pull: 2 warm-up sets", "0 sets, none hard: only warm-up sets"),
        ("push-up: 3 x 8, then 2 x 30 s hold", "24 reps; 60 s held or moving"),
    ],
)
def test_the_rule_that_decided_is_said(line: str, said: str, tmp_path: Path) -> None:
    assert said in counted(f"- {line}", folder=tmp_path)


def test_unequal_sides_are_kept_apart_in_the_line_and_in_the_week(tmp_path: Path) -> None:
    text = counted("- one-arm dumbbell row: 3 x 12 left, then 2 x 12 right", folder=tmp_path)
    assert "36 reps a side; left 3, right 2 sets" in text
    assert "one side more than the other: one-arm dumbbell row, left 3, right 2 sets" in text


def test_a_group_counts_its_rounds_and_says_its_clock(tmp_path: Path) -> None:
    text = counted(
        "- circuit:", "    - push-up: 10", "    - goblet squat: 8 at 2 RIR", "  rounds: 3", "  rest: 2:00",
        "  between moves: 15 s", folder=tmp_path,
    )  # fmt: skip
    # 3 x (30 + 24) s of work, 3 x 15 s between the moves, 2 x 120 s after rounds
    assert "= 3 rounds x 2 moves; 7:27 (447 s) with the rests between rounds" in text
    assert "= 3 sets, 3 hard: effort not stated, so counted; 30 reps" in text
    assert "= 3 sets, 3 hard: effort written (2 repetitions left); 24 reps" in text


def test_rounds_by_the_clock_are_a_span(tmp_path: Path) -> None:
    text = counted(
        "- circuit:", "    - push-up", "    - dip: 8", "  each: 40 s", "  rounds: 3",
        "- circuit:", "    - push-up: 10", "  time: 12:00",
        "- circuit:", "    - push-up: rung", "    - dip: 3", "  ladder: 1 to 10",
        "- superset:", "    - push-up: 3 x 10", "    - dip: 3 x 8",
        folder=tmp_path,
    )  # fmt: skip
    rule = "no effort written, and rounds by the clock or by rungs may be easy"
    assert f"= 3 sets, 0 to 3 hard: {rule} 1b leaning parallel-bar dip" in text
    assert f"= 3 sets, 0 to 3 hard: {rule}; 24 reps" in text
    assert "= as many rounds of 1 move as fit; 12:00 (720 s)" in text
    assert f"= 1 or more sets, 0 or more hard: {rule}; 10 or more reps" in text
    assert "= 10 rungs x 2 moves; a rung comes to 55 repetitions; " in text
    assert f"= 10 sets, 0 to 10 hard: {rule}; 55 reps" in text
    assert f"= 10 sets, 0 to 10 hard: {rule}; 30 reps" in text
    assert "= 2 moves in turn; " in text


def test_sums_of_session_and_week_name_how_they_were_counted(tmp_path: Path) -> None:
    days = (
        TOP
        + "sessions:\n"
        + "".join(
            f"  - day: {day}\n    work:\n      - bench pull: 3 x 10 at 2 RIR, rest 60 s\n"
            for day in ("Mon", "Thu")
        )
    )
    plan = tmp_path / "week.yaml"
    plan.write_text(days, encoding="utf-8")
    text = " ".join(CliRunner().invoke(app, ["read", str(plan), "--count"]).output.split())
    # 90 s of work, 120 s of rest, 60 s to set up: 4.5 minutes
    assert text.count("= The session: 3 sets, 3 hard; 4.5 minutes") == 2
    assert "The week, counted 6 sets, 6 hard; 9.0 minutes (4.5 + 4.5)" in text
    assert "hard sets without a written effort: none pushes 0, pulls 6 hard sets" in text
    assert "hard sets a muscle, helpers half (pelland2024, abstract): back 6" in text
    for source in ("at most 4 repetitions left (RPE 6 or more)", "handbook table after Baechle & Earle"):
        assert source in text
    assert "Minutes: a repetition 3 s unless a tempo is written, rest 120 s" in text


def test_what_cannot_be_read_is_not_counted(tmp_path: Path) -> None:
    plan = tmp_path / "week.yaml"
    plan.write_text(
        "plan: A\nwork:\n  - flat barbel bench pres: 3 x 8\n  - dip: 3 x 8 at RPE 12\n", encoding="utf-8"
    )
    result = CliRunner().invoke(app, ["read", str(plan), "--count"])
    assert result.exit_code == 1
    assert "= not counted: the movement is not known" in result.output
    assert "= not counted: it has no dose that could be read" in result.output


def test_without_count_nothing_is_counted(tmp_path: Path) -> None:
    plan = tmp_path / "week.yaml"
    plan.write_text(f"{TOP}work:\n  - dip: 3 x 8\n", encoding="utf-8")
    output = CliRunner().invoke(app, ["read", str(plan)]).output
    assert "hard" not in output
    assert "=" not in output


def test_a_block_is_counted_week_by_week_or_one_week_alone() -> None:
    block = str(BLOCK)
    every = CliRunner().invoke(app, ["read", block, "--count"]).output
    weeks = [line for line in every.splitlines() if line.startswith("Week ")]
    assert weeks == ["Week 1", "Week 2", "Week 3", "Week 4"]
    assert every.count("The week, counted") == 4
    fourth = CliRunner().invoke(app, ["read", block, "--count", "--week", "4"]).output
    assert fourth.count("The week, counted") == 1
    assert "  = The session: 8 sets, 8 hard; 25.4 minutes" in fourth
