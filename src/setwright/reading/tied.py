"""Names that no movement has: letters that tie moves together, rounds, several moves on one line."""

import re
from typing import Final

from setwright.findings import Finding
from setwright.places import Place
from setwright.reading import guess_fills as fills
from setwright.reading import questions_amount as amounts
from setwright.reading import questions_signs as signs
from setwright.reading.guess import Guess
from setwright.reading.guesses import meant
from setwright.reading.habits import Habits

_CODE = r"(?:[a-f][1-9](?:\s*/\s*[a-f][1-9])*|[1-9][a-f](?:\s*/\s*[1-9][a-f])*|[a-f](?:\s+[a-f])?|ss)"
NAMES: Final = (
    Guess(rf"^(?P<here>{_CODE})(?:[.):]\s*|\s+|$)", signs.TOGETHER),
    Guess(r"^(?P<here>(?:super|tri|giant)[ -]?sets?)\b", signs.TOGETHER),
    Guess(r"^(?P<rounds>\d+)\s+rounds?\b(?:\s+of\b)?", signs.ROUNDS),
    Guess(r"^(?P<before>)e(?P<step>[2-9])?mom(?P<behind>\s*\d*)$", signs.EVERY_MINUTE_NAME, fills.every),
    Guess(r"^amrap\s*(?P<number>\d+)$", amounts.ROUNDS_OR_REPS),
    Guess(r"\s(?P<here>\+|/|&|->|→)\s", signs.TOGETHER),
)
"""Looked through in this order where no movement has the name."""


_EVERY: Final = re.compile(r"e([2-9])?mom\s*(\d*)$", re.IGNORECASE)
_REPS: Final = re.compile(r"(?P<first>\d*)\s*(?P<move>[^\W\d_]{2}[^\d,:]*?)\s*(?P<last>\d*)$")


def every_minute(name: str, value: str, place: Place) -> Finding | None:
    """The finding about "EMOM 12: burpee 10", where the movement stands behind the colon; else None."""
    said, move = _EVERY.match(name), _REPS.match(value)
    if not (said and move):
        return None
    question, reps = signs.EVERY_MINUTE_NAME, move["first"] or move["last"] or "5"
    line = f"- {move['move']}: {said[2] or 10} x {reps} every {said[1] or 1}:00"
    message = question.message.format(typed=f"{name}: {value}")
    return question.rule.at(place, message, f"Write the movement first: `{line}`")


def tied(name: str, place: Place) -> Finding | None:
    """The finding about a name that ties moves together or says how often, at its words; else None."""
    found = meant(name, (0, len(name)), -1, Habits(), NAMES)
    if found is None:
        return None
    words = {**found.fills, "typed": name[found.start : found.end].strip()}
    return found.question.at(place.shifted(found.start, found.end), words)
