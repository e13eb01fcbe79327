"""What is checked again, and what is not."""

import os
import time
from collections.abc import Callable
from pathlib import Path

import pytest

from setwright import watching
from setwright.checked import Checked
from setwright.watching import Watched, watch

PLAN = "plan: A\nsquad: squad.yaml\nwork:\n  - bench pull: 3 x 8 at 2 RIR\n"


@pytest.fixture
def told() -> list[str]:
    return []


@pytest.fixture
def say(told: list[str]) -> Callable[[Checked], str]:
    def listed(checked: Checked) -> str:
        told.append(Path(checked.file).name)
        return f"{Path(checked.file).name}: {len(checked.findings)}\n"

    return listed


def write(path: Path, text: str) -> Path:
    path.write_text(text, encoding="utf-8")
    return path


def test_only_plans_with_a_changed_file_are_checked_again(
    tmp_path: Path, say: Callable[[Checked], str], told: list[str]
) -> None:
    write(tmp_path / "squad.yaml", "squad: Hall\nathletes: []\n")
    for name in ("a.yaml", "b.yaml"):
        write(
            tmp_path / name,
            PLAN.replace("squad: squad.yaml\n", "" if name == "b.yaml" else "squad: squad.yaml\n"),
        )
    watched = Watched([tmp_path], say)
    assert watched.report() == watched.report() == "a.yaml: 0\n\nb.yaml: 0\n"
    assert told == ["a.yaml", "b.yaml"]
    write(tmp_path / "squad.yaml", "squad: Hall\nathlete: []\n")
    assert watched.report() == "a.yaml: 1\n\nb.yaml: 0\n"
    assert told == ["a.yaml", "b.yaml", "a.yaml"]


def test_the_first_line_names_files_as_long_as_they_fit(
    tmp_path: Path, say: Callable[[Checked], str]
) -> None:
    one = write(tmp_path / "a.yaml", PLAN)
    watched = Watched([one], say)
    watched.report()
    assert " 1 file beside; checked at " in watched.head()
    many = Watched([one] * 9, say)
    many.report()
    assert many.head().startswith("Watching 1 plans and 1 file beside; checked at ")


def test_a_name_that_no_file_can_have_is_no_file(tmp_path: Path, say: Callable[[Checked], str]) -> None:
    long = tmp_path / ("x" * 5000)
    assert "can't be read: file name too long" in Watched([long], say).report()


def test_a_folder_that_may_not_be_looked_into_is_one_sentence(
    tmp_path: Path, say: Callable[[Checked], str], monkeypatch: pytest.MonkeyPatch
) -> None:
    def refuse(_: object) -> None:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(os, "scandir", refuse)
    assert Watched([tmp_path], say).report() == f"{tmp_path} can't be read: permission denied\n"


def test_a_save_is_waited_for_until_it_is_over(
    tmp_path: Path, say: Callable[[Checked], str], monkeypatch: pytest.MonkeyPatch
) -> None:
    plan = write(tmp_path / "a.yaml", PLAN)
    steps = iter([None, "", "plan: half", None, f"{PLAN}note: done\n", None, None])
    slept: list[float] = []

    def sleep(seconds: float) -> None:
        slept.append(seconds)
        text = next(steps)
        if text is not None:
            write(plan, text)

    monkeypatch.setattr(time, "sleep", sleep)
    watched = Watched([plan], say)
    watched.report()
    watched.wait()
    assert slept == [watching.POLL_S] * 2 + [watching.SETTLE_S] * 2


def test_ctrl_c_ends_without_a_word(
    tmp_path: Path, say: Callable[[Checked], str], monkeypatch: pytest.MonkeyPatch
) -> None:
    def interrupt(_: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(time, "sleep", interrupt)
    written: list[str] = []
    watch([write(tmp_path / "a.yaml", PLAN)], say, written.append, redraw=True)
    shown, end = written
    assert shown.startswith(watching.CLEAR)
    assert end == "\n"
