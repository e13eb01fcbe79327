"""The coach's logo as part of each sheet: an image that holds the picture file beside the plan."""

import base64
from dataclasses import dataclass
from pathlib import Path

from setwright.checked import Checked
from setwright.logo import read_logo
from setwright.sheets.style import stationery_of

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

    Raises: CannotRun, as ``read_logo`` does.
    """
    kind, raw = read_logo(plan, name)
    inside = f"data:image/{kind};base64,{base64.b64encode(raw).decode()}"
    frame = (
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{WIDTH_MM}mm" height="{HEIGHT_MM}mm" '
        f'viewBox="0 0 {WIDTH_MM} {HEIGHT_MM}"><image width="{WIDTH_MM}" height="{HEIGHT_MM}" '
        f'preserveAspectRatio="xMaxYMid meet" href="{inside}"/></svg>'
    )
    return f"data:image/svg+xml;base64,{base64.b64encode(frame.encode()).decode()}"
