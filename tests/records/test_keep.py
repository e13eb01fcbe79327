"""``keep``: a form held against its plan, kept once, corrected by another; every fault located."""

from pathlib import Path

import pytest

from setwright.model.reader.record import read_record
from setwright.reading.gathering import Gathering
from setwright.records.fitting import Fitted, fitted
from setwright.records.keeping import slug
from tests.commands import run, said
from tests.records.plans import LIBRARY, PLAN, hall, week

HEAD = "record: Hall, week 3\nsession: Monday\ndate: 2027-11-15\ndone:\n"
ANN = f"{HEAD}  Ann:\n    - bench press: 40 x 8, 8, 7\n"


def form(folder: Path, text: str = ANN, name: str = "monday.yaml") -> Path:
    path = folder / name
    path.write_text(text, encoding="utf-8")
    return path


def fit(body: str, session: str = "Monday", text: str = PLAN) -> tuple[Fitted, list[str]]:
    read = read_record("form.yaml", f"record: A\nsession: {session}\ndate: 2027-11-15\ndone:\n{body}", "kg")
    assert read.findings == ()
    assert read.record is not None
    found = Gathering()
    joined = fitted(read.record, [week(text)], LIBRARY, found)
    assert joined is not None
    return joined, [finding.message for finding in found.findings if finding.rule != "record-on-another-day"]


def test_a_form_is_kept_under_its_date_and_day(tmp_path: Path) -> None:
    hall(tmp_path)
    paper = form(tmp_path)
    result = run("keep", paper)
    kept = tmp_path / "record" / "2027-11-15-monday.1.yaml"
    assert result.exit_code == 0
    left = "not written: dip, pull-up, front plank (Ann); anything of Ben, Cal"
    assert said(result) == f"{kept} (kept; 1 line of 1 athlete) {left}"
    assert kept.read_text(encoding="utf-8") == ANN
    assert paper.read_text(encoding="utf-8") == ANN
    assert run("check", tmp_path / "record").exit_code == 0


def test_the_same_form_is_kept_once_and_another_is_a_correction(tmp_path: Path) -> None:
    hall(tmp_path)
    run("keep", form(tmp_path))
    again = run("keep", form(tmp_path, ANN.replace("\n", "\r\n")))
    assert again.exit_code == 0
    assert said(again).endswith("(kept already, the same)")
    other = run("keep", form(tmp_path, ANN.replace("8, 7", "8, 6")))
    assert other.exit_code == 2
    assert "write `corrects: 2027-11-15-monday.1.yaml` at the top of" in said(other)
    corrected = f"corrects: 2027-11-15-monday.1.yaml\n{ANN.replace('8, 7', '8, 6')}"
    assert "monday.2.yaml (kept" in said(run("keep", form(tmp_path, corrected)))
    late = run("keep", form(tmp_path, f"{corrected}    - dip: 8\n"))
    assert late.exit_code == 2
    assert "write `corrects: 2027-11-15-monday.2.yaml` at the top of" in said(late)
    assert sorted(path.name for path in (tmp_path / "record").iterdir()) == [
        "2027-11-15-monday.1.yaml", "2027-11-15-monday.2.yaml",
    ]  # fmt: skip


@pytest.mark.parametrize("named", ["monday.yaml", "2027-11-15-monday.3.yaml", "2027-11-16-monday.1.yaml"])
def test_a_correction_of_nothing_is_asked(named: str, tmp_path: Path) -> None:
    hall(tmp_path)
    run("keep", form(tmp_path))
    result = run("keep", form(tmp_path, f"corrects: {named}\n{ANN}"))
    assert result.exit_code == 1
    assert "write `corrects: 2027-11-15-monday.1.yaml`" in said(result)


def test_a_table_is_kept_as_a_record(tmp_path: Path) -> None:
    plan = hall(tmp_path)
    run("record", plan, "--day", "Thursday", "--format", "csv")
    table = tmp_path / "record-2027-11-18-thursday.csv"
    typed = table.read_text(encoding="utf-8").replace('"3 x 8",', '"3 x 8","60 kg x 8, 8"')
    table.write_text(typed.replace("1 x max,", "1 x max,12"), encoding="utf-8")
    result = run("keep", table)
    assert result.exit_code == 0, result.output
    kept = (tmp_path / "record" / "2027-11-18-thursday.1.yaml").read_text(encoding="utf-8")
    assert kept.startswith("record: Hall, week 3\nsession: Thursday\ndate: 2027-11-18\nunit: kg\ndone:\n")
    assert "    - dip: 12\n" in kept


def test_nothing_written_is_not_kept(tmp_path: Path) -> None:
    hall(tmp_path)
    result = run("keep", form(tmp_path, f"{HEAD}  Ann:\n    - dip:\n  Ben:\n"))
    assert (result.exit_code, "nothing is written in it yet" in said(result)) == (1, True)
    assert run("keep", form(tmp_path, f"{HEAD}  Ann:\n    - note: ill\n")).exit_code == 0


def test_a_fault_is_shown_and_nothing_is_kept(tmp_path: Path) -> None:
    hall(tmp_path)
    result = run("keep", form(tmp_path, f"{HEAD}  Anne:\n    - dip: ok\n"))
    assert result.exit_code == 1
    assert "write `Ann:`, or add Anne to the squad" in said(result)
    assert "ok: done as the plan says, or with other numbers?" in said(result)
    assert "is not kept: mend what stands above and keep it again" in said(result)
    assert not (tmp_path / "record").exists()


