import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from setwright.engine.tones import STRIP, loaded_long, loaded_short, longest_loaded, strip, tones

ONE = np.ones(1)


@pytest.mark.parametrize(
    ("resistance", "lever", "cosine", "tone"),
    [
        (1.0, 40, 0.9, 2),
        (0.5, 10, 0.3, 2),
        (0.49, 40, 0.9, 1),
        (0.24, 40, 0.9, 0),
        (1, 9.9, 0.9, 0),
        (1, 40, 0.29, 0),
    ],
)
def test_tone_asks_for_resistance_lever_and_cosine(
    resistance: float, lever: float, cosine: float, tone: int
) -> None:
    assert tones(resistance * ONE, lever * np.ones((1, 3)), cosine * np.ones((1, 3))).tolist() == [[tone] * 3]


@pytest.mark.parametrize(
    ("length", "tone", "word"),
    [(67, 2, "yes"), (67, 1, "partly"), (62, 2, "partly"), (62, 1, "no"), (61.9, 2, "no"), (90, 0, "no")],
)
def test_long_is_the_outer_third(length: float, tone: int, word: str) -> None:
    assert loaded_long(length * ONE, np.array([tone], dtype=np.int8)) == word
    assert loaded_short((100 - length) * ONE, np.array([tone], dtype=np.int8)) == word


def test_the_longest_loaded_length_is_kept_within_the_range() -> None:
    assert longest_loaded(np.array([104.0, 50]), np.array([2, 2], dtype=np.int8)) == 100
    assert longest_loaded(np.array([90.0, 50]), np.array([1, 2], dtype=np.int8)) == 50
    assert longest_loaded(np.array([90.0]), np.array([1], dtype=np.int8)) is None


@given(st.lists(st.tuples(st.floats(-20, 120), st.integers(0, 2)), min_size=2, max_size=40))
def test_a_strip_has_forty_signs_and_one_end(path: list[tuple[float, int]]) -> None:
    length, tone = np.array([p[0] for p in path]), np.array([p[1] for p in path], dtype=np.int8)
    signs = strip(length, tone)
    assert len(signs) == STRIP
    assert set(signs) <= set(".-=#|")
    assert signs.count("|") == 1
    end = int(np.clip(length[-1] / 100 * STRIP, 0, STRIP - 1))
    assert signs[end] == "|"
    assert "." not in signs.strip(".")
