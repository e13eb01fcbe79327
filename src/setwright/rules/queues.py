"""Who shares what on the floor, by a plain count: places to train at, people, and the time of a turn."""

from collections.abc import Callable, Iterator, Mapping
from typing import Final, NamedTuple

from setwright.coverage import Work
from setwright.model.plan import Week
from setwright.model.room import Gym, exactly
from setwright.reading.counting import count
from setwright.rules.aims import training
from setwright.rules.doing import tasks

CHANGE_S: Final = 20.0
"""One goes and the next one is ready, in seconds (choice, no source)."""


class Takes(NamedTuple):
    """What a line takes up while a set is done: so many of one kind of place, which the gym has ``there``."""

    kind: str
    number: int
    there: int


def _cables(gym: Gym) -> int:
    return sum(cable.stacks for cable in gym.cables)


def _bars(gym: Gym) -> int:
    return sum(bar.singles for bar in gym.straight_bars)


KINDS: Final[Mapping[str, tuple[str, int, Callable[[Gym], int | None]]]] = {
    "rack": ("racks", 1, lambda gym: gym.racks),
    "rack set low": ("racks", 1, lambda gym: gym.racks),
    "bar and plates": ("bars", 1, _bars),
    "bench": ("benches", 1, lambda gym: gym.benches),
    "flat bench": ("benches", 1, lambda gym: gym.benches),
    "incline bench": ("benches", 1, lambda gym: gym.benches),
    "upright bench": ("benches", 1, lambda gym: gym.benches),
    "cable": ("cables", 1, _cables),
    "rope": ("cables", 1, _cables),
    "cable pair": ("cables", 2, _cables),
}
"""The library's stations that a gym file counts: the kind of place, how many of it, and where it stands."""


def takes(gym: Gym, work: Work) -> Iterator[Takes]:
    """The counted places that a line takes up; what the gym file does not count is left out."""
    for need in work.movement["needs"]:
        if need in gym.stations:
            yield Takes(need, 1, gym.stations[need])
        elif need in KINDS:
            kind, number, there = KINDS[need]
            if counted := there(gym):
                yield Takes(kind, number, counted)


def weights(gym: Gym, work: Work) -> Iterator[Takes]:
    """The dumbbells that a line takes up, where it says their mass and the gym file lists it."""
    load = work.item.dose.groups[0].works[0].load if work.item.dose else None
    if "dumbbell" not in work.movement["implement"] or load is None or load.kind != "mass" or not load.low:
        return
    unit = load.unit or "kg"
    listed = (stock for stock in gym.dumbbells if stock.unit == unit and exactly(load.low) in stock.masses())
    there = sum(stock.singles for stock in listed)
    if there:
        hands = load.hands or (2 if "dumbbell pair" in work.movement["needs"] else 1)
        yield Takes(f"dumbbells of {load.low:g} {unit}", hands, there)


def people_at(week: Week, work: Work) -> int:
    """How many do the line: of a squad those it is for who do nothing instead, else the people written."""
    if week.squad:
        return sum(any(task.item is work.item for task in tasks(week, one)) for one in training(week))
    return work.session.people or week.people or 0


def turn_s(work: Work) -> float:
    """Seconds from one lifter's set to the next one's: a set of the line, and the change.

    A line of a circuit by the clock has none.
    """
    assert work.item.dose is not None, "only a circuit by the clock does without a dose"
    counted = count(work.item.dose)
    return (counted.work_s + counted.pause_s) / max(counted.sets.low, 1) + CHANGE_S
