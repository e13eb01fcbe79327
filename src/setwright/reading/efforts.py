"""How hard: repetitions in reserve, RPE, Borg, to failure."""

from typing import Literal

from setwright.reading import questions_how as ask
from setwright.reading.cursor import Cursor, Numeric
from setwright.reading.dose import Effort

TO_FAILURE = Effort(scale="RIR", low=0, high=0)
MOST_RIR = 10
BORG = (6, 20)
"""Ends of the ratings of perceived exertion of the 6-20 scale (Borg 1982)."""

Scale = Literal["RIR", "RPE"]
SCALES: dict[str, Scale] = {"rir": "RIR", "rpe": "RPE"}


def effort(cursor: Cursor) -> tuple[Effort, ...] | None:
    """Efforts that stand next ("2 RIR", "RPE 7-8", "RIR 3, 2, 1"), taken; None when none does."""
    word = cursor.token
    if cursor.take_all("to", "failure"):
        return (TO_FAILURE,)
    if cursor.take("borg"):
        return (_borg(cursor),)
    if word.text in SCALES:
        cursor.at += 1
        return _after_scale(cursor, SCALES[word.text])
    back = cursor.mark()
    value = cursor.numeric()
    if value is None or value.unit not in SCALES:
        cursor.reset(back)
        return None
    cursor.at += 1
    return (scaled(cursor, value, SCALES[value.unit]),)


def _borg(cursor: Cursor) -> Effort:
    word = cursor.before
    value = cursor.numeric()
    if value is None:
        raise cursor.ask(ask.EFFORT_WHAT, word, scale="Borg")
    low, high = BORG
    if not low <= value.low <= value.high <= high:
        raise cursor.ask(
            ask.EFFORT_SCALE,
            word,
            scale="Borg",
            limit=f"{high} and starts at {low}",
            range=f"from {low} to {high}",
            borg="13",
        )
    return Effort(scale="Borg", low=value.low, high=value.high)


def _after_scale(cursor: Cursor, scale: Scale) -> tuple[Effort, ...]:
    word = cursor.before
    value = cursor.numeric()
    if value is None:
        raise cursor.ask(ask.EFFORT_WHAT, word, scale=scale)
    found = [scaled(cursor, value, scale)]
    while cursor.text == "," and cursor.ahead(1).kind == "number":
        back = cursor.mark()
        cursor.at += 1
        following = cursor.numeric()
        ends = cursor.token.kind == "end" or cursor.text in (",", "then")
        if following is None or not ends or following.high > MOST_RIR:
            cursor.reset(back)
            break
        found.append(scaled(cursor, following, scale))
    return tuple(found)


def scaled(cursor: Cursor, value: Numeric, scale: Scale) -> Effort:
    """The effort of a number on RIR or RPE.

    Raises: Unclear when it is beyond the scale.
    """
    if value.high > MOST_RIR:
        borg = f"{value.high:g}" if value.high <= BORG[1] else "13"
        raise cursor.ask(
            ask.EFFORT_SCALE,
            value.start,
            scale=scale,
            limit=str(MOST_RIR),
            range=f"from 0 to {MOST_RIR}",
            borg=borg,
        )
    return Effort(scale=scale, low=value.low, high=value.high)
