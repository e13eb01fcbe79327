"""Every row of movements.yaml: form, closed lists, links, cautions, paths."""

import re
from collections import Counter
from copy import deepcopy
from math import dist
from typing import Any, get_args

import pytest
import yaml

from setwright.library.closed import ForceKind
from setwright.library.rows import (
    MOVEMENTS_FILE,
    ElbowPath,
    HandPath,
    Path,
    Row,
    RowError,
    load_rows,
    parse_rows,
)

TEXT = MOVEMENTS_FILE.read_text(encoding="utf-8")
RAW = yaml.load(TEXT, Loader=yaml.CSafeLoader)
ROWS = load_rows()
BY_KEY = {row.key: row for row in ROWS}
PATHS: dict[str, Path] = {row.key: row.path for row in ROWS if row.path}

REACH_M = 0.284 + 0.27
"""Upper arm and forearm to the grip, metres (header of movements.yaml)."""


def one_row(key: str = "flat-barbell-bench-press") -> dict[str, Any]:
    return deepcopy(next(row for row in RAW if row["key"] == key))


def test_the_library_holds_each_movement_once_and_loses_none() -> None:
    assert len(BY_KEY) == len({row.name for row in ROWS}) == len(ROWS) >= 185
    assert Counter(row.scored_by for row in ROWS) >= Counter(engine=91, tags=94)


def test_all_kinds_of_force_are_used() -> None:
    assert {path.force.kind for path in PATHS.values()} == set(get_args(ForceKind))


def as_typed(value: Any) -> Any:
    if isinstance(value, dict):
        return {key: as_typed(item) for key, item in value.items()}
    return [as_typed(item) for item in value] if isinstance(value, list) else str(value)


def test_yaml_means_what_it_shows() -> None:
    assert TEXT.isascii()
    assert as_typed(RAW) == yaml.load(TEXT, Loader=yaml.CBaseLoader)


def test_links_lead_to_other_movements() -> None:
    for row in ROWS:
        linked = {*row.easier, *row.harder, *([row.load_ratio.to] if row.load_ratio else [])}
        assert linked <= BY_KEY.keys() - {row.key}, row.key
        assert not set(row.easier) & set(row.harder), row.key


def test_every_row_says_what_it_trains() -> None:
    for row in ROWS:
        trained = [*row.muscles.prime, *row.muscles.assist]
        assert row.muscles.prime or row.path or row.pattern == "locomotion", row.key
        assert len(trained) == len(set(trained)), row.key


def test_a_measured_share_has_a_source_that_was_read() -> None:
    for row in ROWS:
        assert row.load.body_share is None or row.load.share_source, row.key
        assert "memory" not in f"{row.load.share_source} {row.load_ratio}", row.key


NOT_PLAIN = re.compile(
    r"\bnot with\b|pressure|impinge|instab|disease|syndrome|itis\b|hernia|painful arc|\bsigns?\b|\btests?\b"
    r"|pectoral length|end-range|\bmoment\b|abduction|\bengine\b|programme-science",
    re.IGNORECASE,
)


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row.key)
def test_cautions_are_plain_sentences(row: Row) -> None:
    assert row.cautions
    assert len(row.cautions) == len(set(row.cautions))
    for caution in row.cautions:
        assert re.fullmatch(r"[A-Z0-9]([^.:]|\.(?=\d))+\.", caution), caution
        assert not NOT_PLAIN.search(caution), caution
        assert len(caution) <= 150


def test_a_limit_sends_to_a_clinician() -> None:
    limits = [caution for row in ROWS for caution in row.cautions if "limited" in caution]
    assert limits
    assert all("ask a clinician first if" in caution.lower() for caution in limits)


NEVER_PRINTED = {
    "smith",
    "pendlay",
    "arnold",
    "pallof",
    "scott",
    "ez",
    "spin",
    "battle",
    "battling",
    "ski erg",
    "bike erg",
}


def holds_a_name(text: str) -> bool:
    words = f" {text.lower().replace('-', ' ')} "
    return any(f" {name} " in words for name in NEVER_PRINTED)


def test_persons_and_trade_marks_are_read_and_never_printed() -> None:
    for row in ROWS:
        texts = [row.name, *row.aliases, *row.cautions, row.loading.why, row.load.note or ""]
        assert not [text for text in texts if holds_a_name(text)], row.key
        assert all(holds_a_name(alias) for alias in row.read_only_aliases), row.key


@pytest.mark.parametrize(("key", "path"), PATHS.items(), ids=PATHS.keys())
def test_paths_stay_within_a_body(key: str, path: Path) -> None:
    assert 2 <= len(path.keys) <= 7
    assert len({posture.at for posture in path.keys}) == len(path.keys)
    if isinstance(path, HandPath):
        shoulder = (
            0.0,
            -0.05,
            0.18,
        )  # near the rested joint, metres; the girdle moves it by some centimetres
        assert all(dist(posture.hand_m, shoulder) < REACH_M + 0.15 for posture in path.keys)
    if path.force.point_m:
        assert dist(path.force.point_m, (0, 0, 0)) < 3.1
        assert path.force.point_words
    bent = {path.recline_deg(posture) for posture in path.keys}
    assert min(bent) <= path.torso.recline_deg <= max(bent), key


def test_recline_is_the_keys_own_or_the_torsos() -> None:
    leaning, flat = PATHS["parallel-bar-dip-leaning"], PATHS["flat-barbell-bench-press"]
    assert isinstance(leaning, ElbowPath)
    assert [leaning.recline_deg(key) for key in leaning.keys] == [-30, -20, -5]
    assert [flat.recline_deg(key) for key in flat.keys] == [90, 90, 90]


def message(row: dict[str, Any]) -> str:
    with pytest.raises(RowError) as error:
        parse_rows(yaml.safe_dump([row]))
    return str(error.value)


@pytest.mark.parametrize(
    ("field", "value"),
    [
        ("pattern", "sideways push"),
        ("implement", "anvil"),
        ("hands", "tied"),
        ("sides", "three"),
        ("muscles", {"prime": ["heart"]}),
        ("loading", {"class": "enormous", "why": "?"}),
        ("load", {"kind": "magnet", "write": "?"}),
        ("colour", "red"),
        ("key", "Bench Press"),
    ],
)
def test_a_value_outside_its_list_is_named_with_its_row(field: str, value: Any) -> None:
    text = message(one_row() | {field: value})
    wrong = value if isinstance(value, str) else next(iter(value.values()))
    assert (wrong if isinstance(wrong, str) else wrong[0]) in text
    assert field in text
    assert value == "Bench Press" or "flat-barbell-bench-press" in text


def test_a_row_without_a_key_is_named_as_such() -> None:
    row = one_row()
    del row["key"]
    assert "a row without a key" in message(row)


def test_scored_means_with_a_path() -> None:
    row = one_row()
    del row["path"]
    assert "exactly when the row has a path" in message(row)


def test_a_pulley_needs_its_place_and_gravity_has_none() -> None:
    row = one_row("level-cable-crossover")
    del row["path"]["force"]["point_m"]
    assert "point_m belongs to" in message(row)


def test_a_direction_has_length_one() -> None:
    row = one_row()
    row["path"]["keys"][0]["swivel"] = [1, 1, 0]
    assert "is not a direction of length 1" in message(row)
