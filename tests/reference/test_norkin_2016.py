"""How far a shoulder goes.

Norkin CC, White DJ 2016. Measurement of joint motion, appendix A.1. Read: table text. Flexion up to 180 deg;
extension 60 (AAOS), 62 (Boone and Azen) deg. Paths of the library must stay within what a shoulder can do;
a deep dip goes to the end of it, as its caution says.
"""

import numpy as np
import pytest

from setwright.engine.paths import arm_paths
from setwright.library.rows import load_rows

ROWS = {row.key: row for row in load_rows()}


def extension(key: str) -> float:
    """How far behind hanging the arm is, seen from the side, at its farthest; degrees."""
    path = ROWS[key].path
    assert path is not None
    u = arm_paths([path]).u[0]
    return float(np.degrees(np.arctan2(-u[:, 0], -u[:, 1])).max())


@pytest.mark.parametrize(
    "key", ["parallel-bar-dip-leaning", "bench-dip", "ring-dip", "parallel-bar-dip-upright"]
)
def test_dips_reach_the_end_of_extension_and_no_further(key: str) -> None:
    assert 40 < extension(key) < 62 + 5


def test_the_upright_dip_asks_for_least_extension() -> None:
    assert extension("parallel-bar-dip-upright") < min(map(extension, ("ring-dip", "bench-dip")))
