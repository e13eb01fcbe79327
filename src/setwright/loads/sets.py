"""The sets of a line with what is lifted in each: warm-up sets first, then the work, then its drops."""

from collections.abc import Iterator, Mapping
from typing import Final, Literal, NamedTuple

from setwright.library.table import Library
from setwright.loads.asked_for import Kilograms
from setwright.loads.lines import Line, lifts_of, work_loads
from setwright.loads.maxes import WHOLE
from setwright.loads.ranges import one
from setwright.loads.typed import Wanted, loads_asked, with_what_there_is
from setwright.model.plan import Week
from setwright.reading.dose import Amount, Load

RAMP_PERCENT: Final = (40.0, 80.0)
"""Percents of the first work load between which warm-up sets without a load are spread evenly (common
practice, no source)."""


class Sets(NamedTuple):
    """Sets of one load, and what it comes to for each athlete.

    ``load``: as written. ``number`` and ``amount``: of warm-up sets; None where no amount is written.
    ``percent``: of the first work load, where a warm-up set has no load of its own; of the load that a drop
    by a percent starts from. ``less``: how many percent of the load just before a drop takes off.
    """

    what: Literal["warm-up", "work", "drop"]
    wanted: tuple[Wanted, ...]
    load: Load | None = None
    number: int = 1
    amount: Amount | None = None
    percent: float | None = None
    less: float | None = None


def sets_of(line: Line, week: Week, table: Library) -> tuple[Sets, ...]:
    """Every load of a line with what it comes to; nothing where no load is written."""
    work = tuple(Sets("work", loads_asked(load, line, week, table), load) for load in work_loads(line))
    drops = dict.fromkeys(_drops(line, {sets.load: sets.wanted for sets in work}, week))
    return (*_warm_up(line, work, week, table), *work, *drops)


def ramp_percents(count: int) -> tuple[float, ...]:
    """The percents of the first work load for so many warm-up sets.

    >>> ramp_percents(1), ramp_percents(2)
    ((60.0,), (50.0, 70.0))
    """
    low, high = RAMP_PERCENT
    return tuple(low + (high - low) * (number + 0.5) / count for number in range(count))


def _warm_up(line: Line, work: tuple[Sets, ...], week: Week, table: Library) -> Iterator[Sets]:
    warm_up = line.item.warm_up_sets
    if warm_up is None:
        return
    for step in warm_up.steps:
        wanted = loads_asked(step.load, line, week, table) if step.load else ()
        yield Sets("warm-up", wanted, step.load, step.sets, step.amount)
    for percent in ramp_percents(warm_up.count or 0):
        wanted = tuple(_part(whole, percent, line, week) for whole in work[0].wanted) if work else ()
        yield Sets("warm-up", wanted, percent=percent)


def _drops(line: Line, known: Mapping[Load | None, tuple[Wanted, ...]], week: Week) -> Iterator[Sets]:
    """The sets that a line drops to by a percent, where what they drop from comes to kilograms."""
    for lift in lifts_of(line):
        start, left = lift.load, WHOLE
        for drop in lift.sets.drops if lift.sets else ():
            if drop.to is not None:
                start, left = drop.to, WHOLE
                continue
            less = drop.by_percent or 0.0
            left *= 1 - less / WHOLE
            wanted = tuple(
                _part(whole, left, line, week)
                for whole in known[start]
                if isinstance(whole.asked, Kilograms) and whole.asked.way != "added to the body"
            )
            if wanted:
                yield Sets("drop", wanted, start, percent=left, less=less)


def _part(wanted: Wanted, percent: float, line: Line, week: Week) -> Wanted:
    """A share of what is lifted in the work sets; all of it without a number, or where the body is lifted."""
    asked = wanted.asked
    if not isinstance(asked, Kilograms) or asked.way == "added to the body":
        return wanted
    share = percent / WHOLE
    less = asked._replace(kg=asked.kg.times(one(share)), pick=asked.pick * share, lifted=None)
    return with_what_there_is(wanted._replace(asked=less), line, week)
