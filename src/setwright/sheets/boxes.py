"""The boxes of a dose: one a set, with its target; and the warm-up rows that lead up to it."""

from collections.abc import Iterable
from typing import Final

from setwright.reading.dose import Dose, SetGroup, SetWork, WarmUp, WarmUpStep
from setwright.sheets.phrases import say
from setwright.sheets.view import Box, LoadWords, Ramp
from setwright.sheets.words import amount, amount_in_full, span

MOST_BOXES: Final = 20
"""Boxes of one line (choice: five rows of four, a third of a page); more sets are tallied in one."""

BOXES_FOR_ANY_SPLIT: Final = 4
"""Boxes where the athlete chooses how many sets make up a total (choice: one row)."""


def boxes(dose: Dose) -> tuple[Box, ...]:
    """One box a work set, in order; a single box with the count where there would be too many."""
    every = tuple(box for group in dose.groups for box in _of_group(group))
    return every if len(every) <= MOST_BOXES else (Box(say("line.sets", count=len(every))),)


def ramps(warm_up: WarmUp | None, loads: Iterable[LoadWords]) -> tuple[Ramp, ...]:
    """The warm-up sets of a line as rows; ``loads``: that of each step, or of each set without a step."""
    if warm_up is None:
        return ()
    if warm_up.count:
        return tuple(_ramp(say("line.warm_up_set"), load, "") for load in loads)
    return tuple(
        _ramp(_warm_up(step), load, amount(step.amount))
        for step, load in zip(warm_up.steps, loads, strict=True)
        for _ in range(step.sets)
    )


def _of_group(group: SetGroup) -> tuple[Box, ...]:
    if group.kind == "total":
        return (Box(""),) * BOXES_FOR_ANY_SPLIT
    sets = int(group.sets.high if group.sets.high is not None else group.sets.low)
    if group.kind == "ladder":
        return tuple(Box(str(rung)) for rung in group.rungs) * sets
    works = list(group.works) if len(group.works) == sets else [group.works[0]] * sets
    if group.last:
        works[-1] = group.last
    return tuple(_box(work) for work in works)


def _box(work: SetWork) -> Box:
    target = "+".join(span(part) for part in work.parts) if work.parts else amount(work.amount)
    if work.extra:
        target += f" + {work.extra.reps}"
    rir = work.effort.rir if work.effort else None
    return Box(target, reserve=rir is not None and rir[1] > 0)


def _ramp(text: str, load: LoadWords, target: str) -> Ramp:
    """A warm-up row; a load with its plates goes beside the repetitions, and the plates into its column."""
    if load.large and load.small and load.blank is None:
        return Ramp(text, LoadWords(small=load.small), Box(target), at=load.large)
    return Ramp(text, load, Box(target))


def _warm_up(step: WarmUpStep) -> str:
    return say("line.warm_up", amount=amount_in_full(step.amount))
