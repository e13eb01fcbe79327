"""Values by athlete: a load of their own, and what they do instead, under a name or a group of the squad."""

from collections.abc import Callable, Mapping
from typing import NamedTuple

from setwright.model.people import Squad
from setwright.model.plan import AthleteLoad, Group, Instead, Item
from setwright.model.reader.by_week import by_week
from setwright.model.reader.house import House
from setwright.model.reader.keys import is_empty, pairs_of, word_of
from setwright.reading import fields
from setwright.reading import key_rules as rules
from setwright.reading.dose import Dose
from setwright.reading.file_rules import DOUBLE_KEY
from setwright.reading.keys import read_load
from setwright.reading.merging import uneven
from setwright.reading.nearest import nearest
from setwright.reading.nodes import Listing, Node, Pairs, Scalar


class _Named(NamedTuple):
    """A value with the name it stands under, spelt as in the squad."""

    who: str
    key: Scalar
    value: Node


def people_of(squad: Squad | None) -> dict[str, tuple[str, ...]]:
    """The athletes that each name of a squad stands for: an athlete for one, a group for its members."""
    if squad is None:
        return {}
    return {athlete.name: (athlete.name,) for athlete in squad.athletes} | squad.groups


def is_by_name(node: Node | None) -> bool:
    """Whether a value stands under names and not under weeks."""
    return isinstance(node, Pairs) and not by_week(node)


def read_loads(node: Node, dose: Dose | None, house: House) -> tuple[AthleteLoad, ...]:
    """The loads of a line by athlete."""
    loads = (_load(named, dose, house) for named in _named(node, "a load", house))
    return tuple(load for load in loads if load)


def read_instead(
    node: Node, house: House, read_line: Callable[[Node, House], Item | None]
) -> tuple[Instead, ...]:
    """What athletes do in place of a line; ``read_line`` reads a line of the list under a name."""
    every = (_instead(named, house, read_line) for named in _named(node, "a movement", house))
    return tuple(instead for instead in every if instead)


def called(typed: tuple[Scalar, ...], house: House) -> tuple[str, ...]:
    """Names under ``for`` and ``not for``, spelt as in the squad; those that nobody goes by are said."""
    if not house.people:
        return tuple(name.text for name in typed)
    return tuple(who for name in typed if (who := _who(name, house)))


def check_meant(item: Item, entry: Item | Group, house: House) -> None:
    """Say who has a load or a movement of their own in a line that is not for them.

    ``entry``: the line itself or its group, for what it says under ``for`` and ``not for``.
    """
    every: tuple[AthleteLoad | Instead, ...] = (*item.loads, *item.instead)
    for one in every:
        if not any(_is_meant(member, entry, house) for member in _members(one.who, house)):
            message = f"the line is not for {one.who}, who has a value of their own in it"
            change = f"take the lines of {one.who} out, or mend `for:` and `not for:`"
            house.found.say(rules.NOT_FOR_THEM, one.place, message, change)


def _is_meant(athlete: str, entry: Item | Group, house: House) -> bool:
    wanted = {member for name in entry.for_ for member in _members(name, house)}
    kept_out = {member for name in entry.not_for for member in _members(name, house)}
    return athlete not in kept_out and (not wanted or athlete in wanted)


def _named(node: Node, what: str, house: House) -> list[_Named]:
    """The values under names that the squad knows, those of athletes first; the rest is said."""
    pairs = pairs_of(node, house.found, f"a name with {what}")
    known: dict[str, _Named] = {}
    for key, value in pairs:
        who = _who(key, house)
        if who is not None:
            known.setdefault(who, _Named(who, key, value))
    _one_each(known, house)
    return sorted(known.values(), key=lambda one: _members(one.who, house) != (one.who,))


def _who(key: Scalar, house: House) -> str | None:
    """The name in the squad that a typed one is; None after saying that there is none."""
    if house.people is None:
        return key.text
    spelt = {name.casefold(): name for name in house.people}
    if key.text.casefold() in spelt:
        return spelt[key.text.casefold()]
    if house.people:
        near = nearest(key.text, house.people)
        change = f"write `{near[0]}:`" if near else f"write one of {', '.join(house.people)}"
        message = "this name is no athlete and no group of the squad"
    else:
        change = "write the squad under `squad:`, with a `- name:` for each of its `athletes:`"
        message = "this name is nobody's: the plan has no squad"
    house.found.say(rules.UNKNOWN_ATHLETE, key.place, message, change)
    return None


def _members(who: str, house: House) -> tuple[str, ...]:
    return (house.people or {}).get(who, (who,))


def _one_each(known: Mapping[str, _Named], house: House) -> None:
    """Say who is in two groups that both have a value, and has none of their own."""
    first: dict[str, str] = {}
    for who in known:
        for member in _members(who, house):
            other = first.setdefault(member, who)
            if other != who and member not in known:
                message = f"{member} is in {other} and in {who}; which of the two holds?"
                change = f"write a line for {member} too"
                house.found.say(DOUBLE_KEY, known[who].key.place, message, change)


def _load(named: _Named, dose: Dose | None, house: House) -> AthleteLoad | None:
    who, key, value = named
    if is_empty(value):
        change = f"write `{who}: 45 kg`, or `{who}: none` for no load on purpose"
        house.found.say(rules.WRONG_FORM, key.place, f"no load is written for {who}", change)
        return None
    typed = fields.word(value, house.found)
    if typed is None:
        return None
    if typed.text.casefold() == "none":
        return AthleteLoad(who=who, place=key.place)
    loads, findings = read_load(typed.text, typed.place, house.habits)
    if dose and loads:
        findings = (*findings, *uneven(dose, len(loads), typed.place))
    house.found.add(*findings)
    return AthleteLoad(who=who, place=key.place, loads=loads) if loads and not findings else None


def _instead(named: _Named, house: House, read_line: Callable[[Node, House], Item | None]) -> Instead | None:
    who, key, value = named
    if isinstance(value, Listing):
        lines = tuple(line for node in value.nodes if (line := read_line(node, house)))
        return Instead(who=who, place=key.place, lines=lines) if lines else None
    if isinstance(value, Pairs):
        change = f"put a hyphen in front of each line under `{key.text}:`, for example `- leg press: 3 x 10`"
        house.found.say(
            rules.WRONG_FORM, value.place, "a movement or a list of lines is expected here", change
        )
        return None
    typed = fields.word(value, house.found)
    if typed is not None and ":" in typed.text:
        message = f'"{typed.text}" is a line of its own'
        change = f"write `{key.text}:` and, on the next line and further in, `- {typed.text}`"
        house.found.say(rules.WRONG_FORM, typed.place, message, change)
    elif typed is not None and typed.text.casefold() != "none":
        return Instead(who=who, place=key.place, movement=word_of(typed))
    elif typed is not None or value.is_empty:
        change = (
            f"write the movement behind `{key.text}:`; who does nothing in its place stands under `not for:`"
        )
        house.found.say(rules.WRONG_FORM, key.place, f"no movement is written for {who}", change)
    return None
