"""Reading a file whole and writing one whole: never a half-written file, never a traceback."""

import codecs
import contextlib
import errno
import os
import re
import secrets
import tempfile
from collections.abc import Iterator
from pathlib import Path
from typing import Final

MAX_BYTES = 1_000_000
"""Largest file that is read, in bytes (choice: a plan of 10,000 lines is under 600,000)."""


DOCUMENTS = (b"PK\x03\x04", b"%PDF", b"\xd0\xcf\x11\xe0", b"\x89PNG", b"\xff\xd8\xff", b"{\\rtf")
"""First bytes of spreadsheets, documents and pictures (their own file formats)."""
UTF_32 = (b"\xff\xfe\0\0", b"\0\0\xfe\xff")
EMPTY_BYTES = 0.25
"""Share of empty bytes from which bytes are UTF-16 and not UTF-8 (choice: half of Latin text in UTF-16)."""
_NO_LINKS: Final = frozenset(
    {errno.EPERM, errno.EACCES, errno.ENOSYS, errno.ENOTSUP, errno.EOPNOTSUPP, errno.EMLINK, errno.EINVAL}
)
"""What a file system says that gives a file no second name (some sticks and network drives)."""

_FIRST_KEYS = re.compile("^(?:plan|record):", re.MULTILINE)


class CannotRun(Exception):
    """Something stands in the way of the whole command; the text is one sentence for the coach.

    ``what`` it is, and the ``change`` to make; an empty one when ``what`` says it all.
    """

    def __init__(self, what: str, change: str = "") -> None:
        super().__init__(f"{what}; {change}" if change else what)
        self.what = what
        self.change = change


class NoSuchFile(CannotRun):
    """The file at ``path`` is not there."""

    def __init__(self, path: Path) -> None:
        super().__init__(f"{path}: there is no such file")
        self.path = path


def read_text(path: Path) -> str:
    """The text of a file, without a byte-order mark and with its own line ends.

    UTF-8 is expected; UTF-16 with a mark is read too, because some editors write it.

    Raises: CannotRun, naming the file and what to do; NoSuchFile of one that is not there.
    """
    try:
        if path.is_dir():
            raise CannotRun(f"{path} is a folder; name a plan file in it, for example {path / 'week.yaml'}")
        if path.is_fifo() and not path.is_relative_to("/dev"):
            raise CannotRun(f"{path} is a pipe and may never end; name `-` instead and pipe the text in")
        with path.open("rb") as file:
            raw = file.read(MAX_BYTES + 1)
    except FileNotFoundError:
        raise NoSuchFile(path) from None
    except OSError as error:
        raise CannotRun(f"{path} can't be read: {_why(error)}") from None
    return decode(raw, str(path))


def decode(raw: bytes, name: str) -> str:
    """Bytes as text.

    Raises: CannotRun when they are too many or not text in UTF-8 or UTF-16 with a mark.
    """
    if len(raw) > MAX_BYTES:
        raise CannotRun(f"{name} is over {MAX_BYTES:,} bytes; a plan is never that long")
    if raw.startswith(DOCUMENTS):
        change = "copy its lines into a text editor and save them as a .yaml file"
        raise CannotRun(f"{name} is a document, a spreadsheet or a picture, not a text file", change)
    marked = raw.startswith((b"\xff\xfe", b"\xfe\xff")) and not raw.startswith(UTF_32)
    if not marked and raw.count(0) > EMPTY_BYTES * len(raw):
        raise CannotRun(f"{name} is UTF-16 without its mark, UTF-32, or no text at all", _SAVE)
    raw = raw.removeprefix(codecs.BOM_UTF8)
    try:
        return raw.decode("utf-16" if marked else "utf-8")
    except UnicodeDecodeError as error:
        raise CannotRun(_not_text(raw, error.start, name, marked=marked), _SAVE) from None


def _why(error: OSError) -> str:
    """What the system says of an error, in lower case as the rest of a sentence."""
    return (error.strerror or str(error)).lower()


_SAVE = "save it again in the editor with the encoding UTF-8"


def _not_text(raw: bytes, at: int, name: str, *, marked: bool) -> str:
    """What bytes that can't be decoded at an offset most likely are, with the line."""
    before = raw[:at].decode("utf-16" if marked else "latin-1", "ignore")
    line = len((before + "|").splitlines())
    if marked:
        return f"{name}, line {line}: the UTF-16 text is damaged"
    letter = raw[at : at + 1].decode("cp1252", "ignore")
    known = f', "{letter}" in Windows-1252' if letter.isprintable() and letter else ""
    looks = "it looks like an 8-bit file saved by an older editor"
    return f"{name}, line {line}: not UTF-8 text; {looks} (byte {raw[at]:02X}{known})"


