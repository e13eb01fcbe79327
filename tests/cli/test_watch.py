"""`check --watch` in a process of its own: each save is answered, nothing ends it but Ctrl-C."""

import contextlib
import fcntl
import os
import pty
import re
import select
import signal
import subprocess
import sys
import termios
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from typer.testing import CliRunner

from setwright.cli import app
from setwright.watching import CLEAR

RUN = """\
import signal
signal.signal(signal.SIGINT, signal.default_int_handler)
from setwright.cli import main
main()
"""
# A shell that starts this run in the background has Ctrl-C ignored; the child listens all the same.
PATIENCE_S = 20
"""Longest wait for an answer, on a machine that does other things too."""
PLAN = "plan: A\nunit: kg\nsides: each\nwork:\n  - bench pull: 3 x 8 at 2 RIR, rest 2:00\n"
DIVIDER = "-" * 80 + "\n"


class Child:
    """A watching command, on a terminal of its own or writing into a pipe."""

    def __init__(self, folder: Path, *files: str, terminal: bool = False) -> None:
        self._out, end = pty.openpty() if terminal else os.pipe()
        self._terminal = terminal
        command = [sys.executable, "-u", "-c", RUN, "check", *files, "--watch", "--format", "short"]
        self.process = subprocess.Popen(
            command,
            cwd=folder,
            stdin=end if terminal else subprocess.DEVNULL,
            stdout=end,
            stderr=subprocess.STDOUT,
            start_new_session=True,
            preexec_fn=(lambda: fcntl.ioctl(end, termios.TIOCSCTTY, 0)) if terminal else None,  # noqa: PLW1509 - no threads here
        )
        os.close(end)
        self.text = ""

    def says(self, words: str) -> str:
        """Everything new up to some words, once they are there."""
        end = time.monotonic() + PATIENCE_S
        while words not in self.text:
            ready, _, _ = select.select([self._out], [], [], max(end - time.monotonic(), 0))
            assert ready, f"{words!r} was not said: {self.text!r}"
            self._read()
        said, _, self.text = self.text.partition(words)
        return said + words

    def _read(self) -> bool:
        more = os.read(self._out, 65536).decode().replace("\r\n", "\n")
        self.text += more
        return bool(more)

    def interrupted(self) -> int:
        """The exit status after Ctrl-C, typed where there is a terminal."""
        if self._terminal:
            os.write(self._out, b"\x03")
        else:
            self.process.send_signal(signal.SIGINT)
        status = self.process.wait(PATIENCE_S)
        with contextlib.suppress(OSError):  # a terminal whose other end is closed
            while select.select([self._out], [], [], 0)[0] and self._read():
                pass
        return status

    def close(self) -> None:
        self.process.kill()
        self.process.wait()
        os.close(self._out)


Start = Callable[..., Child]


@pytest.fixture
def start(tmp_path: Path) -> Iterator[Start]:
    children: list[Child] = []

    def begin(*files: str, terminal: bool = False) -> Child:
        children.append(Child(tmp_path, *files, terminal=terminal))
        return children[-1]

    yield begin
    for child in children:
        child.close()


def test_a_save_is_answered_and_ctrl_c_ends_cleanly(tmp_path: Path, start: Start) -> None:
    plan = tmp_path / "week.yaml"
    plan.write_text(PLAN, encoding="utf-8")
    child = start("week.yaml")
    first = child.says("Ctrl-C ends.\n\n")
    assert re.fullmatch(DIVIDER + r"Watching week\.yaml; checked at \d\d:\d\d:\d\d; Ctrl-C ends\.\n\n", first)
    plan.write_text(PLAN + "  - dip: 3 x 8 at RPE 12\n", encoding="utf-8")
    assert DIVIDER in child.says("week.yaml:6:23: error effort-off-scale: ")
    plan.write_text(PLAN + "  - dip: 3 x 8 at RPE 12\n    note: [open\n", encoding="utf-8")
    child.says("error bracket-not-closed: ")
    assert child.interrupted() == 0
    assert "Traceback" not in child.text
    assert child.text.endswith("\n\n")


