"""Bands: by their own measured pulls, linear between two of them, and nothing outside."""

from fractions import Fraction

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.loads.bands import pull_newton
from setwright.loads.loadable import loadable
from setwright.loads.means_of import LoadedBy
from setwright.model.room import Band, BandPull
from tests.loads.rooms import kg, typed

PULLS = ((1.5, 40.0), (2.0, 60.0), (2.5, 90.0))
RED = Band(name="red", pulls=tuple(BandPull(newton=newton, at_m=at) for at, newton in PULLS))
ROOM = typed("""\
bands:
  red: 40 N at 1.5 m, 60 N at 2 m, 90 N at 2.5 m
  green:
    pull: 110 N at 2 m
    number: 1""")


@pytest.mark.parametrize(("at_m", "newton"), [(1.5, 40), (1.75, 50), (2, 60), (2.25, 75), (2.5, 90)])
def test_linear_between_two_measured_lengths(at_m: float, newton: float) -> None:
    assert pull_newton(RED, at_m) == pytest.approx(newton)


@pytest.mark.parametrize("at_m", [0, 1.49, 2.51, 9])
def test_nothing_is_invented_outside_them(at_m: float) -> None:
    assert pull_newton(RED, at_m) is None


def test_a_band_measured_once_is_known_there_only() -> None:
    once = Band(name="green", pulls=(BandPull(newton=110, at_m=2),))
    assert pull_newton(once, 2) == 110
    assert pull_newton(once, 2.1) is None
    assert pull_newton(Band(name="blue"), 2) is None


@settings(max_examples=60, deadline=None)
@given(st.floats(1.5, 2.5))
def test_as_numpys_linear_interpolation(at_m: float) -> None:
    lengths, newtons = zip(*PULLS, strict=True)
    assert pull_newton(RED, at_m) == pytest.approx(float(np.interp(at_m, lengths, newtons)))


@pytest.mark.parametrize(
    ("asked", "bands", "words"),
    [
        ("5", 1, "5.02 kg: red band to 1.73 m (0.02 kg or 0.3 % more)"),
        ("8", 1, "8.02 kg: red band to 2.31 m (0.01 kg or 0.2 % more)"),
        ("10.5", 1, "11.22 kg: green band to 2 m (0.72 kg or 6.8 % more)"),
    ],
)
def test_a_pull_in_kg_is_a_band_and_a_length(asked: str, bands: int, words: str) -> None:
    """9.80665 N a kg (CGPM 1901): worked by hand: 5 kg are 49.03 N, reached at 1.726 m."""
    one = loadable(LoadedBy("band", bands), ROOM, Fraction(asked))
    assert one.put is not None
    assert one.words(one.put, "kg") == words
    assert "uchida2016" in one.note


def test_two_hands_need_two_bands() -> None:
    assert loadable(LoadedBy("band", 2), ROOM, kg(11)).fault == "too heavy"
    assert loadable(LoadedBy("band", 1), ROOM, kg(1)).fault == "too light"
