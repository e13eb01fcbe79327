"""How much one set holds: repetitions, time, distance, things; and the side that stands after it."""

from collections.abc import Callable
from typing import Literal, NamedTuple

from setwright.reading import questions_amount as ask
from setwright.reading.cursor import Cursor, Numeric, Unread, counted
from setwright.reading.dose import Amount, Extra, Sides, Span
from setwright.reading.lexer import Token
from setwright.reading.loads import LOADED
from setwright.reading.questions_how import UNIT_MIXED, VALUE_MISSING
from setwright.reading.times import METRES, SECONDS, duration

THINGS = ("steps", "contacts", "cal", "strokes", "breaths", "throws", "jumps")
OPEN = Amount(unit="reps", span=Span(low=0, high=None))
"""As many repetitions as possible."""

OneSide = Literal["left", "right", "weaker", "stronger"]
_FACTORS = {**SECONDS, **METRES, **dict.fromkeys(THINGS, 1.0)}
_SIDE = ("side", "arm", "leg", "hand", "foot", "way")
_WORDS: dict[OneSide, str] = {
    "left": "left",
    "right": "right",
    "weaker": "weaker side",
    "stronger": "stronger side",
}
_EXTRAS: dict[str, Literal["assisted", "lowering only", "partials"]] = {
    "assisted": "assisted",
    "negatives": "lowering only",
    "lowering": "lowering only",
    "partials": "partials",
}


class Much(NamedTuple):
    """An amount with what was said about it; ``swappable`` when it is a bare number or range."""

    amount: Amount
    extra: Extra | None = None
    to_failure: bool = False
    swappable: bool = False


def amount(cursor: Cursor) -> Much | None:
    """The amount of a set that stands next, taken; None (and nothing taken) when none does."""
    much = _open(cursor) or _timed(cursor) or _number(cursor)
    return much and much._replace(extra=_extra(cursor))


def _open(cursor: Cursor) -> Much | None:
    word = cursor.token
    if cursor.take_all("tested", "max", "minus"):
        less = cursor.whole()
        if less is None:
            raise cursor.ask(VALUE_MISSING, word, what="a number of repetitions", write="tested max minus 2")
        return Much(Amount(unit="reps", span=Span(low=0, high=None), less_than_tested=less))
    if cursor.take("failure") or cursor.take_all("to", "failure"):
        return Much(OPEN, to_failure=True)
    if not cursor.take("max", "amrap"):
        return None
    if cursor.text == "-" and cursor.ahead(1).kind == "number":
        cursor.at += 2
        raise cursor.ask(ask.MAX_MINUS, word, less=cursor.before.text)
    if word.text == "amrap" and cursor.token.kind == "number":
        cursor.at += 1
        raise cursor.ask(ask.ROUNDS_OR_REPS, word, number=cursor.before.text)
    cursor.take("reps")
    return Much(OPEN)


def _timed(cursor: Cursor) -> Much | None:
    span = duration(cursor)
    if span is None:
        return None
    how = cursor.take("hold", "fast")
    return Much(Amount(unit="s", span=span, how="hold" if how == "hold" else "fast" if how else None))


def _number(cursor: Cursor) -> Much | None:
    back = cursor.mark()
    value = cursor.numeric()
    if value is None:
        return None
    if value.unit in METRES:
        cursor.at += 1
        metres = METRES[value.unit]
        return Much(Amount(unit="m", span=Span(low=value.low * metres, high=value.high * metres)))
    if value.unit in THINGS:
        cursor.at += 1
        return Much(Amount(unit=value.unit, span=counted(value, cursor)))
    if value.unit in (*LOADED, "rm"):
        cursor.reset(back)
        return None
    return _reps(cursor, value)


def _reps(cursor: Cursor, value: Numeric) -> Much:
    span = counted(value, cursor)
    if cursor.text == "+" and value.low == value.high and not _extra_ahead(cursor):
        if cursor.ahead(1).kind == "number" and cursor.ahead(1).start == cursor.token.end:
            raise Unread(cursor.token)
        if cursor.ahead(1).kind == "number" and cursor.token.start != cursor.before.end:
            raise Unread(cursor.token)
        cursor.at += 1
        return Much(Amount(unit="reps", span=Span(low=value.low, high=None)))
    said = cursor.take("reps") is not None
    return Much(Amount(unit="reps", span=span), swappable=not said)


def _extra_ahead(cursor: Cursor) -> bool:
    return cursor.ahead(1).kind == "number" and cursor.ahead(2).text in _EXTRAS


