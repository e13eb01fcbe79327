"""Dose lines by name: on one line for all weeks, or by week."""

from setwright.model.reader import by_week
from setwright.model.reader.house import House, Value
from setwright.model.reader.keys import fold, pairs_of
from setwright.reading import key_rules as rules
from setwright.reading.doseline import read_dose
from setwright.reading.nodes import Node, Scalar


def read_schemes(node: Node | None, house: House) -> dict[str, tuple[Value, ...]]:
    """Dose lines by their folded name, one a week; faults in them are said here, where they are written."""
    read: dict[str, tuple[Value, ...]] = {}
    for key, value in () if node is None else pairs_of(node, house.found, "a name with its dose line"):
        if key.text[:1].isdigit():
            message = f'"{key.text}" starts with a digit and would be read as a dose'
            change = f"give it a name of words, for example `lift {key.text}`"
            house.found.say(rules.NOT_A_CHOICE, key.place, message, change)
            continue
        lines = by_week.values(key, value, house)
        for typed in dict.fromkeys(lines):
            if isinstance(typed, Scalar):
                house.found.add(*read_dose(typed.text, typed.place, house.habits)[1])
        read[fold(key.text)] = lines
    return read
