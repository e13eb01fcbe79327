"""Items of a session: a movement with its dose, in the line or underneath."""

import re
from collections.abc import Mapping
from typing import Any, Final, NamedTuple

from setwright.findings import Finding
from setwright.model.plan import Item
from setwright.model.reader.house import House
from setwright.model.reader.keys import (
    Key,
    Keys,
    Later,
    Table,
    allowed,
    fold,
    not_read_yet,
    raw,
    read_keys,
    shown,
)
from setwright.places import Place
from setwright.reading import fields
from setwright.reading import key_rules as rules
from setwright.reading.dose import Dose
from setwright.reading.doseline import read_dose
from setwright.reading.keys import read_effort, read_load, read_rest, read_sides, read_tempo, read_warm_up
from setwright.reading.merging import dose_with, says, uneven
from setwright.reading.nearest import nearest
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.tied import tied

GROUP_WORDS: Final = ("superset", "circuit", "complex")

BY_WEEK: Final = "this version reads one week"
ONE_WEEK: Final = "write this week's value on one line"
ONE_ATHLETE: Final = "write one value for all; or one line for each, with `for:` and the name"

KEYS: Final[Table] = {
    "move": Key("move", fields.word),
    "do": Key("do", raw),
    "load": Key("load", raw),
    "effort": Key("effort", raw),
    "rest": Key("rest", raw),
    "tempo": Key("tempo", raw),
    "sides": Key("sides", raw),
    "warm up": Key("warm_up", raw),
    "next": Key("next", fields.sentences),
    "priority": Key("priority", fields.whole(1, 3)),
    "for": Key("for_", fields.names),
    "not for": Key("not_for", fields.names),
    "instead": Later(
        "nobody's own movement is swapped in yet", "write one line for each, with `for:` and `not for:`"
    ),
    "only in": Later(BY_WEEK, "take it out, and take the line out in the weeks it does not belong to"),
    "kit": Key("kit", fields.names),
    "stop": Key("stop", fields.text),
    "allow": Key("allow", allowed),
    "note": Key("note", fields.text),
    "private note": Key("private_note", fields.text),
}

_WEEK = re.compile(r"weeks? \d")
_NAME_AND_DOSE = re.compile(r"(?P<name>[^\d]*?[^\W\d][^\d]*?)[\s,:]+(?P<dose>\d.*)$")


class _How(NamedTuple):
    """How the value of a key underneath is read, and whether it is one value or one a set."""

    read: Any
    many: bool = False


_HOW: Final[Mapping[str, _How]] = {
    "rest": _How(read_rest),
    "tempo": _How(read_tempo),
    "sides": _How(read_sides),
    "load": _How(read_load, many=True),
    "effort": _How(read_effort, many=True),
    "warm_up": _How(read_warm_up),
}


def read_item(node: Node, house: House) -> Item | None:
    """The item of a line of the list, or None and a finding; a dose that can't be read stays None."""
    if isinstance(node, Scalar):
        return None if node.is_empty else _bare(node, house)
    if isinstance(node, Listing):
        house.found.say(
            rules.WRONG_FORM, node.place, "a list inside a list", "write `- movement: dose`, one a line"
        )
        return None
    if not node.pairs:
        return None
    if any(fold(key.text) == "move" for key, _ in node.pairs):
        return _spelled_out(node, house)
    name, value = node.pairs[0]
    if house.found.is_covered(name.place):
        return None
    if fold(name.text) in KEYS:
        key = shown(fold(name.text))
        change = f"take the hyphen away and write `{key}:` in line with the movement or group above"
        house.found.say(
            rules.KEY_OUT_OF_LINE, name.place, f'"{key}" stands here as if it were a movement', change
        )
        return None
    return _named(name, value, node.pairs[1:], house)


def _bare(name: Scalar, house: House) -> Item | None:
    """A movement without a colon: an item of a timed circuit or a warm-up, elsewhere a fault."""
    if house.found.is_covered(name.place):
        return None
    if house.dose_may_wait:
        return Item(name=name.text, place=name.place)
    knot = tied(name.text, name.place)
    if knot:
        house.found.add(knot)
        return None
    split = _NAME_AND_DOSE.match(name.text)
    if split:
        change = f"put a colon after the movement: `- {split['name']}: {split['dose']}`"
    else:
        change = f"write how much behind a colon, for example `- {name.text}: 3 x 8`"
    house.found.say(rules.DOSE_MISSING, name.place, f'"{name.text}" has no dose', change)
    return Item(name=split["name"] if split else name.text, place=name.place)


