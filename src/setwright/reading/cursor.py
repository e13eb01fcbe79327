"""A place in the tokens of a dose line: looks at words and numbers, takes them, or asks about them."""

from dataclasses import dataclass, field
from typing import NamedTuple

from setwright.reading import questions_amount as amount_questions
from setwright.reading.dose import Span
from setwright.reading.habits import Habits
from setwright.reading.lexer import Line, Token
from setwright.reading.question import Question

MOST_DIGITS = 6
"""Longest whole part of a number on a dose line (choice: 999,999 is beyond any load, time or distance)."""
THOUSAND_DIGITS = 3
"""Digits behind a point that may part thousands."""


_LONG_UNITS = frozenset({"min", "km"})
_SHORT_UNITS = frozenset({"s", "m", "yd", "ft"})


class Unclear(Exception):
    """Something on the line has two meanings or none, from ``start`` to ``end`` of the normalised line."""

    def __init__(self, question: Question, start: int, end: int, fills: dict[str, str]) -> None:
        super().__init__(question.rule.id)
        self.question = question
        self.start = start
        self.end = end
        self.fills = fills


class Unread(Exception):
    """The word or sign at ``token`` fits nowhere; whoever catches it looks for what it may have meant."""

    def __init__(self, token: Token) -> None:
        super().__init__(token.text)
        self.token = token


class Numeric(NamedTuple):
    """A number or a range as typed, and the token after it (its unit, perhaps)."""

    low: float
    high: float
    whole: bool
    start: Token
    unit: str


