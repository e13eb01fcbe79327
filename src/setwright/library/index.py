"""The name tables of the compiled library: spellings that are read, words that are asked about."""

from collections.abc import Iterable, Mapping
from pathlib import Path
from typing import Any, Final

import yaml

from setwright.library.names import fold
from setwright.library.rows import Row
from setwright.reading.nearest import choice

ASK_FILE: Final = Path(__file__).parents[1] / "data" / "ask.yaml"


class NameClashError(ValueError):
    """A name or word that stands for two things; the text says which name and which two."""


def load_asks() -> dict[str, list[str]]:
    """Words that name several movements, as typed, with the keys to choose from: ``data/ask.yaml``."""
    asks: dict[str, list[str]] = yaml.safe_load(ASK_FILE.read_text(encoding="utf-8"))
    return asks


def compile_names(
    rows: Iterable[Row], asks: Mapping[str, list[str]] | None = None
) -> dict[str, dict[str, Any]]:
    """The sections ``names`` and ``ambiguous`` of library.json.

    ``names``: folded name or alias to key. ``ambiguous``: folded word to {"question", "keys"}.
    ``asks``: by default those of ``load_asks``.
    Raises: NameClashError when a spelling belongs to two movements or is both read and asked about.
    """
    by_key = {row.key: row for row in rows}
    names: dict[str, str] = {}
    for row in by_key.values():
        for spelling in (row.key, row.name, *row.aliases, *row.read_only_aliases):
            owner = names.setdefault(fold(spelling), row.key)
            if owner != row.key:
                raise NameClashError(f"{spelling!r} belongs to two movements: {owner} and {row.key}")
    ambiguous: dict[str, Any] = {}
    for word, keys in (load_asks() if asks is None else asks).items():
        if fold(word) in names:
            raise NameClashError(f"{word!r} is asked about, but it is also a name of {names[fold(word)]}")
        ambiguous[fold(word)] = {
            "question": _question(word, [by_key[key].name for key in keys]),
            "keys": keys,
        }
    return {"names": names, "ambiguous": ambiguous}


def _question(word: str, choices: list[str]) -> str:
    return f"Which {word}: {choice(choices)}? Write the whole name."
