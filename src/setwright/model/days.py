"""The days of a week, as they are named and as they are typed."""

from typing import Final, Literal

Day = Literal["Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"]
DAYS: tuple[Day, ...] = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")

SHORTEST_DAY: Final = 3
"""Letters from which the beginning of a day's name is read; choice: Mon, Tue, Thurs."""


def day_named(typed: str) -> Day | None:
    """The day that a typed word names, in full or by its first letters; None when it is no day."""
    folded = typed.casefold().rstrip(".")
    return next((d for d in DAYS if len(folded) >= SHORTEST_DAY and d.casefold().startswith(folded)), None)
