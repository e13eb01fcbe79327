"""What the three parts do, in words.

Ackland DC, Pak P, Richardson M, Pandy MG 2008. Moment arms of the muscles crossing the anatomical shoulder.
J Anat 213:383-390, doi 10.1111/j.1469-7580.2008.00965.x. Eight cadavers, tendon excursion. Read: abstract,
cut; its ranking second hand, from a note that quotes the abstract. No number was readable, so only ranks
are tested.
"""

import numpy as np

from tests.reference.model import CLAVICULAR, COSTAL, FORWARD, SIDEWAYS, STERNAL, raising

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
