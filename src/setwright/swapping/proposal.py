"""What is proposed for a checked plan: the changes, the lines to type, and the plan checked with them."""

from collections.abc import Callable
from typing import NamedTuple

from setwright.checked import Checked, check_plan
from setwright.library.table import Library
from setwright.model.people import Athlete
from setwright.model.plan import Week
from setwright.rules.aims import training
from setwright.rules.means import means
from setwright.swapping.paste import Edit, edits, pasted
from setwright.swapping.search import MOST_CHANGES, Found, search
from setwright.swapping.state import Judge, State


class NotToSwap(Exception):
    """Nothing can be proposed; the text is one sentence for the coach."""


class Proposal(NamedTuple):
    """``edits``: the lines to type, with ``after``, the plan checked with them.

    Both None where the text can't be cut by lines. ``limited``: somebody who trains has a limit.
    """

    before: Checked
    found: Found
    edits: tuple[Edit, ...] | None
    after: Checked | None
    limited: bool


def propose(checked: Checked, beside: Callable[[str], str | None], *, most: int = MOST_CHANGES) -> Proposal:
    """The smallest set of changes for a plan that could be read whole.

    Raises: NotToSwap where a line could not be read, or a limit does not say who set it.
    """
    week, table = readable(checked)
    limited = [athlete for athlete in training(week) if athlete.limits or athlete.avoid]
    for athlete in limited:
        signed(athlete)
    judge = Judge(means(week, table), table)
    found = search(week, judge, most=most)
    source = checked.sources[checked.file]
    made = edits(week, found.best.changes, source) if found.best else None
    after = check_plan(checked.file, pasted(source.text, made), beside) if made else None
    if found.best is None or after is None or not _as_found(found.best.state, after, judge):
        return Proposal(checked, found, None, None, bool(limited))
    return Proposal(checked, found, made, after, bool(limited))


def readable(checked: Checked) -> tuple[Week, Library]:
    """The week of a plan and its library. Raises: NotToSwap where a line could not be read."""
    if checked.week is None or checked.table is None or checked.waiting or not checked.complete:
        raise NotToSwap(
            "the plan has lines that can't be read; `setwright check` says which: mend them first"
        )
    return checked.week, checked.table


def signed(athlete: Athlete) -> None:
    """Nothing, where every limit of an athlete says who set it. Raises: NotToSwap."""
    if any(not limit.set_by for limit in athlete.limits):
        raise NotToSwap(
            f"a limit of {athlete.name} does not say who set it: write `set by:` under it; nothing is "
            "proposed under a limit that nobody can be asked about"
        )


def _as_found(state: State, after: Checked, judge: Judge) -> bool:
    """Whether the plan with the lines typed reads whole and leaves open just what the search says."""
    if after.week is None or not after.complete:
        return False
    read = judge(after.week)
    return (read.gaps, read.advice, read.minutes) == (state.gaps, state.advice, state.minutes)
