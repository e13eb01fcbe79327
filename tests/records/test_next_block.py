"""``next`` of a block: the next week as a plan of its own, with the block's values and what was done."""

import re
from pathlib import Path

import pytest

from tests.commands import run, said

BLOCK = """\
plan: Hall block
weeks: 3
starts: 2027-11-01
unit: kg
squad:
  athletes:
    - name: Ann
    - name: Ben
next: add 2.5 kg when every set reaches the top
lighter weeks:
  week 3: half the sets
sessions:
  - day: Monday
    work:
      - flat barbell bench press: 3 x 8
        load: [40, 45, 42.5]
      - bench pull: [3 x 8, 3 x 6, 3 x 8]
      - pull-up: 2 x 5
        next: add 1 rep every week
      - goblet squat: 2 x 10 at 20 kg
        only in: weeks 1 and 3
      - face pull: 2 x 12
        load:
          Ann: 10 kg
          Ben: 15 kg
"""
DONE = {
    "flat barbell bench press": "40 x 8, 8, 8",
    "bench pull": "30 x 8, 8, 8",
    "pull-up": "5, 5",
    "goblet squat": "20 x 10, 10",
    "face pull": "10 kg x 12, 12",
}


def keep(folder: Path, plan: str, ann: dict[str, str], ben: dict[str, str], top: str = "") -> None:
    """Keep the record of a Monday; ``top`` is the name of its plan and its date."""
    lines = "".join(
        f"  {who}:\n" + "".join(f"    - {name}: {line}\n" for name, line in done.items())
        for who, done in (("Ann", ann), ("Ben", ben))
    )
    form = folder / "form.yaml"
    form.write_text(f"record: {top}\nsession: Monday\ndone:\n{lines}", encoding="utf-8")
    kept = run("keep", form, "--plan", folder / plan)
    assert kept.exit_code == 0, kept.output


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    (tmp_path / "block.yaml").write_text(BLOCK, encoding="utf-8")
    return tmp_path


def first_week(folder: Path, ann: dict[str, str] = DONE, ben: dict[str, str] = DONE) -> str:
    """The text of week 2 after what was done in week 1."""
    keep(folder, "block.yaml", ann, ben, "Hall block\nweek: 1\ndate: 2027-11-01\nunit: kg")
    result = run("next", folder / "block.yaml", "--week", "1")
    assert result.exit_code == 0, result.output
    assert "To do by hand" not in result.output
    return (folder / "block-week-2.yaml").read_text(encoding="utf-8")


def test_the_next_week_is_a_plan_of_its_own(folder: Path) -> None:
    assert first_week(folder) == (
        "plan: Hall block, week 2\nfollows: block.yaml, week 1\nblock: block.yaml, week 2\n"
        "starts: 2027-11-08\nunit: kg\nsquad:\n  athletes:\n    - name: Ann\n    - name: Ben\n"
        "next: add 2.5 kg when every set reaches the top\nsessions:\n  - day: Monday\n    work:\n"
        "      - flat barbell bench press: 3 x 8\n        load: 45\n"
        "      - bench pull: 3 x 6\n        load: 32.5 kg\n"
        "      - pull-up: 2 x 6\n        next: add 1 rep every week\n"
        "      - face pull: 2 x 12\n        load:\n          Ann: 12.5 kg\n          Ben: 12.5 kg\n"
    )
    assert (folder / "block.yaml").read_text(encoding="utf-8") == BLOCK
    assert run("check", folder / "block-week-2.yaml", "--fail-on", "error").exit_code == 0


def test_the_step_of_the_block_is_added_to_what_was_lifted(folder: Path) -> None:
    """The block says 40, then 45: 5 more; who missed the line takes no step up."""
    more = DONE | {"flat barbell bench press": "42.5 x 8, 8, 8"}
    text = first_week(folder, more, DONE | {"flat barbell bench press": "not done"})
    assert "        load:\n          Ann: 47.5 kg\n          Ben: 40 kg\n      - bench pull" in text


def test_a_block_without_its_week_is_asked(folder: Path) -> None:
    assert "say which one" in said(run("next", folder / "block.yaml"))
    told = said(run("next", folder / "block.yaml", "--week", "2"))
    assert "no record of Hall block, week 2 of 3 is kept" in told
    assert "say so with --missed" in told


