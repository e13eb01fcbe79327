"""Sheets as one self-contained HTML file each: inline style and drawings, no script, nothing fetched."""

import datetime as dt
import hashlib
import re
from functools import cache
from typing import Any, Final, Literal

from jinja2 import Environment, PackageLoader, StrictUndefined
from markupsafe import Markup

from setwright.checked import Checked
from setwright.sheets import words
from setwright.sheets.figures import fibre_svg, line_sign_svg, swatch_svg
from setwright.sheets.overview import PICTURES, week_sheet
from setwright.sheets.sessions import session_sheets
from setwright.sheets.summary import summary_sheet

Kind = Literal["session", "week", "summary"]
Paper = Literal["a4", "letter"]

KINDS: Final[tuple[Kind, ...]] = ("week", "session", "summary")
SIZES: Final[dict[Paper, tuple[float, float]]] = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}
"""Width and height of upright paper in mm (ISO 216; ANSI/ASME Y14.1)."""

SWATCH_WIDTHS: Final[dict[Paper, float]] = {"a4": 11.0, "letter": 7.0}
"""Width of a swatch in mm (choice: Letter is 18 mm narrower across)."""

MARK_LENGTH: Final = 6
"""Characters of the version mark (choice: short enough to read out)."""

NAME_LENGTH: Final = 60
"""Characters of the plan's name in a file name (choice: whole paths stay under 255 bytes in any script)."""

_ORDER: Final[dict[Kind, int]] = {"week": 1, "session": 2, "summary": 3}


def sheet_html(checked: Checked, kind: Kind, paper: Paper, printed: dt.date | None = None) -> str:
    """A whole HTML file: every session sheet of a plan, its week overview, or the coach's summary.

    ``printed``: the date in the footer, none when left out. The same plan, kind, paper and date give the
    same bytes.

    Raises: ValueError when nothing of the plan could be read.
    """
    week, coverage = checked.week, checked.coverage
    if week is None or coverage is None:
        raise ValueError(f"{checked.file}: there is no plan to print")
    mark = words.mark(version_mark(checked), printed)
    short, long = SIZES[paper]
    across, down = (long, short) if kind == "week" else (short, long)
    view: dict[str, Any] = {"week": week, "words": words, "across": across, "down": down}
    if kind == "session":
        view |= {"sheets": session_sheets(week, mark, checked.table)}
    elif kind == "summary":
        view |= {"summary": summary_sheet(checked, mark)}
    else:
        sheet = week_sheet(checked, week, coverage, mark)
        columns = max((len(row) for row in sheet.days), default=1)
        view |= {"sheet": sheet, "columns": columns, "places": PICTURES, "swatch_width": SWATCH_WIDTHS[paper]}
    return _environment().get_template(f"{kind}.html.j2").render(view)


def sheet_name(checked: Checked, kind: Kind, paper: Paper) -> str:
    """A file name that sorts in print order and is safe on every system: "autumn-block-2-session-a4.html".

    In a plan of several weeks the week stands before the kind: "autumn-block-week-03-2-session-a4.html".

    Letters of any script stay; everything else becomes a hyphen, so no name can lead to another folder.
    """
    week = checked.week
    name = week.name if week else ""
    plain = re.sub(r"[\W_]+", "-", name.lower()).strip("-")[:NAME_LENGTH].strip("-")
    number = f"-week-{week.number:0{len(str(week.of))}}" if week and week.of > 1 else ""
    return f"{plain or 'plan'}{number}-{_ORDER[kind]}-{kind}-{paper}.html"


def version_mark(checked: Checked) -> str:
    """The first characters of the SHA-256 of the plan's text: two prints of one text carry the same mark."""
    text = checked.sources[checked.file].text
    return hashlib.sha256(text.encode("utf-8", "surrogatepass")).hexdigest()[:MARK_LENGTH]


def css_text(text: str) -> Markup:
    r"""Text as a CSS string: everything but plain letters and digits is escaped, so it can't end the style.

    >>> print(css_text('a"</style>'))
    "a\22 \3c \2f style\3e "
    """
    inside = "".join(char if char.isascii() and char.isalnum() else f"\\{ord(char):x} " for char in text)
    return Markup(f'"{inside}"')  # noqa: S704 - nothing but letters, digits and CSS escapes is left


def _drawing(svg: str) -> Markup:
    """A drawing of our own, which goes into the page as it is."""
    return Markup(svg)  # noqa: S704 - made by sheets.figures from numbers and library names, escaped there


@cache
def _environment() -> Environment:
    environment = Environment(
        loader=PackageLoader("setwright", "data/templates"),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        keep_trailing_newline=True,
    )
    environment.filters |= {"css_text": css_text, "together": words.together}
    environment.globals |= {
        "fibre": lambda key, name: _drawing(fibre_svg(key, "60", name)),
        "line_sign": lambda line: _drawing(line_sign_svg(line)),
        "swatch": lambda tone, width: _drawing(swatch_svg(tone, width)),
    }
    return environment
