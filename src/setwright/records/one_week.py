"""One week of a block as a plan of its own: what holds in that week, and everything else as it was typed."""

from collections.abc import Iterable, Iterator, Sequence
from typing import Final

from setwright.model.plan import Group, Item, Session, Week
from setwright.model.reader import by_week
from setwright.model.reader.house import House
from setwright.model.reader.item import GROUP_KINDS
from setwright.model.reader.item import KEYS as ITEM_KEYS
from setwright.model.reader.keys import fold
from setwright.places import Place
from setwright.reading.gathering import Gathering
from setwright.reading.habits import Habits
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.tree import read_tree
from setwright.reading.weeks import speaks_of_weeks
from setwright.records.edits import Edits

BY_WEEK: Final = frozenset({"do", "load", "effort", "rest", "tempo", "minutes"})
"""Keys whose list goes week by week; a dose behind its movement's name does too."""
OF_A_BLOCK: Final = ("weeks", "lighter weeks", "follows", "block")
"""Keys at the top that say nothing of one week alone."""


def without_lighter(file: str, text: str) -> str:
    """The text of a plan in which no week is lighter.

    A plan of one week keeps what is less in every so many weeks.
    """
    edits = Edits(text)
    top = {fold(key.text): (key, value) for key, value in _top(file, text)}
    key, value = top.get("lighter weeks", (None, None))
    pairs = value.pairs if isinstance(value, Pairs) and "weeks" not in top else ()
    named = [pair for pair in pairs if speaks_of_weeks(pair[0].text)]
    if key is not None and value is not None and len(named) == len(pairs):
        edits.drop(key, value)
    else:
        for pair in named:
            edits.drop(*pair)
    return edits.text()


def one_week(file: str, text: str, weeks: Sequence[Week], number: int) -> str:
    """The text of a plan of several weeks as that of one of them alone, no lighter than the others.

    ``weeks``: the plan read, none of its weeks lighter. What does not take place in the week is left out.
    """
    edits = Edits(text)
    there = {place for session in _sessions(weeks[number - 1]) for place in _places(session)}
    every = {place for week in weeks for session in _sessions(week) for place in _places(session)}
    walk = _Walk(edits, every - there, number, len(weeks))
    for key, value in _top(file, text):
        name = fold(key.text)
        if name in OF_A_BLOCK:
            edits.drop(key, value)
        elif name == "schemes" and isinstance(value, Pairs):
            for scheme in value.pairs:
                walk.value(*scheme)
        else:
            walk.pair(key, value)
    return edits.text()


def _top(file: str, text: str) -> tuple[tuple[Scalar, Node], ...]:
    root = read_tree(file, text).root
    assert isinstance(root, Pairs)
    return root.pairs


class _Walk:
    """Through the nodes of a plan: each value by week becomes that of the week, each absent entry goes."""

    def __init__(self, edits: Edits, gone: set[Place], number: int, weeks: int) -> None:
        self._edits = edits
        self._gone = gone
        self._number = number
        self._weeks = weeks
        self._house = House(Gathering(), Habits(), {}, week=number, weeks=weeks, there=(number,))

    def node(self, node: Node) -> None:
        """Everything under a list or keys."""
        if isinstance(node, Listing):
            for entry in node.nodes:
                self._entry(entry)
        elif isinstance(node, Pairs):
            self._pairs(node)

    def pair(self, key: Scalar, value: Node) -> None:
        """A key with its value."""
        name = fold(key.text)
        if name == "only in":
            self._edits.drop(key, value)
        elif by_week.by_week(value) or (name in BY_WEEK and self._is_listed(value)):
            self.value(key, value)
        else:
            self.node(value)

    def value(self, key: Scalar, value: Node) -> None:
        """A value that may go by week; nothing where the week has none of it, on purpose."""
        if isinstance(value, Scalar):
            return
        found = by_week.values(key, value, self._house)[self._number - 1]
        if isinstance(found, Scalar):
            self._edits.set(key, value, self._edits.typed(found))
        elif fold(key.text) == "rest":
            self._edits.set(key, value, "none")
        else:
            self._edits.drop(key, value)

    def _entry(self, entry: Node) -> None:
        start = _starts(entry)
        if start is not None and self._gone & set(_named(entry)):
            self._edits.drop(start, entry)
        else:
            self._pairs(entry)

    def _pairs(self, node: Node) -> None:
        pairs = node.pairs if isinstance(node, Pairs) else ()
        for at, (key, value) in enumerate(pairs):
            name = fold(key.text)
            is_movement = not at and name not in ITEM_KEYS and name not in GROUP_KINDS
            if is_movement and self._is_listed(value):
                self.value(key, value)
            else:
                self.pair(key, value)

    def _is_listed(self, value: Node) -> bool:
        """Whether a value is a list of texts, one a week."""
        return (
            isinstance(value, Listing)
            and len(value.nodes) == self._weeks
            and all(isinstance(one, Scalar) for one in value.nodes)
        )


def _starts(entry: Node) -> Scalar | None:
    """The first word of an entry of a list."""
    if isinstance(entry, Scalar):
        return entry
    return entry.pairs[0][0] if isinstance(entry, Pairs) and entry.pairs else None


def _named(entry: Node) -> Iterator[Place]:
    """Where an entry of a list may have its name: at its start, or behind ``move``."""
    start = _starts(entry)
    if start is not None:
        yield start.place
    for key, value in entry.pairs if isinstance(entry, Pairs) else ():
        if fold(key.text) == "move":
            yield value.place


def _sessions(week: Week) -> tuple[Session, ...]:
    return (*week.sessions, *week.held_back)


def _places(session: Session) -> Iterator[Place]:
    """The places of a session, of its entries and lines, and of what is done instead of them."""
    yield session.place
    added = session.reuse.add if session.reuse else ()
    yield from _places_in((*session.work, *session.warm_up, *added))


def _places_in(entries: Iterable[Item | Group]) -> Iterator[Place]:
    for entry in entries:
        yield entry.place
        if isinstance(entry, Group):
            yield from _places_in(entry.items)
        else:
            yield from (place for one in entry.instead for place in _places_in(one.lines))
