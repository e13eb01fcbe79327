"""`setwright floor`: exit statuses, one-sentence stops, and what is printed where."""

import json
from pathlib import Path

import pytest

from tests.cli.test_cli import CREW
from tests.commands import run
from tests.floor.rooms import RACKS, plan, squad

WEEK = str(CREW / "week-good.yaml")


@pytest.fixture
def quiet(tmp_path: Path) -> str:
    """A plan in whose room nothing goes wrong."""
    file = tmp_path / "quiet.yaml"
    top = squad(Ada="", Bo="participation: out", Cy="")
    file.write_text(
        plan("back squat: 3 x 8 at 3 RIR, rest 2:00", top=top, gym=RACKS.format(1)), encoding="utf-8"
    )
    return str(file)


def test_nothing_in_the_way_leaves_with_0_and_conflicts_with_1(quiet: str) -> None:
    assert run("floor", quiet).exit_code == 0
    assert "Nothing stands in the way." in run("floor", quiet).output
    found = run("floor", WEEK, "--day", "Friday")
    assert found.exit_code == 1
    assert "What will go wrong (1)" in found.output


def test_every_session_or_the_one_that_is_named() -> None:
    assert run("floor", WEEK).output.count("Groups\n") == 3
    assert run("floor", WEEK, "--day", "Dip and row").output.startswith("Friday: 6 people in 2 groups")


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        ((WEEK, "--day", "Sunday"), "has no session Sunday: it has Monday, Wednesday, Friday"),
        ((WEEK, "--absent", "Tim"), "nobody in the squad is called Tim; write `--absent Tam`"),
        ((WEEK, "--without", "sled"), "the gym file has no sled; write"),
        ((str(CREW / "block.yaml"),), "has 4 weeks; say which one"),
        (("nowhere.yaml",), "nowhere.yaml"),
    ],
)
def test_what_can_not_be_done_is_one_sentence(arguments: tuple[str, ...], said: str) -> None:
    result = run("floor", *arguments)
    assert result.exit_code == 2
    assert said in result.output


def test_a_plan_with_errors_has_no_timetable(tmp_path: Path) -> None:
    file = tmp_path / "broken.yaml"
    file.write_text(plan("back squat: 3 by lots"), encoding="utf-8")
    result = run("floor", str(file))
    assert result.exit_code == 2
    assert "no timetable is made while the plan has errors" in result.output


def test_a_week_without_training_has_nothing_to_set_up(tmp_path: Path) -> None:
    file = tmp_path / "off.yaml"
    text = plan("back squat: 3 x 8").replace(
        "people: 8\n", "people: 8\nweeks: 2\nlighter weeks:\n  week 2: no training\n"
    )
    file.write_text(text, encoding="utf-8")
    result = run("floor", str(file), "--week", "2")
    assert result.exit_code == 2
    assert "there is no training in A room, week 2 of 2" in result.output


def test_json_has_no_names_unless_they_are_asked_for(quiet: str) -> None:
    plain = run("floor", quiet, "--format", "json", "--minutes", "30")
    assert "Ada" not in plain.output
    (told,) = json.loads(plain.output)["sessions"]
    assert json.loads(plain.output)["format"] == "setwright-floor/1"
    assert (told["minutes"], told["left_out"], told["groups"][0]["people"]) == (30, [], 2)
    assert told["groups"][0]["blocks"][0]["block"] == 1
    named = run("floor", quiet, "--format", "json", "--with-names")
    assert json.loads(named.output)["sessions"][0]["groups"][0]["names"] == ["Ada", "Cy"]


def test_the_sheets_of_today_are_written_where_they_are_wanted(quiet: str, tmp_path: Path) -> None:
    out = tmp_path / "prints"
    found = run("floor", quiet, "--absent", "Cy", "--out", str(out))
    assert found.exit_code == 0
    written = sorted(file.name for file in out.iterdir() if file.suffix == ".html")
    assert written == [f"a-room-{kind}-a4.html" for kind in ("1-week", "2-session", "3-rack", "4-board")]
    assert all(f"{out / name}  (" in found.output for name in written)
    assert "no station sheet: there is no circuit in it" in found.output
    assert not list(out.glob("*letter*"))
    run("floor", quiet, "--out", str(out), "--paper", "letter")
    assert len(list(out.glob("*-letter.html"))) == 4


def test_with_json_the_files_are_told_beside_it(quiet: str, tmp_path: Path) -> None:
    found = run("floor", quiet, "--out", str(tmp_path / "prints"), "--format", "json")
    assert json.loads(found.stdout)["format"] == "setwright-floor/1"
    assert "a-room-2-session-a4.html" in found.stderr


def test_sheets_of_today_are_of_one_session(tmp_path: Path) -> None:
    found = run("floor", WEEK, "--out", str(tmp_path))
    assert found.exit_code == 2
    assert "say which with --day: Monday, Wednesday, Friday" in found.output
    assert not list(tmp_path.iterdir())


def test_a_damaged_last_print_is_one_sentence(quiet: str, tmp_path: Path) -> None:
    (tmp_path / ".a-room-last-print.json").write_text("{", encoding="utf-8")
    found = run("floor", quiet, "--out", str(tmp_path))
    assert found.exit_code == 2
    assert "is damaged" in found.output
    assert not list(tmp_path.glob("*.html"))
