"""Item keys written under a dose line, joined with it."""

from typing import Any

from setwright.findings import Finding
from setwright.places import Place
from setwright.reading.dose import Dose, Effort, Load, Rest, SetGroup, SetWork, Sides, Span, Tempo, WarmUp
from setwright.reading.questions_amount import VALUE_COUNT


def says(dose: Dose) -> frozenset[str]:
    """Which of rest, tempo, sides, load, effort and warm-up the line itself says."""
    said = {
        name
        for group in dose.groups
        for name in ("rest", "tempo", "sides")
        if getattr(group, name) is not None
    }
    works = [work for group in _takers(dose) for work in group.works]
    said |= {name for work in works for name in ("load", "effort") if getattr(work, name) is not None}
    return frozenset(said | ({"warm-up"} if dose.warm_up is not None else set()))


def uneven(dose: Dose, values: int, place: Place) -> tuple[Finding, ...]:
    """The finding about ``values`` loads or efforts that are neither one for all nor one a set; else none."""
    for group in _takers(dose):
        if values > 1 and group.sets != Span(low=values, high=values):
            sets = f"{group.sets.low:g}"
            fills = {"typed": dose.text, "sets": sets, "count": str(values), "write": f"{values} x ..."}
            return (VALUE_COUNT.at(place, fills),)
    return ()


def dose_with(
    dose: Dose,
    *,
    rest: Rest | None = None,
    tempo: Tempo | None = None,
    sides: Sides | None = None,
    load: tuple[Load, ...] = (),
    effort: tuple[Effort, ...] = (),
    warm_up: WarmUp | None = None,
) -> Dose:
    """The dose with the values of its item's keys in every group that does not say them itself.

    ``load`` and ``effort`` hold one value for all sets or one a set; where other sets stand beside them, top
    sets and tests keep their own.

    Raises: ValueError when a list does not fit a group (``uneven`` asks about it first).
    """
    how = {"rest": rest, "tempo": tempo, "sides": sides}
    takers = _takers(dose)
    groups = tuple(
        _group_with(group, how, load, effort) if group in takers else _group_with(group, how, (), ())
        for group in dose.groups
    )
    return dose.model_copy(update={"groups": groups, "warm_up": dose.warm_up or warm_up})


def dose_of_own(dose: Dose, loads: tuple[Load, ...]) -> Dose:
    """The dose with other loads in the place of its own, one for all sets or one a set; none for no load."""
    takers = _takers(dose)
    groups = (_without_load(group) if group in takers else group for group in dose.groups)
    return dose_with(dose.model_copy(update={"groups": tuple(groups)}), load=loads)


def _without_load(group: SetGroup) -> SetGroup:
    works = tuple(work.model_copy(update={"load": None}) for work in group.works)
    last = group.last and group.last.model_copy(update={"load": None})
    return group.model_copy(update={"works": works, "last": last})


def _takers(dose: Dose) -> tuple[SetGroup, ...]:
    """The groups that loads and efforts underneath belong to: the work, else the top sets and tests alone."""
    work = tuple(group for group in dose.groups if group.kind not in ("top_set", "test"))
    return work or dose.groups


def _group_with(
    group: SetGroup, how: dict[str, Any], loads: tuple[Load, ...], efforts: tuple[Effort, ...]
) -> SetGroup:
    new: dict[str, Any] = {
        name: value for name, value in how.items() if value and getattr(group, name) is None
    }
    if loads or efforts:
        count = max(len(group.works), len(loads), len(efforts))
        for values in (loads, efforts):
            if len(values) > 1 and group.sets != Span(low=len(values), high=len(values)):
                raise ValueError(f"{len(values)} values do not fit {group.sets.low:g} sets")
        new["works"] = tuple(
            _work_with(group.works[n % len(group.works)], n, loads, efforts) for n in range(count)
        )
        if count > 1 and group.kind == "straight":
            new["kind"] = "list"
        if group.last is not None:
            new["last"] = _work_with(group.last, count - 1, loads, efforts)
    return group.model_copy(update=new)


def _work_with(work: SetWork, number: int, loads: tuple[Load, ...], efforts: tuple[Effort, ...]) -> SetWork:
    new: dict[str, Load | Effort] = {}
    if loads and work.load is None:
        new["load"] = loads[number % len(loads)]
    if efforts and work.effort is None:
        new["effort"] = efforts[number % len(efforts)]
    return work.model_copy(update=new)
