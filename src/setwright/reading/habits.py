"""House habits: what the top of the plan settles once for every dose line under it."""

from typing import Literal

from setwright.reading.dose import MaxKind
from setwright.reading.frozen import Frozen

Member = Literal["alone", "rounds", "each", "ladder"]


class Habits(Frozen):
    """How ambiguous words are read in this file; None means nobody said, so the reader asks.

    ``member`` tells what a line inside a group may say; ``bands`` are the names in the gym file, None
    when there is no gym file (a band of any name is then read). ``training_maxes``: the squad has training
    maxes beside tested ones.
    """

    unit: Literal["kg", "lb"] | None = None
    dose_order: Literal["sets x reps", "reps x sets"] | None = None
    percent_of: MaxKind | None = None
    sides: Literal["each", "in all"] | None = None
    bands: frozenset[str] | None = None
    training_maxes: bool = False
    member: Member = "alone"
