"""Item keys written under a movement: the words of the dose line without their lead word."""

from collections.abc import Callable
from typing import TypeVar

from setwright.findings import Finding
from setwright.places import Place
from setwright.reading import questions_how as ask
from setwright.reading import times
from setwright.reading.amounts import amount, side_order
from setwright.reading.asked import Asked
from setwright.reading.cursor import Cursor, Unclear, Unread, counted
from setwright.reading.dose import Effort, Load, Rest, Sides, Tempo, WarmUp, WarmUpStep
from setwright.reading.draft import MOST_BARE_SETS
from setwright.reading.efforts import effort
from setwright.reading.habits import Habits
from setwright.reading.lexer import lex
from setwright.reading.loads import bare, load
from setwright.reading.values import after_at

Value = TypeVar("Value")


def read_load(text: str, place: Place, habits: Habits) -> tuple[tuple[Load, ...] | None, tuple[Finding, ...]]:
    """The loads under ``load:``, or None and findings; one serves all sets, several go set by set."""
    return _read(text, place, habits, "at", _loads)


def read_effort(
    text: str, place: Place, habits: Habits
) -> tuple[tuple[Effort, ...] | None, tuple[Finding, ...]]:
    """The efforts under ``effort:``, or None and findings; one serves all sets, several go set by set."""
    return _read(text, place, habits, "at", _efforts)


def read_rest(text: str, place: Place, habits: Habits) -> tuple[Rest | None, tuple[Finding, ...]]:
    """The rest under ``rest:`` or ``between moves:``, or None and findings."""
    return _read(text, place, habits, "rest", times.rest)


def read_tempo(text: str, place: Place, habits: Habits) -> tuple[Tempo | None, tuple[Finding, ...]]:
    """The tempo under ``tempo:``, or None and findings."""
    return _read(text, place, habits, "tempo", _tempo)


def read_sides(text: str, place: Place, habits: Habits) -> tuple[Sides | None, tuple[Finding, ...]]:
    """The sides under ``sides:``, or None and findings."""
    return _read(text, place, habits, "", _sides)


def read_warm_up(text: str, place: Place, habits: Habits) -> tuple[WarmUp | None, tuple[Finding, ...]]:
    """The warm-up sets under ``warm-up:``, or None and findings; "none" is a ``WarmUp`` without steps."""
    return _read(text, place, habits, "", _warm_up)


def _read(
    text: str,
    place: Place,
    habits: Habits,
    lead: str,
    read: Callable[[Cursor], Value],
    *,
    nested: bool = False,
) -> tuple[Value | None, tuple[Finding, ...]]:
    leads = ("at", "with") if lead == "at" else (lead,)
    said = lex(text).tokens[0].text in leads
    cursor = Cursor(lex(text, "" if said or not lead or not text.strip() else f"{lead} "), habits)

    def reads(line: str) -> bool:
        return not _read(line, place, habits, lead, read, nested=True)[1]

    asked = Asked(cursor, place, None if nested else reads)
    if not asked.fits():
        return None, asked.in_order()
    cursor.take(*leads)
    try:
        return _whole(cursor, read), ()
    except (Unclear, Unread) as stop:
        asked.stopped(stop, 0)
    return None, asked.in_order()


def _whole(cursor: Cursor, read: Callable[[Cursor], Value]) -> Value:
    value = read(cursor)
    if cursor.token.kind != "end":
        raise Unread(cursor.token)
    return value


def _loads(cursor: Cursor) -> tuple[Load, ...]:
    start = cursor.token
    found = after_at(cursor)
    loads = tuple(value for value in found if isinstance(value, Load))
    if not loads:
        raise cursor.ask(ask.WRONG_KEY, start, what="effort", key="load")
    return loads


def _efforts(cursor: Cursor) -> tuple[Effort, ...]:
    start = cursor.token
    found = effort(cursor) or after_at(cursor)
    efforts = tuple(value for value in found if isinstance(value, Effort))
    if not efforts:
        raise cursor.ask(ask.WRONG_KEY, start, what="load", key="effort")
    return efforts


def _tempo(cursor: Cursor) -> Tempo:
    if cursor.token.kind == "tempo":
        return times.tempo_digits(cursor)
    found = times.phases(cursor)
    if found is None:
        raise Unread(cursor.token)
    return found


def _sides(cursor: Cursor) -> Sides:
    found = side_order(cursor)
    if found is None:
        raise Unread(cursor.token)
    if found.order is None and cursor.take(","):
        second = side_order(cursor)
        if second is None or second.order is None:
            raise Unread(cursor.token)
        return found.model_copy(update={"order": second.order})
    return found


def _warm_up(cursor: Cursor) -> WarmUp:
    if cursor.take("none"):
        return WarmUp()
    back = cursor.mark()
    count = cursor.whole()
    cursor.take("warm-up")
    if count and cursor.take("sets") and cursor.token.kind == "end":
        return WarmUp(count=count)
    cursor.reset(back)
    steps = [_step(cursor)]
    while cursor.take(","):
        steps.append(_step(cursor))
    return WarmUp(steps=tuple(steps))


def _step(cursor: Cursor) -> WarmUpStep:
    back = cursor.mark()
    sets = cursor.numeric()
    count = 1
    if sets is not None and cursor.take("x"):
        count = int(counted(sets, cursor).low)
        if count > MOST_BARE_SETS:
            raise Unread(sets.start)
    else:
        cursor.reset(back)
    cursor.in_amounts = True
    much = amount(cursor)
    cursor.in_amounts = False
    if much is None:
        raise Unread(cursor.token)
    if not cursor.take("at", "with"):
        return WarmUpStep(sets=count, amount=much.amount)
    value = None
    found = load(cursor)
    if found is None:
        value = cursor.numeric()
        found = None if value is None else bare(cursor, value)
    if found is None:
        raise Unread(cursor.token)
    return WarmUpStep(sets=count, amount=much.amount, load=found)
