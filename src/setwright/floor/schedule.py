"""The timetable: when each group does each block, by a small search with a stated objective.

Few turns are tried in every order; many by moving one at a time, from a seed, so that the same room gives the
same timetable. What is aimed at, in this order: fit the minutes; nobody waits longer than four; what comes
first in the plan's priorities is done first; even rest (the longest wait of a group before a block); fewest
changes of a bar from one block to another; an early finish; the order of the plan.
"""

import functools
import itertools
import math
import random
from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import Final, NamedTuple

EVERY_ORDER: Final = 7
"""Turns up to which every order is tried, 5,040 of them (choice)."""
PLACED: Final = 15_000
"""Most turns that are placed on the clock before the search stops (choice: under 2 s on one core)."""
SEED: Final = 1
LONG_WAIT_S: Final = 240.0
"""Seconds from which a wait before a block is long (choice: longer than most written rests)."""
LOADED: Final = frozenset({"bar", "rack", "trap bar"})
"""Pools whose plates are changed between two blocks."""


class Turn(NamedTuple):
    """One group at one block, by their numbers from 0."""

    group: int
    block: int


class Task(NamedTuple):
    """A block to be placed: what each group holds at it, for how long. ``priority``: 1 first."""

    holds: tuple[Mapping[str, int], ...]
    seconds: tuple[float, ...]
    priority: int = 2


class Slot(NamedTuple):
    """A turn on the clock, in seconds from the start."""

    turn: Turn
    start: float
    end: float


class Timetable(NamedTuple):
    """The turns by their start. ``least_s``: none ends before it. ``proved``: every order was tried."""

    slots: tuple[Slot, ...]
    least_s: float
    proved: bool

    @property
    def finish_s(self) -> float:
        """When the last group is through."""
        return max((slot.end for slot in self.slots), default=0.0)


Score = tuple[float, ...]
Order = tuple[Turn, ...]


def timetable(tasks: Sequence[Task], there: Mapping[str, float], available_s: float | None) -> Timetable:
    """The best timetable found.

    ``there``: how many of each pool; each task must fit into it alone. ``available_s``: the minutes of the
    session; None: as early as possible. Raises: ValueError when a task holds more than there is.
    """
    held = (item for task in tasks for holds in task.holds for item in holds.items())
    if any(number > there.get(pool, math.inf) for pool, number in held):
        raise ValueError("a block holds more than there is")
    turns = _turns(tasks)

    def placed(order: Order) -> tuple[Score, tuple[Slot, ...]]:
        slots = place(order, tasks, there)
        return _score(slots, tasks, available_s), slots

    proved = len(turns) <= EVERY_ORDER
    best = min(map(placed, itertools.permutations(turns))) if proved else _climb(turns, tasks, placed)
    return Timetable(
        tuple(sorted(best[1], key=lambda slot: (slot.start, slot.turn))), least(tasks, there), proved
    )


def usual_finish(tasks: Sequence[Task], there: Mapping[str, float]) -> float:
    """When the last group is through in the better of the usual orders: quick, and near enough to compare."""
    turns = _turns(tasks)
    return min(
        max((slot.end for slot in place(o, tasks, there)), default=0.0) for o in _usual(turns, len(tasks))
    )


def place(order: Order, tasks: Sequence[Task], there: Mapping[str, float]) -> tuple[Slot, ...]:
    """Each turn in its order, behind its group's turn before, as soon as its stations are free throughout.

    Some order leads to the earliest finish there is: that of the starts in any best timetable.
    """
    free: dict[int, float] = {}
    of_pool: dict[str, list[Slot]] = {}
    slots = []
    for turn in order:
        task = tasks[turn.block]
        held = task.holds[turn.group]
        scarce = {pool: n for pool, n in held.items() if not math.isinf(there.get(pool, math.inf))}
        rivals = [of_pool.setdefault(pool, []) for pool in scarce]
        first, length = free.get(turn.group, 0.0), task.seconds[turn.group]
        ends = {slot.end for used in rivals for slot in used if slot.end > first}
        start = next(
            at
            for at in (first, *sorted(ends))
            if all(
                _used(of_pool[pool], pool, tasks, at, at + length) + n <= there[pool]
                for pool, n in scarce.items()
            )
        )
        slot = Slot(turn, start, start + length)
        free[turn.group] = slot.end
        slots.append(slot)
        for used in rivals:
            used.append(slot)
    return tuple(slots)


