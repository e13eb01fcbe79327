"""Values by week: a list with one entry a week, or ``week N`` keys; and what takes place only in some weeks.

A value on one line holds in all weeks. Everything else is resolved here to the text that holds in the week
which is read, so that no other reader knows of weeks.
"""

import re
from typing import Final, NamedTuple

from setwright.model.reader.house import House, Value
from setwright.model.reader.keys import Keys, not_read_yet
from setwright.model.reader.week_words import Cell, resolved
from setwright.places import Place
from setwright.reading import fields
from setwright.reading import week_rules as rules
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.weeks import say_weeks, speaks_of_weeks, weeks_in

ONE_ATHLETE: Final = "write one value for all; or one line for each, with `for:` and the name"

_NUMBER: Final = re.compile(r"\d{1,3}")
_WHOLE: Final = re.compile(r"\d+$")
_AFTER_POINT: Final = re.compile(r"(?:5|25|75)(?!\d)")
"""What stands behind the point of a load: plates come in halves and quarters (common practice)."""


def value(key: Scalar, node: Node, house: House) -> Value:
    """What ``key`` says in the week that is read: a text, ``Absent``, or None when it can't be read."""
    if isinstance(node, Scalar):
        return fields.word(node, house.found)
    return values(key, node, house)[house.week - 1]


def values(key: Scalar, node: Node, house: House) -> tuple[Value, ...]:
    """What ``key`` says, one value a week; faults and weeks that nobody wrote are said once."""
    if isinstance(node, Scalar):
        return (fields.word(node, house.found),) * house.weeks
    at = id(node), house.there
    if at not in house.tables:
        typed = _listed(key, node, house) if isinstance(node, Listing) else _keyed(key, node, house)
        house.tables[at] = (None,) * house.weeks if typed is None else resolved(key, typed, house)
    return house.tables[at]


def by_week(node: Node) -> bool:
    """Whether keys underneath name weeks."""
    return isinstance(node, Pairs) and any(speaks_of_weeks(key.text) for key, _ in node.pairs)


def only_in(read: Keys, house: House) -> House | None:
    """The house in the weeks that ``only in`` leaves; None when this week is not among them."""
    node = read.values.pop("only_in", None)
    typed = None if node is None else fields.word(node, house.found)
    weeks = None if typed is None else named(typed, house)
    if typed is None or weeks is None:
        return house
    if not set(weeks) & set(house.there):
        message = f"only in {say_weeks(weeks)}, and what it stands in is only in {say_weeks(house.there)}"
        change = f"write `only in: {say_weeks(house.there)}` or take it out"
        house.found.say(rules.NO_SUCH_WEEK, typed.place, message, change)
    return house.narrowed(weeks)


def named(typed: Scalar, house: House) -> tuple[int, ...] | None:
    """The weeks of the plan that a text names, or None and a finding."""
    weeks = weeks_in(typed.text)
    if weeks is None:
        numbers = sorted({int(number) for number in _NUMBER.findall(typed.text)})
        change = (
            f"write `{say_weeks(numbers)}`" if numbers else "write `week 2`, `weeks 2-3` or `weeks 1-3 and 5`"
        )
        house.found.say(rules.NO_SUCH_WEEK, typed.place, f'"{typed.text}": which weeks?', change)
    elif not (weeks[0] and weeks[-1] <= house.weeks):
        has = "one week" if house.weeks == 1 else f"{house.weeks} weeks"
        longer = f", or `weeks: {weeks[-1]}` at the top" if weeks[0] else ""
        message = f"{typed.text}: the plan has {has}"
        change = f"write a week from week 1 to week {house.weeks}{longer}"
        house.found.say(rules.NO_SUCH_WEEK, typed.place, message, change)
        weeks = None
    return weeks


class Keyed(NamedTuple):
    """``week N`` keys with their values, by week; ``sure``: each can be read, and no week stands twice."""

    cells: dict[int, tuple[Scalar, Node]]
    sure: bool


def keyed(pairs: tuple[tuple[Scalar, Node], ...], house: House) -> Keyed:
    """What is written under ``week N`` keys, and a finding for each that can't be read."""
    cells: dict[int, tuple[Scalar, Node]] = {}
    sure = True
    for key, node in pairs:
        weeks = named(key, house) or ()
        twice = [week for week in weeks if week in cells]
        sure = sure and bool(weeks) and not twice
        if twice:
            lines = f"line {cells[twice[0]][0].place.line} and again on line {key.place.line}"
            message = f"{say_weeks(twice)} is written on {lines}"
            house.found.say(rules.WEEK_TWICE, key.place, message, "keep one of the two")
        cells = dict.fromkeys(weeks, (key, node)) | cells
    return Keyed(cells, sure)


def _keyed(key: Scalar, node: Pairs, house: House) -> dict[int, Cell] | None:
    others = [one for one, _ in node.pairs if not speaks_of_weeks(one.text)]
    if len(others) == len(node.pairs):
        not_read_yet(key, node, "this version reads one value for all athletes", ONE_ATHLETE, house.found)
        return None
    for other in others:
        change = (
            f"line `{other.text}:` up with the movement, two columns from its hyphen, if it is a word of it;"
            " or keep either the weeks or the names"
        )
        message = f'"{other.text}" stands among weeks'
        house.found.say(rules.WEEKS_MIXED, other.place, message, change)
    read = Keyed({}, sure=False) if others else keyed(node.pairs, house)
    return {week: Cell(one, at.place) for week, (at, one) in read.cells.items()} if read.sure else None


def _listed(key: Scalar, node: Listing, house: House) -> dict[int, Cell] | None:
    entries = node.nodes
    points = _with_points(entries)
    decimal = next((f"a decimal has a point, `{one}`" for one in points if "." in one), "")
    number = "1 entry" if len(entries) == 1 else f"{len(entries)} entries"
    if house.weeks == 1:
        message = f"{key.text}: a list in brackets goes week by week, and the plan has one week"
        each = points or [entry.text for entry in entries if isinstance(entry, Scalar)]
        change = (
            f"write `{', '.join(each)}` without brackets for set by set, or `weeks: {len(each)}` at the top"
        )
        change += f"; {decimal}" if decimal else ""
    elif points:
        message = f"{key.text}: every comma parts two entries, so these are {number} for {house.weeks} weeks"
        change = f"write `[{', '.join(points)}]`: {decimal}"
    elif len(entries) != house.weeks:
        message = f"{key.text}: {number} for {house.weeks} weeks"
        change = (
            "write exactly one entry a week, or `week 1:` and so on underneath;"
            " what has a comma in it needs a line for each week"
        )
    else:
        return {week: Cell(entry, entry.place) for week, entry in enumerate(entries, 1)}
    house.found.say(rules.WEEK_COUNT, node.place, message, change)
    return None


def _with_points(entries: tuple[Node, ...]) -> list[str]:
    """The entries with "62,5" made 62.5, where only some commas have no blank behind them; else empty."""
    joined: list[str] = []
    glued = apart = False
    end: Place | None = None
    for entry in entries:
        if not isinstance(entry, Scalar):
            return []
        here = entry.place
        touches = end is not None and (here.line, here.column) == (end.end_line, end.end_column + 1)
        if touches and _WHOLE.match(joined[-1]) and _AFTER_POINT.match(entry.text):
            joined[-1] += f".{entry.text}"
            glued = True
        else:
            apart = apart or end is not None
            joined.append(entry.text)
        end = here
    return joined if glued and apart else []
