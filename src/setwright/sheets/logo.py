"""The coach's logo: a picture file beside the plan that becomes part of each sheet as an image."""

import base64
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from setwright.checked import Checked
from setwright.files import CannotRun
from setwright.sheets.style import stationery_of

MOST_BYTES: Final = 300_000
"""Largest logo in bytes (choice: every sheet file carries it, so it must not dwarf the sheet)."""

WIDTH_MM, HEIGHT_MM = 45.0, 10.0
"""The room it gets at the top right of a page, in mm (choice)."""


@dataclass(frozen=True, slots=True)
class Letterhead:
    """What stands in the top margin of every page: the coach's title, and the logo as a data: URI."""

    title: str | None = None
    logo: str | None = None


def letterhead(checked: Checked) -> Letterhead | None:
    """The coach's own; None without title and logo.

    Raises: CannotRun when the logo can't be used.
    """
    paper = stationery_of(checked)
    logo = logo_uri(Path(checked.file), paper.logo) if paper.logo else None
    return Letterhead(paper.title, logo) if paper.title or logo else None


def logo_uri(plan: Path, name: str) -> str:
    """The logo as a data: URI of an SVG picture that holds it, fitted into its room.

    A picture inside a picture is never run: scripts in an SVG stay dead, and nothing it names is fetched.

    Raises: CannotRun, in one sentence, for a file that is not there, leads out of the plan's folder, is too
    large or is no picture.
    """
    raw = _read(plan, name)
    kind = _kind(raw)
    if kind is None:
        raise CannotRun(f"the logo {name} is no PNG, JPEG or SVG picture: save it as one of these")
    inside = f"data:image/{kind};base64,{base64.b64encode(raw).decode()}"
    frame = (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{WIDTH_MM}mm" height="{HEIGHT_MM}mm" '
        f'viewBox="0 0 {WIDTH_MM} {HEIGHT_MM}"><image width="{WIDTH_MM}" height="{HEIGHT_MM}" '
        f'preserveAspectRatio="xMaxYMid meet" href="{inside}"/></svg>'
    )
    return f"data:image/svg+xml;base64,{base64.b64encode(frame.encode()).decode()}"


def _read(plan: Path, name: str) -> bytes:
    folder = plan.parent.resolve()
    try:
        path = (folder / name).resolve()
        there = path.is_file()
    except (OSError, ValueError):
        there = False
    if there and not path.is_relative_to(folder):
        raise CannotRun(f"the logo {name} leads out of the plan's folder: lay the picture beside the plan")
    if not there:
        raise CannotRun(f"the logo {name} is not there: lay the picture beside the plan")
    try:
        with path.open("rb") as file:
            raw = file.read(MOST_BYTES + 1)
    except OSError as error:
        raise CannotRun(f"the logo {name} can't be read: {(error.strerror or '').lower()}") from None
    if len(raw) > MOST_BYTES:
        raise CannotRun(f"the logo {name} is over {MOST_BYTES:,} bytes: save it smaller")
    return raw


def _kind(raw: bytes) -> str | None:
    """The kind of picture by its first bytes (PNG 5.2; JPEG B.1.1.3, start of image), or None."""
    if raw.startswith(b"\x89PNG\r\n\x1a\n"):
        return "png"
    if raw.startswith(b"\xff\xd8\xff"):
        return "jpeg"
    return "svg+xml" if b"<svg" in raw and b"<!ENTITY" not in raw and b"\0" not in raw else None
