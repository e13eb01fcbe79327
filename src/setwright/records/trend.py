"""How an athlete's loads went from record to record, and the max that each heaviest set speaks for."""

import datetime as dt
import math
from collections.abc import Iterator, Sequence
from typing import Final, NamedTuple

from setwright.loads.bodyweight import Movement, added, by_bodyweight, lifted
from setwright.loads.estimates import TooManyReps, estimated_max
from setwright.loads.ranges import Range
from setwright.model.people import Athlete
from setwright.reading.done import SetDone
from setwright.reading.measures import Unit
from setwright.records.fitting import Fitted, Line
from setwright.records.keeping import Plan
from setwright.records.week_done import WeekDone

STALLED: Final = 3
"""Records in a row without more load or repetitions that are called a stall (choice)."""
JUMP: Final = 0.10
"""Growth of a load from one record to the next that is called a jump.

The upper end of the 2 to 10 % of Ratamess NA et al., Med Sci Sports Exerc 2009;41:687-708 (abstract).
"""


class Estimate(NamedTuple):
    """A max in kg estimated from one set, with the share of the body that a bodyweight movement lifts.

    ``at_least``: nobody said how many repetitions were left, so only the low end holds.
    """

    kg: Range
    at_least: bool


class Point(NamedTuple):
    """The heaviest set of a movement in one record: its day, the load in kg, and the repetitions with it.

    ``estimate``: the max that it speaks for; None where there is none.
    """

    on: dt.date
    kg: float
    reps: float
    estimate: Estimate | None = None


class Trend(NamedTuple):
    """A movement of one athlete through the records, by date. ``added``: the load is added to the body.

    ``unit``: in which the plan writes loads.
    """

    movement: str
    added: bool
    points: tuple[Point, ...]
    unit: Unit = "kg"

    @property
    def stalled(self) -> int:
        """The last records in a row that were not better than those before; 0 for fewer than three."""
        lifted = [(point.kg, point.reps) for point in self.points]
        since = max((n for n in range(1, len(lifted)) if lifted[n] > max(lifted[:n])), default=0)
        run = len(lifted) - since
        return run if run >= STALLED else 0

    @property
    def jump(self) -> float:
        """How much the load grew in the last record, as a share; 0 for less than a jump.

        Of what is added to the body it is always 0: the body is most of that load.
        """
        before = self.points[-2:-1]
        if self.added or not before or before[0].kg <= 0:
            return 0.0
        grown = round(self.points[-1].kg / before[0].kg - 1, 6)
        return grown if grown > JUMP else 0.0


Seen = Sequence[tuple[Plan, WeekDone]]
"""Weeks that something is on record of, each with its plan."""


def trends(weeks: Seen, name: str) -> tuple[Trend, ...]:
    """Every movement of an athlete that was recorded with a load, in the order first met."""
    found: dict[str, dict[dt.date, Point]] = {}
    called: dict[str, Trend] = {}
    for plan, done in weeks:
        for fit, athlete, line in _lines_of(done, name):
            key = plan.table.find(line.name).key
            movement = plan.table.movement(key) if key else None
            point = _point(fit, athlete, line, movement) if movement else None
            if key and movement and point:
                unit = fit.record.unit or done.week.unit or "kg"
                called.setdefault(key, Trend(line.name, by_bodyweight(movement), (), unit))
                days = found.setdefault(key, {})
                days[point.on] = max(point, days.get(point.on, point), key=lambda one: (one.kg, one.reps))
    return tuple(called[key]._replace(points=tuple(sorted(days.values()))) for key, days in found.items())


def _lines_of(done: WeekDone, name: str) -> Iterator[tuple[Fitted, Athlete | None, Line]]:
    for fit in done.records:
        for one in fit.athletes:
            if one.is_called(name):
                yield from ((fit, one.athlete, line) for line in one.lines)


def _point(fit: Fitted, athlete: Athlete | None, line: Line, movement: Movement) -> Point | None:
    """The heaviest set of a line that has a load in kg or lb and repetitions; of equal ones the hardest."""
    done = line.done.done if line.done else None
    if done is None or fit.record.date is None:
        return None
    sets = [
        (added(one.load, movement).low, one.amount.span.low, -_left(one)[0], one)
        for one in done.sets
        if one.load and one.load.kind in ("mass", "bodyweight") and _repeated(one)
    ]
    if not sets:
        return None
    kg, reps, _, heaviest = max(sets, key=lambda one: one[:3])
    return Point(fit.record.date, kg, reps, _estimate(heaviest, athlete, movement))


def _repeated(one: SetDone) -> bool:
    return one.amount.unit == "reps" and one.amount.span.low > 0


def _left(one: SetDone) -> tuple[float, float]:
    """Repetitions in reserve as they were said; without end where nobody did."""
    return (one.effort.rir if one.effort else None) or (math.inf, math.inf)


def _estimate(one: SetDone, athlete: Athlete | None, movement: Movement) -> Estimate | None:
    """The max from the repetitions done and those that were left."""
    assert one.load is not None
    load, (low, high) = lifted(one.load, athlete, movement), _left(one)
    unknown = low == math.inf
    fewest, most = (0, 0) if unknown else (math.floor(low), math.ceil(high))
    reps = int(one.amount.span.low)
    if load is None or load.low <= 0:
        return None
    try:
        ends = (estimated_max(load.low, reps + fewest).low, estimated_max(load.high, reps + most).high)
    except TooManyReps:
        return None
    return Estimate(Range(*ends), at_least=unknown)
