"""The shapes the figures are made of, checked by measuring what the path data says."""

import doctest
import importlib
import re
from math import cos, dist, hypot, pi, sin

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from setwright.engine.geometry import PARTS
from setwright.engine.picture import picture
from setwright.library.rows import load_rows
from setwright.sheets.fan import INK, Tone, fan
from setwright.sheets.projection import LAYOUTS
from setwright.sheets.svg import Box, Points, arrow, capsule, curve, hatch, text

MILLIMETRES = st.floats(-200, 200)
POINTS = st.tuples(MILLIMETRES, MILLIMETRES)


def outlines(svg: str) -> list[Points]:
    """The closed outlines of straight strokes in the path data of an element."""
    data = re.findall(r' d="([^"]*)"', svg)
    closed = [piece for d in data for piece in d.split("Z") if piece]
    return [np.array(re.findall(r"-?[\d.]+", piece), dtype=float).reshape(-1, 2) for piece in closed]


def area(outline: Points) -> float:
    x, y = outline.T
    return abs(float(np.dot(x, np.roll(y, 1)) - np.dot(y, np.roll(x, 1)))) / 2


@pytest.mark.parametrize(
    "name", ["svg", "fan", "projection", "distance", "strip", "signs", "fibre", "figures"]
)
def test_examples_in_docstrings_are_true(name: str) -> None:
    module = importlib.import_module(f"setwright.sheets.{name}")
    assert doctest.testmod(module, extraglobs={"np": np}).failed == 0


def test_words_that_look_like_markup_stay_words() -> None:
    assert text((0, 0), "<b>&", 4).endswith(">&lt;b&gt;&amp;</text>")


def test_a_curve_bends_towards_its_middle_point() -> None:
    assert curve((0, 0), (5, 5), (10, 0)) == "M0 0Q5 5 10 0"


@given(left=st.floats(0, 50), width=st.floats(4, 60), height=st.floats(1, 6), share=st.floats(0.2, 0.8))
def test_hatching_stays_in_its_box_and_inks_its_share(
    left: float, width: float, height: float, share: float
) -> None:
    pitch = 1.2
    box: Box = (left, 10, left + width, 10 + height)
    found = outlines(hatch(box, share * pitch, pitch))
    corners = np.concatenate(found)
    assert corners.min(axis=0) == pytest.approx([left, 10], abs=2 * pitch)
    assert (corners.min(axis=0) >= np.array(box[:2]) - 0.006).all()
    assert (corners.max(axis=0) <= np.array(box[2:]) + 0.006).all()
    inked = sum(map(area, found)) / (width * height)
    assert inked == pytest.approx(share, abs=0.5 * pitch / width + 0.02)


def test_a_box_between_two_lines_holds_none() -> None:
    assert hatch((0.9, 0, 1.0, 0.1), 0.1, 1.4) == ""


@given(start=POINTS, end=POINTS, radii=st.tuples(st.floats(0.5, 4), st.floats(0.5, 4)))
def test_a_limb_touches_both_its_circles(
    start: tuple[float, float], end: tuple[float, float], radii: tuple[float, float]
) -> None:
    assume(dist(start, end) > abs(radii[0] - radii[1]) + 0.1)
    numbers = np.array(re.findall(r"-?[\d.]+", re.sub(r"A\S+ \S+ 0 \d 1 ", " ", capsule(start, end, *radii))))
    points = numbers.astype(float).reshape(4, 2)
    for point, centre, radius in zip(points, (start, start, end, end), np.repeat(radii, 2), strict=True):
        assert dist(point, centre) == pytest.approx(radius, abs=0.01)
    side = points[2] - points[1]
    spoke = points[1] - start
    assert abs(float(side @ spoke)) <= 0.02 * (1 + float(np.hypot(*side))) * radii[0] + 0.02


def test_a_limb_seen_from_its_end_is_a_disc() -> None:
    assert capsule((0, 0), (0.5, 0), 3, 2) == "M-3 0A3 3 0 1 1 3 0A3 3 0 1 1 -3 0Z"


def test_an_arrow_ends_at_its_tip_and_points_on() -> None:
    turn = np.linspace(0, pi / 2, 5)
    drawn = arrow(np.stack([10 * np.cos(turn), 10 * np.sin(turn)], axis=1), 0.5, 2)
    tip, left, right = outlines(drawn)[-1]
    assert tip == pytest.approx([10 * cos(pi / 2), 10 * sin(pi / 2)])
    heading = tip - (left + right) / 2
    assert hypot(*heading) == pytest.approx(2, abs=0.01)
    assert heading[0] == pytest.approx(-2, abs=0.05)


def test_an_arrow_shorter_than_its_head_is_left_out() -> None:
    assert arrow(np.array([[0.0, 0], [0.5, 0], [1, 0]]), 0.5, 2) == ""


@pytest.mark.parametrize("part", PARTS)
@pytest.mark.parametrize("tone", ["much", "some"])
def test_a_fan_is_inked_by_its_tone_at_every_point_of_the_way(part: str, tone: Tone) -> None:
    arrays = picture(next(row for row in load_rows() if row.key == "level-cable-crossover"))
    own = arrays.part == PARTS.index(part)
    layout = LAYOUTS["120"]
    drawn = fan(layout.front.page(arrays.strands[0, own]), np.full(own.sum(), 0.1), tone, layout.pitch)
    _, ground, *slices, edge = outlines(drawn)
    assert len(slices) >= 2
    assert (ground == edge).all()
    assert sum(map(area, slices)) / area(ground) == pytest.approx(INK[tone], rel=0.1)


def test_a_part_with_nothing_to_do_is_a_dashed_outline() -> None:
    strands = np.array([[[0.0, 0], [10, 0]], [[0, 1], [10, 6]]])
    drawn = fan(strands, np.array([0.1, 0.1]), "none", 1.35)
    assert 'stroke-dasharray="1.3 0.8"' in drawn
    assert 'fill="#000"' not in drawn
