"""Where records are kept: one file a session and correction, never half written, never written to again."""

import os
import re
from pathlib import Path
from typing import Final, NamedTuple

from setwright.files import CannotRun, read_text, write_once

FOLDER: Final = "record"
"""The folder of the kept records, beside the plan."""

_NAME: Final = re.compile(r"(?P<session>.+)\.(?P<number>[1-9]\d{0,5})\.yaml")


class Kept(NamedTuple):
    """A kept record: the session it is of ("2027-10-18-monday"), and which writing of it, from 1."""

    session: str
    number: int

    @property
    def name(self) -> str:
        """Its file name."""
        return f"{self.session}.{self.number}.yaml"

    def correction(self) -> "Kept":
        """The record that takes its place."""
        return self._replace(number=self.number + 1)


class KeptAlready(Exception):
    """Somebody kept this record before; ``kept`` is theirs."""

    def __init__(self, kept: Kept) -> None:
        super().__init__(f"{kept.name} is kept already")
        self.kept = kept


def kept_named(name: str) -> Kept | None:
    """The record that a file name means; None when it is none."""
    match = _NAME.fullmatch(name)
    return Kept(match["session"], int(match["number"])) if match else None


def latest(folder: Path) -> list[Kept]:
    """The last writing of every record in a folder, by name; empty when there is no folder."""
    found: dict[str, Kept] = {}
    for name in os.listdir(folder) if folder.is_dir() else ():  # noqa: PTH208 - names only
        kept = kept_named(name)
        if kept and (kept.session not in found or found[kept.session].number < kept.number):
            found[kept.session] = kept
    return [found[session] for session in sorted(found)]


def keep(folder: Path, kept: Kept, text: str) -> Path:
    """Store ``text`` as a record and come back once it is safe on the disk; its path.

    After a crash at any moment it is there in full or not at all (``files.write_once``).

    Raises: KeptAlready; CannotRun when the folder can't be written.
    """
    target = folder / kept.name
    try:
        write_once(target, text, read_only=True)
    except FileExistsError:
        raise KeptAlready(kept) from None
    return target


def same(path: Path, text: str) -> bool:
    """Whether a kept record holds just this text."""
    try:
        return read_text(path).splitlines() == text.splitlines()
    except CannotRun:
        return False
