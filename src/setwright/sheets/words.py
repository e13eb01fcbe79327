"""Every fixed word of the sheets, and how numbers, times and dates are written on paper."""

import datetime as dt
import re
from collections.abc import Iterable
from itertools import takewhile
from string import ascii_lowercase
from typing import Final

from setwright.model.plan import DAYS, Week
from setwright.reading.dose import Amount, Rest, Span, Tempo
from setwright.sheets.style import IN_FORCE

COLUMNS: Final = ("number", "do", "load", "write reps done, one box a set", "changed to")
MARK: Final = "\ufdd0"
"""Stands in footers where the version belongs, which is known only when every sheet is (no character)."""

CHANGED_BOX: Final = "box for what it was changed to"
NAME: Final = "Name"
PAGE: Final = ("page ", " of ")
FOR_THE_COACH: Final = "For the coach: not for the wall"
IN_HALF_A_MINUTE: Final = "in half a minute"
NEXT_TIME: Final = "Next time:"
SHORT_OF_TIME: Final = "Short of time?"
INTERRUPTED: Final = "Interrupted?"
SAFETY: Final = ("Stop and tell the coach", "if something hurts, feels unstable or numb.")
SESSION: Final = "Session"
KEY: Final = "Key"
ROUNDS_DONE: Final = "rounds done"
NOTE: Final = "Note"
AT: Final = "at"
NO_LOAD: Final = "no load"
EMPTY_BAR: Final = "empty bar"
ONE_A_HAND: Final = "one a hand"
COOL_DOWN: Final = "Cool-down:"
MATRIX: Final = (
    "chest part", "sets", "moves that follow its line", "loaded long", "loaded short",
    "loaded across the midline", "heaviest lift",
)  # fmt: skip
MATRIX_KEY: Final = (("much", "much, yes"), ("some", "some, partly"), ("none", "none, no"))
GAP: Final = "gap"
COVERS: Final = "What the week covers"
NOT_TRAINED: Final = "Chest: not trained this week."
MODEL_NOTE: Final = "Mechanical figures from one cadaver-sized model; not muscle activity, not growth."

MONTHS: Final = (
    "January", "February", "March", "April", "May", "June",
    "July", "August", "September", "October", "November", "December",
)  # fmt: skip

FOOTER_NAME: Final = 28
"""Characters of a name in the footer (choice: three of them and the mark fit in one line)."""

DAY_LETTERS: Final = 3
"""Letters of a day in the footer (choice)."""

MINUTE: Final = 60
CLOCK_FROM_S: Final = 60
"""From a minute on, times are written as a clock (choice: "45 s", "1:30")."""

SET_CLOCK_FROM_S: Final = 120
"""From two minutes on, how long a set lasts is a clock too (choice: "60 s" is a hold, "2:00" an interval)."""

_RANGE: Final = re.compile(r"(?<![\d.:-])(\d+(?:[.:]\d+)?)-(\d+(?:[.:]\d+)?)(?![\d.:-])")
_TIMES: Final = re.compile(r"(?<=\d) x (?=\d)| x (?=max)")

_ANOTHER: Final = re.compile(r"[\d–+.]+(?: [sm])?")
_POINT: Final = re.compile(r"(?<=\d)\.(?=\d)")
_UNIT: Final = re.compile(r"(?<=\d) (?=(?:s|m|kg|lb|min|cm|left|%)\b|%)")


def typeset(text: str) -> str:
    """Plain text as it is set on paper: a multiplication sign, an en dash inside a range; a tempo stays.

    >>> typeset("3 x 8-10, 2 left, tempo 3-1-1-0")
    '3 × 8–10, 2 left, tempo 3-1-1-0'
    """
    return decimals(_TIMES.sub(" × ", _RANGE.sub(r"\1–\2", text)))


def sets_only(dose: str) -> str:
    """A dose without effort, rest and the like, for the week at a glance.

    >>> sets_only("1 × 5, 2 left, then 8, 6, 4, 1 left")
    '1 × 5, then 8, 6, 4'
    """
    return ", then ".join(_amounts(part) for part in dose.split(", then "))


def _amounts(part: str) -> str:
    first, *more = part.split(", ")
    return ", ".join([first, *takewhile(_ANOTHER.fullmatch, more)])


def together(text: str) -> str:
    """Text in which no line ends beside a multiplication sign or between a number and its unit."""
    return _UNIT.sub("\u00a0", text).replace(" × ", "\u00a0×\u00a0")


def number(value: float) -> str:
    """A number without needless decimals: 60, 62.5."""
    return decimals(f"{round(value, 2):g}")


def decimals(text: str) -> str:
    """Text with the decimal sign of the sheets that are being made."""
    return _POINT.sub(",", text) if IN_FORCE.get().decimals == "comma" else text


def clock(seconds: float) -> str:
    """Seconds as a coach writes them.

    >>> clock(45), clock(90), clock(150)
    ('45 s', '1:30', '2:30')
    """
    if seconds < CLOCK_FROM_S:
        return f"{number(seconds)} s"
    minutes, rest = divmod(round(seconds), MINUTE)
    return f"{minutes}:{rest:02}"


