"""Fixed words of the cards, the board, the log and the home sheet."""

from typing import Final

SPOTS: Final = "who spots"
HOOKS: Final = "hooks at"
NAME: Final = "name"
SET: Final = "set"
SAFETY_BARS: Final = "Nobody spots: set the safety bars."


def rack(number: int) -> str:
    """Which rack a card hangs on."""
    return f"Rack {number}"


def turn(number: int, turns: int) -> str:
    """Which of those who share a rack one after the other."""
    return f"turn {number} of {turns}"


def bar_loads(unit: str, *, lightest_first: bool) -> str:
    """The line under the loads of a rack card."""
    order = " Lightest first." if lightest_first else ""
    return f"Loads{f' in {unit}' if unit else ''} with the bar.{order}"
