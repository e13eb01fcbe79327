"""Which crossing moves finish which presses: entries of the library, ranked by how well their lines agree."""

from collections.abc import Mapping
from typing import Any

from setwright.engine.geometry import PARTS
from setwright.engine.lines import NO_LINE, PRESSES, agree, likeness, ranked
from setwright.library.table import Movement


def paired(entry: Movement, everything: Mapping[str, Movement]) -> list[dict[str, Any]]:
    """For a press every crossing move, for a crossing move every press, best first; for others none.

    ``everything``: entries by key, scored or not. Each pair: key and name of the other, ``same_line`` (cosine
    of the two line profiles), ``finishes`` (whether they have the same line).

    >>> def entry(name, line, crossing, profile):
    ...     parts = {part: {"align_path": value} for part, value in zip(PARTS, profile)}
    ...     said = {"key": name, "name": name, "line": line, "crossing": crossing, "parts": parts}
    ...     pattern = "fly" if crossing else "downward push"
    ...     return {**said, "scored": True, "sides": "both", "pattern": pattern}
    >>> dip = entry("dip", "costal", False, (0.8, 0.9, 0.9))
    >>> level = entry("level", "sternal", True, (1.0, 0.9, 0.7))
    >>> paired(dip, {"dip": dip, "level": level})
    [{'key': 'level', 'name': 'level', 'same_line': 0.982, 'finishes': False}]
    """
    others = {key: one for key, one in everything.items() if one["scored"] and _pair(entry, one)}
    like = {key: likeness(_profile(entry), _profile(one)) for key, one in others.items()}
    same = {key: agree(entry["line"], one["line"]) for key, one in others.items()}
    best = ranked({key: (like[key], same[key], one["sides"] == "both") for key, one in others.items()})
    return [
        {"key": key, "name": others[key]["name"], "same_line": round(like[key], 3), "finishes": same[key]}
        for key in best
    ]


def partners(entry: Movement, pairs: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """The pairs that are told of a movement: all of a press, those it finishes of a crossing move.

    >>> partners({"crossing": True}, [{"key": "dip", "finishes": False}])
    []
    """
    return [one for one in pairs if one["finishes"] or not entry["crossing"]]


def _pair(one: Movement, other: Movement) -> bool:
    """Whether one of the two is a crossing move and the other a press that is none."""
    crossing, press = (one, other) if one["crossing"] else (other, one)
    return bool(
        crossing["crossing"]
        and not press["crossing"]
        and press["pattern"] in PRESSES
        and press["line"] != NO_LINE
    )


def _profile(entry: Movement) -> list[float]:
    return [entry["parts"][part]["align_path"] for part in PARTS]
