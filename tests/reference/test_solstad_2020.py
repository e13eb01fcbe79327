"""Dumbbell fly and bench press.

Solstad TE et al. 2020. A comparison of muscle activation between barbell bench press and dumbbell flyes in
resistance-trained males. J Sports Sci Med 19:645-651. Read: abstract. 17 men, 6RM: pectoralis, front deltoid
and triceps 8 to 81 % more active in the press.

Electromyography is not leverage: only the order is tested. The costal part is a tie in the model (18, 17).
"""

import pytest

from tests.reference.model import work


@pytest.mark.parametrize("part", ["clavicular", "sternal", "deltoid_anterior"])
def test_the_press_works_chest_and_front_deltoid_harder_than_the_fly(part: str) -> None:
    assert work("flat-barbell-bench-press", part) > work("flat-dumbbell-fly", part)
