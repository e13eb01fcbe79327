"""Orders that the engine must give, along chains of movements in which one thing changes."""

from itertools import pairwise

import numpy as np
import pytest

from setwright.engine.geometry import geometry
from setwright.engine.paths import arm_paths
from setwright.engine.scores import resistance_by_length, scores
from tests.engine.library_paths import ROWS, figures, of_part, with_pulley

BENCH = [f"{angle}-barbell-bench-press" for angle in ("decline-15", "flat", "incline-30", "incline-45")]
DUMBBELL = [f"{angle}-dumbbell-bench-press" for angle in ("decline-15", "flat", "incline-30", "incline-45")]


def rising(values: list[float]) -> bool:
    return all(a < b for a, b in pairwise(values))


def falling(values: list[float]) -> bool:
    return rising(values[::-1])


@pytest.mark.parametrize("chain", [BENCH, DUMBBELL])
def test_the_steeper_the_bench_the_more_clavicular_and_the_less_costal(chain: list[str]) -> None:
    bench = figures(*chain)
    assert rising(of_part(bench, "clavicular", "share"))
    assert falling(of_part(bench, "costal", "share"))


def test_the_steeper_the_bench_the_shorter_the_sternal_lever() -> None:
    assert falling(of_part(figures(*BENCH), "sternal", "lever_mm"))


def test_clavicular_share_from_dip_to_low_crossover() -> None:
    chain = ["parallel-bar-dip-leaning", *BENCH, "low-to-high-cable-crossover"]
    assert rising(of_part(figures(*chain), "clavicular", "share"))


def test_costal_share_from_dip_to_low_crossover() -> None:
    chain = [
        "parallel-bar-dip-leaning", "high-to-low-cable-crossover", *BENCH, "low-to-high-cable-crossover",
    ]  # fmt: skip
    shares = of_part(figures(*chain), "costal", "share")
    assert all(a >= b for a, b in pairwise(shares))
    assert shares[-1] == 0


def test_a_narrow_grip_is_more_clavicular_and_a_wide_one_more_costal() -> None:
    chain = ["close-grip-barbell-bench-press", "flat-barbell-bench-press", "wide-grip-barbell-bench-press"]
    grips = figures(*chain)
    assert rising(of_part(grips, "costal", "share"))
    assert falling(of_part(grips, "clavicular", "share"))
    assert rising([one["load_arm_cm"] for one in grips])


def test_long_end_from_floor_press_to_fly() -> None:
    chain = [
        "barbell-floor-press", "board-bench-press", "flat-barbell-bench-press",
        "flat-dumbbell-bench-press", "flat-dumbbell-fly",
    ]  # fmt: skip
    assert rising(of_part(figures(*chain), "sternal", "length_start"))
    assert rising(of_part(figures("push-up", "wide-push-up", "deep-push-up"), "sternal", "length_start"))


def test_short_end_from_bar_to_crossover() -> None:
    chain = [
        "flat-barbell-bench-press", "close-grip-barbell-bench-press", "flat-dumbbell-bench-press",
        "flat-dumbbell-fly", "flat-bench-cable-fly", "level-cable-crossover",
    ]  # fmt: skip
    ends = of_part(figures(*chain), "sternal", "length_end")
    assert falling(ends)
    assert ends[-1] == 0


def test_the_lower_the_pulley_of_one_path_the_more_clavicular() -> None:
    fly = figures(*(with_pulley("one-arm-cable-fly-across", y) for y in (-1.2, -0.8, -0.4, 0, 0.4, 0.8)))
    assert falling(of_part(fly, "clavicular", "share"))
    assert rising(of_part(fly, "costal", "share"))


def test_crossing_moves_from_low_to_high_to_high_to_low() -> None:
    chain = ["low-to-high-cable-crossover", "level-cable-crossover", "high-to-low-cable-crossover"]
    assert falling(of_part(figures(*chain), "clavicular", "share"))
    assert rising(of_part(figures(*chain), "costal", "share"))


def test_a_dumbbell_fly_ends_light_and_a_machine_fly_does_not() -> None:
    dumbbell, level, low, machine = figures(
        "flat-dumbbell-fly", "level-cable-crossover", "low-to-high-cable-crossover", "machine-fly"
    )
    assert rising([one["resistance"]["short"] for one in (dumbbell, level, low, machine)])
    assert dumbbell["resistance"]["short"] < 0.25
    assert machine["resistance"]["short"] > 0.95


