"""The loads of an athlete as a picture: everything inside its edges, in words too, and the same each time."""

import datetime as dt
import re
from collections.abc import Callable
from pathlib import Path
from xml.etree import ElementTree as ET

import pytest

from setwright.loads.ranges import Range
from setwright.records.trend import Estimate, Point, Trend
from setwright.sheets.trend import NothingToDraw, trend_svg
from tests.commands import run, said
from tests.records.plans import hall

SVG = "{http://www.w3.org/2000/svg}"


def trend(
    *lifted: float, movement: str = "dip", added: bool = False, estimate: Estimate | None = None
) -> Trend:
    day = dt.date(2027, 11, 1)
    points = tuple(Point(day + dt.timedelta(weeks=n), kg, 8, estimate) for n, kg in enumerate(lifted))
    return Trend(movement, added=added, points=points)


def drawn(*trends: Trend, name: str = "Zoe") -> ET.Element:
    return ET.fromstring(trend_svg(name, trends))


def texts(root: ET.Element) -> list[str]:
    return [one.text or "" for one in root.iter(f"{SVG}text")]


def test_a_chart_a_movement_in_the_look_of_the_other_pictures() -> None:
    root = drawn(trend(40, 42.5), trend(5, 10, movement="pull-up", added=True), trend(60, movement="squat"))
    assert root.attrib["role"] == "img"
    assert root.attrib["aria-label"] == (
        "Zoe: the heaviest set of each record. dip, kg: 2027-11-01 40 × 8, 2027-11-08 42.5 × 8. "
        "pull-up, kg: 2027-11-01 5 × 8, 2027-11-08 10 × 8"
    )
    assert {"dip, kg", "pull-up, kg added to the body", "40 × 8", "10 × 8", "2027-11-08"} <= {*texts(root)}
    assert "squat" not in " ".join(texts(root))
    assert len([*root.iter(f"{SVG}circle")]) == 4
    colours = set(re.findall(r'(?:fill|stroke)="([^"]+)"', trend_svg("Zoe", [trend(40, 42.5)])))
    assert colours <= {"#000", "#fff", "none"}


def test_the_picture_is_the_one_that_was_looked_at(golden: Callable[[str, str], None]) -> None:
    both = Estimate(Range(50, 54), at_least=False)
    golden("loads.svg", trend_svg("Zoe", [trend(40, 42.5, 42.5, estimate=both), trend(0, 2.5, added=True)]))


def test_everything_lies_inside_and_nothing_is_too_fine() -> None:
    """Letters are half as wide as high on average, in the middle or at the end of their place."""
    both = Estimate(Range(50, 54), at_least=False)
    root = drawn(trend(40, 42.5, 60, 40, 41, 42, 43, estimate=both), trend(40, 40, movement="x" * 90))
    width, height = (float(one) for one in root.attrib["viewBox"].split()[2:])
    for one in root.iter(f"{SVG}text"):
        size, x, y = (float(one.attrib[key]) for key in ("font-size", "x", "y"))
        long = 0.5 * size * len(one.text or "")
        left = x - {"middle": long / 2, "end": long}.get(one.attrib.get("text-anchor", ""), 0)
        assert left >= -0.01
        assert left + long <= width + 0.01, one.text
        assert size <= y <= height
    for one in root.iter():
        assert float(one.attrib.get("stroke-width", 1)) >= 0.2
    assert [text for text in texts(root) if text.startswith("xxx")] == [f"{'x' * 49}…"]


def test_the_higher_load_is_drawn_higher_and_equal_ones_level() -> None:
    heights = [float(one.attrib["cy"]) for one in drawn(trend(40, 50, 40)).iter(f"{SVG}circle")]
    assert heights[0] == heights[2] > heights[1]
    level = [float(one.attrib["cy"]) for one in drawn(trend(40, 40)).iter(f"{SVG}circle")]
    assert level[0] == level[1]


@pytest.mark.parametrize(("at_least", "lines", "heads"), [(False, 3, 0), (True, 2, 1)])
def test_a_range_is_a_bar_and_at_least_an_arrow(*, at_least: bool, lines: int, heads: int) -> None:
    estimate = Estimate(Range(50, 54), at_least=at_least)

    def pieces(*, added: bool = False, estimate: Estimate | None = None) -> tuple[int, int]:
        root = drawn(trend(40, 50, added=added, estimate=estimate))
        solid = [one for one in root.iter(f"{SVG}path") if one.attrib.get("fill") == "#000"]
        return len([*root.iter(f"{SVG}line")]), len(solid)

    bare, with_max = pieces(), pieces(estimate=estimate)
    assert (with_max[0] - bare[0], with_max[1] - bare[1]) == (2 * lines, 2 * heads)
    assert pieces(added=True, estimate=estimate) == bare


def test_ends_of_the_scale_that_would_touch_are_one() -> None:
    wide, narrow = (
        texts(drawn(trend(40, high, estimate=Estimate(Range(50, 90), at_least=False)))) for high in (60, 41)
    )
    assert ({"40", "60"} <= {*wide}, "40" in narrow, "41" in narrow) == (True, False, True)


def test_many_records_have_fewer_labels_than_rings() -> None:
    root = drawn(trend(*range(40, 70)))
    assert len([*root.iter(f"{SVG}circle")]) == 30
    dates = [text for text in texts(root) if text.startswith("202")]
    assert dates[0] == "2027-11-01"
    assert dates[-1] == "2028-05-22"
    assert len(dates) <= 5


def test_nothing_to_draw_is_said() -> None:
    with pytest.raises(NothingToDraw, match="Zoe has no load of a movement on record more than once"):
        trend_svg("Zoe", [trend(40)])


RECORD = "record: Hall, week 3\nsession: Monday\ndate: 2027-11-{}\ndone:\n  Ann:\n    - bench press: {} x 8\n"


def test_the_command_draws_one_athlete(tmp_path: Path) -> None:
    plan, form, out = hall(tmp_path), tmp_path / "form.yaml", tmp_path / "ann.svg"
    form.write_text(RECORD.format(15, 40), encoding="utf-8")
    run("keep", form, "--plan", plan)
    none = run("review", plan, "--for", "Ann", "--picture", out)
    assert (none.exit_code, "on record more than once" in said(none), out.exists()) == (2, True, False)
    form.write_text(RECORD.format(16, 42.5), encoding="utf-8")
    run("keep", form, "--plan", plan)
    assert "say whose with --for NAME" in said(run("review", plan, "--picture", out))
    assert run("review", plan, "--for", "Ann", "--picture", out).exit_code == 0
    assert "42.5 × 8" in out.read_text(encoding="utf-8")
    assert run("review", plan, "--for", "Ann", "--picture", tmp_path).exit_code == 2
