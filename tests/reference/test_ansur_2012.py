"""The size of the model's arm.

ANSUR II, the 2012 US Army Anthropometric Survey, public data set (4,082 men, 1,986 women); means and
spreads computed from its files. Upper arm, acromion to radiale: 335.2 +- 17.5 mm (men), 311.2 +- 17.2
(women). Distance between the acromion landmarks: 415.7 +- 19.2 and 365.3 +- 18.3 mm. The joint lies some 4
cm below and inside the acromion (the model's own landmarks), so the model's arm must be that much shorter:
within three spreads.
"""

import numpy as np

from setwright.engine.frames import elbow_direction
from setwright.engine.geometry import geometry
from setwright.engine.girdle import girdle

HANGING = girdle(elbow_direction(0.0, 0.0), 0.0, geometry())


def test_the_upper_arm_is_that_of_a_grown_person() -> None:
    below_acromion = 1000 * float(HANGING.AC[1] - HANGING.GH[1])
    whole = 1000 * geometry().upper_arm + below_acromion
    assert 311.2 - 3 * 17.2 < whole < 335.2 + 3 * 17.5


def test_the_shoulders_are_narrow_for_a_soldier_as_the_documentation_says() -> None:
    """A known weakness: the source model's clavicle is short. Hand paths keep their own distances."""
    between_joints = 2000 * float(np.abs(HANGING.AC[2]))
    assert between_joints < 365.3 - 3 * 18.3
