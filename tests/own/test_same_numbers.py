"""A movement typed with the geometry of a shipped one has its numbers."""

from collections.abc import Mapping
from typing import Any

import pytest

from setwright.library.rows import ElbowPath, Row, load_rows
from setwright.library.table import library
from setwright.model.own import OwnMovement
from setwright.own.body import model_size
from setwright.own.entry import described
from setwright.own.scoring import scored, unscored
from setwright.reading.gathering import Gathering
from tests.own.weeks import own, read, typed

BY_ELBOW = [
    row
    for row in load_rows()
    if isinstance(row.path, ElbowPath) and all(key.recline_deg is None for key in row.path.keys)
]
NAMES = {"key", "name", "aliases", "read_only_aliases", "own", "easier", "harder", "load_ratio", "partners"}
FIGURES = (
    "parts", "line", "tilt", "serves", "assists", "crossing", "past_midline", "resistance", "load_arm_cm",
    "refused", "extremes",
)  # fmt: skip


@pytest.mark.parametrize("row", load_rows(), ids=lambda row: row.key)
def test_like_without_changes_is_the_same_movement(row: Row) -> None:
    ours, theirs = own(f"ours:\n  like: {row.name}"), library().movement(row.key)
    assert {k: v for k, v in ours.items() if k not in NAMES} == {
        k: v for k, v in theirs.items() if k not in NAMES
    }
    if theirs["scored"]:
        assert [p["key"] for p in theirs["partners"]] == [
            p["key"] for p in ours["partners"] if not p["key"].startswith("own-")
        ]


def test_every_path_given_by_the_elbow_can_be_typed_and_gives_the_same_figures() -> None:
    together = "\n".join(
        typed(row.path, row.pattern).replace("ours:", f"ours {n} x:")
        for n, row in enumerate(BY_ELBOW)
        if isinstance(row.path, ElbowPath)
    )
    done = read(together)
    assert {f.rule for f in done.read.findings} <= {"own-movement-not-scored"}
    assert len(BY_ELBOW) > 30
    for n, row in enumerate(BY_ELBOW):
        ours, theirs = done.table.movement(f"own-ours-{n}-x"), library().movement(row.key)
        if row.key == "dumbbell-pullover":  # follows a line by name, not by its pattern
            continue
        for figure in FIGURES:
            close(ours[figure], theirs[figure])


def close(ours: Any, theirs: Any) -> None:
    """Equal, numbers to one in a million."""
    if isinstance(theirs, Mapping):
        assert ours.keys() == theirs.keys()
        for key, value in theirs.items():
            close(ours[key], value)
    elif isinstance(theirs, float):
        assert ours == pytest.approx(theirs, abs=1e-6)
    else:
        assert ours == theirs


def test_words_place_the_forearm_as_numbers_do() -> None:
    """Arm level and ahead, elbow at a right angle, forearm up: elbow to hand is straight up."""
    words = own(_one("elbow: 90", "forearm: up"))
    numbers = own(_one("forearm: [0, 2, 0]"))
    exact = own(_one("forearm: up"))
    assert words["parts"] == numbers["parts"] == exact["parts"]


def _one(*forearm: str) -> str:
    posture = "\n".join(f"      {line}" for line in forearm)
    return (
        "ours:\n  pattern: vertical push\n  torso: upright\n  load pulls: down\n  path:\n"
        f"    - at: start\n      plane: 90\n      up: 90\n{posture}\n"
        "    - at: end\n      plane: 90\n      up: 140\n"
    )


def test_a_straight_arm_needs_no_forearm() -> None:
    assert own(_one("elbow: 0"))["extremes"]["elbow"] == {"min": 0.0, "max": 0.0}


def test_what_is_not_scored_loses_every_mark_of_trust() -> None:
    bench = library().movement("flat-barbell-bench-press")
    marked = {
        **bench,
        "other_parts": {"deltoid_anterior": {"lever_mm": 31.0, "trust": "solid", "trust_why": None}},
    }
    told = unscored(marked, "The hand is out of reach.")
    assert told["other_parts"]["deltoid_anterior"] == {
        "lever_mm": 31.0, "trust": "not usable", "trust_why": "The hand is out of reach.",
    }  # fmt: skip
    assert told["serves"] == []
    assert {part["dose"] for part in told["parts"].values()} == {0}
    assert told["line"] == bench["line"]


def test_nothing_to_score_asks_nothing() -> None:
    assert list(scored([], {}, library(), model_size(), Gathering())) == []


def test_an_entry_of_ones_own_has_the_fields_of_the_library() -> None:
    squat = library().movement("back-squat")
    place = read("ours:\n  like: push-up").read.week
    assert place is not None
    (movement,) = place.own_movements
    assert isinstance(movement, OwnMovement)
    assert set(squat) - set(described(movement, Gathering())) <= {"body_share", "share_source"}
