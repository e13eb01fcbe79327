"""The clock plan of a session: when each block begins and ends, on the clock or in minutes from the start."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from typing import Final

from setwright.coverage.clock import SETUP_S, entry_seconds
from setwright.coverage.counts import count_items
from setwright.floor.room import Floor, Stay, letter
from setwright.model.plan import Group, Item, Session
from setwright.reading.words import MINUTE_S
from setwright.sheets.phrases import say

DAY: Final = 24 * 60
"""Minutes."""


@dataclass(frozen=True, slots=True)
class Turn:
    """Groups that are at a block at the same time, by their letters, between two times."""

    groups: str
    begins: str
    ends: str

    @property
    def times(self) -> str:
        """From when to when, as of a slot."""
        return _span(self.begins, self.ends)


@dataclass(frozen=True, slots=True)
class Slot:
    """One block between two times; ``entry`` and ``number`` are None for the warm-up.

    ``turns``: which groups are at it when; empty where all are at it at the same time.
    """

    begins: str
    ends: str
    entry: Item | Group | None
    number: int | None
    turns: tuple[Turn, ...] = ()

    @property
    def times(self) -> str:
        """From when to when: "18:38 to 18:55", "8 to 24 min"."""
        return _span(self.begins, self.ends)

    def times_of(self, group: str) -> str:
        """From when to when a group is at it, by its letter."""
        return next((turn.times for turn in self.turns if group in turn.groups.split()), self.times)


def clock_plan(session: Session, floor: Floor | None = None) -> tuple[Slot, ...]:
    """Every block of a session with its times, to the minute, in the order in which they begin.

    By the timetable of its ``floor``; without one the blocks of one person, one after the other, by the
    assumptions of ``coverage.clock``. Times of the day where the plan says when it starts ("18:38"), else
    minutes from the start ("8 min").
    """
    return (*_warm_up(session), *(_of_one(session) if floor is None else _of_all(floor)))


def finish(session: Session, floor: Floor | None) -> str:
    """When the session is over."""
    if floor is not None:
        return _time(session, floor.whole_s)
    slots = clock_plan(session)
    return slots[-1].ends if slots else ""


def _warm_up(session: Session) -> Iterator[Slot]:
    if session.warm_up or session.warm_up_minutes is not None:
        ends = (session.warm_up_minutes or 0) * MINUTE_S
        yield Slot(_time(session, 0), _time(session, ends), None, None)


def _of_one(session: Session) -> Iterator[Slot]:
    counts = count_items(session)
    gone = (session.warm_up_minutes or 0) * MINUTE_S
    for number, entry in enumerate(session.work, start=1):
        begins = gone
        gone += SETUP_S + entry_seconds(entry, counts)
        yield Slot(_time(session, begins), _time(session, gone), entry, number)


def _of_all(floor: Floor) -> Iterator[Slot]:
    """The blocks by their first turn; what nobody does has no slot."""
    for number in dict.fromkeys(stay.block.number for stay in floor.stays):
        stays = [stay for stay in floor.stays if stay.block.number == number]
        begins, ends = min(stay.start_s for stay in stays), max(stay.end_s for stay in stays)
        yield Slot(_at(floor, begins), _at(floor, ends), stays[0].block.entry, number, _turns(floor, stays))


def _turns(floor: Floor, stays: Sequence[Stay]) -> tuple[Turn, ...]:
    together: dict[tuple[str, str], list[str]] = {}
    for stay in stays:
        times = _at(floor, stay.start_s), _at(floor, stay.end_s)
        together.setdefault(times, []).append(letter(stay.group))
    if [len(groups) for groups in together.values()] == [len(floor.groups)]:
        return ()
    return tuple(Turn(" ".join(groups), *times) for times, groups in together.items())


def _at(floor: Floor, seconds: float) -> str:
    return _time(floor.session, floor.warm_up_s + seconds)


def of_the_day(start: str, minutes: float) -> str:
    """The time so long after a start, past midnight too.

    >>> of_the_day("23:57", 9)
    '0:06'
    """
    hours, first = map(int, start.split(":"))
    hour, minute = divmod((hours * 60 + first + round(minutes)) % DAY, 60)
    return f"{hour}:{minute:02}"


def _span(begins: str, ends: str) -> str:
    first = begins if ":" in begins else begins.partition(" ")[0]
    return say("time.span", begins=first, ends=ends)


def _time(session: Session, seconds: float) -> str:
    minutes = round(seconds / MINUTE_S)
    return of_the_day(session.start, minutes) if session.start else say("time.min", count=minutes)
