"""Times, rest, tempo and pauses."""

import re
from typing import Literal

from setwright.reading import questions_how as ask
from setwright.reading.cursor import Cursor, Numeric, Unread
from setwright.reading.dose import Rest, Span, Tempo
from setwright.reading.lexer import Token
from setwright.reading.questions_amount import CLOCK_OVER, NUMBER_SIZE

SHORTEST_BARE_REST_S = 15
"""A rest without a unit from here up is in seconds (choice: below it, it may be minutes)."""

LONGEST_S = 86_400
"""Longest time that is read, in seconds (choice: a day)."""

METRES = {"m": 1.0, "km": 1000.0, "yd": 0.9144, "ft": 0.3048}
"""Metres of each unit of distance (international yard and foot, exact by definition)."""

SECONDS = {"s": 1.0, '"': 1.0, "min": 60.0, "'": 60.0}
_RESTS = {
    ("none",): Rest(kind="none"),
    ("as", "needed"): Rest(kind="as_needed"),
    ("when", "partner", "is", "done"): Rest(kind="partner"),
    ("equal", "to", "the", "work"): Rest(kind="times_work", low=1, high=1),
    ("half", "the", "work"): Rest(kind="times_work", low=0.5, high=0.5),
}
_PLACES = {
    ("at", "the", "bottom"): "bottom_s",
    ("at", "the", "top"): "top_s",
    ("at", "the", "chest"): "at the chest",
    ("halfway",): "halfway",
}
_PHASES = 4


HEAVIEST_PAIR = 60
"""A number with an s up to here may name a pair of dumbbells (choice: in kilograms, few gyms go higher)."""


def clock_s(text: str) -> float:
    """Seconds of a clock time such as ":45", "1:30" or "1:02:03.5"."""
    seconds = 0.0
    for part in text.split(":"):
        seconds = seconds * 60 + float(part or 0)
    return seconds


def one_time(cursor: Cursor) -> float | None:
    """Seconds of the time that stands next, taken; None (and nothing taken) when none does."""
    start = cursor.mark()
    if cursor.token.kind == "clock":
        cursor.at += 1
        seconds = clock_s(cursor.before.text)
        minutes, _, over = cursor.before.text.rpartition(":")
        if minutes.strip("0:") and float(over) >= SECONDS["min"]:
            clock = f"{seconds // SECONDS['min']:.0f}:{seconds % SECONDS['min']:02g}"
            raise cursor.ask(CLOCK_OVER, cursor.before, clock=clock, seconds=over)
        if seconds > LONGEST_S:
            raise cursor.ask(NUMBER_SIZE, cursor.before)
        return seconds
    value = cursor.number()
    unit = None if value is None else cursor.take(*SECONDS)
    if value is None or unit is None:
        cursor.reset(start)
        return None
    seconds = value * SECONDS[unit]
    if SECONDS[unit] == 1 or cursor.token.kind != "number":
        return seconds
    if cursor.ahead(1).text in ("s", '"'):
        seconds += cursor.number() or 0.0
        cursor.at += 1
    return seconds


def duration(cursor: Cursor) -> Span | None:
    """A time or a range of times in seconds, taken; None (and nothing taken) when none stands here."""
    start, first = cursor.mark(), cursor.token
    low = one_time(cursor)
    if low is None:
        pair = cursor.numeric()
        unit = None if pair is None else cursor.take(*SECONDS)
        if pair is None or unit is None:
            cursor.reset(start)
            return None
        return Span(low=pair.low * SECONDS[unit], high=pair.high * SECONDS[unit])
    high = low
    if cursor.text == "-":
        back = cursor.mark()
        cursor.at += 1
        high = one_time(cursor) or 0.0
        if not high:
            cursor.reset(back)
            high = low
    cursor.rising(low, high, first)
    return Span(low=low, high=high)


def may_be_pair(cursor: Cursor, start: Token) -> bool:
    """Whether the time that starts at ``start`` may be a plural: "20s" for a pair of twenties."""
    plural = re.match(r"\d+s\b", cursor.line.text[start.start :], re.IGNORECASE)
    in_metres = any(token.text in METRES for token in cursor.line.tokens)
    return plural is not None and not in_metres and float(start.text) <= HEAVIEST_PAIR


