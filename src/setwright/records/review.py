"""A look back at a plan's records: who came, what was done of what was planned, and how loads went."""

import datetime as dt
from collections.abc import Iterable, Iterator, Sequence
from typing import Final, NamedTuple

from setwright.coverage import Coverage, cover
from setwright.library.table import Library
from setwright.loads.bodyweight import Movement, added, by_bodyweight
from setwright.model.people import Athlete
from setwright.reading.done import SetDone
from setwright.records.achieved import week_of_done, week_planned
from setwright.records.fitting import Fitted, Line
from setwright.records.form import training
from setwright.records.week_done import WeekDone

STALLED: Final = 3
"""Records in a row without more load or repetitions that are called a stall (choice)."""
JUMP: Final = 0.10
"""Growth of a load from one record to the next that is called a jump.

The upper end of the 2 to 10 % of Ratamess NA et al., Med Sci Sports Exerc 2009;41:687-708 (abstract).
"""


class Point(NamedTuple):
    """The heaviest set of a movement in one record: its day, the load in kg, and the repetitions with it."""

    on: dt.date
    kg: float
    reps: float


class Trend(NamedTuple):
    """A movement of one athlete through the records, by date. ``added``: the load is added to the body."""

    movement: str
    added: bool
    points: tuple[Point, ...]

    @property
    def stalled(self) -> int:
        """The last records in a row that were not better than those before; 0 for fewer than three."""
        lifted = [(point.kg, point.reps) for point in self.points]
        since = max((n for n in range(1, len(lifted)) if lifted[n] > max(lifted[:n])), default=0)
        run = len(lifted) - since
        return run if run >= STALLED else 0

    @property
    def jump(self) -> float:
        """How much the load grew in the last record, as a share; 0 for less than a jump."""
        if len(self.points) < 2 or self.points[-2].kg <= 0:  # noqa: PLR2004 - two points make a step
            return 0.0
        grown = round(self.points[-1].kg / self.points[-2].kg - 1, 6)
        return grown if grown > JUMP else 0.0


class Reviewed(NamedTuple):
    """One athlete's week: how often they came, each line, what was planned and what was achieved."""

    name: str
    athlete: Athlete | None
    came: int
    planned_sessions: int
    lines: tuple[tuple[Fitted, Line], ...]
    planned: Coverage
    achieved: Coverage
    notes: tuple[str, ...]


class Review(NamedTuple):
    """One week of a plan looked back at."""

    done: WeekDone
    athletes: tuple[Reviewed, ...]

    def only(self, name: str | None) -> "Review":
        """The review of one athlete; of everybody when None."""
        some = (one for one in self.athletes if name is None or one.name.casefold() == name.casefold())
        return self._replace(athletes=tuple(some))


def review(done: WeekDone, table: Library) -> Review:
    """The week per athlete, in the order of the squad; without a squad, of the records."""
    week = done.week
    squad: list[tuple[str, Athlete | None]] = [(one.name, one) for one in training(week) if one is not None]
    reviewed = []
    for name, athlete in squad or [(name, None) for name in _named(done.records)]:
        theirs = [(fit, one) for fit in done.records for one in fit.athletes if one.is_called(name)]
        meant = week_planned(week, athlete)
        reviewed.append(
            Reviewed(
                name=name,
                athlete=athlete,
                came=sum(any(line.is_done for line in one.lines) for _, one in theirs),
                planned_sessions=len(meant.sessions),
                lines=tuple((fit, line) for fit, one in theirs for line in one.lines),
                planned=cover(meant, table),
                achieved=cover(week_of_done(week, done.records, name, table), table),
                notes=tuple(note for fit, _ in theirs for note in _notes(fit, name)),
            )
        )
    return Review(done, tuple(reviewed))


def _named(records: Iterable[Fitted]) -> list[str]:
    return list(dict.fromkeys(one.name for fit in records for one in fit.athletes))


def _notes(fit: Fitted, name: str) -> tuple[str, ...]:
    called = (one for one in fit.record.athletes if one.name.strip().casefold() == name.casefold())
    return tuple(note for one in called for note in one.notes)


def trends(weeks: Sequence[tuple[WeekDone, Library]], name: str) -> tuple[Trend, ...]:
    """Every movement of an athlete that was recorded with a load more than once, in the order first met.

    ``weeks``: with the library of their plan.
    """
    found: dict[str, dict[dt.date, Point]] = {}
    called: dict[str, tuple[str, bool]] = {}
    for done, table in weeks:
        for fit, line in _lines_of(done, name):
            key = table.find(line.name).key
            point = _point(fit, line, table.movement(key)) if key else None
            if key and point:
                called.setdefault(key, (line.name, by_bodyweight(table.movement(key))))
                days = found.setdefault(key, {})
                days[point.on] = max(point, days.get(point.on, point))
    return tuple(
        Trend(*called[key], tuple(sorted(days.values()))) for key, days in found.items() if len(days) > 1
    )


def _lines_of(done: WeekDone, name: str) -> Iterator[tuple[Fitted, Line]]:
    for fit in done.records:
        yield from ((fit, line) for one in fit.athletes if one.is_called(name) for line in one.lines)


def _point(fit: Fitted, line: Line, movement: Movement) -> Point | None:
    """The heaviest set of a line that has a load in kg or lb and repetitions."""
    done = line.done.done if line.done else None
    if done is None or fit.record.date is None:
        return None
    sets = [
        Point(fit.record.date, added(one.load, movement).low, one.amount.span.low)
        for one in done.sets
        if one.load and one.load.kind in ("mass", "bodyweight") and _repeated(one)
    ]
    return max(sets, default=None)


def _repeated(one: SetDone) -> bool:
    return one.amount.unit == "reps" and one.amount.span.low > 0
