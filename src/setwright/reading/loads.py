"""What is lifted: masses, percents, bodyweight, bars, bands, settings and words."""

from setwright.reading import questions_how as ask
from setwright.reading.bands import band
from setwright.reading.cursor import Cursor, Numeric, Unread
from setwright.reading.dose import Load, MaxKind

KG_PER_LB = 0.45359237
"""Kilograms in a pound (international pound, exact by definition: NIST Special Publication 811, B.8)."""
MOST_BARE_EFFORT = 10
"""A bare number up to here after "at" may be an effort (RPE and RIR end at 10)."""

HANDS = 2
MASS = {"kg": "kg", "lb": "lb", "#": "lb"}
LOADED = (*MASS, "%")
"""Units of a load, which no amount has."""
SETTINGS = ("pin", "hole", "setting", "level")
WORDS = ("light", "moderate", "heavy")
_MAXES: dict[tuple[str, ...], MaxKind | str] = {
    ("tested", "max"): "tested max",
    ("1", "rm"): "tested max",
    ("training", "max"): "training max",
    ("tm",): "training max",
    ("estimated", "max"): "estimated max",
    ("today's", "max"): "today's max",
    ("bodyweight",): "bodyweight",
    ("body", "weight"): "bodyweight",
    ("top", "sets"): "top set",
    ("the", "top", "sets"): "top set",
}
_LIMITING = ("tested max", "estimated max", "today's max")


def load(cursor: Cursor) -> Load | None:
    """One load with its unit, taken; None (and nothing taken) when none stands here."""
    return _worded(cursor) or band(cursor) or _numbered(cursor)


def _worded(cursor: Cursor) -> Load | None:
    word = cursor.token
    if cursor.take("bodyweight") or cursor.take_all("body", "weight"):
        return _plus(cursor, Load(kind="bodyweight"), bare_unit=True)
    if cursor.take("bar"):
        return _bar(cursor)
    if word.text == "last" and cursor.ahead(1).text in ("time", "week"):
        cursor.at += 2
        back = _plus(cursor, Load(kind="last", name=cursor.typed(word).lower()), bare_unit=True, percent=True)
        if back.plus is None:
            raise cursor.ask(ask.VALUE_MISSING, word, what="what is added", write="last time + 5 kg")
        return back
    if cursor.take_all("own", "choice"):
        return Load(kind="word", name="own choice")
    if word.text in WORDS and cursor.ahead(1).text != "band":
        cursor.at += 1
        return Load(kind="word", name=word.text)
    if cursor.take("rising"):
        return _rising(cursor)
    if cursor.take(*SETTINGS):
        number = cursor.number()
        if number is None:
            raise cursor.ask(ask.VALUE_MISSING, word, what="the number", write=f"{word.text} 7")
        return Load(kind="setting", name=word.text, low=number, high=number)
    return None


def _rising(cursor: Cursor) -> Load:
    word = cursor.before
    target = None
    if cursor.take("to"):
        value = cursor.numeric()
        target = None if value is None else with_unit(cursor, value) or bare(cursor, value)
    if target is None:
        if cursor.text == "loads":
            cursor.at += 1
        raise cursor.ask(ask.RISING, word)
    return target.model_copy(update={"rising": True})


def _bar(cursor: Cursor) -> Load:
    found = _plus(cursor, Load(kind="bar"), bare_unit=False)
    if found.plus is not None and not cursor.take_all("a", "side"):
        raise cursor.ask(ask.PLATES, cursor.before, load=cursor.typed(cursor.before))
    return found


def _plus(cursor: Cursor, to: Load, *, bare_unit: bool, percent: bool = False) -> Load:
    """``to`` with what is added after it, if a sign and a number follow."""
    sign = cursor.text
    if sign not in ("+", "-") or cursor.ahead(1).kind != "number":
        return to
    cursor.at += 1
    value = cursor.numeric()
    assert value is not None
    unit = _plus_unit(cursor, value, bare_unit=bare_unit, percent=percent)
    ends = (value.low, value.high) if sign == "+" else (-value.low, -value.high)
    return to.model_copy(update={"plus": ends[0], "plus_high": ends[1], "unit": unit})


def _plus_unit(cursor: Cursor, value: Numeric, *, bare_unit: bool, percent: bool) -> str:
    if value.unit in MASS:
        cursor.at += 1
        return MASS[value.unit]
    if percent and cursor.take("%"):
        return "%"
    if bare_unit and cursor.habits.unit:
        return cursor.habits.unit
    raise cursor.ask(ask.LOAD_UNIT, value.start)


def _numbered(cursor: Cursor) -> Load | None:
    back = cursor.mark()
    value = cursor.numeric()
    found = None if value is None else with_unit(cursor, value)
    if found is None:
        cursor.reset(back)
    return found


