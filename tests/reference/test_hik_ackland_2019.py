"""Depressors.

Hik F, Ackland DC 2019. The moment arms of the muscles spanning the glenohumeral joint: a systematic review.
J Anat 234:1-15, doi 10.1111/joa.12903 (PMC6284439). Read: abstract: pectoralis major, latissimus and teres
major have the largest depressor arms, prominent in adduction. No numbers in the abstract.
"""

import numpy as np

from tests.reference.model import COSTAL, SIDEWAYS, STERNAL, raising


def test_the_lower_parts_depress_the_arm_with_large_arms_near_the_body() -> None:
    arms = raising(SIDEWAYS, np.array([0.0, 30.0, 60.0]))[:, [STERNAL, COSTAL]]
    assert (arms < -20).all()
