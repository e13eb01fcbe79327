"""The floor of a session for the coach's screen: groups, clock, conflicts, what to put out."""

from collections.abc import Iterator
from typing import Final

from setwright.floor.room import Floor, Stay, letter
from setwright.floor.schedule import LONG_WAIT_S
from setwright.floor.today import Today
from setwright.floor.ways import Way
from setwright.reading.words import MINUTE_S
from setwright.report.floor_chart import chart
from setwright.report.floor_cut import cut_lines
from setwright.report.floor_day import on_the_day
from setwright.report.floor_setup import set_up_lines
from setwright.report.phrases import joined
from setwright.report.wrapping import wrapped

TO_THE_S: Final = 5
"""Rests are told to the nearest so many seconds (choice)."""
CLOCK: Final = " " * 17
"""What a line of the clock goes on under."""


def floor_text(today: Today) -> str:
    """The whole of it; ends with a line end. Names of athletes stand in it: it is not for the wall."""
    floor = today.floor
    sections = [
        _head(floor),
        list(cut_lines(today)),
        _groups(floor),
        list(chart(floor)),
        ["Minute by minute", *_clock(floor)],
        _wrong(today),
        ["Put out, in this order", *set_up_lines(floor)],
        ["On the day", *on_the_day(today)],
    ]
    return "\n\n".join("\n".join(lines) for lines in sections if lines) + "\n"


def _head(floor: Floor) -> list[str]:
    people = sum(map(len, floor.groups))
    who = f"{people} {'person' if people == 1 else 'people'}"
    groups = "1 group" if len(floor.groups) == 1 else f"{len(floor.groups)} groups"
    ends = round(floor.whole_s / MINUTE_S)
    given = f" of {floor.session.minutes:g}" if floor.session.minutes is not None else ""
    first = f"{floor.session.title}: {who} in {groups}, {ends}{given} minutes"
    return [wrapped(first), wrapped(how_good(floor))]


def how_good(floor: Floor) -> str:
    """How far the timetable is from the least possible."""
    off = round((floor.finish_s - floor.least_s) / MINUTE_S)
    if not off:
        return "No order of the blocks ends earlier."
    if floor.proved:
        return "Every order of the blocks was tried; none is better."
    return f"Not every order was tried: at most {off} min could be saved."


def _groups(floor: Floor) -> list[str]:
    lines = (
        wrapped(", ".join(one.name for one in group), f"  {letter(at):<3}", "     ")
        for at, group in enumerate(floor.groups)
    )
    return ["Groups", *lines]


def _clock(floor: Floor) -> Iterator[str]:
    for at in range(len(floor.groups)):
        end = 0.0
        for stay in floor.of_group(at):
            if stay.start_s - end > MINUTE_S:
                yield _told(floor, at, end, stay.start_s, _meanwhile(stay, stay.start_s - end))
            yield _told(floor, at, stay.start_s, stay.end_s, _doing(floor, stay))
            end = stay.end_s


def _told(floor: Floor, group: int, start_s: float, end_s: float, words: str) -> str:
    start, end = (round((floor.warm_up_s + at) / MINUTE_S) for at in (start_s, end_s))
    return wrapped(words, f"  {letter(group):<3}{start:>3} to {end:>3}  ", CLOCK)


def _doing(floor: Floor, stay: Stay) -> str:
    told = [*(_written(floor, stay) if stay.people else ()), *map(_otherwise, stay.otherwise)]
    return f"{stay.block.number} {'; '.join(told)}"


def _written(floor: Floor, stay: Stay) -> Iterator[str]:
    some = len(stay.people) < len(floor.groups[stay.group])
    yield stay.block.name + (f" ({joined(stay.people, 'and')} only)" if some else "")
    if stay.rest_s is not None:
        yield f"rest {clock(stay.rest_s)}"


def _otherwise(way: Way) -> str:
    return f"{joined(way.people, 'and')}: {joined([block.name for block in way.blocks], 'then')}"


def _meanwhile(stay: Stay, wait_s: float) -> str:
    """What an idle group does."""
    if wait_s <= LONG_WAIT_S:
        return "wait"
    warm_up = "warm-up sets for it at the side"
    return (
        f"wait for {stay.block.number}: {warm_up if stay.block.warm_up_s else 'easy trunk work on the floor'}"
    )


def clock(seconds: float) -> str:
    """Minutes and seconds, to the nearest five.

    >>> clock(132), clock(58)
    ('2:10', '1:00')
    """
    minutes, rest = divmod(TO_THE_S * round(seconds / TO_THE_S), MINUTE_S)
    return f"{minutes}:{rest:02}"


def _wrong(today: Today) -> list[str]:
    if not today.conflicts:
        return ["Nothing stands in the way."]
    told = (
        line
        for one in today.conflicts
        for line in (wrapped(one.text, "  - ", "    "), wrapped(one.change, "    change: ", "      "))
    )
    return [f"What will go wrong ({len(today.conflicts)})", *told]
