"""Lifts whose bar is over the body, so that somebody, or something, has to catch it."""

from collections.abc import Mapping
from typing import Any, Final

OVER_THE_BODY: Final = frozenset({"horizontal push", "vertical push", "squat", "elbow extension"})
"""Patterns in which a barbell is over face, trunk or head (common practice, no source)."""


def is_under_the_bar(movement: Mapping[str, Any]) -> bool:
    """Whether a movement of the library is done with a barbell over face, trunk or head."""
    return movement["implement"] == "barbell" and movement["pattern"] in OVER_THE_BODY
