"""What a movement is loaded by in a gym, from its row in the library."""

import re
from collections.abc import Mapping
from typing import Final, Literal, NamedTuple

from setwright.library.table import Movement
from setwright.model.room import Gym, Stock

Kind = Literal["bar", "sleeve", "belt", "weight", "stack", "band", "bodyweight", "other"]
BOTH: Final = 2
"""Hands, or stacks of a cable pair."""

_BETWEEN: Final = re.compile(r",\s*|\s+or\s+")
_KINDS: Final[Mapping[str, Kind]] = {
    "barbell": "bar", "bar": "bar", "trap bar": "bar", "bar in a floor pivot": "sleeve",
    "dumbbell": "weight", "dumbbells": "weight", "kettlebell": "weight", "kettlebells": "weight",
    "cable": "stack", "band": "band",
}  # fmt: skip
"""What each implement of the library is loaded by; of the others the gym file says no mass."""


class LoadedBy(NamedTuple):
    """What carries the load. ``hands``: how many of it at once, each with the whole load asked for.

    ``stock``: the bars, dumbbells and kettlebells of this gym that will do.
    """

    kind: Kind
    hands: int = 1
    stock: tuple[Stock, ...] = ()


def means_of(movement: Movement, gym: Gym) -> LoadedBy:
    """What the movement is loaded by here; of several implements the first that the gym has.

    "sleeve": plates on one end of a bar; "belt": plates on the body, which a load asks for and no movement.
    "other": a machine, a sled, a ball, of which no gym file says what can be put on.
    """
    if movement["load_kind"] in ("bodyweight", "time or distance"):
        return LoadedBy("bodyweight")
    if movement["load_kind"] == "assisted":
        return LoadedBy("other")
    ways = [_way(word, movement, gym) for word in _BETWEEN.split(movement["implement"].casefold())]
    return next((way for way in ways if way.stock or _there(way, gym)), ways[0])


def _way(implement: str, movement: Movement, gym: Gym) -> LoadedBy:
    kind = _KINDS.get(implement, "other")
    if kind == "bar":
        return LoadedBy(kind, stock=_bars(movement, gym, trap=implement == "trap bar"))
    if kind == "weight":
        alone = movement["load_write"].startswith("the one") or not implement.endswith("s")
        return LoadedBy(kind, 1 if alone else BOTH, _in_hand(movement["implement"], gym))
    if kind == "stack":
        return LoadedBy(kind, BOTH if movement["load_write"] == "setting of each stack" else 1)
    if kind == "band":
        return LoadedBy(kind, BOTH if "band pair" in movement["needs"] else 1)
    return LoadedBy(kind)


def _there(way: LoadedBy, gym: Gym) -> bool:
    """Whether the gym has what carries the load, where that is no bar and no weight in the hand."""
    match way.kind:
        case "stack":
            return bool(gym.cables)
        case "band":
            return bool(gym.bands)
        case "sleeve":
            return bool(gym.plates)
        case kind:
            return kind == "other"


def _bars(movement: Movement, gym: Gym, *, trap: bool) -> tuple[Stock, ...]:
    """The straight bars; a curved one serves curls and extensions of the elbow only."""
    if trap:
        return gym.bars_named("trap")
    elbow = movement["pattern"] in ("elbow flexion", "elbow extension")
    return (*gym.straight_bars, *(gym.bars_named("curl", "ez") if elbow else ()))


def _in_hand(implements: str, gym: Gym) -> tuple[Stock, ...]:
    """The dumbbells, the kettlebells, or both where either will do."""
    dumbbells = gym.dumbbells if "dumbbell" in implements else ()
    kettlebells = gym.kettlebells if "kettlebell" in implements else ()
    return (*dumbbells, *kettlebells)
