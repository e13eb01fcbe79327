"""Log sheets: the lines of a session down, dates across, one box a date for load and what was done."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from setwright.library.table import Library
from setwright.model.dates import session_date
from setwright.model.plan import Session, Week
from setwright.sheets import words
from setwright.sheets.blocks import Writer, blocks, copy_for
from setwright.sheets.home import at_home
from setwright.sheets.people import full_names, who_trains
from setwright.sheets.sessions import room_title
from setwright.sheets.view import Block

DATES: Final = 8
"""Dates across a sheet (choice: two months of a day; half a box stays 12 mm wide on both papers)."""


@dataclass(frozen=True, slots=True)
class LogSheet:
    """One session for one athlete, or for whoever writes a name on it (``athlete`` None).

    ``dates``: empty where a date is to be written.
    """

    athlete: str | None
    title: str
    plan: str
    dates: tuple[str, ...]
    blocks: tuple[Block, ...]
    footer: str


def log_sheets(week: Week, mark: str, table: Library) -> tuple[LogSheet, ...]:
    """A log for each session and athlete: sessions in the order of the plan, athletes in that of the squad.

    ``mark`` goes in the footer: version and print date. Only the date of this week is printed: what a later
    week of the plan asks for is on the log of that week.
    """
    writer = Writer(week, table)
    return tuple(
        sheet
        for session in week.sessions
        if not at_home(session)
        for sheet in _of_session(session, writer, mark)
    )


def _of_session(session: Session, writer: Writer, mark: str) -> Iterator[LogSheet]:
    week = writer.week
    athletes = who_trains(week)
    names = full_names([athlete.name for athlete in athletes if athlete]) or (None,)
    day = session_date(week, session)
    for athlete, name in zip(athletes, names, strict=True):
        work = blocks(copy_for(athlete, session, writer))
        if work:
            yield LogSheet(
                athlete=name,
                title=room_title(session, week),
                plan=week.title,
                dates=(words.column_date(day) if day else "", *[""] * (DATES - 1)),
                blocks=work,
                footer=words.footer(week, mark, session.day),
            )
