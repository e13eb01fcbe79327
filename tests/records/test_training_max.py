"""A step of the training max: in the squad of the next plan, or in a new squad file that it names."""

from pathlib import Path

import pytest

from setwright.places import Place
from setwright.records.training_max import NewMax, put
from tests.commands import run, said

SQUAD = """\
athletes:
  - name: Ann
    maxes:
      bench pull: 60 kg tested 2027-10-01, training max 90%   # hers
      barbell back squat: 100 kg tested 2027-10-01, training max 97.5 kg
  - name: Ben
    maxes:
      bench pull: 150 lb tested 2027-10-01, TM of 135 lb
      barbell back squat: 120 kg tested 2027-10-01
"""
PLAN = """\
plan: Hall, week 3
unit: kg
percent of: training max
squad: squad.yaml
next: add 2.5 kg to the training max every 3 weeks
work:
  - bench pull: 3 x 5 at 75%
  - barbell back squat: 3 x 5 at 60 kg
"""
DONE = "    - bench pull: done\n    - barbell back squat: 60 x 5, 5, 5\n"


def after(folder: Path, plan: str = PLAN, ann: str = DONE, ben: str = DONE, squad: str = SQUAD) -> str:
    """What `next` says of the week."""
    (folder / "squad.yaml").write_text(squad, encoding="utf-8")
    file = folder / "week-3.yaml"
    file.write_text(plan, encoding="utf-8")
    form = folder / "form.yaml"
    form.write_text(
        f"record: Hall, week 3\ndate: 2027-11-15\ndone:\n  Ann:\n{ann}  Ben:\n{ben}", encoding="utf-8"
    )
    kept = run("keep", form, "--plan", file)
    assert kept.exit_code == 0, kept.output
    result = run("next", file)
    assert result.exit_code == 0, result.output
    assert (folder / "squad.yaml").read_text(encoding="utf-8") == squad
    return said(result)


def test_a_new_squad_file_holds_the_steps(tmp_path: Path) -> None:
    told = after(tmp_path)
    assert (tmp_path / "squad-2.yaml").read_text(encoding="utf-8") == SQUAD.replace(
        "training max 90% ", "training max 56.5 kg "
    ).replace("97.5 kg", "100 kg").replace("TM of 135 lb", "training max 140.51 lb")
    assert "squad: squad-2.yaml\n" in (tmp_path / "week-4.yaml").read_text(encoding="utf-8")
    assert (
        "bench pull, Ann: training max 56.5 kg, was 54 kg (every 3 weeks 2.5 kg to the training max)" in told
    )
    assert "bench pull, Ben: training max 140.51 lb, was 135 lb" in told
    assert (
        "To do by hand: - barbell back squat, Ben: every 3 weeks 2.5 kg to the training max, and none" in told
    )
    assert told.endswith("squad-2.yaml " + str(tmp_path / "week-4.yaml"))


def test_a_squad_in_the_plan_is_changed_in_the_next_plan(tmp_path: Path) -> None:
    inside = "squad:\n" + "".join(f"  {line}\n" for line in SQUAD.splitlines())
    after(tmp_path, PLAN.replace("squad: squad.yaml\n", inside))
    text = (tmp_path / "week-4.yaml").read_text(encoding="utf-8")
    assert "training max 56.5 kg   # hers\n" in text
    assert not (tmp_path / "squad-2.yaml").exists()


def test_who_missed_a_line_takes_no_step(tmp_path: Path) -> None:
    plan = PLAN + "  - bench pull: 2 x 8 at 65%\n    for: [Ann]\n"
    told = after(tmp_path, plan, ann=f"{DONE}    - bench pull: not done, late\n")
    assert "bench pull, Ann: the same again (not done, late)" in told
    assert "training max 90%" in (tmp_path / "squad-2.yaml").read_text(encoding="utf-8")


def test_it_ends_at_the_tested_max(tmp_path: Path) -> None:
    plan = PLAN.replace("add 2.5 kg", "add 10 kg")
    told = after(tmp_path, plan)
    assert "training max 60 kg, was 54 kg" in told
    assert "10 kg to the training max; it ends at the tested max of 60 kg" in told
    file = tmp_path / "squad-2.yaml"
    assert "bench pull: 60 kg tested 2027-10-01, training max 60 kg" in file.read_text(encoding="utf-8")