def least(tasks: Sequence[Task], there: Mapping[str, float]) -> float:
    """Seconds under which no timetable can be: the busiest group's blocks, the busiest station's turns."""
    if not tasks:
        return 0.0
    groups = range(len(tasks[0].seconds))
    busiest = max((sum(task.seconds[group] for task in tasks) for group in groups), default=0.0)
    pools = {pool for task in tasks for holds in task.holds for pool in holds}
    finite = [pool for pool in pools if 0 < there.get(pool, math.inf) < math.inf]
    return max([busiest, *(taken(pool, tasks) / there[pool] for pool in finite)])


def taken(pool: str, tasks: Sequence[Task]) -> float:
    """Seconds that all turns together hold one of a pool."""
    turns = (turn for task in tasks for turn in zip(task.holds, task.seconds, strict=True))
    return sum(holds.get(pool, 0) * seconds for holds, seconds in turns)


def _climb(
    turns: list[Turn], tasks: Sequence[Task], placed: Callable[[Order], tuple[Score, tuple[Slot, ...]]]
) -> tuple[Score, tuple[Slot, ...]]:
    """The best of some usual orders, then better ones by moving one turn to another place."""
    placed = functools.cache(placed)  # of few turns most moves lead back to an order that was tried
    best, order = min((placed(order), order) for order in _usual(turns, len(tasks)))
    chance = random.Random(SEED)  # noqa: S311 - a repeatable search, no secret
    for _ in range(PLACED // len(turns)):
        moved = list(order)
        moved.insert(chance.randrange(len(moved)), moved.pop(chance.randrange(len(moved))))
        tried = placed(tuple(moved))
        if tried[0] <= best[0]:
            best, order = tried, tuple(moved)
    return best


def _turns(tasks: Sequence[Task]) -> list[Turn]:
    """Every group at every block that takes it any time."""
    return [
        Turn(group, block) for block, task in enumerate(tasks) for group, s in enumerate(task.seconds) if s
    ]


def _usual(turns: list[Turn], blocks: int) -> tuple[Order, Order]:
    """Everybody in the order of the plan; or each group a block further round."""
    return tuple(turns), tuple(sorted(turns, key=lambda turn: (turn.block + turn.group) % blocks))


def _score(slots: tuple[Slot, ...], tasks: Sequence[Task], available_s: float | None) -> Score:
    finish = max((slot.end for slot in slots), default=0.0)
    groups: dict[int, list[Slot]] = {}
    for slot in sorted(slots, key=lambda one: one.start):
        groups.setdefault(slot.turn.group, []).append(slot)
    pairs = [pair for mine in groups.values() for pair in itertools.combinations(mine, 2)]
    first_last = sum(tasks[one.turn.block].priority > tasks[two.turn.block].priority for one, two in pairs)
    wait = max((wait for mine in groups.values() for wait in _waits(mine)), default=0.0)
    turned = sum(one.turn.block > two.turn.block for one, two in pairs)
    late = max(0.0, finish - (available_s or 0.0))
    return late, max(wait, LONG_WAIT_S), first_last, wait, _plate_moves(slots, tasks), finish, turned


def _waits(slots: list[Slot]) -> Iterator[float]:
    """Seconds that a group waits before each of its blocks."""
    yield from (slot.start - end for slot, end in zip(slots, [0.0, *(s.end for s in slots)], strict=False))


def _plate_moves(slots: tuple[Slot, ...], tasks: Sequence[Task]) -> int:
    """How often a loaded pool goes from one block to another, in the order of the clock."""
    moves = 0
    for pool in LOADED:
        by_start = sorted(slots, key=lambda one: one.start)
        using = [slot for slot in by_start if pool in _holds(slot, tasks)]
        moves += sum(one.turn.block != two.turn.block for one, two in itertools.pairwise(using))
    return moves


def _used(slots: list[Slot], pool: str, tasks: Sequence[Task], start: float, end: float) -> int:
    """The most of a pool that is held at one time between two times."""
    meeting = [slot for slot in slots if slot.start < end and start < slot.end]
    times = [start, *(slot.start for slot in meeting if slot.start > start)]
    return max(
        sum(_holds(slot, tasks)[pool] for slot in meeting if slot.start <= at < slot.end) for at in times
    )


def _holds(slot: Slot, tasks: Sequence[Task]) -> Mapping[str, int]:
    return tasks[slot.turn.block].holds[slot.turn.group]
