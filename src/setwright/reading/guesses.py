"""What words that fit nowhere may have meant: patterns of the trade, each with the question it raises.

A dose line is first read by its grammar; only where that stops are these looked at, first match first.
"""

import re
from collections.abc import Iterable

from setwright.reading import guess_fills as fills
from setwright.reading import guess_lists as lists
from setwright.reading import questions_amount as amounts
from setwright.reading import questions_how as how
from setwright.reading import questions_signs as signs
from setwright.reading.guess import Guess, Meant
from setwright.reading.guesses_brackets import BRACKETED
from setwright.reading.habits import Habits

_LOAD = r"(?:bar|\d[\d.]*\s*(?:kg|lb|%)?)"
RAMP = re.compile(rf"(?P<steps>(?:{_LOAD}\s*x\s*\d+\s*,\s*)+)(?P<work>\d+\s*x\s*\d+[^,]*)$", re.IGNORECASE)
"""A line of warm-up sets, load first, and the work behind them."""
_HYPHENS = r"\d+(?:\s*-\s*\d+){2,}"
_SLASHES = r"\d[\d.]*(?:\s*/\s*\d[\d.]*){2,}"
_AFTER_DOSE = r"(?P<dose>\d+\s*x\s*\d+)\s*,?\s+"
_SIDES = r"\s*(?:side|arm|leg|hand|foot|way)\b"
_TIMES = r"(?:\s*x\s*(?P<times>\d+))?"

