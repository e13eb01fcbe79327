"""The maxes of an athlete: tested, lifted several times, a training max, or none yet."""

import datetime as dt
import re
from collections.abc import Iterable
from typing import Final

from setwright.model.people import Best, Max, TrainingMax
from setwright.model.reader.asked import Asked
from setwright.model.reader.keys import pairs_of
from setwright.places import Place
from setwright.reading import fields, measures
from setwright.reading import max_rules as rules
from setwright.reading.dose import Load
from setwright.reading.gathering import Gathering
from setwright.reading.habits import Habits
from setwright.reading.keys import read_load
from setwright.reading.measures import Unit
from setwright.reading.nodes import Listing, Node, Scalar
from setwright.reading.questions_how import LOAD_UNIT
from setwright.reading.retyping import plain_blanks

NONE_YET: Final = "none yet"
EXAMPLE: Final = "2026-12-14"
"""A day for lines to copy where none was typed."""
WHOLE: Final = 100.0
"""Percent."""

_PARTS = re.compile(r"\s*(?:,\s+|,(?!\d)|;)\s*")
_REPS = re.compile(r"(\d{1,3})\s*(?:reps?|repetitions?)$", re.IGNORECASE)
_TESTED = re.compile(r"(?:(?P<best>.*\S)\s+)?tested(?:\s+(?:on\s+)?(?P<on>\S.*))?$", re.IGNORECASE)
_FROM = re.compile(
    r"from\s+(?P<load>.*\S)\s*[x×*]\s*(?P<reps>\d{1,3})(?:\s*(?:reps?|repetitions?))?"
    r"(?:\s+(?:on\s+)?(?P<on>\S.*))?$",
    re.IGNORECASE,
)
_TRAINING = re.compile(r"(?:training\s+max|tm)(?:\s+(?:of\s+)?(?P<value>\S.*))?$", re.IGNORECASE)
_PERCENT = re.compile(r"(\d+(?:[.,]\d+)?)\s*%$")
_SEVERAL = re.compile(
    r"(?P<set>\d[\d.,]*\s*(?:kg|lbs?)?\s*[x×]\s*\d{1,2})(?:\s+(?:on\s+)?(?P<on>\d{1,4}[-./]\d{1,2}[-./]\d{1,4}))?",
    re.IGNORECASE,
)
_WITH_DAY = re.compile(r"(?P<best>.*\S)\s+(?:on\s+)?(?P<on>\d{1,4}[-./]\d{1,2}[-./]\d{1,4})$", re.IGNORECASE)

Part = Best | TrainingMax | None


def read_maxes(node: Node | None, found: Gathering, unit: Unit | None) -> tuple[Max, ...]:
    """The maxes by movement, and a finding for every part that can't be read.

    ``unit``: of masses that are typed without one; None when nobody said, so that they are asked.
    """
    pairs = () if node is None else pairs_of(node, found, "a movement with its max")
    return tuple(best for key, value in pairs if (best := _max(key, value, found, unit)))


def _max(key: Scalar, value: Node, found: Gathering, unit: Unit | None) -> Max | None:
    """One text or a list of texts, each with commas between its parts; None when nothing is written."""
    entries = value.nodes if isinstance(value, Listing) else (value,)
    typed = [one for entry in entries if (one := fields.word(entry, found))]
    if not typed:
        return None
    text = ", ".join(one.text for one in typed)
    none_yet, unread = False, False
    parts: list[Best | TrainingMax] = []
    for part in _parts(typed):
        if part.text.casefold() == NONE_YET:
            none_yet = True
        elif (value_read := _said(part, found, unit)) is not None:
            parts.append(value_read)
        else:
            unread = True
    read = Max(
        movement=key.text,
        text=text,
        place=key.place,
        bests=tuple(part for part in parts if isinstance(part, Best)),
        training=next((part for part in parts if isinstance(part, TrainingMax)), None),
        none_yet=none_yet,
        unread=unread,
    )
    return _fitting(read, parts, typed[-1], found)


def _parts(typed: Iterable[Scalar]) -> Iterable[Scalar]:
    for one in typed:
        for part in _PARTS.split(" ".join(plain_blanks(one.text).split())):
            yield Scalar(part, one.place)


def _said(part: Scalar, found: Gathering, unit: Unit | None) -> Part:
    """A part read, or None and a finding."""
    try:
        return _part(part, found, unit)
    except Asked as asked:
        found.say(asked.rule, part.place, asked.message, asked.change)
        return None


