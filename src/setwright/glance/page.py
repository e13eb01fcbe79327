"""The summary of one week: the eight questions in order, each asked of its own module."""

from collections.abc import Iterator, Sequence

from setwright.checked import Checked
from setwright.glance.balance import balance
from setwright.glance.dose import dose
from setwright.glance.fits import fits
from setwright.glance.hurt import hurt
from setwright.glance.loading import loading
from setwright.glance.odd import odd
from setwright.glance.progress import progress
from setwright.glance.shapes import Answer, Glance
from setwright.library.table import MODEL_NOTE, library
from setwright.model.plan import Week


def glance(checked: Checked, changes: Sequence[str] = ()) -> Glance:
    """The half-minute summary of a plan of one week, or of one week of a block (``Checked.only``).

    ``changes``: what is different from the plan that it follows, one sentence each, worked out by the caller.
    Raises: ValueError when nothing of the plan could be read.
    """
    if not checked.weeks:
        raise ValueError(f"{checked.file}: there is no plan to look at")
    one = checked.weeks[0]
    asked = (
        ("Does it fit?", fits(one, checked.table or library())),
        ("Can it be loaded?", loading(checked, one)),
        ("Who is hurt?", hurt(checked, one.week)),
        ("Is it balanced?", balance(checked, one)),
        ("How much work?", dose(checked, one)),
        ("Where does it go?", progress(checked, one)),
        ("What is odd?", odd(checked, one)),
        ("What changed?", _changed(one.week, changes)),
    )
    return Glance(
        title=one.week.title,
        aim=f"Aim: {one.aim.row} ({one.aim.came_from})",
        answers=tuple(Answer(question, tuple(map(_sentence, lines))) for question, lines in asked),
        note=MODEL_NOTE if one.matrix else "",
    )


def _sentence(line: str) -> str:
    return f"{line[:1].upper()}{line[1:]}"


def _changed(week: Week, changes: Sequence[str]) -> Iterator[str]:
    if changes:
        yield from changes
    elif week.follows:
        yield f"It follows {week.follows}; the difference is not worked out."
    else:
        yield "No earlier plan is named under `follows:`, so there is nothing to compare with."
