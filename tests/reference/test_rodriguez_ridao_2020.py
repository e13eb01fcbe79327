"""Bench angle: middle and lower portions have most on the flat bench.

Rodriguez-Ridao D, Antequera-Vique JA, Martin-Fuentes I, Muyor JM 2020. Effect of five bench inclinations on
the EMG activity of pectoralis major, anterior deltoid and triceps brachii. Int J Environ Res Public Health
17:7339, doi 10.3390/ijerph17197339. Read: abstract. 30 trained adults, 60 % of the maximum: of 0, 15, 30,
45 and 60 deg the middle and lower portions are most active at 0.

Electromyography is not leverage: only orders that both must share are tested, never amounts. The front
deltoid is most active at 60 deg. That the upper portion peaks at 30 deg is soft in the model
(``tests/reference/soft.py``).
"""

import pytest

from tests.reference.model import bench, work


@pytest.mark.parametrize("part", ["sternal", "costal"])
@pytest.mark.parametrize("angle", ["incline-30", "incline-45"])
def test_the_flat_bench_has_most_lever_for_middle_and_lower_fibres(part: str, angle: str) -> None:
    assert bench("flat", part, "lever_mm") > bench(angle, part, "lever_mm")


@pytest.mark.parametrize("part", ["sternal", "costal"])
def test_middle_and_lower_fibres_work_less_from_bench_to_bench_and_the_front_deltoid_more(part: str) -> None:
    keys = [f"{angle}-barbell-bench-press" for angle in ("flat", "incline-30", "incline-45")]
    falling, rising = ([work(key, one) for key in keys] for one in (part, "deltoid_anterior"))
    assert falling == sorted(falling, reverse=True)
    assert rising == sorted(rising)
    assert falling[0] - falling[-1] >= 10
    assert rising[-1] - rising[0] >= 10
