"""Bench angle: four angles, two portions.

Lauver JD, Cayot TE, Scheuermann BW 2016. Influence of bench angle on upper extremity muscular activation
during bench press exercise. Eur J Sport Sci 16:309-316, doi 10.1080/17461391.2015.1022605. Read: abstract.
14 men, 65 % of the maximum. Lower portion 100.4, 100.1, 86.6, 71.9 % at -15, 0, 30, 45 deg. Upper portion,
over the second quarter of the lift only: 122.5 and 124.0 % at 30 and 45 against 98.2 and 96.1 at 0 and -15
deg.

Electromyography is not leverage: only orders that both must share are tested, never amounts. Between
-15 and 0 deg the study sees no difference, so none is asked for.
"""

import pytest

from tests.reference.model import bench


@pytest.mark.parametrize("level", ["decline-15", "flat"])
def test_the_lower_portion_has_less_at_30_and_least_at_45_deg(level: str) -> None:
    levers = [bench(angle, "costal", "lever_mm") for angle in (level, "incline-30", "incline-45")]
    assert levers == sorted(levers, reverse=True)


@pytest.mark.parametrize("level", ["decline-15", "flat"])
@pytest.mark.parametrize("steep", ["incline-30", "incline-45"])
def test_the_upper_portion_has_a_larger_share_on_an_incline(level: str, steep: str) -> None:
    assert bench(steep, "clavicular", "share") > bench(level, "clavicular", "share")
