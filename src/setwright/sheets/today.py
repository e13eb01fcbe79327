"""The sheets of a session that is done otherwise today, and what has changed against the last print."""

import datetime as dt
from collections.abc import Iterator
from pathlib import Path
from typing import Final

from setwright.checked import Checked
from setwright.files import write_whole
from setwright.floor.revised import session_of_today, week_of_today
from setwright.floor.today import Today
from setwright.sheets.editions import (
    LastPrint,
    all_sheets,
    last_print,
    record_of,
    this_print,
)
from setwright.sheets.html import file_html
from setwright.sheets.kinds import Kind, NothingToPrint, Paper
from setwright.sheets.names import sheet_name
from setwright.sheets.phrases import say
from setwright.sheets.words import number

_OVERVIEW: Final[Kind] = "week"
OF_THE_SESSION: Final[tuple[Kind, ...]] = ("session", "rack", "board", "station")
"""What is handed out and hung up anew; the difference list stands on the overview of the week."""


def print_today(checked: Checked, today: Today, out: Path, paper: Paper, day: dt.date) -> Iterator[str]:
    """Write the sheets of today's session and the overview, in the usual files; a line for each.

    ``checked``: the one week. ``day``: the date of the print. Whoever is absent gets no sheet.

    Raises: CannotRun.
    """
    record = record_of(checked, out)
    planned = last_print(record) or this_print(checked, all_sheets(checked), None, day)
    week, session = week_of_today(today), session_of_today(today)
    on_the_day = {session.place: today.change._replace(minutes=None)}
    whole = checked.revised(week)
    alone = checked.revised(week.model_copy(update={"sessions": (session,)}))
    sheets, of_session = all_sheets(whole, on_the_day), all_sheets(alone, on_the_day)
    now = _told(this_print(whole, sheets, planned, day), planned, today)
    prints = ((whole, sheets, _OVERVIEW), *((alone, of_session, kind) for kind in OF_THE_SESSION))
    for which, made, kind in prints:
        try:
            html = file_html(which, made, kind, paper, now.edition)
        except NothingToPrint as none:
            yield f"no {kind} sheet: {none}"
            continue
        target = out / sheet_name(which, kind, paper)
        write_whole(target, html)
        yield f"{target}  ({kind}, {paper})"
    write_whole(record, now.model_dump_json(indent=1) + "\n")


def _told(now: LastPrint, planned: LastPrint, today: Today) -> LastPrint:
    """A new print with what is otherwise today before the changes that follow from it."""
    if now == planned:
        return now
    return now.model_copy(update={"changes": (*_conditions(today), *now.changes)})


def _conditions(today: Today) -> Iterator[str]:
    change, session = today.change, today.floor.session.title
    if change.minutes is not None:
        yield say("changes.minutes", session=session, count=number(change.minutes))
    if change.without:
        yield say("changes.without", session=session, kit=", ".join(change.without))
    if today.cut and today.cut.lost:
        yield say("changes.lost", session=session, what=", ".join(today.cut.lost))
