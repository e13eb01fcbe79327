"""The floor as a picture: groups down, minutes across, hatching and a number for each block. No names."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from setwright.floor.room import Floor, Stay, letter
from setwright.reading.words import MINUTE_S
from setwright.sheets.clock_plan import of_the_day
from setwright.sheets.phrases import say
from setwright.sheets.svg import Box, drawing, hatch, line, rectangle, text

HATCHES: Final = (None, (0.2, 2.0), (0.7, 2.0))
"""Width and pitch of the slanted lines of a block, mm, in turn: none, thin, thick (choice)."""
FRAME: Final = 0.35
TICK: Final = 0.2
"""Widths of lines, mm; choice."""
LARGE: Final = 0.75
SMALL: Final = 0.35
"""Heights of type as a share of a row: letters of groups and numbers of blocks, and other words; choice."""
MIDDLE: Final = 0.35
"""Half the height of a capital as a share of its type: as much as it stands under the middle of its row."""
PLATE: Final = 0.5
"""Half the height of the white behind a word as a share of its type; choice."""
A_LETTER: Final = 0.65
ROUND: Final = 0.3
"""Width of a letter, and of the white left and right of a word together, as a share of the type; choice."""
LEAST: Final = 0.5
"""How much smaller a word may be in a narrow box; choice."""
MARK: Final = 0.15
BASE: Final = 0.5
UNDER: Final = 0.6
"""Under the lowest row, in heights of a row: a mark of a time, the foot of its figures, the edge; choice."""
TICKS: Final = (5, 10, 15, 20, 30, 60)
"""Minutes from one written time to the next, the first that leaves room; choice."""
APART: Final = 2.2
"""Least distance of written times in heights of a row; choice."""


@dataclass(frozen=True, slots=True)
class Bar:
    """A group at a block, by its number, between two minutes of the session."""

    number: int
    begins: float
    ends: float


@dataclass(frozen=True, slots=True)
class Chart:
    """A floor without its people: what every group does when. Minutes from the ``start``, a time of the day.

    None where the plan says no time.
    """

    session: str
    start: str | None
    warm_up: float
    whole: float
    groups: tuple[tuple[Bar, ...], ...]


@dataclass(frozen=True, slots=True)
class _Form:
    """Measures, mm: ``left`` is where the minutes begin, ``row`` the height of a group's row."""

    left: float
    row: float
    a_minute: float

    def at(self, minute: float) -> float:
        return self.left + minute * self.a_minute

    def top(self, row: int) -> float:
        return FRAME + row * self.row


def chart_of(floor: Floor) -> Chart:
    """What the picture shows of a floor. Nobody is named: groups are letters, blocks their numbers."""
    return Chart(
        session=floor.session.title,
        start=floor.session.start,
        warm_up=floor.warm_up_s / MINUTE_S,
        whole=floor.whole_s / MINUTE_S,
        groups=tuple(
            tuple(_bar(floor, stay) for stay in floor.of_group(group)) for group in range(len(floor.groups))
        ),
    )


def _bar(floor: Floor, stay: Stay) -> Bar:
    begins, ends = ((floor.warm_up_s + at) / MINUTE_S for at in (stay.start_s, stay.end_s))
    return Bar(stay.block.number, begins, ends)


def floor_svg(chart: Chart, width: float = 180.0, row: float = 9.0) -> str:
    """The picture, ``width`` mm wide, each group ``row`` mm high, with the minutes below."""
    form = _Form(row, row, (width - 2 * row) / max(chart.whole, 1.0))
    rows = len(chart.groups)
    body = [part for group in range(rows) for part in _group(chart, form, group)]
    body += _times(chart, form)
    label = say("picture.floor", session=chart.session, groups=rows, minutes=f"{chart.whole:.0f}")
    return drawing(width, form.top(rows) + UNDER * row + FRAME, label, body)


def _group(chart: Chart, form: _Form, group: int) -> Iterator[str]:
    top = form.top(group)
    size = form.row * LARGE
    yield text((0, top + form.row / 2 + size * MIDDLE), letter(group), size, font_weight="bold")
    if chart.warm_up:
        box = (form.at(0), top, form.at(chart.warm_up), top + form.row)
        yield _box(box, say("picture.warm_up"), form.row * SMALL, None)
    for bar in chart.groups[group]:
        box = (form.at(bar.begins), top, form.at(bar.ends), top + form.row)
        yield _box(box, str(bar.number), size, HATCHES[(bar.number - 1) % len(HATCHES)])


def _box(box: Box, words: str, size: float, look: tuple[float, float] | None) -> str:
    """A box with its words on white in the middle, smaller where it is narrow; without them in a sliver."""
    left, top, right, bottom = box
    room = (right - left) / (A_LETTER * len(words) + ROUND)
    fits, size = room >= LEAST * size, min(size, room)
    half = size * (A_LETTER * len(words) + ROUND) / 2
    middle, centre = (left + right) / 2, (top + bottom) / 2
    plate = (middle - half, centre - size * PLATE, middle + half, centre + size * PLATE)
    return (
        rectangle(box, fill="#fff", stroke="none")
        + (hatch(box, *look) if look else "")
        + rectangle(box, stroke_width=FRAME)
        + (rectangle(plate, fill="#fff", stroke="none") if fits else "")
        + (text((middle, centre + size * MIDDLE), words, size, text_anchor="middle") if fits else "")
    )


def _times(chart: Chart, form: _Form) -> Iterator[str]:
    bottom = form.top(len(chart.groups))
    step = next((one for one in TICKS if one * form.a_minute >= APART * form.row), TICKS[-1])
    for minute in range(0, int(chart.whole) + 1, step):
        at = form.at(minute)
        time = of_the_day(chart.start, minute) if chart.start else str(minute)
        yield line((at, bottom), (at, bottom + form.row * MARK), TICK)
        yield text((at, bottom + form.row * BASE), time, form.row * SMALL, text_anchor="middle")
