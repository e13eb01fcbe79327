"""The report on a week as a page: the lines that the screen has, in the type of paper."""

import datetime as dt
import hashlib
from collections.abc import Iterator
from pathlib import Path
from typing import Final, NamedTuple

from setwright.checked import Checked
from setwright.files import write_whole
from setwright.records.told import Told
from setwright.sheets import words
from setwright.sheets.editions import MARK_LENGTH, Edition
from setwright.sheets.html import page_html
from setwright.sheets.kinds import Paper
from setwright.sheets.names import PERSON_BYTES, slug, stem
from setwright.sheets.phrases import say
from setwright.sheets.style import in_its_style

NUMBER: Final = 9
"""Sorts the file behind those of the sheets."""


class Page(NamedTuple):
    """The form of the page, as its template asks for it."""

    name: str = "told"
    upright: bool = True

    @property
    def title(self) -> str:
        """What follows the plan's title in the window."""
        return say("title.report")


class Print(NamedTuple):
    """Where a report is printed: the folder, the paper, and whether as a PDF too."""

    out: Path
    paper: Paper = "a4"
    pdf: bool = False


class ToldSheet(NamedTuple):
    """What stands on the page. ``about``: who may read it; ``public``: anybody may."""

    title: str
    about: str
    public: bool
    sections: tuple[tuple[str, tuple[str, ...]], ...]
    last: str
    footer: str


@in_its_style
def told_html(checked: Checked, told: Told, paper: Paper, printed: dt.date | None = None) -> str:
    """A whole HTML file with one report. ``checked``: its plan; ``printed``: the date in the footer.

    Raises: CannotRun when the plan's logo can't be used.
    """
    sections = tuple(
        (one.head, tuple(words.typeset(line).replace(" x ", " × ") for line in one.lines))
        for one in told.sections
    )
    week = told.review.done.week
    public = told.form.readers == "public"
    footer = words.footer(week, words.MARK)
    sheet = ToldSheet(told.title, told.about, public, sections, told.form.last, footer)
    mark = hashlib.sha256(repr(sheet).encode("utf-8", "surrogatepass")).hexdigest()[:MARK_LENGTH]
    return page_html(checked, Page(), paper, (sheet,), Edition(mark, printed))


def told_name(checked: Checked, told: Told, paper: Paper) -> str:
    """The name of its file: "autumn-block-week-3-9-report-crew-a4.html"."""
    whose = slug(told.athlete or "", PERSON_BYTES)
    parts = (stem(checked), str(NUMBER), "report", told.edition, whose, paper)
    return "-".join(part for part in parts if part) + ".html"


def print_told(checked: Checked, told: Told, print_on: Print, printed: dt.date) -> Iterator[Path]:
    """Write one report into a folder; each file as soon as it stands. Raises: CannotRun."""
    html = told_html(checked, told, print_on.paper, printed)
    target = print_on.out / told_name(checked, told, print_on.paper)
    write_whole(target, html)
    yield target
    if print_on.pdf:
        from setwright.sheets.pdf import printer  # noqa: PLC0415 - WeasyPrint is slow to load

        target = target.with_suffix(".pdf")
        write_whole(target, printer()(html, target.name))
        yield target