@pytest.mark.parametrize("text", ["", "done: [\n", "- a\n"])
def test_what_is_no_record_is_said(text: str, tmp_path: Path) -> None:
    assert run("keep", form(tmp_path, text)).exit_code in (1, 2)
    assert run("keep", tmp_path / "none.yaml").exit_code == 2


def test_the_plan_is_looked_for_beside_and_above(tmp_path: Path) -> None:
    hall(tmp_path)
    forms = tmp_path / "forms"
    forms.mkdir()
    assert run("keep", form(forms, ANN.replace("Hall, week 3", "HALL week-3"))).exit_code == 0
    assert (tmp_path / "record" / "2027-11-15-monday.1.yaml").is_file()
    none = run("keep", form(forms, ANN.replace("Hall", "Hal")))
    assert none.exit_code == 2
    assert 'the nearest is "Hall, week 3"' in said(none)
    (tmp_path / "copy.yaml").write_text(PLAN, encoding="utf-8")
    two = run("keep", form(tmp_path))
    assert two.exit_code == 2
    assert "name the one that is meant with --plan FILE" in said(two)
    friday = form(tmp_path, ANN.replace("11-15", "11-19"))
    assert run("keep", friday, "--plan", tmp_path / "copy.yaml").exit_code == 0


def test_no_plan_at_all_is_one_sentence(tmp_path: Path) -> None:
    result = run("keep", form(tmp_path))
    assert said(result).startswith("setwright: no plan beside")
    broken = tmp_path / "broken.yaml"
    broken.write_text("squad: Hall\n", encoding="utf-8")
    result = run("keep", form(tmp_path), "--plan", broken)
    assert result.exit_code == 2
    assert "can't be read as a plan" in said(result)


def test_a_correction_may_mend_the_date(tmp_path: Path) -> None:
    """The record keeps its name, so that the slip counts no more."""
    hall(tmp_path)
    run("keep", form(tmp_path, ANN.replace("11-15", "11-16")))
    mended = f"corrects: 2027-11-16-monday.1.yaml\n{ANN}"
    assert "2027-11-16-monday.2.yaml (kept" in said(run("keep", form(tmp_path, mended)))


def test_each_line_finds_its_own() -> None:
    """Other names, two lines of one movement, one in place of another, what somebody does instead."""
    joined, faults = fit(
        "  Ann:\n    - dips: 8, 8, 8\n    - dip: 12\n    - plank: done\n    - row: 30 kg x 10\n"
        "    - push-up: 20\n      instead of: RDL\n",
        "Thursday",
    )
    (ann,) = joined.athletes
    names = [(line.planned and line.planned.line.name, line.done and line.done.name) for line in ann.lines]
    assert names == [
        ("Romanian deadlift", "push-up"), ("bent-over barbell row", None), ("front plank", "plank"),
        ("dip", "dips"), ("dip", "dip"), (None, "row"),
    ]  # fmt: skip
    assert faults == ["row is not planned here; it is kept beside the plan"]
    assert [line.name for line in ann.lines][1] == "bent-over barbell row"
    joined, faults = fit("  Cal:\n    - bench press: 50 kg x 8\n")
    assert faults == []
    assert [line.planned and line.planned.line.name for line in joined.athletes[0].lines] == ["push-up"]


def test_a_plan_without_a_squad_takes_any_name() -> None:
    text = "plan: A\nsessions:\n  - day: Monday\n    work:\n      - dip: 3 x 8\n"
    joined, faults = fit("  Zoe:\n    - dip: done\n", "Monday", text)
    assert faults == []
    assert joined.athletes[0].athlete is None


BLOCK = """\
plan: A
weeks: 2
sessions:
  - name: A
    work:
      - dip: 3 x 8
  - name: A
    only in: week 2
    work:
      - pull-up: 3 x 8
"""


@pytest.mark.parametrize(
    ("top", "told"),
    [
        ("session: A\n", "the record says no week, and the plan has 2"),
        ("week: 3\nsession: A\n", "the record says week 3, and the plan has 2"),
        ("week: 2\nsession: A\n", '"A" names 2 of its sessions'),
        ("week: 1\nsession: B\n", '"B" is no session of it'),
        ("week: 2\n", "the record does not say which"),
    ],
)
def test_which_session_of_a_block_is_asked(top: str, told: str, tmp_path: Path) -> None:
    hall(tmp_path, BLOCK)
    result = run("keep", form(tmp_path, f"record: A\n{top}date: 2027-11-15\ndone:\n  Zoe:\n    - dip: 8\n"))
    assert result.exit_code == 1
    assert told in said(result)


def test_the_only_session_needs_no_name(tmp_path: Path) -> None:
    hall(tmp_path, BLOCK)
    result = run(
        "keep", form(tmp_path, "record: A\nweek: 1\ndate: 2027-11-15\ndone:\n  Zoe:\n    - dip: 8\n")
    )
    assert result.exit_code == 0
    assert "2027-11-15-a.1.yaml" in said(result)


def test_a_day_without_a_date_in_the_plan_is_held_against_the_weekday(tmp_path: Path) -> None:
    hall(tmp_path, PLAN.replace("starts: 2027-11-15\n", ""))
    assert "not written" in said(run("keep", form(tmp_path)))
    result = run("keep", form(tmp_path, ANN.replace("11-15", "11-17")))
    assert result.exit_code == 0
    assert "2027-11-17 is a Wednesday, and the session is Monday's" in said(result)


@pytest.mark.parametrize(
    ("title", "part"), [("Press day, école", "press-day-ecole"), ("", "session"), ("前", "session")]
)
def test_titles_as_file_names(title: str, part: str) -> None:
    assert slug(title) == part
