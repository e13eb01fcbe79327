"""Places to write at: links that lead elsewhere, folders in the way, no room, no leave, nobody listening."""

import os
import resource
import stat
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest

from tests.commands import run
from tests.security.texts import PLAN, plan_file

MINE = "mine\n"


@pytest.fixture
def plan(tmp_path: Path) -> Path:
    folder = tmp_path / "plans"
    folder.mkdir()
    return plan_file(folder, f"{PLAN}  - pull-up: 3 x 8 at 2 RIR\n")


@pytest.fixture
def precious(tmp_path: Path) -> Iterator[Path]:
    """A file elsewhere that nothing may write to."""
    path = tmp_path / "precious"
    path.write_text(MINE, encoding="utf-8")
    yield path
    assert path.read_text(encoding="utf-8") == MINE


def test_a_link_where_a_sheet_goes_is_replaced_and_not_followed(
    plan: Path, precious: Path, tmp_path: Path
) -> None:
    out = tmp_path / "out"
    out.mkdir()
    for name in ("a-1-week-a4.html", "a-table.csv"):
        (out / name).symlink_to(precious)
    (out / ".a-last-print.json").symlink_to(tmp_path / "nowhere")
    assert run("sheet", plan, "--csv", "--out", out).exit_code == 0
    assert not any(path.is_symlink() for path in out.iterdir())
    assert not (tmp_path / "nowhere").exists()


def test_a_link_where_one_file_is_written_is_replaced_and_not_followed(
    precious: Path, tmp_path: Path
) -> None:
    for command in (("schema", "gym", "--out"), ("move", "dip", "--picture")):
        link = tmp_path / "link"
        link.symlink_to(precious)
        assert run(*command, link).exit_code == 0
        assert not link.is_symlink()
        link.unlink()


def test_a_link_where_a_form_or_a_starter_goes_counts_as_there(plan: Path, tmp_path: Path) -> None:
    nowhere = tmp_path / "nowhere.yaml"
    for command, name in ((("record", plan, "--out"), "form.yaml"), (("new",), "week-1.yaml")):
        folder = tmp_path / command[0]
        folder.mkdir()
        (folder / name).symlink_to(nowhere)
        result = run(*command, folder / name if command[0] == "record" else folder)
        assert result.exit_code == 2
        assert "already" in result.stderr
    assert not nowhere.exists()


def test_a_folder_that_starts_with_a_link_is_left_as_it_was(tmp_path: Path) -> None:
    (tmp_path / "squad.yaml").symlink_to(tmp_path / "nowhere.yaml")
    assert run("new", tmp_path).exit_code == 2
    assert [path.name for path in tmp_path.iterdir()] == ["squad.yaml"]


def test_names_in_a_plan_lead_to_no_other_folder(tmp_path: Path) -> None:
    folder = tmp_path / "deep" / "plans"
    folder.mkdir(parents=True)
    hostile = """\
plan: ../../../../etc/cron.d/x
squad:
  athletes: ["../../Isla", "/srv/Tam"]
sessions:
  - name: ../../../day
    work:
      - pull-up: 3 x 8 at 2 RIR
"""
    path = plan_file(folder, hostile)
    assert run("sheet", path, "--apart", "--csv", "--out", folder / "out").exit_code == 0
    assert run("record", path).exit_code == 0
    written = {one.parent for one in tmp_path.rglob("*") if one.is_file()}
    assert written == {folder, folder / "out"}


@pytest.mark.parametrize(
    "command",
    [
        ("sheet", "PLAN", "--out", "THERE"),
        ("sheet", "PLAN", "--out", "PLAN"),
        ("record", "PLAN", "--out", "FOLDER"),
        ("schema", "plan", "--out", "FOLDER"),
        ("move", "dip", "--picture", "FOLDER"),
        ("new", "PLAN"),
        ("keep", "FOLDER"),
        ("next", "PLAN", "--out", "FOLDER"),
    ],
    ids=" ".join,
)
def test_a_folder_or_a_file_in_the_way_is_one_sentence(
    command: tuple[str, ...], plan: Path, tmp_path: Path
) -> None:
    there = tmp_path / "there"
    (there / "a-1-week-a4.html").mkdir(parents=True)
    names = {"PLAN": plan, "THERE": there, "FOLDER": tmp_path}
    result = run(*(names.get(word, word) for word in command))
    assert result.exit_code == 2
    assert (result.stderr.startswith("setwright: "), result.stderr.count("\n")) == (True, 1)


