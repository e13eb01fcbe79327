"""The gym, from a file beside the plan or from keys underneath."""

from typing import Any, Final

from setwright.model.reader.beside import Files
from setwright.model.reader.keys import Key, Keys, Table, pairs_of, raw, read_keys
from setwright.model.reader.pulled import bands, cables
from setwright.model.reader.weights import how_many, weights
from setwright.model.room import Gym
from setwright.reading import fields, measures
from setwright.reading import gym_rules as gym_faults
from setwright.reading import key_rules as rules
from setwright.reading.gathering import Gathering
from setwright.reading.nodes import Node, Pairs, Scalar

_PLATES: Final = {"plates per rack": True, "plates in the room": False}
_WEIGHTS: Final = ("bars", *_PLATES, "dumbbells", "kettlebells")
_YES: Final = {"yes": "yes", "none": "none", "no": "none"}
_LATER: Final = frozenset((*_WEIGHTS, "cables", "stations"))
KEYS: Final[Table] = {
    "gym": Key("name", fields.text),
    "unit": Key("unit", fields.one_of("unit", measures.UNITS)),
    "racks": Key("racks", fields.whole()),
    "people per rack": Key("people_per_rack", fields.whole(1)),
    "benches": Key("benches", fields.whole()),
    **{name: Key(name, raw) for name in _WEIGHTS},
    "mixed plates": Key("mixed_plates", fields.one_of("answer", _YES)),
    "cables": Key("cables", raw),
    "bands": Key("bands", bands),
    "stations": Key("stations", raw),
    "spotter": Key("spotter", fields.one_of("answer", _YES)),
    "note": Key("note", fields.text),
    "private note": Key("private_note", fields.text),
}


def read_gym(node: Node | None, files: Files, unit: measures.Unit | None) -> Gym | None:
    """The gym that a plan names or holds; ``unit`` of the plan serves where the gym names none."""
    place = node.place if node is not None else None
    if isinstance(node, Scalar):
        node = files.named(node, "gym")
    if node is None or place is None:
        return None
    if not isinstance(node, Pairs):
        message, change = "the keys of a gym are expected here", "start with `bars:`"
        files.found.say(rules.WRONG_FORM, node.place, message, change)
        return None
    with files.found.of("the gym"):
        read = read_keys(node.pairs, KEYS, files.found, "a gym")
        _one_kind_of_plates(read, files.found)
        values = _in_full(read.values, unit, files.found)
    return Gym(place=node.pairs[0][0].place if node.pairs else place, **values)


def _one_kind_of_plates(read: Keys, found: Gathering) -> None:
    """Plates are told per rack or for the whole room: those per rack stay where both are."""
    per_rack, in_the_room = (read.keys.get(name) for name in _PLATES)
    if per_rack and in_the_room and read.values.pop("plates in the room", None):
        message = f"the plates are listed per rack on line {per_rack.place.line} and for the room here"
        change = "keep `plates per rack:` where each rack has its own, else `plates in the room:`"
        found.say(gym_faults.WEIGHT_TWICE, in_the_room.place, message, change)


def _in_full(values: dict[str, Any], typed_unit: measures.Unit | None, found: Gathering) -> dict[str, Any]:
    """The fields of a gym: what was left as nodes is read now that its unit is known."""
    unit = values.get("unit") or typed_unit or "kg"
    fields_read = {name: value for name, value in values.items() if name not in _LATER}
    fields_read["mixed_plates"] = values.get("mixed_plates") == "yes"
    for name in _WEIGHTS:
        if name in values:
            kind = "plates" if name in _PLATES else name
            fields_read[kind] = weights(kind, unit, values[name], found)
            fields_read["plates_per_rack"] = "plates in the room" not in values
    if "cables" in values:
        fields_read["cables"] = cables(unit, values["cables"], found)
    if "stations" in values:
        fields_read |= _stations(values["stations"], found)
    return fields_read


def _stations(node: Node, found: Gathering) -> dict[str, Any]:
    """How many there are of each station, and where it was typed, by its folded name."""
    stations, places = {}, {}
    for key, value in pairs_of(node, found, "a station with how many there are"):
        many = how_many(value, found)
        if many is not None:
            name = " ".join(key.text.casefold().split())
            stations[name], places[name] = many.number, key.place
    return {"stations": stations, "places": places}
