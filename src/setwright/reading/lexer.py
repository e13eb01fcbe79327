"""Tokens of a dose line: numbers, clock times, words and signs, each knowing where it was typed."""

import re
from typing import NamedTuple

_ZERO_WIDTH = "\u200b\u200c\u200d\u2060\ufeff\u00ad"
_SAME = str.maketrans(
    {
        **dict.fromkeys("\u2010\u2011\u2012\u2013\u2014\u2015\u2212", "-"),
        **dict.fromkeys("×✕✖⨯", "x"),
        **dict.fromkeys("‘’‚′ʹ`´", "'"),
        **dict.fromkeys("“”„″ʺ", '"'),
        **dict.fromkeys(
            "\u00a0\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000", " "
        ),
        "＋": "+",
        "：": ":",
        "，": ",",
        "％": "%",
        "＠": "@",
        "／": "/",
    }
)

_ALIASES = {
    **dict.fromkeys(("rep", "repetition", "repetitions"), "reps"),
    **dict.fromkeys(("set",), "sets"),
    **dict.fromkeys(("sec", "secs", "second", "seconds"), "s"),
    **dict.fromkeys(("mins", "minute", "minutes"), "min"),
    **dict.fromkeys(("kgs", "kilo", "kilos", "kilogram", "kilograms"), "kg"),
    **dict.fromkeys(("lbs", "pound", "pounds"), "lb"),
    **dict.fromkeys(("meter", "meters", "metre", "metres"), "m"),
    **dict.fromkeys(("kilometer", "kilometers", "kilometre", "kilometres"), "km"),
    **dict.fromkeys(("yds", "yard", "yards"), "yd"),
    **dict.fromkeys(("feet",), "ft"),
    **dict.fromkeys(("step",), "steps"),
    **dict.fromkeys(("contact",), "contacts"),
    **dict.fromkeys(("cals", "calorie", "calories", "kcal"), "cal"),
    **dict.fromkeys(("stroke",), "strokes"),
    **dict.fromkeys(("breath",), "breaths"),
    **dict.fromkeys(("throw",), "throws"),
    **dict.fromkeys(("jump",), "jumps"),
    **dict.fromkeys(("side", "sides"), "side"),
    **dict.fromkeys(("arms",), "arm"),
    **dict.fromkeys(("legs",), "leg"),
    **dict.fromkeys(("hands",), "hand"),
    **dict.fromkeys(("ways",), "way"),
    **dict.fromkeys(("ea", "per"), "each"),
    **dict.fromkeys(("bw", "bodymass"), "bodyweight"),
    **dict.fromkeys(("bands",), "band"),
    **dict.fromkeys(("holds",), "hold"),
    **dict.fromkeys(("clusters",), "cluster"),
    **dict.fromkeys(("ladders",), "ladder"),
    **dict.fromkeys(("drops",), "drop"),
    **dict.fromkeys(("maximum",), "max"),
    **dict.fromkeys(("amraps",), "amrap"),
    **dict.fromkeys(("neg", "negs", "negative", "negatives"), "negatives"),
    **dict.fromkeys(("partial",), "partials"),
    **dict.fromkeys(("restpause",), "rest-pause"),
    **dict.fromkeys(("warmup", "warm-ups"), "warm-up"),
    **dict.fromkeys(("chains",), "chain"),
    **dict.fromkeys(("@",), "at"),
}

_TOKEN = re.compile(
    r"""
      (?P<blank>\s+)
    | (?P<tempo>\btempo\b\s*[0-9x](?:[-:/.]?[0-9x])*(?![\w.])(?!\s*(?:s|secs?|seconds?)\b))
    | (?P<clock>(?<![0-9:.])[0-9]*:[0-9]{2}(?::[0-9]{2})?(?:\.[0-9]+)?(?![0-9:]))
    | (?P<number>[0-9]+(?:\.[0-9]+)?)
    | (?P<speed>m/s\b)
    | (?P<times>x(?=[\s0-9:]|$|max\b|amrap|f\b|failure|cluster|ladder|partials|rest-pause))
    | (?P<word>(?:kgs?|lbs?)(?=x[\s0-9])|[^\W\d_]+(?:['-][^\W\d_]+)*)
    | (?P<sign>.)
    """,
    re.VERBOSE | re.IGNORECASE,
)


class Token(NamedTuple):
    """One token: ``kind`` is number, clock, word, tempo, sign or end.

    ``text`` is in lower case, short forms resolved; ``start`` and ``end`` count characters of the normalised
    line.
    """

    kind: str
    text: str
    start: int
    end: int


class Line(NamedTuple):
    """A dose line without invisible characters, its tokens, and the offset of each character as typed."""

    text: str
    tokens: tuple[Token, ...]
    offsets: tuple[int, ...] | None

    def typed_span(self, start: int, end: int) -> tuple[int, int]:
        """The span ``start`` to ``end`` of the normalised line, in offsets of the text as typed."""
        if self.offsets is None:
            return start, end
        last = self.offsets[end - 1] + 1 if end > start else self.offsets[start]
        return self.offsets[start], min(last, self.offsets[-1])


def lex(typed: str, lead: str = "") -> Line:
    """The tokens of ``typed``, after ``lead`` (words that its key stands for, such as "rest ").

    Dashes, multiplication signs, quotes and unusual blanks become their plain forms; zero-width
    characters are left out. No character is dropped otherwise: what is no token is a sign.
    """
    offsets = None
    text = typed
    if not typed.isascii():
        kept = [i for i, char in enumerate(typed) if char not in _ZERO_WIDTH]
        text = "".join(typed[i] for i in kept).translate(_SAME)
        offsets = (*kept, len(typed))
    if lead:
        offsets = (*([0] * len(lead)), *(offsets or range(len(typed) + 1)))
        text = lead + text
    return Line(text, tuple(_tokens(text)), offsets)


def _tokens(text: str) -> list[Token]:
    found = []
    for match in _TOKEN.finditer(text):
        kind = match.lastgroup
        if kind == "blank":
            continue
        word = match.group().lower()
        if kind == "times":
            kind, word = "sign", "x"
        elif kind in ("speed", "word"):
            kind, word = "word", _ALIASES.get(word, word)
        elif kind == "sign":
            word = "x" if word == "*" else _ALIASES.get(word, word)
        found.append(Token(str(kind), word, *match.span()))
    found.append(Token("end", "", len(text), len(text)))
    return found