def test_load_arms_tell_flies_from_presses_and_dips_apart() -> None:
    flies = figures("flat-dumbbell-fly", "machine-fly", "level-cable-crossover")
    presses = figures(*BENCH, *DUMBBELL)
    assert min(one["load_arm_cm"] for one in flies) > 1.5 * max(one["load_arm_cm"] for one in presses)
    dips = figures("parallel-bar-dip-upright", "ring-dip", "parallel-bar-dip-leaning")
    assert rising([one["load_arm_cm"] for one in dips])


def test_feet_raised_push_ups_are_more_clavicular_and_knees_change_nothing() -> None:
    floor, feet, knees = figures("push-up", "feet-raised-push-up", "knee-push-up")
    assert feet["parts"]["clavicular"]["share"] > floor["parts"]["clavicular"]["share"]
    assert feet["parts"]["costal"]["share"] < floor["parts"]["costal"]["share"]
    for part in ("clavicular", "sternal", "costal"):
        assert knees["parts"][part]["share"] == pytest.approx(floor["parts"][part]["share"], abs=0.02)


def test_rear_raises_and_wide_rows_pull_against_the_chest() -> None:
    keys = ["reverse-machine-fly", "band-pull-apart", "wide-grip-high-cable-row", "face-pull"]
    for one in figures(*keys):
        levers = [one["parts"][part]["lever_mm"] for part in ("clavicular", "sternal", "costal")]
        assert max(levers) < 0
        assert levers[2] == max(levers)
    for one in figures("bent-over-barbell-row", "dead-stop-barbell-row", "bench-pull"):
        assert all(-55 < part["lever_mm"] < -24 for part in one["parts"].values())


def test_wide_rows_oppose_the_chest_more_than_close_ones() -> None:
    wide, close = figures("wide-grip-high-cable-row", "close-grip-seated-cable-row")
    assert wide["parts"]["clavicular"]["lever_mm"] < close["parts"]["clavicular"]["lever_mm"] - 15


def test_pulls_from_overhead_load_the_costal_part_in_this_order() -> None:
    chain = ["wide-grip-pulldown", "pull-up", "neutral-grip-pull-up", "chin-up", "straight-arm-pulldown"]
    assert rising(of_part(figures(*chain), "costal", "lever_mm"))
    assert max(of_part(figures(*chain), "clavicular", "lever_mm")) < 1


def test_overhead_work_is_clavicular_at_most() -> None:
    chain = [
        "behind-neck-press", "barbell-overhead-press", "seated-dumbbell-shoulder-press",
        "rotating-dumbbell-press", "one-arm-landmine-press",
    ]  # fmt: skip
    overhead = figures(*chain)
    assert rising(of_part(overhead, "clavicular", "lever_mm"))
    assert max(of_part(overhead, "sternal", "lever_mm") + of_part(overhead, "costal", "lever_mm")) < 1


def test_rows_and_raises_have_no_sternal_lever() -> None:
    keys = [
        "bent-over-barbell-row",
        "dumbbell-lateral-raise",
        "dumbbell-front-raise",
        "wide-grip-high-cable-row",
    ]
    assert max(of_part(figures(*keys), "sternal", "lever_mm")) < 0


def test_scores_of_another_body_size_are_the_same_but_for_lengths_in_metres() -> None:
    path = ROWS["flat-barbell-bench-press"].path
    assert path is not None
    large = geometry().scaled(1.15)
    one, other = scores(arm_paths([path])), scores(arm_paths([path], large), large)
    assert other.lever == pytest.approx(1.15 * one.lever, abs=0.01)
    assert other.load_arm == pytest.approx(1.15 * one.load_arm, abs=0.01)
    for name in ("align_path", "align_load", "share", "length", "resistance"):
        assert getattr(other, name) == pytest.approx(getattr(one, name), abs=0.01), name


def test_a_third_of_the_way_without_a_sample_has_no_resistance() -> None:
    gap = resistance_by_length(np.array([1.0, 0.5]), np.array([90.0, 10.0]))
    assert gap == [1.0, None, 0.5]
    assert resistance_by_length(np.array([0.5, 1.0]), np.array([40.0, 40.0])) == [0.75, None, None]