def _spelled_out(node: Pairs, house: House) -> Item | None:
    read = read_keys(node.pairs, KEYS, house.found, "an item")
    move = read.values.pop("move", None)
    if move is None:
        return None
    return _item(move, read, house)


def _named(name: Scalar, value: Node, below: tuple[tuple[Scalar, Node], ...], house: House) -> Item:
    """``- dip: 3 x 8`` with keys in line with the name; the dose may also be keys further in."""
    pairs: tuple[tuple[Scalar, Node], ...] = ((Scalar("do", name.place), value),)
    if isinstance(value, Pairs) and not any(_WEEK.match(fold(key.text)) for key, _ in value.pairs):
        pairs = value.pairs
    known = [pair for pair in below if not _second_movement(pair[0], house)]
    return _item(name, read_keys((*pairs, *known), KEYS, house.found, "an item"), house)


def _second_movement(key: Scalar, house: House) -> bool:
    """Whether a key is no word of an item nor like one; then it is taken for a movement, and said so."""
    name = fold(key.text)
    if name in KEYS or nearest(name, KEYS):
        return False
    change = f"if it is a movement, put `- ` in front and line it up with the one above: `- {key.text}: ...`"
    house.found.say(rules.TWO_MOVEMENTS, key.place, f'"{key.text}" is no word of an item', change)
    return True


def _item(name: Scalar, read: Keys, house: House) -> Item:
    values = read.values
    dose = _dose(name, values.pop("do", None), house)
    below = {field: _below(field, values.pop(field, None), read, house) for field in _HOW}
    below = {field: value for field, value in below.items() if value is not None}
    if dose is not None:
        dose = _joined(dose, below, read, house)
    for field in ("load", "effort"):
        several = below.pop(field, ())
        if field == "load" and several:
            below["load"] = several[0]
    return Item(name=name.text, place=name.place, dose=dose, **below, **values)


def _dose(name: Scalar, node: Node | None, house: House) -> Dose | None:
    if node is None or (isinstance(node, Scalar) and node.is_empty):
        if not house.dose_may_wait:
            change = f"write how much behind the colon, for example `- {name.text}: 3 x 8`"
            house.found.say(rules.DOSE_MISSING, name.place, f"{name.text} has no dose", change)
        return None
    typed = one_value(name, node, house)
    if typed is None:
        return None
    scheme = house.schemes.get(fold(typed.text))
    if fold(typed.text) in house.schemes and scheme is None:
        return None
    source = scheme or typed
    dose, findings = read_dose(source.text, source.place, house.habits)
    house.found.add(*findings)
    return dose.model_copy(update={"place": typed.place}) if dose and scheme else dose


def one_value(key: Scalar, node: Node, house: House) -> Scalar | None:
    """The value on one line; values by week or by athlete are known but not read yet."""
    if isinstance(node, Listing):
        not_read_yet(key, node, f"a list has one entry a week, and {BY_WEEK}", ONE_WEEK, house.found)
        return None
    if isinstance(node, Pairs):
        if any(_WEEK.match(fold(one.text)) for one, _ in node.pairs):
            not_read_yet(key, node, f"`week` keys hold values by week, and {BY_WEEK}", ONE_WEEK, house.found)
        else:
            not_read_yet(key, node, "this version reads one value for all athletes", ONE_ATHLETE, house.found)
        return None
    return fields.word(node, house.found)


def _below(field: str, node: Node | None, read: Keys, house: House) -> Any:
    """What a key underneath says, read by the words of the dose line; None when nothing can be trusted."""
    if node is None:
        return None
    typed = one_value(read.keys[fold(field)], node, house)
    if typed is None:
        return None
    value, findings = _HOW[field].read(typed.text, typed.place, house.habits)
    house.found.add(*findings)
    return value


def _joined(dose: Dose, below: Mapping[str, Any], read: Keys, house: House) -> Dose:
    """The dose with what stands underneath; what the line says already is a fault."""
    said = {word.replace("-", "_") for word in says(dose)}
    fits = {}
    for field, value in below.items():
        place = read.nodes[fold(field)].place
        unequal: tuple[Finding, ...] = uneven(dose, len(value), place) if _HOW[field].many else ()
        if field in said:
            _twice(field, place, dose, house)
        elif unequal:
            house.found.add(*unequal)
        else:
            fits[field] = value
    return dose_with(dose, **fits)


def _twice(field: str, place: Place, dose: Dose, house: House) -> None:
    key = shown(fold(field))
    message = f"{key} stands in the line, `{dose.text}`, and again underneath"
    house.found.say(
        rules.SAID_TWICE, place, message, f"keep one: take `{key}:` out, or take it out of the line"
    )
