"""How numbers, times, dates and lines of facts are written on paper."""

import datetime as dt
import re
from collections.abc import Iterable, Sequence
from itertools import takewhile
from string import ascii_lowercase
from typing import Final

from setwright.model.plan import Week
from setwright.reading.dose import Amount, Rest, Span, Tempo
from setwright.reading.words import MINUTE_S
from setwright.sheets.phrases import say, series
from setwright.sheets.style import IN_FORCE

MARK: Final = "\ufdd0"
"""Stands in footers where the version belongs, which is known only when every sheet is (no character)."""

FOOTER_NAME: Final = 28
"""Characters of a name in the footer (choice: three of them and the mark fit in one line)."""

DAY_LETTERS: Final = 3
"""Letters of a day in the footer (choice)."""

SHORT_MONTH: Final = 3
"""Letters of a month in a date that is as short as it can be (choice)."""

CLOCK_FROM_S: Final = 60
"""From a minute on, times are written as a clock (choice: "45 s", "1:30")."""

SET_CLOCK_FROM_S: Final = 120
"""From two minutes on, how long a set lasts is a clock too (choice: "60 s" is a hold, "2:00" an interval)."""

_RANGE: Final = re.compile(r"(?<![\d.:-])(\d+(?:[.:]\d+)?)-(\d+(?:[.:]\d+)?)(?![\d.:-])")
_TIMES: Final = re.compile(r"(?<=\d) x (?=\d)| x (?=max)")

_TYPED: Final = re.compile(r"`([^`\n]+)`")
"""What is to be typed, as the screen marks it."""

_ANOTHER: Final = re.compile(r"[\d–+.]+(?: [sm])?")
_POINT: Final = re.compile(r"(?<=\d)\.(?=\d)")
_UNIT: Final = re.compile(
    r"(?<=\d) (?=(?:s|m|kg|lb|min|cm|left|%)\b|%)|(?<=[+−]) (?=\d)|(?<=\ba) (?=side\b|hand\b)"
)


def typeset(text: str) -> str:
    """Plain text as it is set on paper: a multiplication sign, an en dash inside a range, quotes.

    >>> typeset("3 x 8-10, 2 left, tempo 3-1-1-0")
    '3 × 8–10, 2 left, tempo 3-1-1-0'
    """
    quoted = _TYPED.sub(r"“\1”", _TIMES.sub(" × ", _RANGE.sub(r"\1–\2", text)))
    return decimals(quoted)


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
    """Text in which no line ends beside a sign, or between a number and its unit."""
    return _UNIT.sub("\u00a0", text).replace(" × ", "\u00a0×\u00a0")


def unbroken(text: str) -> str:
    """Text in which no line ends."""
    return text.replace(" ", "\u00a0")


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
    minutes, rest = divmod(round(seconds), MINUTE_S)
    return f"{minutes}:{rest:02}"


def long_date(day: dt.date) -> str:
    """A date in words, whatever the machine's language: "Monday 15 November 2027"."""
    name = "date.long_month_first" if IN_FORCE.get().dates == "month first" else "date.long"
    return say(name, day=series("days")[day.weekday()], date=_date(day, "", None))


def brief_date(day: dt.date) -> str:
    """A date as short as it can be without doubt: "15 Nov 2027"."""
    return _date(day, "", SHORT_MONTH)


def column_date(day: dt.date) -> str:
    """A date for the head of a narrow column, without its year: "15 Nov"."""
    return _date(day, "_without_year", SHORT_MONTH)


def _date(day: dt.date, ending: str, letters: int | None) -> str:
    """A date in the order of the sheets that are being made; in numbers it is that of ISO 8601."""
    order = IN_FORCE.get().dates
    month = day.month if order == "numbers" else series("months")[day.month - 1][:letters]
    return say(f"date.{order.replace(' ', '_')}{ending}", day=day.day, month=month, year=day.year)


def span(value: Span) -> str:
    """A number, a range or an open number: "6", "8–10", "5+", "max"."""
    if value.high is None:
        return f"{number(value.low)}+" if value.low else say("line.max")
    if value.low == value.high:
        return number(value.low)
    return f"{number(value.low)}–{number(value.high)}"


