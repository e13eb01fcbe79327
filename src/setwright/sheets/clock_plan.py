"""The clock plan of a session: when each block begins and ends, on the clock or in minutes from the start."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from setwright.coverage.clock import SETUP_S, entry_seconds
from setwright.coverage.counts import count_items
from setwright.model.plan import Group, Item, Session
from setwright.sheets.phrases import say
from setwright.sheets.words import MINUTE

DAY: Final = 24 * 60
"""Minutes."""


@dataclass(frozen=True, slots=True)
class Slot:
    """One block between two times; ``entry`` and ``number`` are None for the warm-up."""

    begins: str
    ends: str
    entry: Item | Group | None
    number: int | None

    @property
    def times(self) -> str:
        """From when to when: "18:38 to 18:55", "8 to 24 min"."""
        begins = self.begins if ":" in self.begins else self.begins.partition(" ")[0]
        return say("time.span", begins=begins, ends=self.ends)


def clock_plan(session: Session) -> tuple[Slot, ...]:
    """Every block of a session with its times, to the minute, by the assumptions of ``coverage.clock``.

    Times of the day where the plan says when it starts ("18:38"), else minutes from the start ("8 min").
    """
    return tuple(_slots(session))


def _slots(session: Session) -> Iterator[Slot]:
    counts = count_items(session)
    gone = (session.warm_up_minutes or 0) * MINUTE
    if session.warm_up or session.warm_up_minutes is not None:
        yield Slot(_time(session, 0), _time(session, gone), None, None)
    for number, entry in enumerate(session.work, start=1):
        begins = gone
        gone += SETUP_S + entry_seconds(entry, counts)
        yield Slot(_time(session, begins), _time(session, gone), entry, number)


def _time(session: Session, seconds: float) -> str:
    minutes = round(seconds / MINUTE)
    if session.start is None:
        return say("time.min", count=minutes)
    hours, start = map(int, session.start.split(":"))
    hour, minute = divmod((hours * 60 + start + minutes) % DAY, 60)
    return f"{hour}:{minute:02}"
