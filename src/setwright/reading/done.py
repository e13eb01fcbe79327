"""What a record line becomes: the sets that were done, each with its amount, load and effort.

Four states stay apart: ``not written`` (nobody wrote it down), ``not done`` (with or without a reason),
``done`` (as the plan says), and sets; a set of 0 repetitions was tried and is a set.
"""

from typing import Literal

from setwright.places import Place
from setwright.reading.dose import Amount, Effort, Extra, Load, Sides
from setwright.reading.frozen import Frozen


class SetDone(Frozen):
    """One set. ``load`` None: not written; a mass without a unit is in the plan's unit."""

    amount: Amount
    load: Load | None = None
    effort: Effort | None = None
    extra: Extra | None = None
    sides: Sides | None = None


class Done(Frozen):
    """One record line, read. ``text`` is what was typed; ``place`` is where."""

    kind: Literal["sets", "done", "not done", "not written"]
    sets: tuple[SetDone, ...] = ()
    reason: str | None = None
    text: str
    place: Place
    notes: tuple[str, ...] = ()
