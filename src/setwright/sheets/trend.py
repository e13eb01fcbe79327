"""The loads of one athlete through the records as one SVG, in mm, black on white: a chart a movement."""

import datetime as dt
from collections.abc import Iterator, Mapping, Sequence
from typing import Final, NamedTuple

from setwright.loads.estimates import FORMULAS
from setwright.model.room import kilograms
from setwright.reading.words import number
from setwright.records.trend import Point, Trend
from setwright.sheets.phrases import say
from setwright.sheets.svg import arrow_head, drawing, line, polyline, ring, text
from setwright.sheets.svg import path as stroke
from setwright.sheets.words import listed

WIDTH: Final = 120.0
PANEL: Final = 46.0
"""Width of the picture and height of each chart, mm (choice: as wide as the large picture of a movement)."""
TITLE: Final = 9.0
KEY: Final = 16.0
"""Height of the title above the charts and of the key below them, mm; choice."""
LEFT, RIGHT, TOP, LOW, FOOT = 18.0, 109.0, 9.5, 30.0, 36.5
"""The plot inside its chart, mm; the lowest figure lies at LOW, the line of days at FOOT; choice."""
LARGE: Final = 4.2
SMALL: Final = 3.5
"""Height of letters, mm (12 and 10 pt)."""
AXIS: Final = 0.25
LOAD: Final = 0.6
RANGE: Final = 0.3
"""Widths of lines, mm; choice (nothing that carries meaning is thinner than 0.2)."""
DOT: Final = 1.0
END: Final = 1.2
"""Radius of a dot and half the width of a range's ends, mm; choice."""
ASIDE: Final = 1.6
"""How far a range stands beside its dot, mm; choice."""
ROOM_SET: Final = 15.0
ROOM_DATE: Final = 24.0
"""Least distance of two labels, mm; the first and the last always stand; choice."""
HALO: Final[Mapping[str, str | float]] = {"stroke": "#fff", "stroke_width": 1.1, "paint_order": "stroke"}
"""White round letters that stand on a line; mm, choice."""
LETTERS: Final = 50
"""Most letters of a line of large type (choice: as many as the width holds)."""


class NothingToDraw(ValueError):
    """Raised when nothing is on record more than once."""


class _Scale(NamedTuple):
    """Where days and loads lie in a chart whose upper edge is ``top``; ``over`` is how far loads spread."""

    top: float
    first: dt.date
    days: int
    low: float
    over: float

    def at(self, on: dt.date, load: float) -> tuple[float, float]:
        across = LEFT + (on - self.first).days / self.days * (RIGHT - LEFT)
        return across, self.top + LOW - (load - self.low) / self.over * (LOW - TOP)


def trend_svg(name: str, trends: Sequence[Trend]) -> str:
    """A chart for each movement that is on record more than once: the heaviest sets and the maxes they give.

    Raises: NothingToDraw.
    """
    charts = [one for one in trends if len(one.points) > 1]
    if not charts:
        raise NothingToDraw(f"{name} has no load of a movement on record more than once; nothing is drawn")
    height = TITLE + len(charts) * PANEL + KEY
    told = say("trend.title", name=name)
    body = [text((0, LARGE), _cut(told), LARGE, font_weight="bold")]
    body += [piece for at, one in enumerate(charts) for piece in _chart(one, TITLE + at * PANEL)]
    body += _key(height - KEY)
    return drawing(WIDTH, height, ". ".join([told, *map(_in_words, charts)]), body) + "\n"


def _chart(trend: Trend, top: float) -> Iterator[str]:
    of = say("trend.added" if trend.added else "trend.chart", movement=trend.movement, unit=trend.unit)
    yield text((0, top + LARGE), _cut(of), LARGE)
    scale = _scale(trend, top)
    yield line((LEFT - 3, top + FOOT), (RIGHT + 4, top + FOOT), AXIS)
    ends = [(value, scale.at(scale.first, value)[1]) for value in (max(_loads(trend)), min(_loads(trend)))]
    for value, y in ends if ends[1][1] - ends[0][1] >= SMALL else ends[:1]:
        yield line((LEFT - 4.5, y), (LEFT - 3, y), AXIS)
        yield text((LEFT - 5.5, y + SMALL * 0.36), number(round(value, 1)), SMALL, text_anchor="end")
    places = [scale.at(point.on, _load(point.kg, trend)) for point in trend.points]
    yield stroke(polyline(places), LOAD)
    yield from (ring(place, DOT, LOAD) for place in places)
    yield from (piece for point in trend.points for piece in _range(point, trend, scale))
    yield from _labels(trend, places, top)


