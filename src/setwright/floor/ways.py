"""The ways in which a group does a block: as it is written, and what some of them do in its place.

All ways begin together, each at its own stations; those that need the same station share it, and their people
take turns there.
"""

from collections import Counter
from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from typing import NamedTuple

from setwright.floor.blocks import Block, blocks
from setwright.floor.groups import Group
from setwright.floor.kit import Holds
from setwright.floor.timing import rest_given, seconds
from setwright.library.table import Library
from setwright.model.plan import Group as Moves
from setwright.model.plan import Item, Session
from setwright.model.room import Gym
from setwright.model.theirs import Known, entry_of, meant

Entries = tuple[Item | Moves, ...]


class Way(NamedTuple):
    """Some people and the blocks that they do, one after the other."""

    people: tuple[str, ...]
    blocks: tuple[Block, ...]

    @property
    def holds(self) -> Holds:
        """What they keep of each pool: the most that one of their blocks holds."""
        return _most(block.holds for block in self.blocks)

    def of(self, names: Collection[str]) -> "Way":
        """The same with those of its people who are named."""
        return self._replace(people=tuple(one for one in self.people if one in names))


@dataclass(frozen=True, eq=False)
class Ways:
    """How everyone who comes does the blocks of a session.

    ``called``: the names that mean each athlete. ``others``: the ways in which a block is done otherwise, by
    its number; without blocks where somebody does nothing in its place.
    """

    called: Mapping[str, Known]
    others: Mapping[int, tuple[Way, ...]]

    def written(self, block: Block, group: Group) -> Way:
        """Who of a group do a block as it is written."""
        otherwise = {name for way in self.others.get(block.number, ()) for name in way.people}
        names = (one.name for one in group if meant(block.entry, self.called.get(one.name)))
        return Way(tuple(name for name in names if name not in otherwise), (block,))

    def otherwise(self, block: Block, group: Group) -> tuple[Way, ...]:
        """What others of a group do in its place."""
        names = [one.name for one in group]
        ways = (way.of(names) for way in self.others.get(block.number, ()))
        return tuple(way for way in ways if way.people and way.blocks)

    def holds(self, block: Block, group: Group) -> Holds:
        """What a group keeps while it is at a block."""
        return _most(way.holds for way in self._all(block, group))

    def sharing(self, block: Block, group: Group) -> int:
        """How many of a group take turns at the stations of a block as it is written."""
        written = self.written(block, group)
        return self._at_stations(written, block, group) if written.people else 0

    def rest_s(self, block: Block, group: Group) -> float | None:
        """Seconds that each rests after a written set; None by the clock, or where nobody does it."""
        sharing = self.sharing(block, group)
        turns = block.whole_s is None and block.sets > 1 and sharing
        return rest_given(block, sharing) if turns else None

    def seconds(self, block: Block, group: Group) -> float:
        """Until everybody of a group is through with a block; 0 where nobody does it."""
        each = (
            sum(seconds(one, self._at_stations(way, block, group)) for one in way.blocks)
            for way in self._all(block, group)
        )
        return max(each, default=0.0)

    def _all(self, block: Block, group: Group) -> tuple[Way, ...]:
        written = self.written(block, group)
        return (*((written,) if written.people else ()), *self.otherwise(block, group))

    def _at_stations(self, way: Way, block: Block, group: Group) -> int:
        """How many take turns at what a way needs: its own people, and all whose way needs some of it."""
        ways = self._all(block, group)
        return sum(len(one.people) for one in ways if one == way or one.holds.keys() & way.holds.keys())


def ways(
    done: Iterable[Block], session: Session, called: Mapping[str, Known], table: Library, gym: Gym | None
) -> Ways:
    """The ways of everyone who comes; who do alike are in one."""
    others = {
        block.number: tuple(
            Way(tuple(people), _blocks_of(entries, block, session, table, gym))
            for entries, people in _by_entries(block, called)
        )
        for block in done
        if any(item.instead or item.for_ or item.not_for for item in block.items)
    }
    return Ways(called, others)


def _by_entries(block: Block, called: Mapping[str, Known]) -> Sequence[tuple[Entries, list[str]]]:
    """What is done in the place of a block, with who does it."""
    found: list[tuple[Entries, list[str]]] = []
    for name, known in called.items():
        own = entry_of(block.entry, known)
        if meant(block.entry, known) and own != (block.entry,):
            alike = next((people for entries, people in found if entries == own), None)
            if alike is None:
                found.append((own, [name]))
            else:
                alike.append(name)
    return found


def _blocks_of(
    entries: Entries, block: Block, session: Session, table: Library, gym: Gym | None
) -> tuple[Block, ...]:
    """Entries as blocks, under the number of the one that they stand for."""
    made = blocks(session.model_copy(update={"work": entries}), table, gym)
    return tuple(one._replace(number=block.number) for one in made)


def _most(held: Iterable[Holds]) -> Holds:
    most: Counter[str] = Counter()
    for one in held:
        most |= Counter(one)
    return most
