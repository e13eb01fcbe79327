import numpy as np
import pytest

from setwright.engine.frames import Floats
from setwright.engine.geometry import geometry
from setwright.engine.wrapping import HeadWrap, arc, over_chest, round_head

FRONT = np.array([0.0, 1.0, 0.0])


def wrap(insertion: list[float], towards: list[float], free_side: Floats = FRONT) -> HeadWrap:
    ends = np.array([insertion, towards])
    return round_head(ends[0], np.zeros(3), ends[1], free_side, radius=0.03, side_from_deg=75.0)


def test_a_clear_way_is_straight() -> None:
    free = wrap([0.05, 0.05, 0], [-0.05, 0.05, 0])
    assert not free.touches
    assert free.length == 0
    assert free.angle == 0
    assert free.leaves.tolist() == [0.05, 0.05, 0]


def test_a_way_round_the_head_meets_and_leaves_it_along_tangents() -> None:
    way = wrap([0.05, 0.001, 0], [-0.06, 0.002, 0])
    assert way.touches
    assert np.linalg.norm(way.leaves) == pytest.approx(0.03)
    assert way.leaves @ (np.array([-0.06, 0.002, 0]) - way.leaves) == pytest.approx(0, abs=1e-12)
    met_at = np.arctan2(way.leaves[1], way.leaves[0]) - way.angle
    met = 0.03 * np.array([np.cos(met_at), np.sin(met_at), 0])
    assert met @ (np.array([0.05, 0.001, 0]) - met) == pytest.approx(0, abs=1e-12)
    assert way.leaves[1] > 0


def test_ends_far_apart_pass_on_the_free_side_even_when_the_other_is_shorter() -> None:
    ends = [0.05, -0.001, 0], [-0.06, -0.002, 0]
    assert wrap(*ends).leaves[1] > 0
    assert wrap(*ends).length > wrap(*ends, -FRONT).length


def test_a_start_inside_the_chest_or_past_the_origin_does_not_touch_it() -> None:
    shoulder = geometry()
    origin = shoulder.origin[~shoulder.on_clavicle]
    inside = np.broadcast_to(shoulder.chest.centre, origin.shape)
    wrapped = over_chest(inside, origin, shoulder.chest)
    assert not wrapped.touches.any()
    assert wrapped.length == pytest.approx(np.linalg.norm(origin - inside, axis=1))
    assert not over_chest(origin + np.array([0.2, 0.0, -0.2]), origin, shoulder.chest).touches.any()


def test_arcs_round_the_whole_ellipse_agree_with_ramanujan() -> None:
    chest = geometry().chest
    a, b = chest.semi.T
    whole = arc(np.full(len(a), np.pi), chest) - arc(np.full(len(a), -np.pi), chest)
    h = ((a - b) / (a + b)) ** 2
    assert whole == pytest.approx(np.pi * (a + b) * (1 + 3 * h / (10 + np.sqrt(4 - 3 * h))), rel=1e-6)