def test_beyond_the_tested_max_where_it_is_allowed(tmp_path: Path) -> None:
    plan = PLAN.replace("add 2.5 kg", "add 10 kg") + "allow:\n  above-tested-max: a new max is tried\n"
    assert "training max 64 kg, was 54 kg" in after(tmp_path, plan)


@pytest.mark.parametrize("week", [4, 5])
def test_in_other_weeks_it_stays(week: int, tmp_path: Path) -> None:
    plan = PLAN.replace("every 3 weeks", f"every {week} weeks")
    assert f"every {week} weeks, and this was week 3" in after(tmp_path, plan)
    assert not (tmp_path / "squad-2.yaml").exists()


def test_with_the_body_in_it_it_is_left_to_the_coach(tmp_path: Path) -> None:
    squad = SQUAD.replace(
        "  - name: Ben",
        "      dip: bodyweight + 20 kg tested 2027-10-01, training max 90%\n"
        "    body mass: 60 kg\n  - name: Ben",
    )
    plan = PLAN + "  - dip: 3 x 5 at 75%\n    for: [Ann]\n"
    told = after(tmp_path, plan, ann=f"{DONE}    - dip: done\n", squad=squad)
    assert "dip, Ann: every 3 weeks 2.5 kg to the training max, and the body is part of it" in told


def test_a_copy_that_is_there_already_is_passed_over(tmp_path: Path) -> None:
    (tmp_path / "squad-2.yaml").write_text("squad: somebody's own\n", encoding="utf-8")
    after(tmp_path)
    assert "squad: squad-3.yaml\n" in (tmp_path / "week-4.yaml").read_text(encoding="utf-8")


def test_two_movements_on_a_row(tmp_path: Path) -> None:
    maxes = "60 kg tested 2027-10-01, training max 90%"
    row = f'    maxes: {{"front squat": "{maxes}", "bench pull": "60 kg tested 2027-10-01, TM  90 %"}}\n'
    squad = f"athletes:\n  - name: Ann\n{row}  - name: Ben\n"
    plan = PLAN.replace("  - barbell back squat: 3 x 5 at 60 kg\n", "    for: [Ann]\n")
    after(tmp_path, plan, ann="    - bench pull: done\n", ben="    - push-up: 8\n", squad=squad)
    new = (tmp_path / "squad-2.yaml").read_text(encoding="utf-8")
    assert new == squad.replace("TM  90 %", "training max 56.5 kg")


def test_what_is_not_typed_where_it_belongs_is_left() -> None:
    one = NewMax(
        "Ann", "bench pull", "training max 56.5 kg", Place("squad.yaml", 1, 1, 1, 5), "training max 56.5 kg"
    )
    assert put("athletes:\n", (one,), lambda _: None) == ("athletes:\n", (one,))


def test_in_a_block_with_its_squad_in_it_the_step_stays(tmp_path: Path) -> None:
    squad = "squad:\n  athletes:\n    - name: Ann\n      maxes:\n        bench pull: {}\n"
    typed = "60 kg tested 2027-10-01, training max {}"
    rule = "next: add 1 kg to the training max every week\n"
    work = "work:\n  - bench pull: 3 x 5\n    load: [75%, 80%, 85%]\n"
    top = "plan: Hall\nweeks: 3\nunit: kg\npercent of: training max\n"
    text = f"{top}{squad.format(typed.format('90%'))}{rule}{work}"
    file = tmp_path / "block.yaml"
    file.write_text(text, encoding="utf-8")
    form = tmp_path / "form.yaml"
    for plan, name, date in (
        (file, "Hall\nweek: 1", "2027-11-15"),
        (tmp_path / "block-week-2.yaml", "Hall, week 2", "2027-11-22"),
    ):
        form.write_text(
            f"record: {name}\ndate: {date}\ndone:\n  Ann:\n    - bench pull: done\n", encoding="utf-8"
        )
        assert run("keep", form, "--plan", plan).exit_code == 0
        result = run("next", plan, *(("--week", "1") if plan == file else ()))
        assert result.exit_code == 0, result.output
    for number, kg in ((2, 55), (3, 56)):
        text = (tmp_path / f"block-week-{number}.yaml").read_text(encoding="utf-8")
        assert typed.format(f"{kg} kg") in text
