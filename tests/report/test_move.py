"""What ``move`` prints."""

import json
import subprocess
import sys
from collections.abc import Mapping
from typing import Any

import pytest

from setwright.library.table import MODEL_NOTE, Match, library
from setwright.report.move import list_text, move_json, move_text, not_found
from setwright.report.phrases import PARTS, beyond, joined, loaded, partners, serves, stops

EVERY = [library().movement(key) for key in library().keys()]  # noqa: SIM118  # a Library is no mapping


def movement(key: str) -> Mapping[str, Any]:
    return library().movement(key)


def told(*keys: str) -> str:
    return move_text([movement(key) for key in keys])


def one_line(text: str) -> str:
    return " ".join(text.split())


def test_the_first_lines_say_it_in_plain_words() -> None:
    assert one_line(told("flat-barbell-bench-press")).startswith(
        "flat barbell bench press: follows the sternal line; the clavicular part of the chest works "
        "hardest, the front deltoid about as hard (soft); loaded long: clavicular and sternal; "
        "loaded short: none; the hand stops 36 cm short of the midline; "
        "the level cable crossover finishes it."
    )
    assert "the hand goes 18 cm past the midline; it finishes the" in one_line(told("level-cable-crossover"))


def test_the_table_and_the_strips_are_those_of_the_library() -> None:
    lines = told("level-cable-crossover").splitlines()
    assert "sternal      76       yes, 47 mm         84      0   yes     yes    1" in lines
    for part, figures in movement("level-cable-crossover")["parts"].items():
        assert f"{part:<13}{figures['strip']}" in lines


def test_the_figures_beside_the_table() -> None:
    text = one_line(told("flat-barbell-bench-press"))
    assert "Midline: hand 36 cm short, upper arm 34 deg short." in text
    assert "Line: sternal (tilt 0.34); serves sternal; finished by level cable crossover, " in text
    assert "Share: clavicular 28 %, sternal 46 % and costal 27 % at equal activation." in text
    assert "Arm: at most 21 deg behind the body, raised to 86 deg, turned out to 17 deg." in text
    assert "Load: heavy: both arms on one bar" in text
    assert MODEL_NOTE in text


def test_a_published_load_ratio_is_told_with_its_source() -> None:
    assert "0.95 times flat barbell bench press (" in one_line(told("close-grip-barbell-bench-press"))


def test_a_pull_that_loads_the_chest_says_that_it_counts_nothing() -> None:
    assert "Line: none; a pull: it loads costal too, which counts 0." in one_line(told("chin-up"))


def test_a_pull_that_loads_no_part_says_so() -> None:
    text = one_line(told("bench-pull"))
    assert "follows no line of the chest" in text
    assert "Share: no part of the chest is loaded along its line." in text
    assert "serves no part of the chest" in text


def test_an_arm_that_stays_in_front_is_never_behind_the_body() -> None:
    assert "Arm: never behind the body, raised to 165 deg." in one_line(told("dumbbell-pullover"))


def test_a_refused_movement_says_why() -> None:
    assert "where a strand of the model jumps: reported, not scored." in one_line(told("dumbbell-pullover"))


def test_a_tagged_movement_is_counted_and_not_scored() -> None:
    text = told("back-squat")
    assert text.startswith("barbell back squat: counted, not scored.")
    assert "Trains:  quadriceps and gluteus maximus\n" in text
    assert "Assists: adductor magnus" in text
    assert "Mechanical figures" not in text


def test_a_tagged_movement_without_helpers_lists_none() -> None:
    alone = next(one for one in EVERY if not one["scored"] and not one["assist"])
    assert "Assists" not in move_text([alone])


@pytest.mark.parametrize("one", EVERY, ids=lambda one: one["key"])
def test_every_movement_fits_the_screen_in_ascii(one: Mapping[str, Any]) -> None:
    text = move_text([one])
    assert text.isascii()
    assert text.endswith("\n")
    assert max(map(len, text.splitlines())) <= 80
    assert all(line == line.rstrip() for line in text.splitlines())


def test_several_movements_stand_side_by_side_three_to_a_block() -> None:
    text = told("flat-barbell-bench-press", "level-cable-crossover", "back-squat", "chin-up")
    assert max(map(len, text.splitlines())) <= 80
    first, second, ranks, note = text.split("\n\n")
    assert "line             sternal              sternal              -" in first
    assert "scored           yes                  yes                  no, counted" in first
    assert "  length         89 to 42 %           90 to 9 %            -" in first
    assert "finished by      level cable          -                    -" in first
    assert second.startswith("                 chin-up\n")
    assert "  work, 0-100    58                   93                   -" in first
    assert "  front deltoid  51 soft              70                   -" in first
    assert "sternal      level cable crossover 76, flat barbell bench press 41" in ranks
    assert "costal       level cable crossover 47, chin-up 42" in ranks
    assert one_line(note) == MODEL_NOTE


def test_a_block_of_counted_movements_is_short() -> None:
    assert "lever" not in told("back-squat", "goblet-squat")
    assert "clavicular" not in told("back-squat", "goblet-squat")


def test_the_whole_library_can_be_compared() -> None:
    text = move_text(EVERY)
    assert max(map(len, text.splitlines())) <= 80


def test_the_list_holds_every_name_once_under_its_pattern() -> None:
    text = list_text(EVERY)
    assert max(map(len, text.splitlines())) <= 80
    for one in EVERY:
        assert one["name"] in text
    assert "* flat barbell bench press" in text
    assert "  barbell back squat" in text


def test_json_holds_the_entries_without_names_that_are_only_read() -> None:
    data = json.loads(move_json([movement("guided-bar-bench-press"), movement("back-squat")]))
    assert data["format"] == "setwright-move/1"
    assert [one["key"] for one in data["movements"]] == ["guided-bar-bench-press", "back-squat"]
    assert "read_only_aliases" not in data["movements"][0]
    assert data["movements"][0]["parts"]["sternal"]["lever_mm"] > 0


def test_an_unknown_name_gets_the_nearest_and_a_word_with_two_readings_a_question() -> None:
    assert not_found("bnch", Match(nearest=("a", "b"))) == (
        'no movement is called "bnch"; the nearest are a and b. "setwright move" lists them all'
    )
    assert not_found("zzz", Match()) == 'no movement is called "zzz". "setwright move" lists them all'
    assert not_found("row", Match(ask="Which row?")) == "Which row?"


def test_phrases() -> None:
    assert joined([], "and") == ""
    assert joined(["one"], "and") == "one"
    assert beyond(0.2, "cm") == "at it"
    assert stops(0.2) == "stops at the midline"
    nothing = {part: {"loaded_long": "no", "loaded_short": "partly"} for part in PARTS}
    assert loaded(nothing) == "loaded long: none; loaded short: none"
    assert serves({"serves": ["sternal", "costal"]}) == "serves sternal and costal"
    assert partners({"partners": [{"name": "a", "finishes": False}]}) == []


def test_no_numpy_is_needed_to_explain_a_movement() -> None:
    code = (
        "import sys; from setwright.library.table import library; "
        "from setwright.report.move import move_text; "
        "move_text([library().movement('push-up')]); print('numpy' in sys.modules, 'yaml' in sys.modules)"
    )
    out = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert out.stdout.split() == ["False", "False"]
