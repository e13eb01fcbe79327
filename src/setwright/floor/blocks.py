"""A session as blocks: each line or group with the time of its sets, its rests and the stations it holds."""

from collections import Counter
from collections.abc import Iterable
from typing import Final, NamedTuple

from setwright.coverage.clock import REST_S, SWAP_S, entry_seconds, rest_seconds, warm_up_seconds
from setwright.coverage.counts import count_items
from setwright.coverage.shapes import Counts
from setwright.floor.kit import Holds, holds, is_fixed
from setwright.library.table import Library
from setwright.library.under_the_bar import is_under_the_bar
from setwright.model.plan import Group, Item, Session
from setwright.model.room import Gym
from setwright.reading.counting import Counted
from setwright.reading.dose import Load, Rest

TOLD: Final = 2
"""Moves of a group up to which it is called by their names."""


class Move(NamedTuple):
    """One movement of a block: its name, seconds of one set with both sides, what it holds of the gym.

    ``under_the_bar``: whether somebody has to be able to take the bar.
    """

    name: str
    set_s: float
    holds: Holds
    under_the_bar: bool


class Block(NamedTuple):
    """A line or a group of a session. Seconds.

    ``number``: its place in the session, from 1. ``sets``: sets or rounds. ``rest_s``: rest of one person
    after a set or round, as written or else as the clock takes it; ``rest_written``: whether a number was.
    ``whole_s``: how long it lasts whatever the people, where the clock of a circuit decides; else None.
    ``warm_up_s``: warm-up sets of one person.
    """

    number: int
    name: str
    entry: Item | Group
    moves: tuple[Move, ...]
    sets: int
    rest_s: float
    rest_written: bool
    between_s: float
    warm_up_s: float
    whole_s: float | None = None

    @property
    def items(self) -> tuple[Item, ...]:
        """Its lines."""
        return self.entry.items if isinstance(self.entry, Group) else (self.entry,)

    @property
    def holds(self) -> Holds:
        """What one group keeps while it does the block: the stations of all its moves.

        In a circuit everything is used at once; in a superset what can be carried goes from move to move.
        """
        held: Counter[str] = Counter()
        for move in self.moves:
            for pool, number in move.holds.items():
                at_once = self.at_once or is_fixed(pool)
                held[pool] = held[pool] + number if at_once else max(held[pool], number)
        return held

    @property
    def at_once(self) -> bool:
        """Whether people stand at all its moves at the same time."""
        return isinstance(self.entry, Group) and self.entry.kind == "circuit"

    @property
    def set_s(self) -> float:
        """Seconds of one person's set or round, the changes between its moves included."""
        return sum(move.set_s for move in self.moves) + (len(self.moves) - 1) * self.between_s


def blocks(session: Session, table: Library, gym: Gym | None) -> tuple[Block, ...]:
    """The blocks of a session in its order; lines whose movement or dose could not be read are left out."""
    counts = count_items(session, table)
    made = (_block(at, entry, counts, table, gym) for at, entry in enumerate(session.work, 1))
    return tuple(block for block in made if block.moves)


def _block(at: int, entry: Item | Group, counts: Counts, table: Library, gym: Gym | None) -> Block:
    items = entry.items if isinstance(entry, Group) else (entry,)
    known = [item for item in items if item.key is not None and (item.place in counts or _timed(entry))]
    moves = tuple(_move(item, counts.get(item.place), entry, table, gym) for item in known)
    group = entry if isinstance(entry, Group) else None
    rest = group.rest if group else None
    return Block(
        number=at,
        name=f"the {group.kind}" if group and len(moves) > TOLD else " with ".join(m.name for m in moves),
        entry=entry,
        moves=moves,
        sets=_sets(entry, [counts[item.place] for item in known if item.place in counts]),
        rest_s=rest_seconds(rest, REST_S) if group else _own_rest(known, counts),
        rest_written=_is_written(rest) if group else all(counts[item.place].rest_known for item in known),
        between_s=rest_seconds(group.between_moves, SWAP_S) if group else 0.0,
        warm_up_s=sum(warm_up_seconds(item) for item in known),
        whole_s=entry_seconds(entry, counts) if _timed(entry) else None,
    )


def _move(item: Item, counted: Counted | None, entry: Item | Group, table: Library, gym: Gym | None) -> Move:
    movement = table.movement(item.key or "")
    held = holds(movement, load_of(item), gym) if gym else {}
    if counted is None:
        set_s = (entry.each_s or 0.0) if isinstance(entry, Group) else 0.0
    else:
        one = counted.sets.low if not isinstance(entry, Group) or entry.rounds is None else 1
        set_s = (counted.work_s + counted.pause_s) / max(one, 1)
    return Move(item.name, set_s, held, is_under_the_bar(movement))


def load_of(item: Item) -> Load | None:
    """The load of the first set of a line, in its dose or underneath."""
    if item.load is not None or item.dose is None:
        return item.load
    return next((work.load for group in item.dose.groups for work in group.works), None)


def _timed(entry: Item | Group) -> bool:
    """Whether the clock decides how long a group lasts, and not its sets."""
    return isinstance(entry, Group) and bool(
        entry.each_s or entry.time_s or entry.every_s or entry.ladder or entry.kind == "circuit"
    )


def _sets(entry: Item | Group, counted: Iterable[Counted]) -> int:
    if isinstance(entry, Group) and entry.rounds is not None:
        return entry.rounds
    return int(max((one.sets.low for one in counted), default=1))


def _own_rest(items: list[Item], counts: Counts) -> float:
    if not items:
        return 0.0
    counted = counts[items[0].place]
    if not counted.rest_known or counted.sets.low <= 1:
        return REST_S
    return counted.rest_s / (counted.sets.low - 1)


def _is_written(rest: Rest | None) -> bool:
    return rest is not None and rest.kind in ("seconds", "none")
