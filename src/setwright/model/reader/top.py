"""The keys at the top of a plan, and those of a single session that may stand there too."""

from typing import Final, get_args

from setwright.model.plan import DAYS, Aim, TrainingLevel
from setwright.model.reader.item import KEYS as ITEM_KEYS
from setwright.model.reader.keys import Key, Table, allowed, raw
from setwright.model.reader.next import read_next
from setwright.model.reader.session import KEYS as SESSION_KEYS
from setwright.model.reader.stages import read_stages
from setwright.model.reader.weekly import group_of, last_week, sets_a_week, week_of
from setwright.reading import fields, measures
from setwright.reading.dose import MaxKind
from setwright.reading.gathering import Gathering
from setwright.reading.nodes import Node

MOST_WEEKS: Final = 104
"""Longest block, in weeks (choice: two years)."""
OTHER_MAXES: Final = {kind.replace("max", "maximum"): kind for kind in get_args(MaxKind)}


def _focus(node: Node, found: Gathering) -> tuple[str, ...]:
    return tuple(group for name in fields.placed_names(node, found) if (group := group_of(name, found)))


KEYS: Final[Table] = {
    "plan": Key("title", fields.text),
    "starts": Key("starts", measures.date),
    "weeks": Key("weeks", fields.whole(1, MOST_WEEKS)),
    "unit": Key("unit", fields.one_of("unit", measures.UNITS)),
    "dose order": Key("dose_order", fields.one_of("dose order", ("sets x reps", "reps x sets"))),
    "percent of": Key(
        "percent_of", fields.one_of("kind of max", {k: k for k in get_args(MaxKind)} | OTHER_MAXES)
    ),
    "sides": Key(
        "sides",
        fields.one_of("way to count sides", {"each": "each", "each side": "each", "in all": "in all"}),
    ),
    "squad": Key("squad", raw),
    "gym": Key("gym", raw),
    "people": Key("people", fields.whole(1)),
    "ages": Key("ages", fields.text),
    "staff": Key("staff", fields.whole()),
    "aim": Key("aim", fields.one_of("aim", get_args(Aim))),
    "sport": Key("sport", fields.text),
    "level": Key("level", fields.one_of("level", get_args(TrainingLevel))),
    "focus": Key("focus", _focus),
    "sets a week": Key("sets_a_week", sets_a_week),
    "follows": Key("follows", fields.text),
    "block": Key("block", week_of),
    "last week": Key("last_week", last_week),
    "schemes": Key("schemes", raw),
    "movements": Key("own_movements", raw),
    "training days": Key("training_days", raw),
    "rotate": Key("rotate", fields.placed_names),
    "lighter weeks": Key("lighter_weeks", raw),
    "stages": Key("stages", read_stages),
    "next": Key("next", read_next),
    "missed day": Key(
        "missed_day", fields.one_of("way with a missed day", ("resume", "skip", "restart the week"))
    ),
    "if interrupted": Key("if_interrupted", fields.text),
    "allow": Key("allow", allowed),
    "note": Key("note", fields.text),
    "private note": Key("private_note", fields.text),
    "sessions": Key("sessions", raw),
}
SINGLE: Final[Table] = {**SESSION_KEYS, **KEYS}
ELSEWHERE: Final = {
    **dict.fromkeys(ITEM_KEYS, "write it in line with the movement that it belongs to"),
    **dict.fromkeys(SESSION_KEYS, "write it in a session, in line with its `day:`"),
    **{day.casefold(): f"write `- day: {day}` under `sessions:`" for day in DAYS},
    "deload": "write `lighter weeks:` and under it the week, two blanks further in: `week 4: half the sets`",
}
"""What to do with keys at the top that belong further down."""
SESSION_FIELDS: Final = frozenset(entry.field for name, entry in SESSION_KEYS.items() if name not in KEYS)