def _part(part: Scalar, found: Gathering, unit: Unit | None) -> Part:
    """A part read; None when its day is none, which is said. Raises: Asked."""
    if match := _TRAINING.match(part.text):
        return _training(match["value"], part.place, unit)
    if match := _TESTED.match(part.text):
        if match["best"] is None:
            change = f"write `55 kg tested {match['on'] or EXAMPLE}`"
            raise Asked(rules.MAX_UNREAD, f'"{part.text}": how much?', change)
        reps = _REPS.match(match["best"])
        load = None if reps else _load(match["best"], part.place, unit)
        on = _day(part, match["on"], part.text, found)
        return Best(how="tested", on=on, load=load, reps=int(reps[1]) if reps else None) if on else None
    if match := _FROM.match(part.text):
        if int(match["reps"]) == 0:
            change = f"write how often it was lifted, or `{NONE_YET}`"
            raise Asked(rules.MAX_UNREAD, f'"{part.text}": lifted not once?', change)
        load = _load(match["load"], part.place, unit)
        on = _day(part, match["on"], f"{part.text} on", found)
        return Best(how="estimated", on=on, load=load, reps=int(match["reps"])) if on else None
    raise _how(part.text)


def _day(part: Scalar, typed: str | None, up_to_the_day: str, found: Gathering) -> dt.date | None:
    if typed is None:
        change = f"write the day behind it, for example `{up_to_the_day} {EXAMPLE}`"
        raise Asked(rules.MAX_DATE, f'"{part.text}": on which day?', change)
    return measures.date(Scalar(typed, part.place), found)


def _training(typed: str | None, place: Place, unit: Unit | None) -> TrainingMax:
    if typed is None:
        change = "write its percent or its load: `training max 90%` or `training max 50 kg`"
        raise Asked(rules.TRAINING_MAX, "training max: how much is it?", change)
    percent = _PERCENT.match(typed)
    if percent is None:
        return TrainingMax(load=_load(typed, place, unit))
    share = measures.number(percent[1])
    if not 0 < share <= WHOLE:
        change = "write a percent up to 100, or a load: `training max 90%` or `training max 50 kg`"
        raise Asked(rules.TRAINING_MAX, f"{share:g} % of a max is no training max", change)
    return TrainingMax(percent=share)


def _load(typed: str, place: Place, unit: Unit | None) -> Load:
    """A mass above zero, or bodyweight with more or less."""
    mass = measures.mass_of(typed)
    if mass is None:
        loads, _ = read_load(typed, place, Habits(unit=unit))
        if loads and len(loads) == 1 and _is_max(loads[0]):
            return loads[0]
        change = f"write a load and its day, for example `55 kg tested {EXAMPLE}`, or `{NONE_YET}`"
        raise Asked(rules.MAX_UNREAD, f'"{typed}" is no max', change)
    if mass.value == 0:
        raise Asked(rules.MAX_UNREAD, f'"{typed}" is no max', f"write `{NONE_YET}`")
    if mass.unit is None and unit is None:
        message, change = (text.format(typed=typed) for text in (LOAD_UNIT.message, LOAD_UNIT.change))
        raise Asked(LOAD_UNIT.rule, message, change)
    return Load(kind="mass", low=mass.value, high=mass.value, unit=mass.unit or unit)


def _is_max(load: Load) -> bool:
    """Whether a load is one number that can have been lifted."""
    one = load.low == load.high and load.plus == load.plus_high
    return one and load.kind in ("mass", "bodyweight") and not load.rising and load.top_kg is None


def _how(typed: str) -> Asked:
    """The question about a part that is neither tested nor lifted several times."""
    match = _WITH_DAY.match(typed)
    several = _SEVERAL.fullmatch(typed)
    if several:
        change = f"write `from {several['set']} on {several['on'] or EXAMPLE}`, with the day it was lifted"
        return Asked(rules.MAX_HOW, f'"{typed}": worked out from several repetitions?', change)
    best, on = (match["best"], match["on"]) if match else (typed, EXAMPLE)
    if measures.mass_of(best) or _REPS.match(best):
        change = f"write `{best} tested {on}`; when it was lifted 5 times, `from {best} x 5 on {on}`"
        return Asked(rules.MAX_HOW, f'"{typed}": tested, or worked out from several repetitions?', change)
    change = f"write `55 kg tested {on}`, `from 50 kg x 5 on {on}`, `training max 90%` or `{NONE_YET}`"
    return Asked(rules.MAX_UNREAD, f'"{typed}" is no max', change)


def _fitting(read: Max, parts: list[Best | TrainingMax], last: Scalar, found: Gathering) -> Max:
    """The max, once what does not go together in it is asked about."""
    if (read.none_yet and parts) or len(parts) - len(read.bests) > 1:
        message = f'"{read.text}" says two things at once'
        found.say(rules.MAX_UNREAD, last.place, message, f"keep one of them, or write `{NONE_YET}` alone")
        return read.model_copy(update={"none_yet": False, "training": None, "unread": True})
    if read.training and not read.bests and not read.unread:
        message = f'"{read.text}": of which max, and from which day?'
        change = f"put the max and its day in front: `55 kg tested {EXAMPLE}, {read.text}`"
        found.say(rules.TRAINING_MAX, last.place, message, change)
        return read.model_copy(update={"training": None, "unread": True})
    return read
