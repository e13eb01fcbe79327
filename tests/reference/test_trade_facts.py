"""What every coach knows. Common practice, no source."""

from collections.abc import Mapping
from typing import Any

import numpy as np
import pytest

from setwright.library.table import library
from tests.reference.model import CLAVICULAR, COSTAL, STERNAL, by_part, pulls


def movement(key: str) -> Mapping[str, Any]:
    return library().movement(key)


def test_fibres_run_down_straight_and_up_toward_the_arm_raised_sideways() -> None:
    strands = pulls(0.0, 70.0)
    rise = by_part((strands.insertion - strands.origin)[..., 1])
    assert rise[CLAVICULAR] < rise[STERNAL] < rise[COSTAL]
    assert rise[CLAVICULAR] < 0 < rise[COSTAL]


def test_an_incline_shifts_work_up_and_a_dip_shifts_it_down() -> None:
    flat, incline, dip = (
        movement(key)["parts"]
        for key in ("flat-barbell-bench-press", "incline-30-barbell-bench-press", "parallel-bar-dip-leaning")
    )
    assert incline["clavicular"]["share"] > flat["clavicular"]["share"]
    assert dip["costal"]["share"] > flat["costal"]["share"]
    assert movement("flat-barbell-bench-press")["serves"] == ["sternal"]


@pytest.mark.parametrize(
    "key",
    [
        "flat-barbell-bench-press", "incline-30-barbell-bench-press", "incline-45-barbell-bench-press",
        "decline-15-barbell-bench-press", "parallel-bar-dip-leaning", "parallel-bar-dip-upright", "push-up",
        "barbell-floor-press", "close-grip-barbell-bench-press",
    ],
)  # fmt: skip
def test_a_bar_the_handles_and_the_floor_keep_the_hands_short_of_the_midline(key: str) -> None:
    past = movement(key)["past_midline"]
    assert past["hand_cm"] < 0
    assert past["arm_deg"] < 0


@pytest.mark.parametrize(
    ("crossing", "press"),
    [
        ("level-cable-crossover", "flat-barbell-bench-press"),
        ("low-to-high-cable-crossover", "incline-30-barbell-bench-press"),
        ("high-to-low-cable-crossover", "parallel-bar-dip-leaning"),
        ("one-arm-band-press-across", "push-up"),
    ],
)
def test_crossing_work_follows_the_line_of_the_lift_that_it_finishes(crossing: str, press: str) -> None:
    finished = [one["key"] for one in movement(crossing)["partners"] if one["finishes"]]
    assert press in finished
    assert movement(crossing)["past_midline"]["hand_cm"] > 0


def test_crossing_work_is_never_a_heavy_lift() -> None:
    every = map(movement, library().keys())
    assert {one["class"] for one in every if one.get("crossing")} <= {"light", "moderate"}


def test_both_ends_of_a_fly_lie_at_arm_s_length() -> None:
    assert np.isclose(movement("flat-dumbbell-fly")["load_arm_cm"], 53, atol=3)
