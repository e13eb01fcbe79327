"""Which line of pull a movement follows and serves, and which crossing move finishes which press.

The line profile of a movement is its ``align_path`` for the three parts: how the arm's travel agrees with
each line of pull, whatever the load does. All limits here are choices.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from math import hypot
from typing import Final

from setwright.engine.geometry import PARTS
from setwright.engine.tones import LEAST_COSINE, LEAST_LEVER

PRESSES: Final = frozenset({"horizontal push", "vertical push", "downward push"})
"""Patterns of a press."""

FOLLOWING_PATTERNS: Final = PRESSES | {"fly"}
"""Patterns whose travel is called after a line; a pull that loads the chest only assists."""

ALSO_FOLLOWING: Final = frozenset({"dumbbell-pullover"})
"""Keys outside those patterns that are classed too: the pull-over lies between press and pull."""

LEAST_PROFILE: Final = 0.3
"""Below this cosine with every line a path follows none."""

CLAVICULAR_FROM: Final = 0.6
"""Tilt from which a path follows the clavicular line."""

COSTAL_BELOW: Final = 0.05
"""Tilt below which a path follows the costal line; from here to CLAVICULAR_FROM the sternal one."""

BETWEEN: Final = 0.05
"""How near to either limit a path lies between two lines."""

EQUAL_SHARES: Final = (0.25, 0.41, 0.34)
"""Shares of the parts at equal levers: largest forces over their sum, in whole percent."""

SERVES_FROM: Final = 1.3
"""Times its equal-lever share from which the load alone makes a movement serve a part."""

CROSSING_HAND_CM: Final = 3.0
"""How far past the midline a crossing move brings the hand, cm ..."""

CROSSING_ARM_DEG: Final = 15.0
"""... and the upper arm, degrees."""

NO_LINE: Final = "none"

_CLASSES: Final = {
    ("clavicular",): "clavicular",
    ("clavicular", "sternal"): "between clavicular and sternal",
    ("sternal",): "sternal",
    ("sternal", "costal"): "between sternal and costal",
    ("costal",): "costal",
    (): NO_LINE,
}


@dataclass(frozen=True)
class Line:
    """The line a path follows: ``tilt``, 1.4 clavicular to -1.4 costal, None without one; its ``parts``."""

    tilt: float | None
    parts: tuple[str, ...]

    @property
    def name(self) -> str:
        """The class in words, or "none"."""
        return _CLASSES[self.parts]


def agree(one: str, other: str) -> bool:
    """Whether two lines, by name, are of one class; "between" agrees with both its neighbours.

    >>> agree("sternal", "between sternal and costal"), agree("sternal", "costal"), agree("none", "none")
    (True, False, False)
    """
    parts = {name: set(parts) for parts, name in _CLASSES.items()}
    return not parts[one].isdisjoint(parts[other])


def follows(pattern: str, key: str) -> bool:
    """Whether movements of this pattern are called after a line at all.

    >>> follows("fly", "flat-dumbbell-fly"), follows("vertical pull", "chin-up")
    (True, False)
    """
    return pattern in FOLLOWING_PATTERNS or key in ALSO_FOLLOWING


def line(profile: Sequence[float]) -> Line:
    """The line of a profile (clavicular, sternal, costal cosine).

    >>> line((0.79, 0.60, 0.43)).name
    'sternal'
    >>> line((0.2, -0.1, -0.3)).name
    'none'
    """
    if max(profile) < LEAST_PROFILE:
        return Line(None, ())
    tilt = (profile[0] - profile[2]) / hypot(*profile)
    parts = tuple(
        part
        for part, above, below in (
            (PARTS[0], CLAVICULAR_FROM, float("inf")),
            (PARTS[1], COSTAL_BELOW, CLAVICULAR_FROM),
            (PARTS[2], float("-inf"), COSTAL_BELOW),
        )
        if above - BETWEEN <= tilt <= below + BETWEEN
    )
    return Line(tilt, parts)


def along_line(lever_mm: float, cosine: float) -> bool:
    """Whether a part is loaded along its line: lever and cosine both large enough to matter.

    >>> along_line(39.0, 0.76), along_line(39.0, 0.2)
    (True, False)
    """
    return lever_mm >= LEAST_LEVER and cosine >= LEAST_COSINE


def served(path: Line, share: Sequence[float], along: Sequence[bool]) -> tuple[str, ...]:
    """The parts a movement serves: its path has their class, or their share of the load stands out.

    ``share`` (0 to 1) and ``along`` (see ``along_line``): clavicular, sternal, costal.

    >>> served(line((0.84, 0.67, 0.55)), (0.340, 0.456, 0.204), (True, True, True))
    ('clavicular', 'sternal')
    """
    by_load = [
        on and got >= SERVES_FROM * equal for got, equal, on in zip(share, EQUAL_SHARES, along, strict=True)
    ]
    return tuple(part for part, load in zip(PARTS, by_load, strict=True) if load or part in path.parts)


def crosses(arm_deg: float, hand_cm: float) -> bool:
    """Whether hand and upper arm both go well past the midline (degrees, cm beyond it).

    >>> crosses(31.0, 18.0), crosses(8.0, 1.0)
    (True, False)
    """
    return hand_cm >= CROSSING_HAND_CM and arm_deg >= CROSSING_ARM_DEG


def likeness(one: Sequence[float], other: Sequence[float]) -> float:
    """Cosine between two line profiles.

    >>> round(likeness((1.0, 0.0, 0.0), (0.6, 0.8, 0.0)), 3)
    0.6
    """
    return sum(a * b for a, b in zip(one, other, strict=True)) / (hypot(*one) * hypot(*other))


CLOSE: Final = 0.01
"""Likenesses that differ less are equal; the two-arm move then comes first."""


def ranked(candidates: Mapping[str, tuple[float, bool, bool]]) -> list[str]:
    """Keys of candidates, best first: those that finish, by likeness, two-arm moves first among equals.

    Values: likeness, whether of the same class, whether done with both arms.

    >>> ranked({"one-arm": (0.999, True, False), "fly": (0.995, True, True), "other": (1.0, False, True)})
    ['fly', 'one-arm', 'other']
    """
    rest = sorted(candidates, key=lambda key: (not candidates[key][1], -candidates[key][0], key))
    best: list[str] = []
    while rest:
        like, same, _ = candidates[rest[0]]
        equal = [key for key in rest if candidates[key][1] == same and like - candidates[key][0] <= CLOSE]
        best += sorted(equal, key=lambda key: not candidates[key][2])
        rest = [key for key in rest if key not in equal]
    return best
