"""Words for figures of the compiled library, the same wherever a movement is spoken of."""

from collections.abc import Mapping, Sequence
from typing import Any, Final

PARTS: Final = ("clavicular", "sternal", "costal")


def joined(words: Sequence[str], last: str) -> str:
    """Words in one phrase.

    >>> joined(["a", "b", "c"], "and")
    'a, b and c'
    """
    return f"{', '.join(words[:-1])} {last} {words[-1]}" if len(words) > 1 else "".join(words)


def beyond(value: float, unit: str) -> str:
    """How far past or short of the midline, in whole units.

    >>> beyond(-36.0, "cm")
    '36 cm short'
    """
    whole = round(value)
    return f"{abs(whole)} {unit} {'past' if whole > 0 else 'short'}" if whole else "at it"


def stops(hand_cm: float) -> str:
    """What the hand does at the midline, with its verb.

    >>> stops(18.2)
    'goes 18 cm past the midline'
    """
    whole = round(hand_cm)
    if not whole:
        return "stops at the midline"
    return f"goes {whole} cm past the midline" if whole > 0 else f"stops {-whole} cm short of the midline"


def loaded(parts: Mapping[str, Any]) -> str:
    """Which parts are loaded at long and at short length, in a phrase.

    >>> loaded(dict.fromkeys(PARTS, {"loaded_long": "yes", "loaded_short": "no"}))
    'loaded long: all three parts; loaded short: none'
    """
    phrases = []
    for end in ("long", "short"):
        found = [part for part in PARTS if parts[part][f"loaded_{end}"] == "yes"]
        said = "all three parts" if len(found) == len(PARTS) else joined(found, "and") or "none"
        phrases.append(f"loaded {end}: {said}")
    return "; ".join(phrases)


def lever(part: Mapping[str, Any]) -> str:
    """Whether a part is along its line, and its lever.

    >>> lever({"along_its_line": False, "lever_mm": -0.3})
    'no, 0 mm'
    """
    return f"{'yes' if part['along_its_line'] else 'no'}, {round(part['lever_mm'])} mm"


def load_word(part: str, figures: Mapping[str, Any], end: str) -> str:
    """Yes, partly or no; for the costal part at long length the longest loaded length, in percent."""
    if part == "costal" and end == "long":
        percent = figures["loaded_long_percent"]
        return "no" if percent is None else f"{percent:.0f} %"
    return str(figures[f"loaded_{end}"])


def serves(movement: Mapping[str, Any]) -> str:
    """Which parts a movement serves, or that it only assists."""
    if movement["serves"]:
        return f"serves {joined(movement['serves'], 'and')}"
    if movement["assists"]:
        return f"a pull: it loads {joined(movement['assists'], 'and')} too, which counts 0"
    return "serves no part of the chest"


def partners(movement: Mapping[str, Any]) -> list[str]:
    """Names of what finishes a press, or of the presses that a crossing move finishes, best first."""
    return [one["name"] for one in movement["partners"] if one["finishes"]]
