"""Reading a file whole and writing one whole: never a half-written file, never a traceback."""

import os
import re
import tempfile
from pathlib import Path

MAX_BYTES = 1_000_000
"""Largest file that is read, in bytes (choice: a plan of 10,000 lines is under 600,000)."""


_FIRST_KEYS = re.compile("^(?:plan|record):", re.MULTILINE)


class CannotRun(Exception):
    """Something stands in the way of the whole command; the text is one sentence for the coach."""


def read_text(path: Path) -> str:
    """The text of a file, without a byte-order mark and with its own line ends.

    UTF-8 is expected; UTF-16 with a mark is read too, because some editors write it.

    Raises: CannotRun, naming the file and what to do.
    """
    try:
        if path.is_dir():
            raise CannotRun(f"{path} is a folder; name a plan file in it, for example {path / 'week.yaml'}")
        with path.open("rb") as file:
            raw = file.read(MAX_BYTES + 1)
    except FileNotFoundError:
        raise CannotRun(f"{path}: there is no such file") from None
    except OSError as error:
        raise CannotRun(f"{path} can't be read: {(error.strerror or str(error)).lower()}") from None
    return decode(raw, str(path))


def decode(raw: bytes, name: str) -> str:
    """Bytes as text.

    Raises: CannotRun when they are too many or not text in UTF-8 or UTF-16 with a mark.
    """
    if len(raw) > MAX_BYTES:
        raise CannotRun(f"{name} is over {MAX_BYTES:,} bytes; a plan is never that long")
    encoding = "utf-16" if raw[:2] in {b"\xff\xfe", b"\xfe\xff"} else "utf-8-sig"
    try:
        text = raw.decode(encoding)
    except UnicodeDecodeError as error:
        line = raw[: error.start].count(b"\n") + 1
        raise CannotRun(
            f'{name}, line {line}: not UTF-8 text; in the editor choose "save with encoding UTF-8"'
        ) from None
    return text


def plans_in(path: Path) -> list[Path]:
    """The plans and records of a folder by name: YAML files with a line "plan:" or "record:".

    A file is itself. Squads and gyms are read with the plans that name them.
    """
    if not os.path.isdir(path):  # noqa: PTH112  # unlike Path.is_dir it answers for names no file can have
        return [path]
    files = sorted(one for one in path.iterdir() if one.suffix in {".yaml", ".yml"} and one.is_file())
    return [one for one in files if _FIRST_KEYS.search(read_beside(one, one.name) or "plan:")]


def read_beside(plan: Path, name: str) -> str | None:
    """The text of a file that a plan names, looked up beside the plan; None when it can't be read.

    Only ordinary files are opened: a device or a pipe named in a plan could keep the command waiting.
    """
    beside = plan.parent / name
    try:
        return read_text(beside) if os.path.isfile(beside) else None  # noqa: PTH113  # as in plans_in
    except CannotRun:
        return None


def write_whole(path: Path, text: str) -> None:
    """Write ``text`` beside ``path`` and rename it into place.

    Raises: CannotRun when the folder can't be made or written.
    """
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        handle, beside = tempfile.mkstemp(dir=path.parent, prefix=f".{path.name}.")
        try:
            with os.fdopen(handle, "w", encoding="utf-8", newline="\n") as file:
                file.write(text)
            Path(beside).chmod(0o644)
            Path(beside).replace(path)
        except BaseException:
            Path(beside).unlink(missing_ok=True)
            raise
    except OSError as error:
        raise CannotRun(f"{path} can't be written: {(error.strerror or str(error)).lower()}") from None
