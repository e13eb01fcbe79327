"""Look-up by name in a small compiled library, and in the shipped one."""

import json
import subprocess
import sys
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from setwright.library import table
from setwright.library.index import compile_names
from setwright.library.names import fold, pairs, without_dose_words
from setwright.library.rows import load_rows
from setwright.library.table import Library, Match, library

ROWS = load_rows()
DATA = {"movements": {row.key: {"key": row.key, "name": row.name} for row in ROWS}, **compile_names(ROWS)}
LIBRARY = Library(DATA)


def test_a_known_name_gives_key_and_own_name() -> None:
    assert LIBRARY.find("DB Bench-Presses") == Match("flat-dumbbell-bench-press", "flat dumbbell bench press")
    assert LIBRARY.movement("push-up")["name"] == "push-up"
    assert LIBRARY.names() == [row.name for row in ROWS]


def test_the_shipped_library_is_what_is_in_its_file() -> None:
    data = json.loads(table.LIBRARY_FILE.read_text(encoding="utf-8"))
    shipped = library()
    assert {key: shipped.movement(key) for key in shipped.keys()} == data["movements"]  # noqa: SIM118 - keys() of the library


def test_a_persons_name_is_read_and_answered_with_ours() -> None:
    assert LIBRARY.find("Pendlay rows").name == "dead-stop barbell row"
    assert LIBRARY.find("Pendley row").nearest[0] == "dead-stop barbell row"


@pytest.mark.parametrize("word", ["row", "Rows", "PRESS", "flyes", "er"])
def test_a_word_with_two_readings_is_a_question(word: str) -> None:
    match = LIBRARY.find(word)
    assert match.key is None
    assert match.ask
    assert match.ask.endswith("Write the whole name.")
    assert match.nearest == ()


@pytest.mark.parametrize(
    ("typed", "key", "stripped"),
    [
        ("paused bench press", "flat-barbell-bench-press", ("paused",)),
        ("Tempo push-ups", "push-up", ("tempo",)),
        ("bench press with chains", "flat-barbell-bench-press", ("chains",)),
        ("left one-arm dumbbell row", "one-arm-dumbbell-row", ("left",)),
        ("seated cable row", "close-grip-seated-cable-row", ()),
        ("half-kneeling landmine press", "one-arm-landmine-press", ()),
    ],
)
def test_words_of_the_dose_are_reported(typed: str, key: str, stripped: tuple[str, ...]) -> None:
    match = LIBRARY.find(typed)
    assert (match.key, match.stripped) == (key, stripped)


def test_a_question_keeps_the_words_of_the_dose() -> None:
    assert LIBRARY.find("paused row").stripped == ("paused",)


@pytest.mark.parametrize(
    ("typed", "first"),
    [
        ("flat barbel bench pres", "flat barbell bench press"),
        ("inclined dumbel press", "incline 30 dumbbell bench press"),
        ("cabel crosover", "level cable crossover"),
        ("chest suported row", "chest-supported dumbbell row"),
        ("incline bench press 30", "incline 30 barbell bench press"),
        ("hammstring curl", "leg curl"),
        ("paused benchpres", "flat barbell bench press"),
        ("low to hi crossover", "low-to-high cable crossover"),
    ],
)
def test_typing_errors_find_the_name_meant(typed: str, first: str) -> None:
    match = LIBRARY.find(typed)
    assert match.key is None
    assert match.nearest[0] == first
    assert 1 <= len(match.nearest) <= table.NEAREST


@given(st.text("abcdehilnoprstu ", max_size=30))
def test_the_names_proposed_are_the_likest_of_all(typed: str) -> None:
    """Against the plain way: the Dice coefficient (Dice, Ecology 1945) of every name, ranked."""
    match = LIBRARY.find(typed)
    if match.key or match.ask:
        return
    letters = pairs(fold(without_dose_words(typed)[0]))
    best: dict[str, float] = {}
    for folded, key in DATA["names"].items():
        other = pairs(folded)
        dice = 2 * len(letters & other) / (len(letters) + len(other))
        best[key] = max(best.get(key, 0.0), dice)
    ranked = sorted((-dice, key) for key, dice in best.items() if dice >= table.LIKE_ENOUGH)
    assert match.nearest == tuple(DATA["movements"][key]["name"] for _, key in ranked[: table.NEAREST])


@pytest.mark.parametrize("typed", ["", "???", "zumba", "left"])
def test_nothing_near_proposes_nothing(typed: str) -> None:
    assert LIBRARY.find(typed) == Match()


@given(st.text(max_size=60))
def test_any_text_gives_a_match_of_printable_names(text: str) -> None:
    match = LIBRARY.find(text)
    assert sum(map(bool, (match.key, match.ask, match.nearest))) <= 1
    assert set(match.nearest) <= set(LIBRARY.names())


def test_the_library_is_read_once_from_its_file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    file = tmp_path / "library.json"
    file.write_text(json.dumps(DATA), encoding="utf-8")
    monkeypatch.setattr(table, "LIBRARY_FILE", file)
    library.cache_clear()
    try:
        assert library().find("dip").key == "parallel-bar-dip-leaning"
        assert library() is library()
    finally:
        library.cache_clear()


def test_look_up_loads_neither_numpy_nor_yaml_nor_models() -> None:
    code = (
        "import sys, setwright.library.table as t;"
        "t.Library({'movements': {}, 'names': {}, 'ambiguous': {}}).find('dip');"
        "print({'numpy', 'yaml', 'pydantic', 'jinja2'} & sys.modules.keys())"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "set()"
