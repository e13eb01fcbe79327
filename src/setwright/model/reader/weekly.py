"""``sets a week`` and ``last week`` at the top of a plan."""

import re
from typing import Final

from setwright.model.muscles import GROUP_WORDS
from setwright.model.reader.keys import pairs_of
from setwright.model.reader.quantity import quantity
from setwright.model.weekly import PULL_TO_PUSH, DoneBefore, WeeklySets, WeekOf
from setwright.reading import fields
from setwright.reading import key_rules as rules
from setwright.reading.file_rules import DOUBLE_KEY
from setwright.reading.gathering import Gathering
from setwright.reading.measures import number
from setwright.reading.nearest import nearest
from setwright.reading.nodes import Node, Scalar
from setwright.reading.week_rules import NO_SUCH_WEEK
from setwright.reading.weeks import file_and_week

_RANGE: Final = re.compile(
    r"(?:(?P<low>\d{1,3})(?: ?[-–] ?(?P<high>\d{1,3}))?|at least (?P<least>\d{1,3}))(?: sets)?$",
    re.IGNORECASE,
)
_RATIO: Final = re.compile(r"(?:at least )?(\d{1,2}(?:[.,]\d{1,2})?)$", re.IGNORECASE)


def week_of(node: Node, found: Gathering) -> WeekOf | None:
    """The week of a block that a plan of one week is, or None and a finding."""
    typed = fields.word(node, found)
    if typed is None:
        return None
    file, week = file_and_week(typed.text)
    if week is None:
        change = f"write the block's file and the week, `block: {file}, week 1`"
        found.say(NO_SUCH_WEEK, typed.place, f'"{file}": which week of it is this?', change)
        return None
    return WeekOf(file=file, week=week, place=typed.place)


def group_of(name: Scalar, found: Gathering) -> str | None:
    """The muscle group that a word names, or None and a finding."""
    word = name.text.casefold()
    if word in GROUP_WORDS:
        return GROUP_WORDS[word]
    near = nearest(word, GROUP_WORDS)
    known = ", ".join(dict.fromkeys(GROUP_WORDS.values()))
    change = f"write `{GROUP_WORDS[near[0]]}`" if near else f"write one of {known}"
    found.say(rules.NOT_A_CHOICE, name.place, f'"{name.text}" is no muscle group', change)
    return None


def sets_a_week(node: Node, found: Gathering) -> tuple[WeeklySets, ...]:
    """The sets that the coach asks for, each group once."""
    read: dict[str, WeeklySets] = {}
    for key, value in pairs_of(node, found, "a muscle group with its sets"):
        ratio = key.text.casefold() == PULL_TO_PUSH
        group = PULL_TO_PUSH if ratio else group_of(key, found)
        typed = fields.word(value, found)
        if group is None or typed is None:
            continue
        span = _ratio(typed, found) if ratio else _range(typed, found)
        if group in read:
            message = f'"{key.text}" says again what line {read[group].place.line} says of the {group}'
            found.say(DOUBLE_KEY, key.place, message, "keep one of the two and take the other out")
        elif span is not None:
            low, high = span
            read[group] = WeeklySets(group=group, low=low, high=high, text=typed.text, place=key.place)
    return tuple(read.values())


def _range(typed: Scalar, found: Gathering) -> tuple[float, float | None] | None:
    match = _RANGE.match(typed.text)
    if match is not None and match["least"]:
        return float(match["least"]), None
    low, high = (float(match["low"]), float(match["high"] or match["low"])) if match else (1.0, 0.0)
    if low <= high:
        return low, high
    change = "write `8-12`, `10` or `at least 8`"
    found.say(rules.NOT_A_NUMBER, typed.place, f'"{typed.text}" is no number of sets a week', change)
    return None


def _ratio(typed: Scalar, found: Gathering) -> tuple[float, None] | None:
    match = _RATIO.match(typed.text)
    if match is None:
        change = f"write `{PULL_TO_PUSH}: at least 1` for one pull for each push"
        found.say(rules.NOT_A_NUMBER, typed.place, f'"{typed.text}": how many pulls for one push?', change)
        return None
    return number(match[1]), None


def last_week(node: Node, found: Gathering) -> tuple[DoneBefore, ...]:
    """What was done of each movement in the week before the plan."""
    read = []
    for key, value in pairs_of(node, found, "a movement with what was done of it"):
        typed = fields.word(value, found)
        much = quantity(typed.text) if typed else None
        if typed is not None and (much is None or much.unit is None or much.unit == "%"):
            message = f'"{typed.text}" does not say what was done of {key.text}'
            change = "write a number with its unit: `300 reps`, `12 sets` or `60 kg`"
            found.say(rules.NOT_A_NUMBER, typed.place, message, change)
        elif typed is not None and much is not None:
            read.append(
                DoneBefore(
                    name=key.text, place=key.place, amount=much.amount, unit=much.unit, text=typed.text
                )
            )
    return tuple(read)
