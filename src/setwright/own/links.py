"""Which movement finishes which, when a plan adds movements of its own that are like shipped ones."""

from collections.abc import Mapping
from typing import Any

from setwright.library.table import Library

Entries = dict[str, Mapping[str, Any]]


def linked(shipped: Library, own: Mapping[str, Mapping[str, Any]], like: Mapping[str, str]) -> Entries:
    """Every movement by key, those that changed or came new; partners of a movement hold for its likes too.

    ``like``: own key to the shipped one. Entries of ``own`` may hold ``partner_of``: what to add to the
    partners of others, by their key.
    """
    changed: Entries = {}
    everything = {key: shipped.movement(key) for key in shipped.keys()} | dict(own)  # noqa: SIM118 - keys() of the library
    for key, entry in everything.items():
        partners = entry.get("partners")
        if partners is None:
            continue
        more = [
            {**one, "key": mine, "name": own[mine]["name"]}
            for mine, base in like.items()
            for one in partners
            if one["key"] == base and mine in own
        ]
        acts_as = like.get(key, key)
        more += [
            one["partner_of"][acts_as]
            for one in own.values()
            if acts_as in one.get("partner_of", ()) and acts_as not in own
        ]
        if more:
            changed[key] = {**entry, "partners": [*partners, *more]}
    plain = {**own, **changed}
    return {
        key: {name: value for name, value in entry.items() if name != "partner_of"}
        for key, entry in plain.items()
    }
