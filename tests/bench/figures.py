"""What a benchmark hands over: things measured, with what is asked of them."""

from collections.abc import Iterable
from typing import NamedTuple


class Figure(NamedTuple):
    """One thing that was measured: its value with the unit, what is asked of it, and whether that holds."""

    what: str
    measured: str
    asked: str = ""
    holds: bool = True


def seen(what: str, value: float, say: str) -> Figure:
    """Something nothing is asked of; ``say``: how the value is printed, as for ``str.format``."""
    return Figure(what, say.format(value))


def at_most(what: str, value: float, limit: float, say: str, *, goal: float | None = None) -> Figure:
    """Something that fails above ``limit``; ``goal``: what is aimed at, where a busy machine is let off."""
    asked = f"at most {say.format(limit if goal is None else goal)}"
    return Figure(
        what,
        say.format(value),
        asked if goal is None else f"{asked}, fails above {say.format(limit)}",
        value <= limit,
    )


def at_least(what: str, value: float, limit: float, say: str) -> Figure:
    """Something that fails below ``limit``."""
    return Figure(what, say.format(value), f"at least {say.format(limit)}", value >= limit)


def shown(figures: Iterable[Figure]) -> list[Figure]:
    """The figures, each printed as soon as it is measured."""
    found = []
    for figure in figures:
        told = f" ({figure.asked}{'' if figure.holds else ': MISSED'})" if figure.asked else ""
        print(f"{figure.what}: {figure.measured}{told}", flush=True)
        found.append(figure)
    return found