def _extra(cursor: Cursor) -> Extra | None:
    if cursor.text != "+" or not _extra_ahead(cursor):
        return None
    cursor.at += 1
    reps = cursor.whole()
    word = cursor.take(*_EXTRAS)
    if reps is None or word is None or (word == "lowering" and not cursor.take("only")):
        raise Unread(cursor.token)
    return Extra(reps=reps, kind=_EXTRAS[word])


def amount_list(cursor: Cursor, *, only_reps: bool) -> list[Amount]:
    """Amounts set by set, at least one; the unit after the last one belongs to all.

    Raises: Unclear when some have a unit and others, not only those before the last, have none.
    """

    def fits(much: Much, *, first: bool) -> bool:
        starts_sets = not first and cursor.text == "x"
        return not (much.extra or starts_sets or (only_reps and much.amount.unit != "reps"))

    return [much.amount for much in much_list(cursor, fits, _amount_is_next)]


def _amount_is_next(cursor: Cursor) -> bool:
    """Whether another amount follows the comma: no effort ("to failure"), no load such as "62,5 kg"."""
    before, first, comma, second, unit = (cursor.ahead(n) for n in range(5))
    tied = first.end == comma.start and comma.end == second.start and before.end < first.start
    load = comma.text == "," and first.kind == second.kind == "number" and unit.text in LOADED
    return first.text != "to" and not (tied and load)


def much_list(
    cursor: Cursor, fits: Callable[..., bool], goes_on: Callable[[Cursor], bool] = lambda _: True
) -> list[Much]:
    """Amounts with commas between them, at least one; the unit after the last one belongs to all.

    ``fits(much, first=...)`` says whether an amount that was taken is one of the list, ``goes_on`` whether
    the comma that stands next leads to another one.

    Raises: Unread when there is none; Unclear when some have a unit and others, not only those before the
    last, have none.
    """
    start = cursor.token
    found: list[Much] = []
    unit = ""
    while not found or (cursor.text == "," and goes_on(cursor)):
        back = cursor.mark()
        if found:
            cursor.take(",")
        first = cursor.at
        much = amount(cursor)
        if much is None or not fits(much, first=not found):
            cursor.reset(back)
            break
        unit = _unit_after(cursor, first)
        found.append(much)
    if not found:
        raise Unread(cursor.token)
    return _in_one_unit(cursor, start, found, unit)


def _in_one_unit(cursor: Cursor, start: Token, found: list[Much], unit: str) -> list[Much]:
    units = {much.amount.unit for much in found}
    if units == {"reps"} or not any(much.swappable for much in found):
        return found
    if not all(much.swappable for much in found[:-1]) or unit not in _FACTORS:
        values = ", ".join(f"{much.amount.span.low:g}" for much in found)
        raise cursor.ask(UNIT_MIXED, start, write=f"sets of {values} s")
    last = found[-1].amount
    return [*(m._replace(amount=_in_unit(m.amount, last, _FACTORS[unit])) for m in found[:-1]), found[-1]]


def _unit_after(cursor: Cursor, first: int) -> str:
    """The word after the number or range that starts at token ``first``."""
    tokens = cursor.line.tokens
    return (
        tokens[first + (3 if tokens[first + 1].text == "-" else 1)].text
        if first + 3 < len(tokens)
        else tokens[-2].text
    )


def _in_unit(bare: Amount, like: Amount, factor: float) -> Amount:
    high = bare.span.high
    span = Span(low=bare.span.low * factor, high=None if high is None else high * factor)
    return like.model_copy(update={"span": span})


def sides(cursor: Cursor) -> Sides | None:
    """A side word or phrase, taken; None (and nothing taken) when none stands here."""
    if cursor.take("each"):
        word = cursor.take(*_SIDE) or "side"
        return Sides(kind="each", word=word, alternating=cursor.take("alternating") is not None)
    if cursor.text == "/" and cursor.ahead(1).text in _SIDE:
        cursor.at += 2
        return Sides(kind="each", word=cursor.before.text)
    if cursor.take_all("in", "all"):
        return Sides(kind="in_all", word="in all", alternating=cursor.take("alternating") is not None)
    kind = _one_side(cursor)
    return Sides(kind=kind, word=_WORDS[kind]) if kind else None


def side_order(cursor: Cursor) -> Sides | None:
    """A side word, or which side goes first ("weaker side first"); taken, or None and nothing taken."""
    back = cursor.mark()
    kind = _one_side(cursor)
    if kind and cursor.take("first"):
        return Sides(kind="each", word="side", order=_WORDS[kind])
    cursor.reset(back)
    return sides(cursor)


def _one_side(cursor: Cursor) -> OneSide | None:
    for kind, words in _WORDS.items():
        if cursor.take_all(*words.split()):
            return kind
    return None
