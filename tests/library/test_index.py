"""The name tables: no spelling for two movements, every word with two readings asked about."""

import pytest

from setwright.library.index import NameClashError, compile_names, load_asks
from setwright.library.names import fold
from setwright.library.rows import load_rows

ROWS = load_rows()
TABLES = compile_names(ROWS)


def test_every_spelling_leads_to_its_row() -> None:
    for row in ROWS:
        for spelling in (row.key, row.name, *row.aliases, *row.read_only_aliases):
            assert TABLES["names"][fold(spelling)] == row.key


@pytest.mark.parametrize(
    "word", ["row", "press", "fly", "raise", "curl", "extension", "incline", "ER", "press machine"]
)
def test_words_with_two_readings_are_asked_about(word: str) -> None:
    entry = TABLES["ambiguous"][fold(word)]
    assert len(entry["keys"]) > 1
    assert entry["question"].startswith(f"Which {word}: ")
    assert entry["question"].endswith("? Write the whole name.")


def test_questions_offer_the_librarys_names() -> None:
    names = {row.key: row.name for row in ROWS}
    for word, keys in load_asks().items():
        assert len(set(keys)) == len(keys) > 1, word
        assert all(names[key] in TABLES["ambiguous"][fold(word)]["question"] for key in keys)


def test_one_spelling_for_two_movements_is_refused() -> None:
    first, second = ROWS[:2]
    thief = second.model_copy(update={"aliases": ("Bench-Presses",)})
    with pytest.raises(
        NameClashError, match="'Bench-Presses' belongs to two movements: flat-barbell-bench-press and wide"
    ):
        compile_names([first, thief], {})


def test_a_word_is_read_or_asked_about_but_not_both() -> None:
    with pytest.raises(
        NameClashError, match="'bench' is asked about, but it is also a name of flat-barbell-bench-press"
    ):
        compile_names(ROWS[:2], {"bench": ["flat-barbell-bench-press", "wide-grip-barbell-bench-press"]})
