"""The loads of a week as programs read them: JSON in the form setwright-loads/1. Names stand in it."""

from collections.abc import Iterable
from typing import Any, Final

from setwright.loads.asked_for import NoNumber
from setwright.loads.typed import exact
from setwright.model.plan import Week
from setwright.reading.habits import Habits
from setwright.report.as_json import as_json
from setwright.report.loads_said import Table as Context
from setwright.report.loads_said import sets_said, told
from setwright.report.loads_view import DayLoads, LineLoads, Row, Table

FORMAT: Final = "setwright-loads/1"
DECIMALS: Final = 4
"""Decimals of a kilogram: a tenth of a gram."""


def loads_json(week: Week, days: Iterable[DayLoads]) -> str:
    """The loads of a week as JSON, with a line end. Masses are in kg; ``unit`` is the one typed."""
    habits = Habits(unit=week.unit, dose_order=week.dose_order, percent_of=week.percent_of, sides=week.sides)
    data = {
        "format": FORMAT,
        "plan": week.name,
        "week": week.number,
        "sessions": [
            {"session": day.session.title, "lines": [_line(one, habits) for one in day.lines]} for day in days
        ],
    }
    return as_json(data)


def _line(one: LineLoads, habits: Habits) -> dict[str, Any]:
    crowd = one.crowd
    return {
        "line": one.line.line,
        "movement": one.line.movement["name"],
        "dose": one.line.item.dose.text if one.line.item.dose else None,
        "sets": [_sets(table, one, habits) for table in one.tables],
        "not_at_once": None
        if crowd is None
        else {
            "athletes": [athlete.name for athlete in crowd.lifters],
            "short": [short.words for short in crowd.short],
        },
    }


def _sets(table: Table, one: LineLoads, habits: Habits) -> dict[str, Any]:
    return {
        "what": table.sets.what,
        "asked": sets_said(table.sets, habits),
        "loads": [_row(row, table, one) for row in table.rows],
    }


def _row(row: Row, table: Table, one: LineLoads) -> dict[str, Any]:
    asked, carried = row.wanted.asked, row.wanted.carried
    kilograms = None if isinstance(asked, NoNumber) else asked
    said = told(row.wanted, row.put, Context(table.sets, one.line.movement))
    off = carried and row.put and carried.loadable.off_percent(row.put)
    return {
        "athletes": [athlete.name for athlete in row.wanted.athletes],
        "asked_kg": kilograms and [round(end, DECIMALS) for end in kilograms.kg],
        "way": kilograms and kilograms.way,
        "unit": kilograms and kilograms.unit,
        "of": kilograms and kilograms.of and kilograms.of.said,
        "load_kg": kilograms and _load_kg(row, kilograms.pick),
        "load": None if kilograms is None or row.missing else said.load,
        "plates": said.how or None,
        "off_percent": None if off is None else round(off, 1),
        "why_not": asked.why if isinstance(asked, NoNumber) else carried and carried.loadable.fault,
    }


def _load_kg(row: Row, pick: float) -> float | None:
    """What is put on; what was asked where no gym file rounds it."""
    if row.missing:
        return None
    return round(float(row.put.kg if row.put else exact(pick)), DECIMALS)
