"""The coach's own mark on the sheets, and how dates and numbers are written on them."""

from typing import Literal

from setwright.places import Place
from setwright.reading.frozen import Frozen

DateStyle = Literal["day first", "month first", "numbers"]
DecimalSign = Literal["point", "comma"]


class Stationery(Frozen):
    """What stands on every sheet of a squad. ``logo``: the name of a picture file beside the plan.

    ``logo_place``: where the plan or its squad file names it.
    """

    title: str | None = None
    logo: str | None = None
    logo_place: Place | None = None
    footer: str | None = None
    dates: DateStyle = "day first"
    decimals: DecimalSign = "point"
