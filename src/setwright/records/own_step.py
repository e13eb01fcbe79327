"""What a block itself says otherwise of a line in the week that comes: its own load, sets and repetitions."""

from typing import Final

from setwright.model.next import Add
from setwright.reading.dose import Load
from setwright.records.gains import sets_of
from setwright.records.outcome import Outcome
from setwright.records.planned import Planned
from setwright.records.progress import Decision

NUMBERS: Final = ("mass", "bodyweight", "percent")
"""Kinds of load of which one may be more than another."""
_FIGURES: Final = ("low", "high", "plus", "plus_high", "lone_plus")


def figure_of(load: Load) -> float | None:
    """The number of a load, which of bodyweight is what is added to it."""
    return (load.plus or 0.0) if load.kind == "bodyweight" else load.low


def own_load(was: tuple[Load, ...], then: tuple[Load, ...], done: Outcome, week: int) -> Decision | None:
    """What comes of a load that the block changes from one week to week ``week``; None for the same load.

    Its step is added to what was lifted. Who missed or cut the line takes no step up.
    """
    if was == then or not then:
        return None
    step = _step(was, then)
    if step is None:
        return Decision(f"week {week} of the block has a load of its own", stands=True)
    if done.short and step > 0:
        return Decision(f"{done.short}, so no step to the load of week {week}", held=True)
    if then[0].kind == "percent":
        return Decision(f"week {week} of the block has a load of its own", stands=True)
    unit = "lb" if "lb" in (was[0].unit, then[0].unit) else "kg"
    return Decision(f"week {week}'s own load", add=Add(amount=step, unit=unit))


def own_sets(was: Planned, then: Planned, week: int) -> Decision | None:
    """That the block has other sets or repetitions in week ``week``; None for the same ones."""
    same = sets_of(was) == sets_of(then)
    return None if same else Decision(f"week {week} of the block has sets of its own", stands=True)


def _step(was: tuple[Load, ...], then: tuple[Load, ...]) -> float | None:
    """How much more one load is than another; None where that can't be said."""
    if len(was) != 1 or len(then) != 1 or was[0].kind not in NUMBERS:
        return None
    same = {_kind_of(load) for load in (*was, *then)}
    before, after = figure_of(was[0]), figure_of(then[0])
    return None if len(same) > 1 or before is None or after is None else round(after - before, 3)


def _kind_of(load: Load) -> Load:
    """A load without its figures; with the body alone no unit is written."""
    no_unit = {"unit": None} if load.kind == "bodyweight" else {}
    return load.model_copy(update=dict.fromkeys(_FIGURES) | {"lone_plus": False} | no_unit)