def test_a_terminal_is_redrawn_and_keeps_its_cursor(tmp_path: Path, start: Start) -> None:
    plan = tmp_path / "week.yaml"
    plan.write_text(PLAN, encoding="utf-8")
    child = start("week.yaml", terminal=True)
    assert child.says("Ctrl-C ends.").startswith(f"{CLEAR}Watching week.yaml; ")
    plan.write_text(PLAN + "  - dop: 3 x 8\n", encoding="utf-8")
    said = child.says("unknown-movement")
    assert CLEAR in said
    assert child.interrupted() == 0
    assert "\033[?25l" not in said + child.text


def test_a_file_that_a_plan_names_is_watched_too(tmp_path: Path, start: Start) -> None:
    (tmp_path / "week.yaml").write_text(f"squad: squad.yaml\n{PLAN}", encoding="utf-8")
    child = start("week.yaml")
    assert "week.yaml and 1 file beside; " in child.says("can't be read beside the plan")
    (tmp_path / "squad.yaml").write_text("squad: Hall\nathletes:\n  - nam: Ann\n", encoding="utf-8")
    child.says("squad.yaml:3:5: error ")
    assert child.interrupted() == 0


def test_a_file_may_go_and_come_back(tmp_path: Path, start: Start) -> None:
    plan = tmp_path / "week.yaml"
    plan.write_text(PLAN, encoding="utf-8")
    child = start("week.yaml")
    child.says("Ctrl-C ends.")
    plan.unlink()
    child.says("week.yaml: there is no such file\n")
    plan.write_text(PLAN + "  - dop: 3 x 8\n", encoding="utf-8")
    child.says("unknown-movement")
    beside = tmp_path / "week.yaml~"
    beside.write_text(PLAN + "  - dip: 3 x 8 at RPE 12\n", encoding="utf-8")
    beside.replace(plan)
    child.says("effort-off-scale")
    assert child.interrupted() == 0


def test_a_save_in_two_steps_is_read_once_it_is_whole(tmp_path: Path, start: Start) -> None:
    plan = tmp_path / "week.yaml"
    plan.write_text(PLAN, encoding="utf-8")
    child = start("week.yaml")
    child.says("Ctrl-C ends.")
    plan.write_text("", encoding="utf-8")
    time.sleep(0.2)
    plan.write_text(PLAN + "  - dop: 3 x 8\n", encoding="utf-8")
    said = child.says("unknown-movement")
    assert said.count(DIVIDER) == 1
    assert child.interrupted() == 0


def test_a_folder_shows_plans_that_are_added(tmp_path: Path, start: Start) -> None:
    child = start(".")
    child.says("There is no plan yet.\n")
    (tmp_path / "notes.txt").write_text("no plan", encoding="utf-8")
    (tmp_path / "one.yaml").write_text(PLAN + "  - dop: 3 x 8\n", encoding="utf-8")
    child.says("one.yaml:6:5: error unknown-movement")
    (tmp_path / "two.yaml").write_text(PLAN + "  - dip: 3 x 8 at RPE 12\n", encoding="utf-8")
    said = child.says("two.yaml:6:23: error")
    assert "one.yaml:6:5: error unknown-movement" in said
    assert child.interrupted() == 0


@pytest.mark.parametrize("form", ["text", "short", "github"])
def test_each_form_but_json_is_watched(form: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def interrupt(_: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(time, "sleep", interrupt)
    plan = tmp_path / "week.yaml"
    plan.write_text(PLAN + "  - dop: 3 x 8\n", encoding="utf-8")
    result = CliRunner().invoke(app, ["check", "--watch", str(plan), "--format", form])
    assert result.exit_code == 0
    assert "is no movement of the library" in result.output


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (("week.yaml", "--format", "json"), "JSON is one document"),
        (("-",), "standard input can't be read again"),
    ],
)
def test_what_cannot_be_watched_is_one_sentence(arguments: tuple[str, ...], said: str) -> None:
    result = CliRunner().invoke(app, ["check", "--watch", *arguments])
    assert result.exit_code == 2
    assert said in result.stderr
    assert result.stderr.count("\n") == 1
