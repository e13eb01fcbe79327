import re

import pytest

from setwright.engine.movement import scored_fields
from tests.engine.library_paths import ROWS, SCORED, figures


def test_rows_without_a_path_cannot_be_scored() -> None:
    with pytest.raises(ValueError, match="no arm path: back-squat"):
        scored_fields([ROWS["back-squat"]])
    assert scored_fields([]) == []


def test_a_row_has_the_same_figures_alone_and_in_the_whole_library() -> None:
    whole = dict(zip((row.key for row in SCORED), scored_fields(SCORED), strict=True))
    for key in ("flat-barbell-bench-press", "machine-fly", "pull-up"):
        assert figures(key) == [whole[key]]


def test_dose_is_1_where_served_half_where_only_loaded_and_0_else() -> None:
    for one in scored_fields(SCORED):
        for part, found in one["parts"].items():
            served = part in one["serves"]
            assert found["serves"] is served
            assert found["dose"] in ({1} if served else {0, 0.5})
            if found["dose"] == 0.5:
                assert found["along_its_line"]


def test_pulls_assist_and_count_nothing() -> None:
    chin_up = figures("chin-up")[0]
    assert chin_up["assists"] == ["costal"]
    assert chin_up["line"] == "none"
    assert chin_up["tilt"] is None
    assert [part["dose"] for part in chin_up["parts"].values()] == [0, 0, 0]


def test_only_the_costal_part_says_how_long_it_is_loaded() -> None:
    parts = figures("flat-barbell-bench-press")[0]["parts"]
    assert parts["clavicular"]["loaded_long_percent"] is parts["sternal"]["loaded_long_percent"] is None
    assert 60 < parts["costal"]["loaded_long_percent"] < 70
    assert figures("incline-45-barbell-bench-press")[0]["parts"]["costal"]["loaded_long_percent"] is None


def test_lengths_are_printed_within_the_range_and_no_zero_has_a_minus() -> None:
    for one in scored_fields(SCORED):
        for part in one["parts"].values():
            assert 0 <= part["length_start"] <= 100
            assert 0 <= part["length_end"] <= 100
        assert not re.search(r"-0\.0\b", str(one))
