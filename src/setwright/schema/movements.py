"""The movements of the library as keys of a line, each explained in one sentence."""

from collections.abc import Iterable, Mapping
from typing import Any, Final

from setwright.library.table import Library
from setwright.report.phrases import joined, serves
from setwright.schema.forms import EMPTY, Schema, exactly, ref

NOTHING_YET: Final[Schema] = {"additionalProperties": EMPTY}
"""A line on which nothing stands behind a colon yet: the moment to propose movements."""


def definitions(library: Library) -> dict[str, Schema]:
    """A dose with the movement's name and sentence, for each movement."""
    return {
        _place(number): {"title": one["name"], "description": sentence(one), **ref("dose")}
        for number, one in enumerate(_entries(library))
    }


def explained(library: Library) -> Schema:
    """The names of every movement as keys that are explained and not proposed."""
    return {
        "patternProperties": {
            f"^(?:{'|'.join(map(exactly, _spellings(one)))})$": ref(_place(number))
            for number, one in enumerate(_entries(library))
        }
    }


def proposed(library: Library) -> Schema:
    """The names of every movement as keys that are proposed, as long as the line has no value."""
    names = {
        spelling: ref(_place(number))
        for number, one in enumerate(_entries(library))
        for spelling in _spellings(one)
    }
    return proposed_first(names)


def proposed_first(names: Mapping[str, Schema]) -> Schema:
    """Keys that are proposed as long as the line has no value."""
    return {"if": NOTHING_YET, "then": {"properties": dict(names)}}


def needs(library: Library) -> list[str]:
    """What movements stand on, hang from or are pulled by: the words for a gym's stations."""
    return sorted({need for one in _entries(library) for need in one["needs"]} - {"none"})


def sentence(movement: Mapping[str, Any]) -> str:
    """What kind of movement it is, what loads it, and which line it serves or which muscles it counts for.

    ``movement``: an entry of the compiled library.
    """
    loaded = "" if movement["implement"] == "none" else f", loaded by {movement['implement']}"
    return (
        f"{movement['pattern'].capitalize()}{loaded} (load: {movement['load_write']}); {_trains(movement)}."
    )


def _trains(movement: Mapping[str, Any]) -> str:
    if not movement["scored"]:
        return f"counted for {joined(movement['prime'], 'and')}"
    if not movement["serves"]:
        return serves(movement)
    return f"serves the {joined(movement['serves'], 'and')} part{'s' if len(movement['serves']) > 1 else ''}"


def _entries(library: Library) -> Iterable[Mapping[str, Any]]:
    return map(library.movement, library.keys())


def _spellings(movement: Mapping[str, Any]) -> tuple[str, ...]:
    return (movement["name"], *movement["aliases"])


def _place(number: int) -> str:
    return f"m{number}"
