"""What the plan of the week that comes is called, and its file."""

import re
from typing import Final

_LAST_NUMBER: Final = re.compile(r"\d+(?=\D*$)")
_WEEK_NUMBER: Final = re.compile(r"\bweek\s+(\d{1,3})\b", re.IGNORECASE)
_WEEK: Final = re.compile(r"[\s,-]*\bweek[\s-]+\d{1,3}\b.*$", re.IGNORECASE)
_AGAIN: Final = re.compile(r"(?P<blank>[ -])again(?:[ -](?P<times>\d+))?$")


def week_number(name: str) -> int | None:
    """The number of its week that a plan's name tells.

    >>> week_number("Autumn block, week 3"), week_number("Winter 2027")
    (3, None)
    """
    match = _WEEK_NUMBER.search(name)
    return int(match[1]) if match else None


def next_name(name: str, weeks: int = 1) -> str:
    """The name of the week after: "week 4" for "week 3", else the name and "next week"."""
    number, first = week_number(name), _AGAIN.sub("", name)
    if number is None:
        return f"{first}, next week" if weeks else first
    return _WEEK_NUMBER.sub(lambda match: match[0].replace(match[1], str(number + weeks)), first, count=1)


def next_stem(stem: str, weeks: int = 1) -> str:
    """The file name of the week after: "week-4" for "week-3", else the name and "-next"."""
    return _counted(_AGAIN.sub("", stem), weeks) or (f"{stem}-next" if weeks else stem)


def in_block(name: str, week: int) -> str:
    """The name of a week of a block, which goes on from the number that the block's own name tells.

    >>> in_block("Winter block", 2), in_block("Hall, week 3", 2)
    ('Winter block, week 2', 'Hall, week 4')
    """
    return f"{name}, week {week}" if week_number(name) is None else next_name(name, week - 1)


def next_block(name: str) -> str:
    """The name of the first week of the block after, from that of the last week of a block.

    >>> next_block("Winter block, week 4"), next_block("Winter block 2, week 4")
    ('Winter block 2, week 1', 'Winter block 3, week 1')
    """
    return f"{_next_one(name, ' ')}, week 1"


def next_block_stem(stem: str) -> str:
    """The file name of it.

    >>> next_block_stem("block-week-4"), next_block_stem("block-2-week-4")
    ('block-2-week-1', 'block-3-week-1')
    """
    return f"{_next_one(stem, '-')}-week-1"


def again(name: str, blank: str = " ") -> str:
    """The name of the same week once more; ``blank``: what stands between the words.

    >>> again("Hall, week 3"), again("week-3-again", "-")
    ('Hall, week 3 again', 'week-3-again-2')
    """
    match = _AGAIN.search(name)
    if match is None:
        return f"{name}{blank}again"
    return f"{name[: match.start()]}{blank}again{blank}{int(match['times'] or 1) + 1}"


def _next_one(name: str, blank: str) -> str:
    block = _WEEK.sub("", _AGAIN.sub("", name)) or name
    return _counted(block, 1) or f"{block}{blank}2"


def _counted(name: str, more: int) -> str:
    """The name with its last number counted up, noughts in front kept; empty without one."""
    match = _LAST_NUMBER.search(name)
    if match is None:
        return ""
    return f"{name[: match.start()]}{int(match[0]) + more:0{len(match[0])}d}{name[match.end() :]}"
