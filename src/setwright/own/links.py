"""Which movement finishes which, when a plan adds movements of its own that are like shipped ones."""

from collections.abc import Mapping

from setwright.library.table import Library, Movement

Entries = dict[str, Movement]


def linked(shipped: Library, own: Mapping[str, Movement], like: Mapping[str, str]) -> Entries:
    """Every movement by key, those that changed or came new; partners of a movement hold for its likes too.

    ``like``: own key to the shipped one. Entries of ``own`` may hold ``partner_of``: what to add to the
    partners of others, by their key.
    """
    changed: Entries = {}
    for key, entry in {**shipped.movements(), **own}.items():
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
