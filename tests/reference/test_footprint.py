"""Where the tendon reaches the humerus.

Humeral footprint of pectoralis major, 8 cadavers, PMC9502243, abstract: total length 81.4 mm (95 % interval
71.4 to 91.3), sternal head 42.1, clavicular head 56.6 mm. Upper edge of the tendon to the top of the head:
56 +- 5 mm (40 shoulders, AAOS 2007, paper 035, abstract), 53.8 mm (22 shoulders, Joints 2019;7:37-40,
abstract), so about 30 mm below the centre of a head of 24.5 mm radius.
"""

from setwright.engine.geometry import PARTS, geometry

DEPTH = -1000 * geometry().insertion[:, 1]
UPPER_EDGE, LENGTH, SPREAD = 30.0, 81.4, 5.0


def depths(part: str) -> list[float]:
    return [float(depth) for depth, n in zip(DEPTH, geometry().part, strict=True) if PARTS[n] == part]


def test_every_strand_ends_on_the_footprint() -> None:
    assert (DEPTH >= UPPER_EDGE - SPREAD).all()
    assert (DEPTH <= UPPER_EDGE + LENGTH + SPREAD).all()


def test_the_sternal_head_takes_the_upper_part_and_the_lowest_fibres_the_top_of_it() -> None:
    assert max(depths("costal")) < min(depths("sternal")) < max(depths("sternal")) < min(depths("clavicular"))
    assert max(depths("sternal")) <= UPPER_EDGE + 42.1
    assert min(depths("clavicular")) >= UPPER_EDGE + LENGTH - 56.6
