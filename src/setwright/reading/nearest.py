"""Which known words a typed one may have meant."""

from collections.abc import Iterable
from difflib import get_close_matches
from typing import Final

LIKE_ENOUGH: Final = 0.6
"""Lowest likeness (0 to 1, difflib ratio) at which a word is proposed; choice."""

LONGEST: Final = 60
"""Longest word, in characters, for which a likeness is looked for; choice: no key is half as long."""


def nearest(typed: str, known: Iterable[str], most: int = 1, least: float = LIKE_ENOUGH) -> list[str]:
    """Up to ``most`` known words at least ``least`` like ``typed`` (0 to 1), best first."""
    if len(typed) > LONGEST:
        return []
    by_fold = {word.casefold(): word for word in known}
    return [by_fold[word] for word in get_close_matches(typed.casefold(), list(by_fold), most, least)]


def choice(words: Iterable[str]) -> str:
    """Words as a choice: "kg or lb", "low, middle or high"."""
    *first, last = words
    return f"{', '.join(first)} or {last}" if first else last
