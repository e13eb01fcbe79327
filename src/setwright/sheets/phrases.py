"""The fixed words of the sheets, by name; all of them stand in ``data/sheet-words.toml``."""

import tomllib
from collections.abc import Iterator, Mapping
from functools import cache
from pathlib import Path
from typing import Any, Final

WORDS_FILE: Final = Path(__file__).parents[1] / "data" / "sheet-words.toml"


def say(name: str, /, **holes: object) -> str:
    """One phrase, its braces filled in.

    >>> say("page.week", number=3)
    'week 3'
    """
    return str(phrases()[name]).format(**holes)


def series(name: str) -> tuple[str, ...]:
    """Phrases that belong in a row, such as the heads of a table.

    >>> series("log.halves")
    ('load', 'reps')
    """
    return tuple(phrases()[name])


@cache
def phrases() -> Mapping[str, str | list[str]]:
    """Every phrase as it is written, by its table and key: "page.week"."""
    return dict(_named(tomllib.loads(WORDS_FILE.read_text(encoding="utf-8"))))


def _named(tables: Mapping[str, Any]) -> Iterator[tuple[str, str | list[str]]]:
    for name, value in tables.items():
        if isinstance(value, dict):
            yield from ((f"{name}.{key}", phrase) for key, phrase in value.items())
        else:
            yield name, value
