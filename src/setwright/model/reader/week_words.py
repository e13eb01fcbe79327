"""What is typed for each week made one value a week: ``same``, ``as week 1``, ``none``, ``stop``."""

import re
from collections.abc import Mapping
from typing import Final, NamedTuple

from setwright.model.reader.house import Absent, House, Value
from setwright.model.reader.keys import fold, is_empty
from setwright.places import Place
from setwright.reading import fields
from setwright.reading import week_rules as rules
from setwright.reading.nodes import Node, Scalar
from setwright.reading.weeks import say_weeks

_AS_WEEK: Final = re.compile(r"as week (\d{1,3})$")


class Cell(NamedTuple):
    """What is typed for one week, and where its week is named."""

    node: Node
    at: Place

    @property
    def is_empty(self) -> bool:
        """Whether nothing is written."""
        return is_empty(self.node)


def resolved(key: Scalar, typed: Mapping[int, Cell], house: House) -> tuple[Value, ...]:
    """One value a week; faults, and weeks for which ``key`` says nothing, are told."""
    cells: dict[int, Value] = {}
    missing: list[int] = []
    late: list[int] = []
    stop = 0
    for week in range(1, house.weeks + 1):
        cell = typed.get(week)
        if cell is None or cell.is_empty:
            if stop:
                cells[week] = cells[stop]
            elif week in house.there:
                missing.append(week)
            continue
        word = fields.word(cell.node, house.found)
        cells[week] = None if word is None else _looked_up(word, week, cells, house)
        if stop and isinstance(cells[week], Scalar):
            late.append(week)
        elif not stop and _is_stop(cells[week]):
            stop = week
    if missing:
        _ask(key, missing, typed, house)
    if late:
        message = f"{say_weeks(late)} after stop in week {stop}"
        change = (
            f"write `none` for week {stop} to leave out that week alone, or `stop` for {say_weeks(late)} too"
        )
        house.found.say(rules.AFTER_STOP, typed[late[0]].at, message, change)
    cells |= dict.fromkeys(late)
    return tuple(cells.get(week) for week in range(1, house.weeks + 1))


def _is_stop(value: Value) -> bool:
    return isinstance(value, Absent) and fold(value.word.text) == "stop"


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
    change = "write what is done in week 1" if week == 1 else "write `same`, or a week that comes before it"
    house.found.say(rules.NO_SUCH_WEEK, word.place, f"`{word.text}`, but {which}", change)
    return None


def _ask(key: Scalar, missing: list[int], typed: Mapping[int, Cell], house: House) -> None:
    empty = next((typed[week].at for week in missing if week in typed), key.place)
    weeks = say_weeks(missing)
    same = f"`{weeks}: same` (as the week before), " if missing[0] > 1 else ""
    change = f"write {same}`{weeks}: none` (not then) or `{weeks}: stop` (not any more)"
    house.found.say(rules.WEEK_EMPTY, empty, f"{key.text}: nothing is written for {weeks}", change)