def long_date(day: dt.date) -> str:
    """A date in words, whatever the machine's language: "Monday 15 November 2027"."""
    return f"{DAYS[day.weekday()]} {short_date(day)}"


def short_date(day: dt.date) -> str:
    """A date in words without the day of the week: "15 November 2027"."""
    return _date(day, MONTHS[day.month - 1])


def brief_date(day: dt.date) -> str:
    """A date as short as it can be without doubt: "15 Nov 2027"."""
    return _date(day, MONTHS[day.month - 1][:3])


def _date(day: dt.date, month: str) -> str:
    """A date in the order of the sheets that are being made; in numbers it is that of ISO 8601."""
    match IN_FORCE.get().dates:
        case "numbers":
            return day.isoformat()
        case "month first":
            return f"{month} {day.day}, {day.year}"
        case _:
            return f"{day.day} {month} {day.year}"


def span(value: Span) -> str:
    """A number, a range or an open number: "6", "8–10", "5+", "max"."""
    if value.high is None:
        return f"{number(value.low)}+" if value.low else "max"
    if value.low == value.high:
        return number(value.low)
    return f"{number(value.low)}–{number(value.high)}"


def amount(value: Amount) -> str:
    """What one set holds, short enough for the corner of a box: "8–10", "30 s", "40 m", "max − 2"."""
    if value.less_than_tested is not None:
        return f"max − {value.less_than_tested}"
    if value.unit == "s" and value.span.high == value.span.low >= SET_CLOCK_FROM_S:
        return clock(value.span.low)
    unit = f" {value.unit}" if value.unit in ("s", "m") and span(value.span) != "max" else ""
    return f"{span(value.span)}{unit}"


def rest(value: Rest) -> str:
    """The pause after a set or round: "2:00", "2:00–3:00", "equal to the work", "as needed"."""
    low, high = value.low or 0, value.high if value.high is not None else value.low or 0
    if value.kind == "seconds":
        return clock(low) if low == high else f"{clock(low)}–{clock(high)}"
    if value.kind == "metres":
        return f"for {number(low)} m"
    if value.kind == "times_work":
        return {1: "equal to the work", 0.5: "half the work"}.get(low, f"{number(low)} times the work")
    return {"as_needed": "as needed", "partner": "while your partner works", "none": "none"}[value.kind]


def tempo(value: Tempo) -> str:
    """Seconds down, at the bottom, up, at the top: "3-1-1-0"; phases that were not written are left out."""
    phases = (value.lower_s, value.bottom_s, value.lift_s, value.top_s)
    if None not in phases:
        return "tempo " + "-".join(p if p == "X" else number(float(p or 0)) for p in phases)
    phrases = [
        f"fast {where}" if p == "X" else f"{number(float(p))} s {where}"
        for p, where in zip(phases, ("down", "at the bottom", "up", "at the top"), strict=True)
        if p is not None
    ]
    if value.held_s is not None:
        phrases.append(f"{number(value.held_s)} s {value.held_at}")
    return ", ".join(phrases)


def boxes(count: int) -> str:
    """What a row of boxes is, for who can't see them."""
    return "1 box to write in" if count == 1 else f"{count} boxes to write in"


def days_to_match(days: int) -> str:
    """How far the next match is."""
    return {0: "match day", 1: "1 day to the match"}.get(days, f"{days} days to the match")


def warm_up_lead(length_min: float | None) -> str:
    """The bold start of the warm-up row."""
    return f"Warm-up, {number(length_min)} minutes" if length_min is not None else "Warm-up"


def sentence(text: str) -> str:
    """A coach's remark as a sentence: a capital first, a full stop last."""
    text = text.strip()
    return f"{text[:1].upper()}{text[1:]}{'' if text.endswith(('.', '!', '?')) else '.'}"


def short(text: str) -> str:
    """A name cut to what a footer holds, with a mark that something is missing."""
    return text if len(text) <= FOOTER_NAME else f"{text[: FOOTER_NAME - 1].rstrip()}…"


def joined(parts: Iterable[str | None]) -> str:
    """What there is of some facts, in one line with middle dots."""
    return " · ".join(part for part in parts if part)


def footer(week: Week, mark: str, day: str | None = None) -> str:
    """The left foot of a page: squad, plan, day, version and print date; long names are cut.

    The coach's own footer is a second line.
    """
    squad = week.squad.name if week.squad else None
    number = f"week {week.number}" if week.of > 1 else None
    first = joined((squad and short(squad), short(week.name), number, day and day[:DAY_LETTERS], mark))
    own = week.squad.paper.footer if week.squad else None
    return f"{first}\n{own}" if own else first


def status(participation: str) -> str:
    """How far somebody takes part; never why."""
    return f"status: {participation}"


def mark(version: str, day: dt.date | None) -> str:
    """The end of a footer: which version this is, and the day it was first printed."""
    return f"version {version}" + (f" of {brief_date(day)}" if day else "")


def letter(place: int) -> str:
    """The letter of a member of a group, counted from 0: a to z, then aa, ab and so on."""
    more, last = divmod(place, len(ascii_lowercase))
    return (letter(more - 1) if more else "") + ascii_lowercase[last]
