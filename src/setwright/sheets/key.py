"""The key of a sheet: every short form that stands on it, and nothing else."""

import re
from collections.abc import Callable, Iterable
from typing import Final

from setwright.sheets.phrases import say
from setwright.sheets.view import Block, Line

Meaning = tuple[str, str]

_SETS: Final = re.compile(r"(\d+) × (\d+(?:–\d+)?)(?=,| each|$)")
_LEFT: Final = re.compile(r"\b(\d+(?:–\d+)?) left\b")
_CLOCK: Final = re.compile(say("line.rest", rest=r"(\d+):(\d\d)"))
_TEMPO: Final = re.compile(say("tempo.told", phases=r"(\S-\S-\S-\S)"))


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


def _spelt(span: str, name: str) -> str:
    """A number, or a range in words: "8 to 10"."""
    first, dash, second = span.partition("–")
    return say(name, first=first, second=second) if dash else first


def _sets(_lines: list[Line], texts: list[str]) -> Meaning | None:
    match = _first(_SETS, texts)
    if not match:
        return None
    return match[0], say("key.sets", count=match[1], reps=_spelt(match[2], "list.to"))


def _left(_lines: list[Line], texts: list[str]) -> Meaning | None:
    match = _first(_LEFT, texts)
    if not match:
        return None
    return say("key.left", count=match[1]), say("station.stop_left", count=_spelt(match[1], "list.or"))


def _corner(lines: list[Line], _texts: list[str]) -> Meaning | None:
    cut = any(box.reserve for line in lines for box in line.boxes)
    return (say("key.corner"), say("key.corner_means")) if cut else None


def _rest(_lines: list[Line], texts: list[str]) -> Meaning | None:
    match = _first(_CLOCK, texts)
    if not match:
        return None
    minutes, seconds = match[1], int(match[2])
    name = "time.min_s" if seconds else "time.min"
    return f"{minutes}:{match[2]}", say(name, count=minutes, seconds=seconds)


def _tempo(_lines: list[Line], texts: list[str]) -> Meaning | None:
    match = _first(_TEMPO, texts)
    if not match:
        return None
    return match[1], say("key.tempo_means_fast") if "X" in match[1] else say("key.tempo_means")


def _contains(name: str, word: str) -> Callable[[list[Line], list[str]], Meaning | None]:
    """The entry ``name`` for a word of the dose or of a load."""
    pattern = re.compile(word)

    def explain(lines: list[Line], texts: list[str]) -> Meaning | None:
        loads = [f"{line.load.large} {line.load.small}" for line in lines]
        corners = [box.target for line in lines for box in line.boxes]
        there = any(pattern.search(text) for text in (*texts, *loads, *corners))
        return (say(f"key.{name}"), say(f"key.{name}_means")) if there else None

    return explain


def _not_done(lines: list[Line], _texts: list[str]) -> Meaning | None:
    return ("–", say("key.not_done")) if any(line.boxes for line in lines) else None


_ENTRIES: Final = (
    _sets,
    _left,
    _corner,
    _rest,
    _tempo,
    _contains("max", r"^max$|× max\b"),
    _contains("at_least", r"\d\+$"),
    _contains("rm", r"\dRM\b"),
    _contains("rpe", r"\bRPE\b"),
    _contains("a_side", r"\ba side\b"),
    _contains("a_hand", r"\ba hand\b"),
    _contains("body", r"^body\b(?! max)"),
    _not_done,
)
