"""``new``: a folder that passes as it is, and a block used again without its people."""

import subprocess
from pathlib import Path

import pytest

from setwright.files import CannotRun
from setwright.model.people import Squad
from setwright.model.reader import read_block
from setwright.model.reader import session as session_reader
from setwright.model.reader import squad as squad_reader
from setwright.model.reader.gym import KEYS as GYM_KEYS
from setwright.model.reader.keys import shown
from setwright.model.reader.top import KEYS as PLAN_KEYS
from setwright.starting.again import used_again
from setwright.starting.starter import starter_files
from tests.commands import run, said

CREW = Path(__file__).parents[2] / "examples" / "skerrow-bay"
BLOCK = """\
# Written for Ann Moss by hand.
plan: Winter block, Ann's crew   # Ann asked for it
starts: 2027-11-29
unit: kg
weeks: 2
squad:
  athletes:
  - name: Ann Moss
    maxes:
      dip: 20 kg tested 2027-10-01
  # a remark inside
  - name: Ben

sessions:
  - days to match: 3
    name: A
    private note: Ann's knee
    work:
      - flat barbell bench press: 3 x 8
        load:
          Ann Moss: 40 kg
          Ben: 60 kg
        note: slow
      - dip: 3 x 8              # not for Ben any more
        not for: [Ben]
        instead:
          Ann Moss:
          - push-up: 3 x 12
        load:
          week 1: bodyweight
          week 2: bodyweight + 5 kg
      - pull-up: 3 x 8
  - name: B
    days to match: 2
    work:
      - push-up: 3 x 12
        for: [Ann Moss]
"""
AGAIN = """\
plan: Winter block, Ann's crew   # Ann asked for it
squad: squad.yaml
unit: kg
weeks: 2

sessions:
  - name: A
    work:
      - flat barbell bench press: 3 x 8
        note: slow
      - dip: 3 x 8
        load:
          week 1: bodyweight
          week 2: bodyweight + 5 kg
      - pull-up: 3 x 8
  - name: B
    work:
      - push-up: 3 x 12
"""


def squad_of(text: str) -> Squad | None:
    week = read_block("block.yaml", text, lambda _: None).week
    return week.squad if week else None


def test_the_starter_passes_unedited(tmp_path: Path) -> None:
    result = run("new", tmp_path / "block")
    assert result.exit_code == 0
    assert "give them only to those who coach these people" in said(result)
    assert sorted(path.name for path in (tmp_path / "block").iterdir()) == [
        ".gitignore", "gym.yaml", "squad.yaml", "week-1.yaml",
    ]  # fmt: skip
    checked = run("check", tmp_path / "block" / "week-1.yaml", "--fail-on", "advice")
    assert (checked.exit_code, "No findings." in checked.output) == (0, True)
    for name in ("squad.yaml", "gym.yaml"):
        assert "nothing to mend" in said(run("check", tmp_path / "block" / name))
    assert run("record", tmp_path / "block" / "week-1.yaml", "--day", "Monday").exit_code == 0


def test_nothing_is_written_over(tmp_path: Path) -> None:
    (tmp_path / "gym.yaml").write_text("gym: Mine\n", encoding="utf-8")
    result = run("new", tmp_path)
    assert result.exit_code == 2
    assert "has gym.yaml already, and nothing is written over" in said(result)
    assert [path.name for path in tmp_path.iterdir()] == ["gym.yaml"]


def test_git_passes_over_people_and_records(tmp_path: Path) -> None:
    """Asked of git itself."""
    run("new", tmp_path / "block")
    folder = tmp_path / "block"
    (folder / "record").mkdir()
    for name in ("record/2027-11-15-monday.1.yaml", "record-2027-11-15-monday.yaml", "week-2.yaml"):
        (folder / name).write_text("", encoding="utf-8")
    subprocess.run(["git", "init", "-q", folder], check=True)
    command = ["git", "-C", str(folder), "ls-files", "--others", "--exclude-standard"]
    listed = subprocess.run(command, check=True, capture_output=True, text=True).stdout.split()
    assert listed == [".gitignore", "gym.yaml", "week-1.yaml", "week-2.yaml"]


