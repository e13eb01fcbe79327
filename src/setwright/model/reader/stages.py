"""Stages at the top of a plan, and the stage that a session names."""

import re
from collections.abc import Iterator
from typing import Final

from setwright.model.plan import Session
from setwright.model.reader.keys import Key, Table, is_empty, pairs_of, read_keys
from setwright.model.stages import SignOff, Stage
from setwright.reading import fields, measures
from setwright.reading import key_rules as rules
from setwright.reading.gathering import Gathering
from setwright.reading.nearest import nearest
from setwright.reading.nodes import Node, Pairs, Scalar

NOT_SIGNED: Final = ("none", "not yet")
"""Words for a stage that nobody has signed off."""

_WEEK: Final = re.compile(r"(?:week )?(\d{1,3})$", re.IGNORECASE)


def _week(node: Node, found: Gathering) -> int | None:
    typed = fields.word(node, found)
    if typed is None:
        return None
    match = _WEEK.match(typed.text)
    if match and int(match[1]):
        return int(match[1])
    message = f'"{typed.text}" is no week of the plan'
    found.say(rules.NOT_A_NUMBER, typed.place, message, "write a week by its number, for example `week 3`")
    return None


def _sign_off(node: Node, found: Gathering) -> SignOff | None:
    """Who and when; None for a stage that is not signed off, or after asking for what is missing."""
    typed = fields.word(node, found)
    if typed is None or typed.text.casefold() in NOT_SIGNED:
        return None
    who, _, date = (part.strip() for part in typed.text.rpartition(","))
    if not who:
        message = f'"{typed.text}" does not say who signed the stage off and when'
        change = "write a name and a date, for example `signed off: the name, 2027-03-01`"
        found.say(rules.SIGN_OFF, typed.place, message, change)
        return None
    start = typed.text.rindex(date)
    on = measures.date(Scalar(date, typed.place.shifted(start, start + len(date))), found)
    return SignOff(who=who, on=on) if on else None


KEYS: Final[Table] = {
    "earliest": Key("earliest", _week),
    "latest": Key("latest", _week),
    "enter when": Key("enter_when", fields.texts),
    "signed off": Key("signed_off", _sign_off),
    "stop": Key("stop", fields.text),
    "note": Key("note", fields.text),
    "private note": Key("private_note", fields.text),
}


def read_stages(node: Node, found: Gathering) -> tuple[Stage, ...]:
    """The stages in the order written."""
    return tuple(_stages(node, found))


def check_stages(sessions: tuple[Session, ...], stages: tuple[Stage, ...], found: Gathering) -> None:
    """Say which sessions name a stage that the plan does not have."""
    names = [stage.name for stage in stages]
    for session in sessions:
        typed = session.stage
        if typed is not None and not any(stage.is_called(typed.text) for stage in stages):
            near = nearest(typed.text, names) or names
            write = f"write {' or '.join(f'`stage: {name}`' for name in near)}"
            change = write if names else f"write the stage under `stages:` at the top, `{typed.text}:`"
            message = f'"{typed.text}" is no stage of the plan'
            found.say(rules.NOT_A_CHOICE, typed.place, message, change)


def _stages(node: Node, found: Gathering) -> Iterator[Stage]:
    for key, value in pairs_of(node, found, "the name of a stage"):
        inside = Pairs((), key.place) if is_empty(value) else value
        read = read_keys(pairs_of(inside, found, "what a stage asks"), KEYS, found, "a stage")
        earliest, latest = read.values.get("earliest"), read.values.get("latest")
        if earliest and latest and latest < earliest:
            message = f"{key.text}: week {latest} at the latest is before week {earliest} at the earliest"
            found.say(rules.NOT_A_NUMBER, read.keys["latest"].place, message, "change one of the two weeks")
        yield Stage(name=key.text, place=key.place, **read.values)
