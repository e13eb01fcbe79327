"""A day like another one: which day, and what is left out, swapped, given a new dose and added."""

from collections.abc import Iterator
from typing import Final, get_args

from setwright.findings import Finding
from setwright.model.own import Word
from setwright.model.plan import Change, Group, Item, Reading, Reuse, Swap
from setwright.model.reader.group import is_group, read_entry
from setwright.model.reader.house import House
from setwright.model.reader.item import read_item
from setwright.model.reader.keys import Key, Keys, Table, is_empty, pairs_of, raw, word_of
from setwright.reading import fields
from setwright.reading import key_rules as rules
from setwright.reading.habits import Member
from setwright.reading.nodes import Listing, Node, Pairs

KEYS: Final[Table] = {
    "like": Key("like", fields.word),
    "leave out": Key("leave_out", fields.placed_names),
    "swap": Key("swap", raw),
    "change": Key("change", raw),
    "add": Key("add", raw),
}


def read_reuse(read: Keys, house: House) -> Reuse | None:
    """What makes the session out of another one, its keys taken out of ``read``; None without ``like``."""
    values = {key.field: read.values.pop(key.field, None) for key in KEYS.values()}
    like = values["like"]
    if "like" not in read.keys:
        _without_like(read, house)
    elif "work" in read.keys:
        message = "the session has `like` and `work`; one of them would be lost"
        change = "take `like:` out, or take `work:` out and write what differs under `change:` and `add:`"
        house.found.say(rules.WRONG_FORM, read.keys["like"].place, message, change)
    elif like is not None:
        return Reuse(
            like=word_of(like),
            leave_out=tuple(map(word_of, values["leave_out"] or ())),
            swap=tuple(_swaps(values["swap"], house)),
            change=tuple(_changes(values["change"], house)),
            add=tuple(_added(values["add"], house)),
        )
    return None


def _without_like(read: Keys, house: House) -> None:
    for key in read.keys.keys() & KEYS.keys():
        message = f"`{key}` changes a day like another one, and the session has no `like`"
        change = "write `like:` and the day in line with it, for example `like: Monday`"
        house.found.say(rules.WRONG_FORM, read.keys[key].place, message, change)


def _swaps(node: Node | None, house: House) -> Iterator[Swap]:
    pairs = () if node is None else pairs_of(node, house.found, "a movement with the one to swap it for")
    for old, value in pairs:
        new = fields.word(value, house.found)
        if new is not None:
            yield Swap(old=word_of(old), new=word_of(new))
        elif is_empty(value):
            message = f"{old.text} is swapped for nothing"
            change = (
                f"write the movement behind `{old.text}:`, or leave it out with `leave out: [{old.text}]`"
            )
            house.found.say(rules.WRONG_FORM, old.place, message, change)


def _lines(node: Node | None, house: House) -> tuple[Node, ...]:
    if node is None or isinstance(node, Listing):
        return node.nodes if node else ()
    change = "write one movement a line, each with a hyphen: `- dip: 3 x 8`"
    house.found.say(rules.WRONG_FORM, node.place, "a list of movements is expected here", change)
    return ()


def _changes(node: Node | None, house: House) -> Iterator[Change]:
    for line in _lines(node, house):
        if isinstance(line, Pairs) and is_group(line):
            message = "a whole group can't be changed in one line"
            change = "write its movements here, one a line, each with its new dose"
            house.found.say(rules.WRONG_FORM, line.pairs[0][0].place, message, change)
            continue
        readings = {member: _aside(line, member, house) for member in get_args(Member)}
        item, findings = readings["alone"]
        if item is None:
            house.found.add(*findings)
            continue
        yield Change(
            name=Word(text=item.name, place=item.place),
            readings={
                member: Reading(item=one, findings=found) for member, (one, found) in readings.items() if one
            },
        )


def _aside(line: Node, member: Member, house: House) -> tuple[Item | None, tuple[Finding, ...]]:
    """A line as one member of a group, with what is wrong with it there kept apart."""
    found = house.found.aside()
    item = read_item(line, house.inside(member)._replace(found=found))
    return item, found.findings


def _added(node: Node | None, house: House) -> Iterator[Item | Group]:
    yield from (entry for line in _lines(node, house) if (entry := read_entry(line, house)))
