"""A session on the day: with fewer minutes, fewer people, less kit."""

from collections import Counter
from collections.abc import Iterator, Mapping
from math import inf
from typing import Final, NamedTuple

from setwright.floor.conflicts import Conflict, conflicts
from setwright.floor.cut import Cut, cut
from setwright.floor.kit import there
from setwright.floor.room import Floor, NobodyKnown, floor, room
from setwright.library.table import Library
from setwright.model.plan import Session, Week
from setwright.model.room import Gym
from setwright.reading.nearest import choice, nearest

NEAREST: Final = 3
"""Most names that are proposed for one that is not known (choice)."""


class NotHere(Exception):
    """Something named that is not there, in one sentence with what to type instead."""


class Change(NamedTuple):
    """What is otherwise today, as typed. ``without``: kit out of order, "rack-2"; ``absent``: names."""

    minutes: float | None = None
    without: tuple[str, ...] = ()
    absent: tuple[str, ...] = ()


class Today(NamedTuple):
    """The floor of today, what was ``cut`` for it (None: nothing was asked) and what will go wrong.

    ``absent``: as the squad has the names.
    """

    floor: Floor
    week: Week
    change: Change
    absent: tuple[str, ...]
    cut: Cut | None
    conflicts: tuple[Conflict, ...]


def today(session: Session, week: Week, table: Library, change: Change) -> Today:
    """The session as it can be done today. Raises: NotHere."""
    absent = tuple(_athlete(name, week) for name in change.absent)
    without = Counter[str]()
    for typed in change.without:
        without.update(_kit(typed, week))
    minutes = session.minutes if change.minutes is None else change.minutes
    done = session.model_copy(update={"minutes": minutes})
    try:
        here = room(done, week, table, absent=absent, without=without)
    except NobodyKnown:
        raise NotHere(_nobody(week)) from None
    made = cut(here, table) if change.minutes is not None else None
    found = floor(here.only(made.kept) if made else here)
    return Today(found, week, change, absent, made, conflicts(found))


def _nobody(week: Week) -> str:
    if week.squad is not None and week.squad.athletes:
        return "nobody of the squad is there"
    return "how many people come is not written; write `people: 8` in the plan, or `squad: squad.yaml`"


def _athlete(typed: str, week: Week) -> str:
    """The athlete's name as the squad has it."""
    names = {one.name.casefold(): one.name for one in (week.squad.athletes if week.squad else ())}
    if typed.casefold() in names:
        return names[typed.casefold()]
    if not names:
        raise NotHere(f"nobody is called {typed}: the plan names no squad; write fewer `people:` instead")
    near = nearest(typed, names.values(), NEAREST) or list(names.values())[:NEAREST]
    raise NotHere(
        f"nobody in the squad is called {typed}; write {choice([f'`--absent {one}`' for one in near])}"
    )


def _kit(typed: str, week: Week) -> Mapping[str, int]:
    """What is out of order, by pool: one thing, whatever its number after a hyphen."""
    if week.gym is None:
        raise NotHere(f"the plan names no gym, so {typed} can't be out of order; write `gym: gym.yaml` in it")
    name, hyphen, number = typed.rpartition("-")
    name, which = (name, int(number)) if hyphen and number.isdecimal() else (typed, 1)
    known = {kit.name.casefold(): kit for kit in _of_the_gym(week.gym)}
    found = known.get(name.casefold())
    if found is None:
        names = [kit.name for kit in known.values()]
        near = nearest(name, names, NEAREST) or names[:NEAREST]
        words = choice([f'`--without "{one}"`' for one in near]) if near else "nothing that it does not list"
        raise NotHere(f"the gym file has no {name}; write {words}")
    if which > found.number:
        raise NotHere(f"the gym file has {found.number} x {found.name}, no {typed}; write `--without {name}`")
    return found.takes


class _Kit(NamedTuple):
    """What can be out of order: what a coach types, how many there are, what each takes from the pools."""

    name: str
    number: int
    takes: Mapping[str, int]


def _of_the_gym(gym: Gym) -> Iterator[_Kit]:
    counted = {pool: there(pool, gym) for pool in ("rack", "bench", "bar")}
    yield from (_Kit(pool, int(number), {pool: 1}) for pool, number in counted.items() if 0 < number < inf)
    if gym.cables:
        yield _Kit("cable", int(there("stack", gym)), {"stack": 1})
    for cable in gym.cables:
        yield _Kit(cable.name, cable.number, {"stack": 2 if cable.is_pair else 1})
    yield from (_Kit(name, number, {name: 1}) for name, number in gym.stations.items())
