"""The picture of the floor: every stay where the clock has it, black on white, nobody named."""

import re
from xml.etree import ElementTree as ET

import pytest

from setwright.sheets.floor_picture import chart_of, floor_svg
from tests.floor.rooms import RACKS, floor_of, plan, squad

SQUAT = "back squat: 3 x 8 at 3 RIR, rest 2:00"
SVG = "{http://www.w3.org/2000/svg}"


def words(picture: str) -> list[str]:
    return [one.text or "" for one in ET.fromstring(picture).iter(f"{SVG}text")]


def test_groups_down_blocks_by_number_and_minutes_across() -> None:
    text = plan(SQUAT, "push-up: 3 x 10, rest 60 s", top="people: 6\n", gym=RACKS.format(1))
    picture = floor_svg(chart_of(floor_of(text.replace("    work:", "    warm-up: 8 min\n    work:"))))
    found = words(picture)
    assert [one for one in found if one in "ABC"] == ["A", "B"]
    assert (found.count("1"), found.count("2"), found.count("warm-up")) == (2, 2, 2)
    assert [one for one in found if one.endswith("0")][:3] == ["0", "10", "20"]
    root = ET.fromstring(picture)
    assert root.get("aria-label") == "The floor of Monday: 2 groups down, 23 minutes across"
    assert (root.get("width"), root.get("height")) == ("180mm", "24.1mm")


def test_boxes_are_as_long_as_the_clock_says() -> None:
    one = floor_of(plan(SQUAT, top="people: 6\n", gym=RACKS.format(1)))
    boxes = ET.fromstring(floor_svg(chart_of(one), 200.0, 10.0)).iter(f"{SVG}rect")
    framed = [box for box in boxes if box.get("stroke-width") == "0.35"]
    a_second = 180.0 / one.finish_s
    for box, stay in zip(framed, sorted(one.stays, key=lambda stay: stay.group), strict=True):
        assert float(box.get("x", "")) == pytest.approx(10 + stay.start_s * a_second, abs=0.01)
        assert float(box.get("width", "")) == pytest.approx((stay.end_s - stay.start_s) * a_second, abs=0.01)


def test_black_on_white_and_nobody_named() -> None:
    text = plan(SQUAT, top=squad(Adelaide="", Bartholomew=""), gym=RACKS.format(1))
    picture = floor_svg(chart_of(floor_of(text)))
    assert set(re.findall(r"#[0-9a-f]{3,6}", picture)) == {"#000", "#fff"}
    assert "Adelaide" not in picture


def test_a_number_that_does_not_fit_is_left_out_and_a_long_session_has_fewer_times() -> None:
    lines = [SQUAT, "push-up: 8 x 10, rest 5:00", "pull-up: 1 x 1, rest 60 s", "dip: 1 x 1, rest 60 s"]
    found = words(floor_svg(chart_of(floor_of(plan(*lines, top="people: 1\n"))), 60.0))
    assert "2" in found
    assert "3" not in found
    assert "30" in found
    assert "10" not in found
