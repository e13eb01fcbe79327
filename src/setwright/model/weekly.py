"""What a coach asks of the week, and what was done before the plan began."""

from typing import Literal

from setwright.places import Place
from setwright.reading.frozen import Frozen

PULL_TO_PUSH = "pull to push"
"""The word under ``sets a week`` that asks for pulls, so many for one push."""


class WeekOf(Frozen):
    """Which week of a block a plan of one week is; ``file``: that of the block."""

    file: str
    week: int
    place: Place


class WeeklySets(Frozen):
    """Fractional hard sets a week of a muscle group: ``low`` to ``high``, ``high`` None: at least.

    The group "pull to push" is a ratio: at least ``low`` pulls for one push.
    """

    group: str
    low: float
    high: float | None
    text: str
    place: Place


class DoneBefore(Frozen):
    """What was done of a movement in the week before the plan; ``key`` is the library's."""

    name: str
    place: Place
    amount: float
    unit: Literal["reps", "sets", "kg", "lb"]
    text: str
    key: str | None = None