def amount(value: Amount) -> str:
    """What one set holds, short enough for the corner of a box: "8–10", "30 s", "40 m", "max − 2"."""
    if value.less_than_tested is not None:
        return say("line.below_max", count=value.less_than_tested)
    if value.unit == "s" and value.span.high == value.span.low >= SET_CLOCK_FROM_S:
        return clock(value.span.low)
    unit = f" {value.unit}" if value.unit in ("s", "m") and span(value.span) != say("line.max") else ""
    return f"{span(value.span)}{unit}"


def amount_in_full(value: Amount) -> str:
    """The same where no box says what it counts: "8–10 reps", "30 s", "max"."""
    bare = value.unit in ("s", "m") or value.span.high is None
    return amount(value) if bare else f"{amount(value)} {value.unit}"


def rest(value: Rest) -> str:
    """The pause after a set or round: "2:00", "2:00–3:00", "equal to the work", "as needed"."""
    low, high = value.low or 0, value.high if value.high is not None else value.low or 0
    if value.kind == "seconds":
        return clock(low) if low == high else f"{clock(low)}–{clock(high)}"
    if value.kind == "metres":
        return say("rest.metres", count=number(low))
    if value.kind == "times_work":
        share = {1: say("rest.as_the_work"), 0.5: say("rest.half_the_work")}
        return share.get(low) or say("rest.times_the_work", count=number(low))
    return say(f"rest.{value.kind}")


def tempo(value: Tempo) -> str:
    """Seconds down, at the bottom, up, at the top: "3-1-1-0"; phases that were not written are left out."""
    phases = (value.lower_s, value.bottom_s, value.lift_s, value.top_s)
    if None not in phases:
        return say("tempo.told", phases="-".join(p if p == "X" else number(float(p or 0)) for p in phases))
    phrases = [
        _phase(p, where) for p, where in zip(phases, series("tempo.phases"), strict=True) if p is not None
    ]
    if value.held_s is not None:
        phrases.append(_phase(value.held_s, value.held_at or ""))
    return ", ".join(phrases)


def _phase(seconds: float | str, where: str) -> str:
    if seconds == "X":
        return say("tempo.fast", where=where)
    return say("tempo.seconds", count=number(float(seconds)), where=where)


def boxes(count: int) -> str:
    """What a row of boxes is, for who can't see them."""
    return say("session.one_box") if count == 1 else say("session.boxes", count=count)


def days_to_match(days: int) -> str:
    """How far the next match is."""
    near = {0: say("session.match_day"), 1: say("session.one_day_to_match")}
    return near.get(days) or say("session.days_to_match", count=days)


def warm_up_lead(length_min: float | None) -> str:
    """The bold start of the warm-up row."""
    if length_min is None:
        return say("session.warm_up")
    return say("session.warm_up_minutes", count=number(length_min))


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
    number = say("page.week", number=week.number) if week.of > 1 else None
    first = joined((squad and short(squad), short(week.name), number, day and day[:DAY_LETTERS], mark))
    own = week.squad.paper.footer if week.squad else None
    return f"{first}\n{own}" if own else first


def status(participation: str) -> str:
    """How far somebody takes part; never why."""
    return say("session.status", status=participation)


def mark(version: str, day: dt.date | None) -> str:
    """The end of a footer: which version this is, and the day it was first printed."""
    if day is None:
        return say("page.version", mark=version)
    return say("page.version_of", mark=version, date=brief_date(day))


def safety() -> tuple[str, str]:
    """The line that stands on every sheet others read: its bold start and its end."""
    return say("page.safety"), say("page.safety_when")


def listed(names: Sequence[str]) -> str:
    """Names with "and" before the last."""
    *first, last = names
    return say("list.and", first=", ".join(first), last=last) if first else last


def letter(place: int) -> str:
    """The letter of a member of a group, counted from 0: a to z, then aa, ab and so on."""
    more, last = divmod(place, len(ascii_lowercase))
    return (letter(more - 1) if more else "") + ascii_lowercase[last]
