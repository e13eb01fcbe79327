"""Doses, lines and sessions built by hand, for tests that read no plan."""

from typing import Any

from setwright.model.plan import Group, Item, Session
from setwright.places import Place
from setwright.reading.dose import Amount, Dose, Effort, Load, SetGroup, SetWork, Span

HERE = Place("week.yaml", 1, 1, 1, 5)


def span(low: float, high: float | None = None) -> Span:
    return Span(low=low, high=low if high is None else high)


def amount(low: float, high: float | None = None, unit: str = "reps") -> Amount:
    return Amount(unit=unit, span=span(low, high))


def left(reps: float) -> Effort:
    return Effort(scale="RIR", low=reps, high=reps)


def kg(low: float, high: float | None = None, **more: Any) -> Load:
    return Load(kind="mass", low=low, high=low if high is None else high, unit="kg", **more)


def sets(count: int, *works: SetWork, **more: Any) -> SetGroup:
    return SetGroup(**{"kind": "straight", "sets": span(count), "works": works, **more})


def straight(count: int, reps: float, load: Load | None = None, effort: Effort | None = None) -> Dose:
    return dose(sets(count, SetWork(amount=amount(reps), load=load, effort=effort)))


def dose(*groups: SetGroup, **more: Any) -> Dose:
    return Dose(groups=groups, text="", place=HERE, **more)


def item(name: str = "front plank", done: Dose | None = None, **more: Any) -> Item:
    return Item(name=name, place=HERE, dose=done or straight(3, 8), **more)


def group(*items: Item, **more: Any) -> Group:
    return Group(**{"kind": "superset", "place": HERE, "items": items, **more})


def session(*work: Item | Group, **more: Any) -> Session:
    return Session(place=HERE, work_place=HERE, work=work, **more)
