"""The data file: every number has a source, and what is derived in it is derived rightly."""

from importlib.resources import files

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from setwright.engine.geometry import PARTS, geometry, geometry_data

BLOCKS = ("arm", "joints", "girdle", "humeral_head", "chest", "parts", "attainable", "refused")


@pytest.mark.parametrize("block", BLOCKS)
def test_every_block_names_its_source(block: str) -> None:
    text = files("setwright").joinpath("data", "shoulder-geometry.yaml").read_text(encoding="utf-8")
    described = text.split(f"\n{block}:", 1)[1].split("\n\n", 1)[0]
    assert any(key in described for key in geometry_data()["sources"])


def test_no_block_is_without_a_test_of_its_source() -> None:
    assert set(geometry_data()) == {"sources", *BLOCKS}


@pytest.mark.parametrize(
    ("bone", "axis", "offset", "rest", "weight"),
    [
        ("clavicle", "up", -4.983, -28.573, 0.851),
        ("clavicle", "backward", 3.917, 11.68, 0.493),
        ("scapula", "up", -1.203, 32.047, 0.901),
        ("scapula", "backward", 3.095, 10.669, 0.414),
        ("scapula", "lateral", 0.659, -10.32, 0.886),
    ],
)
def test_girdle_constants_hold_the_mean_rest_angles(
    bone: str, axis: str, offset: float, rest: float, weight: float
) -> None:
    """de Groot and Brand 2001, as named in the data file: offset + weight x rest angle."""
    assert geometry_data()["girdle"][bone][axis]["constant"] == pytest.approx(offset + weight * rest)


def test_parts_are_the_mean_of_their_strands() -> None:
    weights = geometry().averaging
    assert weights.sum(axis=1) == pytest.approx(np.ones(len(PARTS)))
    assert (weights > 0).sum(axis=1).tolist() == [3, 3, 2]


@given(st.floats(0.5, 2))
def test_scaling_back_and_mirroring_twice_change_nothing(size: float) -> None:
    shoulder = geometry()
    back = shoulder.scaled(size).scaled(1 / size).mirrored().mirrored()
    assert back.origin == pytest.approx(shoulder.origin)
    assert back.chest.semi == pytest.approx(shoulder.chest.semi)
    assert back.side == shoulder.side


def test_points_on_the_chest_are_found_again() -> None:
    shoulder = geometry()
    origin = shoulder.origin[~shoulder.on_clavicle]
    chest = shoulder.chest
    assert chest.at(chest.flat(origin), chest.height(origin)) == pytest.approx(origin)
