"""Forms of JSON Schema from which kinds of value are made: text, a list, keys that are names, a choice.

Draft 07, because the YAML language server of the editors reads that best. Three habits of that server
are kept in mind: `examples` and `defaultSnippets` become proposals, annotations beside a `$ref` are shown,
and `oneOf` is explained on hover by the words of the key and not of its branches.
"""

import re
from collections.abc import Iterable, Mapping
from typing import Any, Final

from setwright.schema.words import Word

Schema = dict[str, Any]

EMPTY: Final[Schema] = {"not": {"type": ["string", "number", "array", "object"]}}
"""Nothing behind the colon: not written. Editors set to YAML 1.1 make a boolean of `yes`; that passes too."""
ONE: Final[Schema] = {"type": ["string", "number"]}
TEXT: Final[Schema] = {"oneOf": [ONE, EMPTY]}
ENTRY: Final[Schema] = {"not": {"type": ["array", "object"]}}
"""A text in a list: without `oneOf`, of which the server makes an empty proposal there."""
TEXTS: Final[Schema] = {"oneOf": [ONE, {"type": "array", "items": ENTRY}, EMPTY]}
"""One text, or a list of them."""
WHOLE: Final[Schema] = {
    "oneOf": [
        {"type": "string", "pattern": r"^\d{1,6}$", "patternErrorMessage": "Write a whole number."},
        {"type": "number"},
        EMPTY,
    ]
}

WEEKS: Final[Schema] = {
    name: {
        **TEXT,
        "title": name,
        "description": "The value of that week; or same (as the week before), as week 1, none (not this "
        "week), stop (not any more).",
        "examples": ["same", "as week 1", "none", "stop"],
    }
    for name in ("week 1", "week 2", "weeks 2-3")
}
BY_WEEK: Final[Schema] = {
    "oneOf": [ONE, {"type": "array", "items": ENTRY}, {"type": "object", "properties": WEEKS}, EMPTY]
}
"""One value; a list with one entry a week; or keys underneath, weeks or athletes."""


def ref(name: str) -> Schema:
    """What stands under ``definitions`` by this name."""
    return {"$ref": f"#/definitions/{name}"}


def list_of(entry: Schema) -> Schema:
    """A list, one entry a hyphen."""
    return {"items": entry, "oneOf": [{"type": "array"}, EMPTY]}


def by_name(value: Schema, names: Mapping[str, Schema] | None = None) -> Schema:
    """Keys that are names, with a value each; ``names`` are proposed."""
    return {
        "properties": dict(names or {}),
        "additionalProperties": value,
        "oneOf": [{"type": "object"}, EMPTY],
    }


def or_text(schema: Schema) -> Schema:
    """A text on the line, or what ``schema`` says of a list or of keys below it."""
    return {"oneOf": [ONE, schema, EMPTY]}


def proposing(schema: Schema, names: Iterable[str]) -> Schema:
    """The same schema with names that are proposed and not demanded."""
    return {**schema, "defaultSnippets": [{"label": name, "body": name} for name in names]}


def choice(word: Word) -> Schema:
    """One of the words of ``word``, in any case."""
    enum = _words(word)
    spelled: Schema = {"type": "string", "pattern": f"^{_any_of(word)}$", "not": enum}
    return proposing({"oneOf": [enum, spelled, EMPTY]}, word.choices)


def choices(word: Word) -> Schema:
    """Some of the words of ``word``, in any case, in a list or with commas between."""
    enum, one = _words(word), _any_of(word)
    typed: Schema = {"type": "string", "pattern": f"^{one}(?: *, *{one}?)*$", "not": enum}
    entry: Schema = {"pattern": f"^{one}$", "not": {"type": ["number", "array", "object"]}}
    listed: Schema = {"type": "array", "items": enum}
    spelled: Schema = {"type": "array", "items": entry, "not": {"items": enum}}
    return proposing({"oneOf": [enum, typed, listed, spelled, EMPTY]}, word.choices)


def _words(word: Word) -> Schema:
    """The words as the docs write them: proposed, and named in what the editor says of another."""
    return {"enum": list(word.choices), "enumDescriptions": list(word.choices.values())}


def _any_of(word: Word) -> str:
    """A pattern for every spelling that is read."""
    return f"(?:{'|'.join(any_case(spelling, ' +') for spelling in (*word.choices, *word.also))})"


def any_case(typed: str, blank: str) -> str:
    """A pattern for a word in capitals or not, ``blank`` being the pattern for each blank or hyphen.

    JSON Schema knows no flag for that.

    >>> any_case("to be", " +")
    '[tT][oO] +[bB][eE]'
    """
    return "".join(_letter(sign, blank) for sign in typed)


def exactly(typed: str) -> str:
    r"""A pattern for the text as it stands, in the form that JavaScript reads too.

    >>> print(exactly("curl (cable)"))
    curl \(cable\)
    """
    return re.sub(r"[\\^$.*+?()[\]{}|/]", r"\\\g<0>", typed)


def _letter(sign: str, blank: str) -> str:
    if sign in " -":
        return blank
    return f"[{sign.lower()}{sign.upper()}]" if sign.isalpha() else exactly(sign)
