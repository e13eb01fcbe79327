"""A look back at a week's records: who came, what was done of what was planned, what it adds up to."""

from collections.abc import Iterable
from typing import NamedTuple

from setwright.coverage import Coverage, cover
from setwright.model.people import Athlete
from setwright.records.achieved import week_of_done, week_planned
from setwright.records.fitting import Fitted, Line
from setwright.records.form import training
from setwright.records.keeping import Plan
from setwright.records.outcome import reserve_off
from setwright.records.trend import Seen, Trend, trends
from setwright.records.week_done import WeekDone


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

    plan: Plan
    done: WeekDone
    athletes: tuple[Reviewed, ...]

    def only(self, name: str | None) -> "Review":
        """The review of one athlete; of everybody when None."""
        some = (one for one in self.athletes if name is None or one.name.casefold() == name.casefold())
        return self._replace(athletes=tuple(some))


class LookBack(NamedTuple):
    """Some weeks looked back at, by date, and how each athlete's loads went through them."""

    weeks: tuple[Review, ...]
    loads: tuple[tuple[str, tuple[Trend, ...]], ...]

    @property
    def names(self) -> list[str]:
        """Everybody in it, in the order first met."""
        return [name for name, _ in self.loads]

    def only(self, name: str | None) -> "LookBack":
        """What is seen of one athlete; of everybody when None."""
        loads = (one for one in self.loads if name is None or one[0].casefold() == name.casefold())
        return LookBack(tuple(week.only(name) for week in self.weeks), tuple(loads))

    def came(self, name: str) -> tuple[int, int]:
        """How many sessions an athlete came to in all these weeks, and how many were planned for them."""
        theirs = [one for week in self.weeks for one in week.athletes if one.name == name]
        return sum(one.came for one in theirs), sum(one.planned_sessions for one in theirs)


def look_back(seen: Seen) -> LookBack:
    """Everything that is on record, week by week and athlete by athlete."""
    weeks = tuple(review(plan, done) for plan, done in seen)
    names = dict.fromkeys(one.name for week in weeks for one in week.athletes)
    return LookBack(weeks, tuple((name, trends(seen, name)) for name in names))


def review(plan: Plan, done: WeekDone) -> Review:
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
                planned=cover(meant, plan.table),
                achieved=cover(week_of_done(week, done.records, name, plan.table), plan.table),
                notes=tuple(note for fit, _ in theirs for note in _notes(fit, name)),
            )
        )
    return Review(plan, done, tuple(reviewed))


def effort_off(line: Line) -> float:
    """Repetitions in reserve of the last set over (easier) or under (harder) what was planned.

    0 within the planned span, and where one of the two is not known.
    """
    done = line.done.done if line.done else None
    had = next((one.effort for one in reversed(done.sets) if one.effort), None) if done else None
    return reserve_off(line.planned.effort if line.planned else None, had) or 0.0


def _named(records: Iterable[Fitted]) -> list[str]:
    return list(dict.fromkeys(one.name for fit in records for one in fit.athletes))


def _notes(fit: Fitted, name: str) -> tuple[str, ...]:
    called = (one for one in fit.record.athletes if one.name.strip().casefold() == name.casefold())
    return tuple(note for one in called for note in one.notes)
