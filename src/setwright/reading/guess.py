"""A guess: a pattern of the trade, the question it raises, and how its texts are filled."""

import re
from collections.abc import Callable
from typing import NamedTuple

from setwright.reading import guess_fills as fills
from setwright.reading.habits import Habits
from setwright.reading.question import Question

Fill = Callable[[re.Match[str], Habits], dict[str, str]]


class Guess(NamedTuple):
    """A pattern of the trade: the question it raises and how its texts are filled."""

    pattern: str
    question: Question
    fill: Fill = fills.named


class Meant(NamedTuple):
    """A question found for a span of the normalised line."""

    question: Question
    start: int
    end: int
    fills: dict[str, str]
