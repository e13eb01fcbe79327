"""The week's loop on the example crew, from a copy of its folder, without a hand edit; then with others."""

import re
import shutil
from pathlib import Path

import pytest

from tests.commands import run, said

CREW = Path(__file__).parents[2] / "examples" / "skerrow-bay"


@pytest.fixture
def crew(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The crew's folder, copied into an empty one."""
    monkeypatch.chdir(tmp_path)
    return Path(shutil.copytree(CREW, "crew"))


def test_the_crews_week_goes_round(crew: Path) -> None:
    for command in ("check", "sheet", "review"):
        assert run(command, crew / "week-good.yaml").exit_code == 0, command
    assert run("record", crew / "week-good.yaml", "--day", "Monday").exit_code == 0
    assert run("keep", crew / "record-week-3-monday.yaml").exit_code == 0
    assert "2 of 3 sessions recorded" in said(run("review", crew / "week-good.yaml"))
    going_on = run("next", crew / "week-good.yaml")
    assert going_on.exit_code == 0
    assert "To do by hand" not in going_on.output
    checked = run("check", crew / "week-good-next.yaml")
    assert (checked.exit_code, "No findings." in checked.output) == (0, True)
    week = (crew / "week-good-next.yaml").read_text(encoding="utf-8")
    assert "Isla: 32.5 kg" in week
    assert "starts: 2027-11-22" in week


def test_another_crew_takes_the_week_over_and_goes_round(crew: Path) -> None:
    new = run("new", "spring", "--from", crew / "week-good.yaml", "--squad", crew / "squad.yaml")
    assert new.exit_code == 0, new.output
    plan = Path("spring", "week-good.yaml")
    for command in ("check", "sheet"):
        assert run(command, plan).exit_code == 0, command
    assert run("record", plan, "--day", "Friday").exit_code == 0
    form = Path("spring", "record-friday.yaml")
    typed = re.sub(r"^(    - .*:)  # plan: .*", r"\1 done", form.read_text("utf-8"), flags=re.MULTILINE)
    form.write_text(typed.replace("\ndate:\n", "\ndate: 2028-03-03\n"), encoding="utf-8")
    assert run("keep", form).exit_code == 0
    assert "Callan: 1 of 3 sessions" in said(run("review", plan))
    assert run("next", plan).exit_code == 0
    assert run("check", Path("spring", "week-good-next.yaml")).exit_code == 0
