"""Sessions of a plan: their keys, their warm-up and their work."""

from typing import Any, Final

from setwright.model.plan import DAYS, Day, Group, Item, Session, day_named
from setwright.model.reader import by_week
from setwright.model.reader.group import read_entry
from setwright.model.reader.house import House
from setwright.model.reader.item import read_item
from setwright.model.reader.keys import Key, Keys, Table, allowed, fold, is_empty, raw, read_keys, read_word
from setwright.model.reader.reuse import KEYS as REUSE_KEYS
from setwright.model.reader.reuse import read_reuse
from setwright.places import Place
from setwright.reading import fields, measures
from setwright.reading import key_rules as rules
from setwright.reading.gathering import Gathering
from setwright.reading.nearest import nearest
from setwright.reading.nodes import Listing, Node, Pairs, Scalar
from setwright.reading.week_rules import ONE_DATE
from setwright.reading.weeks import say_weeks


def read_day(node: Node, found: Gathering, lead: str = "day: ") -> Day | None:
    """The day that a word names, from three letters on, or None and a finding; ``lead`` stands before it."""
    typed = fields.word(node, found)
    if typed is None:
        return None
    day = day_named(typed.text)
    if day is None:
        near = nearest(typed.text, DAYS)
        change = f"write `{lead}{near[0]}`" if near else f"write one of {', '.join(DAYS)}"
        found.say(rules.MISSPELT_DAY, typed.place, f'"{typed.text}" is no day', change)
    return day


KEYS: Final[Table] = {
    "day": Key("day", read_day),
    "date": Key("date", measures.date),
    "name": Key("name", fields.text),
    "minutes": Key("minutes", raw),
    "start": Key("start", measures.clock),
    "place": Key("where", fields.text),
    "after": Key("after", fields.text),
    "days to match": Key("days_to_match", fields.whole()),
    "people": Key("people", fields.whole(1)),
    "staff": Key("staff", fields.whole()),
    "stage": Key("stage", read_word),
    "only in": Key("only_in", raw),
    "warm up": Key("warm_up", raw),
    "work": Key("work", raw),
    "cool down": Key("cool_down", fields.texts),
    "if interrupted": Key("if_interrupted", fields.text),
    "allow": Key("allow", allowed),
    "note": Key("note", fields.text),
    "private note": Key("private_note", fields.text),
    **REUSE_KEYS,
}


def read_sessions(node: Node, house: House) -> tuple[Session, ...]:
    """The sessions of a list, each with what can be trusted of it."""
    if not isinstance(node, Listing):
        change = "start each session with `- day:` or `- name:`, two blanks further in"
        house.found.say(rules.WRONG_FORM, node.place, "a list of sessions is expected here", change)
        return ()
    return tuple(session for entry in node.nodes if (session := _session(entry, house)))


def _session(node: Node, house: House) -> Session | None:
    if not isinstance(node, Pairs) or not node.pairs:
        if not is_empty(node):
            change = "write `- day: Monday` and the other keys below it, in line with `day`"
            house.found.say(rules.WRONG_FORM, node.place, "a session is expected here", change)
        return None
    with house.found.of(_title(node)):
        read = read_keys(node.pairs, KEYS, house.found, "a session")
    return session_of(read, node.pairs[0][0].place, house)


def _title(node: Pairs) -> str:
    """What a coach calls the session, before it is read."""
    named = {fold(key.text): value.text for key, value in node.pairs if isinstance(value, Scalar)}
    return named.get("day") or named.get("name") or "the session"


def session_of(read: Keys, place: Place, house: House) -> Session | None:
    """The session that ``read`` keys make, as it is this week; None when it does not take place.

    What goes by week is read here: minutes, warm-up and work.
    """
    values = read.values
    title = values.get("day") or values.get("name") or "the session"
    with house.found.of(title):
        here = by_week.only_in(read, house)
        if here is None:
            return None
        _check_date(read, here)
        values |= _minutes(values.pop("minutes", None), read, here)
        values |= _warm_up(values.pop("warm_up", None), here)
        values["reuse"] = read_reuse(read, here)
        listed = values.pop("work", None)
        work = _work(listed, read, place, here)
    if isinstance(listed, Listing) and listed.nodes and not work and house.weeks > 1:
        return None
    typed = read.keys.get("work") or read.keys.get("like")
    return Session(place=place, work_place=typed.place if typed else place, work=work, **values)


def _check_date(read: Keys, house: House) -> None:
    if "date" in read.values and len(house.there) > 1:
        message = f"one date, and the session is in {say_weeks(house.there)}"
        change = "write `starts:` at the top and `day:` here, or `only in:` with the week of the date"
        house.found.say(ONE_DATE, read.keys["date"].place, message, change)


def _minutes(node: Node | None, read: Keys, house: House) -> dict[str, float]:
    typed = None if node is None else by_week.value(read.keys["minutes"], node, house)
    minutes = measures.minutes(typed, house.found) if isinstance(typed, Scalar) else None
    return {} if minutes is None else {"minutes": minutes}


def _warm_up(node: Node | None, house: House) -> dict[str, Any]:
    if node is None:
        return {}
    if not isinstance(node, Listing):
        read = measures.minutes(node, house.found)
        return {} if read is None else {"warm_up_minutes": read}
    warming_up = house.warming_up()
    return {"warm_up": tuple(item for entry in node.nodes if (item := read_item(entry, warming_up)))}


def _work(node: Node | None, read: Keys, place: Place, house: House) -> tuple[Item | Group, ...]:
    if isinstance(node, Listing):
        return tuple(entry for one in node.nodes if (entry := read_entry(one, house)))
    if node is not None:
        change = "write one movement a line, each with a hyphen: `- dip: 3 x 8`"
        house.found.say(rules.WRONG_FORM, node.place, "a list of movements is expected here", change)
    elif not _is_written(read.nodes.get("like")):
        typed = read.keys.get("work") or read.keys.get("like")
        at = typed.place if typed else place
        change = "write `work:` and the movements below it, each with a hyphen"
        house.found.say(rules.NO_WORK, at, "the session has no work", change)
    return ()


def _is_written(node: Node | None) -> bool:
    return node is not None and not is_empty(node)
