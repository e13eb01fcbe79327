"""House habits: what the top of the plan settles once for every dose line under it."""

from typing import Final, Literal

from setwright.reading.dose import BARE_PERCENT_OF, MaxKind
from setwright.reading.frozen import Frozen

Member = Literal["alone", "rounds", "each", "ladder"]

PERCENT_AT_MOST: Final = 105.0
"""Largest percent of a max that is read (choice: above it not one repetition can be done)."""


class Habits(Frozen):
    """How ambiguous words are read in this file; None means nobody said, so the reader asks.

    ``member`` tells what a line inside a group may say; ``bands`` are the names in the gym file, None
    when there is no gym file (a band of any name is then read). ``percent_at_most``: percents of a tested,
    estimated or today's max above it are asked.
    """

    unit: Literal["kg", "lb"] | None = None
    dose_order: Literal["sets x reps", "reps x sets"] | None = None
    percent_of: MaxKind | None = None
    sides: Literal["each", "in all"] | None = None
    bands: frozenset[str] | None = None
    member: Member = "alone"
    percent_at_most: float = PERCENT_AT_MOST

    @property
    def max_kind(self) -> MaxKind:
        """The max that a percent without further words is taken of."""
        return self.percent_of or BARE_PERCENT_OF
