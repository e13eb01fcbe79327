"""The floor as a chart in characters: groups down, minutes across, the number of the block in each place."""

import math
from collections.abc import Iterator
from string import ascii_lowercase
from typing import Final

from setwright.floor.room import Floor, letter
from setwright.reading.words import MINUTE_S
from setwright.report.wrapping import WIDTH

MARGIN: Final = 5
"""Columns before the first minute."""
WARM_UP, IDLE = "w", "."
MARKS: Final = "123456789" + ascii_lowercase.replace(WARM_UP, "")
"""What stands for the blocks, the first one first; more than these repeat the last."""
TICK: Final = 10
"""Columns from one written minute to the next."""


def chart(floor: Floor) -> Iterator[str]:
    """Lines of at most 80 columns; one column is a minute, or so many more that the session fits."""
    whole = floor.whole_s / MINUTE_S
    step = max(1, math.ceil(whole / (WIDTH - MARGIN)))
    columns = math.ceil(whole / step)
    each = "a minute" if step == 1 else f"{step} minutes"
    yield f"Groups down, minutes across ({each} a column; {WARM_UP} warm-up, {IDLE} free)"
    ticks = "".join(f"{at * step:<{TICK}}" for at in range(0, columns, TICK))
    yield f"{'':{MARGIN}}{ticks}".rstrip()
    for group in range(len(floor.groups)):
        yield f"  {letter(group):<3}" + "".join(_mark(floor, group, at * step) for at in range(columns))


def mark(number: int) -> str:
    """The character of a block.

    >>> mark(1), mark(10), mark(99)
    ('1', 'a', 'z')
    """
    return MARKS[min(number, len(MARKS)) - 1]


def _mark(floor: Floor, group: int, minute: int) -> str:
    at = minute * MINUTE_S - floor.warm_up_s
    if at < 0:
        return WARM_UP
    here = (stay for stay in floor.of_group(group) if stay.start_s <= at < stay.end_s)
    return next((mark(stay.block.number) for stay in here), IDLE)
