"""A lifter's size: from what was measured, or from height and sex; lengths grow with it, shares stay."""

import pytest

from setwright.engine.geometry import geometry
from setwright.engine.paths import arm_paths
from setwright.engine.scores import scores
from setwright.library.rows import load_rows
from setwright.library.table import library
from setwright.model.people import Athlete
from setwright.model.reader import read_block
from setwright.own.body import NoSuchBody, Size, model_size, size_of
from setwright.own.plan import NotToSize, sized_library
from setwright.own.sized import sized
from setwright.own.table import own_table
from setwright.places import Place
from tests.own.weeks import plan


def no_files(_: str) -> None:
    """Nothing stands beside the plan."""


HERE = Place("week.yaml", 1, 1, 1, 2)
SQUAD = "squad:\n  athletes:\n    - name: Ann\n      sex: female\n      height: 150 cm\n"


def athlete(**measured: object) -> Athlete:
    return Athlete.model_validate({"name": "Ann", "place": HERE, **measured})


@pytest.mark.parametrize(
    ("measured", "arm", "width"),
    [
        ({}, 0.5778, 0.3905),
        ({"sex": "female"}, 0.5525, 0.3653),
        ({"sex": " Man "}, 0.6031, 0.4157),
        ({"sex": "f", "height_cm": 162.85}, 0.5525, 0.3653),
        ({"sex": "m", "height_cm": 2 * 87.81}, 0.6031, 0.4157),
        ({"height_cm": 1.1 * 169.235}, 1.1 * 0.5778, 1.1 * 0.3905),
        ({"height_cm": 190, "arm_length_cm": 50, "shoulder_breadth_cm": 40}, 0.5, 0.4),
    ],
)
def test_a_size_is_measured_or_in_proportion_to_height(
    measured: dict[str, object], arm: float, width: float
) -> None:
    """ANSUR II, 2012: means of arm (acromion to radiale to stylion), shoulders and stature by sex."""
    factor, across = size_of(athlete(**measured))
    assert factor * 0.5778 == pytest.approx(arm, abs=1e-3)
    assert across == pytest.approx(width, abs=1e-3)


def test_a_length_that_no_lifter_has_is_refused() -> None:
    for wrong in ({"height_cm": 1.71}, {"arm_length_cm": 171}, {"shoulder_breadth_cm": 80}):
        with pytest.raises(NoSuchBody, match="Ann's height, arm length or shoulder breadth"):
            size_of(athlete(**wrong))


@pytest.mark.parametrize("factor", [0.85, 1.2])
def test_lengths_grow_with_the_lifter_and_nothing_else_does(factor: float) -> None:
    """The engine run on a shoulder of that size against the stored figures at that size."""
    rows = [row for row in load_rows() if row.path][::6]
    paths = [row.path for row in rows if row.path]
    shoulder = geometry().scaled(factor)
    engine = scores(arm_paths(paths, shoulder), shoulder)
    for n, row in enumerate(rows):
        entry = sized(library().movement(row.key), factor)
        assert [p["lever_mm"] for p in entry["parts"].values()] == pytest.approx(
            engine.lever[n].tolist(), abs=0.12
        )
        assert [p["share"] for p in entry["parts"].values()] == pytest.approx(
            engine.share[n].tolist(), abs=1e-3
        )
        assert entry["load_arm_cm"] == pytest.approx(engine.load_arm[n], abs=0.12)
        assert entry["past_midline"]["hand_cm"] == pytest.approx(engine.hand_past[n], abs=0.12)
        assert entry["past_midline"]["arm_deg"] == pytest.approx(engine.arm_past[n], abs=0.06)
        assert entry["size"] == factor


def test_what_is_counted_has_no_size() -> None:
    squat = library().movement("back-squat")
    assert sized(squat, 0.9) is squat


def test_a_grip_in_centimetres_stays_and_one_in_shoulder_widths_grows() -> None:
    text = plan(
        "fixed:\n  like: flat barbell bench press\n  grip: 72 cm\n"
        "wide:\n  like: flat barbell bench press\n  grip: 1.5 shoulder widths"
    )
    week = read_block("week.yaml", text, no_files).week
    assert week is not None
    for factor in (0.8, 1.25):
        table = own_table(week, Size(factor, factor * model_size().shoulder_width)).table
        fixed, wide = (sized(table.movement(f"own-{name}"), factor) for name in ("fixed", "wide"))
        assert fixed["past_midline"]["hand_cm"] == pytest.approx(-36, abs=0.2)
        assert wide["past_midline"]["hand_cm"] == pytest.approx(-factor * 1.5 * 39.05 / 2, abs=0.2)


def test_a_plan_is_sized_for_one_of_its_athletes() -> None:
    read = read_block("week.yaml", plan("fixed:\n  like: push-up") + SQUAD, no_files)
    done = sized_library(read, "ann")
    assert done.factor == pytest.approx(0.88, abs=0.01)
    assert done.movement("own-fixed")["parts"] == done.movement("push-up")["parts"]
    assert sized_library(read, None).factor == 1


@pytest.mark.parametrize(
    ("text", "name", "says"),
    [
        (plan("a b:\n  like: push-up") + SQUAD, "Bo", '"Bo" is no athlete of the plan; there are Ann'),
        (plan("a b:\n  like: push-up"), "Bo", '"Bo" is no athlete of the plan; it has no squad'),
        ("", None, "the plan can't be read"),
    ],
)
def test_nobody_to_size_for_is_said(text: str, name: str | None, says: str) -> None:
    with pytest.raises(NotToSize, match=says):
        sized_library(read_block("week.yaml", text, no_files), name)
