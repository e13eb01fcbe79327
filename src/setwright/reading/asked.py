"""The questions of one line, gathered while it is read."""

import re
from collections.abc import Callable, Mapping
from dataclasses import replace
from types import MappingProxyType
from typing import Final, NamedTuple

from setwright.findings import Finding, in_order
from setwright.places import Place
from setwright.reading import questions_amount as ask
from setwright.reading import questions_how as how
from setwright.reading import questions_signs as signs
from setwright.reading.cursor import Cursor, Unclear, Unread
from setwright.reading.guess import Guess, Meant
from setwright.reading.guesses import GUESSES, meant
from setwright.reading.guesses_brackets import BRACKETED
from setwright.reading.lexer import Token
from setwright.reading.nearest import choice
from setwright.reading.question import Question
from setwright.reading.vocabulary import HINTS, VOCABULARY, nearest_words, words_like
from setwright.reading.whole_lines import whole_lines

MOST_CHARACTERS = 400
"""Longest dose line that is read (choice: the longest of the trade has 150 characters)."""

_JOINTS = (",", "then")
_BRACKETS = "()[]{}<>"
_NO_REMARK = frozenset(":#\"'`&*!|>%@{}[]")
"""Signs that would need quotes in a remark."""
_REMARK = re.compile(r"[^\W\d_]{2}")
"""How a remark begins: what begins with a sign or "x 4" may belong to the dose."""


class Tongue(NamedTuple):
    """How a kind of line asks: what its words may have meant, and its words for a dose line's questions."""

    guesses: tuple[Guess, ...]
    instead: Mapping[Question, Question] = MappingProxyType({})


DOSE: Final = Tongue(GUESSES)


