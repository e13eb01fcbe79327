"""Sheets as one self-contained HTML file each: inline style and drawings, no script, nothing fetched."""

import datetime as dt
from functools import cache
from typing import Any, Final, Protocol

from jinja2 import Environment, PackageLoader, StrictUndefined, pass_context
from jinja2.runtime import Context
from markupsafe import Markup

from setwright.checked import Checked
from setwright.sheets import board, card_words, words
from setwright.sheets.editions import Edition, Sheets, all_sheets, version_mark
from setwright.sheets.figures import PLAIN, fibre_svg, line_sign_svg, swatch_svg
from setwright.sheets.kinds import KINDS, SIZES, Kind, NothingToPrint, Paper
from setwright.sheets.logo import letterhead
from setwright.sheets.names import page_name
from setwright.sheets.overview import PICTURES
from setwright.sheets.overview_room import fitted
from setwright.sheets.phrases import say, series
from setwright.sheets.signs import TONES
from setwright.sheets.style import in_its_style

SWATCH_WIDTHS: Final[dict[Paper, float]] = {"a4": 11.0, "letter": 7.0, "a3": 11.0}
"""Width of a swatch in mm (choice: Letter is 18 mm narrower across)."""


class PageForm(Protocol):
    """The form of a page: the name of its template, its title in the window, and how the paper lies."""

    @property
    def name(self) -> str:
        """What the template is called."""

    @property
    def title(self) -> str:
        """What follows the plan's name in the window."""

    @property
    def upright(self) -> bool:
        """Whether the paper stands upright."""


def sheet_html(checked: Checked, kind: Kind, paper: Paper, printed: dt.date | None = None) -> str:
    """A whole HTML file with every sheet of one kind that a plan gives.

    ``printed``: the date in the footers, none when left out. The same plan, kind, paper and date give the
    same bytes.

    Raises: ValueError when nothing of the plan could be read; NothingToPrint when it gives no such sheet;
    CannotRun when its logo can't be used.
    """
    if checked.week is None:
        raise ValueError(f"{checked.file}: there is no plan to print")
    sheets = all_sheets(checked)
    return file_html(checked, sheets, kind, paper, Edition(version_mark(checked, sheets), printed))


@in_its_style
def file_html(checked: Checked, sheets: Sheets, kind: Kind, paper: Paper, edition: Edition) -> str:
    """A whole HTML file with all ``sheets`` of one kind. Raises: NothingToPrint; CannotRun."""
    return page_html(checked, KINDS[kind], paper, _some(sheets, kind), edition)


@in_its_style
def pages_html(
    checked: Checked, sheets: Sheets, kind: Kind, paper: Paper, edition: Edition
) -> list[tuple[str, str]]:
    """A whole HTML file for each sheet of a kind, in print order: the file's name and what it holds.

    Raises: NothingToPrint; CannotRun.
    """
    every = _some(sheets, kind)
    places = [f"{number:0{max(2, len(str(len(every))))}}" for number in range(1, len(every) + 1)]
    return [
        (
            page_name(checked, kind, paper, sheet, place),
            page_html(checked, KINDS[kind], paper, (sheet,), edition),
        )
        for place, sheet in zip(places, every, strict=True)
    ]


def _some(sheets: Sheets, kind: Kind) -> tuple[Any, ...]:
    """What stands on the sheets of a kind, which must be something."""
    if not sheets[kind]:
        raise NothingToPrint(KINDS[kind].nothing)
    return sheets[kind]


def page_html(
    checked: Checked, form: PageForm, paper: Paper, sheets: tuple[Any, ...], edition: Edition
) -> str:
    """A whole HTML file: what stands on some sheets, in the template of their form. Raises: CannotRun."""
    short, long = SIZES[paper]
    across, down = (short, long) if form.upright else (long, short)
    return (
        _environment()
        .get_template(f"{form.name}.html.j2")
        .render(
            form=form,
            week=checked.week,
            own=letterhead(checked),
            paper=paper,
            sheets=sheets,
            words=words,
            across=across,
            down=down,
            swatch_width=SWATCH_WIDTHS[paper],
            edition=edition,
        )
    )


def css_text(text: str) -> Markup:
    r"""Text as a CSS string: everything but plain letters and digits is escaped, so it can't end the style.

    >>> print(css_text('a"</style>'))
    "a\22 \3c \2f style\3e "
    """
    inside = "".join(char if char.isascii() and char.isalnum() else f"\\{ord(char):x} " for char in text)
    return Markup(f'"{inside}"')  # noqa: S704 - nothing but letters, digits and CSS escapes is left


@pass_context
def _marked(context: Context, text: str) -> Markup:
    """Text as a CSS string, with the version where it belongs."""
    return css_text(text.replace(words.MARK, context["edition"].words))


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
    environment.filters |= {"css_text": _marked, "together": words.together}
    environment.globals |= {
        "fibre": lambda key, name: _drawing(fibre_svg(key, "60", name)),
        "large_fibre": lambda key, name: _drawing(fibre_svg(key, "120", name, PLAIN)),
        "line_sign": lambda line: _drawing(line_sign_svg(line)),
        "fitted": fitted,
        "places": PICTURES,
        "tones": TONES,
        "plain": card_words,
        "board": board,
        "floor_picture": lambda chart, paper: _drawing(board.picture(chart, paper)),
        "say": say,
        "series": series,
        "swatch": lambda tone, width: _drawing(swatch_svg(tone, width)),
    }
    return environment
