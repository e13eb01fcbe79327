"""What is proposed for a checked plan: the changes found, the lines to type, and the plan checked with them."""

from collections.abc import Callable
from typing import NamedTuple

from setwright.checked import Checked, check_plan
from setwright.rules.aims import training
from setwright.rules.means import means
from setwright.swapping.paste import Edit, edits, pasted
from setwright.swapping.search import MOST_CHANGES, Found, search
from setwright.swapping.state import Judge


class NotToSwap(Exception):
    """Nothing can be proposed; the text is one sentence for the coach."""


class Proposal(NamedTuple):
    """``edits``: the lines to type, None where the text can't be cut by lines; ``after``: the plan with them."""

    before: Checked
    found: Found
    edits: tuple[Edit, ...] | None
    after: Checked | None
    limited: bool


def propose(checked: Checked, beside: Callable[[str], str | None], *, most: int = MOST_CHANGES) -> Proposal:
    """The smallest set of changes for a plan that could be read whole.

    Raises: NotToSwap where a line could not be read, or a limit does not say who set it.
    """
    if checked.week is None or checked.table is None or checked.waiting or not checked.complete:
        raise NotToSwap(
            "the plan has lines that can't be read; `setwright check` says which: mend them first"
        )
    limited = [athlete for athlete in training(checked.week) if athlete.limits or athlete.avoid]
    unsigned = [one.name for one in limited if any(not limit.set_by for limit in one.limits)]
    if unsigned:
        raise NotToSwap(
            f"a limit of {unsigned[0]} does not say who set it: write `set by:` under it; nothing is proposed "
            "under a limit that nobody can be asked about"
        )
    found = search(checked.week, Judge(means(checked.week, checked.table), checked.table), most=most)
    source = checked.sources[checked.file]
    made = edits(checked.week, found.best.changes, source) if found.best else None
    after = check_plan(checked.file, pasted(source.text, made), beside) if made else None
    return Proposal(checked, found, made, after, bool(limited))
