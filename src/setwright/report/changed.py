"""What changed since the week before, in at most three lines of the screen."""

from typing import Final

from setwright.checked import Checked
from setwright.coverage.changed import changes
from setwright.followed import Followed
from setwright.report.wrapping import wrapped

LINES: Final = 3
"""Most lines of the difference on the screen (choice: what is read at a glance)."""


def since(checked: Checked, before: Followed) -> str:
    """The difference of a plan's first week from the week before, in at most three lines."""
    told = tuple(changes(before.coverage, checked.weeks[0].coverage))
    lead = f"Since {before.file}: "
    if not told:
        return wrapped(f"{lead}nothing changed.")
    fits = (lead + _cut(told, kept) for kept in range(len(told), 0, -1))
    return next((text for one in fits if (text := wrapped(one)).count("\n") < LINES), wrapped(lead + told[0]))


def _cut(told: tuple[str, ...], kept: int) -> str:
    more = len(told) - kept
    return "; ".join(told[:kept]) + (f"; and {more} more." if more else ".")
