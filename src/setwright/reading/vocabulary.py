"""The words of the dose line, and what words it does not know may be."""

from setwright.reading.nearest import choice
from setwright.reading.nearest import nearest as like

BUILD = 'First how much, then how: "3 x 8 at 60 kg, rest 2:00"'
HINTS = {
    "f": '"max to failure"',
    "fail": '"to failure"',
    "full": '"rest as needed"',
    "single": '"1 x 1"',
    "double": '"1 x 2"',
    "triple": '"1 x 3"',
    "dnf": '"not done, reason" (in a record)',
    "adj": '"RPE 8", and a list under `next:`',
    "round": "`rounds:` of a circuit",
    "rounds": "`rounds:` of a circuit",
    "slow": '"3 s down"',
    "left": '"2 RIR"',
    "✓": '"done" (in a record)',
}
_WORDS = """
sets of reps max amrap failure tested minus assisted lowering only partials hold fast cluster
rest-pause ladder total work up to test warm-up each side arm leg hand foot way alternating left right
weaker stronger in all at with bodyweight bar band pin hole setting level light moderate heavy own
choice last time week chain training estimated today's top rising rir rpe borg rest none as needed
when partner is done equal half the times pause tempo down bottom chest halfway every min cap rate
split drop for stop steps contacts cal strokes breaths throws jumps rung kg lb km then
"""
VOCABULARY = tuple(_WORDS.split())


def nearest_words(word: str) -> str:
    """What a word that does not fit may have meant: "Nearest: ..."; else how a line is built."""
    hint = HINTS.get(word)
    if hint:
        return f"Nearest: {hint}"
    near = words_like(word)
    if near:
        return "Nearest: " + choice(f'"{one}"' for one in near)
    return BUILD


def words_like(word: str) -> list[str]:
    """Up to two words of the dose line that a word it does not know may be."""
    return [] if word in VOCABULARY else like(word, VOCABULARY, most=2)
