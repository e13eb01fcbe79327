"""A max measured, against the range of the estimates.

Reynolds JM, Gordon TJ, Robergs RA. Prediction of one repetition maximum strength from multiple repetition
maximum testing and anthropometry. J Strength Cond Res 2006;20:584-592. Read: the abstract (a copy of the
article at studylib.net): 70 men and women; bench press 1RM = 1.1307 x 5RM + 0.6999 kg; leg press 1RM = 1.0970
x 5RM + 14.2546 kg, standard error 16.16 kg; no more than 10 repetitions in linear equations.
"""

import pytest

from setwright.loads.estimates import MOST_REPS, TooManyReps, estimated_max

LEG_PRESS_SEE_KG = 16.16


@pytest.mark.parametrize("five_rm", [30, 50, 75, 100, 125])
def test_the_bench_regression_lies_in_the_range_of_the_formulas(five_rm: float) -> None:
    found = estimated_max(five_rm, 5)
    measured = 1.1307 * five_rm + 0.6999
    assert found.low < measured < found.high


def test_the_leg_press_has_more_above_its_five_than_the_formulas_say() -> None:
    found = estimated_max(100, 5)
    measured = 1.0970 * 100 + 14.2546
    assert found.high < measured < found.high + LEG_PRESS_SEE_KG


def test_more_than_ten_repetitions_are_refused() -> None:
    assert MOST_REPS == 10
    assert estimated_max(60, 10).low > 60
    with pytest.raises(TooManyReps, match="lifted 11 times"):
        estimated_max(60, 11)
