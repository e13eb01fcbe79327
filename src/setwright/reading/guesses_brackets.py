"""What brackets, stars and signs of comparison may have meant."""

from setwright.reading import guess_fills as fills
from setwright.reading import guess_lists as lists
from setwright.reading import questions_signs as signs
from setwright.reading.guess import Guess

BRACKETED = (
    Guess(r"^\s*(?P<reps>\d+)\s*\([^)\d]*\)\s*$", signs.BRACKETS_NUMBER),
    Guess(r"\(\s*\d[\d.]*\s*%\s*/\s*\d+\s*\)\s*\d+", signs.BRACKETS, fills.reps_at),
    Guess(
        r"(?P<sets>\d+)\s*x\s*\d+\s*\(\s*(?P<inside>\d+\s*(?:each|per)\s+\w+)\s*\)",
        signs.BRACKETS,
        fills.inside,
    ),
    Guess(
        r"(?:(?P<before>\d+)\s*x\s*)?\((?P<parts>\d+(?:\s*\+\s*\d+)+|\d+\s*x\s*\d+)\)"
        r"(?:\s*,?\s*(?P<pause>\d+)\s*s\b)?",
        signs.BRACKETS_PLUS,
        lists.bracketed,
    ),
    Guess(r"(?:\d+\*?[\s,]+)+\d+\*", signs.STARS, lists.stars),
    Guess(r"(?<!\d)(?<!\d )>\s*(?P<reps>\d+)\b", signs.MORE_THAN, fills.more_than),
    Guess(r"(?<!\d)(?<!\d )<\s*=?\s*(?P<reps>[2-9]|[1-9]\d+)\b", signs.FEWER_THAN, fills.fewer_than),
)
"""Looked through at a bracket or a star, in this order."""
