"""Bench angle: the sternal part has most on the flat bench.

Trebs AA, Brandenburg JP, Pitney WA 2010. An electromyography analysis of 3 muscles surrounding the shoulder
joint during a chest press exercise at several angles. J Strength Cond Res 24:1925-1930, doi
10.1519/JSC.0b013e3181ddfae7. Read: abstract. 15 men, 70 % of the maximum: sternocostal head 0 > 28, 0 > 44,
0 > 56, 28 > 56 and 44 > 56 deg; clavicular head 44 > 0 deg.

Electromyography is not leverage: only orders that both must share are tested, never amounts. The
library has benches of 30 and 45 deg. Front deltoid on every incline above 0 deg. That the clavicular head
has more at 44 than at 0 deg is soft in the model (``tests/reference/soft.py``): only its share is compared.
"""

from tests.reference.model import bench, work


def test_the_sternal_lever_falls_as_the_bench_rises() -> None:
    flat, low, steep = (bench(angle, "sternal", "lever_mm") for angle in ("flat", "incline-30", "incline-45"))
    assert flat > low > steep


def test_the_clavicular_share_is_larger_at_45_deg_than_flat() -> None:
    assert bench("incline-45", "clavicular", "share") > bench("flat", "clavicular", "share")


def test_the_sternal_part_works_less_and_the_front_deltoid_more_as_the_bench_rises() -> None:
    keys = [f"{angle}-barbell-bench-press" for angle in ("flat", "incline-30", "incline-45")]
    flat, low, steep = (work(key, "sternal") for key in keys)
    assert flat > low > steep
    flat, low, steep = (work(key, "deltoid_anterior") for key in keys)
    assert flat < low < steep
