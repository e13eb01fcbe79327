"""Percents of a max: what is on file for a movement, and the question which of several is meant."""

from collections.abc import Iterator
from itertools import product
from typing import NamedTuple

from setwright.findings import Finding, Seen
from setwright.library.table import Library
from setwright.model.people import Athlete, Max
from setwright.model.plan import Item, Week
from setwright.model.theirs import lines_done
from setwright.places import Place
from setwright.reading.dose import MAX_KINDS, Load, MaxKind
from setwright.reading.max_rules import WHICH_MAX
from setwright.reading.words import listed


class _Open(NamedTuple):
    """A bare percent of a line, and somebody for whom it has several meanings."""

    item: Item
    percent: str
    athlete: Athlete
    kinds: tuple[MaxKind, ...]


def maxes_of(athlete: Athlete, key: str) -> tuple[Max, ...]:
    """What an athlete has on file for a movement, by the library's key, under whatever name."""
    return tuple(best for best in athlete.maxes if best.key == key)


def which_max(week: Week, table: Library) -> tuple[Finding, ...]:
    """One question for the whole plan, where somebody has several kinds of max and a percent names none.

    Nothing is asked when the plan says ``percent of``.
    """
    by_line: dict[Place, _Open] = {}
    for one in () if week.percent_of else _open(week, table):
        by_line.setdefault(one.item.place, one)
    if not by_line:
        return ()
    first, *others = by_line.values()
    on_file = listed(first.kinds)
    message = f"{first.item.name} at {first.percent}: {first.athlete.name} has {on_file} on file; of which?"
    top = f"`percent of: {first.kinds[0]}` or `percent of: {first.kinds[-1]}`"
    line = first.item.dose.text if first.item.dose else ""
    dose = line if first.percent in line and line.count("%") == 1 else first.percent
    ways = (f'"{dose.replace(first.percent, f"{first.percent} of {kind}", 1)}"' for kind in first.kinds)
    change = f"write {' or '.join(ways)}, or put {top} at the top"
    seen = tuple(Seen(f"{one.item.name} at {one.percent}", one.item.place.line) for one in others)
    return (WHICH_MAX.at(first.item.place, message, change, seen=seen),)


def _open(week: Week, table: Library) -> Iterator[_Open]:
    for session in week.sessions:
        for item, _, athletes in lines_done(session, week):
            bare = [(key, load) for load in item.line_loads if (key := _bare_percent_of(load, item, table))]
            for (key, load), athlete in product(bare, athletes):
                kinds = {kind for best in maxes_of(athlete, key) for kind in best.kinds}
                if len(kinds) > 1:
                    in_order = tuple(kind for kind in MAX_KINDS if kind in kinds)
                    yield _Open(item, f"{load.low:g}%", athlete, in_order)


def _bare_percent_of(load: Load, item: Item, table: Library) -> str | None:
    """The movement of whose max a percent is taken without saying which, or None."""
    if load.kind != "percent" or (load.of and not load.of_movement):
        return None
    return table.find(load.of_movement).key if load.of_movement else item.key
