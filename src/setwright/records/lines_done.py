"""What became of every planned line of a week, athlete by athlete."""

from collections.abc import Iterator
from itertools import groupby
from typing import NamedTuple

from setwright.model.people import Athlete
from setwright.records.fitting import Fitted, Line
from setwright.records.line_keys import LineKey, Told, lines_of
from setwright.records.outcome import Outcome, outcome
from setwright.records.week_done import WeekDone


class LineOfWeek(NamedTuple):
    """A planned line of an athlete and what was done of it."""

    told: Told
    line: Line


def lines_done(done: WeekDone) -> Iterator[LineOfWeek]:
    """Every planned line of a week in the order of the plan; of two records of a session the later."""
    last = {id(fit.session): fit for fit in done.records}
    for (at, _), some in groupby(lines_of(done.week), key=lambda told: (id(told.session), told.key.who)):
        planned = list(some)
        lines = _lines(planned, planned[0].athlete, last.get(at))
        yield from map(LineOfWeek, planned, lines)


def _lines(planned: list[Told], athlete: Athlete | None, fit: Fitted | None) -> list[Line]:
    """The planned lines with what was done; without a squad, of the record's only list."""
    every = fit.athletes if fit else ()
    theirs = [one for one in every if one.athlete is athlete and (athlete or len(every) == 1)]
    if theirs:
        return [line for line in theirs[0].lines if line.planned is not None]
    return [Line(told.planned, None) for told in planned]


def what_came(done: WeekDone) -> dict[LineKey, Outcome]:
    """What was done of every line; of a session taken in turn twice the last time that it was done."""
    found: dict[LineKey, Outcome] = {}
    for told, line in lines_done(done):
        came = outcome(line, done.week, told.athlete)
        if told.key not in found or not came.short:
            found[told.key] = came
    return found
