"""``last time + 2.5 kg`` has a number once records say what was lifted."""

from pathlib import Path

import pytest

from tests.commands import run, said

TOP = """\
plan: Hall, week {number}
starts: {starts}
unit: kg
{follows}squad:
  athletes:
    - name: Ann
    - name: Ben
sessions:
  - day: Monday
    work:
      - flat barbell bench press: 3 x 5{monday}
      - dip: 2 x 5
  - day: Thursday
    work:
      - flat barbell bench press: 3 x 5{thursday}
"""


def plan(folder: Path, number: int, monday: str = "", thursday: str = "", follows: str = "") -> Path:
    """A week of the hall, a week later for each number."""
    file = folder / f"week-{number}.yaml"
    starts = f"2027-11-{1 + 7 * (number - 1):02}"
    file.write_text(
        TOP.format(number=number, starts=starts, monday=monday, thursday=thursday, follows=follows)
    )
    return file


def keep(file: Path, number: int, day: str, ann: str, ben: str = "") -> None:
    """Keep what Ann and Ben did of the bench press."""
    first = 1 + 7 * (number - 1) + (3 if day == "Thursday" else 0)
    form = file.parent / "form.yaml"
    bench = "    - flat barbell bench press: "
    form.write_text(
        f"record: Hall, week {number}\nsession: {day}\ndate: 2027-11-{first:02}\ndone:\n"
        f"  Ann:\n{bench}{ann}\n  Ben:\n{bench}{ben}\n"
    )
    kept = run("keep", form, "--plan", file)
    assert kept.exit_code == 0, kept.output


def loads(file: Path) -> str:
    """What `loads` says of a plan."""
    result = run("loads", file)
    assert result.exit_code == 0, result.output
    return said(result)


MORE = " at last time + 2.5 kg"


def test_the_last_session_with_it_counts(tmp_path: Path) -> None:
    first = plan(tmp_path, 1, " at 40 kg", " at 42.5 kg")
    keep(first, 1, "Monday", "50 x 5, 5, 5", "done")
    keep(first, 1, "Thursday", "52.5 x 5, 5, 5", "not done")
    second = plan(tmp_path, 2, MORE, MORE, "follows: week-1.yaml\n")
    before = loads(second)
    assert "55 kg" in before
    assert "42.5 kg" in before
    keep(second, 2, "Monday", "60 x 5, 5, 5", "done")
    after = loads(second)
    assert "62.5 kg" in after
    assert "45 kg" in after


def test_last_week_is_of_the_weeks_before(tmp_path: Path) -> None:
    first = plan(tmp_path, 1, " at 40 kg", " at 42.5 kg")
    keep(first, 1, "Monday", "50 x 5, 5, 5")
    second = plan(tmp_path, 2, " at 51 kg", " at last week - 10%", "follows: week-1.yaml\n")
    keep(second, 2, "Monday", "70 x 5, 5, 5")
    assert "45 kg" in loads(second)


@pytest.mark.parametrize("done", ["not done", "5, 5, 5", "done"])
def test_what_nobody_wrote_has_no_number(done: str, tmp_path: Path) -> None:
    first = plan(tmp_path, 1)
    keep(first, 1, "Monday", done)
    told = loads(plan(tmp_path, 2, MORE, "", "follows: week-1.yaml\n"))
    assert "what was lifted last time is not known" in told


def test_a_week_that_is_not_followed_is_not_known(tmp_path: Path) -> None:
    first = plan(tmp_path, 1)
    keep(first, 1, "Monday", "50 x 5, 5, 5")
    assert "what was lifted last time is not known" in loads(plan(tmp_path, 2, MORE))
    plan(tmp_path, 2, "", "", "follows: gone.yaml\n")
    assert "what was lifted last time is not known" in loads(
        plan(tmp_path, 3, MORE, "", "follows: week-2.yaml\n")
    )


def test_more_than_last_time_done_as_planned_goes_further_back(tmp_path: Path) -> None:
    first = plan(tmp_path, 1)
    keep(first, 1, "Monday", "50 x 5, 5, 5", "40 x 5, 5, 5")
    second = plan(tmp_path, 2, MORE, "", "follows: week-1.yaml\n")
    keep(second, 2, "Monday", "done", "done")
    told = loads(plan(tmp_path, 3, MORE, "", "follows: week-2.yaml\n"))
    assert "55 kg" in told
    assert "45 kg" in told


def test_a_share_of_last_time_done_as_planned_is_not_known(tmp_path: Path) -> None:
    first = plan(tmp_path, 1)
    keep(first, 1, "Monday", "50 x 5, 5, 5")
    second = plan(tmp_path, 2, " at last time - 10%", "", "follows: week-1.yaml\n")
    keep(second, 2, "Monday", "done")
    told = loads(plan(tmp_path, 3, MORE, "", "follows: week-2.yaml\n"))
    assert "what was lifted last time is not known" in told


def test_the_sheet_has_the_number_too(tmp_path: Path) -> None:
    first = plan(tmp_path, 1, " at 40 kg")
    keep(first, 1, "Monday", "50 x 5, 5, 5", "45 x 5, 5, 5")
    second = plan(tmp_path, 2, MORE, "", "follows: week-1.yaml\n")
    out = tmp_path / "sheets"
    assert run("sheet", second, "--out", out).exit_code == 0
    pages = "".join(page.read_text(encoding="utf-8") for page in out.rglob("*.html"))
    assert "52.5" in pages
    assert "47.5" in pages


def test_a_step_is_added_to_it(tmp_path: Path) -> None:
    first = plan(tmp_path, 1, " at 40 kg")
    keep(first, 1, "Monday", "50 x 5, 5, 5", "45 x 5, 5, 5")
    file = plan(tmp_path, 2, MORE, "", "next: add 2.5 kg every week\nfollows: week-1.yaml\n")
    keep(file, 2, "Monday", "done", "done")
    assert run("next", file).exit_code == 0
    text = (tmp_path / "week-3.yaml").read_text(encoding="utf-8")
    assert "          Ann: 55 kg\n          Ben: 50 kg\n" in text
