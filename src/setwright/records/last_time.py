"""What was lifted last time, for the lines that ask for it: from the kept records of the weeks before."""

from collections.abc import Iterator
from pathlib import Path
from typing import Final

from setwright.library.table import Library
from setwright.model.dates import session_date
from setwright.model.plan import Lifted, Session, Week
from setwright.model.room import kilograms
from setwright.reading.dose import Load
from setwright.records.before import WeekOfPlan, back_from
from setwright.records.keeping import Plan
from setwright.records.line_keys import Told, lines_of
from setwright.records.lines_done import LineOfWeek, lines_done
from setwright.records.outcome import outcome
from setwright.records.own_step import figure_of
from setwright.records.planned import loads_of
from setwright.records.week_done import week_done

ASKS: Final = "last"
"""The kind of load that is more or less than last time."""


def fed(file: Path, weeks: tuple[Week, ...], table: Library) -> tuple[Week, ...]:
    """The weeks of a plan file with what was lifted last time."""
    return with_last_time(Plan(file, weeks, table)).weeks


def with_last_time(plan: Plan) -> Plan:
    """The plan with what was lifted last time wherever a load of it asks for that.

    Last time is the last session with that movement on record, of this plan and of those that it follows;
    last week is of the weeks before alone. What was done "as planned" counts with the load that was planned.
    """
    weeks = tuple(week.model_copy(update={"lifted": tuple(_lifted(plan, week))}) for week in plan.weeks)
    return plan._replace(weeks=weeks)


def _lifted(plan: Plan, week: Week) -> Iterator[Lifted]:
    for told in lines_of(week):
        asked = [load for load in loads_of(told.planned, week, told.athlete) if load.kind == ASKS]
        kg = _last(plan, week, told, asked[0].name) if asked and told.key.who else None
        if kg is not None and told.key.who:
            yield Lifted(who=told.key.who, place=told.planned.line.place, kg=kg)


def _last(plan: Plan, week: Week, asks: Told, name: str | None) -> float | None:
    """The kilograms of the last time; a load that was itself more than last time goes further back."""
    more = 0.0
    for load in _loads(plan, week, asks, name):
        figure = figure_of(load)
        if load.kind in ("mass", "bodyweight") and figure is not None:
            return kilograms(figure, load.unit) + more
        if load.kind != ASKS or load.unit not in ("kg", "lb"):
            return None
        more += kilograms(load.plus or 0.0, load.unit)
    return None


def _loads(plan: Plan, week: Week, asks: Told, name: str | None) -> Iterator[Load]:
    """The loads of the movement that were lifted before, the last first."""
    this = WeekOfPlan(plan, week.number)
    for here in back_from(this):
        is_this = here == this
        if is_this and name == "last week":
            continue
        done = week_done(here.plan, here.week)
        for one in sorted(
            lines_done(done), key=lambda one: _order(done.week, one.told.session), reverse=True
        ):
            before = not is_this or _order(week, one.told.session) < _order(week, asks.session)
            if before and _is_of(one, asks) and one.line.is_done:
                load = outcome(one.line, done.week, one.told.athlete).load
                if load is not None:
                    yield load


def _is_of(one: LineOfWeek, asks: Told) -> bool:
    same = (one.told.key.who, one.told.key.movement) == (asks.key.who, asks.key.movement)
    return same and not (one.line.done and one.line.done.instead_of)


def _order(week: Week, session: Session) -> tuple[str, int]:
    """When a session is held: by its date, else by its place in the week."""
    date = session_date(week, session)
    at = next((at for at, one in enumerate(week.sessions) if one is session), len(week.sessions))
    return date.isoformat() if date else "", at
