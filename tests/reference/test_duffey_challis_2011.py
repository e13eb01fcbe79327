"""The hands push a bar outward as well as up.

Duffey MJ, Challis JH 2011. J Strength Cond Res 25:2442-2447, doi 10.1519/JSC.0b013e3182281939. 18 lifters.
Read: abstract: the lateral force on the bar is always outward, at most 26.3 +- 3.9 % of the vertical one in
a maximal lift and 23.7 +- 3.9 % in a submaximal one. The reaction on the hand therefore points inward.
"""

from setwright.library.rows import load_rows


def test_the_side_share_of_the_flat_press_lies_between_the_two_measured_peaks() -> None:
    press = next(row for row in load_rows() if row.key == "flat-barbell-bench-press")
    assert press.path is not None
    assert -0.263 - 0.039 <= press.path.force.side_share <= -(0.237 - 0.039)