@pytest.mark.parametrize(
    ("name", "table", "left"),
    [
        ("week-1.yaml", PLAN_KEYS, {
            "starts", "weeks", "percent of", "people", "ages", "staff", "sport", "focus", "sets a week",
            "follows", "block", "schemes", "movements", "training days", "rotate", "lighter weeks", "stages",
            "last week", "allow", "private note",
        }),
        ("squad.yaml", squad_reader.ATHLETE_KEYS, {"maxes", "note", "arm length", "shoulder breadth"}),
        ("squad.yaml", squad_reader.KEYS, {"note", "paper"}),
        ("gym.yaml", GYM_KEYS, {"plates in the room", "mixed plates", "note", "private note"}),
    ],
)  # fmt: skip
def test_the_starter_shows_the_keys(name: str, table: dict[str, object], left: set[str]) -> None:
    """All but the ones listed, which a first week does not need."""
    lines = [line.strip(" -") for line in starter_files()[name].splitlines()]
    keys = {shown(key) for key in table}
    assert {key for key in keys if not any(line.startswith(f"{key}:") for line in lines)} == left


def test_the_sessions_of_the_starter_show_theirs() -> None:
    text = starter_files()["week-1.yaml"]
    assert all(f"{key}:" in text for key in ("day", "name", "minutes", "warm-up", "work"))
    assert {"day", "name", "minutes", "work"} <= set(session_reader.KEYS)


def test_a_block_loses_its_people_and_nothing_else() -> None:
    old = squad_of(BLOCK)
    again = used_again("block.yaml", BLOCK.replace("Ann's crew", "the crew"), old)
    assert again.text == AGAIN.replace("Ann's crew   # Ann asked for it", "the crew")
    assert [gone.words for gone in again.gone] == [
        "line 1, the remark", "line 2, the remark", "line 3, starts", "lines 6-12, squad",
        "line 15, days to match", "line 17, private note", "lines 20-22, load",
        "line 24, the remark", "line 25, not for",
        "lines 26-28, instead", "line 34, days to match", "line 37, for",
    ]  # fmt: skip


def test_a_name_that_would_stay_behind_stops_it(tmp_path: Path) -> None:
    block = tmp_path / "block.yaml"
    text = BLOCK.replace("Ann's crew", "the crew").replace("name: B\n", "name: Ben's day\n")
    block.write_text(text, encoding="utf-8")
    result = run("new", tmp_path / "again", "--from", block)
    assert result.exit_code == 2
    assert "line 33: Ben is named here, in a line that the block needs" in said(result)
    assert not (tmp_path / "again").exists()


def test_braces_stop_it() -> None:
    with pytest.raises(CannotRun, match=r"line 2: `for` stands in one line with other keys"):
        used_again("b.yaml", "plan: A\nwork: [{dip: 3 x 8, for: Ann}]\n", None)


@pytest.mark.parametrize("name", ["block.yaml", "week-good.yaml"])
def test_the_examples_are_used_again(name: str, tmp_path: Path) -> None:
    squad = tmp_path / "new-squad.yaml"
    squad.write_text("squad: Others\nathletes:\n  - name: Zoe\n", encoding="utf-8")
    result = run("new", tmp_path / "again", "--from", CREW / name, "--squad", squad)
    assert result.exit_code == 0, result.output
    assert "left out: line " in said(result)
    assert "look at each before others lift them" in said(result)
    assert (tmp_path / "again" / "squad.yaml").read_text(encoding="utf-8").startswith("squad: Others\n")
    assert (tmp_path / "again" / "gym.yaml").read_bytes() == (CREW / "gym.yaml").read_bytes()
    assert run("check", tmp_path / "again" / name).exit_code == 0
    every = "".join(path.read_text(encoding="utf-8") for path in (tmp_path / "again").iterdir())
    assert not [one for one in ("Isla", "Tam", "Morag", "Struan", "Effie", "Callan", "2027") if one in every]


def test_what_cannot_be_read_is_not_used_again(tmp_path: Path) -> None:
    block = tmp_path / "block.yaml"
    block.write_text("plan: A\nwork:\n  - dip: 3 by feel\n", encoding="utf-8")
    assert "has errors" in said(run("new", tmp_path / "a", "--from", block))
    assert run("new", tmp_path / "a", "--from", tmp_path / "none.yaml").exit_code == 2
    assert run("new", tmp_path / "a", "--squad", tmp_path / "none.yaml").exit_code == 2
    block.write_text("plan: A\nwork:\n  - dip: 3 x 8\n", encoding="utf-8")
    assert "left out" not in said(run("new", tmp_path / "a", "--from", block))


