"""The handbook chart of loads and repetitions.

NSCA training load chart, handbook table after Baechle TR and Earle RW; a copy of the chart was read at
documentine.com. Cells as printed, in the unit of the maximum. The chart rounds nothing here, so equality is
the test. That repetitions and those in reserve add up to the row is common practice.
"""

import pytest

from setwright.loads.handbook import percent_for


@pytest.mark.parametrize(
    ("maximum", "reps", "printed"),
    [
        (100, 5, 87),
        (100, 8, 80),
        (100, 12, 70),
        (140, 5, 121.8),
        (140, 10, 105),
        (200, 3, 186),
        (200, 6, 170),
        (200, 9, 154),
    ],
)
def test_cells_of_the_chart(maximum: float, reps: int, printed: float) -> None:
    percent = percent_for(reps)
    assert percent is not None
    assert maximum * percent / 100 == pytest.approx(printed, abs=1e-9)


def test_five_with_two_left_is_the_row_of_seven() -> None:
    assert percent_for(5 + 2) == 83
