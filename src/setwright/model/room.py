"""The gym: what there is to lift, pull and stand on."""

from typing import Literal

from pydantic import Field

from setwright.places import Place
from setwright.reading.frozen import Frozen


class Stock(Frozen):
    """Some of one thing: a mass (or a run of masses by a step) and how many or how many pairs."""

    low: float
    high: float
    step: float | None = None
    unit: Literal["kg", "lb"]
    number: int = 1
    pairs: bool = False


class Cable(Frozen):
    """A cable station: heights and stack as written."""

    name: str
    number: int = 1
    heights: str | None = None
    stack: str | None = None
    pulley: str | None = None


class Band(Frozen):
    """An elastic band by its measured pull, as written ("60 N at 2 m")."""

    name: str
    pull: str | None = None
    number: int | None = None


class Gym(Frozen):
    """The room. An empty tuple means "none there"; None (racks, benches) means "not written"."""

    place: Place
    name: str | None = None
    unit: Literal["kg", "lb"] | None = None
    racks: int | None = None
    people_per_rack: int | None = None
    benches: int | None = None
    bars: tuple[Stock, ...] = ()
    plates: tuple[Stock, ...] = ()
    plates_per_rack: bool = True
    dumbbells: tuple[Stock, ...] = ()
    kettlebells: tuple[Stock, ...] = ()
    cables: tuple[Cable, ...] = ()
    bands: tuple[Band, ...] = ()
    stations: dict[str, int] = Field(default_factory=dict)
    spotter: Literal["yes", "none"] | None = None
    note: str | None = None
    private_note: str | None = None
