"""The record line: what was done becomes a ``Done``, or a finding that asks what was meant.

The load stands first, then each set: "60 kg x 8, 8, 6 at RPE 8". Other sets start with "then", or with a
comma where a load and an x follow it.
"""

from collections.abc import Callable, Iterator

from setwright.findings import Finding
from setwright.places import Place
from setwright.reading import record_questions as ask
from setwright.reading.amounts import Much, much_list, sides
from setwright.reading.asked import Asked
from setwright.reading.cursor import Cursor, Unclear, Unread
from setwright.reading.done import Done, SetDone
from setwright.reading.dose import Effort, Load, Sides
from setwright.reading.efforts import SCALES, effort
from setwright.reading.habits import Habits
from setwright.reading.lexer import Token, lex
from setwright.reading.loads import MASS, load
from setwright.reading.question import Question
from setwright.reading.record_loads import TIMES, lifted_load, load_follows, sets_last
from setwright.reading.short import amount_short
from setwright.reading.values import after_at

_NO_AMOUNT = (*TIMES, *MASS, *SCALES, "%", "rm")
"""Words and signs that make the number before them something else than an amount."""


def read_done(text: str, place: Place, habits: Habits) -> tuple[Done | None, tuple[Finding, ...]]:
    """What the record line ``text`` says was done, or None and one finding.

    ``place`` is the span of ``text`` in its file, on one line. A blank line is "not written". A bare load
    has the unit of ``habits``; without one it has none, and the plan's unit serves.
    """
    return _read(text, place, habits, lambda line: not _read(line, place, habits)[1])


def _read(
    text: str, place: Place, habits: Habits, reads: Callable[[str], bool] | None = None
) -> tuple[Done | None, tuple[Finding, ...]]:
    if not text.strip():
        return Done(kind="not written", text=text, place=place), ()
    cursor = Cursor(lex(text), habits, nought=True)
    asked = Asked(cursor, place, reads, ask.RECORD)
    if asked.fits():
        try:
            done = _line(cursor, text, place)
        except (Unclear, Unread) as stop:
            asked.stopped(stop, 0)
        else:
            return done, ()
    return None, asked.in_order()


def _line(cursor: Cursor, text: str, place: Place) -> Done:
    if cursor.take("done"):
        _alone(cursor, ask.AFTER_DONE)
        return Done(kind="done", text=text, place=place)
    if cursor.take_all("not", "done"):
        reason = _reason(cursor, text)
        return Done(kind="not done", reason=reason, text=text, place=place)
    found = tuple(_parts(cursor))
    if cursor.token.kind != "end":
        raise Unread(
            cursor.ahead(1) if cursor.text == "," and cursor.ahead(1).kind != "end" else cursor.token
        )
    return Done(kind="sets", sets=found, text=text, place=place, notes=tuple(dict.fromkeys(cursor.notes)))


def _alone(cursor: Cursor, question: Question) -> None:
    """Raises: Unclear when more stands behind the words taken last."""
    cursor.take(",")
    if cursor.token.kind != "end":
        raise cursor.ask(question, cursor.token, cursor.line.tokens[-2])


def _reason(cursor: Cursor, text: str) -> str | None:
    """What stands behind the comma, as typed."""
    comma = cursor.token
    if comma.text != ",":
        _alone(cursor, ask.REASON)
        return None
    if cursor.ahead(1).kind == "end":
        raise Unread(comma)
    return " ".join(text[cursor.line.typed_span(comma.start, comma.end)[1] :].split())


def _parts(cursor: Cursor) -> Iterator[SetDone]:
    """The sets of every part; either each part has a load or none has."""
    loads: list[Load] = []
    bare: list[tuple[Token, Token]] = []
    while True:
        start = cursor.token
        lifted = lifted_load(cursor)
        if lifted is None:
            bare.append((start, start))
        else:
            loads.append(lifted)
        yield from _part(cursor, lifted)
        if lifted is None:
            bare[-1] = (start, cursor.before)
        if not (cursor.take_all(",", "then") or cursor.take("then") or load_follows(cursor)):
            break
        cursor.take(",")
    if loads and bare:
        raise cursor.ask(ask.LOAD_ON_PART, *bare[0], load="60 kg")


def _part(cursor: Cursor, lifted: Load | None) -> list[SetDone]:
    """The sets that follow a load, with their efforts."""
    first = cursor.token
    cursor.in_amounts = True
    found = _sets(cursor, lifted)
    cursor.in_amounts = False
    if cursor.text in TIMES:
        raise sets_last(cursor, first)
    start, back = cursor.token, cursor.mark()
    if cursor.text == "," and not load_follows(cursor):
        cursor.at += 1
        start = cursor.token
    efforts = _efforts(cursor, found)
    if not efforts:
        cursor.reset(back)
        return found
    if len(efforts) not in (1, len(found)):
        raise cursor.ask(ask.EFFORTS, start, count=str(len(efforts)), sets=str(len(found)))
    return [one.model_copy(update={"effort": efforts[at % len(efforts)]}) for at, one in enumerate(found)]


def _sets(cursor: Cursor, lifted: Load | None) -> list[SetDone]:
    """Sets one after the other; a side belongs to the sets before it, back to the side before."""
    found: list[SetDone] = []
    bare: Token | None = None
    while not found or _amount_follows(cursor):
        cursor.take(",")
        start = cursor.token
        run = much_list(cursor, lambda *_, **__: True, _amount_follows)
        if not all(map(_is_one_number, run)):
            raise cursor.ask(ask.HOW_MANY, start)
        side = sides(cursor)
        bare = start if side is None else bare
        found += (_set(much, lifted, side) for much in run)
    if bare is not None and any(one.sides for one in found):
        raise cursor.ask(ask.SIDE, bare)
    return found


def _is_one_number(much: Much) -> bool:
    return much.amount.span.low == much.amount.span.high and not much.to_failure


def _set(much: Much, lifted: Load | None, side: Sides | None) -> SetDone:
    return SetDone(amount=much.amount, load=lifted, extra=much.extra, sides=side)


def _efforts(cursor: Cursor, found: list[SetDone]) -> tuple[Effort, ...]:
    """The efforts that stand next, taken; none when none does.

    Raises: Unclear when a load stands here.
    """
    start = cursor.token
    values = effort(cursor)
    if values is not None:
        return values
    behind = after_at(cursor) if cursor.take("at", "with") else (load(cursor),)
    efforts = tuple(value for value in behind if isinstance(value, Effort))
    if not efforts and behind[0] is not None:
        typed = cursor.typed(start).removeprefix("at ").removeprefix("@").strip()
        done = ", ".join(amount_short(one.amount) for one in found)
        raise cursor.ask(ask.LOAD_BEHIND, start, load=typed, sets=done)
    return efforts


def _amount_follows(cursor: Cursor) -> bool:
    """Whether an amount stands behind the comma that stands next, and no load or effort."""
    first = cursor.ahead(1)
    if cursor.text != "," or load_follows(cursor):
        return False
    if first.kind != "number":
        return first.kind == "clock" or first.text in ("max", "amrap", "tested")
    is_range = cursor.ahead(2).text == "-" and cursor.ahead(3).kind == "number"
    behind = 4 if is_range else 2
    word, figure = cursor.ahead(behind).text, cursor.ahead(behind + 1)
    return word not in _NO_AMOUNT or (word in SCALES and figure.kind == "number")
