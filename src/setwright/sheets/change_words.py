"""The fixed words of the difference list."""

from typing import Final

REORDERED: Final = "in another order"
OTHER_CHANGES: Final = "Only times, words or gaps."
_NOTHING: Final = {"dose": "no dose", "load": "no load written", "remarks": "no remark"}


def changed_since(version: str) -> str:
    """The heading of the difference list."""
    return f"Changed since {version}"


def added(line: str) -> str:
    """A line that the last print did not hold."""
    return f"added {line}"


def dropped(line: str) -> str:
    """A line that only the last print held."""
    return f"dropped {line}"


def swapped(line: str, name: str) -> str:
    """A line that stands where another movement stood."""
    return f"{line}, in place of {name}"


def reworded(line: str, field: str, now: str, was: str) -> str:
    """A line with another dose, load or remark."""
    return f"{line}: {now or _NOTHING[field]} (was {was or _NOTHING[field]})"


def added_session(session: str) -> str:
    """A session that the last print did not hold."""
    return f"{session}: a new session"


def dropped_session(session: str) -> str:
    """A session that only the last print held."""
    return f"{session}: no longer in the week"


def new_sheet(athlete: str) -> str:
    """An athlete who had no sheet of a session in the last print."""
    return f"a sheet for {athlete}"


def no_sheet(athlete: str) -> str:
    """An athlete who has no sheet of a session any more."""
    return f"no sheet for {athlete} any more"


def first_of(told: tuple[str, ...], most: int) -> tuple[str, ...]:
    """The first of many remarks, and how many more there are."""
    return told if len(told) <= most else (*told[: most - 1], f"and {len(told) - most + 1} more")
