"""Supersets, circuits and complexes: movements done in turn."""

import re
from typing import Any, Final

from setwright.model.plan import Group, Item
from setwright.model.reader import by_week
from setwright.model.reader.by_name import called, check_meant
from setwright.model.reader.house import Absent, House, Value
from setwright.model.reader.item import GROUP_KINDS, no_rest, read_item
from setwright.model.reader.item import KEYS as ITEM_KEYS
from setwright.model.reader.keys import Key, Keys, Table, fold, raw, read_keys
from setwright.reading import fields, measures
from setwright.reading import key_rules as rules
from setwright.reading.dose import Amount, Load, Rest, Span
from setwright.reading.gathering import Gathering
from setwright.reading.habits import Member
from setwright.reading.keys import read_load, read_rest
from setwright.reading.nodes import Listing, Node, Pairs, Scalar

MOST_RUNGS: Final = 100
"""Longest ladder that is read (choice)."""

_LADDER = re.compile(r"(\d+) to (\d+)(?: to (\d+))?(?: by (\d+))?$", re.IGNORECASE)


def _ladder(node: Node, found: Gathering) -> tuple[int, ...] | None:
    """The rungs of "1 to 10", "10 to 1", "1 to 10 to 1", "2 to 20 by 2"."""
    typed = fields.word(node, found)
    if typed is None:
        return None
    match = _LADDER.match(" ".join(typed.text.split()))
    if match:
        first, turn, last, by = (int(part) if part else None for part in match.groups())
        rungs = _run(first or 0, turn or 0, by or 1)
        if last is not None:
            rungs += _run(turn or 0, last, by or 1)[1:]
        if 1 < len(rungs) <= MOST_RUNGS and min(rungs) > 0:
            return rungs
    found.say(
        rules.NOT_A_NUMBER,
        typed.place,
        f'"{typed.text}" is no ladder',
        "write `1 to 10`, `10 to 1`, `1 to 10 to 1` or `2 to 20 by 2`",
    )
    return None


def _run(first: int, last: int, by: int) -> tuple[int, ...]:
    step = max(by, 1)
    if max(first, last) > MOST_RUNGS * step:
        return ()
    return tuple(range(first, last + 1, step) if first <= last else range(first, last - 1, -step))


def _cap(node: Node, found: Gathering) -> Amount | None:
    seconds = measures.seconds(node, found)
    return None if seconds is None else Amount(unit="s", span=Span(low=seconds, high=seconds))


KEYS: Final[Table] = {
    "superset": Key("items", raw),
    "circuit": Key("items", raw),
    "complex": Key("items", raw),
    "rounds": Key("rounds", fields.whole(1, 1000)),
    "rest": Key("rest", raw),
    "between moves": Key("between_moves", raw),
    "each": Key("each_s", measures.seconds),
    "time": Key("time_s", measures.seconds),
    "cap": Key("cap", _cap),
    "every": Key("every_s", measures.seconds),
    "ladder": Key("ladder", _ladder),
    "load": Key("load", raw),
    **{
        name: ITEM_KEYS[name]
        for name in ("only in", "next", "priority", "for", "not for", "stop", "allow", "note", "private note")
    },
}


def read_entry(node: Node, house: House) -> Item | Group | None:
    """The item or group of a line of the list, or None and a finding."""
    return read_group(node, house) if isinstance(node, Pairs) and is_group(node) else read_item(node, house)


def read_group(node: Pairs, house: House) -> Group | None:
    """The group that a line of the list starts, as it is this week; unreadable members are left out.

    None, and a finding, when it has no members; None without one when it is not done this week.
    """
    word = node.pairs[0][0]
    kind = fold(word.text)
    read = read_keys(node.pairs, KEYS, house.found, f"a {kind}")
    here = by_week.only_in(read, house)
    if here is None:
        return None
    values = read.values
    _check_clock(values, read, kind, here)
    members = values.pop("items", None)
    entries = members.nodes if isinstance(members, Listing) else ()
    if not entries:
        change = f"write its movements under `{word.text}:`, four blanks further in, each with a hyphen"
        house.found.say(rules.NO_WORK, word.place, f"the {kind} has no list of movements", change)
    rest = no_rest(_this_week("rest", read, here))
    load = _this_week("load", read, here) if _may_have_load(kind, read, here) else None
    values |= {field: called(values[field], here) for field in ("for_", "not_for") if field in values}
    values |= {
        "rest": _rest(rest, here),
        "between_moves": _rest(_on_one_line(values.pop("between_moves", None), here), here),
        "load": _load(load, here),
        "none": tuple(field for field, one in (("rest", rest), ("load", load)) if isinstance(one, Absent)),
    }
    inside = here.inside(_member(read))
    items = tuple(
        item for entry in entries if not _nested(entry, here) and (item := read_item(entry, inside))
    )
    if not items and (not entries or house.weeks > 1):
        return None
    group = Group(kind=kind, place=word.place, items=items, **values)
    for item in items:
        check_meant(item, group, house)
    return group


def is_group(node: Node) -> bool:
    """Whether a line of the list starts a group."""
    return isinstance(node, Pairs) and bool(node.pairs) and fold(node.pairs[0][0].text) in GROUP_KINDS


def _nested(node: Node, house: House) -> bool:
    if isinstance(node, Pairs) and is_group(node):
        word = node.pairs[0][0]
        change = "write it as a group of its own, below this one"
        house.found.say(
            rules.WRONG_FORM, word.place, f"a {fold(word.text)} inside a group is not read", change
        )
        return True
    return False


def _member(read: Keys) -> Member:
    """What a member may say, by the keys that are written, readable or not."""
    if "each" in read.keys:
        return "each"
    if "ladder" in read.keys:
        return "ladder"
    return "rounds" if {"rounds", "time"} & read.keys.keys() else "alone"


def _check_clock(values: dict[str, Any], read: Keys, kind: str, house: House) -> None:
    if "rounds" in values and "time_s" in values:
        message = f"the {kind} has rounds and a time; which one ends it?"
        change = "keep `time:` for as many rounds as fit; write `cap:` instead for rounds that are stopped"
        house.found.say(rules.GROUP_CLOCK, read.keys["time"].place, message, change)
        del values["time_s"]
    if "every_s" in values and "rest" in values:
        message = f"the {kind} has a rest and an every; the rest is what is left of every"
        house.found.say(
            rules.GROUP_CLOCK, read.keys["rest"].place, message, "take `rest:` out, or take `every:` out"
        )
        del values["rest"]


def _this_week(field: str, read: Keys, house: House) -> Value:
    node = read.values.pop(field, None)
    return None if node is None else by_week.value(read.keys[field], node, house)


def _on_one_line(node: Node | None, house: House) -> Value:
    return None if node is None else fields.word(node, house.found)


def _rest(typed: Value, house: House) -> Rest | None:
    if not isinstance(typed, Scalar):
        return None
    rest, findings = read_rest(typed.text, typed.place, house.habits)
    house.found.add(*findings)
    return rest


def _may_have_load(kind: str, read: Keys, house: House) -> bool:
    if kind == "complex" or "load" not in read.values:
        return True
    change = "write the load in the line of each movement; only a complex has one for all"
    house.found.say(rules.WRONG_FORM, read.keys["load"].place, f"a {kind} has no load of its own", change)
    return False


def _load(typed: Value, house: House) -> Load | None:
    if not isinstance(typed, Scalar):
        return None
    loads, findings = read_load(typed.text, typed.place, house.habits)
    house.found.add(*findings)
    return loads[0] if loads else None
