"""Estimated maxes: their range, one repetition, and where they end."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from setwright.loads.estimates import FORMULAS, MOST_REPS, estimated_max
from setwright.loads.handbook import percent_for
from setwright.loads.ranges import Range
from setwright.reading.hardness import most_reps

loads = st.floats(min_value=1, max_value=500)
reps = st.integers(min_value=1, max_value=MOST_REPS)


@given(loads, reps)
def test_no_estimate_is_below_the_load_and_every_formula_lies_in_the_range(load: float, times: int) -> None:
    found = estimated_max(load, times)
    assert load <= found.low <= found.high
    for formula in FORMULAS.values() if times > 1 else ():
        assert found.low <= formula(load, times) <= found.high


@given(loads, st.integers(min_value=1, max_value=MOST_REPS - 1))
def test_more_repetitions_with_the_same_load_are_a_higher_max(load: float, times: int) -> None:
    fewer, more = estimated_max(load, times), estimated_max(load, times + 1)
    assert fewer.low < more.low
    assert fewer.high < more.high


def test_one_repetition_is_the_load_itself_though_most_formulas_say_more() -> None:
    assert estimated_max(100, 1) == Range(100, 100)
    more = [name for name, formula in FORMULAS.items() if round(formula(100, 1), 2) > 100]
    assert more == ["Epley", "Lander", "Mayhew", "O'Conner", "Wathan"]


def test_epley_and_brzycki_meet_at_ten() -> None:
    assert FORMULAS["Epley"](80, 10) == pytest.approx(FORMULAS["Brzycki"](80, 10))
    assert FORMULAS["Epley"](80, 9) > FORMULAS["Brzycki"](80, 9)


@given(st.floats(min_value=1, max_value=15))
def test_the_table_read_one_way_is_the_table_read_the_other_way(times: float) -> None:
    percent = percent_for(times)
    assert percent is not None
    assert most_reps(percent)[0] == pytest.approx(times)


def test_outside_the_table_nothing_is_said() -> None:
    assert percent_for(0.5) is None
    assert percent_for(15.5) is None
