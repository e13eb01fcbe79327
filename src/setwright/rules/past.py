"""What came before a week: the hard sets of the last full week, and how many hard weeks in a row."""

from collections.abc import Iterator, Mapping, Sequence
from typing import Final, NamedTuple

from setwright.coverage import Coverage, Sets, Work, total
from setwright.coverage.muscles import GROUPS, shares, shares_by_movement
from setwright.library.table import Library
from setwright.model.plan import Item
from setwright.model.weekly import DoneBefore
from setwright.reading.counting import count

SETS_OF_A_LIGHTER_WEEK: Final = 67.0
"""Most hard sets of a lighter week, percent of the week before (choice, no source)."""
LOAD_OF_A_LIGHTER_WEEK: Final = 90.0
"""Most load of a lighter week, percent of the week before, mean of the lines of both (choice, no source)."""


class MuscleSets(NamedTuple):
    """Sets by muscle group: the hard ones, and every one; a group that is not there is not known."""

    hard: Mapping[str, Sets]
    every: Mapping[str, Sets]


class Past(NamedTuple):
    """What a week comes after.

    ``sets``: those of the last week that was no lighter one, where they are known;
    ``called``: when that was. ``hard_in_a_row``: hard weeks up to this one, itself too, 0 when it
    is a lighter one. ``lighter_next``: the next week of the plan is a lighter one.
    """

    sets: MuscleSets | None = None
    called: str = ""
    hard_in_a_row: int = 0
    lighter_next: bool = False


def pasts(weeks: Sequence[Coverage], before: tuple[str, Coverage] | None, table: Library) -> Iterator[Past]:
    """The past of each week of a plan; ``before``: the file that it follows and the last week there."""
    first = before[1] if before else None
    lighter = [_is_lighter(week, last) for week, last in zip(weeks, (first, *weeks), strict=False)]
    sets: MuscleSets | None = None
    called, row = "", 0
    if before is not None:
        called, sets = f"in {before[0]}", None if _is_lighter(before[1], None) else by_muscle(before[1])
    elif weeks and weeks[0].sessions:
        called, sets = "last week", _done_before(weeks[0], table)
    for week, is_lighter, next_is in zip(weeks, lighter, (*lighter[1:], False), strict=False):
        row = 0 if is_lighter else row + 1
        yield Past(None if is_lighter else sets, called, row, next_is)
        if not is_lighter and week is not weeks[-1]:
            called, sets = f"in week {week.week.number}", by_muscle(week)


def by_muscle(week: Coverage) -> MuscleSets:
    """Sets of every muscle group in a week, none too."""
    hard = {group: week.muscles.get(group, Sets()) for group in GROUPS}
    every = dict.fromkeys(GROUPS, Sets())
    given = shares_by_movement(week.works)
    for work in week.works:
        for group, share in given[work.movement["key"]].items():
            every[group] += work.sets.times(share)
    return MuscleSets(hard, every)


def _is_lighter(week: Coverage, before: Coverage | None) -> bool:
    """Whether a week is lighter than the one before: written so, without training, or by sets or loads."""
    if week.week.lighter or not week.sessions:
        return True
    if before is None or not before.sessions:
        return False
    sets = total(work.hard for work in week.works).high
    fewer = sets <= total(work.hard for work in before.works).low * SETS_OF_A_LIGHTER_WEEK / 100
    were, are = _loads(before), _loads(week)
    shares_left = [are[line] / were[line] for line in are.keys() & were.keys()]
    lighter = bool(shares_left) and sum(shares_left) / len(shares_left) <= LOAD_OF_A_LIGHTER_WEEK / 100
    return fewer or lighter


def _loads(week: Coverage) -> dict[tuple[str, ...], float]:
    """The first load of each line that says a number, by day, movement and unit."""
    loads: dict[tuple[str, ...], float] = {}
    for work in week.works:
        first = work.item.dose.groups[0].works[0].load if work.item.dose else None
        load = first or work.item.load
        if load is not None and load.kind in ("mass", "percent") and load.low:
            loads[work.session.title, work.movement["key"], load.unit or ""] = load.low
    return loads


def _done_before(week: Coverage, table: Library) -> MuscleSets:
    """Sets by muscle group, all of them hard, of what ``last week`` says, as far as it says them all.

    Repetitions are so many sets as they make at this week's repetitions a set. Groups to which a movement
    without a number of sets belongs are left out.
    """
    sums: dict[str, Sets] = {}
    unknown: set[str] = set()
    for done in week.week.last_week:
        if done.key is None:
            continue
        sets = _sets_of(done, week)
        helped = shares(_as_work(done, week, sets or 0.0, table))
        if sets is None:
            unknown |= helped.keys()
        for group, share in helped.items():
            sums[group] = sums.get(group, Sets()) + Sets(sets or 0.0, sets or 0.0).times(share)
    known = {group: sets for group, sets in sums.items() if group not in unknown}
    return MuscleSets(known, known)


def _as_work(done: DoneBefore, week: Coverage, sets: float, table: Library) -> Work:
    item = Item(name=done.name, place=done.place, key=done.key)
    movement = table.movement(done.key or "")
    number = Sets(sets, sets)
    return Work(0, week.sessions[0].session, item, None, movement, number, number, effort_stated=True)


def _sets_of(done: DoneBefore, week: Coverage) -> float | None:
    if done.unit == "sets":
        return done.amount
    if done.unit != "reps":
        return None
    doses = [w.item.dose for w in week.works if w.movement["key"] == done.key and w.item.dose]
    counted = [count(dose) for dose in doses]
    reps, sets = sum(one.reps.low for one in counted), sum(one.sets.low for one in counted)
    return done.amount * sets / reps if reps else None