def rest(cursor: Cursor) -> Rest:
    """What stands after the word rest, taken.

    Raises: Unclear when its unit is missing, Unread when it is no rest.
    """
    word = cursor.before
    for words, found in _RESTS.items():
        if cursor.take_all(*words):
            return found
    span = duration(cursor)
    if span is not None:
        return Rest(kind="seconds", low=span.low, high=span.high)
    value = cursor.numeric()
    if value is not None:
        return _measured(cursor, word, value)
    if cursor.token.kind == "end" or cursor.text in (",", "then"):
        raise cursor.ask(ask.REST_WHAT, word, word)
    raise Unread(cursor.token)


def _measured(cursor: Cursor, word: Token, value: Numeric) -> Rest:
    """A rest in metres, in times the work, or in seconds without a unit."""
    if value.low == value.high and cursor.take_all("times", "the", "work"):
        return Rest(kind="times_work", low=value.low, high=value.high)
    if cursor.text in METRES:
        metres = METRES[cursor.text]
        cursor.at += 1
        return Rest(kind="metres", low=value.low * metres, high=value.high * metres)
    if cursor.text == ":":
        raise Unread(cursor.token)
    if not value.whole:
        whole, _, part = f"{value.low:.2f}".partition(".")
        raise cursor.ask(ask.REST_POINT, word, number=f"{value.low:g}", minutes=whole, seconds=part)
    if value.low < SHORTEST_BARE_REST_S:
        raise cursor.ask(ask.REST_UNIT, word, number=cursor.typed(value.start))
    return Rest(kind="seconds", low=value.low, high=value.high)


def tempo_digits(cursor: Cursor) -> Tempo:
    """The tempo token that stands next: "tempo 3-1-X-0", lowering first in every movement."""
    token = cursor.token
    cursor.at += 1
    typed = token.text.removeprefix("tempo").strip()
    marks = {char for char in typed if char not in "0123456789x"}
    digits = [char for char in typed if char not in marks]
    even = len(marks) == 0 or (len(marks) == 1 and typed[1::2] == marks.pop() * (_PHASES - 1))
    if len(digits) != _PHASES or not even or "." in typed:
        pair = re.fullmatch(r"(\d+)\s*[/:-]\s*(\d+)", typed)
        if pair:
            raise cursor.ask(ask.TEMPO_PAIR, token, down=pair[1], up=pair[2])
        example = [*digits, "0", "1", "0"][:_PHASES] if len(digits) < _PHASES else ["3", "0", "1", "0"]
        raise cursor.ask(ask.TEMPO, token, write="-".join(example).upper(), first=digits[0].upper())
    lower, bottom, lift, top = (_phase(char) for char in digits)
    return Tempo(lower_s=lower, bottom_s=bottom, lift_s=lift, top_s=top)


def _phase(char: str) -> float | Literal["X"]:
    return "X" if char == "x" else float(char)


def phases(cursor: Cursor) -> Tempo | None:
    """Phases in words: "3 s down, pause 2 s at the bottom"; None when none stands here."""
    found: dict[str, float | str] = {}
    while True:
        back = cursor.mark()
        if found:
            cursor.take(",")
        phase = _one_phase(cursor)
        if phase is None or set(phase) & set(found):
            cursor.reset(back)
            break
        found |= phase
    return Tempo.model_validate(found) if found else None


def _one_phase(cursor: Cursor) -> dict[str, float | str] | None:
    if cursor.take_all("fast", "up"):
        return {"lift_s": "X"}
    if cursor.take("pause"):
        seconds = one_time(cursor)
        if seconds is None:
            return None
        for words, place in _PLACES.items():
            if cursor.take_all(*words):
                return {place: seconds} if place.endswith("_s") else {"held_s": seconds, "held_at": place}
        return None
    seconds = one_time(cursor)
    way = None if seconds is None else cursor.take("down", "up")
    if seconds is None or way is None:
        return None
    return {"lower_s" if way == "down" else "lift_s": seconds}


def pause_between(cursor: Cursor) -> Span:
    """A pause between parts of a set; ``pause`` itself is taken already."""
    word = cursor.before
    span = duration(cursor)
    if span is None:
        value = cursor.numeric()
        if value is None:
            raise cursor.ask(ask.PAUSE_PARTS, word, word)
        raise cursor.ask(ask.PAUSE_PLACE, word, time=f"{cursor.typed(value.start)} s")
    return span
