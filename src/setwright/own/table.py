"""The library of one plan: the shipped movements and those of the coach's own."""

from typing import Final, NamedTuple

from setwright.findings import Finding
from setwright.library.names import fold
from setwright.library.table import Library, Movement, library
from setwright.model.own import OwnMovement
from setwright.model.plan import Week
from setwright.own.body import Size, model_size
from setwright.own.entry import copied, described, key_of
from setwright.own.links import linked
from setwright.reading import key_rules as rules
from setwright.reading.gathering import Gathering

OWN: Final = "own movements"
"""Where a fault of one stands, in words."""


class OwnTable(NamedTuple):
    """``table``: the library of a plan. ``unread``: names of movements about which a fault was said."""

    table: Library
    findings: tuple[Finding, ...] = ()
    unread: tuple[str, ...] = ()


def own_table(week: Week, size: Size | None = None) -> OwnTable:
    """The library with the movements of the plan's own, and what is wrong with them.

    ``size``: of the lifter, for lengths that were written; the model's when None. Figures are those of the
    model's size (``sized`` turns them into the lifter's).
    """
    shipped = library()
    if not week.own_movements:
        return OwnTable(shipped, unread=week.unread_movements)
    found = Gathering()
    with found.of(OWN):
        built = _Builder(shipped, found)
        for own in week.own_movements:
            built.add(own)
        built.score(size or model_size())
    names = {fold(own.name): key_of(own) for own in week.own_movements if key_of(own) in built.entries}
    unread = [own.name for own in week.own_movements if key_of(own) not in built.entries]
    table = shipped.extended(linked(shipped, built.entries, built.like), names)
    return OwnTable(table, found.findings, (*week.unread_movements, *unread))


class _Builder:
    """Entries by key; ``like``: the shipped key of those whose arm path is that of another movement."""

    def __init__(self, shipped: Library, found: Gathering) -> None:
        self.entries: dict[str, Movement] = {}
        self.like: dict[str, str] = {}
        self._shipped = shipped
        self._found = found
        self._names: set[str] = set()
        self._paths: list[tuple[OwnMovement, str | None]] = []

    def add(self, own: OwnMovement) -> None:
        """The entry of one movement, its figures left to ``score``; nothing when its words are at fault."""
        if not self._is_free(own):
            return
        before = len(self._found.findings)
        base = self._base(own)
        if own.like is None:
            entry = described(own, self._found)
        elif base is None:
            return
        else:
            entry = copied(own, self._shipped.movement(base), self._found)
        if len(self._found.findings) > before:
            return
        self.entries[key_of(own)] = entry
        if own.path or own.changes:
            self._paths.append((own, base))
        elif base:
            self.like[key_of(own)] = base

    def score(self, size: Size) -> None:
        """Figures for every movement with an arm path of its own."""
        if not self._paths:
            return
        from setwright.own.scoring import scored  # noqa: PLC0415 - the engine only when a plan needs it

        for own, entry in scored(self._paths, self.entries, self._shipped, size, self._found):
            if entry is None:
                del self.entries[key_of(own)]
            else:
                self.entries[key_of(own)] = entry

    def _is_free(self, own: OwnMovement) -> bool:
        match = self._shipped.find(own.name)
        other = match.name if match.key and not match.stripped else None
        taken = other or match.ask or fold(own.name) in self._names
        self._names.add(fold(own.name))
        if taken:
            meant = f"the library's {other}" if other else "more than one movement"
            change = (
                f"give it a name of its own, for example `our {own.name}`, or take it out and use that one"
            )
            self._found.say(rules.OWN_NAME_TAKEN, own.place, f'"{own.name}" is read as {meant}', change)
        return not taken

    def _base(self, own: OwnMovement) -> str | None:
        """The key of the movement that it is like."""
        if own.like is None:
            return None
        match = self._shipped.find(own.like.text)
        if match.key is None:
            near = " or ".join(f"`{name}`" for name in match.nearest)
            change = match.ask.rstrip(".") if match.ask else f"write {near or 'a movement of the library'}"
            rule = rules.UNCLEAR_MOVEMENT if match.ask else rules.UNKNOWN_MOVEMENT
            message = f'like: "{own.like.text}" is no single movement of the library'
            self._found.say(rule, own.like.place, message, change)
        return match.key
