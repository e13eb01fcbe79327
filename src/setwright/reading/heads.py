"""How much: the first words of a group of sets, from "3 x 8" to "work up to 5RM"."""

from typing import NoReturn

from setwright.reading import guess_fills as fills
from setwright.reading import questions_amount as ask
from setwright.reading import questions_signs as signs
from setwright.reading.amounts import OPEN, amount, amount_list, sides
from setwright.reading.cursor import Cursor, Numeric, Unread, counted
from setwright.reading.dose import Amount, Load, Span
from setwright.reading.draft import Draft, number
from setwright.reading.efforts import effort
from setwright.reading.guesses import RAMP
from setwright.reading.lexer import Token
from setwright.reading.loads import LOADED, load
from setwright.reading.questions_how import LOAD_FIRST, RAMP_THEN_WORK, VALUE_MISSING
from setwright.reading.sets_by_reps import after_times, put, third
from setwright.reading.specials import special

OPEN_SETS = Span(low=1, high=None)
_AS_LONG_AS_THE_ROUND = Amount(unit="s", span=Span(low=0, high=None))
_TIMES = ("x", "by")


def head(cursor: Cursor) -> Draft:
    """The amount of a group, taken.

    Raises: Unclear when it has two meanings, Unread when it is none.
    """
    start, first = cursor.token, cursor.at
    draft = Draft((start, start))
    cursor.in_amounts = True
    if cursor.habits.member == "alone":
        _alone(cursor, draft)
    else:
        _member(cursor, draft)
    cursor.in_amounts = False
    if draft.bare and cursor.text == "x":
        third(cursor, draft, start)
    else:
        _side(cursor, draft)
    draft.head = (start, cursor.before if cursor.at > first else start)
    return draft


def _side(cursor: Cursor, draft: Draft) -> None:
    start = cursor.token
    side = sides(cursor)
    if side is not None:
        draft.say(cursor, "sides", start)
        draft.how["sides"] = side
        draft.side_in_head = True


def _alone(cursor: Cursor, draft: Draft) -> None:
    start, back = cursor.token, cursor.mark()
    if special(cursor, draft):
        return
    if cursor.take_all("sets", "of"):
        draft.amounts = amount_list(cursor, only_reps=False)
        draft.sets = Span(low=len(draft.amounts), high=len(draft.amounts))
    elif start.text in ("work", "test"):
        _tested(cursor, draft)
    elif start.kind == "number":
        _numbered(cursor, draft)
    elif start.kind != "clock" and load(cursor) is not None:
        _load_first(cursor, start)
    else:
        cursor.reset(back)
        _one_bout(cursor, draft)


def _tested(cursor: Cursor, draft: Draft) -> None:
    word = cursor.token
    if cursor.take_all("test", "max", "reps"):
        draft.kind, draft.amounts = "test", [OPEN]
        return
    if not (cursor.take("test") or cursor.take_all("work", "up", "to")):
        raise Unread(word)
    reps = cursor.whole()
    if reps is None and cursor.token.kind != "end":
        raise Unread(cursor.token)
    if not reps or not cursor.take("rm"):
        raise cursor.ask(
            VALUE_MISSING,
            word,
            what="the repetition maximum",
            write=f"{cursor.typed(word)}{'RM' if reps else ' 5RM'}",
        )
    draft.kind = "test" if word.text == "test" else "top_set"
    draft.amounts = [Amount(unit="reps", span=Span(low=reps, high=reps))]
    draft.loads = (Load(kind="rm", low=reps, high=reps),)
    draft.say(cursor, "load", word)


def _numbered(cursor: Cursor, draft: Draft) -> None:
    start, back = cursor.token, cursor.mark()
    value = cursor.numeric()
    assert value is not None
    if cursor.take(*_TIMES):
        after_times(cursor, draft, value, bare=True)
    elif cursor.take("sets"):
        if not (cursor.take("of") or cursor.take("x")):
            _no_reps(cursor, start)
        after_times(cursor, draft, value, bare=False)
    elif cursor.take("total"):
        _total(cursor, draft, value)
    elif cursor.text == "warm-up":
        draft.warm_up = warm_up_sets(cursor, value)
    elif value.unit in LOADED or value.unit == "rm":
        cursor.reset(back)
        load(cursor)
        _load_first(cursor, start)
    elif value.unit == "reps":
        _reps_first(cursor, draft, value)
    elif value.unit == "," and cursor.ahead(1).kind == "number":
        cursor.reset(back)
        draft.amounts = amount_list(cursor, only_reps=True)
        draft.sets = Span(low=len(draft.amounts), high=len(draft.amounts))
        if len(draft.amounts) == 1:
            _no_sets(cursor, start)
    else:
        cursor.reset(back)
        _one_bout(cursor, draft)


