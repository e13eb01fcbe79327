"""What goes first when time is short, by priority."""

from typing import Final

KEEP: Final = 1
"""The priority of what stays to the last."""
USUAL: Final = 2
"""The priority of a line that says none: it goes with its group."""


def leaves(priority: int, place: int) -> tuple[int, int]:
    """A key to sort by: what matters least goes first, of equals the later one.

    >>> sorted([(1, 0), (3, 1), (3, 2)], key=lambda one: leaves(*one))
    [(3, 2), (3, 1), (1, 0)]
    """
    return -priority, -place
