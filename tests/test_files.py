"""Whole files: read or one sentence, written whole or not at all."""

import os
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from setwright.files import CannotRun, decode, read_beside, read_text, write_whole


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


def test_a_file_beside_a_plan_that_is_no_text_says_so(tmp_path: Path) -> None:
    (tmp_path / "squad.yaml").write_bytes(b"caf\xe9")
    with pytest.raises(CannotRun, match=r"squad\.yaml, line 1: not UTF-8 text"):
        read_beside(tmp_path / "week.yaml", "squad.yaml")


PLAN = "plan: Überzug\nnote: 3 × 8\n"


@pytest.mark.parametrize(
    "raw",
    [
        PLAN.encode(),
        PLAN.encode("utf-8-sig"),
        b"\xff\xfe" + PLAN.encode("utf-16-le"),
        b"\xfe\xff" + PLAN.encode("utf-16-be"),
    ],
)
def test_the_encodings_of_usual_editors_are_read(raw: bytes) -> None:
    assert decode(raw, "week.yaml") == PLAN


def test_line_ends_of_every_kind_arrive_as_they_are() -> None:
    assert decode(b"a\r\nb\rc\n", "week.yaml") == "a\r\nb\rc\n"


@pytest.mark.parametrize(
    ("raw", "said"),
    [
        (
            "plan: A\nnote: coach’s own\n".encode("cp1252"),
            'older editor (byte 92, "’" in Windows-1252); save it again in the editor with the encoding UTF',
        ),
        (
            "a: 1\r\nb: 2\rc: Überzug\n".encode("latin-1"),
            "line 3: not UTF-8 text; it looks like an 8-bit file",
        ),
        ("plan: Überzug\n".encode("gb18030"), "older editor (byte 81); save it again"),
        (
            PLAN.encode("utf-16-le"),
            "week.yaml is UTF-16 without its mark, UTF-32, or no text at all; save it",
        ),
        (PLAN.encode("utf-16-be"), "UTF-16 without its mark"),
        (PLAN.encode("utf-32"), "UTF-32"),
        (b"\0" * 500, "no text at all"),
        (b"\xff\xfe" + PLAN.encode("utf-16-le")[:-1], "line 2: the UTF-16 text is damaged"),
        (
            b"PK\x03\x04\x14\0",
            "a spreadsheet or a picture, not a text file; copy its lines into a text editor",
        ),
        (b"x" * 1_000_001, "week.yaml is over 1,000,000 bytes; a plan is never that long"),
    ],
)
def test_bytes_that_are_no_text_are_named_with_what_to_do(raw: bytes, said: str) -> None:
    with pytest.raises(CannotRun) as stop:
        decode(raw, "week.yaml")
    assert said in str(stop.value)


@given(st.binary(max_size=60))
def test_any_bytes_are_text_or_one_sentence(raw: bytes) -> None:
    try:
        said = decode(raw, "week.yaml")
    except CannotRun as stop:
        said = str(stop).removeprefix("week.yaml")
        assert said != str(stop)  # noqa: PT017 - either outcome is right
        assert len(said.splitlines()) == 1
    else:
        assert decode(said.encode("utf-8-sig"), "week.yaml") == said


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
