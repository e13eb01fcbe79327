"""Squad, gym and record files named alone on the command line."""

from pathlib import Path

import pytest

from tests.commands import run

CREW = Path(__file__).parents[2] / "examples" / "skerrow-bay"


@pytest.mark.parametrize(
    ("file", "said"),
    [
        ("squad.yaml", "squad.yaml: 6 athletes read, nothing to mend"),
        ("gym.yaml", "gym.yaml: the gym read, nothing to mend"),
        ("record-week-3-monday.yaml", "13 lines of 4 athletes read, nothing to mend"),
    ],
)
def test_check_takes_a_file_alone(file: str, said: str) -> None:
    result = run("check", str(CREW / file))
    assert result.exit_code == 0
    assert said in " ".join(result.output.split())


def test_read_says_a_record_back() -> None:
    result = run("read", str(CREW / "record-week-3-monday.yaml"))
    assert result.exit_code == 0
    assert "  face pull: not written\n" in result.output
    assert "  level cable crossover: not done, pager went\n" in result.output


def test_the_record_fits_the_good_week() -> None:
    """Its plan, date and movements are those of the week, but for what was done instead."""
    week = (CREW / "week-good.yaml").read_text(encoding="utf-8")
    assert "plan: Autumn block, week 3\nstarts: 2027-11-15\n" in week
    monday = week.partition("- day: Wednesday")[0]
    lines = (CREW / "record-week-3-monday.yaml").read_text(encoding="utf-8").splitlines()
    names = {line.strip(" -").partition(":")[0] for line in lines if line.startswith("    - ")}
    assert {name for name in names if f"- {name}: " not in monday} == {"push-up", "note"}


def test_a_fault_in_a_file_alone_is_1(tmp_path: Path) -> None:
    paper = tmp_path / "monday.yaml"
    paper.write_text("record: A\ndone:\n  Ann:\n    - dip: ✓\n", encoding="utf-8")
    assert run("check", str(paper)).exit_code == 1
    result = run("read", str(paper))
    assert result.exit_code == 1
    assert 'Write "done", or what was done' in result.output


def test_a_sheet_still_needs_a_plan(tmp_path: Path) -> None:
    result = run("sheet", str(CREW / "squad.yaml"), "--out", str(tmp_path))
    assert result.exit_code == 2
    assert "this is a squad file, not a plan" in result.output
