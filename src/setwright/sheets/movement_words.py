"""What is known of a movement beside its dose, in words for whoever does it alone."""

from collections.abc import Mapping
from typing import Any, Final

from setwright.floor.kit import ALWAYS_THERE
from setwright.model.plan import Item

MOST_CAUTIONS: Final = 2
"""Cautions told of a movement (choice: what is remembered)."""

Entry = Mapping[str, Any]
"""A movement of the library; empty for one that isn't known."""


def watch(movement: Entry) -> str:
    """The library's first cautions."""
    return " ".join(movement.get("cautions", ())[:MOST_CAUTIONS])


def kit(item: Item, movement: Entry) -> str:
    """What the line and the library say it takes, but for what is everywhere."""
    needs = (need for need in movement.get("needs", ()) if need not in ALWAYS_THERE)
    return ", ".join(dict.fromkeys((*item.kit, *needs)))
