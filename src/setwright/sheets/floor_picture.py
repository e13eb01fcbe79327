"""The floor as a picture: groups down, minutes across, hatching and a number for each block. No names."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

from setwright.floor.room import Floor, Stay, letter
from setwright.sheets.phrases import say
from setwright.sheets.svg import Box, drawing, hatch, line, rectangle, text

MINUTE: Final = 60
HATCHES: Final = (None, (0.2, 2.0), (0.7, 2.0))
"""Width and pitch of the slanted lines of a block, mm, in turn: none, thin, thick (choice)."""
FRAME: Final = 0.35
TICK: Final = 0.2
"""Widths of lines, mm; choice."""
LARGE: Final = 0.5
SMALL: Final = 0.35
"""Heights of letters as a share of a row; choice."""
TICKS: Final = (5, 10, 15, 20, 30, 60)
"""Minutes from one written time to the next, the first that leaves room; choice."""
APART: Final = 2.2
"""Least distance of written times in heights of a row; choice."""


@dataclass(frozen=True, slots=True)
class _Form:
    """Measures, mm: ``left`` is where the minutes begin, ``row`` the height of a group's row."""

    left: float
    row: float
    a_minute: float

    def at(self, seconds: float) -> float:
        return self.left + seconds / MINUTE * self.a_minute

    def top(self, row: int) -> float:
        return FRAME + row * self.row


def floor_svg(floor: Floor, width: float = 180.0, row: float = 9.0) -> str:
    """The picture, ``width`` mm wide, each group ``row`` mm high with a row for the minutes below.

    Nobody is named: groups are letters, blocks their numbers in the session.
    """
    whole = (floor.warm_up_s + floor.finish_s) / MINUTE
    form = _Form(row, row, (width - 2 * row) / max(whole, 1.0))
    rows = len(floor.groups)
    body = [part for group in range(rows) for part in _group(floor, form, group)]
    body += _minutes(form, whole, rows)
    label = say("picture.floor", session=floor.session.title, groups=rows, minutes=f"{whole:.0f}")
    return drawing(width, form.top(rows + 1) + FRAME, label, body)


def _group(floor: Floor, form: _Form, group: int) -> Iterator[str]:
    top = form.top(group)
    yield text(
        (0, top + form.row * (0.5 + LARGE * SMALL)), letter(group), form.row * LARGE, font_weight="bold"
    )
    if floor.warm_up_s:
        box = (form.at(0), top, form.at(floor.warm_up_s), top + form.row)
        yield _box(form, box, say("picture.warm_up"), None)
    for stay in floor.of_group(group):
        yield _stay(floor, form, stay, top)


def _stay(floor: Floor, form: _Form, stay: Stay, top: float) -> str:
    left, right = (form.at(floor.warm_up_s + at) for at in (stay.start_s, stay.end_s))
    look = HATCHES[(stay.block.number - 1) % len(HATCHES)]
    return _box(form, (left, top, right, top + form.row), str(stay.block.number), look)


def _box(form: _Form, box: Box, words: str, look: tuple[float, float] | None) -> str:
    """A box with its words on white in the middle; without them where they don't fit."""
    left, top, right, bottom = box
    size = form.row * SMALL
    half = size * (0.35 * len(words) + 0.2)
    middle, centre = (left + right) / 2, (top + bottom) / 2
    fits = 2 * half <= right - left
    plate = (middle - half, centre - size * 0.7, middle + half, centre + size * 0.7)
    return (
        rectangle(box, fill="#fff", stroke="none")
        + (hatch(box, *look) if look else "")
        + rectangle(box, stroke_width=FRAME)
        + (rectangle(plate, fill="#fff", stroke="none") if fits else "")
        + (text((middle, centre + size * SMALL), words, size, text_anchor="middle") if fits else "")
    )


def _minutes(form: _Form, whole: float, rows: int) -> Iterator[str]:
    bottom = form.top(rows)
    step = next((one for one in TICKS if one * form.a_minute >= APART * form.row), TICKS[-1])
    for minute in range(0, int(whole) + 1, step):
        at = form.at(minute * MINUTE)
        yield line((at, bottom), (at, bottom + form.row / 4), TICK)
        yield text((at, bottom + form.row * 0.75), str(minute), form.row * SMALL, text_anchor="middle")
