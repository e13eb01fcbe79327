"""Sets with parts: clusters, rest-pause, partials; and ladders."""

from itertools import pairwise

from setwright.reading import questions_amount as ask
from setwright.reading.cursor import Cursor, Unread
from setwright.reading.dose import Amount, GroupKind, Span
from setwright.reading.draft import Draft
from setwright.reading.questions_how import VALUE_MISSING

MOST_PARTS = 200
"""Most parts of a set or rungs of a ladder (choice: beyond any session)."""

_KINDS: dict[str, GroupKind] = {"cluster": "cluster", "rest-pause": "rest_pause", "partials": "partials"}


def special(cursor: Cursor, draft: Draft) -> bool:
    """Whether a set with parts or a ladder stands next; then it is taken into ``draft``."""
    word = cursor.take(*_KINDS)
    if word is not None:
        draft.kind = _KINDS[word]
        reps = _parts(cursor, word)
        draft.parts = tuple(Span(low=n, high=n) for n in reps)
    elif cursor.take("ladder"):
        draft.kind = "ladder"
        reps = _rungs(cursor)
        draft.rungs = tuple(reps)
    else:
        return False
    draft.amounts = [Amount(unit="reps", span=Span(low=sum(reps), high=sum(reps)))]
    return True


def _parts(cursor: Cursor, word: str) -> list[int]:
    start = cursor.before
    reps: list[int] = []
    while True:
        first = cursor.whole()
        if first is None:
            break
        times = 1
        if cursor.take_all("sets", "of"):
            times, first = first, cursor.whole() or 0
        if first == 0 or times == 0 or len(reps) + times > MOST_PARTS:
            raise cursor.ask(ask.NOUGHT if first * times == 0 else ask.NUMBER_SIZE, start)
        reps += [first] * times
        if not cursor.take("+"):
            break
    if cursor.before.text in ("+", word) and cursor.token.kind != "end":
        raise Unread(cursor.token)
    if len(reps) < 2:  # noqa: PLR2004 - one part is a plain set
        raise cursor.ask(VALUE_MISSING, start, what="the parts of the set", write=f"{word} 2 + 2 + 2")
    return reps


def _rungs(cursor: Cursor) -> list[int]:
    start = cursor.before
    ends = [cursor.whole()]
    while len(ends) < 3 and cursor.take("to"):  # noqa: PLR2004 - up, or up and down again
        ends.append(cursor.whole())
    step = cursor.whole() if cursor.take("by") else 1
    numbers = [end for end in ends if end is not None]
    if len(numbers) < len(ends) or len(numbers) < 2 or step is None:  # noqa: PLR2004 - a ladder has two ends
        raise Unread(start)
    if 0 in numbers or step == 0:
        raise cursor.ask(ask.NOUGHT, start)
    if sum(abs(b - a) // step for a, b in pairwise(numbers)) >= MOST_PARTS:
        raise cursor.ask(ask.NUMBER_SIZE, start)
    rungs = numbers[:1]
    for low, high in pairwise(numbers):
        way = step if high >= low else -step
        rungs += range(low, high + (1 if way > 0 else -1), way)[1:]
    return rungs