def warm_up_sets(cursor: Cursor, value: Numeric) -> int:
    """The number of warm-up sets; "warm-up sets" stands next.

    Raises: Unclear when it is no number of sets, Unread when the word sets is missing.
    """
    if not cursor.take_all("warm-up", "sets"):
        raise Unread(cursor.token)
    return int(counted(value, cursor).low)


def _total(cursor: Cursor, draft: Draft, value: Numeric) -> None:
    draft.kind, draft.sets = "total", OPEN_SETS
    draft.amounts = [Amount(unit="reps", span=counted(value, cursor))]


def _reps_first(cursor: Cursor, draft: Draft, value: Numeric) -> None:
    """The order "10 reps, 3 sets", in which both words are written."""
    cursor.at += 1
    if cursor.take("total"):
        _total(cursor, draft, value)
        return
    back = cursor.mark()
    if not cursor.take(","):
        cursor.take(*_TIMES)
    sets = cursor.numeric()
    if sets is None or not cursor.take("sets"):
        cursor.reset(back)
        _no_sets(cursor, value.start)
    draft.amounts = [Amount(unit="reps", span=counted(value, cursor))]
    draft.sets = counted(sets, cursor)


def _no_reps(cursor: Cursor, start: Token) -> NoReturn:
    if cursor.token.kind == "end" or cursor.text == ",":
        raise cursor.ask(ask.REPS_MISSING, start, sets=start.text, load="")
    raise Unread(cursor.token)


def _load_first(cursor: Cursor, start: Token) -> NoReturn:
    ramp = RAMP.match(cursor.line.text)
    if ramp:
        raise cursor.ask(RAMP_THEN_WORK, start, cursor.line.tokens[-2], **fills.ramp(ramp, cursor.habits))
    typed = cursor.typed(start)
    is_rm = cursor.before.text == "rm"
    if not cursor.take("x"):
        if cursor.token.kind != "end" and cursor.text not in (",", "then"):
            raise Unread(cursor.token)
        raise cursor.ask(LOAD_FIRST, start, write=f"3 x 8 at {typed}")
    amounts = amount_list(cursor, only_reps=True)
    reps = ", ".join(number(a.span) for a in amounts)
    if is_rm:
        raise cursor.ask(ask.RM_OR_SETS, start, sets=reps, reps=start.text)
    sets = cursor.whole() if cursor.take("x") else None
    dose = f"{sets or 1} x {reps}" if len(amounts) == 1 else f"sets of {reps}"
    raise cursor.ask(LOAD_FIRST, start, write=f"{dose} at {typed}")


def _one_bout(cursor: Cursor, draft: Draft) -> None:
    """One time, distance or count of things; repetitions alone have no sets."""
    start = cursor.token
    much = amount(cursor)
    if much is None:
        raise Unread(cursor.token)
    if much.extra is not None:
        raise cursor.ask(signs.EXTRA_ALONE, start)
    if much.amount.unit == "reps":
        _no_sets(cursor, start)
    put(draft, much)


def _no_sets(cursor: Cursor, start: Token) -> NoReturn:
    amount_typed = cursor.typed(start)
    sides(cursor)
    if cursor.token.kind != "end" and cursor.text not in (",", "then", "at", "rest", "with"):
        raise Unread(cursor.token)
    amount_typed = cursor.typed(start) or amount_typed
    if amount_typed == start.text or "/" in amount_typed:
        number, side = amount_typed.partition(start.text)[1:]
        raise cursor.ask(ask.SETS_OR_UNIT, start, amount=amount_typed, number=number, side=side)
    raise cursor.ask(ask.SETS_MISSING, start, amount=amount_typed)


def _member(cursor: Cursor, draft: Draft) -> None:
    """What one round, interval or rung of a group holds."""
    start = cursor.token
    if special(cursor, draft):
        return
    back = cursor.mark()
    if cursor.habits.member == "each" and effort(cursor) is not None:
        cursor.reset(back)
        draft.amounts = [_AS_LONG_AS_THE_ROUND]
        return
    if cursor.take("rung"):
        times = cursor.whole() if cursor.take("x") else 1
        if not times:
            raise cursor.ask(VALUE_MISSING, start, what="how many a rung", write="rung x 2")
        draft.amounts = [Amount(unit="rung", span=Span(low=times, high=times))]
        return
    much = amount(cursor)
    if much is not None and cursor.text in (*_TIMES, "sets"):
        cursor.at += 1
        cursor.take("of")
        again = amount(cursor)
        if again is None:
            raise Unread(cursor.token)
        raise cursor.ask(ask.SETS_IN_ROUND, start, amount=number(again.amount.span))
    if much is not None:
        put(draft, much)
    elif cursor.habits.member == "each":
        draft.amounts = [_AS_LONG_AS_THE_ROUND]
    else:
        raise Unread(cursor.token)
