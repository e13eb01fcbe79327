import numpy as np
import pytest

from setwright.engine.geometry import geometry
from setwright.engine.paths import arm_paths
from setwright.engine.picture import POINTS, picture
from setwright.engine.strands import strands
from tests.engine.library_paths import ROWS


@pytest.mark.parametrize("key", ["level-cable-crossover", "parallel-bar-dip-leaning", "dumbbell-pullover"])
def test_drawn_strands_are_the_ways_of_the_model(key: str) -> None:
    row = ROWS[key]
    assert row.path is not None
    shown, paths = picture(row), arm_paths([row.path])
    real = strands(paths.frames, paths.bones, geometry())
    steps = np.linalg.norm(np.diff(shown.strands, axis=2), axis=-1)
    assert steps.sum(axis=-1) == pytest.approx(real.length[0], abs=0.0002)
    assert np.ptp(steps, axis=-1).max() < 0.0005  # equal steps, but for corners
    assert shown.strands[..., 0, :] == pytest.approx(real.insertion[0], abs=1e-6)
    assert shown.strands[..., -1, :] == pytest.approx(real.origin[0], abs=1e-6)


def test_arrays_have_the_promised_shapes() -> None:
    shown = picture(ROWS["push-up"])
    samples, count = 31, len(geometry().part)
    assert shown.strands.shape == (samples, count, POINTS, 3)
    assert shown.length.shape == shown.tone.shape == (samples, 3)
    assert shown.GH.shape == shown.AC.shape == shown.elbow.shape == shown.hand.shape == (samples, 3)
    assert shown.SC.shape == (3,)
    assert set(np.unique(shown.tone)) <= {0, 1, 2}
    assert shown.hand[-1, 2] == pytest.approx(0.30, abs=0.005)


def test_a_row_without_a_path_cannot_be_drawn() -> None:
    with pytest.raises(ValueError, match="back-squat has no arm path"):
        picture(ROWS["back-squat"])
