"""The squad, from a file beside the plan or from keys underneath."""

from collections.abc import Sequence
from typing import Any, Final, get_args

from setwright.model.people import Athlete, Limit, LimitAngle, Squad
from setwright.model.reader.beside import Files
from setwright.model.reader.keys import Key, Table, pairs_of, raw, read_keys
from setwright.model.reader.maxes import read_maxes
from setwright.model.reader.stationery import read_stationery
from setwright.places import Place
from setwright.reading import fields, measures
from setwright.reading import key_rules as rules
from setwright.reading.gathering import Gathering
from setwright.reading.measures import Unit
from setwright.reading.nodes import Listing, Node, Pairs, Scalar

SIDES: Final = ("left", "right")
BANNED: Final = (
    "overhead", "bar grip", "chest on a bench", "hanging", "hands on the floor", "jumping", "kneeling",
)  # fmt: skip
"""Kinds of work that a limit may ban with `no:` (closed list, docs/plan-language.md)."""

CLEARED: Final = "cleared"


def _banned(node: Node, found: Gathering) -> tuple[str, ...]:
    read = fields.one_of("kind of work that `no:` bans", BANNED)
    return tuple(word for name in fields.placed_names(node, found) if (word := read(name, found)))


def _until(node: Node, found: Gathering) -> str | None:
    typed = fields.word(node, found)
    if typed is None:
        return None
    if typed.text.casefold() == CLEARED:
        return CLEARED
    read = measures.date(typed, found)
    return read.isoformat() if read else None


_side = fields.one_of("side", SIDES)
LIMIT_KEYS: Final[Table] = {
    **{f"{angle} at most": Key(angle, measures.degrees) for angle in get_args(LimitAngle)},
    "load at most": Key("load", measures.mass_or_percent),
    "no": Key("no", _banned),
    "avoid": Key("avoid", fields.names),
    "side": Key("side", _side),
    "until": Key("until", _until),
    "set by": Key("set_by", fields.text),
}


def _limits(node: Node, found: Gathering) -> tuple[Limit, ...]:
    if not isinstance(node, Listing):
        found.say(
            rules.WRONG_FORM,
            node.place,
            "a list of limits is expected here",
            "start each limit with a hyphen",
        )
        return ()
    return tuple(limit for entry in node.nodes for limit in _limit(entry, found))


def _limit(node: Node, found: Gathering) -> list[Limit]:
    """One limit for each thing that the keys name; a limit without an end holds until it is cleared."""
    if not isinstance(node, Pairs) or not node.pairs:
        found.say(
            rules.WRONG_FORM,
            node.place,
            "a limit is expected here",
            "write for example `- arm up at most: 90 deg`",
        )
        return []
    place = node.pairs[0][0].place
    read = read_keys(node.pairs, LIMIT_KEYS, found, "a limit")
    values = read.values
    if "until" not in read.keys:
        change = "write `until:` and a date, or `until: cleared`, in line with the limit"
        found.say(rules.LIMIT_END, place, f'"{node.pairs[0][0].text}": until when?', change)
    shared: dict[str, Any] = {
        "place": place,
        "until": values.get("until", CLEARED),
        **{name: values[name] for name in ("side", "set_by") if name in values},
    }
    limits = [
        Limit(angle=angle, at_most_deg=values[angle], **shared)
        for angle in get_args(LimitAngle)
        if angle in values
    ]
    if "load" in values:
        load = values["load"]
        limits.append(Limit(load_at_most=load.value, unit=load.unit, **shared))
    if "no" in values or "avoid" in values:
        limits.append(Limit(no=values.get("no", ()), avoid=values.get("avoid", ()), **shared))
    return limits


ATHLETE_KEYS: Final[Table] = {
    "name": Key("name", fields.text),
    "born": Key("born", fields.whole(1900, 2100)),
    "sex": Key("sex", fields.text),
    "height": Key("height_cm", measures.centimetres),
    "arm length": Key("arm_length_cm", measures.centimetres),
    "shoulder breadth": Key("shoulder_breadth_cm", measures.centimetres),
    "body mass": Key("body_mass", measures.mass),
    "level": Key("level", fields.one_of("level", ("beginner", "intermediate", "advanced"))),
    "handed": Key("handed", _side),
    "weaker side": Key("weaker_side", _side),
    "participation": Key("participation", fields.one_of("way to take part", ("full", "modified", "out"))),
    "maxes": Key("maxes", raw),
    "limits": Key("limits", _limits),
    "avoid": Key("avoid", fields.names),
    "note": Key("note", fields.text),
    "private note": Key("private_note", fields.text),
}


