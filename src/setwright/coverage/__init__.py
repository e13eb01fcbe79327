"""What a week adds up to: hard sets, lines, lengths, midline, load, and time.

``shapes`` holds the data: Coverage, PartCover, SessionCover, Work, Sets (a count that stays a span).
``counts`` turns each line of a session into a Work; ``muscles`` sorts muscles into groups.
``clock`` says how long a session takes; ``cover`` adds it all up. ``trend`` looks over the weeks of a block,
``cut`` at what is left of a week.
Only plain library rows are read here: no engine, no numpy.
"""

from setwright.coverage.cover import cover
from setwright.coverage.shapes import (
    PARTS,
    Coverage,
    Part,
    PartCover,
    SessionCover,
    Sets,
    Work,
    total,
)
from setwright.library.table import Movement

__all__ = [
    "PARTS",
    "Coverage",
    "Movement",
    "Part",
    "PartCover",
    "SessionCover",
    "Sets",
    "Work",
    "cover",
    "total",
]
