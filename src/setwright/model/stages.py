"""Stages of a way back: each opens by a sign-off, never by a date."""

import datetime as dt
from collections.abc import Sequence

from setwright.places import Place
from setwright.reading.frozen import Frozen


class SignOff(Frozen):
    """Who opened a stage, and when."""

    who: str
    on: dt.date


class Stage(Frozen):
    """A stage as written. ``earliest`` and ``latest`` are weeks of the plan; the latest closes nothing."""

    name: str
    place: Place
    earliest: int | None = None
    latest: int | None = None
    enter_when: tuple[str, ...] = ()
    signed_off: SignOff | None = None
    stop: str | None = None
    note: str | None = None
    private_note: str | None = None

    def is_called(self, typed: str) -> bool:
        """Whether a typed word is its name."""
        return self.name.casefold() == typed.casefold()

    def is_open(self, week: int) -> bool:
        """Whether somebody signed it off, and this week of the plan is not too early for it."""
        return self.signed_off is not None and (self.earliest is None or self.earliest <= week)


def current(stages: Sequence[Stage], week: int) -> Stage | None:
    """The stage that is in force in a week of the plan: the last one open, in the order written."""
    return next((stage for stage in reversed(stages) if stage.is_open(week)), None)
