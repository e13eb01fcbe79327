"""The coach's own mark, from the keys under ``paper`` of a squad."""

from typing import Final, get_args

from setwright.model.reader.keys import Key, Table, pairs_of, read_keys
from setwright.model.stationery import DateStyle, DecimalSign, Stationery
from setwright.reading import fields
from setwright.reading.gathering import Gathering
from setwright.reading.nodes import Node

KEYS: Final[Table] = {
    "title": Key("title", fields.text),
    "logo": Key("logo", fields.text),
    "footer": Key("footer", fields.text),
    "dates": Key("dates", fields.one_of("way to write dates", get_args(DateStyle))),
    "decimals": Key("decimals", fields.one_of("decimal sign", get_args(DecimalSign))),
}


def read_stationery(node: Node, found: Gathering) -> Stationery:
    """What stands on every sheet; keys that can't be read are findings."""
    pairs = pairs_of(node, found, "`title:`, `logo:` or `footer:` with its text")
    read = read_keys(pairs, KEYS, found, "paper")
    logo = read.keys.get("logo")
    return Stationery(**read.values, logo_place=logo.place if logo else None)
