"""The words for editors and the tables of the readers name the same keys and the same choices."""

import importlib
import pkgutil
from collections.abc import Mapping

import pytest

from setwright.model import reader
from setwright.model.days import DAYS, SHORTEST_DAY
from setwright.model.muscles import GROUP_WORDS
from setwright.model.reader import (
    group,
    gym,
    item,
    own,
    pulled,
    record,
    reuse,
    session,
    squad,
    stages,
    stationery,
    top,
)
from setwright.model.reader.keys import Key, Table, shown
from setwright.reading.fields import OneOf
from setwright.schema.words import sections

TABLES: Mapping[str, Table] = {
    "plan": top.KEYS,
    "session": session.KEYS,
    "item": item.KEYS,
    "group": group.KEYS,
    "own movement": own.KEYS,
    "muscles": own.MUSCLE_KEYS,
    "posture": own.POSTURE_KEYS,
    "squad": squad.KEYS,
    "paper": stationery.KEYS,
    "athlete": squad.ATHLETE_KEYS,
    "limit": squad.LIMIT_KEYS,
    "gym": gym.KEYS,
    "cable": pulled.CABLE_KEYS,
    "band": pulled.BAND_KEYS,
    "stage": stages.KEYS,
    "record": record.KEYS,
    "record line": record.LINE_KEYS,
}
TOGETHER = (top.SINGLE, reuse.KEYS)
"""Tables put together from others."""

CHOICES = [
    pytest.param(name, key, entry.read, id=f"{name}: {key}")
    for name, table in TABLES.items()
    for key, entry in table.items()
    if isinstance(entry, Key) and isinstance(entry.read, OneOf)
]


def _tables_of_the_readers() -> list[Table]:
    found = {}
    for module in pkgutil.iter_modules(reader.__path__, f"{reader.__name__}."):
        for value in vars(importlib.import_module(module.name)).values():
            if isinstance(value, Mapping) and value and all(isinstance(v, Key) for v in value.values()):
                found[id(value)] = value
    return list(found.values())


def test_every_table_of_the_readers_has_a_section() -> None:
    known = {id(table) for table in (*TABLES.values(), *TOGETHER)}
    missing = [sorted(table) for table in _tables_of_the_readers() if id(table) not in known]
    assert missing == [], "name the table in TABLES above, and its keys in data/keys.yaml"
    assert set(sections()) == set(TABLES)


@pytest.mark.parametrize("name", TABLES)
def test_a_section_names_the_keys_that_are_read_and_no_others(name: str) -> None:
    assert set(sections()[name]) == {shown(key) for key in TABLES[name]}


@pytest.mark.parametrize(("name", "key", "read"), CHOICES)
def test_the_choices_of_a_key_are_the_words_that_are_read(name: str, key: str, read: OneOf) -> None:
    word = sections()[name][shown(key)]
    assert word.kind == "choice"
    assert {one.casefold() for one in word.choices} == set(read.spellings.values())
    assert {one.casefold() for one in (*word.choices, *word.also)} == set(read.spellings)


def test_the_choices_that_readers_of_their_own_read() -> None:
    focus, ban, day = sections()["plan"]["focus"], sections()["limit"]["no"], sections()["session"]["day"]
    assert set(focus.choices) == set(GROUP_WORDS.values())
    assert {*focus.choices, *focus.also} == set(GROUP_WORDS)
    assert tuple(ban.choices) == squad.BANNED
    assert tuple(day.choices) == DAYS
    begun = {name[:letters] for name in DAYS for letters in range(SHORTEST_DAY, len(name) + 1)}
    assert begun == {one for one in (*day.choices, *day.also) if not one.endswith(".")}


@pytest.mark.parametrize("name", sections())
def test_every_key_is_explained_in_whole_sentences(name: str) -> None:
    for key, word in sections()[name].items():
        assert word.says[0].isupper(), key
        assert word.says[-1] == ".", key
        assert bool(word.choices) == (word.kind in {"choice", "choices"}), key
