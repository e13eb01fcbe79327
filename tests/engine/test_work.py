"""Work of movements: orders, gates, limits, marks."""

from typing import Any

import numpy as np
import pytest

from setwright.engine.geometry import geometry
from setwright.engine.movement import scored_fields
from setwright.engine.muscles import OTHER_PARTS
from setwright.engine.paths import arm_paths
from setwright.engine.scores import scores
from setwright.engine.trust import HANGS_ON_RESERVE, MOST_SPREAD, REFUSED, SMALL_LEVER, mark
from setwright.engine.work import Works, works
from tests.engine.library_paths import ROWS, SCORED

FIELDS = dict(zip((row.key for row in SCORED), scored_fields(SCORED), strict=True))
FAR_FORWARD = np.array([[1.0, 0.0, 0.0]])


def of(key: str) -> dict[str, Any]:
    return FIELDS[key]


def worked(key: str) -> dict[str, float]:
    """Work of every part that is shown."""
    parts = {**of(key)["parts"], **of(key)["other_parts"]}
    return {part: figures["work"] for part, figures in parts.items()}


def test_every_movement_says_what_every_shown_part_does() -> None:
    for one in FIELDS.values():
        assert tuple(one["other_parts"]) == OTHER_PARTS
        for part in (*one["parts"].values(), *one["other_parts"].values()):
            assert 0 <= part["work"] <= 100
            assert (part["trust_why"] is None) is (part["trust"] == "solid")
        assert one["weakest_point"] in {"start", "middle", "end"}


def test_no_newtons_and_no_cuff_come_out() -> None:
    for word in ("newton", "load_N", "subscapularis", "infraspinatus", "teres_minor", "supraspinatus"):
        assert word not in str(FIELDS)


def test_raises_and_presses_overhead_are_led_by_the_deltoid() -> None:
    raised, pressed = worked("dumbbell-lateral-raise"), worked("barbell-overhead-press")
    assert max(raised, key=lambda part: raised[part]) == "deltoid_middle"
    assert max(pressed, key=lambda part: pressed[part]) == "deltoid_anterior"
    assert raised["clavicular"] == raised["sternal"] == raised["costal"] == 0


def test_wide_rows_give_the_chest_nothing() -> None:
    for key in ("bent-over-barbell-row", "bench-pull", "wide-grip-high-cable-row", "inverted-row"):
        assert worked(key)["clavicular"] == worked(key)["sternal"] == worked(key)["costal"] == 0


@pytest.mark.parametrize("key", ["parallel-bar-dip-leaning", "ring-dip"])
def test_dips_are_led_by_the_sternal_part(key: str) -> None:
    assert max(worked(key), key=lambda part: worked(key)[part]) == "sternal"


def test_a_part_works_only_where_it_has_a_lever() -> None:
    assert worked("barbell-overhead-press")["sternal"] < 1
    for one in FIELDS.values():
        for part in one["other_parts"].values():
            if part["lever_mm"] < -15:
                assert part["work"] < 10


def test_long_short_and_across_are_none_where_a_path_has_no_such_posture() -> None:
    press, crossing = of("flat-barbell-bench-press")["parts"], of("level-cable-crossover")["parts"]
    assert press["sternal"]["worked"]["long"] > 99
    assert press["sternal"]["worked"]["short"] is press["sternal"]["worked"]["across"] is None
    assert crossing["clavicular"]["worked"]["across"] > 90
    assert 25 <= crossing["sternal"]["worked"]["across"] < 64
    assert crossing["costal"]["worked"]["across"] < 16


def test_close_grips_and_presses_across_are_limited_by_the_elbow() -> None:
    assert of("close-grip-barbell-bench-press")["elbow_limited"]
    assert of("one-arm-band-press-across")["elbow_limited"]
    assert not of("flat-barbell-bench-press")["elbow_limited"]
    assert not of("push-up")["elbow_limited"]


def test_bar_presses_are_weakest_at_the_chest_and_overhead_ones_above() -> None:
    assert of("flat-barbell-bench-press")["weakest_point"] == "start"
    assert of("level-cable-crossover")["weakest_point"] == "middle"
    assert of("barbell-overhead-press")["weakest_point"] == "end"


def test_flies_and_low_crossovers_are_light_by_nature_and_presses_are_not() -> None:
    for key in ("flat-dumbbell-fly", "low-to-high-cable-crossover", "dumbbell-front-raise", "machine-fly"):
        assert of(key)["light_by_nature"]
    for key in ("flat-barbell-bench-press", "parallel-bar-dip-leaning", "incline-45-barbell-bench-press"):
        assert not of(key)["light_by_nature"]


def work_of(*keys: str, size: float = 1.0) -> Works:
    shoulder = geometry().scaled(size)
    paths = arm_paths([path for key in keys if (path := ROWS[key].path) is not None], shoulder)
    return works(paths, scores(paths, shoulder), shoulder)


def test_a_body_of_another_size_works_the_same() -> None:
    keys = ("flat-barbell-bench-press", "level-cable-crossover", "close-grip-barbell-bench-press")
    one, large = work_of(*keys), work_of(*keys, size=1.15)
    assert large.work == pytest.approx(one.work, abs=0.1)
    assert large.load == pytest.approx(one.load, rel=1e-3)
    assert large.elbow_limited.tolist() == one.elbow_limited.tolist()


def test_marks() -> None:
    assert mark("sternal", FAR_FORWARD, 30.0, 0.0, None) == ("solid", None)
    assert mark("sternal", FAR_FORWARD, -30.0, MOST_SPREAD + 1, None) == ("soft", HANGS_ON_RESERVE)
    assert mark("sternal", FAR_FORWARD, 30.0, 0.0, "jumps") == ("not usable", REFUSED)
    assert mark("deltoid_middle", FAR_FORWARD, 30.0, 0.0, None).trust == "soft"
    assert mark("latissimus_dorsi", -FAR_FORWARD, 30.0, 0.0, None).trust == "soft"
    assert mark("latissimus_dorsi", FAR_FORWARD, 30.0, 0.0, None).trust == "solid"
    assert mark("supraspinatus", FAR_FORWARD, 30.0, 0.0, None).trust == "not usable"


def test_a_small_lever_is_no_firm_ground() -> None:
    assert mark("sternal", FAR_FORWARD, -9.0, 0.0, None) == ("soft", SMALL_LEVER)
    for row in ("bent-over-barbell-row", "bench-pull", "close-grip-seated-cable-row", "one-arm-cable-row"):
        assert of(row)["other_parts"]["latissimus_dorsi"]["trust"] == "soft"
    for pull in ("pull-up", "chin-up", "straight-arm-pulldown"):
        assert of(pull)["other_parts"]["latissimus_dorsi"]["trust"] == "solid"


def test_what_hangs_on_the_reserve_is_marked() -> None:
    assert of("parallel-bar-dip-leaning")["parts"]["clavicular"]["trust_why"] == HANGS_ON_RESERVE
    assert of("parallel-bar-dip-leaning")["parts"]["sternal"]["trust"] == "solid"
    assert of("dumbbell-pullover")["parts"]["costal"]["trust"] == "not usable"
