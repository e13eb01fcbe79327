"""The command line as a coach meets it: exit statuses, one-sentence stops, nothing heavy loaded."""

import gc
import json
import os
import runpy
import subprocess
import sys
from pathlib import Path
from typing import get_args, get_type_hints

import pytest
from typer.testing import CliRunner

from setwright import __version__
from setwright.cli import MODULES, app, main
from setwright.commands.sheets import sheet
from setwright.library.rows import load_rows
from setwright.rules.no_cure_in_this_gym import BAD as NO_CURE
from setwright.sheets.kinds import KINDS, LARGE
from tests.commands import run

ROOT = Path(__file__).parents[2]
CREW = ROOT / "examples" / "skerrow-bay"
NEVER_FOR_CHECK = {"numpy", "jinja2", "weasyprint", "setwright.engine", "setwright.sheets"}


def test_version() -> None:
    assert run("--version").output == f"setwright {__version__}\n"


def test_help_says_in_one_whole_line_what_each_command_does() -> None:
    commands = run("--help").output.split("Commands:\n")[1].splitlines()
    assert [line.split()[0] for line in commands] == list(MODULES)
    assert all(line.endswith(".") and not line.endswith("...") for line in commands)


def test_a_plan_in_the_place_of_a_command_is_answered_with_the_line_to_type() -> None:
    result = run("thursday.yaml")
    assert result.exit_code == 2
    assert "Error: a command comes first: setwright check thursday.yaml" in result.stderr
    assert "Did you mean 'check'" in run("chek", "thursday.yaml").stderr


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (("sheet", "a.yaml", "--kind", "card"), "--kind': 'card' is not one of 'all', 'coach'"),
        (("floor", "a.yaml", "--minutes", "x"), "--minutes': "),
        (("floor", "a.yaml", "--minutes", "0"), "--minutes': "),
    ],
)
def test_a_value_that_does_not_fit_is_told_in_no_library_s_words(
    arguments: tuple[str, ...], words: str
) -> None:
    result = run(*arguments)
    assert result.exit_code == 2
    assert f"Invalid value for '{words}" in result.stderr
    assert not any(library in result.stderr for library in ("Value error", "Input should", "parse string"))


def test_each_command_shows_help_with_an_example() -> None:
    for command in ("check", "read", "move", "sheet", "swap", "explain", "schema", "floor"):
        result = run(command, "--help")
        assert result.exit_code == 0
        assert f"Example:  setwright {command}" in result.output


def test_the_good_week_is_silent_and_leaves_with_0() -> None:
    result = run("check", str(CREW / "week-good.yaml"), "--format", "json")
    assert result.exit_code == 0
    assert json.loads(result.output)["findings"] == []


def test_the_flawed_week_has_each_midline_fault_once_on_its_session() -> None:
    result = run("check", str(CREW / "week-flawed.yaml"), "--format", "json")
    assert result.exit_code == 1
    report = json.loads(result.output)
    lines = (CREW / "week-flawed.yaml").read_text(encoding="utf-8").splitlines()
    found = {f["rule"]: f for f in report["findings"]}
    assert len(found) == len(report["findings"])
    unfinished = found["heavy-line-not-finished"]
    assert "flat barbell bench press" in lines[unfinished["line"] - 1]
    assert "level cable crossover" in unfinished["change"]
    across = found["no-work-across-the-midline"]
    assert across["where"] == "Thursday"
    assert across["line"] > lines.index("  - day: Thursday")
    assert "low-to-high cable crossover" in across["change"]
    for finding in report["findings"]:
        assert finding["why"]
        assert finding["change"]
        assert finding["source"]


@pytest.mark.parametrize("command", ["check", "read", "sheet"])
@pytest.mark.parametrize(
    ("name", "said"), [("nowhere.yaml", "there is no such file"), ("latin.yaml", "UTF-8")]
)
def test_what_cannot_be_read_is_one_sentence_and_2(
    command: str, name: str, said: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "latin.yaml").write_bytes("plan: caf\xe9\n".encode("latin-1"))
    monkeypatch.chdir(tmp_path)
    result = run(command, name)
    assert result.exit_code == 2
    assert said in result.stderr
    assert result.stderr.count("\n") == 1


@pytest.mark.parametrize("command", ["check", "read", "sheet", "loads", "floor", "next", "review", "keep"])
def test_a_misspelt_file_is_answered_with_the_nearest_one_in_its_folder(command: str, tmp_path: Path) -> None:
    for name in ("week-1.yaml", "squad.yaml", "weak-1.txt"):
        (tmp_path / name).write_text("plan: A\n", encoding="utf-8")
    typed, meant = tmp_path / "weak-1.yml", tmp_path / "week-1.yaml"
    result = run(command, str(typed))
    assert result.exit_code == 2
    assert result.stderr == f"setwright: {typed}: there is no such file; the nearest is {meant}\n"


