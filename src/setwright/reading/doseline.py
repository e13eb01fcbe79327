"""The dose line: typed words become a ``Dose``, or findings that ask what was meant.

A line is groups joined by "then"; a group is its amount (``heads``) and what follows (``qualifiers``).
Where reading stops, ``guesses`` says what the words may have meant, and reading goes on behind the next
comma, so that one line can have several faults.
"""

from collections.abc import Callable

from setwright.findings import Finding
from setwright.places import Place
from setwright.reading.asked import Asked
from setwright.reading.cursor import Cursor, Unclear, Unread
from setwright.reading.dose import Dose, WarmUp
from setwright.reading.draft import Draft, checks, share
from setwright.reading.habits import Habits
from setwright.reading.heads import head
from setwright.reading.lexer import lex
from setwright.reading.qualifiers import qualifier
from setwright.reading.questions_amount import DOSE_ORDER, MANY_SETS
from setwright.reading.questions_how import LOAD_ON_PART
from setwright.reading.questions_signs import EVERY_MINUTE

_NOWHERE = Place.top("")


def read_dose(text: str, place: Place, habits: Habits) -> tuple[Dose | None, tuple[Finding, ...]]:
    """The dose typed as ``text``, or None and at least one finding.

    ``place`` is the span of ``text`` in its file, on one line; each finding points at the smallest
    part of it that has two meanings or none. Habits say what the top of the plan settles, and
    whether the line stands alone or in a group that says its rounds, times or ladder.
    """
    return _read(text, place, habits, lambda line: _read(line, _NOWHERE, habits)[0] is not None)


def _read(
    text: str, place: Place, habits: Habits, reads: Callable[[str], bool] | None = None
) -> tuple[Dose | None, tuple[Finding, ...]]:
    cursor = Cursor(lex(text), habits)
    asked = Asked(cursor, place, reads)
    drafts = _chain(cursor, asked) if asked.fits() else []
    if asked.findings:
        return None, asked.in_order()
    share(drafts)
    warm_ups = [draft.warm_up for draft in drafts if draft.warm_up is not None]
    dose = Dose(
        groups=tuple(draft.group() for draft in drafts if draft.amounts),
        warm_up=WarmUp(count=sum(warm_ups)) if warm_ups else None,
        text=text,
        place=place,
        notes=tuple(dict.fromkeys(cursor.notes)),
    )
    return dose, ()


def _chain(cursor: Cursor, asked: Asked) -> list[Draft]:
    drafts = [_group(cursor, asked)]
    while cursor.take("then"):
        drafts.append(_group(cursor, asked))
    if not asked.findings:
        _loads_agree(cursor, asked, [draft for draft in drafts if draft.is_work])
    return drafts


def _group(cursor: Cursor, asked: Asked) -> Draft:
    start = cursor.token
    part = start.start
    known = True
    try:
        draft = head(cursor)
    except (Unclear, Unread) as stop:
        known = False
        draft = Draft((start, start))
        asked.stopped(stop, part)
    while not asked.at_group_end():
        after_comma = cursor.take(",") is not None
        part = cursor.token.start if after_comma else part
        if after_comma and cursor.text == "then":
            break
        if after_comma and asked.at_group_end():
            asked.nothing_after_comma()
            break
        try:
            qualifier(cursor, draft, after_comma=after_comma)
        except (Unclear, Unread) as stop:
            asked.stopped(stop, part, quiet=not known)
    if known:
        for unclear in checks(cursor, draft):
            if not (unclear.question in (DOSE_ORDER, MANY_SETS) and asked.about(EVERY_MINUTE)):
                asked.ask(unclear)
    return draft


def _loads_agree(cursor: Cursor, asked: Asked, work: list[Draft]) -> None:
    """Ask when one group of a chain says a load or an effort and another says neither."""
    loaded = [draft for draft in work if draft.is_loaded]
    bare = [draft for draft in work if not draft.is_loaded]
    if not (loaded and bare):
        return
    kind = "load" if "load" in loaded[0].where else "effort"
    start, end = loaded[0].where[kind]
    fills = {
        "kind": kind,
        "part": cursor.typed(*loaded[0].head),
        "other": cursor.typed(*bare[0].head),
        "value": f" {cursor.typed(start, end)}",
    }
    asked.ask(cursor.ask(LOAD_ON_PART, start, end, **fills))
