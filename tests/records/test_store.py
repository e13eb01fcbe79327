"""Kept records: never half there, never written to again, one of two keepers is told. Processes are real."""

import errno
import os
import random
import select
import signal
import stat
import subprocess
import sys
import tempfile
import time
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.files import CannotRun, write_once
from setwright.records.store import Kept, KeptAlready, keep, kept_named, latest, same

MONDAY = Kept("2027-11-15-monday", 1)
TEXT = "record: A\ndone:\n  Ann:\n    - dip: 8, 8, 8\n" * 400
"""Longer than what a pipe or a block of a disk takes at once."""

CRASHING = """\
import io, os, pathlib, signal, sys
from setwright.records.store import Kept, keep
step, when, count = sys.argv[2], sys.argv[3], int(sys.argv[4])
def crashing(real):
    def call(*args, **kwargs):
        global count
        count -= 1
        if count == 0 and when == "before":
            os.kill(os.getpid(), signal.SIGKILL)
        done = real(*args, **kwargs)
        if count == 0:
            os.kill(os.getpid(), signal.SIGKILL)
        return done
    return call
class Half(io.FileIO):
    def write(self, data):
        if step == "write":
            super().write(data[: len(data) // 2])
            os.kill(os.getpid(), signal.SIGKILL)
        return super().write(data)
if step in ("open", "fsync", "close", "link"):
    setattr(os, step, crashing(getattr(os, step)))
elif step == "unlink":
    pathlib.Path.unlink = crashing(pathlib.Path.unlink)
os.fdopen = lambda handle, mode: io.BufferedWriter(Half(handle, "wb"))
keep(pathlib.Path(sys.argv[1]), Kept("2027-11-15-monday", 1), sys.stdin.read())
print("accepted")
"""


def crash(folder: Path, step: str, when: str, count: int) -> subprocess.CompletedProcess[str]:
    command = [sys.executable, "-c", CRASHING, str(folder), step, when, str(count)]
    return subprocess.run(command, input=TEXT, text=True, capture_output=True, check=False)


def there(folder: Path) -> list[str]:
    """The records of a folder; what was only begun is none."""
    return sorted(path.name for path in folder.glob("[!.]*")) if folder.is_dir() else []


def names(folder: Path) -> list[str]:
    """Everything in a folder."""
    return [path.name for path in folder.iterdir()]


@pytest.mark.parametrize(
    ("step", "when", "count", "kept"),
    [
        ("open", "before", 1, False), ("open", "after", 1, False), ("write", "within", 1, False),
        ("fsync", "before", 1, False), ("fsync", "after", 1, False), ("link", "before", 1, False),
        ("link", "after", 1, True), ("unlink", "before", 1, True), ("unlink", "after", 1, True),
        ("open", "after", 2, True), ("fsync", "before", 2, True), ("fsync", "after", 3, True),
    ],
)  # fmt: skip
def test_killed_at_any_step_a_record_is_whole_or_not_there(
    step: str, when: str, count: int, *, kept: bool, tmp_path: Path
) -> None:
    folder = tmp_path / "record"
    killed = crash(folder, step, when, count)
    assert killed.returncode == -signal.SIGKILL, killed.stderr
    assert there(folder) == ([MONDAY.name] if kept else [])
    if kept:
        assert (folder / MONDAY.name).read_text(encoding="utf-8") == TEXT
        with pytest.raises(KeptAlready):
            keep(folder, MONDAY, TEXT)
    else:
        assert (keep(folder, MONDAY, TEXT)).read_text(encoding="utf-8") == TEXT
    assert latest(folder) == [MONDAY]


def test_killed_at_random_nothing_accepted_is_lost(tmp_path: Path) -> None:
    """220 processes killed at any moment between their start and twice the time that keeping takes."""
    chance = random.Random(15)
    start = time.perf_counter()
    assert _accepted(tmp_path / "unharmed", 10)
    usual = time.perf_counter() - start
    told = []
    for number in range(220):
        folder = tmp_path / str(number)
        told.append(_accepted(folder, chance.uniform(0, 2 * usual)))
        kept = [path.read_text(encoding="utf-8") for path in folder.glob("[!.]*")]
        assert kept == [TEXT] or (not told[-1] and not kept)
    assert 0 < sum(told) < len(told)


