"""The figures as a reader gets them: what is drawn, what is said, and what never stands in one."""

import re
from collections.abc import Callable, Iterator
from xml.etree import ElementTree as ET

import numpy as np
import pytest

from setwright.engine.geometry import PARTS
from setwright.engine.paths import arm_paths
from setwright.library.rows import load_rows
from setwright.library.table import library
from setwright.sheets.distance import distance, hand_words
from setwright.sheets.fan import Tone
from setwright.sheets.figures import (
    NoPicture,
    fibre_svg,
    line_sign_svg,
    movement_picture_svg,
    strip_svg,
    swatch_svg,
)
from setwright.sheets.projection import LAYOUTS, Size
from setwright.sheets.strip import stretches

SVG = "{http://www.w3.org/2000/svg}"
SIZES: tuple[Size, ...] = ("60", "120")
TONES: tuple[Tone, ...] = ("much", "some", "none")
DRAWN = [
    key
    for key in (row.key for row in load_rows() if row.path)
    if library().movement(key)["scored"] and not library().movement(key)["refused"]
]
TAGGED = next(row.key for row in load_rows() if not row.path)
ONE_OF_A_KIND = (
    "flat-barbell-bench-press",
    "parallel-bar-dip-leaning",
    "level-cable-crossover",
    "barbell-overhead-press",
    "bent-over-barbell-row",
)


def elements(svg: str) -> Iterator[ET.Element]:
    return ET.fromstring(svg).iter()


def all_figures(key: str) -> list[str]:
    return [
        *(fibre_svg(key, size, "a") for size in SIZES),
        *(strip_svg(key, size) for size in SIZES),
        movement_picture_svg(key),
    ]


@pytest.mark.parametrize("key", ["flat-barbell-bench-press", "low-to-high-cable-crossover"])
def test_pictures_are_the_ones_that_were_looked_at(key: str, golden: Callable[[str, str], None]) -> None:
    golden(f"{key}.svg", movement_picture_svg(key))
    golden(f"{key}-60.svg", fibre_svg(key, "60", "a"))


def test_signs_are_the_ones_that_were_looked_at(golden: Callable[[str, str], None]) -> None:
    for tone in TONES:
        golden(f"swatch-{tone}.svg", swatch_svg(tone))
    golden("line-sternal.svg", line_sign_svg("sternal"))


def test_every_movement_of_the_model_can_be_drawn_and_its_number_is_the_library_s() -> None:
    for key in DRAWN:
        past = round(library().movement(key)["past_midline"]["hand_cm"])
        words = {
            element.text for element in elements(fibre_svg(key, "60", "a")) if element.tag == f"{SVG}text"
        }
        assert words == {f"{abs(past)} cm {'past' if past > 0 else 'short'}"}, key


def test_hands_stay_inside_the_view_from_above_and_clear_of_the_words_below() -> None:
    hands = arm_paths([row.path for row in load_rows() if row.path]).hand
    for layout in LAYOUTS.values():
        view = layout.above
        left, top = view.page(hands).min(axis=(0, 1))
        right, bottom = view.page(hands).max(axis=(0, 1))
        assert view.left < left < right < layout.width
        assert view.top < top < bottom < view.bottom - 1.45 * layout.text - 1


@pytest.mark.parametrize("key", ONE_OF_A_KIND)
def test_figures_are_flat_black_and_white_and_thick_enough_to_copy(key: str) -> None:
    for svg in all_figures(key):
        for element in elements(svg):
            assert element.tag.removeprefix(SVG) in {
                *("svg", "g", "clipPath", "rect", "line", "path", "circle", "ellipse", "text")
            }
            for name, value in element.attrib.items():
                if name in {"fill", "stroke"}:
                    assert value in {"#000", "#fff", "none"}
                if name == "stroke-width":
                    assert float(value) >= 0.2
                if name == "font-size":
                    assert float(value) >= 3.5


@pytest.mark.parametrize("key", ONE_OF_A_KIND)
def test_numbers_have_two_decimals_at_most_and_the_same_movement_gives_the_same_bytes(key: str) -> None:
    for svg, again in zip(all_figures(key), all_figures(key), strict=True):
        assert svg == again
        assert not re.search(r"\d\.\d{3}|nan|inf", svg)


def test_size_is_in_millimetres() -> None:
    root = ET.fromstring(fibre_svg("push-up", "60", "a"))
    assert (root.get("width"), root.get("height"), root.get("viewBox")) == ("60mm", "35mm", "0 0 60 35")
    assert ET.fromstring(strip_svg("push-up", "120")).get("width") == "120mm"


def test_ids_are_unique_where_their_beginnings_are() -> None:
    two = fibre_svg("push-up", "60", "a") + fibre_svg("push-up", "60", "b")
    ids = re.findall(r' id="([^"]+)"', two)
    assert sorted(ids) == ["a-above", "a-front", "b-above", "b-front"]
    assert re.findall(r"url\(#([^)]+)\)", two) == ids


