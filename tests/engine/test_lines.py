"""Which line a movement follows, and which crossing move finishes which press."""

from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from setwright.engine.lines import Line, agree, along_line, crosses, follows, line, ranked, served
from setwright.library.table import library

LIBRARY = library()


def movement(key: str) -> Any:
    return LIBRARY.movement(key)


def finishers(key: str) -> list[str]:
    return [one["key"] for one in movement(key)["partners"] if one["finishes"]]


@pytest.mark.parametrize(
    ("profile", "name"),
    [
        ((1.0, 0.5, -0.3), "clavicular"),
        ((0.60, 0.45, 0.14), "between clavicular and sternal"),
        ((0.8, 0.6, 0.4), "sternal"),
        ((0.82, 0.92, 0.80), "between sternal and costal"),
        ((0.7, 0.9, 1.0), "costal"),
        ((0.29, 0.1, -0.2), "none"),
    ],
)
def test_tilt_names_the_line(profile: tuple[float, float, float], name: str) -> None:
    assert line(profile).name == name


@given(st.tuples(*[st.floats(-1, 1)] * 3))
def test_every_profile_has_one_name_and_agrees_with_itself_when_it_has_a_line(
    profile: tuple[float, float, float],
) -> None:
    found = line(profile)
    assert agree(found.name, found.name) is (found.tilt is not None)
    assert len(found.parts) <= 2


def test_between_agrees_with_both_neighbours_only() -> None:
    between = Line(0.6, ("clavicular", "sternal")).name
    assert agree(between, "clavicular")
    assert agree(between, "sternal")
    assert not agree(between, "costal")


def test_a_part_serves_by_line_or_by_an_outstanding_share_with_a_lever() -> None:
    path = Line(0.3, ("sternal",))
    assert served(path, (0.33, 0.45, 0.22), (True, True, True)) == ("clavicular", "sternal")
    assert served(path, (0.32, 0.45, 0.23), (True, True, True)) == ("sternal",)
    assert served(path, (0.33, 0.45, 0.22), (False, True, True)) == ("sternal",)


def test_lever_and_cosine_both_count() -> None:
    assert along_line(10, 0.3)
    assert not along_line(9.9, 1)
    assert not along_line(50, 0.29)


def test_hand_and_arm_must_both_cross() -> None:
    assert crosses(15, 3)
    assert not crosses(14.9, 20)
    assert not crosses(40, 2.9)


def test_pulls_follow_no_line_but_the_pull_over_does() -> None:
    assert not follows("horizontal pull", "bench-pull")
    assert follows("shoulder extension", "dumbbell-pullover")


def test_ranking_keeps_every_candidate_once() -> None:
    candidates = {"a": (0.9, True, False), "b": (0.8, True, True), "c": (0.999, False, False)}
    assert ranked(candidates) == ["a", "b", "c"]


@pytest.mark.parametrize(
    ("key", "name"),
    [
        ("incline-45-barbell-bench-press", "clavicular"),
        ("incline-30-barbell-bench-press", "clavicular"),
        ("low-to-high-cable-crossover", "clavicular"),
        ("close-grip-barbell-bench-press", "between clavicular and sternal"),
        ("flat-barbell-bench-press", "sternal"),
        ("push-up", "sternal"),
        ("decline-15-barbell-bench-press", "sternal"),
        ("level-cable-crossover", "sternal"),
        ("parallel-bar-dip-leaning", "costal"),
        ("parallel-bar-dip-upright", "costal"),
        ("ring-dip", "costal"),
        ("bench-dip", "costal"),
        ("high-to-low-cable-crossover", "costal"),
        ("dumbbell-pullover", "costal"),
    ],
)
def test_movements_of_the_library_follow_the_line_of_the_trade(key: str, name: str) -> None:
    assert movement(key)["line"] == name


@pytest.mark.parametrize(
    "key",
    [
        "incline-machine-chest-press", "incline-30-dumbbell-fly", "incline-30-dumbbell-bench-press",
        "feet-raised-push-up",
    ],
)  # fmt: skip
def test_loads_that_stand_out_serve_the_clavicular_part(key: str) -> None:
    assert "clavicular" in movement(key)["serves"]


@pytest.mark.parametrize(
    ("press", "partner"),
    [
        ("flat-barbell-bench-press", "level-cable-crossover"),
        ("flat-barbell-bench-press", "one-arm-band-press-across"),
        ("incline-30-barbell-bench-press", "low-to-high-cable-crossover"),
        ("incline-45-barbell-bench-press", "low-to-high-cable-crossover"),
        ("decline-15-barbell-bench-press", "one-arm-cable-fly-across"),
        ("decline-15-barbell-bench-press", "level-cable-crossover"),
        ("parallel-bar-dip-leaning", "high-to-low-cable-crossover"),
        ("parallel-bar-dip-upright", "high-to-low-cable-crossover"),
        ("ring-dip", "high-to-low-cable-crossover"),
        ("bench-dip", "high-to-low-cable-crossover"),
        ("push-up", "level-cable-crossover"),
        ("push-up", "one-arm-band-press-across"),
        ("barbell-floor-press", "one-arm-band-press-across"),
    ],
)
def test_the_pairs_that_the_trade_teaches(press: str, partner: str) -> None:
    assert partner in finishers(press)
    assert press in finishers(partner)


def test_a_wrong_line_never_finishes_a_press() -> None:
    assert finishers("flat-barbell-bench-press")[0] == "level-cable-crossover"
    assert "low-to-high-cable-crossover" not in finishers("flat-barbell-bench-press")
    assert "level-cable-crossover" not in finishers("incline-45-barbell-bench-press")
    assert set(finishers("parallel-bar-dip-leaning")) == {
        "high-to-low-cable-crossover", "one-arm-high-to-low-cable-fly-across",
    }  # fmt: skip


def test_partners_come_best_first_those_that_finish_before_the_rest() -> None:
    for key in ("flat-barbell-bench-press", "parallel-bar-dip-leaning"):
        finishes = [one["finishes"] for one in movement(key)["partners"]]
        assert finishes == sorted(finishes, reverse=True)


def test_crossing_moves_are_cables_and_bands_only() -> None:
    crossing = {key for key in LIBRARY.keys() if movement(key).get("crossing")}  # noqa: SIM118  # a Library is no mapping
    assert {movement(key)["implement"] for key in crossing} == {"cable", "band"}
    assert "flat-bench-cable-fly" not in crossing
    for key in crossing:
        assert movement(key)["past_midline"]["arm_deg"] >= 15
        assert movement(key)["past_midline"]["hand_cm"] >= 3


def test_nothing_but_crossing_moves_brings_the_hand_past_the_midline_by_more_than_3_cm() -> None:
    for key in LIBRARY.keys():  # noqa: SIM118  # a Library is no mapping
        one = movement(key)
        if one["scored"] and not one["crossing"]:
            assert one["past_midline"]["hand_cm"] < 3, key
            if one["hands"] == "fixed apart":
                assert one["past_midline"]["hand_cm"] < 0, key
                assert one["past_midline"]["arm_deg"] <= 0, key


def test_without_cable_or_band_the_machine_fly_and_the_squeeze_press_load_the_sternal_part_short() -> None:
    for key in ("machine-fly", "dumbbell-squeeze-press"):
        assert movement(key)["parts"]["sternal"]["loaded_short"] == "yes"
        assert not movement(key)["crossing"]
