"""The schema of one kind of file: its keys, and the definitions that they need."""

import json
import re
from collections.abc import Mapping
from typing import Final, Literal

from setwright import __version__
from setwright.library.table import library
from setwright.schema.forms import Schema
from setwright.schema.kinds import entries, values
from setwright.schema.movements import definitions

Kind = Literal["plan", "squad", "gym", "record"]

DRAFT: Final = "http://json-schema.org/draft-07/schema#"


def schema_text(kind: Kind) -> str:
    """The JSON Schema (draft 07) of a plan, a squad, a gym or a record; ends with a line break."""
    table = library()
    everything = {**values(table), **entries(table), **definitions(table)}
    root: Schema = {
        "$schema": DRAFT,
        "title": f"Setwright {kind}",
        "description": f"The keys of a {kind}, by Setwright {__version__}. `setwright check` says the rest.",
        **everything[kind],
    }
    root["definitions"] = _needed(root, everything)
    return json.dumps(root, ensure_ascii=False, separators=(",", ":")) + "\n"


def _needed(root: Schema, everything: Mapping[str, Schema]) -> dict[str, Schema]:
    """The definitions that ``root`` names, and those that they name."""
    needed: dict[str, Schema] = {}
    ahead = [root]
    while ahead:
        for name in re.findall(r'"#/definitions/([^"]+)"', json.dumps(ahead.pop())):
            if name not in needed:
                needed[name] = everything[name]
                ahead.append(everything[name])
    return needed
