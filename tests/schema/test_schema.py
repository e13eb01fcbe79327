"""The schemas: valid draft 07, silent on what is read without a finding, loud on what is surely wrong."""

import json
import re
from pathlib import Path
from typing import get_args

import pytest
import yaml
from hypothesis import given
from hypothesis import strategies as st
from jsonschema import Draft7Validator

from setwright.library.table import library
from setwright.model.reader import top
from setwright.model.reader.keys import Key
from setwright.places import Place
from setwright.reading.faults import TextRule
from setwright.reading.fields import OneOf
from setwright.reading.file_rules import RULES as FILE_RULES
from setwright.reading.gathering import Gathering
from setwright.reading.key_rules import RULES as KEY_RULES
from setwright.reading.nodes import Scalar
from setwright.rules import RULES, Rule
from setwright.schema import Kind, schema_text
from setwright.schema.movements import sentence
from setwright.schema.words import sections
from tests.reading.plans import read, whole_plan
from tests.schema.core import faults, validator
from tests.schema.files import EVERYTHING, EXAMPLES, RECORD, ROOT, WEEKS, kind_of

KINDS: tuple[Kind, ...] = get_args(Kind)
LARGEST = 300_000
"""Bytes of a schema (choice: what an editor reads without a pause)."""


@pytest.mark.parametrize("kind", KINDS)
def test_a_schema_is_draft_07_small_and_whole(kind: Kind) -> None:
    text = schema_text(kind)
    schema = json.loads(text)
    Draft7Validator.check_schema(schema)
    assert len(text.encode()) < LARGEST
    assert text.endswith("}\n")
    named = {name for part in text.split('"#/definitions/')[1:] for name in [part.split('"')[0]]}
    assert named == set(schema["definitions"])