FULL = """\
# Written for Ann Moss by hand.
plan: Winter block   # Ann asked for it
weeks: 2
starts: 2027-11-29
unit: kg
gym: gym.yaml
movements: ours.yaml
lighter weeks:
  week 2: half the sets
stages:
  light:
    enter when: two weeks without a bad day
    signed off: Dr Quill, 2027-10-01
private note: Ann has asthma
squad:
  athletes:
    - name: Ann Moss
      body mass: 61.5 kg
      maxes:
        dip: 20 kg tested 2027-10-02
      limits:
        - arm behind at most: 90 deg
          until: cleared
          set by: nurse Pellow
      private note: sees a clinic
    - name: Ben
      avoid: [box jump]
  groups:
    juniors: [Ben]
sessions:
  - day: Monday
    days to match: 3
    private note: the mother drives
    work:
      - flat barbell bench press: 3 x 8     # Ann: 41
        note: slow
        load:
          juniors: 42.5 kg
          Ann Moss: 50 kg
        private note: watch the shoulder
      - superset:
          - dip: 3 x 8
            instead:
              Ann Moss:
                - push-up: 3 x 12
          - our own row: 3 x 8
        not for: [juniors]
"""
GYM = """\
# Ann Moss has the key
gym: Old hall
unit: kg
benches: 2          # Ben lent one
private note: the door code is 1234
"""
OURS = """\
our own row:
  like: bodyweight row   # Ann's own
  note: feet on the floor
"""
THEIRS = (
    "Ann", "Moss", "Ben", "juniors", "2027", "Quill", "asthma", "61.5", "20 kg", "deg", "Pellow", "clinic",
    "box jump", "mother", "41", "42.5", "50 kg", "shoulder", "push-up", "1234",
)  # fmt: skip
"""Names, dates, maxes, limits and private things of the block above and of its files."""


def full(folder: Path, gym: str = GYM) -> Path:
    """The block with its files beside it, which must be without errors of the text."""
    for name, text in (("block.yaml", FULL), ("gym.yaml", gym), ("ours.yaml", OURS)):
        (folder / name).write_text(text, encoding="utf-8")
    return folder / "block.yaml"


def test_nothing_of_the_old_people_goes_along(tmp_path: Path) -> None:
    """Every name, date, max, limit and private word is looked for in every file of the new folder."""
    block, squad = full(tmp_path), tmp_path / "new-squad.yaml"
    squad.write_text("squad: Spring\nathletes:\n  - name: Wren\n", encoding="utf-8")
    result = run("new", tmp_path / "spring", "--from", block, "--squad", squad)
    assert result.exit_code == 0, result.output
    files = {path.name: path.read_text(encoding="utf-8") for path in (tmp_path / "spring").iterdir()}
    assert sorted(files) == [".gitignore", "block.yaml", "gym.yaml", "ours.yaml", "squad.yaml"]
    typed = f"{FULL}{GYM}{OURS}"
    assert [word for word in THEIRS if word not in typed] == []
    assert [(name, word) for name, text in files.items() for word in THEIRS if word in text] == []
    assert files["gym.yaml"] == "gym: Old hall\nunit: kg\nbenches: 2\n"
    assert files["ours.yaml"] == "our own row:\n  like: bodyweight row\n  note: feet on the floor\n"
    assert "gym.yaml, line 1, the remark; gym.yaml, line 4, the remark; gym.yaml, line 5, private" in said(
        result
    )
    read = run("read", tmp_path / "spring" / "block.yaml")
    assert read.exit_code == 0, read.output


def test_a_name_in_a_file_that_goes_along_is_said(tmp_path: Path) -> None:
    block = full(tmp_path, "gym: Old hall\nnote: Ann Moss has the key\n")
    result = run("new", tmp_path / "spring", "--from", block)
    assert result.exit_code == 2
    assert "gym.yaml, line 2: Ann Moss is named here, in a line that the block needs" in said(result)
    assert not (tmp_path / "spring").exists()
