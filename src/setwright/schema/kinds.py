"""The kinds of value that ``data/keys.yaml`` names, and the entries of lists, by their names."""

from typing import Final, get_args

from setwright.library.closed import Muscle, Pattern
from setwright.library.table import Library
from setwright.rules import RULES
from setwright.schema.forms import (
    BY_WEEK,
    EMPTY,
    ENTRY,
    ONE,
    TEXT,
    TEXTS,
    WEEKS,
    WHOLE,
    Schema,
    any_case,
    by_name,
    choice,
    choices,
    list_of,
    or_text,
    proposing,
    ref,
)
from setwright.schema.movements import explained, needs, proposed, proposed_first
from setwright.schema.words import Word, sections

DOSES: Final = ("3 x 8-10 at 2 RIR, rest 2:00", "3 x 10 each arm", "sets of 12, 10, 8 at 60, 65, 70 kg")
HOW_MANY: Final[Schema] = {
    **TEXT,
    "title": "how many",
    "description": "How many there are, or how many pairs.",
    "examples": [2, "1 pair", "2 pairs"],
}
MAX: Final[Schema] = {
    **TEXTS,
    "title": "max",
    "description": "A best lift, how and when it was found: tested, or estimated from several repetitions; "
    "a training max as a percent or a load.",
    "examples": [
        "55 kg tested 2026-12-14, training max 90%",
        "from 60 kg x 5 on 2026-12-14",
        "9 reps tested 2026-12-14",
        "none yet",
    ],
}
PERFORMED: Final[Schema] = {
    **TEXT,
    "title": "what was done",
    "description": "The load first, then the repetitions set by set; nothing typed is not written.",
    "examples": ["60 kg x 8, 8, 6 at RPE 8", "8, 8, 7", "done", "not done, no time left"],
}
LIGHTER: Final[Schema] = {
    **TEXT,
    "title": "lighter week",
    "description": "How the week is cut down; both may be joined by `and`.",
    "examples": ["half the sets", "80% of the load", "no training"],
}


def values(table: Library) -> dict[str, Schema]:
    """Kinds of value that stand behind a key, apart from choices."""
    names = table.names()
    return {
        "text": TEXT,
        "whole": WHOLE,
        "texts": TEXTS,
        "names": TEXTS,
        "by week": BY_WEEK,
        "dose": _dose(),
        "max": MAX,
        "performed": PERFORMED,
        "how many": HOW_MANY,
        "movement": proposing(TEXT, names),
        "movements": proposing(
            {"oneOf": [ONE, {"type": "array", "items": proposing(ENTRY, names)}, EMPTY]}, names
        ),
        "pattern": proposing(TEXT, get_args(Pattern)),
        "muscle names": proposing(TEXTS, get_args(Muscle)),
        "next": _next(),
        **_by_name(table),
        **_lists(),
        **_or_files(),
    }


def _next() -> Schema:
    """A sentence, or cases with a sentence each, one below the other or in a list."""
    cases: Schema = {"type": "object", "additionalProperties": TEXT}
    listed: Schema = {"type": "array", "items": or_text(cases)}
    return {"oneOf": [ONE, cases, listed, EMPTY]}


def _dose() -> Schema:
    below: Schema = {"type": "object", "properties": WEEKS, "allOf": [ref("item words")]}
    return proposing({"oneOf": [ONE, {"type": "array", "items": ENTRY}, below, EMPTY]}, DOSES)


def _by_name(table: Library) -> dict[str, Schema]:
    """Keys that are names: of movements, of rules, of the coach's own."""
    names = table.names()
    weekly = {muscle: _like("8-12", "at least 6") for muscle in sections()["plan"]["focus"].choices}
    weekly["pull to push"] = _like("at least 1")
    return {
        "allow": by_name(
            TEXT, {rule.id: {**_like("your reason"), "description": rule.summary} for rule in RULES}
        ),
        "bands": by_name(ref("band")),
        "done": by_name(list_of(ref("record line"))),
        "doses by name": by_name(ref("dose")),
        "instead": by_name(or_text({"type": "array", "items": ref("line")})),
        "lighter weeks": by_name(LIGHTER, {"week 4": LIGHTER, "every 4 weeks": LIGHTER}),
        "maxes": by_name(ref("max"), dict.fromkeys(names, ref("max"))),
        "movement by movement": by_name(ref("movement"), dict.fromkeys(names, ref("movement"))),
        "names by name": by_name(TEXTS),
        "sets a week": by_name(TEXT, weekly),
        "stages": by_name(ref("stage")),
        "stations": by_name(ref("how many"), dict.fromkeys(needs(table), ref("how many"))),
        "texts by movement": by_name(TEXT, dict.fromkeys(names, _like("12 sets", "300 reps", "60 kg"))),
        "weights": by_name(ref("how many")),
    }