@pytest.mark.parametrize("path", [*EXAMPLES, *WEEKS], ids=lambda path: path.stem)
def test_example_files_are_without_fault(path: Path) -> None:
    assert faults(kind_of(path), path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize("rule", RULES, ids=lambda rule: rule.id)
def test_the_plans_of_the_rules_are_without_fault(rule: Rule) -> None:
    assert faults("plan", rule.bad) == faults("plan", rule.good) == []


@pytest.mark.parametrize("rule", [*FILE_RULES, *KEY_RULES], ids=lambda rule: rule.id)
def test_what_is_read_without_a_finding_is_without_fault(rule: TextRule) -> None:
    plan = whole_plan(rule.good)
    assert read(plan).findings == ()
    assert faults("plan", plan) == []


PLAN_IN_A_PAGE = re.compile(r"^```yaml\n((?:# [^\n]*\n)?plan:.*?)^```$", re.MULTILINE | re.DOTALL)


@pytest.mark.parametrize("page", ["README.md", "docs/plan-language.md"])
def test_the_plans_of_the_docs_are_without_fault(page: str) -> None:
    plans = PLAN_IN_A_PAGE.findall((ROOT / page).read_text(encoding="utf-8"))
    assert plans
    for plan in plans:
        assert faults("plan", plan) == []


def test_a_plan_with_every_word_of_the_language_is_without_fault() -> None:
    assert faults("plan", EVERYTHING) == []


def test_a_record_is_without_fault() -> None:
    assert faults("record", RECORD) == []


@pytest.mark.parametrize(
    ("kind", "text"),
    [
        ("plan", "aim: sizes"),
        ("plan", "aim: [size]"),
        ("plan", "aimm: size"),
        ("plan", "focus: [chst]"),
        ("plan", "focus: [pecs, 3]"),
        ("plan", "focus: chest, chst"),
        ("plan", "people: six"),
        ("plan", "work: 3 x 8"),
        ("plan", "note: [a, b]"),
        ("plan", "work:\n  - superset:\n      - dip: 3 x 8\n    tempo: 3-1-1-0"),
        ("plan", "work:\n  - [dip]"),
        ("plan", "sessions:\n  - dip: 3 x 8"),
        ("plan", "gym:\n  racks: two"),
        ("squad", "athletes:\n  - name: Isla\n    handed: both"),
        ("squad", "athletes:\n  - name: Isla\n    limits:\n      - no: [heavy things]"),
        ("gym", "spotter: perhaps"),
        ("record", "done:\n  - dip: 8"),
    ],
)
def test_what_is_surely_wrong_is_a_fault(kind: Kind, text: str) -> None:
    assert len(faults(kind, text)) == 1


@pytest.mark.parametrize("path", EXAMPLES, ids=lambda path: path.stem)
def test_an_editor_set_to_yaml_1_1_marks_nothing_either(path: Path) -> None:
    """There a date is a date, `yes` is a boolean, and so is the key `no`."""
    loaded = yaml.safe_load(path.read_text(encoding="utf-8"))
    assert validator(kind_of(path)).is_valid(with_keys_of_text(loaded))


KEYS_OF_1_1 = {False: "no"}


def with_keys_of_text(loaded: object) -> object:
    """What was loaded with every key as text: an editor's objects have no others."""
    if isinstance(loaded, dict):
        return {KEYS_OF_1_1.get(key, key): with_keys_of_text(value) for key, value in loaded.items()}
    return [with_keys_of_text(value) for value in loaded] if isinstance(loaded, list) else loaded


def test_capitals_and_hyphens_in_keys_make_no_difference() -> None:
    assert (
        faults("plan", "Plan: A\nDays_to-Match: 2\nCOOL DOWN: rowing\nwarm up: 8\nDay: mon\nwork: []") == []
    )


CHOICE_READERS = {
    key: entry.read
    for key, entry in top.KEYS.items()
    if isinstance(entry, Key) and isinstance(entry.read, OneOf)
}
SPELLINGS = sorted({spelling for read_one in CHOICE_READERS.values() for spelling in read_one.spellings})


@given(st.sampled_from(sorted(CHOICE_READERS)), st.sampled_from(SPELLINGS), st.data())
def test_a_choice_is_a_fault_exactly_when_the_reader_refuses_it(
    key: str, word: str, data: st.DataObject
) -> None:
    typed = "".join(data.draw(st.sampled_from((sign, sign.upper(), sign * 2))) for sign in word)
    read_as = CHOICE_READERS[key](Scalar(typed, Place("week.yaml", 1, 1, 1, 2)), Gathering())
    assert validator("plan").is_valid({key: typed}) is (read_as is not None)


def test_every_movement_is_proposed_and_explained_by_each_of_its_names() -> None:
    schema = json.loads(schema_text("plan"))
    _, explained, proposed = schema["definitions"]["member"]["allOf"]
    keys = proposed["then"]["properties"]
    movements = [library().movement(key) for key in library().keys()]  # noqa: SIM118  # no dict
    assert not any(name in keys for one in movements for name in one["read_only_aliases"])
    assert set(keys) == {name for one in movements for name in (one["name"], *one["aliases"])}
    for one in movements:
        for spelling in (one["name"], *one["aliases"]):
            (shown,) = (
                s for pattern, s in explained["patternProperties"].items() if re.search(pattern, spelling)
            )
            assert shown == keys[spelling]
            told = schema["definitions"][shown["$ref"].rpartition("/")[2]]
            assert (told["title"], told["description"]) == (one["name"], sentence(one))


@pytest.mark.parametrize(
    ("name", "kind", "trains"),
    [
        ("dip", "Downward push, loaded by bodyweight (load: BW, BW+kg or BW-kg)", "serves the costal part"),
        (
            "face pull",
            "Horizontal pull, loaded by cable (load: stack setting)",
            "serves no part of the chest",
        ),
        (
            "leg curl",
            "Knee flexion, loaded by machine (load: stack setting or plates)",
            "counted for hamstrings",
        ),
        (
            "run",
            "Locomotion (load: seconds, metres or calories)",
            "counted for quadriceps, gluteus maximus and hamstrings",
        ),
    ],
)
def test_a_movement_in_one_sentence(name: str, kind: str, trains: str) -> None:
    key = library().find(name).key
    assert key is not None
    assert sentence(library().movement(key)) == f"{kind}; {trains}."


def test_kinds_that_keys_name_are_all_there_and_all_used() -> None:
    named = {word.kind for section in sections().values() for word in section.values()} - {
        "choice",
        "choices",
    }
    made = set().union(*(json.loads(schema_text(kind))["definitions"] for kind in KINDS))
    assert named <= made
