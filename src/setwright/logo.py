"""The coach's logo: a picture file beside the plan, read for the sheets and looked at by every check."""

from pathlib import Path
from typing import Final

from setwright.files import CannotRun
from setwright.findings import Finding
from setwright.model.plan import Week
from setwright.reading.paper_rules import LOGO

MOST_BYTES: Final = 300_000
"""Largest logo in bytes (choice: every sheet file carries it, so it must not dwarf the sheet)."""

_BESIDE: Final = "lay the picture beside the plan and write its name, or take `logo:` out"


def read_logo(plan: Path, name: str) -> tuple[str, bytes]:
    """The kind of picture that the file ``name`` beside a plan is ("png", "jpeg", "svg+xml"), and its bytes.

    Raises: CannotRun for a file that is not there, leads out of the plan's folder, is too large or is no
    picture.
    """
    raw = _read(plan, name)
    kind = _kind(raw)
    if kind is None:
        raise CannotRun(f"the logo {name} is no PNG, JPEG or SVG picture", "save it as one of these")
    return kind, raw


def unusable_logo(week: Week, file: str) -> Finding | None:
    """What is wrong with the logo that the squad of a plan names; None where nothing is.

    ``file`` is the name of the plan's file.
    """
    paper = week.squad.paper if week.squad else None
    if paper is None or paper.logo is None or paper.logo_place is None:
        return None
    try:
        read_logo(Path(file), paper.logo)
    except CannotRun as stop:
        return LOGO.at(paper.logo_place, stop.what, stop.change)
    return None


def _read(plan: Path, name: str) -> bytes:
    folder = plan.parent.resolve()
    try:
        path = (folder / name).resolve()
        there = path.is_file()
    except (OSError, ValueError):
        there = False
    if there and not path.is_relative_to(folder):
        raise CannotRun(f"the logo {name} leads out of the plan's folder", _BESIDE)
    if not there:
        raise CannotRun(f"the logo {name} is not there", _BESIDE)
    try:
        with path.open("rb") as file:
            raw = file.read(MOST_BYTES + 1)
    except OSError as error:
        raise CannotRun(f"the logo {name} can't be read: {(error.strerror or '').lower()}", _BESIDE) from None
    if len(raw) > MOST_BYTES:
        raise CannotRun(f"the logo {name} is over {MOST_BYTES:,} bytes", "save it smaller")
    return raw


def _kind(raw: bytes) -> str | None:
    """The kind of picture by its first bytes (PNG 5.2; JPEG B.1.1.3, start of image), or None."""
    if raw.startswith(b"\x89PNG\r\n\x1a\n"):
        return "png"
    if raw.startswith(b"\xff\xd8\xff"):
        return "jpeg"
    return "svg+xml" if b"<svg" in raw and b"<!ENTITY" not in raw and b"\0" not in raw else None
