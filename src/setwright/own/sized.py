"""A movement's figures for a lifter of another size: lengths grow with the arm, angles and shares stay."""

from collections.abc import Mapping
from typing import Any

Movement = Mapping[str, Any]


def sized(movement: Movement, factor: float) -> Movement:
    """The entry with every length times ``factor``: levers in mm, distances in cm.

    The words (loaded, serves, crossing) are those at the model's size: their limits grow with the lifter.
    """
    if not movement["scored"] or factor == 1:
        return movement
    past = movement["past_midline"]
    return {
        **movement,
        "size": round(factor, 3),
        "parts": {
            part: {**one, "lever_mm": round(one["lever_mm"] * factor, 1)}
            for part, one in movement["parts"].items()
        },
        "past_midline": {**past, "hand_cm": round(past["hand_cm"] * factor, 1)},
        "load_arm_cm": round(movement["load_arm_cm"] * factor, 1),
    }
