"""Items of a session: a movement with its dose, in the line or underneath."""

import re
from collections.abc import Mapping
from typing import Any, Final, NamedTuple

from setwright.findings import Finding
from setwright.model.plan import Item
from setwright.model.reader import by_week
from setwright.model.reader.by_name import called, check_meant, is_by_name, read_instead, read_loads
from setwright.model.reader.dose_lines import dose_lines, dose_of
from setwright.model.reader.house import Absent, House, Value
from setwright.model.reader.keys import (
    Key,
    Keys,
    Table,
    allowed,
    fold,
    raw,
    read_keys,
    shown,
)
from setwright.model.reader.next import read_next
from setwright.places import Place
from setwright.reading import fields
from setwright.reading import key_rules as rules
from setwright.reading.dose import Dose
from setwright.reading.keys import read_effort, read_load, read_rest, read_sides, read_tempo, read_warm_up
from setwright.reading.merging import dose_with, says, uneven
from setwright.reading.nearest import nearest
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.tied import every_minute, tied
from setwright.reading.week_rules import WEEKS_MIXED
from setwright.reading.weeks import speaks_of_weeks

GROUP_KINDS: Final = ("superset", "circuit", "complex")

KEYS: Final[Table] = {
    "move": Key("move", fields.word),
    "do": Key("do", raw),
    "load": Key("load", raw),
    "effort": Key("effort", raw),
    "rest": Key("rest", raw),
    "tempo": Key("tempo", raw),
    "sides": Key("sides", raw),
    "warm up": Key("warm_up", raw),
    "next": Key("next", read_next),
    "priority": Key("priority", fields.whole(1, 3)),
    "for": Key("for_", fields.placed_names),
    "not for": Key("not_for", fields.placed_names),
    "instead": Key("instead", raw),
    "only in": Key("only_in", raw),
    "kit": Key("kit", fields.names),
    "stop": Key("stop", fields.text),
    "allow": Key("allow", allowed),
    "note": Key("note", fields.text),
    "private note": Key("private_note", fields.text),
}

_NAME_AND_DOSE = re.compile(r"(?P<name>[^\d]*?[^\W\d][^\d]*?)(?:\s+[-–—])?[\s,:]+(?P<dose>\d.*)$")


class _How(NamedTuple):
    """How the value of a key underneath is read, whether it is one value or one a set, and may go by week."""

    read: Any
    many: bool = False
    by_week: bool = True


_HOW: Final[Mapping[str, _How]] = {
    "rest": _How(read_rest),
    "tempo": _How(read_tempo),
    "sides": _How(read_sides, by_week=False),
    "load": _How(read_load, many=True),
    "effort": _How(read_effort, many=True),
    "warm_up": _How(read_warm_up, by_week=False),
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


def _named(name: Scalar, value: Node, below: tuple[tuple[Scalar, Node], ...], house: House) -> Item | None:
    """``- dip: 3 x 8`` with keys in line with the name; the dose may also be keys further in."""
    if isinstance(value, Scalar) and (knot := every_minute(name.text, value.text, name.place)):
        house.found.add(knot)
        return None
    pairs: tuple[tuple[Scalar, Node], ...] = ((Scalar("do", name.place), value),)
    if isinstance(value, Pairs) and not by_week.by_week(value):
        pairs = value.pairs
    known = [pair for pair in below if not _second_movement(pair[0], house)]
    return _item(name, read_keys((*pairs, *known), KEYS, house.found, "an item"), house)


def _second_movement(key: Scalar, house: House) -> bool:
    """Whether a key is no word of an item nor like one; then it is taken for a movement, and said so."""
    name = fold(key.text)
    if name in KEYS or nearest(name, KEYS):
        return False
    if speaks_of_weeks(key.text):
        change = "leave nothing behind the movement's colon, and write every week two columns further in"
        house.found.say(WEEKS_MIXED, key.place, f'"{key.text}" stands in line with the movement', change)
        return True
    change = f"if it is a movement, put `- ` in front and line it up with the one above: `- {key.text}: ...`"
    house.found.say(rules.TWO_MOVEMENTS, key.place, f'"{key.text}" is no word of an item', change)
    return True


def _item(name: Scalar, read: Keys, house: House) -> Item | None:
    """The item as it is this week; None when it is not done this week, on purpose."""
    inside = by_week.only_in(read, house)
    if inside is None:
        return None
    values = read.values
    lines = dose_lines(name, values.pop("do", None), inside)
    here = inside.narrowed(tuple(week for week, line in enumerate(lines, 1) if line.is_done))
    if here is None:
        return None
    dose = dose_of(lines[here.week - 1], here)
    if is_by_name(values.get("load")):
        values["loads"] = read_loads(values.pop("load"), dose, here)
    values |= {field: called(values[field], here) for field in ("for_", "not_for") if field in values}
    if "instead" in values:
        values["instead"] = read_instead(values["instead"], here, _instead_line)
    said = {field: _below(field, values.pop(field, None), read, here) for field in _HOW}
    none = tuple(field for field, value in said.items() if isinstance(value, Absent))
    below = {field: value for field, value in said.items() if value is not None and field not in none}
    if dose is not None:
        dose = _joined(dose, below, read, here)
    for field in ("load", "effort"):
        several = below.pop(field, ())
        if field == "load" and several:
            below["load"] = several[0]
    item = Item(name=name.text, place=name.place, dose=dose, none=none, **below, **values)
    check_meant(item, item, here)
    return item


def _instead_line(node: Node, house: House) -> Item | None:
    """A line that somebody does in place of another one; it has no group and no such line of its own."""
    first = node.pairs[0][0] if isinstance(node, Pairs) and node.pairs else None
    if first and fold(first.text) in GROUP_KINDS:
        message, change = f"a {fold(first.text)} in place of a line is not read", "write its movements here"
        house.found.say(rules.WRONG_FORM, first.place, message, f"{change}, one a line, each with a hyphen")
        return None
    line = read_item(node, house)
    if line and line.instead:
        change = "write that name in line with the ones above, with its own movement"
        house.found.say(rules.WRONG_FORM, line.instead[0].place, "an `instead` in an `instead`", change)
    return line


def _below(field: str, node: Node | None, read: Keys, house: House) -> Any:
    """What a key underneath says, read by the words of the dose line; None when nothing can be trusted."""
    if node is None:
        return None
    how = _HOW[field]
    typed = (
        by_week.value(read.keys[fold(field)], node, house) if how.by_week else fields.word(node, house.found)
    )
    if field == "rest":
        typed = no_rest(typed)
    if not isinstance(typed, Scalar):
        return typed
    value, findings = how.read(typed.text, typed.place, house.habits)
    house.found.add(*findings)
    return value


def no_rest(value: Value) -> Value:
    """A rest by week: none is a rest of no length, as it is on one line."""
    return value.word if isinstance(value, Absent) and fold(value.word.text) == "none" else value


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
