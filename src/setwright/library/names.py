"""Movement names: one folded form for all spellings, words of the dose, likeness of two names."""

import re
from itertools import pairwise
from typing import Final

SAME_WORD: Final = {
    # usual abbreviations of the trade
    "db": "dumbbell", "bb": "barbell", "kb": "kettlebell", "mb": "medicineball", "med": "medicine",
    "bw": "bodyweight", "bp": "benchpress", "ohp": "overheadpress", "dl": "deadlift",
    "rdl": "romaniandeadlift", "sa": "onearm", "sl": "oneleg",
    "cg": "closegrip", "ng": "neutralgrip", "wg": "widegrip",
    "alt": "alternating", "inc": "incline", "ext": "extension",
    "single": "one", "1": "one", "2": "two", "4": "four",
    # British and American spelling
    "flye": "fly", "tyre": "tire", "centre": "center", "grey": "gray",
    # words that change nothing
    "the": "", "a": "", "an": "", "deg": "", "degree": "",
}  # fmt: skip
"""Folded word: the folded word or words that it stands for."""

DOSE_WORDS: Final = frozenset({
    "paused", "pause", "tempo", "banded", "chain", "eccentric", "half", "seated", "kneeling",
    "each", "left", "right",
})  # fmt: skip
"""Folded words that change the dose, not the movement."""

APOSTROPHES: Final = re.compile("['’‘`´]")
PLURAL: Final = re.compile(r"(?<=\w\w)ies$|(?<=ss|sh|ch)es$|(?<=x)es$|(?<=\w[^\Ws])s$")
WORDS: Final = re.compile(r"[^\W_]+")


def split(text: str) -> list[str]:
    """The words of a name as typed, in lower case, without hyphens, apostrophes and other signs.

    >>> split("Farmer’s Walk (2 x DB)")
    ['farmers', 'walk', '2', 'x', 'db']
    """
    return WORDS.findall(APOSTROPHES.sub("", text.casefold()).replace("&", " and "))


def fold(text: str) -> str:
    """The one form of a name that all its spellings share; never shown to a coach.

    Case, blanks, hyphens, apostrophes, plurals, British or American spelling and the usual
    abbreviations make no difference.

    >>> fold("DB bench-presses") == fold("dumbbell Bench Press") == "dumbbellbenchpress"
    True
    """
    return "".join(map(_fold_word, split(text)))


def without_dose_words(text: str) -> tuple[str, tuple[str, ...]]:
    """The name without the words that change the dose and not the movement, and those words as typed.

    >>> without_dose_words("Paused bench press with chains")
    ('bench press', ('paused', 'chains'))
    """
    kept: list[str] = []
    stripped: list[str] = []
    for word in split(text):
        if _fold_word(word) not in DOSE_WORDS:
            kept.append(word)
            continue
        stripped.append(word)
        if kept and kept[-1] == "with":
            kept.pop()
    return " ".join(kept), tuple(stripped)


def pairs(folded: str) -> frozenset[str]:
    """The pairs of neighbouring letters in a folded name: what ``likeness`` compares."""
    return frozenset(map("".join, pairwise(folded)))


def likeness(shared: int, one: int, other: int) -> float:
    """How alike two names are, 0 to 1: their share of letter pairs in common (Dice coefficient).

    ``shared``: how many pairs both have; ``one`` and ``other``: how many each has, together at least one.
    """
    return 2 * shared / (one + other)


def _fold_word(word: str) -> str:
    single = PLURAL.sub(lambda ending: "y" if ending[0] == "ies" else "", word)
    return SAME_WORD.get(single, single)
