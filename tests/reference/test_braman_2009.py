"""How much the shoulder blade turns when the arm is raised.

Braman JP et al. 2009. J Shoulder Elbow Surg 18:960-967 (PMC2841046). Bone pins. Read: abstract: 0.43 deg of
upward rotation a degree of elevation at the joint when raising, 0.37 when lowering. The girdle rhythm used
here is another study's regression; 0.36 to 0.44 leaves a hundredth for the difference between elevation at
the joint and of the arm.
"""

import numpy as np

from setwright.engine.frames import elbow_direction
from setwright.engine.geometry import geometry
from setwright.engine.girdle import girdle
from tests.reference.model import SCAPULAR


def test_upward_rotation_a_degree_of_elevation() -> None:
    spine = girdle(elbow_direction(SCAPULAR, np.array([50.0, 130.0])), 0.0, geometry()).scapula[..., 2]
    upward = np.degrees(np.arcsin(spine[:, 1]))
    assert 0.36 <= (upward[1] - upward[0]) / 80 <= 0.44
