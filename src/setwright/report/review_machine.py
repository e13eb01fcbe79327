"""A look back as JSON, for programs: no names, reasons, remarks or body mass unless they are asked for."""

from collections.abc import Iterator, Mapping
from typing import Any, Final

from setwright.loads.estimates import FORMULAS
from setwright.model.room import kilograms
from setwright.reading.done import Done, SetDone
from setwright.reading.done_typed import load_typed
from setwright.records.fitting import Fitted, Line
from setwright.records.planned import in_short
from setwright.records.review import LookBack, Review, Reviewed, effort_off
from setwright.records.trend import Point, Trend
from setwright.report.as_json import as_json
from setwright.report.machine import coverage_json

FORMAT: Final = "setwright-review/1"


def review_json(found: LookBack, *, with_names: bool = False) -> str:
    """The document, with a line end. Without names athletes are numbered in the order of the squad."""
    called = {name: name if with_names else f"athlete {n}" for n, name in enumerate(found.names, 1)}
    data = {
        "format": FORMAT,
        "weeks": [_week(one, called, with_names=with_names) for one in found.weeks],
        "loads": [
            _trend(called[name], one, with_names=with_names) for name, trends in found.loads for one in trends
        ],
        "max_formulas": list(FORMULAS),
    }
    return as_json(data)


def _week(week: Review, called: Mapping[str, str], *, with_names: bool) -> dict[str, Any]:
    done = week.done
    return {
        "file": str(week.plan.file),
        "week": done.week.number,
        "sessions": len(done.week.sessions),
        "not_on_record": list(done.missed),
        "athletes": [_athlete(one, called[one.name], with_names=with_names) for one in week.athletes],
    }


def _athlete(one: Reviewed, name: str, *, with_names: bool) -> dict[str, Any]:
    return {
        "athlete": name,
        "came": one.came,
        "sessions": one.planned_sessions,
        "lines": [_line(fit, line, one, with_names=with_names) for fit, line in one.lines],
        "planned": coverage_json(one.planned),
        "achieved": coverage_json(one.achieved),
    } | ({"notes": list(one.notes)} if with_names else {})


def _line(fit: Fitted, line: Line, one: Reviewed, *, with_names: bool) -> dict[str, Any]:
    done = line.done.done if line.done else None
    planned = line.planned
    return {
        "session": fit.session.title,
        "date": str(fit.record.date) if fit.record.date else None,
        "movement": line.name,
        "instead_of": planned.line.name if planned and line.done and line.done.instead_of else None,
        "planned": in_short(planned, fit.week, one.athlete) if planned else None,
        "state": done.kind if done else "not written",
        "sets": list(_sets(done)) if done else [],
        "effort_off": effort_off(line),
    } | ({"reason": done.reason if done else None} if with_names else {})


def _sets(done: Done) -> Iterator[dict[str, Any]]:
    for one in done.sets:
        yield {
            "load": load_typed(one.load) if one.load else None,
            "amount": one.amount.span.low,
            "amount_unit": one.amount.unit,
            "left": _left(one),
        }


def _left(one: SetDone) -> dict[str, float] | None:
    """Repetitions in reserve as they were said."""
    ends = one.effort.rir if one.effort else None
    return {"low": ends[0], "high": ends[1]} if ends else None


def _trend(name: str, trend: Trend, *, with_names: bool) -> dict[str, Any]:
    """A movement through the records; a max with the body in it tells the body mass, so it needs names."""
    points = trend.points
    if trend.added and not with_names:
        points = tuple(point._replace(estimate=None) for point in points)
    return {
        "athlete": name,
        "movement": trend.movement,
        "unit": trend.unit,
        "added_to_the_body": trend.added,
        "points": [_point(point, trend) for point in points],
        "stalled": trend.stalled,
        "jump": trend.jump,
    }


def _point(point: Point, trend: Trend) -> dict[str, Any]:
    best = point.estimate
    low, high = (_in(kg, trend) for kg in best.kg) if best else (None, None)
    return {
        "date": str(point.on),
        "load": _in(point.kg, trend),
        "reps": point.reps,
        "estimated_max": {"low": low, "high": None if best.at_least else high} if best else None,
    }


def _in(kg: float, trend: Trend) -> float:
    """Kilograms in the unit of the plan."""
    return round(kg / kilograms(1.0, trend.unit), 2)
