"""Bringing the arm across at shoulder height.

Kuechle DK, Newman SR, Itoi E, Morrey BF, An KN 1997. Shoulder muscle moment arms during horizontal flexion
and elevation. J Shoulder Elbow Surg 6:429-439. Tendon excursion. Read: abstract (two pages): pectoralis
major has the largest horizontal-flexion arm at 90 deg of elevation, and is among the largest depressors. No
numbers.
"""

import numpy as np

from tests.reference.model import SIDEWAYS, across, all_across, all_raising, raising


def test_every_part_brings_the_arm_across_from_the_side_to_the_front() -> None:
    assert (across(np.arange(0.0, 91.0, 10.0), 90.0) > 10).all()


def test_bringing_across_is_what_the_whole_muscle_does_best() -> None:
    assert across(np.array([60.0]), 90.0).mean() > np.abs(raising(SIDEWAYS, np.array([90.0]))).mean()


def test_the_muscle_as_a_whole_lowers_the_raised_arm() -> None:
    assert (raising(SIDEWAYS, np.arange(0.0, 121.0, 10.0)).mean(axis=1) < 0).all()


def test_pectoralis_brings_across_best_and_rear_deltoid_and_infraspinatus_take_back_best() -> None:
    """To 60 deg of plane; with the arm forward the rear deltoid of the model has lost its arm."""
    arms = {part: values.mean() for part, values in all_across(np.arange(0.0, 61.0, 10.0), 90.0).items()}
    ranked = sorted(arms, key=lambda part: arms[part])
    assert ranked[0] == "deltoid_posterior"
    assert "infraspinatus" in ranked[:3]
    assert ranked[-1] == "clavicular"
    assert "sternal" in ranked[-3:]


def test_the_front_deltoid_raises_more_in_front_and_the_side_deltoid_to_the_side() -> None:
    low = np.arange(0.0, 61.0, 10.0)
    front, side = all_raising(90.0, low), all_raising(SIDEWAYS, low)
    assert front["deltoid_anterior"].mean() > side["deltoid_anterior"].mean()
    assert side["deltoid_middle"].mean() > front["deltoid_middle"].mean()
