"""Words for work."""

import copy
from typing import Any

import pytest

from setwright.library.table import library
from setwright.report.working import beside, figure, gives_out, hardest, ranking, trust


def movement(key: str, **changed: Any) -> dict[str, Any]:
    return {**copy.deepcopy(dict(library().movement(key))), **changed}


@pytest.mark.parametrize(
    ("key", "said"),
    [
        (
            "incline-45-barbell-bench-press",
            "the clavicular part of the chest works hardest, the front deltoid harder still (soft)",
        ),
        ("parallel-bar-dip-leaning", "the sternal and costal parts of the chest work hardest (soft)"),
        ("bench-pull", "the chest hardly works, the rear deltoid hardest (soft)"),
        ("dumbbell-pullover", "work not told"),
    ],
)
def test_which_part_works_hardest(key: str, said: str) -> None:
    assert hardest(movement(key)) == said


def test_the_parts_beside_the_chest_come_hardest_first_with_their_marks() -> None:
    assert beside(movement("dumbbell-lateral-raise")) == "side deltoid 77 soft, front deltoid 61."
    assert beside(movement("dumbbell-pullover")) == "nothing to tell."


def test_where_a_set_ends() -> None:
    assert gives_out(movement("flat-barbell-bench-press")) == "weakest at the start of the lift (soft)."
    assert gives_out(movement("flat-dumbbell-fly")).endswith("(soft). Light by nature.")
    assert gives_out(movement("close-grip-barbell-bench-press")).startswith("the elbow gives out before")
    assert gives_out(movement("dumbbell-pullover")) == "not told."


def test_trust_names_the_solid_parts_and_gives_the_others_their_reason() -> None:
    told = list(trust(movement("parallel-bar-dip-leaning")))
    assert told[0].startswith("solid: line, midline, lever, length.")
    assert told[1] == "Work ranks movements for sternal and costal; under 10 points apart is a tie."
    assert any(one.startswith("Work of clavicular soft: it hangs on") for one in told)
    assert not any("ranks" in one for one in trust(movement("dumbbell-pullover")))


def test_movements_are_ranked_for_each_part_that_any_of_them_works() -> None:
    press, pull, pullover, squat = (
        movement(key) for key in ("flat-barbell-bench-press", "bench-pull", "dumbbell-pullover", "back-squat")
    )
    assert list(ranking([pull, press, pullover, squat])) == [
        "clavicular   flat barbell bench press 58",
        "sternal      flat barbell bench press 41",
        "costal       flat barbell bench press 17",
    ]
    assert list(ranking([pull, squat])) == []


def test_figures_carry_their_mark() -> None:
    assert figure({"work": 70.4, "trust": "solid"}) == "70"
    assert figure({"work": 70.4, "trust": "soft"}) == "70 soft"
    assert figure({"work": 70.4, "trust": "not usable"}) == "-"
