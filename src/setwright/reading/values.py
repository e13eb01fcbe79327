"""What stands after "at" or "with": a load or an effort for all sets, or one a set."""

from setwright.reading import questions_how as ask
from setwright.reading.bands import band
from setwright.reading.cursor import Cursor, Numeric, Unread
from setwright.reading.dose import Effort, Load
from setwright.reading.efforts import MOST_RIR, SCALES, effort, scaled
from setwright.reading.loads import HANDS, bare, check_percent, load, lone_plus, with_unit
from setwright.reading.times import SECONDS, duration, may_be_pair

Values = tuple[Load, ...] | tuple[Effort, ...]


def after_at(cursor: Cursor) -> Values:
    """The loads or efforts that stand next, taken: one for all sets, or one a set.

    Raises: Unclear when they have two meanings, Unread when nothing of the kind stands here.
    """
    lead = cursor.before
    if cursor.text == "+":
        return (lone_plus(cursor),)
    banded = band(cursor)
    if banded is not None:
        return (banded,)
    if cursor.token.kind == "number":
        return _list(cursor)
    if cursor.token.kind == "clock":
        duration(cursor)
        raise cursor.ask(ask.TIME_AFTER_AT, lead, time=cursor.typed(cursor.before))
    one = load(cursor)
    if one is not None:
        return (one,)
    hard = None if cursor.text == "to" else effort(cursor)
    if hard is not None:
        return hard
    if cursor.token.kind == "end" or cursor.text in (",", "then"):
        raise cursor.ask(ask.VALUE_MISSING, lead, lead, what="the load", write="at 75%")
    raise Unread(cursor.token)


def _list(cursor: Cursor) -> Values:
    """Numbers, the first one certain: loads, or efforts when their unit says so."""
    found: list[Load | Numeric] = []
    while True:
        back = cursor.mark()
        if found and not cursor.take(","):
            break
        value = cursor.numeric()
        if value is None:
            cursor.reset(back)
            break
        if value.unit in SCALES and all(isinstance(f, Numeric) and f.high <= MOST_RIR for f in found):
            return _efforts(cursor, [*(f for f in found if isinstance(f, Numeric)), value])
        one = None if value.unit in SCALES else with_unit(cursor, value)
        if one is None and not _ends(cursor, alone=not found):
            cursor.reset(back)
            if not found:
                raise _pair(cursor) or _time(cursor) or Unread(cursor.token)
            break
        found.append(one or value)
    return _loads(cursor, found)


def _ends(cursor: Cursor, *, alone: bool) -> bool:
    """Whether a bare number may end here: a first one before most words, later ones before a comma."""
    if alone:
        return cursor.text not in SECONDS and cursor.text not in (
            "plates",
            "plate",
            "in",
            "reps",
            "m",
            "x",
            "/",
        )
    return cursor.token.kind == "end" or cursor.text in (",", "then", "rest", "tempo")


def _pair(cursor: Cursor) -> Exception | None:
    """The question about "2x20": a pair, but of kilograms or of pounds."""
    start, sign, last = (cursor.ahead(n) for n in range(3))
    if (start.text, sign.text, last.kind) != (str(HANDS), "x", "number"):
        return None
    return cursor.ask(ask.PAIR, start, last, number=last.text)


def _time(cursor: Cursor) -> Exception | None:
    start = cursor.token
    if duration(cursor) is None:
        return None
    if may_be_pair(cursor, start):
        unit = cursor.habits.unit or "kg"
        return cursor.ask(ask.TIME_OR_PAIR, start, number=start.text, sets="3", unit=unit)
    return cursor.ask(ask.TIME_AFTER_AT, start, time=cursor.typed(start))


def _efforts(cursor: Cursor, values: list[Numeric]) -> tuple[Effort, ...]:
    scale = SCALES[values[-1].unit]
    cursor.at += 1
    return tuple(scaled(cursor, value, scale) for value in values)


def _loads(cursor: Cursor, found: list[Load | Numeric]) -> tuple[Load, ...]:
    """The unit of the last load belongs to all; without one, the file's unit does."""
    last = found[-1]
    numbers = [f for f in found if isinstance(f, Numeric)]
    if len(numbers) == len(found):
        return tuple(bare(cursor, number) for number in numbers)
    if isinstance(last, Load) and len(numbers) == len(found) - 1 and last.kind in ("mass", "percent"):
        if last.kind == "percent":
            for number in numbers:
                check_percent(cursor, number, last.of)
        return (*(last.model_copy(update={"low": n.low, "high": n.high}) for n in numbers), last)
    if not numbers:
        return tuple(f for f in found if isinstance(f, Load))
    write = ", ".join(f"{f.low:g}" for f in found if f.low is not None)
    first, unit = numbers[0].start, cursor.habits.unit or "kg"
    raise cursor.ask(ask.UNIT_MIXED, first, first, write=f"at {write} {unit}")
