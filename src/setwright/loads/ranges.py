"""A number of kilograms with two ends."""

from typing import NamedTuple


class Range(NamedTuple):
    """From ``low`` to ``high``, both in kg unless it is said otherwise; equal when it is one number."""

    low: float
    high: float

    def times(self, other: "Range") -> "Range":
        """Both multiplied, for ranges of positive numbers."""
        return Range(self.low * other.low, self.high * other.high)

    def plus(self, other: "Range") -> "Range":
        """The sums of the ends."""
        return Range(self.low + other.low, self.high + other.high)


def one(value: float) -> Range:
    """A range of one number."""
    return Range(value, value)
