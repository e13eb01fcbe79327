"""What words that fit nowhere may have meant: patterns of the trade, each with the question it raises.

A dose line is first read by its grammar; only where that stops are these looked at, first match first.
"""

import re
from collections.abc import Callable
from typing import NamedTuple

from setwright.reading import guess_fills as fills
from setwright.reading import questions_amount as amounts
from setwright.reading import questions_how as how
from setwright.reading import questions_signs as signs
from setwright.reading.habits import Habits
from setwright.reading.question import Question

Fill = Callable[[re.Match[str], Habits], dict[str, str]]


class Guess(NamedTuple):
    """A pattern of the trade: the question it raises and how its texts are filled."""

    pattern: str
    question: Question
    fill: Fill


class Meant(NamedTuple):
    """A question found for a span of the normalised line."""

    question: Question
    start: int
    end: int
    fills: dict[str, str]


def _guess(pattern: str, question: Question, fill: Fill = fills.named) -> Guess:
    return Guess(pattern, question, fill)


GUESSES = (
    _guess(r"\be(?P<step>[2-9])?mom\b(?:\D*\d+){0,2}", signs.EVERY_MINUTE, fills.every),
    _guess(r"every\s+(?P<time>[^,x]+?)\s*x\s*(?P<sets>\d+)", signs.EVERY_MINUTE, fills.every_for),
    _guess(r"odd\s*/\s*even", signs.EVERY_MINUTE, fills.every),
    _guess(r"\bdeload\b.*", signs.LIGHTER),
    _guess(
        r"->|→|=>|⇒|(?:\+?\s*[\d.]+\s*(?:kg|lb|%)?)?\s*/\s*w(?:ee)?k\b|\bw(?:ee)?k?\s?\d+\b|\+\s*\d+\s*(?:sets?|reps?)\b",
        signs.WEEKS,
        fills.weeks,
    ),
    _guess(r"\b[a-f][1-9]\b|\b[1-9][a-f]\b|\bss\b|\bb b\b|\bsuperset\b", signs.TOGETHER),
    _guess(r"\b[lr]\s*\d+\s*x\s*\d+(?:\s*[,;]\s*[lr]\s*\d+\s*x\s*\d+)?", signs.LEFT_RIGHT, fills.by_side),
    _guess(r"\br\s*(?P<number>\d+)", signs.LETTER_REST),
    _guess(
        rf"\d{{1,2}}[-/ .]*(?:{fills.MONTH})[a-z]*|(?:{fills.MONTH})[a-z]*[-/ .]*\d{{1,2}}|\d{{4}}-\d\d-\d\d",
        signs.DATE,
        fills.date,
    ),
    _guess(
        rf"\b(?P<sets>{fills.WORD_NUMBER})\b(?:\s+(?:by|x|times|sets?|of))+\s+(?P<reps>{fills.WORD_NUMBER})\b",
        signs.NUMBER_WORDS,
        fills.in_digits,
    ),
    _guess(rf"\b(?P<count>\d|{fills.WORD_NUMBER})\s+plates?\b", how.PLATES, fills.plates),
    _guess(r"\brest\s*:(?P<number>\d{3,})", how.REST_COLON),
    _guess(r"\b\d+\s*:\s*\d\b|\d+\s+:\s*\d+|\d+\s*:\s+\d+", signs.RATIO, fills.listed),
    _guess(
        r"(?<![\d/.])(?P<day>[3-9]|1[0-2])/(?!(?P=day)\b)(?:[3-9]|1[0-2])(?![\d/%.])",
        signs.DATE,
        fills.date,
    ),
    _guess(r"(?P<scale>rir|rpe)\s*\d+(?:\s*/\s*\d+)+", signs.SLASH_EFFORT, fills.efforts),
    _guess(r"\d[\d.%]*(?:\s*/\s*\d[\d.%]*){2,}", signs.SLASH, fills.listed),
    _guess(r"\d[^,;/()]*/\s*[^\s,;()/]+", signs.SLASH_TWO, fills.slashed),
    _guess(r"(?:[^\s,;()/]+\s*/\s*)+[^\s,;()]+|/", signs.SLASH_WORDS),
    _guess(
        r"\d+\s*-\s*\d+(?:\s*-\s*\d+)?\s*(?:ladder|pyramid)|(?:ladder|pyramid)\s*\d+(?:\s*-\s*\d+)?",
        amounts.LADDER,
        fills.ladder,
    ),
    _guess(r"\d+(?:\s*-\s*\d+){2,}", signs.HYPHEN_LIST, fills.listed),
    _guess(r"-\s*(?P<percent>\d+(?:\.\d+)?)\s*%", how.PERCENT_OF_NOTHING, fills.percent),
    _guess(
        r"(?P<warm>\d+)\s*(?:wu|warm-?ups?)\b(?:\s*sets?)?\s*\+\s*(?P<work>[^,]+)",
        signs.WARM_UP_PLUS,
        fills.warm,
    ),
    _guess(r"(?P<first>\d+\s*(?:%|kg|lb))\s*\+\s*chains?\s*(?P<last>\d+)", signs.CHAIN_PLUS),
    _guess(r"(?P<number>\d+)\s*(?P<letters>l\s*\+\s*r)\b", signs.BOTH_SIDES),
    _guess(
        r"(?:(?P<sets>\d+)\s*x\s*)?(?<![\d.])(?P<parts>\d+(?:\.\d+){2,})(?:\s*x\s*(?P<after>\d+))?",
        signs.DOTTED,
        fills.dots,
    ),
    _guess(
        r"(?:^|(?<=,)|(?<=, )|(?<=at )|(?<=@))\+\s*(?P<number>\d+(?:\.\d+)?)\s*(?P<unit>kg|lb)?",
        how.PLUS_BASE,
        fills.base,
    ),
    _guess(r"\bm\s*\+\s*(?P<number>\d+)", signs.MAX_PLUS),
    _guess(r"\d+(?:\s*\+\s*\w+)+", signs.BARE_PLUS, fills.pluses),
    _guess(r"\+\s*(?P<number>\d+(?:\.\d+)?)\s*(?P<unit>kg|lb)?", how.PLUS_BASE, fills.base),
    _guess(r"(?:\d+\*?\s+)+\d+\*", signs.BRACKETS_OUT),
    _guess(r"hold\s*(?P<number>\d+)", how.HOLD),
    _guess(r"(?P<amount>\d+)\s*alt\b", amounts.ALTERNATING),
    _guess(r"\b(?:challenging|hard|choose|easy|comfortable|medium|tough|max effort)\b", how.NO_NUMBER),
)
"""Looked through in this order; a plan that reads never comes here."""


def meant(
    text: str, part: tuple[int, int], fault: int, habits: Habits, guesses: tuple[Guess, ...] = GUESSES
) -> Meant | None:
    """The first guess that matches in ``part`` of ``text`` and reaches beyond ``fault``, if any."""
    for guess in guesses:
        for match in re.compile(guess.pattern, re.IGNORECASE).finditer(text, part[0]):
            if match.start() >= part[1]:
                break
            if match.end() > fault:
                return Meant(guess.question, *match.span(), guess.fill(match, habits))
    return None
