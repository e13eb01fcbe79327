"""How much of the difference list and of the pictures has room on the one page of the week overview."""

from math import ceil
from typing import Final

from setwright.sheets.phrases import say
from setwright.sheets.view import DayColumn, Entry, Picture, WeekSheet

PAGE_MM: Final = 184.0
"""Height inside the margins of landscape A4, the lower of the two papers."""
LETTERHEAD_MM: Final = 12.0
"""What the coach's own title and logo take of it."""
LINE_MM: Final = 5.3
"""A line of 12 pt type with its air: ``page.css``."""
TITLE_MM: Final = 9.5
DAY_HEAD_MM: Final = 11.6
HEADING_MM: Final = 9.0
MATRIX_MM: Final = 40.5
PICTURES_MM: Final = 43.0
"""Heights of what always looks alike, measured on printed pages; a picture's with its caption."""
ACROSS: Final = 115
HALF_ACROSS: Final = 56
IN_A_DAY: Final = (37, 32)
"""Letters in a line of the page, of half of it, and of one of two or of three days (measured)."""
MOST_CHANGES: Final = 12
"""Changes that are told; more are counted (choice: a quarter of the page)."""
FEWEST_CHANGES: Final = 4
"""Changes for which pictures give way (choice: two lines)."""


def fitted(
    sheet: WeekSheet, changes: tuple[str, ...], *, letterhead: bool
) -> tuple[tuple[str, ...], tuple[Picture, ...]]:
    """The changes to tell and the pictures to show, so that the overview stays on its page.

    Beside pictures the list is cut to what is left, and the rest is counted; where a few changes have no
    room, the pictures go.
    """
    room = PAGE_MM - (LETTERHEAD_MM if letterhead else 0) - _always(sheet)
    lists = [first_of(changes, most) for most in range(MOST_CHANGES, FEWEST_CHANGES - 1, -1)]
    beside = next((told for told in lists if _list(told) + PICTURES_MM <= room), None)
    if beside is not None:
        return beside, sheet.pictures
    return next((told for told in lists if _list(told) <= room), lists[-1]), ()


def first_of(changes: tuple[str, ...], most: int) -> tuple[str, ...]:
    """The first changes, and how many more there are."""
    more = len(changes) - most + 1
    return (*changes[: most - 1], say("list.more", count=more)) if more > 1 else changes


def _always(sheet: WeekSheet) -> float:
    """What stands on the overview whatever has changed, mm."""
    days = sum(max((_day(day, sheet.columns) for day in row), default=0.0) for row in sheet.days)
    texts = [f"{one.title} {one.text}" for one in sheet.remarks] + ([sheet.note] if sheet.note else [])
    remarks = sum(1 + LINE_MM * ceil(len(text) / ACROSS) for text in texts)
    return TITLE_MM + days + HEADING_MM + MATRIX_MM + HEADING_MM + remarks


def _day(day: DayColumn, columns: int) -> float:
    letters = IN_A_DAY[columns > len(IN_A_DAY)]
    return DAY_HEAD_MM + LINE_MM * sum(_lines(entry, letters) for entry in day.entries)


def _lines(entry: Entry, letters: int) -> int:
    return 1 if len(entry.name) + len(entry.dose) <= letters else 2


def _list(changes: tuple[str, ...]) -> float:
    """A list in two columns with its heading; nothing without any change."""
    lines = sum(ceil(len(change) / HALF_ACROSS) for change in changes)
    return HEADING_MM + LINE_MM * ceil(lines / 2) if lines else 0.0
