"""``lighter weeks``: in which weeks less is done, and how much less."""

import re
from typing import Any, Final, NamedTuple

from setwright.model.plan import Lighter
from setwright.model.reader import by_week
from setwright.model.reader.house import House
from setwright.model.reader.keys import fold, is_empty, pairs_of
from setwright.reading import fields
from setwright.reading import week_rules as rules
from setwright.reading.nodes import Node, Scalar

_EVERY: Final = re.compile(r"every ([2-9]|[1-9]\d) weeks$")
_SHARE: Final = re.compile(r"(\d{1,2}(?:[.,]\d+)?) ?% of the load$")


class LighterRead(NamedTuple):
    """What is done less of, by week, and what in every so many weeks."""

    weeks: dict[int, Lighter]
    every: dict[int, Lighter]


def read_lighter(node: Node | None, house: House) -> LighterRead:
    """What is done less of; a week that is named stands before every so many."""
    pairs = () if node is None else pairs_of(node, house.found, "a week with what is less in it")
    often = {key: match for key, _ in pairs if (match := _EVERY.match(fold(key.text)))}
    cells = by_week.keyed(tuple(pair for pair in pairs if pair[0] not in often), house).cells
    read = {week: _lighter(key, value, house) for week, (key, value) in cells.items()}
    every = {int(often[key][1]): _lighter(key, value, house) for key, value in pairs if key in often}
    due = {week: how for number, how in every.items() for week in house.there if not week % number}
    weeks = {week: how for week, how in (due | read).items() if how}
    return LighterRead(weeks, {number: how for number, how in every.items() if how})


def _lighter(key: Scalar, node: Node, house: House) -> Lighter | None:
    typed = fields.word(node, house.found)
    parts = fold(typed.text).split(" and ") if typed else ["nothing written"]
    said: dict[str, Any] = {}
    for part in parts:
        share = _SHARE.match(part)
        if share:
            said["load_percent"] = float(share[1].replace(",", "."))
        elif part in ("half the sets", "no training"):
            said[part.replace(" ", "_")] = True
    if len(said) == len(parts) and ("no_training" not in said or len(parts) == 1):
        return Lighter(**said)
    if typed or is_empty(node):
        what = f'"{typed.text}": less of what?' if typed else "less of what?"
        change = f"write `{key.text}: half the sets`, `80% of the load`, both with `and`, or `no training`"
        house.found.say(rules.LIGHTER, (typed or key).place, what, change)
    return None
