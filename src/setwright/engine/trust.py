"""How far the work of a part may be trusted in a movement: solid, soft or not usable, and why."""

from functools import cache
from typing import Any, Final, NamedTuple

from setwright.engine.frames import Floats
from setwright.engine.muscles import Trust, in_zone, muscle_data
from setwright.engine.tones import LEAST_LEVER

MOST_SPREAD: Final = 10.0
"""Points of work that may hang on the reserve about the humerus (choice: a tenth of the scale)."""

SMALL_LEVER: Final = f"its lever is under {LEAST_LEVER:.0f} mm"
HANGS_ON_RESERVE: Final = "it hangs on how much turning about the upper arm the joint itself holds"
REFUSED: Final = "the arm is where the model jumps"


class Mark(NamedTuple):
    """Solid: ranks movements for the part. Soft: informs. Not usable: says nothing. ``why`` None if solid."""

    trust: Trust
    why: str | None = None


def mark(part: str, u: Floats, lever_mm: float, spread: float, refused: str | None) -> Mark:
    """The mark of a part in a movement.

    ``u`` (samples, 3): upper-arm directions, right arm. ``lever_mm``, ``spread``: of the part, as in
    ``Works``. ``refused``: as from ``extremes.refusal``.

    >>> from setwright.engine.frames import elbow_direction
    >>> mark("deltoid_anterior", elbow_direction([-20.0], [60.0]), 30.0, 0.0, None).trust
    'soft'
    """
    if refused:
        return Mark("not usable", REFUSED)
    data = _of_part(part)
    if "why" in data:
        return Mark(data["trust"], data["why"])
    for zone in data.get("zones", ()):
        if in_zone(zone, u, 1).any():
            return Mark("soft", zone["why"])
    if abs(lever_mm) < LEAST_LEVER:
        return Mark("soft", SMALL_LEVER)
    if spread > MOST_SPREAD:
        return Mark("soft", HANGS_ON_RESERVE)
    return Mark("solid")


def _of_part(part: str) -> dict[str, Any]:
    """What the data file says of a part; nothing of those of the chest."""
    return _parts().get(part, {})


@cache
def _parts() -> dict[str, dict[str, Any]]:
    parts: dict[str, dict[str, Any]] = muscle_data()["parts"]
    return parts
