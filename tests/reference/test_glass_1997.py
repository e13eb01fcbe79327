"""Bench angle: decline against incline.

Glass SC, Armstrong T 1997. Electromyographical activity of the pectoralis muscle during incline and decline
bench presses. J Strength Cond Res 11:163-167. Read: abstract. 15 men: the lower portion is more active at
-15 than at +30 deg in both phases; the upper portion does not differ.

Electromyography is not leverage: only orders that both must share are tested, never amounts.
"""

from tests.reference.model import bench


def test_the_decline_has_more_for_the_lowest_part_than_the_incline() -> None:
    assert bench("decline-15", "costal", "lever_mm") > bench("incline-30", "costal", "lever_mm")
    assert bench("decline-15", "costal", "share") > bench("incline-30", "costal", "share")