def test_a_week_of_a_block_goes_on_with_the_block(folder: Path) -> None:
    """Repetitions that were gained stay where the block says the same; what was absent comes back."""
    first_week(folder)
    second = {"flat barbell bench press": "45 x 8, 8, 8", "bench pull": "32.5 x 6, 6, 5", "pull-up": "6, 6",
              "face pull": "12.5 kg x 12, 12"}  # fmt: skip
    keep(
        folder,
        "block-week-2.yaml",
        second,
        second | {"pull-up": "not done"},
        "Hall block, week 2\ndate: 2027-11-08",
    )
    result = run("next", folder / "block-week-2.yaml")
    assert result.exit_code == 0, result.output
    text = (folder / "block-week-3.yaml").read_text(encoding="utf-8")
    assert text.startswith(
        "plan: Hall block, week 3\nlighter weeks:\n  week 1: half the sets\nfollows: block-week-2.yaml\n"
        "block: block.yaml, week 3\nstarts: 2027-11-15\n"
    )
    assert text.endswith(
        "      - flat barbell bench press: 3 x 8\n        load: 42.5\n"
        "      - bench pull: 3 x 8\n        load: 32.5 kg\n"
        "      - pull-up: 2 x 6\n        instead:\n          Ann:\n            - pull-up: 2 x 7\n"
        "              next: add 1 rep every week\n        next: add 1 rep every week\n"
        "      - goblet squat: 2 x 10 at 22.5 kg\n"
        "      - face pull: 2 x 12\n        load:\n          Ann: 15 kg\n          Ben: 15 kg\n"
    )
    told = said(result)
    assert "Ann, Ben: 42.5 kg, was 45 kg (week 3's own load)" in told
    assert "Ann, Ben: 22.5 kg, was 20 kg (last in week 1: 10, 10: every set reached 10)" in told
    assert "The week that comes is a lighter one: half the sets." in told


def test_after_the_last_week_comes_the_first_of_the_next_block(folder: Path) -> None:
    first_week(folder)
    two = {"pull-up": "6, 6", "face pull": "12.5 kg x 12, 12"}
    keep(folder, "block-week-2.yaml", two, two, "Hall block, week 2\ndate: 2027-11-08")
    assert run("next", folder / "block-week-2.yaml").exit_code == 0
    three = {"flat barbell bench press": "42.5 x 8, 8", "pull-up": "7", "face pull": "15 kg x 12"}
    keep(folder, "block-week-3.yaml", three, three, "Hall block, week 3\ndate: 2027-11-15")
    result = run("next", folder / "block-week-3.yaml")
    assert result.exit_code == 0, result.output
    assert "loads go on from what they were lighter than" in said(result)
    text = (folder / "block-2-week-1.yaml").read_text(encoding="utf-8")
    assert text.startswith(
        "plan: Hall block 2, week 1\nfollows: block-week-3.yaml\nblock: block.yaml, week 1\n"
        "starts: 2027-11-22\n"
    )
    assert "pull-up: 2 x 7\n" in text
    assert "Ann: 15 kg\n          Ben: 15 kg\n" in text
    assert run("check", folder / "block-2-week-1.yaml", "--fail-on", "error").exit_code == 0


def test_of_a_block_itself_the_week_before_a_lighter_one_decides(folder: Path) -> None:
    done = DONE | {"bench pull": "30 x 6, 6, 6", "flat barbell bench press": "45 x 8, 8, 8"}
    del done["goblet squat"]
    keep(folder, "block.yaml", done, done, "Hall block\nweek: 2\ndate: 2027-11-08\nunit: kg")
    light = {"pull-up": "5", "face pull": "10 kg x 12"}
    keep(folder, "block.yaml", light, light, "Hall block\nweek: 3\ndate: 2027-11-15\nunit: kg")
    assert run("next", folder / "block.yaml", "--week", "3").exit_code == 0
    text = (folder / "block-2-week-1.yaml").read_text(encoding="utf-8")
    assert "pull-up: 2 x 6\n" in text
    assert "load: 40\n" in text
    assert "bench pull: 3 x 8\n        load: 32.5 kg\n" in text


@pytest.mark.parametrize(
    ("block", "told"),
    [
        ("gone.yaml, week 1", "the block gone.yaml can't be read beside"),
        ("block.yaml, week 9", "has no week 9, of which"),
        ("empty.yaml, week 1", "can't be read as a plan"),
    ],
)
def test_a_block_that_cannot_be_gone_on_with(folder: Path, block: str, told: str) -> None:
    (folder / "empty.yaml").write_text("", encoding="utf-8")
    plan = f"plan: Hall block, week 1\nblock: {block}\nunit: kg\nsessions:\n  - day: Monday\n    work:\n"
    (folder / "w1.yaml").write_text(f"{plan}      - pull-up: 2 x 5\n", encoding="utf-8")
    form = folder / "form.yaml"
    form.write_text(
        "record: Hall block, week 1\ndate: 2027-11-01\nsession: Monday\ndone:\n  Zoe:\n    - pull-up: 5, 5\n"
    )
    assert run("keep", form, "--plan", folder / "w1.yaml").exit_code == 0
    result = run("next", folder / "w1.yaml")
    assert result.exit_code == 2
    assert told in said(result)


def test_a_block_that_tells_its_own_number_counts_on(folder: Path) -> None:
    text = BLOCK.replace("Hall block", "Hall, week 7")
    (folder / "week-7.yaml").write_text(text, encoding="utf-8")
    keep(folder, "week-7.yaml", DONE, DONE, "Hall, week 7\nweek: 1\ndate: 2027-11-01\nunit: kg")
    assert run("next", folder / "week-7.yaml", "--week", "1").exit_code == 0
    new = (folder / "week-8.yaml").read_text(encoding="utf-8")
    assert new.startswith("plan: Hall, week 8\nfollows: week-7.yaml, week 1\nblock: week-7.yaml, week 2\n")


