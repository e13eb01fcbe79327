"""The loads of a week, worked out for everyone who lifts: sessions, lines, sets, and a row an athlete."""

from collections.abc import Iterable, Iterator
from typing import Final, NamedTuple

from setwright.checked import CheckedWeek
from setwright.library.table import Library
from setwright.loads.asked_for import Kilograms, NoNumber
from setwright.loads.at_once import Crowd, at_once
from setwright.loads.lines import Line, lines
from setwright.loads.put import Put
from setwright.loads.sets import Sets, sets_of
from setwright.loads.typed import Wanted
from setwright.model.people import Athlete
from setwright.model.plan import Session, Week
from setwright.model.reader.by_name import people_of
from setwright.reading.words import listed
from setwright.rules.means import Means

Names = frozenset[str] | None
"""Whose loads are wanted; None for everybody's."""

EVERYBODY: Final = "all"


class Row(NamedTuple):
    """One load of one athlete, or of everybody on the line. ``put`` None: nothing can be put on."""

    who: str
    wanted: Wanted
    put: Put | None

    @property
    def missing(self) -> bool:
        """Whether a number was asked for and there is none to lift: no max, or nothing here makes it."""
        asked = self.wanted.asked
        if isinstance(asked, NoNumber):
            return asked.max is not None
        return self.wanted.carried is not None and self.put is None


class Table(NamedTuple):
    """The rows of sets of one load."""

    sets: Sets
    rows: tuple[Row, ...]


class LineLoads(NamedTuple):
    """A line with its tables. ``whose``: by name where not everybody does it (or does it so).

    ``easier``: what those do for whom the bar is too heavy. ``crowd``: who can't lift the first work load at
    the same time.
    """

    line: Line
    whose: str
    tables: tuple[Table, ...]
    easier: str | None
    crowd: Crowd | None

    @property
    def rows(self) -> tuple[Row, ...]:
        """Every row of every table."""
        return tuple(row for table in self.tables for row in table.rows)

    @property
    def too_light(self) -> tuple[Row, ...]:
        """The rows that ask for less than the bar."""
        return tuple(row for row in self.rows if row.missing and _fault(row.wanted) == "below the bar")

    @property
    def without_max(self) -> NoNumber | None:
        """Why the first of those without a max has no number."""
        asked = (row.wanted.asked for row in self.rows)
        return next((one for one in asked if isinstance(one, NoNumber) and one.max), None)


class DayLoads(NamedTuple):
    """A session with its lines."""

    session: Session
    lines: tuple[LineLoads, ...]


def members(week: Week, who: str) -> frozenset[str]:
    """The athletes whom a name means, their own or that of a group of the squad; nobody when nobody's."""
    people = people_of(week.squad).items()
    return frozenset(one for name, every in people if name.casefold() == who.casefold() for one in every)


def loads_of(one: CheckedWeek, table: Library, names: Names = None) -> tuple[DayLoads, ...]:
    """The loads of a week, session by session in the order of the days.

    ``names``: of these athletes and groups alone. A line that nobody of them does is left out.
    """
    means = Means(one.week, table)
    days = enumerate(one.coverage.sessions)
    return tuple(
        DayLoads(cover.session, tuple(_lines(cover.session, day, one.week, means, names)))
        for day, cover in days
    )


def _lines(session: Session, day: int, week: Week, means: Means, names: Names) -> Iterator[LineLoads]:
    for line in lines(session, day, week, means.table):
        doing = [athlete for athlete in line.athletes if names is None or athlete.name in names]
        if week.squad is not None and not doing:
            continue
        tables = tuple(_table(sets, doing) for sets in sets_of(line, week, means.table))
        crowd = _crowd(tables, week) if names is None else None
        yield LineLoads(line, _whose(line, week), tables, means.easier(line.movement), crowd)


def _whose(line: Line, week: Week) -> str:
    """Who does a line, by name; empty where all who train do, and without a squad."""
    everybody = week.squad.training if week.squad else ()
    return "" if line.athletes == everybody else listed([athlete.name for athlete in line.athletes])


def _table(sets: Sets, doing: Iterable[Athlete]) -> Table:
    called = {athlete.name for athlete in doing}
    rows = [_row(one, sets) for one in sets.wanted if not one.athletes or called & _names(one)]
    return Table(sets, tuple(_folded(rows)))


def _row(wanted: Wanted, sets: Sets) -> Row:
    carried = wanted.carried
    who = EVERYBODY if wanted.everybody or not wanted.athletes else wanted.athletes[0].name
    if carried is None:
        return Row(who, wanted, None)
    return Row(who, wanted, carried.put if sets.what == "work" else carried.lightest_put)


def _folded(rows: list[Row]) -> list[Row]:
    """One row where there is no number for anybody, for the same reason that is no one's own."""
    reasons = {row.wanted.asked for row in rows}
    reason = next(iter(reasons), None)
    if len(rows) > 1 and len(reasons) == 1 and isinstance(reason, NoNumber) and reason.max is None:
        return [rows[0]._replace(who=EVERYBODY)]
    return rows


def _crowd(tables: tuple[Table, ...], week: Week) -> Crowd | None:
    """Who can't have the first work load while the others have theirs."""
    rows = next((table.rows for table in tables if table.sets.what == "work"), ())
    lifters = [(athlete, row.put) for row in rows for athlete in row.wanted.athletes if row.put]
    return at_once(lifters, week.gym) if week.gym and len(lifters) > 1 else None


def _names(wanted: Wanted) -> set[str]:
    return {athlete.name for athlete in wanted.athletes}


def _fault(wanted: Wanted) -> str | None:
    carried = wanted.carried
    return carried.loadable.fault if carried and isinstance(wanted.asked, Kilograms) else None
