"""The top of next week's plan: its name, its dates, and the week that it follows."""

import datetime as dt
import re
from collections.abc import Iterator
from typing import Final

from setwright.model.reader.keys import fold
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.tree import read_tree

A_WEEK: Final = dt.timedelta(weeks=1)
_LAST_NUMBER: Final = re.compile(r"\d+(?=\D*$)")
_WEEK_NUMBER: Final = re.compile(r"\bweek\s+(\d{1,3})\b", re.IGNORECASE)


def week_number(name: str) -> int | None:
    """The number of its week that a plan's name tells.

    >>> week_number("Autumn block, week 3"), week_number("Winter 2027")
    (3, None)
    """
    match = _WEEK_NUMBER.search(name)
    return int(match[1]) if match else None


def next_name(name: str) -> str:
    """The name of the week after: "week 4" for "week 3", else the name and "next week"."""
    number = week_number(name)
    if number is None:
        return f"{name}, next week"
    return _WEEK_NUMBER.sub(lambda match: match[0].replace(match[1], str(number + 1)), name, count=1)


def next_stem(stem: str) -> str:
    """The file name of the week after: "week-4" for "week-3", else the name and "-next"."""
    match = _LAST_NUMBER.search(stem)
    if match is None:
        return f"{stem}-next"
    return f"{stem[: match.start()]}{int(match[0]) + 1:0{len(match[0])}d}{stem[match.end() :]}"


def with_next_head(file: str, text: str, follows: str) -> str:
    """The text with the next name and every date a week later; ``follows``: the file of the week before."""
    root = read_tree(file, text).root
    rows = text.splitlines()
    assert isinstance(root, Pairs)
    for key, value, top in _keys(root, top=True):
        name, place = fold(key.text), value.place
        row = place.line - 1
        new = None
        if top and name == "plan":
            new = next_name(value.text)
        elif name in ("starts", "date"):
            new = _later(value.text)
        elif top and name == "follows":
            new = follows
        if new is not None:
            rows[row] = rows[row][: place.column - 1] + new + rows[row][place.end_column - 1 :]
    if not any(fold(key.text) == "follows" for key, _ in root.pairs):
        plan = next(key for key, _ in root.pairs if fold(key.text) == "plan")
        rows.insert(plan.place.line, f"follows: {follows}")
    return "\n".join(rows) + "\n"


def _keys(node: Node, *, top: bool = False) -> Iterator[tuple[Scalar, Scalar, bool]]:
    """Every key with a value on its line, and whether it stands at the top."""
    if isinstance(node, Listing):
        for entry in node.nodes:
            yield from _keys(entry)
    elif isinstance(node, Pairs):
        for key, value in node.pairs:
            if isinstance(value, Scalar):
                yield key, value, top
            else:
                yield from _keys(value)


def _later(typed: str) -> str | None:
    """A date a week later; None for what is none."""
    try:
        return (dt.date.fromisoformat(typed) + A_WEEK).isoformat()
    except (ValueError, OverflowError):
        return None
