"""The load at the start of a record line, and lines that are typed like a plan's instead."""

from setwright.reading import record_questions as ask
from setwright.reading.amounts import amount
from setwright.reading.cursor import Cursor, Unclear, Unread
from setwright.reading.dose import Load
from setwright.reading.draft import MOST_BARE_SETS
from setwright.reading.lexer import Token
from setwright.reading.loads import MOST_BARE_EFFORT, load

LIFTED = ("mass", "bodyweight", "bar", "band", "setting", "word")
"""Kinds of load that say what was lifted."""
TIMES = ("x", "by")
"""What stands between a load and its sets."""


def lifted_load(cursor: Cursor) -> Load | None:
    """The load that the part starts with, and its x, taken; None and nothing taken without one."""
    start, back = cursor.token, cursor.mark()
    lifted = load(cursor)
    if lifted is None:
        lifted = _bare(cursor, start)
    if lifted is None:
        cursor.reset(back)
        return None
    typed = cursor.typed(start)
    if lifted.kind not in LIFTED or lifted.low != lifted.high or lifted.plus != lifted.plus_high:
        raise cursor.ask(ask.NOT_LIFTED, start)
    if cursor.take(*TIMES) and cursor.token.kind != "end":
        return lifted
    if cursor.token.kind == "number":
        raise Unread(cursor.token)
    raise cursor.ask(ask.REPS_MISSING, start, load=typed)


def _bare(cursor: Cursor, start: Token) -> Load | None:
    """A number before an x, in the unit of the file; up to 10 it may be a number of sets."""
    value = cursor.numeric()
    if value is None or cursor.text not in (*TIMES, "sets"):
        return None
    if value.high <= MOST_BARE_EFFORT or cursor.text == "sets":
        raise _sets_first(cursor, start, int(value.low))
    return Load(kind="mass", low=value.low, high=value.high, unit=cursor.habits.unit)


def _sets_first(cursor: Cursor, start: Token, count: int) -> Unclear:
    """The question about a line typed like a plan's, with each set written out."""
    said_sets = cursor.take("sets")
    cursor.take("of", *TIMES)
    first = cursor.token
    much = amount(cursor)
    if much is None:
        raise Unread(cursor.before)
    each = cursor.typed(first)
    lifted, lift = None, cursor.token
    if cursor.take("at", "with", *TIMES):
        lift = cursor.token
        lifted = load(cursor)
    write = _written_out(each, count)
    if lifted is not None:
        write = f"{cursor.typed(lift)} x {write}"
    question = ask.SETS_OF if said_sets or lifted is not None else ask.SETS_FIRST
    unit = cursor.habits.unit or "kg"
    return cursor.ask(question, start, sets=str(count), amount=each, unit=unit, write=write)


def sets_last(cursor: Cursor, first: Token) -> Unclear:
    """The question about "60 kg x 5 x 3", where a number of sets stands behind the repetitions."""
    each = cursor.typed(first)
    cursor.at += 1
    count = cursor.whole()
    if count is None:
        raise Unread(cursor.before)
    write = _written_out(each, count)
    return cursor.ask(ask.SETS_OF, first, sets=str(count), write=write)


def load_follows(cursor: Cursor) -> bool:
    """Whether a load and an x stand behind the comma that stands next."""
    if cursor.text != ",":
        return False
    back, inside = cursor.mark(), cursor.in_amounts
    cursor.at += 1
    cursor.in_amounts = False
    try:
        return (load(cursor) or cursor.numeric()) is not None and cursor.text in TIMES
    except (Unclear, Unread):
        return False
    finally:
        cursor.in_amounts = inside
        cursor.reset(back)


def _written_out(each: str, count: int) -> str:
    """So many sets one after the other; more than anyone would write are shown as going on."""
    return ", ".join([each] * count if 0 < count <= MOST_BARE_SETS else [each, each, "..."])
