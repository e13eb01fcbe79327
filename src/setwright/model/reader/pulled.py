"""What is pulled rather than lifted: cables with heights, stack and pulley; bands by their measured pull."""

import re
from collections.abc import Iterator
from itertools import pairwise
from typing import Any, Final

from setwright.model.reader.keys import Key, Table, is_empty, pairs_of, raw, read_keys
from setwright.model.reader.weights import runs
from setwright.model.room import NEWTON_A_KG, Band, BandPull, Cable, Heights
from setwright.reading import fields, measures
from setwright.reading import gym_rules as gym_faults
from setwright.reading import key_rules as rules
from setwright.reading.gathering import Gathering
from setwright.reading.loads import KG_PER_LB
from setwright.reading.nodes import Listing, Node, Pairs, Scalar

NEWTON: Final = {"n": 1.0, "kg": NEWTON_A_KG, "lb": NEWTON_A_KG * KG_PER_LB}

_NUMBER: Final = r"(\d{1,4}(?:[.,]\d{1,3})?)"
_HEIGHT: Final = re.compile(rf"(?:(floor)|{_NUMBER}\s*(cm|m))$", re.IGNORECASE)
_BETWEEN: Final = re.compile(r"(.+?)\s*(?:\bto\b|-|–)\s*(.+)$", re.IGNORECASE)
_PULLEY: Final = re.compile(rf"{_NUMBER}\s*(?:to|:)\s*{_NUMBER}$", re.IGNORECASE)
_PULL: Final = re.compile(rf"{_NUMBER}\s*(n|kg|lb)s?\s+(?:at|to)\s+{_NUMBER}\s*(cm|m)$", re.IGNORECASE)


def _pulley(node: Node, found: Gathering) -> float | None:
    """Kilograms of the stack to one at the handle: ``2 to 1`` is 2."""
    typed = fields.word(node, found)
    match = _PULLEY.match(typed.text) if typed else None
    stack, handle = (measures.number(end) for end in match.groups()) if match else (0.0, 1.0)
    if typed and not 0 < handle <= stack:
        change = "write the stack first: `1 to 1`, or `2 to 1` where the handle pulls half of the pin"
        found.say(rules.NOT_A_NUMBER, typed.place, f'"{typed.text}" is no ratio of a pulley', change)
        return None
    return stack / handle if typed else None


def _heights(node: Node, found: Gathering) -> Heights | None:
    """Where the pulley can be set: ``floor to 2.1 m`` is anywhere between, a list is those alone."""
    typed = fields.parts(node, found)
    span = _BETWEEN.match(typed[0].text) if len(typed) == 1 else None
    at = [_height(end) for end in (span.groups() if span else [one.text for one in typed])]
    metres = [height for height in at if height is not None]
    if typed and (len(metres) < len(at) or any(high <= low for low, high in pairwise(metres))):
        change = "write `floor to 2.1 m` for anywhere between, or a rising list: `[floor, 1.2 m, 2.1 m]`"
        said = ", ".join(one.text for one in typed)
        found.say(rules.NOT_A_NUMBER, node.place, f'"{said}" are no heights of a pulley', change)
        return None
    return Heights(at_m=tuple(metres), between=span is not None) if typed else None


def _height(typed: str) -> float | None:
    match = _HEIGHT.match(typed.strip())
    if match is None:
        return None
    return 0.0 if match[1] else _metres(match[2], match[3])


def _metres(number: str, unit: str) -> float:
    return measures.number(number) / (measures.CM_A_METRE if unit.casefold() == "cm" else 1)


CABLE_KEYS: Final[Table] = {
    "name": Key("name", fields.text),
    "number": Key("number", fields.whole()),
    "heights": Key("heights", _heights),
    "stack": Key("stack", raw),
    "pulley": Key("pulley", _pulley),
}


def cables(default: measures.Unit, node: Node, found: Gathering) -> tuple[Cable, ...]:
    """The cables of a gym; ``default``: the unit of a stack that names none."""
    if not isinstance(node, Listing):
        message, change = "a list of cables is expected here", "start each with `- name:`"
        found.say(rules.WRONG_FORM, node.place, message, change)
        return ()
    return tuple(cable for entry in node.nodes if (cable := _cable(default, entry, found)))


def _cable(default: measures.Unit, node: Node, found: Gathering) -> Cable | None:
    if isinstance(node, Scalar) and not node.is_empty:
        return Cable(name=node.text)
    if isinstance(node, Pairs):
        values = read_keys(node.pairs, CABLE_KEYS, found, "a cable").values
        if "stack" in values:
            values["stack"] = tuple(runs("stack", default, values["stack"], found))
        if "name" in values:
            return Cable(**values)
    found.say(rules.NAME_MISSING, node.place, "a cable has no name", "write `- name:` and a name")
    return None


BAND_KEYS: Final[Table] = {"pull": Key("pull", raw), "number": Key("number", fields.whole())}


def bands(node: Node, found: Gathering) -> tuple[Band, ...]:
    """Bands by name, with their measured pulls, ``red: 60 N at 2 m`` or as keys underneath."""
    read = []
    for key, value in pairs_of(node, found, "a band with its pull"):
        told: dict[str, Any] = {"pull": value}
        if isinstance(value, Pairs):
            told = read_keys(value.pairs, BAND_KEYS, found, "a band").values
        read.append(_band(key.text, told.get("pull"), told.get("number"), found))
    return tuple(read)


def _band(name: str, node: Node | None, number: int | None, found: Gathering) -> Band:
    """A band; a pull that can't be read is left out, after the finding."""
    typed = () if node is None or is_empty(node) else fields.parts(node, found)
    pulls = sorted(_pulls(typed, found), key=lambda pull: pull.at_m)
    for short, long in pairwise(pulls):
        if short.at_m == long.at_m or short.newton >= long.newton:
            at = " and ".join(f"{pull.newton:.1f} N at {pull.at_m:g} m" for pull in (short, long))
            change = "write one pull for each length, the longer the harder; measure again where not"
            found.say(gym_faults.BAND_PULL, typed[0].place, f"{name} pulls {at}", change)
            pulls = []
            break
    return Band(
        name=name, pulls=tuple(pulls), number=number, written=", ".join(one.text for one in typed) or None
    )


def _pulls(typed: tuple[Scalar, ...], found: Gathering) -> Iterator[BandPull]:
    for one in typed:
        match = _PULL.match(one.text)
        if match is None:
            change = "write its pull and the length, for example `60 N at 2 m`; how many: `number: 2`"
            found.say(gym_faults.BAND_PULL, one.place, f'"{one.text}" is no pull of a band', change)
        else:
            force, unit, length, metres = match.groups()
            yield BandPull(
                newton=measures.number(force) * NEWTON[unit.casefold()], at_m=_metres(length, metres)
            )
