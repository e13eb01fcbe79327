"""Values by week: a list with one entry a week, or ``week N`` keys; and what takes place only in some weeks.

A value on one line holds in all weeks. Everything else is resolved here to the text that holds in the week
which is read, so that no other reader knows of weeks.
"""

import re
from collections.abc import Mapping
from typing import Final, NamedTuple

from setwright.model.reader.house import Absent, House, Value
from setwright.model.reader.keys import Keys, fold, not_read_yet
from setwright.places import Place
from setwright.reading import fields
from setwright.reading import week_rules as rules
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.weeks import say_weeks, speaks_of_weeks, weeks_in

ONE_ATHLETE: Final = "write one value for all; or one line for each, with `for:` and the name"

_AS_WEEK: Final = re.compile(r"as week (\d{1,3})$")
_WHOLE: Final = re.compile(r"\d+$")
_AFTER_POINT: Final = re.compile(r"(?:5|25|75)(?!\d)")
"""What stands behind the point of a load: plates come in halves and quarters (common practice)."""


class Cell(NamedTuple):
    """What is typed for one week, and where its week is named."""

    node: Node
    at: Place


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
    tables = {} if house.tables is None else house.tables
    if at not in tables:
        typed = _listed(key, node, house) if isinstance(node, Listing) else _keyed(key, node, house)
        tables[at] = (None,) * house.weeks if typed is None else _resolved(key, typed, house)
    return tables[at]


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
    last = f"week {house.weeks}"
    if weeks is None:
        change = "write `week 2`, `weeks 2-3` or `weeks 1-3 and 5`"
        house.found.say(rules.NO_SUCH_WEEK, typed.place, f'"{typed.text}": which weeks?', change)
    elif not (weeks[0] and weeks[-1] <= house.weeks):
        has = "one week" if house.weeks == 1 else f"{house.weeks} weeks"
        longer = f", or `weeks: {weeks[-1]}` at the top" if weeks[0] else ""
        message, change = f"{typed.text}: the plan has {has}", f"write a week from week 1 to {last}{longer}"
        house.found.say(rules.NO_SUCH_WEEK, typed.place, message, change)
        weeks = None
    return weeks


def keyed(pairs: tuple[tuple[Scalar, Node], ...], house: House) -> dict[int, tuple[Scalar, Node]] | None:
    """``week N`` keys by week; None and findings when one of them can't be read or a week stands twice."""
    cells: dict[int, tuple[Scalar, Node]] = {}
    sure = True
    for key, node in pairs:
        weeks = named(key, house)
        sure = sure and weeks is not None
        for week in weeks or ():
            if week in cells:
                first = cells[week][0]
                message = (
                    f"week {week} is written on line {first.place.line} and again on line {key.place.line}"
                )
                house.found.say(rules.WEEK_TWICE, key.place, message, "keep one of the two")
                sure = False
            cells.setdefault(week, (key, node))
    return cells if sure else None


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
    cells = keyed(node.pairs, house) if not others else None
    return None if cells is None else {week: Cell(one, at.place) for week, (at, one) in cells.items()}


def _listed(key: Scalar, node: Listing, house: House) -> dict[int, Cell] | None:
    entries = node.nodes
    points = _with_points(entries)
    decimal = next((f"a decimal has a point, `{one}`" for one in points if "." in one), "")
    number = "1 entry" if len(entries) == 1 else f"{len(entries)} entries"
    if house.weeks == 1:
        message = f"{key.text}: a list in brackets goes week by week, and the plan has one week"
        typed = ", ".join(entry.text for entry in entries if isinstance(entry, Scalar))
        change = f"write `{typed}` without brackets for set by set, or `weeks: {len(entries)}` at the top"
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


def _resolved(key: Scalar, typed: Mapping[int, Cell], house: House) -> tuple[Value, ...]:
    """One value a week; ``same`` and ``as week 1`` looked up in the weeks before."""
    cells: dict[int, Value] = {}
    missing: list[int] = []
    stopped = False
    for week in range(1, house.weeks + 1):
        cell = typed.get(week)
        if cell is None or (isinstance(cell.node, Scalar) and cell.node.is_empty):
            if not stopped and week in house.there:
                missing.append(week)
            if stopped:
                cells[week] = cells[max(cells)]
            continue
        word = fields.word(cell.node, house.found)
        found = None if word is None else _looked_up(word, week, cells, house)
        if stopped and isinstance(found, Scalar):
            change = f"write `none` instead of `stop` in the week before, or take week {week} out"
            house.found.say(rules.AFTER_STOP, cell.at, f"week {week} comes after stop", change)
            found = None
        stopped = stopped or (isinstance(found, Absent) and found.word.text.casefold() == "stop")
        cells[week] = found
    if missing:
        _ask(key, missing, typed, house)
    return tuple(cells.get(week) for week in range(1, house.weeks + 1))


def _looked_up(word: Scalar, week: int, cells: Mapping[int, Value], house: House) -> Value:
    """What a cell says: itself, nothing, or what stands in a week before."""
    said = fold(word.text)
    if said in ("none", "stop"):
        return Absent(word)
    other = _AS_WEEK.match(said)
    if other is None and said != "same":
        return word
    meant = int(other[1]) if other else max(cells, default=0)
    if meant in cells:
        return cells[meant]
    which = f"week {meant} is not written before it" if other else "nothing is written before it"
    change = (
        f"write what is done in week {week}" if week == 1 else f"write `same` or a week before week {week}"
    )
    house.found.say(rules.NO_SUCH_WEEK, word.place, f"week {week}: `{word.text}`, but {which}", change)
    return None


def _ask(key: Scalar, missing: list[int], typed: Mapping[int, Cell], house: House) -> None:
    empty = next((typed[week].at for week in missing if week in typed), key.place)
    weeks = say_weeks(missing)
    same = f"`{weeks}: same` (as the week before), " if missing[0] > 1 else ""
    change = f"write {same}`{weeks}: none` (not then) or `{weeks}: stop` (not any more)"
    house.found.say(rules.WEEK_EMPTY, empty, f"{key.text}: nothing is written for {weeks}", change)
