"""What the three parts do, in words.

Ackland DC, Pak P, Richardson M, Pandy MG 2008. Moment arms of the muscles crossing the anatomical shoulder.
J Anat 213:383-390, doi 10.1111/j.1469-7580.2008.00965.x. Eight cadavers, tendon excursion. Read: abstract,
cut; its ranking second hand, from a note that quotes the abstract. No number was readable, so only ranks
are tested.
"""

import numpy as np

from tests.reference.model import (
    CLAVICULAR,
    COSTAL,
    FORWARD,
    SCAPULAR,
    SIDEWAYS,
    STERNAL,
    all_raising,
    raising,
)

ANGLES = np.arange(0.0, 121.0, 10.0)


def test_middle_and_inferior_parts_are_the_better_adductors() -> None:
    adducting = -raising(SIDEWAYS, ANGLES).mean(axis=0)
    assert adducting[STERNAL] > adducting[CLAVICULAR]
    assert adducting[COSTAL] > adducting[CLAVICULAR]
    assert min(adducting[STERNAL], adducting[COSTAL]) > 20


def test_the_superior_part_is_the_best_flexor_of_the_three() -> None:
    flexing = raising(FORWARD, ANGLES).mean(axis=0)
    assert flexing[CLAVICULAR] > 0
    assert flexing[CLAVICULAR] > flexing[STERNAL] > flexing[COSTAL]


def test_the_inferior_part_extends() -> None:
    assert raising(FORWARD, ANGLES).mean(axis=0)[COSTAL] < -10


def test_the_side_deltoid_lifts_everywhere_and_the_front_deltoid_from_40_deg() -> None:
    arms = all_raising(SIDEWAYS, ANGLES)
    assert arms["deltoid_middle"].min() > 20
    assert arms["deltoid_anterior"][ANGLES >= 50].min() > 0


def test_teres_major_and_latissimus_are_among_the_best_adductors() -> None:
    arms = {part: -values.mean() for part, values in all_raising(SIDEWAYS, ANGLES).items()}
    best = sorted(arms, key=lambda part: -arms[part])[:5]
    assert {"teres_major", "latissimus_dorsi"} <= set(best)


def test_teres_major_and_the_rear_deltoid_extend_most() -> None:
    arms = {part: -values.mean() for part, values in all_raising(FORWARD, ANGLES).items()}
    assert set(sorted(arms, key=lambda part: -arms[part])[:3]) >= {"teres_major", "deltoid_posterior"}


def test_the_rear_deltoid_lowers_the_arm_in_the_plane_of_the_scapula() -> None:
    """Ten cadavers, Clin Biomech (read: abstract; its year and authors were not on the page)."""
    assert all_raising(SCAPULAR, ANGLES)["deltoid_posterior"].max() < 0
