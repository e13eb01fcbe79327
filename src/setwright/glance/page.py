"""The summary of one week: the eight questions in order, each asked of its own module."""

from collections.abc import Iterator
from typing import Final

from setwright.checked import Checked, CheckedWeek
from setwright.coverage.changed import changes
from setwright.glance.balance import balance
from setwright.glance.before import week_before
from setwright.glance.dose import dose
from setwright.glance.fits import fits
from setwright.glance.hurt import hurt
from setwright.glance.loading import loading
from setwright.glance.odd import odd
from setwright.glance.progress import progress
from setwright.glance.shapes import Answer, Glance
from setwright.library.table import MODEL_NOTE

_SIGNS: Final = {"+": "new", "-": "gone"}
MOST_CHANGES: Final = 4
"""Changes told; more are counted (choice: what three lines hold)."""


def glance(checked: Checked) -> Glance:
    """The half-minute summary of a plan of one week, or of one week of a block (``Checked.only``).

    Raises: ValueError when nothing of the plan could be read.
    """
    if not checked.weeks:
        raise ValueError(f"{checked.file}: there is no plan to look at")
    one = checked.weeks[0]
    asked = (
        ("Does it fit?", fits(checked, one)),
        ("Can it be loaded?", loading(checked, one)),
        ("Who is hurt?", hurt(checked, one.week)),
        ("Is it balanced?", balance(checked, one)),
        ("How much work?", dose(checked, one)),
        ("Where does it go?", progress(checked, one)),
        ("What is odd?", odd(checked, one)),
        ("What changed?", _changed(checked, one)),
    )
    return Glance(
        title=one.week.title,
        aim=f"Aim: {one.aim.row} ({one.aim.came_from})",
        answers=tuple(Answer(question, tuple(map(_sentence, lines))) for question, lines in asked),
        note=MODEL_NOTE if one.matrix else "",
    )


def _sentence(line: str) -> str:
    return f"{line[:1].upper()}{line[1:]}"


def _changed(checked: Checked, one: CheckedWeek) -> Iterator[str]:
    """The difference from the week before, as many changes as fit in three lines of a page."""
    before = week_before(checked, one)
    if before is not None:
        called, then = before
        told = [_in_words(change) for change in changes(then, one.coverage)]
        more = [f"and {len(told) - MOST_CHANGES} more"] if len(told) > MOST_CHANGES else []
        yield f"Since {called}: {'; '.join([*told[:MOST_CHANGES], *more]) or 'nothing'}."
    elif one.week.follows:
        yield f"It follows {one.week.follows}, which can't be compared with; `setwright check` says why."
    else:
        yield "No earlier plan is named under `follows:`, so there is nothing to compare with."


def _in_words(change: str) -> str:
    """A change with a word for its sign: "new: dip on Friday"."""
    sign, _, line = change.partition(" ")
    return f"{_SIGNS[sign]}: {line}" if sign in _SIGNS else change