@pytest.mark.parametrize("name", ["a.yaml", "nowhere/week-1.yaml", "squad.yaml/week-1.yaml"])
def test_no_file_is_proposed_that_is_not_like_the_one_that_was_named(name: str, tmp_path: Path) -> None:
    (tmp_path / "squad.yaml").write_text("squad: A\n", encoding="utf-8")
    assert "nearest" not in run("check", str(tmp_path / name)).stderr


def test_a_folder_is_no_plan_to_read(tmp_path: Path) -> None:
    result = run("read", str(tmp_path))
    assert result.exit_code == 2
    assert "is a folder; name a plan file in it" in result.stderr


def test_a_file_too_large_is_refused(tmp_path: Path) -> None:
    large = tmp_path / "large.yaml"
    large.write_bytes(b"#" * 1_000_001)
    assert "a plan is never that long" in run("check", str(large)).stderr


def test_a_plan_from_an_editor_that_writes_utf_16(tmp_path: Path) -> None:
    plan = tmp_path / "week.yaml"
    plan.write_text("plan: A\nwork:\n  - pull-up: 3 x 8\n", encoding="utf-16")
    assert "pull-up" in run("read", str(plan)).output


def test_move_without_a_name_lists_and_with_an_unknown_name_asks() -> None:
    assert "flat barbell bench press" in run("move").output
    result = run("move", "flat barbel bench pres")
    assert result.exit_code == 2
    assert "flat barbell bench press" in result.stderr


def test_move_takes_words_without_quotes_for_one_movement_where_they_name_no_several() -> None:
    assert run("move", "flat", "barbell", "bench", "press").output == run("move", "bench press").output
    assert run("move", "bench", "dip").output == run("move", "flat bench press", "dip").output
    assert 'no movement is called "bnech"' in run("move", "bnech", "press").stderr


def test_move_draws_one_picture(tmp_path: Path) -> None:
    picture = tmp_path / "press.svg"
    assert run("move", "dip", "--picture", str(picture)).exit_code == 0
    assert picture.read_text(encoding="utf-8").startswith("<svg")
    assert run("move", "dip", "push-up", "--picture", str(picture)).exit_code == 2
    assert "nothing to draw" in run("move", "goblet squat", "--picture", str(picture)).stderr
    (tmp_path / "file").write_text("", encoding="utf-8")
    assert "can't be written" in run("move", "dip", "--picture", str(tmp_path / "file" / "a.svg")).stderr


def test_move_json_of_everything() -> None:
    moves = json.loads(run("move", "--format", "json").output)
    assert moves["format"] == "setwright-move/1"
    assert len(moves["movements"]) == len(load_rows())


def test_sheets_are_written_whole_and_named(tmp_path: Path) -> None:
    result = run("sheet", str(CREW / "week-good.yaml"), "--out", str(tmp_path))
    assert result.exit_code == 0
    written = [line.split("  ")[0] for line in result.output.splitlines() if ".html" in line]
    assert sorted(map(str, tmp_path.glob("*.html"))) == written
    assert [path.name for path in tmp_path.glob(".*")] == [".autumn-block-week-3-last-print.json"]
    (tmp_path / "file").write_text("", encoding="utf-8")
    assert run("sheet", str(CREW / "week-good.yaml"), "--out", str(tmp_path / "file")).exit_code == 2


FOR_NOBODY = """\
plan: Holiday
squad:
  athletes:
    - name: Isla
work:
  - pull-up: 3 x 5
    not for: [Isla]
"""


def test_a_kind_without_anything_to_print_is_said(tmp_path: Path) -> None:
    plan = tmp_path / "week.yaml"
    plan.write_text(FOR_NOBODY, encoding="utf-8")
    everything = run("sheet", str(plan), "--out", str(tmp_path / "out"))
    assert everything.exit_code == 0
    assert "no session sheet: there is nothing to do in it for anyone who trains\n" in everything.output
    assert (tmp_path / "out" / "holiday-1-week-a4.html").exists()
    assert not list((tmp_path / "out").glob("*-session-*"))
    alone = run("sheet", str(plan), "--kind", "session", "--out", str(tmp_path / "none"))
    assert alone.exit_code == 2
    assert alone.stderr == "setwright: no session sheet: there is nothing to do in it for anyone who trains\n"
    assert not (tmp_path / "none").exists()


