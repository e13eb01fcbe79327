"""The key of a sheet: every short form that stands on it, and nothing else."""

import re
from collections.abc import Callable, Iterable
from typing import Final

from setwright.sheets.view import Block, Line

Meaning = tuple[str, str]

_SETS: Final = re.compile(r"(\d+) × (\d+(?:–\d+)?)(?=,| each|$)")
_LEFT: Final = re.compile(r"\b(\d+(?:–\d+)?) left\b")
_CLOCK: Final = re.compile(r"rest (\d+):(\d\d)")
_TEMPO: Final = re.compile(r"tempo (\S-\S-\S-\S)")


def key(blocks: tuple[Block, ...]) -> tuple[Meaning, ...]:
    """What the short forms of these blocks mean, each once, in the order of the trade."""
    lines = [line for block in blocks for line in block.lines]
    texts = [text for block in blocks for text in _texts(block)]
    found = (explain(lines, texts) for explain in _ENTRIES)
    return tuple(meaning for meaning in found if meaning)


def _texts(block: Block) -> Iterable[str]:
    yield block.heading or ""
    for line in block.lines:
        yield from (line.dose, *line.remarks)


def _first(pattern: re.Pattern[str], texts: list[str]) -> re.Match[str] | None:
    return next((match for text in texts if (match := pattern.search(text))), None)


def _sets(_lines: list[Line], texts: list[str]) -> Meaning | None:
    match = _first(_SETS, texts)
    return (match[0], f"{match[1]} sets of {match[2].replace('–', ' to ')}") if match else None


def _left(_lines: list[Line], texts: list[str]) -> Meaning | None:
    match = _first(_LEFT, texts)
    if not match:
        return None
    more = match[1].replace("–", " or ")
    return f"{match[1]} left", f"stop when {more} more would still go"


def _corner(lines: list[Line], _texts: list[str]) -> Meaning | None:
    cut = any(box.reserve for line in lines for box in line.boxes)
    return ("cut corner of a box", "reps left") if cut else None


def _rest(_lines: list[Line], texts: list[str]) -> Meaning | None:
    match = _first(_CLOCK, texts)
    if not match:
        return None
    seconds = f" {int(match[2])} s" if int(match[2]) else ""
    return f"{match[1]}:{match[2]}", f"{match[1]} min{seconds}"


def _tempo(_lines: list[Line], texts: list[str]) -> Meaning | None:
    match = _first(_TEMPO, texts)
    if not match:
        return None
    quick = ", X fast" if "X" in match[1] else ""
    return match[1], f"seconds down, at the bottom, up, at the top{quick}"


def _contains(sign: str, word: str, meaning: str) -> Callable[[list[Line], list[str]], Meaning | None]:
    """An entry for a word of the dose or of a load."""
    pattern = re.compile(word)

    def explain(lines: list[Line], texts: list[str]) -> Meaning | None:
        loads = [f"{line.load.large} {line.load.small}" for line in lines]
        corners = [box.target for line in lines for box in line.boxes]
        there = any(pattern.search(text) for text in (*texts, *loads, *corners))
        return (sign, meaning) if there else None

    return explain


def _not_done(lines: list[Line], _texts: list[str]) -> Meaning | None:
    return ("–", "not done") if any(line.boxes for line in lines) else None


_ENTRIES: Final = (
    _sets,
    _left,
    _corner,
    _rest,
    _tempo,
    _contains("max", r"^max$|× max\b", "as many as good form allows"),
    _contains("8+", r"\d\+$", "at least that many, more if form holds"),
    _contains("RM", r"\dRM\b", "most reps that a load goes"),
    _contains("RPE", r"\bRPE\b", "effort out of 10; 10 = nothing left"),
    _contains("a side", r"\ba side\b", "on each end of the bar"),
    _contains("a hand", r"\ba hand\b", "in each hand"),
    _contains("body", r"^body\b(?! max)", "your own weight"),
    _not_done,
)