class Asked:
    """Findings of one line; where reading stopped, it says what was meant and where to go on.

    ``reads`` tells whether a text is a line of this kind, so that only lines that are read are offered to
    copy; None when nobody will see what is offered.
    """

    def __init__(
        self,
        cursor: Cursor,
        place: Place,
        reads: Callable[[str], bool] | None,
        tongue: Tongue = DOSE,
    ) -> None:
        self._cursor = cursor
        self._place = place
        self._reads = reads
        self._tongue = tongue
        self._spans: list[tuple[int, int]] = []
        self.findings: list[Finding] = []

    def in_order(self) -> tuple[Finding, ...]:
        """The findings from left to right; a line's only fault is mended in the whole line."""
        if self._reads is None or not self.findings:
            return tuple(in_order(self.findings))
        only = self.findings[0]
        if len(self.findings) == 1:
            change = whole_lines(only.change, self._cursor.line.text, self._spans[0], self._reads)
            return (replace(only, change=change),)
        chained = self._chained(self._reads)
        return (replace(only, change=f'Write "{chained}"'),) if chained else tuple(in_order(self.findings))

    def _chained(self, reads: Callable[[str], bool]) -> str | None:
        """The line with a word before each further kind of sets, where that is all that it lacks."""
        line = self._cursor.line.text
        if {finding.rule for finding in self.findings} != {ask.SECOND_DOSE.rule.id}:
            return None
        for start, _ in sorted(self._spans, reverse=True):
            line = f"{line[:start]}then {line[start:]}"
        return line if reads(line) else None

    def fits(self) -> bool:
        """Whether the line can be a dose line at all; if not, that is the finding."""
        line = self._cursor.line.text
        if len(line) > MOST_CHARACTERS:
            self._add(ask.TOO_LONG, 0, len(line), {"most": str(MOST_CHARACTERS)})
        elif self._cursor.token.kind == "end":
            self._add(ask.NOTHING, 0, len(line), {})
        return not self.findings

    def about(self, question: Question) -> bool:
        """Whether a finding of the question's rule is among them."""
        return any(finding.rule == question.rule.id for finding in self.findings)

    def ask(self, unclear: Unclear) -> None:
        """Add the finding of a question."""
        self._add(unclear.question, unclear.start, unclear.end, unclear.fills)

    def at_group_end(self) -> bool:
        """Whether the line or the group of sets ends here."""
        return self._cursor.token.kind == "end" or self._cursor.text == "then"

    def nothing_after_comma(self) -> None:
        """Ask about a comma with nothing behind it, the token taken last."""
        comma = self._cursor.before
        self._add(ask.COMMA, comma.start, comma.end, {})

    def stopped(self, stop: Unclear | Unread, part: int, *, quiet: bool = False) -> None:
        """Ask about what stopped the reading in the comma part that starts at ``part``, and go on behind it.

        ``quiet``: the amount of the group is not known, so numbers that fit nowhere are no new fault.
        """
        if isinstance(stop, Unclear):
            if not (quiet and stop.question in (ask.SECOND_DOSE, how.NUMBER_ALONE)):
                self.ask(stop)
            self._go_on(stop.end)
            return
        token = stop.token if stop.token.kind != "end" else self._last_token()
        guess = self._guess(token, part)
        if guess is not None:
            self._add(guess.question, guess.start, guess.end, guess.fills)
        elif not (quiet and (token.kind == "number" or token.text in ("max", "x", "-"))):
            self._unknown(token)
        self._go_on(guess.end if guess else token.start if token.text in _JOINTS else token.end)

    def _guess(self, token: Token, part: int) -> Meant | None:
        if token.text in _BRACKETS or (token.text == "x" and self._cursor.line.text[token.start] == "*"):
            return self._brackets(token)
        ends = [
            t.start for t in self._cursor.line.tokens if t.start > token.start and t.text in (",", "then", "")
        ]
        span = (part, ends[0] if ends else token.end)
        return meant(self._cursor.line.text, span, token.start, self._cursor.habits, self._tongue.guesses)

    def _brackets(self, token: Token) -> Meant:
        """The question about a bracket or star, with a line to copy if one without it is read."""
        text, reads = self._cursor.line.text, self._reads or bool
        known = meant(text, (0, len(text)), token.start, self._cursor.habits, BRACKETED)
        if known is not None:
            return known
        bare = re.sub(r"[()\[\]{}<>*]", "", text)
        comma = re.sub(r"\s*\(([^()]*)\)", r", \1", text)
        without = re.sub(r"\s*[(\[{<][^)\]}>0-9]*[)\]}>]", "", text)
        end = token.end
        while end < len(text) and text[end - 1] not in ")]}>":
            end += 1
        for line in (bare, comma, without):
            write = " ".join(line.split())
            if not set(write) & {*_BRACKETS, "*"} and reads(write):
                return Meant(signs.BRACKETS, token.start, end, {"write": write})
        return Meant(signs.BRACKETS_OUT, token.start, end, {})

    def _unknown(self, token: Token) -> None:
        if token.kind in ("number", "clock"):
            question = how.NUMBER_ALONE if token.kind == "number" else how.CLOCK_ALONE
            self._add(question, token.start, token.end, {})
        elif token.text == ",":
            self._add(ask.COMMA, token.start, token.end, {})
        else:
            question = ask.OUT_OF_PLACE if token.text in VOCABULARY else ask.UNKNOWN
            fitting = self._fitting(token)
            known = token.text in HINTS or question in self._tongue.instead or fitting
            remark = None if known else self._remark(token)
            if remark is None:
                near = f"Nearest: {choice(fitting)}" if fitting else nearest_words(token.text)
                self._add(question, token.start, token.end, {"near": near})
            else:
                end, line = remark
                self._add(ask.REMARK, token.start, end, {"line": line})

    def _fitting(self, token: Token) -> list[str]:
        """Words of the dose line that are like one it does not know, with which the line is read."""
        text, reads = self._cursor.line.text, self._reads or bool
        words = [] if token.text in HINTS else words_like(token.text)
        return [f'"{w}"' for w in words if reads(f"{text[: token.start]}{w}{text[token.end :]}")]

    def _remark(self, token: Token) -> tuple[int, str] | None:
        """Where the words end that start at a token, and the line without them, where it reads so."""
        text, reads = self._cursor.line.text, self._reads or bool
        ends = (t.start for t in self._cursor.line.tokens if t.start > token.start and t.text in _JOINTS)
        end = next(ends, len(text))
        line = f"{text[: token.start].rstrip(' ,')}{text[end:]}"
        words = text[token.start : end]
        plain = _NO_REMARK.isdisjoint(words) and _REMARK.match(words) and line.strip()
        return (end, line) if plain and reads(line) else None

    def _last_token(self) -> Token:
        return self._cursor.line.tokens[-2]

    def _go_on(self, end: int) -> None:
        """Go to the first comma or "then" behind ``end`` and behind what is taken already."""
        cursor = self._cursor
        while cursor.token.kind != "end" and (cursor.token.start < end or cursor.text not in _JOINTS):
            cursor.at += 1

    def _add(self, question: Question, start: int, end: int, fills: dict[str, str]) -> None:
        question = self._tongue.instead.get(question, question)
        line = self._cursor.line
        self._spans.append((start, end))
        typed = line.text[start:end].strip()
        words = {**fills, "typed": typed}
        place = self._place.shifted(*line.typed_span(start, end))
        self.findings.append(question.at(place, words))
