"""A session cut to the minutes of today: what is left out, what that takes away, and the better cut.

Whole blocks go, never half a pair, and nothing of the first priority. What matters least goes first, of
equals the later one.
"""

from collections.abc import Callable, Collection, Iterator, Mapping
from dataclasses import replace
from itertools import chain, combinations
from typing import Any, Final, NamedTuple

from setwright.coverage.cut import KEEP, leaves
from setwright.coverage.muscles import GROUPS
from setwright.coverage.shapes import PULLS
from setwright.floor.blocks import Block
from setwright.floor.room import Room
from setwright.floor.schedule import least, timetable, usual_finish
from setwright.library.table import Library
from setwright.model.plan import Group, Item

MOST_TRIED: Final = 12
"""Blocks of which every choice to leave out is tried, 4,096 of them (choice)."""

Movement = Mapping[str, Any]
KINDS: Final[Mapping[str, Callable[[Movement], bool]]] = {
    "pull": lambda movement: movement["pattern"] in PULLS,
    "rear-shoulder line": lambda movement: bool(GROUPS["rear deltoid"] & frozenset(movement["prime"])),
}
"""What a cut should not take the last one of (common practice, no source)."""


class Exchange(NamedTuple):
    """A line that is left out, done in the place of one that stays; ``block``: where."""

    block: Block
    old: Item
    new: Item


class Cut(NamedTuple):
    """Numbers of the blocks that stay. ``lost``: kinds of work of which the last line goes.

    ``better``: the blocks to keep so that none of them is lost, and nothing of the first priority; or
    ``exchange``: a line to do in another's place where no such choice fits the minutes.
    """

    kept: tuple[int, ...]
    dropped: tuple[Block, ...]
    lost: tuple[str, ...] = ()
    better: tuple[int, ...] = ()
    exchange: Exchange | None = None


def cut(here: Room, table: Library) -> Cut:
    """What is left out so that the session fits its minutes; nothing where it does."""
    going = sorted(
        (block for block in here.blocks if block.entry.priority > KEEP),
        key=lambda block: leaves(block.entry.priority, block.number),
    )
    kept = {block.number for block in here.blocks}
    for block in going:
        if _fits(here.only(kept)) or len(kept) == 1:
            break
        kept -= {block.number}
    dropped = tuple(block for block in here.blocks if block.number not in kept)
    whole, left = _kinds(here.blocks, table), _kinds(here.only(kept).blocks, table)
    lost = tuple(kind for kind in whole if kind not in left)
    found = Cut(tuple(sorted(kept)), dropped, lost)
    if not lost:
        return found
    better = _better(here, going, lost, table)
    return found._replace(
        better=better, exchange=None if better else _exchange(here.only(kept), found, table)
    )


def _fits(here: Room) -> bool:
    """Whether a timetable within the minutes is found."""
    groups, available = here.groups, here.available_s or 0.0
    tasks = here.tasks(groups)
    if least(tasks, here.there) > available:
        return False
    return (
        usual_finish(tasks, here.there) <= available
        or timetable(tasks, here.there, available).finish_s <= available
    )


def _kinds(blocks: Collection[Block], table: Library) -> list[str]:
    """The kinds of work that some line of these blocks is."""
    return [kind for kind in KINDS if any(_is(kind, item, table) for block in blocks for item in block.items)]


def _is(kind: str, item: Item, table: Library) -> bool:
    return item.key is not None and KINDS[kind](table.movement(item.key))


def _better(here: Room, going: list[Block], lost: tuple[str, ...], table: Library) -> tuple[int, ...]:
    """The blocks to keep so that no kind is lost, or at least not the first, and else as little as can be."""
    groups, available = here.groups, here.available_s or 0.0
    for wanted in dict.fromkeys((lost, lost[:1])):
        for out in _choices(going[:MOST_TRIED]):
            left = here.only({block.number for block in here.blocks} - {block.number for block in out})
            if left.blocks and set(wanted) <= set(_kinds(left.blocks, table)):
                tasks = left.tasks(groups)
                if usual_finish(tasks, here.there) <= available:
                    return tuple(block.number for block in left.blocks)
    return ()


def _choices(going: list[Block]) -> Iterator[tuple[Block, ...]]:
    """What may be left out together, the least loss first: fewest of what matters most."""
    every = chain.from_iterable(combinations(going, number) for number in range(len(going) + 1))
    ranks = sorted({block.entry.priority for block in going})
    return iter(
        sorted(every, key=lambda out: [sum(block.entry.priority == rank for block in out) for rank in ranks])
    )


def _exchange(left: Room, found: Cut, table: Library) -> Exchange | None:
    """A line that was left out in the place of the last one that stays and is done in the same way."""
    for block in reversed(left.blocks):
        for old in reversed(block.items):
            for gone in found.dropped:
                for new in gone.items:
                    one = Exchange(block, old, new)
                    if (
                        _is(found.lost[0], new, table)
                        and _alike(block, gone)
                        and _fits(_done(left, one, gone))
                    ):
                        return one
    return None


def _alike(one: Block, other: Block) -> bool:
    """Whether a line of the other may stand in a pair of the one: doses are written in the same way."""
    groups = [block.entry for block in (one, other) if isinstance(block.entry, Group)]
    return len(groups) > 1 and groups[0].member == groups[-1].member


def _done(left: Room, change: Exchange, gone: Block) -> Room:
    """The room with the exchange made, for as many sets as the pair has."""
    new = next(move for move in gone.moves if move.name == change.new.name)
    moves = tuple(new if move.name == change.old.name else move for move in change.block.moves)
    blocks = (block._replace(moves=moves) if block is change.block else block for block in left.blocks)
    return replace(left, blocks=tuple(blocks))
