"""Weeks as they are typed ("week 5", "weeks 1-3 and 5") and as they are said back."""

import re
from collections.abc import Iterable
from typing import Final

from setwright.reading.retyping import plain_blanks
from setwright.reading.words import listed

_SPAN = r"\d{1,3}(?: ?- ?\d{1,3})?"
_WEEKS: Final = re.compile(rf"weeks? ?({_SPAN}(?:(?:, ?| and ){_SPAN})*)$")
_OF_FILE: Final = re.compile(r"(?P<file>.*\S), ?week (?P<week>[1-9]\d{0,2})$", re.IGNORECASE)
_STARTS: Final = re.compile(r"weeks? ?\d")
_DASHES: Final = str.maketrans("‐‑‒–—−_", "------ ")


def speaks_of_weeks(typed: str) -> bool:
    """Whether a key is meant to name weeks, readable or not."""
    return _STARTS.match(_plain(typed)) is not None


def weeks_in(typed: str) -> tuple[int, ...] | None:
    """The weeks that a text names, rising, or None when it names none or a range falls.

    >>> weeks_in("weeks 1-3 and 5"), weeks_in("week 3-1"), weeks_in("Monday")
    ((1, 2, 3, 5), None, None)
    """
    match = _WEEKS.match(_plain(typed))
    if match is None:
        return None
    named: set[int] = set()
    for span in re.split(r",|and", match[1]):
        first, _, last = span.partition("-")
        run = range(int(first), int(last or first) + 1)
        if not run:
            return None
        named.update(run)
    return tuple(sorted(named))


def say_weeks(weeks: Iterable[int]) -> str:
    """Weeks in the words of a plan.

    >>> say_weeks([1, 2, 3, 5]), say_weeks([4]), say_weeks([1, 2])
    ('weeks 1-3 and 5', 'week 4', 'weeks 1-2')
    """
    runs: list[list[int]] = []
    for week in weeks:
        if runs and week == runs[-1][-1] + 1:
            runs[-1].append(week)
        else:
            runs.append([week])
    said = [f"{run[0]}-{run[-1]}" if len(run) > 1 else str(run[0]) for run in runs]
    return f"week{'' if len(said) == len(runs[0]) == 1 else 's'} {listed(said)}"


def file_and_week(typed: str) -> tuple[str, int | None]:
    """A plan file and which of its weeks is meant; None where no week is named.

    >>> file_and_week("autumn.yaml, week 2"), file_and_week("week-2.yaml")
    (('autumn.yaml', 2), ('week-2.yaml', None))
    """
    match = _OF_FILE.match(typed)
    return (match["file"], int(match["week"])) if match else (typed, None)


def _plain(typed: str) -> str:
    return " ".join(plain_blanks(typed).casefold().translate(_DASHES).split()).replace("week-", "week ")