@pytest.mark.parametrize(
    "raw", [b"", b"{", b"[]", b"null", b"\xff", b"[" * 100_000, b'{"a":' * 50_000, b'{"mark": "<script>"}']
)
def test_a_last_print_that_was_tampered_with_is_one_sentence(raw: bytes, plan: Path, tmp_path: Path) -> None:
    (tmp_path / ".a-last-print.json").write_bytes(raw)
    result = run("sheet", plan, "--kind", "week", "--out", tmp_path)
    assert (result.exit_code, result.stderr.count("\n")) == (2, 1)


def test_a_pipe_in_place_of_the_last_print_is_not_waited_for(plan: Path, tmp_path: Path) -> None:
    os.mkfifo(tmp_path / ".a-last-print.json")
    assert "is a pipe" in run("sheet", plan, "--kind", "week", "--out", tmp_path).stderr


WRITING = (
    ("sheet", "week.yaml", "--out", "out"),
    ("record", "week.yaml", "--out", "form.yaml"),
    ("schema", "plan", "--out", "plan.schema.json"),
    ("new", "fresh"),
    ("move", "dip", "--picture", "dip.svg"),
)


def child(*arguments: str, folder: Path, **more: object) -> "subprocess.CompletedProcess[str]":
    return subprocess.run(  # type: ignore[call-overload,no-any-return]  # what else is asked for differs
        [sys.executable, "-m", "setwright", *arguments],
        cwd=folder,
        stderr=subprocess.PIPE,
        text=True,
        check=False,
        **more,
    )


@pytest.mark.parametrize("command", WRITING, ids=lambda one: one[0])
def test_a_full_disk_is_one_sentence_and_leaves_nothing_half_written(
    command: tuple[str, ...], plan: Path
) -> None:
    before = set(plan.parent.rglob("*"))
    done = child(
        *command,
        folder=plan.parent,
        stdout=subprocess.DEVNULL,
        preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (500, 500)),
    )
    assert done.returncode == 2
    assert (done.stderr.count("\n"), "can't be written: file too large" in done.stderr) == (1, True)
    assert all(path.is_dir() for path in set(plan.parent.rglob("*")) - before)


@pytest.mark.parametrize("command", WRITING, ids=lambda one: one[0])
def test_a_folder_without_leave_to_write_is_one_sentence(
    command: tuple[str, ...], plan: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.chdir(plan.parent)

    def refuse(*_: object, **__: object) -> None:
        raise PermissionError(13, "Permission denied")

    for name in ("open", "mkdir"):
        monkeypatch.setattr(os, name, refuse)
    result = run(*command)
    assert result.exit_code == 2
    assert "can't be written: permission denied\n" in result.stderr


@pytest.mark.parametrize(
    "command", [("check", "week.yaml"), ("move",), ("schema", "plan"), ("explain", "sources")]
)
def test_nobody_listening_ends_a_command_without_a_word(command: tuple[str, ...], plan: Path) -> None:
    end, start = os.pipe()
    os.close(end)
    done = child(*command, folder=plan.parent, stdout=start)
    os.close(start)
    assert done.stderr == ""
    assert done.returncode != 0


def test_what_is_written_is_nobodys_to_change_but_its_owners(plan: Path, tmp_path: Path) -> None:
    assert run("sheet", plan, "--out", tmp_path / "out").exit_code == 0
    assert run("new", tmp_path / "fresh").exit_code == 0
    for path in (*(tmp_path / "out").iterdir(), *(tmp_path / "fresh").iterdir()):
        assert not stat.S_IMODE(path.stat().st_mode) & (stat.S_IWGRP | stat.S_IWOTH | stat.S_IXUSR)


def test_little_memory_is_enough(plan: Path) -> None:
    """A check in 400 MB of address space, half of which Python and its packages take."""
    done = child(
        "check",
        "week.yaml",
        folder=plan.parent,
        stdout=subprocess.DEVNULL,
        preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_AS, (400_000_000, 400_000_000)),
    )
    assert (done.returncode, done.stderr) == (0, "")
