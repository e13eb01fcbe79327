"""Ways to garble a text: bytes, letters, lines, words of the language, traps, and lines of other plans."""

from collections.abc import Callable
from random import Random

from tests.fuzz.seeds import TOP, TRAPS, WORDS, Input, seeds

MOST_CHANGES = 6
SLOW = 0.02
"""Share of plans that ask the engine (choice: it is 20 times slower than reading)."""
AS_IT_IS = 0.5
"""Share of files beside the plan that stay whole."""
NOW_AND_THEN = 0.05
"""Share of texts with other line ends, and of files with stray bytes (choice)."""
ENCODINGS = ("utf-8", "utf-8", "utf-8", "utf-8", "utf-8-sig", "utf-16", "utf-16-le", "utf-16-be", "cp1252")

Change = Callable[[str, Random], str]


def _cut(text: str, dice: Random) -> str:
    start, end = _stretch(text, dice)
    return text[:start] + text[end:]


def _double(text: str, dice: Random) -> str:
    start, end = _stretch(text, dice)
    return text[:end] + text[start:]


def _swap_letter(text: str, dice: Random) -> str:
    at = dice.randrange(len(text) + 1)
    letter = chr(dice.choice((dice.randrange(32, 127), dice.randrange(0x100), dice.randrange(0xD800))))
    return text[:at] + letter + text[at + dice.randrange(2) :]


def _put(words: tuple[str, ...]) -> Change:
    def change(text: str, dice: Random) -> str:
        at = dice.randrange(len(text) + 1)
        blank = dice.choice(("", " "))
        return text[:at] + blank + dice.choice(words) + blank + text[at:]

    return change


def _swap_word(text: str, dice: Random) -> str:
    rows = text.split("\n")
    at = dice.randrange(len(rows))
    words = rows[at].split(" ")
    words[dice.randrange(len(words))] = dice.choice(WORDS)
    rows[at] = " ".join(words)
    return "\n".join(rows)


def _lines(text: str, dice: Random) -> str:
    """Lines taken out, moved, repeated, or indented otherwise."""
    rows = text.split("\n")
    start, end = sorted((dice.randrange(len(rows) + 1), dice.randrange(len(rows) + 1)))
    end = min(end, start + 8)
    block = rows[start:end]
    how = dice.choice(("out", "move", "repeat", "in", "back"))
    if how in ("out", "move"):
        del rows[start:end]
    if how in ("move", "repeat"):
        at = dice.randrange(len(rows) + 1)
        rows[at:at] = block
    if how in ("in", "back"):
        step = dice.randint(1, 4)
        rows[start:end] = [" " * step + row if how == "in" else row[step:] for row in block]
    return "\n".join(rows)


def _splice(text: str, dice: Random) -> str:
    """Lines of another plan, squad or gym put in."""
    known = seeds()
    other = dice.choice(dice.choice((known.plans, known.squads, known.gyms))).split("\n")
    start = dice.randrange(len(other))
    rows = text.split("\n")
    at = dice.randrange(len(rows) + 1)
    rows[at:at] = other[start : start + dice.randint(1, 8)]
    return "\n".join(rows)


def _line_ends(text: str, dice: Random) -> str:
    return text.replace("\n", dice.choice(("\r\n", "\r", "\n\n", "\u2028", " \n")))


CHANGES: tuple[Change, ...] = (
    _cut, _double, _swap_letter, _swap_letter, _put(WORDS), _put(TRAPS), _put(TRAPS), _swap_word, _swap_word,
    _lines, _lines, _splice, _splice,
)  # fmt: skip


def _stretch(text: str, dice: Random) -> tuple[int, int]:
    start = dice.randrange(len(text) + 1)
    return start, min(len(text), start + dice.choice((1, 2, 5, 20, 80)))


def garbled(seed: int, number: int) -> Input:
    """Input ``number`` of the run ``seed``: the same two numbers give the same bytes."""
    dice = Random(f"{seed}:{number}")
    known = seeds()
    plan = dice.choice(known.slow if dice.random() < SLOW else known.plans)
    if dice.random() < AS_IT_IS and "squad:" not in plan:
        plan = TOP + plan
    plan = _changed(plan, dice)
    beside = [dice.choice(texts) for texts in (known.squads, known.gyms)]
    squad, gym = (text if dice.random() < AS_IT_IS else _changed(text, dice) for text in beside)
    return Input(_as_bytes(plan, dice), _as_bytes(squad, dice), _as_bytes(gym, dice))


def _changed(text: str, dice: Random) -> str:
    for _ in range(dice.randint(1, MOST_CHANGES)):
        text = dice.choice(CHANGES)(text, dice)
    return _line_ends(text, dice) if dice.random() < NOW_AND_THEN else text


def _as_bytes(text: str, dice: Random) -> bytes:
    errors = "surrogatepass" if text.isascii() or dice.random() < AS_IT_IS else "replace"
    encoding = dice.choice(ENCODINGS)
    raw = bytearray(text.encode(encoding, "replace" if encoding == "cp1252" else errors))
    if dice.random() < NOW_AND_THEN:
        for _ in range(dice.randint(1, 4)):
            at = dice.randrange(len(raw) + 1)
            raw[at : at + dice.randrange(2)] = bytes([dice.randrange(256)])
    return bytes(raw)
