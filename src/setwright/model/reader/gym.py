"""The gym, from a file beside the plan or from keys underneath."""

import re
from typing import Any, Final

from setwright.model.reader.beside import Files
from setwright.model.reader.keys import Key, Table, pairs_of, raw, read_keys
from setwright.model.room import Band, Cable, Gym, Stock
from setwright.reading import fields, measures
from setwright.reading import key_rules as rules
from setwright.reading.gathering import Gathering
from setwright.reading.nodes import Listing, Node, Pairs, Scalar

_NUMBER = r"(\d+(?:[.,]\d+)?)"
_STOCK = re.compile(
    rf"{_NUMBER}(?:\s*-\s*{_NUMBER})?\s*(kg|kgs|lb|lbs|pounds?)?(?:\s+by\s+{_NUMBER})?(?:\s*(?:kg|lb))?$",
    re.IGNORECASE,
)
_MANY = re.compile(r"(\d{1,4})\s*(pairs?)?$", re.IGNORECASE)


def _stock(default: measures.Unit, node: Node, found: Gathering) -> tuple[Stock, ...]:
    """Weights with how many there are: ``20 kg: 2 pairs``, ``4-32 kg by 2: 1 pair``."""
    read = []
    for key, value in pairs_of(node, found, "a weight with how many there are"):
        match = _STOCK.match(key.text)
        many = _how_many(value, found)
        if match is None:
            change = "write the weight first, for example `20 kg: 2` or `4-32 kg by 2: 1 pair`"
            found.say(rules.NOT_A_NUMBER, key.place, f'"{key.text}" is no weight', change)
        elif many is not None:
            low, high, unit, step = match.groups()
            read.append(
                Stock(
                    low=measures.number(low),
                    high=measures.number(high or low),
                    step=measures.number(step) if step else None,
                    unit=measures.UNITS[unit.casefold()] if unit else default,
                    number=many[0],
                    pairs=many[1],
                )
            )
    return tuple(read)


def _how_many(node: Node, found: Gathering) -> tuple[int, bool] | None:
    """How many, and whether in pairs; an empty value is one."""
    typed = fields.word(node, found)
    if typed is None:
        return (1, False) if isinstance(node, Scalar) and node.is_empty else None
    match = _MANY.match(typed.text)
    if match is None:
        found.say(
            rules.NOT_A_NUMBER,
            typed.place,
            f'"{typed.text}" is no number of things',
            "write `2` or `2 pairs`",
        )
        return None
    return int(match[1]), bool(match[2])


CABLE_KEYS: Final[Table] = {
    "name": Key("name", fields.text),
    "number": Key("number", fields.whole()),
    "heights": Key("heights", fields.text),
    "stack": Key("stack", fields.text),
    "pulley": Key("pulley", fields.text),
}
BAND_KEYS: Final[Table] = {"pull": Key("pull", fields.text), "number": Key("number", fields.whole())}


def _cables(node: Node, found: Gathering) -> tuple[Cable, ...]:
    if not isinstance(node, Listing):
        found.say(
            rules.WRONG_FORM, node.place, "a list of cables is expected here", "start each with `- name:`"
        )
        return ()
    return tuple(cable for entry in node.nodes if (cable := _cable(entry, found)))


def _cable(node: Node, found: Gathering) -> Cable | None:
    if isinstance(node, Scalar) and not node.is_empty:
        return Cable(name=node.text)
    if isinstance(node, Pairs):
        read = read_keys(node.pairs, CABLE_KEYS, found, "a cable")
        if "name" in read.values:
            return Cable(**read.values)
    found.say(rules.NAME_MISSING, node.place, "a cable has no name", "write `- name:` and a name")
    return None


def _bands(node: Node, found: Gathering) -> tuple[Band, ...]:
    """Bands by name, with their measured pull, ``red: 60 N at 2 m`` or as keys underneath."""
    bands = []
    for key, value in pairs_of(node, found, "a band with its pull"):
        if isinstance(value, Pairs):
            read = read_keys(value.pairs, BAND_KEYS, found, "a band").values
        else:
            read = {"pull": fields.text(value, found)}
        bands.append(Band(name=key.text, **read))
    return tuple(bands)


def _stations(node: Node, found: Gathering) -> dict[str, int]:
    read = {}
    for key, value in pairs_of(node, found, "a station with how many there are"):
        many = _how_many(value, found)
        if many is not None:
            read[key.text.casefold()] = many[0]
    return read


_WEIGHTS: Final = ("bars", "plates per rack", "plates in the room", "dumbbells", "kettlebells")
KEYS: Final[Table] = {
    "gym": Key("name", fields.text),
    "unit": Key("unit", fields.one_of("unit", measures.UNITS)),
    "racks": Key("racks", fields.whole()),
    "people per rack": Key("people_per_rack", fields.whole(1)),
    "benches": Key("benches", fields.whole()),
    **{name: Key(name, raw) for name in _WEIGHTS},
    "cables": Key("cables", _cables),
    "bands": Key("bands", _bands),
    "stations": Key("stations", _stations),
    "spotter": Key("spotter", fields.one_of("answer", {"yes": "yes", "none": "none", "no": "none"})),
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
        files.found.say(
            rules.WRONG_FORM, node.place, "the keys of a gym are expected here", "start with `bars:`"
        )
        return None
    with files.found.of("the gym"):
        read = read_keys(node.pairs, KEYS, files.found, "a gym")
        values = read.values
        _weights(values, values.get("unit") or unit or "kg", files.found)
    return Gym(place=node.pairs[0][0].place if node.pairs else place, **values)


def _weights(values: dict[str, Any], unit: measures.Unit, found: Gathering) -> None:
    """Turn the nodes of weights into stock."""
    if "plates in the room" in values and "plates per rack" not in values:
        values["plates_per_rack"] = False
    for name in _WEIGHTS:
        if name in values:
            field = "plates" if name.startswith("plates") else name
            values[field] = _stock(unit, values.pop(name), found)