def test_a_paper_that_a_kind_does_not_come_on_is_said(tmp_path: Path) -> None:
    wanted = ("--kind", "week", "--paper", "a3")
    result = run("sheet", str(CREW / "week-good.yaml"), *wanted, "--out", str(tmp_path))
    assert result.exit_code == 2
    assert result.stderr == "setwright: a week sheet comes on a4 or letter, not on a3\n"


def test_the_command_offers_every_kind_of_the_table() -> None:
    offered = get_args(get_args(get_type_hints(sheet, include_extras=True)["kind"])[0])
    assert set(offered) == {"all", "coach", *KINDS} - set(LARGE.values())


def test_large_print_takes_the_place_of_the_session_sheet(tmp_path: Path) -> None:
    wanted = ("--kind", "session", "--large", "--out", str(tmp_path))
    assert run("sheet", str(CREW / "week-good.yaml"), *wanted).exit_code == 0
    assert [path.name for path in tmp_path.glob("*.html")] == ["autumn-block-week-3-2-session-large-a4.html"]


def test_no_sheet_of_a_plan_with_errors(tmp_path: Path) -> None:
    plan = tmp_path / "week.yaml"
    plan.write_text("plan: A\nwork:\n  - pull-up: 3 x 8 at RPE 12\n", encoding="utf-8")
    result = run("sheet", str(plan), "--out", str(tmp_path / "out"))
    assert result.exit_code == 2
    assert "no sheet is written while the plan has errors" in result.stderr
    assert not (tmp_path / "out").exists()


def test_short_lines_and_annotations_name_the_place() -> None:
    flawed = str(CREW / "week-flawed.yaml")
    assert f"{flawed}:17:9: gap heavy-line-not-finished: " in run("check", flawed, "--format", "short").output
    assert "::warning file=" in run("check", flawed, "--format", "github").output


def test_several_plans_in_one_run() -> None:
    plans = [str(CREW / name) for name in ("week-good.yaml", "week-flawed.yaml")]
    report = json.loads(run("check", *plans, "--format", "json").output)
    assert report["files"] == plans
    assert {finding["file"] for finding in report["findings"]} == {plans[1]}


def test_a_folder_stands_for_the_plans_and_records_in_it(tmp_path: Path) -> None:
    report = json.loads(run("check", str(CREW), "--format", "json").output)
    assert [Path(name).name for name in report["files"]] == [
        "block.yaml",
        "circuit.yaml",
        "record-week-3-monday.yaml",
        "week-flawed.yaml",
        "week-good.yaml",
    ]
    assert "there is no plan in" in run("check", str(tmp_path)).stderr


