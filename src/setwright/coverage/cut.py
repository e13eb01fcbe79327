"""What is left without a set when a week is cut, by the priority of its lines, and when one is missed."""

from collections.abc import Iterable, Sequence
from typing import Final, NamedTuple

from setwright.coverage.muscles import GROUPS, shares
from setwright.coverage.shapes import PARTS, Coverage, Work

KEEP: Final = 1
"""The priority of what stays to the last."""
USUAL: Final = 2
"""The priority of a line that says none: it goes with its group."""


def leaves(priority: int, place: int) -> tuple[int, int]:
    """A key to sort by: what matters least goes first, of equals the later one.

    >>> sorted([(1, 0), (3, 1), (3, 2)], key=lambda one: leaves(*one))
    [(3, 2), (3, 1), (1, 0)]
    """
    return -priority, -place


class Cut(NamedTuple):
    """A week cut to its lines of a priority up to ``to``: the names of those that go, and what ``loses`` all.

    ``loses``: parts of the chest and muscle groups that the whole week trains and the rest doesn't.
    """

    to: int
    gone: tuple[str, ...]
    loses: tuple[str, ...]


def cuts(week: Coverage) -> tuple[Cut, ...]:
    """What goes first, then what goes with it next; never a cut that takes nothing more, or everything."""
    found = []
    for to in (USUAL, KEEP):
        kept = [work for work in week.works if priority(work) <= to]
        gone = [work for work in week.works if priority(work) > to]
        if kept and any(priority(work) == to + 1 for work in gone):
            names = tuple(dict.fromkeys(work.name for work in gone))
            found.append(Cut(to, names, lost(week.works, kept)))
    return tuple(found)


def priority(work: Work) -> int:
    """The priority that decides when a line goes: its own where it matters less than its group."""
    if work.group is None:
        return work.item.priority
    own = work.item.priority
    return own if own > max(work.group.priority, USUAL) else work.group.priority


def without_week(weeks: Sequence[Coverage], missed: int) -> tuple[str, ...]:
    """What the block no longer trains when a week is missed; ``missed``: its place in the block."""
    rest = [work for at, week in enumerate(weeks) if at != missed for work in week.works]
    return lost([*weeks[missed].works, *rest], rest)


def lost(whole: Iterable[Work], left: Iterable[Work]) -> tuple[str, ...]:
    """Parts of the chest and muscle groups with a hard set in ``whole`` and none in what is ``left``.

    A helping half set is a set. Where the whole chest is lost its parts are not named.
    """
    before, after = _trained(whole), _trained(left)
    names = [*(f"chest, {part}" for part in PARTS), *GROUPS]
    gone = [name for name in names if name in before - after]
    return tuple(name for name in gone if "chest" not in gone or not name.startswith("chest, "))


def _trained(works: Iterable[Work]) -> frozenset[str]:
    done = [work for work in works if work.hard.high]
    parts = {f"chest, {part}" for work in done for part in PARTS if work.dose(part)}
    return frozenset(parts | {group for work in done for group in shares(work)})
