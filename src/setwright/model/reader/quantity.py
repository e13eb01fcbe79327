"""A number with its unit in one short text: "2.5 kg", "300 reps", "12 sets", "5%"."""

import re
from collections.abc import Mapping
from typing import Final, NamedTuple

from setwright.model.next import AddUnit
from setwright.reading.measures import UNITS, number

_WORDS: Final[Mapping[str, AddUnit]] = {
    **UNITS, "%": "%", "percent": "%", **dict.fromkeys(("rep", "reps", "repetition", "repetitions"), "reps"),
    **dict.fromkeys(("set", "sets"), "sets"),
}  # fmt: skip
_FORM = re.compile(r"(\d{1,6}(?:[.,]\d{1,3})?) ?([a-z]+|%)?$", re.IGNORECASE)
_COUNTED: Final = ("reps", "sets")


class Quantity(NamedTuple):
    """A number and its unit; ``unit`` None when none is written."""

    amount: float
    unit: AddUnit | None


def quantity(typed: str) -> Quantity | None:
    """The quantity that a text is; None when it is none, or counts parts of a repetition or set."""
    match = _FORM.match(typed)
    if match is None or (match[2] and match[2].casefold() not in _WORDS):
        return None
    unit = _WORDS[match[2].casefold()] if match[2] else None
    amount = number(match[1])
    return None if unit in _COUNTED and amount != int(amount) else Quantity(amount, unit)
