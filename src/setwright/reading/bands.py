"""Elastic bands: how many, which, and how far stretched."""

from setwright.reading import questions_how as ask
from setwright.reading.cursor import Cursor, Unread
from setwright.reading.dose import Load
from setwright.reading.lexer import Token
from setwright.reading.times import METRES

_COUNTS = {"2": 2.0, "3": 3.0, "double": 2.0}
_LONGEST_NAME = 4
COLOURS = frozenset(
    ("red", "green", "blue", "black", "yellow", "orange", "purple", "grey", "gray", "white", "pink", "gold")
)
"""Colours that bands and other kit come in."""


def band(cursor: Cursor) -> Load | None:
    """The band that stands next ("2 red bands to 1.5 m", "band 2"), taken; None when none does.

    Raises: Unclear when the gym file lacks it, or the word band is missing.
    """
    start = cursor.token
    if start.text == "band" and cursor.ahead(1).kind == "number":
        cursor.at += 2
        return _known(cursor, f"band {cursor.before.text}", 1.0, start)
    count = 1.0
    if start.text in _COUNTS and cursor.ahead(1).kind == "word":
        count = _COUNTS[start.text]
        first = 1
    else:
        first = 0
    words = _words(cursor, first)
    if first and words[:1] == ["band"]:
        cursor.at += 2
        raise cursor.ask(ask.BAND_NAME, start, write=f"{start.text} red bands")
    if "band" in words[1:]:
        name = " ".join(words[: words.index("band", 1)])
        cursor.at += first + words.index("band", 1) + 1
        return _known(cursor, name, count, start)
    if words and words[0] in COLOURS | _names(cursor):
        cursor.at += first + 1
        named = f"{start.text} {words[0]} bands" if first else f"{words[0]} band"
        if cursor.text == "at" and cursor.ahead(2).text in METRES:
            cursor.at += 3
            named += f" to {cursor.typed(cursor.line.tokens[cursor.at - 2])}"
        raise cursor.ask(ask.BAND_WORD, start, write=f"with {named}")
    return None


def _words(cursor: Cursor, first: int) -> list[str]:
    """Up to a band's longest name and the word band, from ``first`` tokens ahead."""
    found: list[str] = []
    for offset in range(first, first + _LONGEST_NAME + 1):
        token = cursor.ahead(offset)
        if token.kind != "word":
            break
        found.append(token.text)
    return found


def _names(cursor: Cursor) -> set[str]:
    return {name.lower() for name in cursor.habits.bands or ()}


def _known(cursor: Cursor, name: str, count: float, start: Token) -> Load:
    bands = cursor.habits.bands
    if bands is not None and name not in _names(cursor):
        known = f'. It has {", ".join(sorted(bands))}: "with {min(bands)} band"' if bands else ""
        raise cursor.ask(ask.BAND, start, name=name, known=known)
    return Load(kind="band", name=name, low=count, high=count, stretch_m=_stretch(cursor))


def _stretch(cursor: Cursor) -> float | None:
    if not cursor.take("to"):
        return None
    value = cursor.number()
    unit = cursor.take(*METRES)
    if value is None or unit is None:
        raise Unread(cursor.token)
    return value * METRES[unit]