def _cut(words: str) -> str:
    return words if len(words) <= LETTERS else f"{words[: LETTERS - 1].rstrip()}…"


def _scale(trend: Trend, top: float) -> _Scale:
    loads = [*_loads(trend), *(kg for point in trend.points for kg in _ends(point, trend))]
    first, last = trend.points[0].on, trend.points[-1].on
    return _Scale(top, first, (last - first).days, min(loads), max(loads) - min(loads) or 1.0)


def _loads(trend: Trend) -> list[float]:
    return [_load(point.kg, trend) for point in trend.points]


def _load(kg: float, trend: Trend) -> float:
    return kg / kilograms(1.0, trend.unit)


def _ends(point: Point, trend: Trend) -> list[float]:
    """What is drawn of an estimated max: both ends, or the low one; nothing where the body is in it."""
    if point.estimate is None or trend.added:
        return []
    ends = [_load(kg, trend) for kg in point.estimate.kg]
    return ends[:1] if point.estimate.at_least else ends


def _range(point: Point, trend: Trend, scale: _Scale) -> Iterator[str]:
    """An estimated max beside its dot: a bar between its ends, or an arrow up from the low one."""
    ends = [scale.at(point.on, load) for load in _ends(point, trend)]
    for x, y in ends:
        yield line((x + ASIDE - END, y), (x + ASIDE + END, y), RANGE)
    if len(ends) == 1:
        ((x, y),) = ends
        yield line((x + ASIDE, y), (x + ASIDE, y - 2.4), RANGE)
        yield arrow_head((x + ASIDE, y - 3.4), (0.0, -1.0), 1.7)
    elif ends:
        (x, low), (_, high) = ends
        yield line((x + ASIDE, low), (x + ASIDE, high), RANGE)


def _labels(trend: Trend, places: Sequence[tuple[float, float]], top: float) -> Iterator[str]:
    """The sets below their rings and the days below the line, where there is room."""
    across = [x for x, _ in places]
    for at in _apart(across, ROOM_SET):
        x, y = places[at]
        said = _set(trend.points[at], trend)
        yield text((x, y + DOT + SMALL), said, SMALL, text_anchor="middle", **HALO)
    below = top + FOOT + SMALL * 1.4
    for at in _apart(across, ROOM_DATE):
        yield text((across[at], below), str(trend.points[at].on), SMALL, text_anchor="middle")


def _set(point: Point, trend: Trend) -> str:
    return f"{number(round(_load(point.kg, trend), 1))} × {number(point.reps)}"


def _apart(across: Sequence[float], room: float) -> list[int]:
    """Which places have a label, so that no two of them are nearer than ``room``; the last one has."""
    last = len(across) - 1
    found: list[int] = []
    for at, x in enumerate(across[:-1]):
        if across[last] - x >= room and (not found or x - across[found[-1]] >= room):
            found.append(at)
    return [*found, last]


def _key(top: float) -> Iterator[str]:
    first, then = ", ".join([*FORMULAS][:4]), listed([*FORMULAS][4:])
    words = (
        say("trend.key_ring"),
        say("trend.key_bar", formulas=first),
        say("trend.key_arrow", formulas=then),
    )
    yield line((0, top), (WIDTH, top), AXIS)
    yield from (text((0, top + 4.6 * at + SMALL + 0.8), said, SMALL) for at, said in enumerate(words))


def _in_words(trend: Trend) -> str:
    points = ", ".join(f"{point.on} {_set(point, trend)}" for point in trend.points)
    chart = say("trend.chart", movement=trend.movement, unit=trend.unit)
    return f"{chart}: {points}"