def plans_in(path: Path) -> list[Path]:
    """The plans and records of a folder by name: YAML files with a line "plan:" or "record:".

    A file is itself. Squads and gyms are read with the plans that name them.

    Raises: CannotRun when the folder may not be looked into.
    """
    if not os.path.isdir(path):  # noqa: PTH112  # unlike Path.is_dir it answers for names no file can have
        return [path]
    return [one for one in yaml_in(path) if _may_be_checked(one)]


def _may_be_checked(path: Path) -> bool:
    """Whether a file is a plan or a record, or nobody can tell: then the check says why."""
    try:
        return _FIRST_KEYS.search(read_text(path)) is not None
    except CannotRun:
        return True


def yaml_in(path: Path) -> list[Path]:
    """The YAML files of a folder by name; none where there is no folder.

    Raises: CannotRun when the folder may not be looked into.
    """
    try:
        with os.scandir(path) as entries:
            names = [entry.name for entry in entries if entry.is_file()]
    except (FileNotFoundError, NotADirectoryError):
        return []
    except OSError as error:
        raise CannotRun(f"{path} can't be read: {_why(error)}") from None
    return sorted(path / name for name in names if _is_yaml(Path(name)))


def read_beside(plan: Path, name: str) -> str | None:
    """The text of a file that a plan names, looked up beside the plan; None when there is none.

    Only ordinary files are opened: a device or a pipe named in a plan could keep the command waiting. What is
    no YAML file by its own name and that of the file it links to is not opened: findings quote lines, and
    somebody else's plan must not show what else lies on this machine.

    Raises: CannotRun when the file is there and can't be read.
    """
    beside = plan.parent / name
    if not os.path.isfile(beside):  # noqa: PTH113  # as in plans_in
        return None
    if not (_is_yaml(beside) and _is_yaml(beside.resolve())):
        raise CannotRun(f"{name} is no .yaml file, and no other is read beside a plan")
    return read_text(beside)


def _is_yaml(path: Path) -> bool:
    return path.suffix.lower() in (".yaml", ".yml")


def write_whole(path: Path, whole: str | bytes) -> None:
    """Write a text, in UTF-8, or bytes beside ``path`` and rename it into place.

    Raises: CannotRun when the folder can't be made or written.
    """
    try:
        path.parent.mkdir(parents=True, exist_ok=True)
        handle, beside = tempfile.mkstemp(dir=path.parent, prefix=f".{path.name}.")
        try:
            with os.fdopen(handle, "wb") as file:
                file.write(whole.encode() if isinstance(whole, str) else whole)
            Path(beside).chmod(0o644)
            Path(beside).replace(path)
        except BaseException:
            Path(beside).unlink(missing_ok=True)
            raise
    except OSError as error:
        raise CannotRun(f"{path} can't be written: {_why(error)}") from None


def write_once(path: Path, text: str, *, read_only: bool = False) -> None:
    """Write ``text`` into a file that is not there yet, and come back once it is safe on the disk.

    It is written beside and gets its name at once and whole, and only while nobody has that name: after a
    crash at any moment it is there in full or not at all. Of two who write it at once one gets the error.

    Raises: FileExistsError; CannotRun when the folder can't be made or written.
    """
    mode = 0o444 if read_only and os.name == "posix" else 0o666
    try:
        with contextlib.suppress(FileExistsError):
            path.parent.mkdir(parents=True)
        with _written_beside(path, text.encode(), mode) as beside:
            _named(beside, path, mode)
        _settled(path.parent)
        _settled(path.parent.parent)
    except FileExistsError:
        raise
    except OSError as error:
        raise CannotRun(f"{path} can't be written: {_why(error)}") from None


@contextlib.contextmanager
def _written_beside(target: Path, content: bytes, mode: int) -> Iterator[Path]:
    """A file beside the target with the content safe on the disk; gone again afterwards."""
    beside = target.with_name(f".{target.name}.{secrets.token_hex(8)}")
    handle = os.open(beside, os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0), mode)
    try:
        with os.fdopen(handle, "wb") as file:
            file.write(content)
            file.flush()
            os.fsync(file.fileno())
        yield beside
    finally:
        beside.unlink(missing_ok=True)


def _named(beside: Path, target: Path, mode: int) -> None:
    """Give the file its name, unless somebody has it. Raises: FileExistsError.

    Without second names the name is taken by an empty file first, which the whole one then replaces.
    """
    try:
        os.link(beside, target)
    except OSError as error:
        if error.errno not in _NO_LINKS:
            raise
        os.close(os.open(target, os.O_WRONLY | os.O_CREAT | os.O_EXCL, mode))
        beside.replace(target)


def _settled(folder: Path) -> None:
    """Come back once the names in a folder are safe on the disk, where the system can say so."""
    if hasattr(os, "O_DIRECTORY"):
        handle = os.open(folder, os.O_RDONLY | os.O_DIRECTORY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)