def test_a_folder_that_may_not_be_looked_into_is_one_sentence(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(_: object) -> None:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(os, "scandir", refuse)
    result = run("check", str(tmp_path))
    assert result.exit_code == 2
    assert result.stderr == f"setwright: {tmp_path} can't be read: permission denied\n"


def test_a_plan_on_standard_input() -> None:
    text = (CREW / "week-flawed.yaml").read_text(encoding="utf-8").replace("squad: squad.yaml\n", "")
    text = text.replace("gym: gym.yaml\n", "")
    result = CliRunner().invoke(app, ["check", "-", "--format", "short"], input=text)
    assert result.exit_code == 1
    assert result.output.startswith("-:15:9: gap heavy-line-not-finished: ")
    assert "not UTF-8" in CliRunner().invoke(app, ["check", "-"], input=b"caf\xe9").stderr


def test_the_program_itself_runs(capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "argv", ["setwright", "--version"])
    with pytest.raises(SystemExit) as left:
        main()
    gc.enable()
    gc.unfreeze()
    assert left.value.code == 0
    assert capsys.readouterr().out == f"setwright {__version__}\n"


def test_the_program_runs_as_a_module(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(sys, "argv", ["-m", "--version"])
    with pytest.raises(SystemExit) as left:
        runpy.run_module("setwright", run_name="__main__")
    gc.enable()
    assert left.value.code == 0
    assert capsys.readouterr().out == f"setwright {__version__}\n"


def test_fail_on_chooses_what_counts() -> None:
    flawed = str(CREW / "week-flawed.yaml")
    assert run("check", flawed, "--fail-on", "error").exit_code == 0
    assert run("check", flawed, "--fail-on", "advice").exit_code == 1


def test_explain_tells_a_rule() -> None:
    assert run("explain", "half-a-pair").output.startswith("# half-a-pair\n")


def test_explain_an_unknown_rule_names_the_nearest() -> None:
    result = run("explain", "heavy-line-unfinished")
    assert result.exit_code == 2
    assert "heavy-line-not-finished" in result.stderr


@pytest.mark.parametrize(
    ("arguments", "needed"),
    [
        (["check", str(CREW / "week-flawed.yaml")], "setwright.checked"),
        (["schema", "plan"], "setwright.schema"),
    ],
)
def test_nothing_heavy_is_loaded(arguments: list[str], needed: str) -> None:
    code = (
        "import sys; from setwright.cli import app, main\n"
        f"try: app({arguments!r})\n"
        "except SystemExit: pass\n"
        "print('\\n'.join(sys.modules), file=sys.stderr)"
    )
    loaded = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, check=True
    ).stderr.split()
    assert needed in loaded
    assert not NEVER_FOR_CHECK & set(loaded)


def test_a_schema_is_printed_or_written_with_the_line_that_switches_it_on(tmp_path: Path) -> None:
    printed = run("schema", "gym")
    assert json.loads(printed.output)["title"] == "Setwright gym"
    target = tmp_path / "gym.schema.json"
    written = run("schema", "gym", "--out", str(target))
    assert target.read_text(encoding="utf-8") == printed.output
    assert written.output.endswith(
        "(first line of a gym beside it: # yaml-language-server: $schema=gym.schema.json)\n"
    )
    (tmp_path / "file").write_text("", encoding="utf-8")
    stopped = run("schema", "gym", "--out", str(tmp_path / "file" / "gym.json"))
    assert stopped.exit_code == 2
    assert "can't be written" in stopped.stderr
    assert run("schema", "timetable").exit_code == 2


def test_the_line_that_switches_a_schema_on_is_a_remark_to_check(tmp_path: Path) -> None:
    plan = tmp_path / "week.yaml"
    line = "# yaml-language-server: $schema=plan.schema.json\n"
    plan.write_text(line + "plan: A\naim: return\nwork:\n  - pull-up: 3 x 8\n", encoding="utf-8")
    assert run("check", str(plan)).exit_code == 0


FAULTS = """\
plan: A pasted week
unit: kg
sides: each
sessions:
  - day: Munday
    work:
      - flat barbel bench pres: 3 x 8
      - pull-up: 3 x 8 #heavy
      - {dip: 3 x 8, note: slow, tight}
      - bench pull: 3 x 8 with feeling
      - goblet squat: 3 x 10-Aug
      - push-up: 3 x 8 at RPE 12
      - front squat: 3 x 3 at 110%
      - face pull: 3 x 12
        rset: 60 s
        note: one
        note: two
      - hip thrust:\u00a03 x 8
      - barbell curl:\t3 x 8
      - leg press: 3 x 8
        effort: @8
      - calf raise: 3 x 8
        load: %75
"""


def test_every_fault_of_a_bad_morning_in_one_run(tmp_path: Path) -> None:
    plan = tmp_path / "week.yaml"
    plan.write_text(FAULTS, encoding="utf-8")
    result = run("check", str(plan), "--format", "json")
    assert result.exit_code == 1
    told: dict[int, list[dict[str, str]]] = {}
    for finding in json.loads(result.output)["findings"]:
        told.setdefault(finding["line"], []).append(finding)
        assert finding["why"]
        assert finding["change"]
        assert finding["source"]
    for line in (5, 7, 8, 9, 10, 11, 12, 13, 15, 17, 18, 19, 21, 23):
        assert line in told, f"line {line} went unnoticed"


BLOCK = str(CREW / "block.yaml")


def test_a_sheet_of_a_block_is_that_of_one_week(tmp_path: Path) -> None:
    result = run("sheet", BLOCK, "--week", "3", "--out", str(tmp_path))
    assert result.exit_code == 0
    assert sorted(path.name for path in tmp_path.glob("*.html"))[:2] == [
        "winter-block-week-3-1-week-a4.html",
        "winter-block-week-3-2-session-a4.html",
    ]
    page = (tmp_path / "winter-block-week-3-2-session-a4.html").read_text(encoding="utf-8")
    assert "Winter block, week 3 of 4" in page
    assert "Monday 13 December 2027" in page
    assert "24\N{NO-BREAK SPACE}kg" in page


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (["sheet", BLOCK], "has 4 weeks; say which one, from --week 1 to --week 4"),
        (["sheet", BLOCK, "--week", "5"], "has no week 5: it has 4 weeks"),
        (["read", BLOCK, "--week", "0"], "has no week 0: it has 4 weeks"),
        (["read", str(CREW / "week-good.yaml"), "--week", "2"], "has no week 2: it has one week"),
    ],
)
def test_a_week_that_is_not_there_is_one_sentence(arguments: list[str], said: str, tmp_path: Path) -> None:
    result = run(*arguments, *(["--out", str(tmp_path)] if arguments[0] == "sheet" else []))
    assert result.exit_code == 2
    assert said in result.stderr
    assert result.stderr.count("\n") == 1


