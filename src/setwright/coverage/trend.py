"""What changes over the weeks of a block: hard sets, and the heaviest load written."""

from collections.abc import Iterator, Sequence
from typing import Final, Literal, NamedTuple

from setwright.coverage.muscles import GROUPS
from setwright.coverage.shapes import CLASSES, Coverage, Sets, Work, total
from setwright.library.table import Movement
from setwright.model.room import kilograms
from setwright.reading.dose import MAX_KINDS, Load

Kind = Literal["mass", "percent", "bodyweight"]
"""Kinds of load that can be compared from week to week: by kg, by percent of a max, by kg on the body."""

OF_A_MAX: Final = frozenset({None, *MAX_KINDS})
"""What a percent may be of to be a load by the max of the line's own movement."""


class SetsByWeek(NamedTuple):
    """The hard sets of a part of the chest or of a muscle group, one count a week."""

    name: str
    sets: tuple[Sets, ...]


class Planned(NamedTuple):
    """The heaviest load that a week writes for a movement: its ``amount`` in kg or percent, and as typed."""

    amount: float
    load: Load


class LiftByWeek(NamedTuple):
    """A movement with its heaviest load of one kind, week by week; None where none is written."""

    movement: Movement
    kind: Kind
    planned: tuple[Planned | None, ...]


def sets_by_week(weeks: Sequence[Coverage]) -> tuple[SetsByWeek, ...]:
    """The parts of the chest, then the muscle groups, as far as some week trains them."""
    parts = zip(*(week.parts for week in weeks), strict=True)
    rows = [SetsByWeek(f"chest, {part[0].part}", tuple(one.sets for one in part)) for part in parts]
    rows += [SetsByWeek(group, tuple(week.muscles.get(group, Sets()) for week in weeks)) for group in GROUPS]
    return tuple(row for row in rows if any(sets.high for sets in row.sets))


def lifts_by_week(weeks: Sequence[Coverage]) -> tuple[LiftByWeek, ...]:
    """Every movement for which some week writes a load, the heaviest class first."""
    found: dict[tuple[str, Kind], dict[int, Planned]] = {}
    movements: dict[str, Movement] = {}
    for at, week in enumerate(weeks):
        for work in week.works:
            key = movements.setdefault(work.movement["key"], work.movement)["key"]
            for kind, planned in loads_of(work):
                by_week = found.setdefault((key, kind), {})
                by_week[at] = max(by_week.get(at, planned), planned, key=lambda one: one.amount)
    lifts = [
        LiftByWeek(movements[key], kind, tuple(by_week.get(at) for at in range(len(weeks))))
        for (key, kind), by_week in found.items()
    ]
    return tuple(sorted(lifts, key=lambda lift: -CLASSES.index(lift.movement["class"])))


def hard_sets(week: Coverage) -> Sets:
    """All hard sets of a week."""
    return total(work.hard for work in week.works)


def fullest(weeks: Sequence[Coverage]) -> float:
    """The hard sets of the week that has most of them, by the low end of each week's count."""
    return max((hard_sets(week).low for week in weeks), default=0.0)


def loads_of(work: Work) -> Iterator[tuple[Kind, Planned]]:
    """Every load of a line that can be compared, those of single athletes too; warm-up sets are left out."""
    shared = [work.group.load] if work.group and work.group.load else []
    theirs = [load for one in work.item.loads for load in one.loads]
    for load in (*shared, *theirs, *work.item.line_loads):
        to = load.low if load.high is None else load.high
        if load.kind == "mass" and to is not None:
            yield "mass", Planned(kilograms(to, load.unit), load)
        elif load.kind == "percent" and to is not None and load.of in OF_A_MAX:
            yield "percent", Planned(to, load)
        elif load.kind == "bodyweight" and load.plus is not None:
            plus = load.plus if load.plus_high is None else load.plus_high
            yield "bodyweight", Planned(kilograms(plus, load.unit), load)
