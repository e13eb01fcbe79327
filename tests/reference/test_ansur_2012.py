"""The size of the model's arm.

ANSUR II, the 2012 US Army Anthropometric Survey, public data set (4,082 men, 1,986 women); means and
spreads computed from its files. Upper arm, acromion to radiale: 335.2 +- 17.5 mm (men), 311.2 +- 17.2
(women). Distance between the acromion landmarks: 415.7 +- 19.2 and 365.3 +- 18.3 mm. The joint lies some 4
cm below and inside the acromion (the model's own landmarks), so the model's arm must be that much shorter:
within three spreads.
"""

import numpy as np
import pytest

from setwright.engine.frames import elbow_direction
from setwright.engine.geometry import geometry
from setwright.engine.girdle import girdle
from setwright.model.people import Athlete
from setwright.own.body import size_of
from setwright.places import Place

HANGING = girdle(elbow_direction(0.0, 0.0), 0.0, geometry())


def test_the_upper_arm_is_that_of_a_grown_person() -> None:
    below_acromion = 1000 * float(HANGING.AC[1] - HANGING.GH[1])
    whole = 1000 * geometry().upper_arm + below_acromion
    assert 311.2 - 3 * 17.2 < whole < 335.2 + 3 * 17.5


def test_the_shoulders_are_narrow_for_a_soldier_as_the_documentation_says() -> None:
    """A known weakness: the source model's clavicle is short. Hand paths keep their own distances."""
    between_joints = 2000 * float(np.abs(HANGING.AC[2]))
    assert between_joints < 365.3 - 3 * 18.3


def test_sizes_are_taken_from_the_survey() -> None:
    """Upper arm and forearm, means: 335.2 + 267.9 mm (men), 311.2 + 241.3 (women); 577.8 in the middle."""

    def size(sex: str) -> tuple[float, float]:
        return size_of(Athlete(name="A", place=Place("squad.yaml", 1, 1, 1, 2), sex=sex))

    assert size("male") == pytest.approx(((335.2 + 267.9) / 577.8, 0.4157), abs=2e-4)
    assert size("female") == pytest.approx(((311.2 + 241.3) / 577.8, 0.3653), abs=2e-4)


def test_the_model_has_nearly_the_arm_of_the_middle_of_men_and_women() -> None:
    below_acromion = 1000 * float(HANGING.AC[1] - HANGING.GH[1])
    whole = 1000 * geometry().upper_arm + below_acromion
    assert whole == pytest.approx((335.2 + 311.2) / 2, rel=0.02)