def test_the_label_says_what_the_picture_shows() -> None:
    root = ET.fromstring(fibre_svg("low-to-high-cable-crossover", "60", "a"))
    assert root.get("role") == "img"
    assert root.get("aria-label") == (
        "low-to-high cable crossover: clavicular much, sternal none, costal none; "
        "hand ends 10 cm past the midline"
    )
    raised = ET.fromstring(fibre_svg("dumbbell-lateral-raise", "60", "a")).get("aria-label")
    assert raised is not None
    assert raised.endswith("costal none; hand stays 27 cm short of the midline")


def test_the_strip_s_label_holds_lengths_and_the_words_long_and_short() -> None:
    label = ET.fromstring(strip_svg("flat-barbell-bench-press", "60")).get("aria-label")
    part = library().movement("flat-barbell-bench-press")["parts"]["sternal"]
    assert label is not None
    assert (
        f"sternal {part['length_start']:.0f} to {part['length_end']:.0f}, "
        f"loaded long {part['loaded_long']}, short {part['loaded_short']}" in label
    )


@pytest.mark.parametrize("key", ONE_OF_A_KIND)
def test_a_word_stands_beside_every_tone_at_120_mm(key: str) -> None:
    words = [element.text for element in elements(fibre_svg(key, "120", "a")) if element.tag == f"{SVG}text"]
    tone = {1: "much", 0.5: "some", 0: "none"}
    parts = library().movement(key)["parts"]
    named = [word for part in PARTS for word in (part, tone[parts[part]["dose"]])]
    assert words == [*named, words[-1]]


def test_the_lone_picture_has_name_key_and_note() -> None:
    words = " ".join(element.text or "" for element in elements(movement_picture_svg("push-up")))
    assert words.strip().startswith("push-up")
    assert "much: serves its line" in words
    assert "mechanical figures from one cadaver-sized model; not muscle activity, not growth" in words


def test_what_the_model_does_not_score_is_not_drawn() -> None:
    for draw in (
        movement_picture_svg,
        lambda key: strip_svg(key, "60"),
        lambda key: fibre_svg(key, "60", "a"),
    ):
        with pytest.raises(
            NoPicture, match="counted by its muscles, not scored, so there is nothing to draw"
        ):
            draw(TAGGED)
    with pytest.raises(NoPicture, match=r"^dumbbell pullover is not drawn\. In 3 of 31 postures"):
        strip_svg("dumbbell-pullover", "60")
    with pytest.raises(KeyError):
        fibre_svg("no-such-movement", "60", "a")


def test_tones_can_be_told_apart_by_their_lines_alone() -> None:
    drawn = {tone: swatch_svg(tone) for tone in TONES}
    assert "stroke-dasharray" in drawn["none"]
    assert drawn["much"].count("M") > drawn["some"].count("M") > 0
    assert 'aria-label="some"' in drawn["some"]
    assert 'width="7mm"' in swatch_svg("much", 7)


@pytest.mark.parametrize(
    ("line", "thick"),
    [
        ("clavicular", [True, False, False]),
        ("sternal", [False, True, False]),
        ("costal", [False, False, True]),
        ("between sternal and costal", [False, True, True]),
        ("none", [False, False, False]),
    ],
)
def test_the_followed_line_is_the_thick_one(line: str, thick: list[bool]) -> None:
    strokes = [element for element in elements(line_sign_svg(line)) if element.tag == f"{SVG}line"]
    strokes.sort(key=lambda stroke: float(stroke.get("y2", "nan")))
    assert [float(stroke.get("stroke-width", "nan")) > 1 for stroke in strokes] == thick
    assert f'aria-label="line of pull: {line}"' in line_sign_svg(line)


def test_a_length_met_twice_shows_the_better_loaded_time() -> None:
    length = np.array([50.0, 30.0, 50.0])
    found = stretches(length, np.array([1, 2, 0], dtype=np.int8))
    assert found == [(40.0, 50.0, "none"), (40.0, 50.0, "some"), (30.0, 40.0, "much")]


def test_strips_stay_between_shortest_and_longest() -> None:
    found = stretches(np.array([120.0, -10.0]), np.array([2, 2], dtype=np.int8))
    assert found == [(0.0, 100.0, "much")]


@pytest.mark.parametrize(
    ("hand_z", "words"),
    [
        ([0.3, 0.0], "hand ends at the midline"),
        ([0.3, -0.05, 0.1], "hand goes 5 cm past the midline"),
        ([0.0, 0.3], "hand stays at the midline"),
    ],
)
def test_where_the_hand_comes_is_said_in_words(hand_z: list[float], words: str) -> None:
    hand = np.array([[0.3, 0, z] for z in hand_z])
    assert hand_words(hand) == words


@pytest.mark.parametrize(
    ("z", "words", "beyond"), [(0.0, "at midline", 3), (0.05, "5 cm short", 3), (-0.3, "30 cm past", 0)]
)
def test_arrows_come_from_outside_where_there_is_no_room(z: float, words: str, beyond: float) -> None:
    view = LAYOUTS["60"].above
    drawn = f"<g>{distance(view, np.array([0.3, 0, z]), 3.5)}</g>"
    farthest = max(float(element.get("x2", "nan")) for element in ET.fromstring(drawn).iter("line"))
    assert f">{words}</text>" in drawn
    assert farthest - max(view.midline, view.at(z, 0.3)[0]) == pytest.approx(beyond, abs=0.01)