def _accepted(folder: Path, killed_after_s: float) -> bool:
    """Whether a process said that it kept the record before it was killed."""
    ours, theirs = os.pipe()
    child = os.fork()
    if child == 0:
        keep(folder, MONDAY, TEXT)
        os.write(theirs, b"!")
        os._exit(0)
    os.close(theirs)
    select.select([ours], [], [], killed_after_s)
    os.kill(child, signal.SIGKILL)
    os.waitpid(child, 0)
    with os.fdopen(ours, "rb") as told:
        return told.read() == b"!"


def test_of_many_keepers_one_keeps_and_the_others_are_told(tmp_path: Path) -> None:
    texts = [f"{TEXT}# by {number}\n" for number in range(8)]

    def keeper(text: str) -> bool:
        try:
            keep(tmp_path, MONDAY, text)
        except KeptAlready:
            return False
        return True

    with ThreadPoolExecutor(8) as pool:
        kept = list(pool.map(keeper, texts))
    assert sum(kept) == 1
    assert (tmp_path / MONDAY.name).read_text(encoding="utf-8") == texts[kept.index(True)]
    assert names(tmp_path) == [MONDAY.name]


def test_a_kept_record_is_read_only_and_a_correction_stands_beside_it(tmp_path: Path) -> None:
    first = keep(tmp_path, MONDAY, "one\n")
    assert not first.stat().st_mode & (stat.S_IWUSR | stat.S_IWGRP | stat.S_IWOTH)
    second = keep(tmp_path, MONDAY.correction(), "two\n")
    assert second.name == "2027-11-15-monday.2.yaml"
    assert first.read_text(encoding="utf-8") == "one\n"
    assert latest(tmp_path) == [MONDAY.correction()]


@settings(max_examples=20)
@given(st.permutations([Kept(name, number) for name in ("a-monday", "b-friday") for number in (1, 2, 3)]))
def test_the_last_correction_counts_in_any_order_of_writing(order: list[Kept]) -> None:
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        for kept in order:
            keep(folder, kept, f"{kept.name}\n")
        assert latest(folder) == [Kept("a-monday", 3), Kept("b-friday", 3)]
        assert all(same(folder / kept.name, f"{kept.name}\n") for kept in order)


def test_names_that_are_no_records_are_passed_over(tmp_path: Path) -> None:
    for name in ("notes.yaml", ".2027-11-15-monday.1.yaml.ab12", "x.0.yaml", "x.1.yml"):
        (tmp_path / name).write_text("", encoding="utf-8")
    assert latest(tmp_path) == []
    assert latest(tmp_path / "none") == []
    assert kept_named("2027-11-15-monday.12.yaml") == Kept("2027-11-15-monday", 12)


@pytest.mark.parametrize("code", [errno.EPERM, errno.ENOTSUP])
def test_a_disk_without_second_names(code: int, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def no_link(*_: object) -> None:
        raise OSError(code, "no links here")

    monkeypatch.setattr(os, "link", no_link)
    assert keep(tmp_path, MONDAY, TEXT).read_text(encoding="utf-8") == TEXT
    with pytest.raises(KeptAlready):
        keep(tmp_path, MONDAY, "other")
    assert (tmp_path / MONDAY.name).read_text(encoding="utf-8") == TEXT
    assert names(tmp_path) == [MONDAY.name]


def test_a_full_disk_is_one_sentence(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object) -> None:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    monkeypatch.setattr(os, "link", full)
    with pytest.raises(CannotRun, match=r"monday.1.yaml can't be written: no space left on device"):
        keep(tmp_path, MONDAY, TEXT)
    assert names(tmp_path) == []


def test_other_systems_have_no_folders_to_settle(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delattr(os, "O_DIRECTORY")
    write_once(tmp_path / "a.yaml", "a\n")
    assert (tmp_path / "a.yaml").read_text(encoding="utf-8") == "a\n"


def test_what_cannot_be_read_is_not_the_same(tmp_path: Path) -> None:
    assert not same(tmp_path / "none", "a")
