"""Pull-over: the chest leads.

Marchetti PH, Uchida MC 2011. Effects of the pullover exercise on the pectoralis major and latissimus dorsi
muscles as evaluated by EMG. J Appl Biomech 27:380-384. Read: abstract: pectoralis is more active than
latissimus.

Only the order is tested. The path enters a posture where a strand jumps: its work is told to nobody.
"""

import pytest

from tests.reference.model import work


@pytest.mark.parametrize("part", ["sternal", "costal"])
def test_the_pull_over_works_the_chest_harder_than_the_latissimus(part: str) -> None:
    assert work("dumbbell-pullover", part) > work("dumbbell-pullover", "latissimus_dorsi")
