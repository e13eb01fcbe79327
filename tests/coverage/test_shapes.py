"""Counts that stay spans."""

import math

from hypothesis import given
from hypothesis import strategies as st

from setwright.coverage import Sets, total

numbers = st.integers(0, 60).map(float)
spans = st.builds(lambda low, more: Sets(low, low + more), numbers, st.one_of(numbers, st.just(math.inf)))


@given(spans, spans)
def test_a_sum_lies_between_the_sums_of_the_ends(a: Sets, b: Sets) -> None:
    assert (a + b).low == a.low + b.low
    assert (a + b).high == a.high + b.high
    assert total((a, b)) == a + b == b + a


@given(spans, st.sampled_from((0.5, 1.0, 2.0)))
def test_weighting_keeps_the_span(a: Sets, factor: float) -> None:
    assert a.times(factor).low <= a.times(factor).high
    assert a.times(0) == Sets()


@given(spans)
def test_a_span_is_never_shown_as_zero_nor_as_its_middle(a: Sets) -> None:
    shown = str(a)
    if a.low != a.high:
        assert shown.startswith(f"{a.low:g} ")
        assert shown.endswith("or more" if a.high == math.inf else f"to {a.high:g}")
    else:
        assert shown == f"{a.low:g}"
