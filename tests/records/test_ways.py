"""Where other sets, repetitions and loads are written in a line, and what no line can say."""

from pathlib import Path

import pytest

from tests.commands import run, said

TOP = """\
plan: A, week 1
unit: kg
next: add 1 rep every week
schemes:
  plain: 2 x 10
squad:
  athletes:
    - name: Ann
    - name: Ben
    - name: Cal
  groups:
    both: [Ann, Ben]
work:
"""


def becomes(folder: Path, work: str, ann: str, ben: str, cal: str = "done") -> tuple[list[str], str]:
    """The rows of the work next week, and what the command says."""
    movement = work.split("- ")[1].partition(":")[0].strip("{")
    file = folder / "w1.yaml"
    file.write_text(f"{TOP}{work}", encoding="utf-8")
    done = "".join(
        f"  {who}:\n    - {movement}: {line}\n" for who, line in (("Ann", ann), ("Ben", ben), ("Cal", cal))
    )
    form = folder / "form.yaml"
    form.write_text(f"record: A, week 1\ndate: 2027-11-15\ndone:\n{done}", encoding="utf-8")
    kept = run("keep", form, "--plan", file)
    assert kept.exit_code == 0, kept.output
    result = run("next", file)
    assert result.exit_code == 0, result.output
    rows = (folder / "w2.yaml").read_text(encoding="utf-8").splitlines()
    return rows[rows.index("work:") + 1 :], said(result)


@pytest.mark.parametrize(
    ("work", "ben", "rows"),
    [
        ("  - push-up: plain   # as ever\n", "done", ["  - push-up: 2 x 11   # as ever"]),
        (
            "  - push-up: plain\n    note: slow\n", "not done",
            ["  - push-up: 2 x 11", "    instead:", "      Ben:", "        - push-up: 2 x 10",
             "          note: slow", "    note: slow"],
        ),
        (
            "  - push-up: 2 x 8\n    instead:\n      Cal:\n        - dip: 2 x 5\n    rest: 2:00\n",
            "not done",
            ["  - push-up: 2 x 8", "    instead:", "      Ann:", "        - push-up: 2 x 9",
             "          rest: 2:00", "      Cal:", "        - dip: 2 x 5", "    rest: 2:00"],
        ),
        (
            "  - goblet squat: 2 x 8\n    load:\n      both: 20 kg\n      Cal: 24 kg\n", "not done",
            ["  - goblet squat: 2 x 9", "    instead:", "      Ben:", "        - goblet squat: 2 x 8",
             "          load: 20 kg", "    load:", "      both: 20 kg", "      Cal: 24 kg"],
        ),
    ],
)  # fmt: skip
def test_repetitions_that_were_gained(work: str, ben: str, rows: list[str], tmp_path: Path) -> None:
    new, told = becomes(tmp_path, work, "done", ben, "" if "Cal:\n" in work else "done")
    assert new == rows
    assert "To do by hand" not in told


@pytest.mark.parametrize(
    ("work", "told"),
    [
        ("  - push-up: sets of 8, 6\n", "To do by hand: - push-up: Ann: add 1 rep, Cal: add 1 rep"),
        ("  - {push-up: 2 x 8}\n", "To do by hand: - push-up: Ann: add 1 rep, Cal: add 1 rep"),
    ],
)
def test_what_no_line_can_say_for_some(work: str, told: str, tmp_path: Path) -> None:
    assert told in becomes(tmp_path, work, "done", "not done")[1]