def with_unit(cursor: Cursor, value: Numeric) -> Load | None:
    """The load of ``value`` and the unit that stands next, taken; None when no unit of load does."""
    if value.unit in MASS:
        cursor.at += 1
        return _mass(cursor, value)
    if value.unit == "%":
        cursor.at += 1
        return _percent(cursor, value)
    if value.unit in ("rm", "m/s"):
        cursor.at += 1
        return Load(kind="rm" if value.unit == "rm" else "speed", low=value.low, high=value.high)
    if value.unit == "x" and value.low == value.high == HANDS:
        return _pair(cursor)
    return None


def bare(cursor: Cursor, value: Numeric) -> Load:
    """The load of a number without a unit: the file's unit.

    Raises: Unclear when it may be an effort, or the file has no unit.
    """
    if cursor.text == "_":
        raise Unread(cursor.token)
    typed = f"{value.low:g}" if value.low == value.high else f"{value.low:g}-{value.high:g}"
    if value.low <= MOST_BARE_EFFORT:
        raise cursor.ask(ask.RPE_OR_LOAD, value.start, number=typed, unit=cursor.habits.unit or "kg")
    if cursor.habits.unit is None:
        raise cursor.ask(ask.LOAD_UNIT, value.start)
    return Load(kind="mass", low=value.low, high=value.high, unit=cursor.habits.unit)


def _mass(cursor: Cursor, value: Numeric) -> Load:
    hands = None
    if cursor.text == "each" and cursor.ahead(1).text not in ("side", "arm", "leg", "foot", "way"):
        cursor.at += 1
        cursor.take("hand")
        hands = 2
    found = Load(kind="mass", low=value.low, high=value.high, unit=MASS[value.unit], hands=hands)
    return _chain(cursor, found)


def _pair(cursor: Cursor) -> Load | None:
    back = cursor.mark()
    cursor.at += 1
    value = cursor.numeric()
    if value is None or value.unit not in MASS:
        cursor.reset(back)
        return None
    cursor.at += 1
    return Load(kind="mass", low=value.low, high=value.high, unit=MASS[value.unit], hands=2)


def _percent(cursor: Cursor, value: Numeric) -> Load:
    found = Load(kind="percent", low=value.low, high=value.high, unit="%", of=_of(cursor))
    check_percent(cursor, value, found.of)
    return _chain(cursor, found)


def check_percent(cursor: Cursor, value: Numeric, of: str | None) -> None:
    """Notes a percent over 100 of a tested, estimated or today's max.

    Raises: Unclear when it is over what can be lifted.
    """
    kind = of or cursor.habits.max_kind
    if kind not in _LIMITING:
        return
    most = cursor.habits.percent_at_most
    if value.high > most:
        raise cursor.ask(ask.PERCENT_OVER, value.start, most=f"{most:g}")
    if value.high > 100:  # noqa: PLR2004 - the whole of a max
        cursor.notes.append(f"{value.high:g} % is more than the {kind}")


def _of(cursor: Cursor) -> str | None:
    said = cursor.take("of") is not None
    for words, kind in _MAXES.items():
        if (said or kind != "top set") and cursor.take_all(*words):
            return kind
    if not said:
        return None
    start = cursor.token
    while cursor.token.kind in ("word", "number") or cursor.text in ("-", "'"):
        cursor.at += 1
    if cursor.token is start:
        raise cursor.ask(
            ask.VALUE_MISSING, cursor.before, what="the movement or max", write="75% of training max"
        )
    return " ".join(cursor.typed(start).split())


def _chain(cursor: Cursor, to: Load) -> Load:
    if cursor.text != "+" or cursor.ahead(2).text not in MASS or cursor.ahead(3).text != "chain":
        return to
    cursor.at += 1
    value = cursor.number() or 0.0
    unit = cursor.take(*MASS)
    cursor.at += 1
    return to.model_copy(update={"top_kg": value * (KG_PER_LB if MASS[unit or ""] == "lb" else 1.0)})


def lone_plus(cursor: Cursor) -> Load:
    """The load of "at +10 kg": more than bodyweight, on movements that are loaded by it."""
    sign = cursor.token
    cursor.at += 1
    value = cursor.numeric()
    if value is None:
        raise Unread(sign)
    if value.unit not in MASS:
        raise cursor.ask(ask.PLUS_BASE, sign, number=f"{value.low:g}", unit=cursor.habits.unit or "kg")
    cursor.at += 1
    return Load(
        kind="bodyweight", plus=value.low, plus_high=value.high, unit=MASS[value.unit], lone_plus=True
    )