@dataclass(slots=True)
class Cursor:
    """Where the reader stands. ``notes`` gather what was read although it was typed in an unusual way.

    ``in_amounts``: a comma between numbers makes a list ("12,10"); elsewhere it is a decimal comma ("62,5").
    ``nought``: 0 repetitions may stand here, because the line says what was done.
    """

    line: Line
    habits: Habits
    at: int = 0
    in_amounts: bool = False
    nought: bool = False
    notes: list[str] = field(default_factory=list)

    @property
    def token(self) -> Token:
        """The next token."""
        return self.line.tokens[self.at]

    @property
    def text(self) -> str:
        """The next token's text."""
        return self.line.tokens[self.at].text

    @property
    def before(self) -> Token:
        """The token taken last."""
        return self.line.tokens[self.at - 1]

    def ahead(self, count: int) -> Token:
        """The token ``count`` after the next one, or the end."""
        tokens = self.line.tokens
        return tokens[min(self.at + count, len(tokens) - 1)]

    def take(self, *texts: str) -> str | None:
        """The next token's text if it is one of ``texts``; then it is taken."""
        text = self.line.tokens[self.at].text
        if text in texts:
            self.at += 1
            return text
        return None

    def take_all(self, *texts: str) -> bool:
        """Whether all of ``texts`` follow in this order; then they are taken."""
        tokens = self.line.tokens
        for offset, text in enumerate(texts):
            if tokens[min(self.at + offset, len(tokens) - 1)].text != text:
                return False
        self.at += len(texts)
        return True

    def mark(self) -> tuple[int, int]:
        """What ``reset`` needs to come back here."""
        return self.at, len(self.notes)

    def reset(self, mark: tuple[int, int]) -> None:
        """Give back all that was taken since ``mark``."""
        self.at = mark[0]
        del self.notes[mark[1] :]

    def ask(self, question: Question, start: Token, end: Token | None = None, **fills: str) -> Unclear:
        """The question about the tokens from ``start`` to ``end`` (default: the one taken last)."""
        last = end or self.before
        return Unclear(question, start.start, max(last.end, start.end), fills)

    def typed(self, start: Token, end: Token | None = None) -> str:
        """The text from ``start`` to ``end`` (default: the token taken last)."""
        return self.line.text[start.start : (end or self.before).end].strip()

    def number(self) -> float | None:
        """The number that stands next, if one does; a decimal comma is read and noted."""
        first = self.token
        if first.kind != "number":
            return None
        if len(first.text.partition(".")[0]) > MOST_DIGITS:
            raise self.ask(amount_questions.NUMBER_SIZE, first, first)
        self._thousands(first)
        self.at += 1
        if self._decimal_comma(first):
            self.at += 2
            value = f"{first.text}.{self.before.text}"
            self.notes.append(f"{first.text},{self.before.text} is read as {value}")
            return float(value)
        return float(first.text)

    def _thousands(self, token: Token) -> None:
        """Raises: Unclear when a point may stand between thousands: "1.000 m", no share such as 68.875."""
        whole, _, part = token.text.partition(".")
        if len(part) == THOUSAND_DIGITS and part.endswith("0") and whole.strip("0"):
            raise self.ask(
                amount_questions.THOUSANDS, token, token, joined=whole + part, value=f"{float(token.text):g}"
            )

    def _measured(self) -> bool:
        """Whether "1,5 min" or "2,5 m" stands here as all that a set holds, and no list of two."""
        place = self.at - 2
        alone = place < 0 or self.line.tokens[place].text == "x"
        second, unit = self.ahead(1), self.ahead(2)
        return alone and (unit.text in _LONG_UNITS or (len(second.text) == 1 and unit.text in _SHORT_UNITS))

    def _decimal_comma(self, first: Token) -> bool:
        """Whether "62,5" stands here: one comma, no blanks, and no further number tied to it by a comma."""
        if (
            self.text != ","
            or (self.in_amounts and not self._measured())
            or self.line.text[: first.start].endswith(",")
        ):
            return False
        comma, second, third, fourth = (self.ahead(n) for n in range(4))
        if second.kind != "number" or "." in first.text + second.text:
            return False
        if comma.start != first.end or second.start != comma.end or len(second.text) > MOST_DIGITS:
            return False
        runs_on = third.text == "," and third.start == second.end and fourth.kind == "number"
        return not (runs_on and fourth.start == third.end)

    def numeric(self) -> Numeric | None:
        """A number or a range, taken, with the token that follows it (not taken).

        Raises: Unclear when a range falls, Unread when a third number is joined to it ("12-10-8").
        """
        start = self.token
        low = self.number()
        if low is None:
            return None
        whole = "." not in start.text and self.before is start
        high = low
        if self.text == "-" and self.ahead(1).kind == "number":
            self.at += 1
            second = self.token
            high = self.number() or 0.0
            whole = whole and "." not in second.text and self.before is second
            if self.text == "-" and self.ahead(1).kind == "number":
                raise Unread(self.token)
            self.rising(low, high, start)
        return Numeric(low, high, whole, start, self.text)

    def rising(self, low: float, high: float, start: Token) -> None:
        """Raises: Unclear when a range from ``low`` to ``high`` falls."""
        if high < low:
            raise self.ask(amount_questions.RANGE_FALLS, start, low=f"{high:g}", high=f"{low:g}")

    def whole(self) -> int | None:
        """A whole number, taken, or None and nothing taken."""
        token = self.token
        if token.kind != "number" or "." in token.text:
            return None
        if len(token.text) > MOST_DIGITS:
            raise self.ask(amount_questions.NUMBER_SIZE, token, token)
        self.at += 1
        return int(token.text)


def counted(value: Numeric, cursor: Cursor) -> Span:
    """A number of sets or repetitions.

    Raises: Unclear when it is not whole, or 0 in a plan; Unread when more dots follow ("2.2.2").
    """
    if not value.whole and cursor.text == ".":
        raise Unread(cursor.token)
    if not value.whole:
        low = int(value.low)
        raise cursor.ask(amount_questions.NOT_WHOLE, value.start, low=str(low), high=str(low + 1))
    if value.low == 0 and not cursor.nought:
        raise cursor.ask(amount_questions.NOUGHT, value.start)
    return Span(low=value.low, high=value.high)
