"""Where each part is longest.

Regional differential stretching of the pectoralis major muscle: an ultrasound elastography study. J Biomech
2021. Read: abstract. 15 men: clavicular fibres are stretched most with the arm behind the body at 45 or 90
deg of abduction, sternal at 90, abdominal at 135 deg: the angle of greatest length rises from top to
bottom. The parts' order is tested, not the angles: the model's sternal part is longest some 40 deg later
than was measured.
"""

import numpy as np

from tests.reference.model import by_part, pulls


def test_the_lower_the_part_the_higher_the_arm_where_it_is_longest() -> None:
    elevation = np.arange(20.0, 151.0, 5.0)
    longest = elevation[by_part(pulls(-20.0, elevation, -30.0).length).argmax(axis=0)]
    assert longest[0] < longest[1] <= longest[2]
    assert 45 <= longest[0] <= 95
