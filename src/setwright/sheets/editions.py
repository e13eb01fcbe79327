"""Which version a print is: its mark, the day of its first print, and what changed since the one before.

What was printed last is kept in a small file beside the prints, never in the plan.
"""

import datetime as dt
import hashlib
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

from pydantic import ValidationError

from setwright.checked import Checked
from setwright.files import CannotRun, read_text
from setwright.library.table import library
from setwright.reading.frozen import Frozen
from setwright.sheets import words
from setwright.sheets.changes import KeptSheet, changes, kept
from setwright.sheets.floors import AS_PLANNED, Changes, floors_of
from setwright.sheets.kinds import KINDS, Kind
from setwright.sheets.logo import letterhead
from setwright.sheets.names import stem
from setwright.sheets.phrases import say
from setwright.sheets.style import in_its_style

MARK_LENGTH: Final = 6
"""Characters of the version mark (choice: short enough to read out)."""

Sheets = Mapping[Kind, tuple[Any, ...]]
"""What stands on every sheet of a plan, by kind."""

ABOUT: Final = "What was printed last, so that the next print can say what changed. Safe to delete."


@dataclass(frozen=True, slots=True)
class Edition:
    """One version of the sheets. ``day``: of its first print; ``since``: the version before; ``changes``."""

    mark: str
    day: dt.date | None = None
    since: str | None = None
    changes: tuple[str, ...] = ()

    @property
    def words(self) -> str:
        """How a footer names it."""
        return words.mark(self.mark, self.day)


class LastPrint(Frozen):
    """What the file beside the prints holds."""

    about: str = ABOUT
    mark: str
    day: dt.date
    since: str | None = None
    changes: tuple[str, ...] = ()
    sheets: tuple[KeptSheet, ...]

    @property
    def edition(self) -> Edition:
        """The version that was printed."""
        return Edition(self.mark, self.day, self.since, self.changes)


@in_its_style
def all_sheets(checked: Checked, on_the_day: Changes = AS_PLANNED) -> Sheets:
    """What stands on the sheets of every kind; their mark is filled in when they are written.

    ``on_the_day``: in which sessions something is otherwise.
    """
    floors = floors_of(checked.weeks[0].week, checked.table or library(), on_the_day)
    made = {make: make(checked, words.MARK, floors) for make in {form.pages for form in KINDS.values()}}
    return {kind: made[form.pages] for kind, form in KINDS.items()}


def version_mark(checked: Checked, sheets: Sheets) -> str:
    """The first characters of the SHA-256 of all that the sheets of a plan say: equal for equal paper.

    What is only for the coach, and not among all kinds, does not count: a limit never changes public paper.

    Raises: CannotRun when the plan's logo can't be used.
    """
    told = [sheets[kind] for kind, form in KINDS.items() if form.among_all]
    return hashlib.sha256(repr((letterhead(checked), told)).encode("utf-8", "surrogatepass")).hexdigest()[
        :MARK_LENGTH
    ]


def record_of(checked: Checked, out: Path) -> Path:
    """The file in the folder of the prints that keeps what was printed last."""
    return out / f".{stem(checked)}-last-print.json"


def last_print(path: Path) -> LastPrint | None:
    """What was printed last; None before the first print.

    Raises: CannotRun where the file is there and can't be read.
    """
    if not path.exists():
        return None
    try:
        return LastPrint.model_validate_json(read_text(path))
    except ValidationError:
        raise CannotRun(
            f"{path} is damaged, so what has changed since the last print can't be told; delete it and print "
            "again"
        ) from None


@in_its_style
def this_print(checked: Checked, sheets: Sheets, last: LastPrint | None, today: dt.date) -> LastPrint:
    """What to print and keep now: the same as last time where no sheet says anything else."""
    mark = version_mark(checked, sheets)
    if last and last.mark == mark:
        return last
    now = kept(sheets["session"])
    if last is None:
        return LastPrint(mark=mark, day=today, sheets=now)
    told = changes(last.sheets, now) or (say("changes.other"),)
    return LastPrint(
        mark=mark,
        day=today,
        since=last.edition.words,
        changes=told,
        sheets=now,
    )