GUESSES = (
    Guess(r"^(?P<once>\d+(?:\s+\d+){2,})\s*$", signs.BLANK_LIST, lists.waves),
    Guess(r"(?P<number>\d+)\s*(?P<letters>(?:e|p)\s*/\s*(?:s|side|a|arm|l|leg))\b", signs.BOTH_SIDES),
    Guess(r"(?<![\d.])\.(?P<number>\d\d)\b(?!\s*(?:kg|lb|km|m)\b)", how.POINT),
    Guess(r"(?P<work>\d+)\s*s\w*\s+on\W+(?P<off>\d+)\s*s\w*\s+(?:off|rest)\b", amounts.ON_OFF),
    Guess(
        r"^(?P<load>(?:bw|bodyweight)\s*(?:[+-]\s*\d+(?:\.\d+)?\s*(?:kg|lb)?)?)[\s,]+(?P<dose>\d+\s*x\s*\d+.*)$",
        how.BODY_FIRST,
    ),
    Guess(r"(?P<first>\d+\s*x\s*\d[^/,]*?)\s*/\s*(?P<second>\d+\s*x\s*\d.*)$", signs.SLASH_THEN),
    Guess(
        _AFTER_DOSE + r"(?P<here>(?P<once>\d{2,}(?:\.\d+)?(?:\s*/\s*\d{2,}(?:\.\d+)?){2,}))(?!\s*[x%/\d])",
        signs.SLASH_LIST,
        lists.waves,
    ),
    Guess(
        r"(?P<before>\d+\s*x\s*\d+\s*,?\s*)?\be(?P<step>[2-9])?mom\b(?P<behind>(?:\D*\d+){0,2})",
        signs.EVERY_MINUTE,
        fills.every,
    ),
    Guess(r"every\s+(?P<time>[^,x]+?)\s*x\s*(?P<sets>\d+)", signs.EVERY_MINUTE, fills.every_for),
    Guess(r"odd\s*/\s*even", signs.ODD_EVEN),
    Guess(r"\bdeload\b.*", signs.LIGHTER),
    Guess(
        r"\bif\s+(?P<least>\d+)[^>→]*(?:->|→|=>)\s*\+?\s*(?P<step>\d+(?:\.\d+)?\s*(?:kg|lb|%))",
        signs.WEEKS_IF,
    ),
    Guess(r"[a-z][\w ]*(?:->|→|=>)\s*[a-z][\w ]*", signs.TOGETHER_ARROW),
    Guess(r"\+\s*/?-\s*(?P<percent>[\d.]+)\s*%\s*(?:per|each)\b[^,]*", signs.WEEKS_EFFORT),
    Guess(r"\+\s*(?P<percent>\d+(?:\.\d+)?)\s*%\s*(?:/|per|each|every)\s*w(?:ee)?k\b", signs.WEEKS_PERCENT),
    Guess(
        r"->|→|=>|⇒|↑|↓|(?:\+?\s*[\d.]+\s*(?:kg|lb|%)?)?\s*/\s*w(?:ee)?k\b|\bw(?:ee)?k?\s?\d+\b"
        r"|\+\s*\d+\s*(?:sets?|reps?)\b",
        signs.WEEKS,
        fills.weeks,
    ),
    Guess(
        r"(?:x|\bof)\s*"
        r"(?P<here>(?:≤|under|below|up to|(?:fewer|less) than|at most)\s*(?P<reps>[2-9]|[1-9]\d+)\b)",
        signs.FEWER_THAN,
        fills.fewer_than,
    ),
    Guess(
        r"(?:\b(?:leav\w+|keep\w*|stopping|with)\s+)?\b(?P<number>\d)\s*(?:reps?\s*)?(?:left\s+)?"
        r"(?:\bin (?:the )?(?:tank|reserve)\b|\b(?:reps? )?left\b|\b(?:short of|from|off|before) failure\b)",
        amounts.IN_RESERVE,
    ),
    Guess(r"(?P<sets>\d+)\s*sets?\s+(?P<reps>\d+(?:\s*-\s*\d+)?)(?:\s*reps?\b)?", amounts.SETS_WORDS),
    Guess(r"\bleav\w+\s+(?P<number>\d)\b(?:\s*reps?\b)?", amounts.IN_RESERVE),
    Guess(r"\b[a-f][1-9]\b|\b[1-9][a-f]\b|\bss\b|\bb b\b|\bsuperset\b", signs.TOGETHER),
    Guess(r"\b[lr]\s*\d+\s*x\s*\d+(?:\s*[,;]\s*[lr]\s*\d+\s*x\s*\d+)?", signs.LEFT_RIGHT, fills.by_side),
    Guess(r"(?P<sets>\d+)\s*x\s*(?P<metres>\d{3,})\s*m?\s*,?\s*\br\s*(?P<rest>\d+)", signs.LETTER_METRES),
    Guess(r"\br\s*(?P<number>\d+)", signs.LETTER_REST),
    Guess(r"\bi go\b.*\byou go\b|\bgo when (?:the )?partner is done\b", amounts.PARTNERS),
    Guess(
        r"\b(?:heavy\s+)?(?P<word>single|double|triple)\b(?:\s*(?:@|at)\s*(?P<effort>\d+))?",
        amounts.SINGLE,
        fills.single,
    ),
    Guess(r"(?:\d+\s+rounds?\s+)?\bfor time\b(?:\s*,?\s*cap\s*(?P<cap>\d+))?", amounts.RACE, fills.race),
    Guess(r"\b\d/\d\s*(?P<reps>\d+)\s*rm\b", signs.SLASH_RM),
    Guess(r"(?P<reps>\d+)\s*rm\s*max\b", amounts.RM_TEST),
    Guess(_SLASHES + r"\s*%", signs.SLASH_LIST, lists.waves),
    Guess(
        rf"(?:{_AFTER_DOSE}|\bat\s+)(?P<here>(?P<first>\d{{2,}})\s*/\s*(?!(?P=first)\b)(?P<second>\d{{2,}}))(?!\s*[/\d])",
        signs.SLASH_LOADS,
        fills.two_loads,
    ),
    Guess(_AFTER_DOSE + r"(?P<here>[\d. ]*\d\s*/\s*\d+(?:\s*reps?)?)(?!\s*[/\d])", signs.SLASH_STYLE),
    Guess(
        rf"\d{{1,2}}[-/ .]*(?:{fills.MONTH})[a-z]*|(?:{fills.MONTH})[a-z]*[-/ .]*\d{{1,2}}|\d{{4}}-\d\d-\d\d",
        signs.DATE,
        fills.date,
    ),
    Guess(
        rf"\b(?P<sets>{fills.WORD_NUMBER})\b(?:\s+(?:by|x|times|sets?|of))+\s+(?P<reps>{fills.WORD_NUMBER})\b",
        signs.NUMBER_WORDS,
        fills.in_digits,
    ),
    Guess(
        rf"\b(?P<count>\d|{fills.WORD_NUMBER})\s+plates?\b(?:\s*\+\s*(?P<more>\d+(?:\.\d+)?))?",
        how.PLATES,
        fills.plates,
    ),
    Guess(r"\brest\s*:(?P<number>\d{3,})", how.REST_COLON),
    Guess(r"\b(?P<one>\d+)\s*:\s*(?P=one)\b(?!:)", signs.RATIO_EVEN),
    Guess(r"\b\d+\s*:\s*\d\b|\d+\s+:\s*\d+|\d+\s*:\s+\d+", signs.RATIO, lists.ratio),
    Guess(
        r"(?<![\d/.])(?P<day>[3-9]|1[0-2])/(?!(?P=day)\b)(?:[3-9]|1[0-2])(?![\d/%.]|\s*x)",
        signs.DATE,
        fills.date,
    ),
    Guess(r"(?P<scale>rir|rpe)\s*\d+(?:\s*/\s*\d+)+", signs.SLASH_EFFORT, fills.efforts),
    Guess(rf"(?P<once>{_SLASHES}){_TIMES}", signs.SLASH, lists.waves),
    Guess(
        r"\d[\d.]*\s*%\s*/\s*\d+(?:\s*[;,]\s*\d[\d.]*\s*%\s*/\s*\d+)*|\d[\d.]*/(?:[1-9]|1[0-2])x\d+",
        signs.SLASH_REPS,
        fills.reps_at,
    ),
    Guess(r"(?P<work>\d+\s*x\s*[^,;/()]*(?:[a-z]|:\d\d)\s*/\s*[^\s,;()/]+)", signs.SLASH_REST, fills.slashed),
    Guess(r"(?P<work>\d+\s*/\s*\d+)\s*x\s*(?P<times>\d+)", signs.SLASH_REST, fills.slashed),
    Guess(rf"(?P<work>\d[^,;/()]*/(?!{_SIDES})\s*[^\s,;()/]+)", signs.SLASH_TWO, fills.slashed),
    Guess(rf"(?:[^\s,;()/]+\s*/(?!{_SIDES})\s*)+[^\s,;()]+|/(?!{_SIDES})", signs.SLASH_WORDS),
    Guess(
        r"\d+\s*-\s*\d+(?:\s*-\s*\d+)?\s*(?:ladder|pyramid)|(?:ladder|pyramid)\s*\d+(?:\s*-\s*\d+)?",
        amounts.LADDER,
        lists.ladder,
    ),
    Guess(r"\d+(?:\s*,\s*\d+)+\s*,?\s*(?:\.\.\.?|…)\s*\d+", amounts.LADDER_DOTS, lists.countdown),
    Guess(_HYPHENS + r"\s*drop\w*", signs.HYPHEN_DROP, lists.drops),
    Guess(
        rf"(?P<once>1(?P<turn>\s*-\s*\d+\s*-\s*1)|1-2-3(?:-4(?:-5)?)?)(?!\s*-|\d){_TIMES}",
        signs.HYPHEN_LADDER,
        lists.steps,
    ),
    Guess(rf"(?P<once>{_HYPHENS}(?:\s+{_HYPHENS})*){_TIMES}", signs.HYPHEN_LIST, lists.waves),
    Guess(
        r"-\s*(?P<percent>\d+(?:\.\d+)?)\s*%(?P<dose>\s*\d+\s*x\s*\d+)?",
        how.PERCENT_OF_NOTHING,
        fills.percent,
    ),
    Guess(
        r"(?P<warm>\d+)\s*(?:wu|warm-?ups?)\b(?:\s*sets?)?\s*\+\s*(?P<work>[^,]+)",
        signs.WARM_UP_PLUS,
        fills.warm,
    ),
    Guess(r"(?P<first>\d+\s*(?:%|kg|lb))\s*\+\s*chains?\s*(?P<last>\d+)", signs.CHAIN_PLUS),
    Guess(r"(?P<number>\d+)\s*(?P<letters>l\s*\+\s*r)\b", signs.BOTH_SIDES),
    Guess(
        r"(?:(?P<sets>\d+)\s*x\s*)?(?<![\d.])(?P<parts>\d+(?:\.\d+){2,})(?:\s*x\s*(?P<after>\d+))?",
        signs.DOTTED,
        lists.dots,
    ),
    Guess(
        r"(?:^|(?<=,)|(?<=, )|(?<=at )|(?<=@))\+\s*(?P<number>\d+(?:\.\d+)?)\s*(?P<unit>kg|lb)?",
        how.PLUS_BASE,
        fills.base,
    ),
    Guess(
        r"\b(?P<amount>to failure|failure|max|amrap|\d+\s*(?:k?m|s|secs?|min|steps|cal|reps))\s*"
        r"x\s*(?P<sets>\d+)",
        amounts.SETS_LAST,
    ),
    Guess(r"\bm\s*\+\s*(?P<number>\d+)", signs.MAX_PLUS),
    Guess(
        r"\d+\s*x\s*\d+\s+(?P<here>\+(?P<number>\d+(?:\.\d+)?)\s*(?P<unit>kg|lb)?)(?!\s*[+x]|\w)",
        how.PLUS_BASE,
        fills.base,
    ),
    Guess(
        r"(?<![\d+])(?<!\+ )(?:(?P<before>\d+)\s*x\s*)?(?P<parts>\d+\s*\+\s*\d+)(?!\s*\+|\w)"
        r"(?:\s*x\s*(?P<after>\d+))?",
        signs.BARE_PLUS_TWO,
        fills.pluses,
    ),
    Guess(
        r"(?:(?P<before>\d+)\s*x\s*)?(?P<parts>\d+(?:\s*\+\s*\w+)+)(?:\s*x\s*(?P<after>\d+))?",
        signs.BARE_PLUS,
        fills.pluses,
    ),
    Guess(r"\+\s*(?P<number>\d+(?:\.\d+)?)\s*(?P<unit>kg|lb)?", how.PLUS_BASE, fills.base),
    Guess(
        r"(?:^|(?<=,)|(?<=, )|(?<=at )|(?<=@))-\s*(?P<number>\d+(?:\.\d+)?)\s*(?P<unit>kg|lb)?(?!\s*%)",
        how.MINUS_BASE,
        fills.base,
    ),
    Guess(r"(?P<once>\d+(?:_\d+){2,})", signs.HYPHEN_LIST, lists.waves),
    Guess(r"(?P<whole>\d+)_(?P<part>\d+)", amounts.UNDERSCORE),
    Guess(r"(?P<low>\d+)\s*(?:…|\.\.\.?)\s*(?P<high>\d+)", amounts.DOTS),
    Guess(r"(?<=\s)-{1,3}(?=\s+[a-z])", amounts.DASH, fills.with_comma),
    Guess(r"\"(?P<inside>[^\"]*)\"", amounts.QUOTES),
    Guess(r"hold\s*(?P<number>\d+)", how.HOLD),
    Guess(r"(?P<amount>\d+)\s*alt\b", amounts.ALTERNATING),
    Guess(r"\b(?:challenging|hard|choose|easy|comfortable|medium|tough|max effort)\b", how.NO_NUMBER),
    Guess(rf"^(?P<steps>(?:{_LOAD}\s*x\s*\d+(?:\s*,\s*|\s*$))+)$", how.STEPS_FIRST, fills.ramp),
    *BRACKETED,
)
"""Looked through in this order; a plan that reads never comes here."""


def meant(
    text: str, part: tuple[int, int], fault: int, habits: Habits, guesses: Iterable[Guess] = GUESSES
) -> Meant | None:
    """The first guess that matches in ``part`` of ``text`` and reaches beyond ``fault``, if any.

    Where a pattern names a group "here", that is what the question is about.
    """
    for one in guesses:
        pattern = re.compile(one.pattern, re.IGNORECASE)
        about = "here" if "here" in pattern.groupindex else 0
        for match in pattern.finditer(text, part[0]):
            if match.start() >= part[1]:
                break
            if match.end() > fault:
                return Meant(one.question, *match.span(about), one.fill(match, habits))
    return None
