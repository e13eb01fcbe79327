"""How large a lifter is against the model: from height and sex, or from what was measured."""

from functools import cache
from importlib.resources import files
from typing import Any, Final, NamedTuple

import yaml

from setwright.model.people import Athlete

CM_A_METRE: Final = 100.0
SEXES: Final = {
    **dict.fromkeys(("male", "man", "m", "boy"), ("men",)),
    **dict.fromkeys(("female", "woman", "f", "w", "girl"), ("women",)),
}
BOTH: Final = ("men", "women")
"""Without a word of sex, the middle of both means: the model's own arm is within 2 % of it."""

LEAST: Final = 0.6
MOST: Final = 1.4
"""Sizes against the model outside which a length was mistyped (choice)."""


class NoSuchBody(ValueError):
    """Lengths that no lifter has; the text says whose and what to mend."""


class Size(NamedTuple):
    """``factor``: arm length against the model's. ``shoulder_width``: between the acromions, metres."""

    factor: float
    shoulder_width: float


@cache
def _sizes() -> dict[str, Any]:
    text = files("setwright").joinpath("data", "body-sizes.yaml").read_text(encoding="utf-8")
    data: dict[str, Any] = yaml.safe_load(text)
    return data


def _mean(what: str, sexes: tuple[str, ...]) -> float:
    return sum(float(_sizes()[sex][what]["mean"]) for sex in sexes) / len(sexes)


def _arm(sexes: tuple[str, ...]) -> float:
    """Tip of the shoulder to wrist, metres."""
    return _mean("upper_arm", sexes) + _mean("forearm", sexes)


def model_size() -> Size:
    """The size of the model itself.

    >>> model_size()
    Size(factor=1.0, shoulder_width=0.3905)
    """
    return Size(1.0, round(_mean("shoulder_breadth", BOTH), 4))


def size_of(athlete: Athlete) -> Size:
    """The size of an athlete; what was not measured comes from height and sex, without both from the model.

    Source: ANSUR II (data/body-sizes.yaml); arms and shoulders are taken in proportion to height.
    Raises: NoSuchBody.
    """
    sexes = SEXES.get((athlete.sex or "").strip().casefold(), BOTH)
    tall = 1.0 if athlete.height_cm is None else athlete.height_cm / CM_A_METRE / _mean("stature", sexes)
    arm = _arm(sexes) * tall if athlete.arm_length_cm is None else athlete.arm_length_cm / CM_A_METRE
    width = athlete.shoulder_breadth_cm
    across = _mean("shoulder_breadth", sexes) * tall if width is None else width / CM_A_METRE
    factor = arm / _arm(BOTH)
    if not (LEAST <= factor <= MOST and LEAST <= across / model_size().shoulder_width <= MOST):
        raise NoSuchBody(
            f"{athlete.name}'s height, arm length or shoulder breadth can't be right; "
            "write them in centimetres, for example `height: 171 cm`"
        )
    return Size(factor, across)
