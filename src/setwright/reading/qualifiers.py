"""How: everything that may stand after the amount of a group, each kind at most once."""

import re
from collections.abc import Callable

from setwright.reading import questions_amount, times
from setwright.reading import questions_how as ask
from setwright.reading.amounts import amount, side_order
from setwright.reading.cursor import Cursor, Unclear, Unread
from setwright.reading.dose import Effort, Load, Rest
from setwright.reading.draft import Draft, Last
from setwright.reading.efforts import effort
from setwright.reading.heads import warm_up_sets
from setwright.reading.lead_words import BY_WORD, phases
from setwright.reading.lexer import Token
from setwright.reading.loads import HANDS, load
from setwright.reading.values import Values, after_at

_TEMPO = re.compile(r"\d{2}[\dX]\d(?![\w.:]|\s*(?:x|km?|yd|ft|m)\b)")
"""Four phases without the word tempo."""
_NOT_LEADS = ("time", "week", "all")
"""Behind "last" and "in" these make a load or a side: "last time + 5 kg", "in all"."""


def qualifier(cursor: Cursor, draft: Draft, *, after_comma: bool) -> None:
    """Take one qualifier into ``draft``.

    Raises: Unclear when it has two meanings or is said twice, Unread when none stands here.
    """
    start = cursor.token
    read = _BY_WORD.get(start.text)
    if start.kind == "tempo":
        draft.how["tempo"] = times.tempo_digits(cursor)
        draft.say(cursor, "tempo", start)
    elif read is not None and cursor.ahead(1).text not in _NOT_LEADS:
        read(cursor, draft)
    elif not (phases(cursor, draft) or _side(cursor, draft, after_comma=after_comma)):
        _without_lead(cursor, draft)


def _side(cursor: Cursor, draft: Draft, *, after_comma: bool) -> bool:
    start = cursor.token
    side = side_order(cursor)
    if side is None:
        return False
    if not after_comma and not side.order:
        last = cursor.typed(*draft.where["load"]) if "load" in draft.where else ""
        write = " ".join(f"{cursor.typed(*draft.head)} {cursor.typed(start)} {last}".split())
        weight = last.removeprefix("at ") or "20 kg"
        raise cursor.ask(questions_amount.SIDE_PLACE, start, write=write, load=weight)
    head = draft.how.get("sides")
    if side.order and head is not None and head.order is None:
        draft.how["sides"] = head.model_copy(update={"order": side.order})
        return True
    draft.say(cursor, "sides", start)
    draft.how["sides"] = side
    return True


def _without_lead(cursor: Cursor, draft: Draft) -> None:
    """An effort, a load, a rest ("60 s rest") or warm-up sets that no lead word opens."""
    start, back = cursor.token, cursor.mark()
    efforts = effort(cursor)
    if efforts is not None:
        _efforts(cursor, draft, start, efforts)
        return
    found = load(cursor)
    if found is not None:
        _loads(cursor, draft, start, (found,))
        return
    if start.kind not in ("number", "clock"):
        raise Unread(start)
    span = times.duration(cursor)
    if span is not None and cursor.take("rest"):
        draft.say(cursor, "rest", start)
        draft.how["rest"] = Rest(kind="seconds", low=span.low, high=span.high)
        return
    if span is not None and cursor.text == "/":
        raise Unread(cursor.token)
    if span is not None:
        sets = f"{draft.sets.low:g}"
        if times.may_be_pair(cursor, start):
            unit = cursor.habits.unit or "kg"
            raise cursor.ask(ask.TIME_OR_PAIR, start, number=start.text, sets=sets, unit=unit)
        raise cursor.ask(ask.TIME_WORD, start, time=cursor.typed(start), sets=sets)
    value = cursor.numeric()
    if value is not None and value.unit == "warm-up":
        draft.say(cursor, "warm-up", start)
        draft.warm_up = warm_up_sets(cursor, value)
        return
    cursor.reset(back)
    _second_dose(cursor, start)


def _second_dose(cursor: Cursor, start: Token) -> None:
    tempo = _TEMPO.match(cursor.line.text, start.start)
    if tempo:
        write = "-".join(tempo[0].upper())
        raise Unclear(ask.TEMPO_WORD, start.start, tempo.end(), {"write": write})
    value = cursor.numeric()
    if cursor.take("x") or cursor.take_all("sets", "of"):
        joint = cursor.before
        first = cursor.token
        if amount(cursor) is None:
            raise Unread(joint)
        if joint.text == "x" and value is not None and value.low == value.high == HANDS:
            raise cursor.ask(questions_amount.PAIR_OR_SETS, start, number=cursor.typed(first))
        raise cursor.ask(questions_amount.SECOND_DOSE, start)
    ends = cursor.token.kind == "end" or cursor.text in (",", "then")
    if value is None or not ends:
        raise Unread(cursor.token)
    raise cursor.ask(ask.NUMBER_ALONE, start)


def _at(cursor: Cursor, draft: Draft) -> None:
    start = cursor.token
    cursor.at += 1
    _values(cursor, draft, start, after_at(cursor))


def _values(cursor: Cursor, draft: Draft, start: Token, values: Values) -> None:
    loads = tuple(value for value in values if isinstance(value, Load))
    if loads:
        _loads(cursor, draft, start, loads)
    else:
        _efforts(cursor, draft, start, tuple(value for value in values if isinstance(value, Effort)))


def _loads(cursor: Cursor, draft: Draft, start: Token, loads: tuple[Load, ...]) -> None:
    if draft.last is not None:
        _one_for_last(cursor, draft, "load", start, len(loads))
        draft.last.load = loads[0]
        return
    draft.say(cursor, "load", start)
    draft.loads = loads


def _efforts(cursor: Cursor, draft: Draft, start: Token, efforts: tuple[Effort, ...]) -> None:
    if draft.last is not None:
        _one_for_last(cursor, draft, "effort", start, len(efforts))
        draft.last.effort = efforts[0]
        return
    draft.say(cursor, "effort", start)
    draft.efforts = efforts


def _one_for_last(cursor: Cursor, draft: Draft, kind: str, start: Token, count: int) -> None:
    """What follows "last set" belongs to it, one of each kind and no list."""
    if count > 1:
        raise cursor.ask(questions_amount.LAST_LIST, start, kind=kind)
    draft.say(cursor, f"{kind} of the last set", start)


def _last_set(cursor: Cursor, draft: Draft) -> None:
    start = cursor.token
    cursor.at += 1
    if not cursor.take("sets"):
        raise Unread(cursor.token)
    draft.say(cursor, "last set", start)
    draft.last = Last()
    back = cursor.mark()
    much = None if cursor.text in ("to", "failure") else amount(cursor)
    if much is not None and cursor.text not in ("rir", "rpe", "x"):
        draft.last.amount = much.amount
        return
    cursor.reset(back)
    if cursor.token.kind != "end" and cursor.text not in (",", "then"):
        qualifier(cursor, draft, after_comma=False)
    if draft.last == Last():
        raise cursor.ask(ask.VALUE_MISSING, start, what="what the last set is", write="last set max")


_BY_WORD: dict[str, Callable[[Cursor, Draft], None]] = {"at": _at, "with": _at, "last": _last_set, **BY_WORD}