def test_there_is_no_sheet_of_a_week_without_training(tmp_path: Path) -> None:
    plan = tmp_path / "week.yaml"
    plan.write_text(
        "plan: A\nweeks: 2\nlighter weeks:\n  week 2: no training\nwork:\n  - pull-up: 3 x 8\n",
        encoding="utf-8",
    )
    result = run("sheet", str(plan), "--week", "2", "--out", str(tmp_path / "out"))
    assert result.exit_code == 2
    assert "there is no training in week 2, so nothing to print" in result.stderr


def test_read_says_a_block_or_one_week_of_it() -> None:
    assert "week 4: not done, on purpose" in run("read", BLOCK).output
    result = run("read", BLOCK, "--week", "4")
    assert result.exit_code == 0
    assert "Winter block, week 4 of 4" in result.output
    assert "front plank" not in result.output
    assert run("read", str(ROOT / "pyproject.toml"), "--week", "1").exit_code == 1


def test_swap_proposes_for_everybody_and_for_one_and_leaves_the_file_alone(tmp_path: Path) -> None:
    flawed = CREW / "week-flawed.yaml"
    before = flawed.read_bytes()
    result = run("swap", str(flawed))
    assert result.exit_code == 0
    assert "level cable crossover: 3 x 12 at 1 RIR" in result.output
    assert flawed.read_bytes() == before
    assert run("swap", str(flawed), "--for", "Callan").exit_code == 0
    nobody = run("swap", str(flawed), "--for", "Kallan")
    assert nobody.exit_code == 2
    assert "did you mean Callan?" in nobody.output
    plan = tmp_path / "week.yaml"
    plan.write_text(NO_CURE, encoding="utf-8")
    assert run("swap", str(plan)).exit_code == 1
    block = run("swap", BLOCK)
    assert block.exit_code == 0
    assert "Winter block, week 1 of 4: no gap is open" in block.output
    assert "Winter block, week 2 of 4" in run("swap", BLOCK, "--week", "2").output
    assert run("swap", BLOCK, "--week", "5").exit_code == 2


def test_the_summary_of_a_week_and_of_one_week_of_a_block() -> None:
    flawed = run("check", str(CREW / "week-flawed.yaml"), "--summary")
    assert flawed.exit_code == 1
    assert flawed.output.startswith("Autumn block, week 3, first draft, in half a minute.")
    week = run("check", str(CREW / "block.yaml"), "--summary", "--week", "4")
    assert (week.exit_code, week.output.splitlines()[0]) == (
        0,
        "Winter block, week 4 of 4, in half a minute. For the coach alone: it names",
    )


def test_the_summary_of_several_plans_and_of_what_is_no_plan(tmp_path: Path) -> None:
    broken = tmp_path / "broken.yaml"
    broken.write_text("plan: [\n")
    both = run("check", str(CREW / "week-good.yaml"), str(broken), "--summary")
    assert both.exit_code == 1
    assert "8. What changed?" in both.output
    assert f"\n\n{broken}: nothing of this plan could be read" in both.output


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (
            ("week-good.yaml", "--summary", "--format", "json"),
            "--summary names athletes and is for",
        ),
        (("block.yaml", "--summary"), "has 4 weeks; say which one, from --week 1 to --week 4"),
        (("block.yaml", "--summary", "--week", "5"), "has no week 5: it has 4 weeks"),
        (("block.yaml", "--week", "2"), "--week goes with --summary"),
    ],
)
def test_a_summary_that_can_not_be_told(arguments: tuple[str, ...], said: str) -> None:
    file, *options = arguments
    result = run("check", str(CREW / file), *options)
    assert result.exit_code == 2
    assert said in result.stderr


def test_the_summary_is_a_sheet_of_its_own(tmp_path: Path) -> None:
    result = run(
        "sheet", str(CREW / "block.yaml"), "--week", "2", "--kind", "summary", "--out", str(tmp_path)
    )
    assert result.exit_code == 0
    assert [file.name for file in tmp_path.glob("*.html")] == ["winter-block-week-2-8-summary-a4.html"]
    run("sheet", str(CREW / "week-good.yaml"), "--out", str(tmp_path / "all"))
    assert not list((tmp_path / "all").glob("*summary*"))
