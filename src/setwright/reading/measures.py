"""Values with a unit: minutes, seconds, degrees, centimetres, masses; dates and times of the day.

A reader takes a node and gives its value, or None and a finding.
"""

import datetime as dt
import re
from collections.abc import Mapping
from typing import Final, Literal, NamedTuple

from setwright.reading import key_rules as rules
from setwright.reading.fields import word
from setwright.reading.gathering import Gathering
from setwright.reading.nodes import Node, Scalar

Unit = Literal["kg", "lb"]

CM_A_METRE: Final = 100.0
SECONDS_A_MINUTE: Final = 60.0
UNITS: Final[Mapping[str, Unit]] = {
    "kg": "kg", "kgs": "kg", "kilo": "kg", "kilos": "kg",
    "lb": "lb", "lbs": "lb", "pound": "lb", "pounds": "lb",
}  # fmt: skip

_NUMBER = r"(\d+(?:[.,]\d+)?)"
_WHOLE = re.compile(r"\d{1,6}$")
_MINUTES = re.compile(rf"{_NUMBER}\s*(?:min|mins|minutes?|'|’)?$", re.IGNORECASE)
_MASS = re.compile(rf"{_NUMBER}\s*([a-z]+)?$", re.IGNORECASE)
_PERCENT = re.compile(rf"{_NUMBER}\s*%$")
_LENGTH = re.compile(rf"{_NUMBER}\s*(cm|m)?$", re.IGNORECASE)
_DEGREES = re.compile(rf"(-?){_NUMBER}\s*(?:deg|degrees?|°)?$", re.IGNORECASE)
_DATE = re.compile(r"(\d{4})-(\d{1,2})-(\d{1,2})$")
_OTHER_DATE = re.compile(r"(\d{1,2})[./-](\d{1,2})[./-](\d{4})$")
_SECONDS = re.compile(
    rf"(?:(\d+)?:(\d\d)|{_NUMBER}\s*(s|sec|secs|seconds?|min|mins|minutes?))$", re.IGNORECASE
)
_CLOCK = re.compile(r"([01]?\d|2[0-3])[:.h]([0-5]\d)$")


class MostLoad(NamedTuple):
    """The heaviest load that is allowed; ``unit`` None when none is written."""

    value: float
    unit: Unit | Literal["%"] | None


class Mass(NamedTuple):
    """A mass as typed; ``unit`` None when none is written."""

    value: float
    unit: Unit | None


def number(typed: str) -> float:
    """A number typed with a point or a comma."""
    return float(typed.replace(",", "."))


def minutes(node: Node, found: Gathering) -> float | None:
    """Minutes: "60", "45 min", "7.5"."""
    match = _matched(node, found, _MINUTES, "number of minutes", "write a number, for example `60`")
    return number(match[1]) if match else None


def seconds(node: Node, found: Gathering) -> float | None:
    """A time in seconds: "12:00", "40 s", "12 min"."""
    typed = word(node, found)
    match = _SECONDS.match(typed.text) if typed else None
    if typed and not match:
        minute = (
            f"`{typed.text} min` or `{typed.text} s`"
            if _WHOLE.match(typed.text)
            else "`1:30`, `90 s` or `2 min`"
        )
        found.say(rules.NOT_A_NUMBER, typed.place, f'"{typed.text}": how long is that?', f"write {minute}")
    if match is None:
        return None
    if match[3]:
        return number(match[3]) * (SECONDS_A_MINUTE if match[4][0] in "mM" else 1)
    return int(match[1] or 0) * SECONDS_A_MINUTE + int(match[2])


def degrees(node: Node, found: Gathering) -> float | None:
    """Degrees: "90 deg", "-10"."""
    match = _matched(node, found, _DEGREES, "angle", "write degrees, for example `90 deg`")
    return number(match[1] + match[2]) if match else None


def centimetres(node: Node, found: Gathering) -> float | None:
    """A length in cm: "171 cm", "1.71 m", "171"."""
    match = _matched(node, found, _LENGTH, "height", "write it in cm, for example `171 cm`")
    in_metres = match is not None and (match[2] or "").casefold() == "m"
    return number(match[1]) * (CM_A_METRE if in_metres else 1) if match else None


def mass(node: Node, found: Gathering) -> Mass | None:
    """A mass with or without its unit: "63 kg", "140 lb", "20"."""
    typed = word(node, found)
    if typed is None:
        return None
    read = mass_of(typed.text)
    if read is None:
        found.say(
            rules.NOT_A_NUMBER,
            typed.place,
            f'"{typed.text}" is no weight',
            "write a number with its unit, for example `63 kg`",
        )
    return read


def mass_or_percent(node: Node, found: Gathering) -> MostLoad | None:
    """A mass with or without its unit, or a percent: "20 kg", "60%"."""
    percent = _PERCENT.match(node.text) if isinstance(node, Scalar) else None
    if percent:
        return MostLoad(number(percent[1]), "%")
    read = mass(node, found)
    return MostLoad(*read) if read else None


def mass_of(typed: str) -> Mass | None:
    """The mass that a text is, or None."""
    match = _MASS.match(typed.strip())
    if not match or (match[2] and match[2].casefold() not in UNITS):
        return None
    return Mass(number(match[1]), UNITS[match[2].casefold()] if match[2] else None)


def date(node: Node, found: Gathering) -> dt.date | None:
    """A date typed year-month-day."""
    typed = word(node, found)
    if typed is None:
        return None
    match = _DATE.match(typed.text)
    if match:
        try:
            return dt.date(int(match[1]), int(match[2]), int(match[3]))
        except ValueError:
            found.say(
                rules.NO_SUCH_DATE,
                typed.place,
                f"{typed.text} is no date",
                "write a day that the month has, year-month-day",
            )
            return None
    other = _OTHER_DATE.match(typed.text)
    change = "write year-month-day, for example `2027-10-18`"
    if other:
        day, month, year = other.groups()
        either = (f"{year}-{month:0>2}-{day:0>2}", f"{year}-{day:0>2}-{month:0>2}")
        dates = [f"`{date}`" for date in dict.fromkeys(either) if _is_a_day(date)]
        change = f"write {' or '.join(dates)}, year-month-day" if dates else change
    found.say(rules.NO_SUCH_DATE, typed.place, f'"{typed.text}": which day is that?', change)
    return None


def _is_a_day(typed: str) -> bool:
    try:
        dt.date.fromisoformat(typed)
    except ValueError:
        return False
    return True


def clock(node: Node, found: Gathering) -> str | None:
    """A time of the day, as "16:30"."""
    match = _matched(node, found, _CLOCK, "time of the day", "write it as `16:30`")
    return f"{int(match[1]):02d}:{match[2]}" if match else None


def _matched(
    node: Node, found: Gathering, form: re.Pattern[str], what: str, change: str
) -> re.Match[str] | None:
    """The value in its ``form``, or None and the finding that it is no ``what``."""
    typed = word(node, found)
    match = form.match(typed.text) if typed else None
    if typed and not match:
        found.say(rules.NOT_A_NUMBER, typed.place, f'"{typed.text}" is no {what}', change)
    return match