def test_percents_by_week_stand_but_for_whoever_missed(folder: Path) -> None:
    squad = "    - name: Ann\n      maxes:\n        bench pull: 80 kg tested 2027-10-01\n    - name: Ben\n"
    text = BLOCK.replace("    - name: Ann\n    - name: Ben\n", squad)
    text = text.replace(
        "[3 x 8, 3 x 6, 3 x 8]\n", "3 x 6\n        load: [70%, 75%, 80%]\n        for: [Ann]\n"
    )
    (folder / "block.yaml").write_text(text, encoding="utf-8")
    assert "load: 75%\n" in first_week(folder, DONE | {"bench pull": "done"}, DONE | {"bench pull": ""})


def test_who_missed_stays_with_the_percent_of_the_week_before(folder: Path) -> None:
    squad = "    - name: Ann\n      maxes:\n        bench pull: 80 kg tested 2027-10-01\n    - name: Ben\n"
    text = BLOCK.replace("    - name: Ann\n    - name: Ben\n", squad)
    text = text.replace(
        "[3 x 8, 3 x 6, 3 x 8]\n", "3 x 6\n        load: [70%, 75%, 80%]\n        for: [Ann]\n"
    )
    (folder / "block.yaml").write_text(text, encoding="utf-8")
    new = first_week(folder, DONE | {"bench pull": "not done, late"}, DONE)
    assert re.search(r"bench pull: 3 x 6\n +load: 70%\n", new) or re.search(r"load:\n +Ann: 70%\n", new)


def test_without_dates_stages_count_by_the_weeks_of_the_block(folder: Path) -> None:
    stages = "stages:\n  hang:\n    earliest: week 3\n    enter when: no pain\n"
    text = BLOCK.replace("starts: 2027-11-01\n", stages)
    (folder / "block.yaml").write_text(text, encoding="utf-8")
    new = first_week(folder)
    assert "starts" not in new
    assert "    earliest: week 2\n" in new


def test_what_the_coach_added_to_a_week_is_not_the_blocks(folder: Path) -> None:
    """Goblet squats that the coach put into week 2 go on in week 3, where the block has them again."""
    file = folder / "block-week-2.yaml"
    file.write_text(first_week(folder) + "      - goblet squat: 2 x 10 at 24 kg\n", encoding="utf-8")
    done = {"goblet squat": "24 kg x 10, 10"}
    keep(folder, file.name, done, done, "Hall block, week 2\ndate: 2027-11-08")
    assert run("next", file).exit_code == 0
    assert "goblet squat: 2 x 10 at 26.5 kg\n" in (folder / "block-week-3.yaml").read_text(encoding="utf-8")


def test_a_load_of_another_kind_is_the_blocks(folder: Path) -> None:
    text = BLOCK.replace("[40, 45, 42.5]", "\n          week 1: 40\n          weeks 2-3: own choice")
    (folder / "block.yaml").write_text(text, encoding="utf-8")
    assert "load: own choice\n" in first_week(folder)
    told = said(run("next", folder / "block.yaml", "--week", "1", "--out", folder / "other.yaml"))
    assert "week 2 of the block has a load of its own" in told


def test_whose_lines_are_changed_otherwise_gain_nothing(folder: Path) -> None:
    """Sets of another kind in a week file are that week's alone."""
    file = folder / "block-week-2.yaml"
    text = first_week(folder).replace("pull-up: 2 x 6", "pull-up: 1 x 6, then 1 x 4")
    file.write_text(text, encoding="utf-8")
    done = {"pull-up": "6, 4"}
    keep(folder, file.name, done, done, "Hall block, week 2\ndate: 2027-11-08")
    assert run("next", file).exit_code == 0
    assert "pull-up: 2 x 6\n" in (folder / "block-week-3.yaml").read_text(encoding="utf-8")


@pytest.mark.parametrize("typed", ["", "    signed off: not yet\n"])
def test_a_stage_signed_off_in_a_week_stays_so(typed: str, folder: Path) -> None:
    stages = f"stages:\n  hang:\n    enter when: no pain\n{typed}"
    (folder / "block.yaml").write_text(
        BLOCK.replace("lighter weeks", f"{stages}lighter weeks"), encoding="utf-8"
    )
    file = folder / "block-week-2.yaml"
    signed = "    signed off: an invented clinician, 2027-11-08\n"
    text = first_week(folder).replace(typed, "") if typed else first_week(folder)
    file.write_text(
        text.replace("    enter when: no pain\n", f"{signed}    enter when: no pain\n"), encoding="utf-8"
    )
    done = {"pull-up": "6, 6"}
    keep(folder, file.name, done, done, "Hall block, week 2\ndate: 2027-11-08")
    assert run("next", file).exit_code == 0
    assert signed in (folder / "block-week-3.yaml").read_text(encoding="utf-8")
