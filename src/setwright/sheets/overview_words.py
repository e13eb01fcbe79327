"""The fixed words of the week overview alone."""

from typing import Final

from setwright.sheets.words import decimals, number

_COUNTS: Final = {0: "no", 1: "one", 2: "two", 3: "three", 4: "four", 5: "five", 6: "six"}


def minutes(used: float, limit: float | None) -> str:
    """Minutes a session takes, of those it has."""
    return f"{used:.0f} of {number(limit)} min" if limit else f"about {used:.0f} min"


def counts(pull: str, push: str, unscored: int) -> str:
    """The line under the matrix."""
    rest = f"; {unscored} {'move' if unscored == 1 else 'moves'} counted, not scored" if unscored else ""
    return decimals(f"Pull {pull} sets, push {push} sets{rest}.")


def remarks_title(gaps: int, accepted: int) -> str:
    """The heading over the gaps: "One gap, one accepted", "No gaps"."""
    told = f"{_COUNTS.get(gaps, str(gaps)).capitalize()} {'gap' if gaps == 1 else 'gaps'}"
    return f"{told}, {_COUNTS.get(accepted, str(accepted))} accepted" if accepted else told


def accepted(reason: str) -> str:
    """A gap that the coach leaves on purpose."""
    return f"Accepted: “{reason}”."


def proposed(name: str) -> str:
    """The words under the picture of a proposed move."""
    return f"add: {name}"
