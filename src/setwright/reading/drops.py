"""Drop sets: lighter parts that follow a set at once."""

from setwright.reading import questions_how as ask
from setwright.reading.amounts import OPEN
from setwright.reading.cursor import Cursor
from setwright.reading.dose import Amount, Drop, Load, Span
from setwright.reading.draft import Draft
from setwright.reading.loads import MASS


def drops(cursor: Cursor, draft: Draft) -> None:
    """Take the drops that stand next, for every set or, behind "last set", for the last one.

    Raises: Unclear when one says no step, or drops are said twice.
    """
    start = cursor.token
    found: list[Drop] = []
    while True:
        back = cursor.mark()
        if found:
            cursor.take(",")
        if not cursor.take("drop"):
            cursor.reset(back)
            break
        found.append(_one_drop(cursor))
    if draft.last is not None:
        draft.say(cursor, "drop of the last set", start)
        draft.last.drops = tuple(found)
    else:
        draft.say(cursor, "drop", start)
        draft.drops = tuple(found)


def _one_drop(cursor: Cursor) -> Drop:
    word = cursor.before
    aims_at_load = cursor.take("to") is not None
    value = cursor.number()
    unit = cursor.take(*MASS) if aims_at_load else cursor.take("%")
    if not value or unit is None or (unit == "%" and value >= 100):  # noqa: PLR2004 - all of the load
        raise cursor.ask(ask.VALUE_MISSING, word, what="how far to drop", write="drop 20% for max")
    to = Load(kind="mass", low=value, high=value, unit=MASS[unit]) if aims_at_load else None
    return Drop(by_percent=None if aims_at_load else value, to=to, amount=_drop_amount(cursor))


def _drop_amount(cursor: Cursor) -> Amount:
    if not cursor.take("for") or cursor.take("max"):
        return OPEN
    reps = cursor.whole()
    if not reps:
        raise cursor.ask(ask.VALUE_MISSING, cursor.before, what="the number of repetitions", write="for 8")
    cursor.take("reps")
    return Amount(unit="reps", span=Span(low=reps, high=reps))
