"""The commands know a plan's own movements, and load the engine only when they have to."""

import json
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

from setwright.checked import check_plan
from tests.commands import run
from tests.own.weeks import plan

CREW = Path(__file__).parents[2] / "examples" / "skerrow-bay"
MOVEMENTS = """\
our cross:
  like: level cable crossover
  pulley: 1.4 m
our bench:
  like: flat barbell bench press
  loaded by: sandbag
too wide:
  like: flat barbell bench press
  grip: 150 cm
band hug:
  pattern: carry
  muscles:
    direct: [pectoralis major]
"""
WORK = """\
- our bench: 4 x 6 at 60 kg, rest 3:00
- our cross: 3 x 12 at 1 RIR
- too wide: 3 x 8 at 2 RIR
- band hug: 3 x 10 at 2 RIR
- pull-up: 4 x 6 at 2 RIR
"""
SQUAD = (
    "squad:\n  athletes:\n    - name: Ann\n      sex: female\n      height: 155 cm\n      arm length: 52 cm\n"
)


@pytest.fixture
def week(tmp_path: Path) -> Path:
    file = tmp_path / "week.yaml"
    file.write_text(plan(MOVEMENTS.split("hop:", maxsplit=1)[0], WORK) + SQUAD, encoding="utf-8")
    return file


def test_check_counts_them_and_says_which_is_not_scored(week: Path) -> None:
    report = json.loads(run("check", str(week), "--format", "json").output)
    rules = [finding["rule"] for finding in report["findings"]]
    assert "own-movement-not-scored" in rules
    assert "unknown-movement" not in rules
    assert "no-work-across-the-midline" not in rules


def test_a_copy_is_judged_like_the_movement_that_it_is_like() -> None:
    text = (CREW / "week-flawed.yaml").read_text(encoding="utf-8")
    ours = "\nmovements:\n  our bench:\n    like: bench\n"
    copied = text.replace("- flat barbell bench press", "- our bench") + ours
    assert copied.count("our bench") > 1

    def rules(plan_text: str) -> list[str]:
        files = {name: (CREW / name).read_text(encoding="utf-8") for name in ("squad.yaml", "gym.yaml")}
        return [finding.rule for finding in check_plan("week.yaml", plan_text, files.get).findings]

    assert rules(copied) == rules(text)
    assert "heavy-line-not-finished" in rules(text)


def test_read_says_them_back(week: Path) -> None:
    said = " ".join(run("read", str(week)).output.split())
    assert "our cross: like level cable crossover; pulley 1.4 m above the floor; scored" in said
    assert (
        "our bench: like flat barbell bench press; loaded by sandbag; scored, serves the sternal part" in said
    )
    assert (
        "too wide: like flat barbell bench press; grip 150 cm; not scored: the hand is out of reach" in said
    )
    assert "band hug: counted for pectoralis major, not scored" in said
    assert "1. our bench: 4 sets of 6" in said


def test_read_says_which_could_not_be_read(tmp_path: Path) -> None:
    file = tmp_path / "week.yaml"
    text = plan(
        "ours:\n  like: xyzzy\n  grip: 2 shoulder widths\n  note: try it\n"
        "mine:\n  pattern: raise\n  torso: upright\n  load pulls: down\n  path:\n"
        "    - at: start\n      plane: 0\n      up: 10\n    - at: end\n      plane: 0\n      up: 90"
    )
    file.write_text(text, encoding="utf-8")
    said = " ".join(run("read", str(file)).output.split())
    assert "ours: like xyzzy; grip 2 shoulder widths; note: try it; not read" in said
    assert "mine: its own path of 2 postures; scored, serves no part of the chest" in said
    assert "ours can't be read as written" in run("move", "ours", "--plan", str(file)).output


def test_sheets_print_them(week: Path, tmp_path: Path) -> None:
    result = run("sheet", str(week), "--out", str(tmp_path / "out"))
    assert result.exit_code == 0
    pages = " ".join(file.read_text(encoding="utf-8") for file in (tmp_path / "out").iterdir())
    assert "our cross" in pages


def test_move_explains_them_at_an_athletes_size(week: Path) -> None:
    known = ("--plan", str(week))

    def entry(*more: str) -> dict[str, Any]:
        report = json.loads(run("move", "our bench", *known, *more, "--format", "json").output)
        one: dict[str, Any] = report["movements"][0]
        return one

    model, ann = entry(), entry("--for", "ann")
    assert ann["size"] == pytest.approx(0.9, abs=0.001)
    assert ann["parts"]["sternal"]["lever_mm"] == pytest.approx(
        0.9 * model["parts"]["sternal"]["lever_mm"], abs=0.1
    )
    said = run("move", "our bench", *known, "--for", "Ann").output
    assert "whose arm is 0.90 of the model's" in said
    assert "our cross" in run("move", *known).output


@pytest.mark.parametrize(
    ("arguments", "says"),
    [
        (("our cross", "--for", "Ann"), "--for needs --plan"),
        (("our cross", "--plan", "{week}", "--for", "Bo"), "there are Ann"),
        (("our cross",), "no movement is called"),
        (("our cross", "--plan", "{week}", "--picture", "x.svg"), "draws movements of the library"),
    ],
)
def test_move_stops_with_one_sentence(week: Path, arguments: tuple[str, ...], says: str) -> None:
    result = run("move", *(one.format(week=week) for one in arguments))
    assert result.exit_code == 2
    assert says in " ".join(result.output.split())


@pytest.mark.parametrize(
    ("movements", "loaded"),
    [
        ("our bench:\n  like: flat barbell bench press", "set()"),
        ("low:\n  like: push-up\n  grip: 50 cm", "{'numpy'}"),
    ],
)
def test_the_engine_is_loaded_only_for_an_arm_path(tmp_path: Path, movements: str, loaded: str) -> None:
    file = tmp_path / "week.yaml"
    file.write_text(plan(movements), encoding="utf-8")
    code = (
        "import sys; from pathlib import Path; from setwright.checked import check_plan; "
        "check_plan('w', Path(sys.argv[1]).read_text(), {}.get); "
        "print({'numpy', 'jinja2'} & sys.modules.keys())"
    )
    done = subprocess.run([sys.executable, "-c", code, str(file)], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == loaded
