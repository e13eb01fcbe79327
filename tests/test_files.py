"""Whole files: read or one sentence, written whole or not at all."""

import os
from pathlib import Path

import pytest

from setwright.files import CannotRun, read_beside, read_text, write_whole


def test_a_file_that_may_not_be_opened_is_one_sentence(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    plan = tmp_path / "week.yaml"
    plan.write_text("plan: A\n", encoding="utf-8")

    def refuse(*_: object, **__: object) -> None:
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr(Path, "open", refuse)
    with pytest.raises(CannotRun, match="can't be read: permission denied"):
        read_text(plan)


def test_a_missing_file_beside_a_plan_is_none(tmp_path: Path) -> None:
    for name in ("squad.yaml", "x" * 5000, "a\0b"):
        assert read_beside(tmp_path / "week.yaml", name) is None


def test_a_file_beside_a_plan_that_is_no_text_is_none(tmp_path: Path) -> None:
    (tmp_path / "squad.yaml").write_bytes(b"caf\xe9")
    assert read_beside(tmp_path / "week.yaml", "squad.yaml") is None


def test_a_pipe_beside_a_plan_is_not_opened(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "squad.yaml")
    assert read_beside(tmp_path / "week.yaml", "squad.yaml") is None


def test_a_write_that_fails_leaves_the_old_file_and_nothing_beside(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    sheet = tmp_path / "sheet.html"
    write_whole(sheet, "old\n")

    def full(*_: object, **__: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fdopen", full)
    with pytest.raises(CannotRun, match="can't be written: no space left on device"):
        write_whole(sheet, "new\n")
    assert sheet.read_text(encoding="utf-8") == "old\n"
    assert [path.name for path in tmp_path.iterdir()] == ["sheet.html"]
