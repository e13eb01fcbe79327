"""A lighter week: half the sets or a share of the load, applied last to what is read for the week."""

import math
from typing import Any, Final, TypeVar

from setwright.model.plan import AthleteLoad, Group, Item, Lighter, Session
from setwright.reading.dose import Dose, Load, SetGroup, SetWork, Span

Some = TypeVar("Some")

WITH_A_NUMBER: Final = frozenset({"mass", "percent"})
"""Kinds of load that a percent can be taken of; others stay as they are."""


def lighter(session: Session, how: Lighter) -> Session:
    """The session with less of its work, somebody's own load and lines among it; its warm-up stays.

    Halves are rounded up. A list of sets keeps its first half. What has no sets or rounds (a total, a ladder,
    a circuit against time) and a load without a number stay as they are.
    """
    return session.model_copy(update={"work": tuple(_entry(entry, how) for entry in session.work)})


def _entry(entry: Item | Group, how: Lighter) -> Item | Group:
    new: dict[str, Any] = {"load": entry.load and _load(entry.load, how)}
    if isinstance(entry, Item):
        new["dose"] = entry.dose and _dose(entry.dose, how)
        new["loads"] = tuple(_own(own, how) for own in entry.loads)
        new["instead"] = tuple(
            one.model_copy(update={"lines": tuple(_entry(line, how) for line in one.lines)})
            for one in entry.instead
        )
    else:
        new["items"] = tuple(_entry(item, how) for item in entry.items)
        if entry.rounds and how.half_the_sets:
            new["rounds"] = math.ceil(entry.rounds / 2)
    return entry.model_copy(update=new)


def _own(own: AthleteLoad, how: Lighter) -> AthleteLoad:
    """The load of somebody's own, one for all sets or one a set."""
    kept = _kept(own.loads) if how.half_the_sets else own.loads
    return own.model_copy(update={"loads": tuple(_load(load, how) for load in kept)})


def _kept(one_a_set: tuple[Some, ...]) -> tuple[Some, ...]:
    """The first half of what has one value a set; one value is for all."""
    return one_a_set if len(one_a_set) == 1 else one_a_set[: math.ceil(len(one_a_set) / 2)]


def _dose(dose: Dose, how: Lighter) -> Dose:
    return dose.model_copy(update={"groups": tuple(_sets(group, how) for group in dose.groups)})


def _sets(group: SetGroup, how: Lighter) -> SetGroup:
    works = group.works
    new: dict[str, Any] = {}
    if how.half_the_sets:
        new["sets"] = _half(group.sets)
        works = _kept(works)
    new["works"] = tuple(_work(work, how) for work in works)
    new["last"] = group.last and _work(group.last, how)
    return group.model_copy(update=new)


def _half(sets: Span) -> Span:
    return Span(low=math.ceil(sets.low / 2), high=None if sets.high is None else math.ceil(sets.high / 2))


def _work(work: SetWork, how: Lighter) -> SetWork:
    drops = tuple(drop.model_copy(update={"to": drop.to and _load(drop.to, how)}) for drop in work.drops)
    return work.model_copy(update={"load": work.load and _load(work.load, how), "drops": drops})


def _load(load: Load, how: Lighter) -> Load:
    if how.load_percent is None or load.kind not in WITH_A_NUMBER:
        return load
    numbers = ("low", "high", "plus", "plus_high", "top_kg")
    typed = {name: getattr(load, name) for name in numbers}
    share = how.load_percent / 100
    return load.model_copy(
        update={name: None if value is None else round(value * share, 2) for name, value in typed.items()}
    )
