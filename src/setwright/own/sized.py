"""A movement's figures for a lifter of another size: lengths grow with the arm, angles and shares stay."""

from collections.abc import Mapping
from typing import Any, Final

from setwright.library.table import Movement

LENGTHS: Final = frozenset({"lever_mm", "hand_cm", "load_arm_cm"})
"""Figures of the engine that are lengths of the lifter."""


def sized(movement: Movement, factor: float) -> Movement:
    """The entry with every length times ``factor``: levers in mm, distances in cm.

    The words (loaded, serves, crossing) are those at the model's size: their limits grow with the lifter.
    """
    if not movement["scored"] or factor == 1:
        return movement
    return {**_grown(movement, factor), "size": round(factor, 3)}


def _grown(figures: Movement, factor: float) -> dict[str, Any]:
    return {
        name: _grown(value, factor)
        if isinstance(value, Mapping)
        else round(value * factor, 1)
        if name in LENGTHS
        else value
        for name, value in figures.items()
    }
