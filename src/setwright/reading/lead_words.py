"""Qualifiers that a word of their own opens: rest, pause, tempo, every, cap, in, rate, split, stop, drop."""

from collections.abc import Callable

from setwright.reading import questions_how as ask
from setwright.reading import times
from setwright.reading.cursor import Cursor, Unread
from setwright.reading.dose import Amount, Span
from setwright.reading.draft import Draft
from setwright.reading.drops import drops

_PAUSED = ("cluster", "rest_pause", "ladder")


def _rest(cursor: Cursor, draft: Draft) -> None:
    start = cursor.token
    cursor.at += 1
    draft.how["rest"] = times.rest(cursor)
    draft.say(cursor, "rest", start)


def _tempo_words(cursor: Cursor, draft: Draft) -> None:
    word = cursor.token
    cursor.at += 1
    if phases(cursor, draft):
        return
    if cursor.token.kind != "end" and cursor.text not in (",", "then"):
        raise Unread(cursor.token)
    raise cursor.ask(ask.VALUE_MISSING, word, what="the four phases", write="tempo 3-0-1-0")


def _every(cursor: Cursor, draft: Draft) -> None:
    word = cursor.token
    cursor.at += 1
    seconds = times.SECONDS["min"] if cursor.take("min") else times.one_time(cursor)
    if not seconds:
        raise cursor.ask(ask.VALUE_MISSING, word, what="how often", write="every 1:00")
    draft.say(cursor, "every", word)
    draft.how["every_s"] = seconds


def _cap(cursor: Cursor, draft: Draft) -> None:
    word = cursor.token
    cursor.at += 1
    seconds = times.one_time(cursor)
    number = cursor.whole() if seconds is None else None
    if not (seconds or number):
        raise cursor.ask(ask.VALUE_MISSING, word, what="the most that is done", write="cap 8")
    most = float(seconds or number or 0)
    cursor.take("reps")
    draft.say(cursor, "cap", word)
    draft.how["cap"] = Amount(unit="s" if seconds else "reps", span=Span(low=most, high=most))


def _target(cursor: Cursor, draft: Draft) -> None:
    word = cursor.token
    cursor.at += 1
    seconds = times.one_time(cursor)
    if not seconds:
        raise cursor.ask(ask.VALUE_MISSING, word, what="the time", write="in 24 s")
    draft.say(cursor, "target time", word)
    draft.how["target_s"] = seconds


def _rate(cursor: Cursor, draft: Draft) -> None:
    word = cursor.token
    cursor.at += 1
    number = cursor.whole()
    if number is None:
        raise cursor.ask(ask.VALUE_MISSING, word, what="strokes a minute", write="rate 20")
    draft.say(cursor, "rate", word)
    draft.how["rate"] = float(number)


def _split(cursor: Cursor, draft: Draft) -> None:
    word = cursor.token
    cursor.at += 1
    seconds = times.one_time(cursor) if cursor.token.kind == "clock" else None
    if seconds is None:
        raise cursor.ask(ask.VALUE_MISSING, word, what="the time for 500 m", write="split 2:05.3")
    draft.say(cursor, "split", word)
    draft.how["split_s"] = seconds


def _stop(cursor: Cursor, draft: Draft) -> None:
    word = cursor.token
    cursor.at += 1
    while cursor.token.kind != "end" and cursor.text != ",":
        cursor.at += 1
    text = cursor.line.text[word.end : cursor.before.end].strip()
    if not text:
        raise cursor.ask(ask.VALUE_MISSING, word, what="when to stop", write="stop at 20% slower")
    draft.say(cursor, "stop", word)
    draft.how["stop"] = text


def _pause(cursor: Cursor, draft: Draft) -> None:
    start = cursor.token
    if phases(cursor, draft):
        return
    cursor.at += 1
    span = times.pause_between(cursor)
    if draft.kind not in _PAUSED:
        raise cursor.ask(ask.PAUSE_PLACE, start, time=cursor.typed(start).removeprefix("pause").strip())
    draft.say(cursor, "pause", start)
    draft.how["pause_s"] = span


def phases(cursor: Cursor, draft: Draft) -> bool:
    """Whether phases of a tempo in words stand next; then they are taken."""
    start = cursor.token
    found = times.phases(cursor)
    if found is None:
        return False
    draft.say(cursor, "tempo", start)
    draft.how["tempo"] = found
    return True


BY_WORD: dict[str, Callable[[Cursor, Draft], None]] = {
    "rest": _rest,
    "pause": _pause,
    "tempo": _tempo_words,
    "every": _every,
    "drop": drops,
    "cap": _cap,
    "in": _target,
    "rate": _rate,
    "split": _split,
    "stop": _stop,
}
"""What reads each of them into a draft, by its first word."""
