"""A max estimated from a load and how often it was lifted: published formulas, and the range they span.

The formulas are quoted second hand: they stand as below in an encyclopaedia article that several open
libraries copy, and were compared by LeSuer DA et al., J Strength Cond Res 1997;11:211-213. ``w`` is the
load in any unit, ``r`` the repetitions to failure; the estimate has the unit of the load.
"""

import math
from collections.abc import Mapping
from types import MappingProxyType
from typing import Final, Protocol

from setwright.loads.ranges import Range, one

MOST_REPS: Final = 10
"""Repetitions up to which a max is estimated.

Reynolds JM et al., J Strength Cond Res 2006;20:584-592 (abstract): no more than 10 in linear equations;
Whisenant MJ et al., J Strength Cond Res 2003;17:221-227 (abstract): validity falls as repetitions rise.
"""


class TooManyReps(ValueError):
    """More repetitions than a max can be estimated from."""


class Formula(Protocol):
    """A max from a load and its repetitions."""

    def __call__(self, w: float, r: int) -> float:
        """The estimated max, in the unit of ``w``."""


def epley(w: float, r: int) -> float:
    """The max by Epley 1985. Source: second hand, see above.

    >>> round(epley(100, 10), 2)
    133.33
    """
    return w * (1 + r / 30)


def brzycki(w: float, r: int) -> float:
    """The max by Brzycki 1993, J Phys Educ Recreat Dance 64(1):88-90. Source: second hand, see above."""
    return w * 36 / (37 - r)


def lander(w: float, r: int) -> float:
    """The max by Lander 1985. Source: second hand, see above."""
    return 100 * w / (101.3 - 2.67123 * r)


def lombardi(w: float, r: int) -> float:
    """The max by Lombardi 1989. Source: second hand, see above."""
    return float(w * r**0.10)


def mayhew(w: float, r: int) -> float:
    """The max by Mayhew et al. 1992. Source: second hand, see above."""
    return 100 * w / (52.2 + 41.9 * math.exp(-0.055 * r))


def oconner(w: float, r: int) -> float:
    """The max by O'Conner et al. 1989. Source: second hand, see above."""
    return w * (1 + 0.025 * r)


def wathan(w: float, r: int) -> float:
    """The max by Wathan 1994. Source: second hand, see above."""
    return 100 * w / (48.8 + 53.8 * math.exp(-0.075 * r))


FORMULAS: Final[Mapping[str, Formula]] = MappingProxyType(
    {
        "Epley": epley,
        "Brzycki": brzycki,
        "Lander": lander,
        "Lombardi": lombardi,
        "Mayhew": mayhew,
        "O'Conner": oconner,
        "Wathan": wathan,
    }
)


def estimated_max(load: float, reps: int) -> Range:
    """The lowest and the highest max that the formulas give, in the unit of ``load``.

    One repetition is the load itself: five of the seven formulas would give more.

    ``load``: above 0. ``reps``: to failure, from 1. Raises: TooManyReps above ``MOST_REPS``.

    >>> estimated_max(100, 1)
    Range(low=100, high=100)
    >>> tuple(round(end, 1) for end in estimated_max(100, 5))
    (112.5, 119.0)
    """
    if reps > MOST_REPS:
        raise TooManyReps(f"lifted {reps} times; a max is estimated from {MOST_REPS} repetitions at most")
    if reps == 1:
        return one(load)
    found = [formula(load, reps) for formula in FORMULAS.values()]
    return Range(min(found), max(found))