def _athletes(node: Node, found: Gathering, unit: Unit | None) -> tuple[Athlete, ...]:
    if not isinstance(node, Listing):
        found.say(
            rules.WRONG_FORM, node.place, "a list of athletes is expected here", "start each with `- name:`"
        )
        return ()
    return tuple(athlete for entry in node.nodes if (athlete := _athlete(entry, found, unit)))


def _athlete(node: Node, found: Gathering, unit: Unit | None) -> Athlete | None:
    if isinstance(node, Scalar) and not node.is_empty:
        return Athlete(name=node.text, place=node.place)
    if not isinstance(node, Pairs) or not node.pairs:
        found.say(rules.WRONG_FORM, node.place, "an athlete is expected here", "write `- name:` and the name")
        return None
    place = node.pairs[0][0].place
    read = read_keys(node.pairs, ATHLETE_KEYS, found, "an athlete")
    if "name" not in read.values:
        found.say(rules.NAME_MISSING, place, "an athlete has no name", "write `name:` and the name first")
        return None
    mass = read.values.pop("body_mass", None)
    body = {"body_mass": mass.value, "body_mass_unit": mass.unit or unit} if mass else {}
    maxes = read_maxes(read.values.pop("maxes", None), found, unit)
    return Athlete(place=place, maxes=maxes, **read.values, **body)


def _groups(node: Node, found: Gathering) -> dict[str, tuple[str, ...]]:
    pairs = pairs_of(node, found, "a group with its names")
    return {key.text: fields.names(value, found) for key, value in pairs}


KEYS: Final[Table] = {
    "squad": Key("name", fields.text),
    "unit": Key("unit", fields.one_of("unit", measures.UNITS)),
    "rounding": Key("rounding", fields.one_of("way to round", ("nearest", "down", "up"))),
    "pick in a range": Key("pick_in_a_range", fields.one_of("pick in a range", ("low", "middle", "high"))),
    "athletes": Key("athletes", raw),
    "groups": Key("groups", _groups),
    "paper": Key("paper", read_stationery),
    "note": Key("note", fields.text),
    "private note": Key("private_note", fields.text),
}


def read_squad(node: Node | None, files: Files, unit: Unit | None = None) -> Squad | None:
    """The squad that a plan names or holds; None when it has none or it can't be read.

    ``unit``: the plan's own, for masses without one where the squad has none either.
    """
    if isinstance(node, Scalar):
        node = files.named(node, "squad")
    if node is None:
        return None
    if not isinstance(node, Pairs):
        files.found.say(
            rules.WRONG_FORM, node.place, "the keys of a squad are expected here", "start with `athletes:`"
        )
        return None
    with files.found.of("the squad"):
        read = read_keys(node.pairs, KEYS, files.found, "a squad")
        listed = read.values.pop("athletes", None)
        athletes = () if listed is None else _athletes(listed, files.found, read.values.get("unit") or unit)
        squad = Squad(athletes=athletes, **read.values)
        _check_names(athletes, files.found)
        _check_groups(squad, read.nodes.get("groups"), files.found)
    return squad


def _check_names(athletes: Sequence[Athlete], found: Gathering) -> None:
    """Names that an athlete above has already."""
    first: dict[str, Athlete] = {}
    for athlete in athletes:
        other = first.setdefault(athlete.name.casefold(), athlete)
        if other is not athlete:
            message = f"{athlete.name} is the name of an athlete in line {other.place.line} too"
            change = f"write more of the name, for example `name: {athlete.name} B`, here and where it stands"
            found.say(rules.NAME_TWICE, athlete.place, message, change)


def _check_groups(squad: Squad, node: Node | None, found: Gathering) -> None:
    """Names in groups that are no athlete's."""
    known = {athlete.name for athlete in squad.athletes}
    places: dict[str, Place] = {}
    if isinstance(node, Pairs):
        places = {key.text: key.place for key, _ in node.pairs}
    for group, members in squad.groups.items():
        for name in members:
            if name not in known:
                found.say(
                    rules.NOT_A_CHOICE, places[group], f"{group}: {name} is no athlete of the squad",
                    "write the name as it stands under `athletes:`",
                )  # fmt: skip
