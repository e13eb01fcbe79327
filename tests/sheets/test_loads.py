"""Loads as written, in the words of the sheet."""

import pytest

from setwright.reading.dose import Load
from setwright.sheets.loads import in_a_cell, load_words
from setwright.sheets.view import LoadWords
from tests.sheets.hand import kg


def percent(value: float, of: str | None = None) -> Load:
    return Load(kind="percent", low=value, high=value, unit="%", of=of)


@pytest.mark.parametrize(
    ("load", "words"),
    [
        (kg(60), LoadWords("60 kg")),
        (kg(62.5, 65), LoadWords("62.5–65 kg")),
        (kg(24, hands=2), LoadWords("2 × 24 kg", "one a hand")),
        (kg(80, rising=True), LoadWords("up to 80 kg")),
        (Load(kind="mass", low=60, high=60), LoadWords("60 kg")),
        (Load(kind="mass", low=135, high=135, unit="lb"), LoadWords("135 lb")),
        (percent(75), LoadWords("75 %", "of training max", "kg")),
        (percent(90, "top set"), LoadWords("90 %", "of the top set", "kg")),
        (percent(60, "bodyweight"), LoadWords("60 %", "of bodyweight", "kg")),
        (Load(kind="bodyweight"), LoadWords("body")),
        (Load(kind="bodyweight", plus=10, unit="kg"), LoadWords("body + 10", "kg added")),
        (
            Load(kind="bodyweight", plus=-20, plus_high=-25, unit="kg"),
            LoadWords("body − 20–25", "kg of help"),
        ),
        (Load(kind="rm", low=10, high=10), LoadWords("10RM", "what goes that often", "kg")),
        (Load(kind="bar"), LoadWords("empty bar")),
        (Load(kind="bar", plus=20, unit="kg"), LoadWords("bar + 20", "kg a side")),
        (Load(kind="band", name="red", low=1, high=1), LoadWords("red band")),
        (Load(kind="band", name="red", low=2, high=2), LoadWords("2 red bands")),
        (Load(kind="setting", name="pin", low=7, high=7), LoadWords("pin 7")),
        (Load(kind="speed", low=0.6, high=0.6), LoadWords("0.6 m/s")),
        (Load(kind="word", name="own choice"), LoadWords("", "own choice", "kg")),
        (Load(kind="last", name="last time", plus=5, unit="kg"), LoadWords("+ 5", "kg on last time", "kg")),
    ],
)
def test_load_words(load: Load, words: LoadWords) -> None:
    assert load_words(load, "kg", "training max") == words


def listed(*loads: Load) -> LoadWords | None:
    return in_a_cell([load_words(load, "kg", "tested max") for load in loads])


def test_no_load_is_not_zero() -> None:
    assert in_a_cell([]) is None


def test_loads_set_by_set_are_listed() -> None:
    assert listed(kg(60), kg(65), kg(70)) == LoadWords("60, 65, 70 kg")


def test_many_loads_are_first_to_last() -> None:
    assert listed(*(kg(weight) for weight in (60, 65, 70, 75, 80))) == LoadWords("60 to 80 kg")


def test_percents_set_by_set_keep_one_blank() -> None:
    assert listed(percent(70), percent(75)) == LoadWords("70, 75 %", "of tested max", "kg")


def test_loads_of_different_kinds_keep_their_own_words() -> None:
    bar = Load(kind="bar")
    assert listed(bar, kg(40)) == LoadWords("empty bar, 40 kg")
    assert listed(percent(75), kg(40)) == LoadWords("75 %, 40 kg", "", "kg")


def test_plates_of_several_loads_say_a_side_once() -> None:
    told = [LoadWords("60 kg", "20 a side"), LoadWords("62.5 kg", "20 + 1.25 a side")]
    assert in_a_cell(told) == LoadWords("60, 62.5 kg", "20; 20 + 1.25 a side")
    with_a_bar = [LoadWords(one.large, f"15 kg bar, {one.small}") for one in told]
    assert in_a_cell(with_a_bar) == LoadWords("60, 62.5 kg", "15 kg bar, 20; 20 + 1.25 a side")
    assert in_a_cell([told[0], with_a_bar[1]]) == LoadWords("60, 62.5 kg", "20; 15 kg bar, 20 + 1.25 a side")
    assert in_a_cell([*told, LoadWords("20 kg", "empty bar")]) == LoadWords("60, 62.5, 20 kg", "")
