"""How an athlete's loads went: a chart a movement, with the max that each heaviest set speaks for."""

from collections.abc import Iterator, Sequence
from typing import Final

from setwright.loads.estimates import FORMULAS, MOST_REPS
from setwright.model.room import kilograms
from setwright.reading.words import listed, number, plural
from setwright.records.trend import Estimate, Point, Trend
from setwright.report.wrapping import WIDTH, plain, wrapped

BAR: Final = 28
"""Columns of the longest bar of a chart (choice)."""
SIGN: Final = "#"
"""What a bar is made of; no colour, and any terminal has it."""
HOW_ESTIMATED: Final = (
    f"max: estimated from that set, not tested: the lowest and the highest of {listed([*FORMULAS])}, by the "
    'repetitions done and those said to be left; "at least" where nobody said how many. None from more than '
    f"{MOST_REPS} repetitions."
)
"""What stands once under all charts."""


def trends_text(name: str, trends: Sequence[Trend]) -> str:
    """One athlete's loads through the records, and maxes from what is on record once, with a line end.

    Empty when there is neither.
    """
    charts = ["\n".join(_chart(one)) for one in trends if len(one.points) > 1]
    blocks = [f"{plain(name)}: the heaviest set of each record", *charts] if charts else []
    once = [told for one in trends if len(one.points) == 1 for told in _once(one)]
    if once:
        blocks.append(wrapped(f"{name}, max from one record: {'; '.join(once)}", rest="  "))
    return "\n\n".join(blocks) + "\n" if blocks else ""


def said_of(trend: Trend) -> str:
    """What is to be said of a trend: that it stands still, that it jumped; or nothing."""
    said = [f"the same or less for {plural(trend.stalled, 'record')}"] if trend.stalled else []
    said += [f"up by {trend.jump:.0%} in the last one"] if trend.jump else []
    return ", ".join(said)


def max_said(estimate: Estimate, trend: Trend) -> str:
    """An estimated max in the unit of the plan: "50.7 to 53.3", "at least 47.4"."""
    low, high = (number(round(_in(kg, trend), 1)) for kg in estimate.kg)
    return f"at least {low}" if estimate.at_least else low if low == high else f"{low} to {high}"


def _in(kg: float, trend: Trend) -> float:
    return kg / kilograms(1.0, trend.unit)


def _once(trend: Trend) -> Iterator[str]:
    (point,) = trend.points
    if point.estimate:
        body = " with the body" if trend.added else ""
        yield f"{trend.movement} {max_said(point.estimate, trend)} {trend.unit}{body}"


def _chart(trend: Trend) -> Iterator[str]:
    more = " added to the body, max with the body" if trend.added else ""
    told = said_of(trend)
    yield wrapped(f"{trend.movement}, {trend.unit}{more}{f': {told}' if told else ''}", "  ", "    ")
    most = max(point.kg for point in trend.points)
    for point in trend.points:
        best = f"max {max_said(point.estimate, trend)}" if point.estimate else ""
        bar = _bar(point.kg, most).ljust(BAR)
        yield f"    {point.on}  {_figure(point, trend)}  {bar}  {best}"[:WIDTH].rstrip()


def _figure(point: Point, trend: Trend) -> str:
    return f"{number(round(_in(point.kg, trend), 1)):>6} x {number(point.reps):<2}"


def _bar(kg: float, most: float) -> str:
    return SIGN * round(BAR * kg / most) if most > 0 else ""
