"""Sets times repetitions: what stands after "3 x" or "3 sets of", and a third number after it."""

from typing import NoReturn

from setwright.reading import questions_amount as ask
from setwright.reading.amounts import Much, amount, amount_list
from setwright.reading.cursor import Cursor, Numeric, Unread, counted
from setwright.reading.dose import Amount, Span
from setwright.reading.draft import MOST_BARE_SETS, Draft, number
from setwright.reading.efforts import TO_FAILURE
from setwright.reading.lexer import Token
from setwright.reading.loads import LOADED, load
from setwright.reading.questions_how import LOAD_FIRST, THIRD_NUMBER
from setwright.reading.specials import special

FEWEST_ALONE = 20
"""A number behind a comma from here up is no further set (choice): it is asked as a rest or a load."""


def after_times(cursor: Cursor, draft: Draft, sets: Numeric, *, bare: bool) -> None:
    """Take what each of ``sets`` holds; ``bare`` when only an x joins the two, so that they may be swapped.

    Raises: Unclear when it is a load or a list, Unread when it is no amount.
    """
    if special(cursor, draft):
        draft.sets = counted(sets, cursor)
        return
    first = cursor.mark()
    much = amount(cursor)
    if much is None:
        _no_amount(cursor, sets)
    draft.sets = counted(sets, cursor)
    draft.bare = bare and much.swappable
    put(draft, much)
    if draft.bare and cursor.habits.dose_order == "reps x sets":
        draft.sets, draft.amounts = much.amount.span, [Amount(unit="reps", span=draft.sets)]
    if much.swappable and cursor.text == ",":
        _further_sets(cursor, draft, sets.start, first)


def put(draft: Draft, much: Much) -> None:
    """Put an amount into a draft."""
    draft.amounts, draft.extra = [much.amount], much.extra
    if much.to_failure:
        draft.efforts = (TO_FAILURE,)


def _no_amount(cursor: Cursor, sets: Numeric) -> NoReturn:
    typed = number(Span(low=sets.low, high=sets.high))
    sign = cursor.ahead(1)
    value = cursor.numeric()
    if sign.text == "-" and cursor.text == "%" and cursor.line.text[sign.start - 1].isspace():
        raise Unread(sign)
    if value is not None and cursor.take("rm"):
        raise cursor.ask(ask.RM_AMOUNT, sets.start, sets=typed, reps=f"{value.low:g}")
    if value is not None and cursor.take(*LOADED):
        raise cursor.ask(ask.REPS_MISSING, sets.start, sets=typed, load=f" at {cursor.typed(value.start)}")
    if cursor.token.kind == "end" or cursor.text == ",":
        raise cursor.ask(ask.REPS_MISSING, sets.start, sets=typed, load="")
    raise Unread(cursor.token)


def _further_sets(cursor: Cursor, draft: Draft, start: Token, first: tuple[int, int]) -> None:
    """Asks about "3 x 12, 10, 8"; a single large number, or one that starts something else, is left alone."""
    behind = cursor.mark()
    cursor.reset(first)
    amounts = amount_list(cursor, only_reps=True)
    ends = cursor.token.kind == "end" or cursor.text in (",", "then", "at")
    alone = len(amounts) == 2 and amounts[1].span.low >= FEWEST_ALONE  # noqa: PLR2004 - the first and one more
    if len(amounts) == 1 or not ends or alone:
        cursor.reset(behind)
        return
    write = "sets of " + ", ".join(number(a.span) for a in amounts)
    sets, count = number(draft.sets), str(len(amounts))
    if draft.sets.low > MOST_BARE_SETS:
        raise cursor.ask(LOAD_FIRST, start, write=_either_unit(cursor, f"{write} at {sets}"))
    raise cursor.ask(
        ask.SETS_TWICE if sets == count else ask.SET_COUNT, start, sets=sets, count=count, write=write
    )


def third(cursor: Cursor, draft: Draft, start: Token) -> None:
    """Take the load in "3 x 8 x 60 kg"; the second x stands next.

    Raises: Unclear when its unit is missing, or the line is typed load first.
    """
    cursor.at += 1
    first = cursor.token
    found = load(cursor)
    if found is not None:
        draft.say(cursor, "load", first)
        draft.loads = (found,)
        return
    value = cursor.numeric()
    if value is None:
        raise Unread(cursor.token)
    sets, reps, last = number(draft.sets), number(draft.amounts[0].span), cursor.typed(value.start)
    if draft.sets.low > max(draft.amounts[0].span.low, value.high):
        raise cursor.ask(LOAD_FIRST, start, write=_either_unit(cursor, f"{last} x {reps} at {sets}"))
    raise cursor.ask(THIRD_NUMBER, start, sets=sets, reps=reps, number=last)


def _either_unit(cursor: Cursor, line: str) -> str:
    unit = cursor.habits.unit
    return f"{line} {unit}" if unit else f'{line} kg" or "{line} lb'
