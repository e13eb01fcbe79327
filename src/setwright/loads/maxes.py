"""The max of an athlete on a day: in kilograms, with its date and how it was found."""

import datetime as dt
from collections.abc import Iterable, Mapping
from typing import Final, NamedTuple

from setwright.library.percents import maxes_of
from setwright.library.table import Movement
from setwright.loads.bodyweight import lifted
from setwright.loads.estimates import TooManyReps, estimated_max
from setwright.loads.ranges import Range, one
from setwright.model.people import HOW_KINDS, Athlete, Best, How, Max
from setwright.model.room import kilograms
from setwright.reading.dose import Load, MaxKind
from setwright.reading.measures import Unit

DAYS_A_WEEK: Final = 7
WHOLE: Final = 100.0
"""Percent."""


_HOWS: Final[Mapping[MaxKind, tuple[How, ...]]] = {
    "tested max": ("tested", "estimated"), "estimated max": ("estimated",), "today's max": (),
}  # fmt: skip
"""How a max of each kind may have been found, best first."""


class MaxFound(NamedTuple):
    """A max in kg, with the share of the body that a bodyweight movement lifts. ``movement``: its name.

    ``kind``: what it is, which is the estimated max where no tested one is on file. ``on``: its day. ``how``
    in words: "tested on 2026-12-14". ``unit``: as typed.
    """

    movement: str
    kg: Range
    kind: MaxKind
    on: dt.date
    how: str
    unit: Unit

    @property
    def said(self) -> str:
        """The max in the unit it was typed in: "60 kg", "56.2 to 59.5 kg"."""
        low, high = (f"{round(end / kilograms(1.0, self.unit), 1):g}" for end in self.kg)
        return f"{low} {self.unit}" if low == high else f"{low} to {high} {self.unit}"

    def weeks_old(self, day: dt.date) -> float:
        """Weeks from its day to ``day``, below zero when it is later."""
        return (day - self.on).days / DAYS_A_WEEK


class NoMax(NamedTuple):
    """Why there is no max in kilograms. ``unread``: something on file was asked about already."""

    why: str
    unread: bool = False


def max_of(
    athlete: Athlete, movement: Movement, kind: MaxKind, day: dt.date | None = None
) -> MaxFound | NoMax:
    """The max of ``kind`` (today's is on nobody's file) that an athlete has for a movement on a day.

    Of several, the latest up to ``day`` holds (the latest at all without a day); when all are later, the
    first. Where no tested max is on file the estimated one stands for it: it is the estimate of just that. A
    training max is never made up: it is a percent of the max beside it, or a load of the coach's own.
    """
    on_file = maxes_of(athlete, movement["key"])
    tries: list[MaxFound | NoMax] = []
    if kind == "training max":
        tries = [_training(best, athlete, movement, day) for best in on_file if best.training]
    else:
        every = [best for entry in on_file for best in entry.bests]
        tries = [
            _in_kg(best, athlete, movement) for how in _HOWS[kind] if (best := _holding(every, how, day))
        ]
    found = next((best for best in tries if isinstance(best, MaxFound)), None)
    return found or (tries[0] if tries else _none(on_file, kind))


def _none(on_file: tuple[Max, ...], kind: MaxKind) -> NoMax:
    if any(best.unread for best in on_file):
        return NoMax("the max on file could not be read", unread=True)
    if any(best.none_yet for best in on_file):
        return NoMax("none yet, as the squad file says")
    others = sorted({other for best in on_file for other in best.kinds})
    return NoMax(f"no {kind} on file" + (f", only the {' and the '.join(others)}" if others else ""))


def _holding(bests: Iterable[Best], how: How, day: dt.date | None) -> Best | None:
    """The best of one sort that holds on a day, None when there is none."""
    ordered = sorted((best for best in bests if best.how == how), key=lambda best: best.on)
    known = [best for best in ordered if day is None or best.on <= day]
    return known[-1] if known else next(iter(ordered), None)


def _in_kg(best: Best, athlete: Athlete, movement: Movement) -> MaxFound | NoMax:
    if best.load is None:
        return NoMax("it was tested in repetitions, not in kilograms")
    reps = best.reps or 1
    how = f"tested on {best.on}" if best.how == "tested" else f"from {reps} repetitions on {best.on}"
    kg = _lifted(best.load, athlete, movement)
    if isinstance(kg, NoMax):
        return kg
    try:
        kg = Range(estimated_max(kg.low, reps).low, estimated_max(kg.high, reps).high)
    except TooManyReps as many:
        return NoMax(str(many))
    return MaxFound(movement["name"], kg, HOW_KINDS[best.how], best.on, how, _unit(best.load, athlete))


def _training(entry: Max, athlete: Athlete, movement: Movement, day: dt.date | None) -> MaxFound | NoMax:
    """The training max of one entry: its percent of the max beside it, or its own load."""
    assert entry.training is not None
    best = _holding(entry.bests, "tested", day) or _holding(entry.bests, "estimated", day)
    if best is None:
        return NoMax("the max beside the training max could not be read", unread=True)
    load, share = entry.training.load, entry.training.percent
    if load is not None:
        kg = _lifted(load, athlete, movement)
        how = f"of the coach's own, beside the max of {best.on}"
        name = movement["name"]
        return (
            kg
            if isinstance(kg, NoMax)
            else MaxFound(name, kg, "training max", best.on, how, _unit(load, athlete))
        )
    found = _in_kg(best, athlete, movement)
    if isinstance(found, NoMax) or share is None:
        return found
    kg = found.kg.times(one(share / WHOLE))
    return found._replace(kg=kg, kind="training max", how=f"{share:g} % of the max {found.how}")


def _lifted(load: Load, athlete: Athlete, movement: Movement) -> Range | NoMax:
    kg = lifted(load, athlete, movement)
    if kg is None:
        return NoMax("the body mass, or the published share of it in this movement, is not known")
    return kg if kg.low > 0 else NoMax("with that much help nothing is left to lift")


def _unit(load: Load, athlete: Athlete) -> Unit:
    """The unit of a max as typed; of the bare body that of the body mass."""
    unit = load.unit or athlete.body_mass_unit
    return "lb" if unit == "lb" else "kg"