def _like(*examples: str) -> Schema:
    return {**TEXT, "examples": list(examples)}


def _lists() -> dict[str, Schema]:
    return {
        "lines": list_of(ref("line")),
        "members": list_of(ref("member")),
        "minutes or lines": or_text({"type": "array", "items": ref("member")}),
        "sessions": list_of(ref("session")),
        "athletes": list_of(ref("athlete")),
        "limits": list_of(ref("limit")),
        "cables": list_of(ref("cable")),
        "postures": list_of(ref("posture")),
    }


def _or_files() -> dict[str, Schema]:
    """What may stand in a file of its own beside the plan, or underneath."""
    own: Schema = {"type": "object", "additionalProperties": ref("own movement")}
    return {
        "squad or file": or_text({"type": "object", "allOf": [ref("squad")]}),
        "gym or file": or_text({"type": "object", "allOf": [ref("gym")]}),
        "own movements or file": or_text(own),
    }


def entries(table: Library) -> dict[str, Schema]:
    """Sets of keys that stand together: files, and the entries of lists."""
    return {
        **{
            name: keys_of(name)
            for name in (
                "squad",
                "paper",
                "gym",
                "record",
                "session",
                "group",
                "limit",
                "posture",
                "muscles",
                "stage",
            )
        },
        **{name: keys_of(name, text_too=True) for name in ("athlete", "cable", "band")},
        "own movement": keys_of("own movement"),
        "plan": keys_of("plan", "session"),
        "item words": {"properties": _properties("item")},
        "member": {
            "oneOf": [{"type": "object"}, ONE, EMPTY],
            "allOf": [ref("item words"), explained(table), proposed(table)],
        },
        "line": _line(),
        "record line": {
            "properties": _properties("record line"),
            "additionalProperties": ref("performed"),
            **proposed_first(dict.fromkeys(table.names(), ref("performed"))),
        },
    }


def _line() -> Schema:
    """A line of a session's work: a group with its own keys, or a movement with its words."""
    groups = {key: _key(key, word) for key, word in sections()["group"].items() if word.kind == "members"}
    is_group: Schema = {"type": "object", "anyOf": [{"required": [word]} for word in groups]}
    alone: Schema = {"allOf": [ref("member"), proposed_first(groups)]}
    return {"if": is_group, "then": ref("group"), "else": alone}


def keys_of(*names: str, text_too: bool = False) -> Schema:
    """The keys of one or more sections of ``data/keys.yaml`` and no others, in any spelling that is read.

    ``text_too``: a text may stand in place of the keys.
    """
    properties = {key: schema for name in names for key, schema in _properties(name).items()}
    spellings = "|".join(any_case(key, "[ _-]+") for key in properties)
    return {
        "properties": properties,
        "patternProperties": {f"^(?:{spellings})$": {}},
        "additionalProperties": False,
        "oneOf": [{"type": "object"}, *([ONE] if text_too else []), EMPTY],
    }


def _properties(section: str) -> dict[str, Schema]:
    return {key: _key(key, word) for key, word in sections()[section].items()}


def _key(key: str, word: Word) -> Schema:
    examples = [int(typed) if typed.isdecimal() else typed for typed in word.example]
    return {
        "title": key,
        "description": word.says,
        **_value(word),
        **({"examples": examples} if examples else {}),
    }


def _value(word: Word) -> Schema:
    if word.kind == "choice":
        return choice(word)
    return choices(word) if word.kind == "choices" else ref(word.kind)
