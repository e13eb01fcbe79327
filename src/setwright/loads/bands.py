"""Bands: what one pulls at a length, from its own measured pulls and nothing else."""

import math
from bisect import bisect_left
from collections.abc import Iterator
from fractions import Fraction
from itertools import pairwise
from typing import Final

from setwright.loads.put import Around, Put, around
from setwright.model.room import NEWTON_A_KG, Band, BandPull, Gym

CM: Final = 100
"""Steps to a metre in which a length is told."""
GRAMS: Final = 1000
"""Steps to a kilogram in which a pull is told: finer than any scale reads."""
SPREAD_PERCENT: Final = 25
"""How far a label may be off (choice, no source; of eight bands five pulled less than their makers say, by
uchida2016, and levels 2 and 3 of eight did not differ, by santos2009: both read as abstracts)."""
SPREAD_WORDS: Final = (
    f"the pull is the one measured in this gym; a label is good to about {SPREAD_PERCENT} % "
    "(choice; makers' figures were too high for five bands of eight: uchida2016, abstract)"
)


def pull_newton(band: Band, at_m: float) -> float | None:
    """What a band pulls, in N, stretched to a length in m: linear between two measured lengths.

    None outside the lengths at which it was measured: nothing is invented there.
    """
    lengths = [pull.at_m for pull in band.pulls]
    at = bisect_left(lengths, at_m)
    if at < len(lengths) and lengths[at] == at_m:
        return band.pulls[at].newton
    if not 0 < at < len(lengths):
        return None
    short, long = band.pulls[at - 1 : at + 1]
    share = (at_m - short.at_m) / (long.at_m - short.at_m)
    return short.newton + share * (long.newton - short.newton)


def bands_around(asked: Fraction, hands: int, gym: Gym) -> Around:
    """The bands and lengths whose pull is next to ``asked`` (kg), where there are enough for ``hands``."""
    enough = (band for band in gym.bands if band.number is None or band.number >= hands)
    return around(asked, (put for band in enough for put in _puts(band, float(asked) * NEWTON_A_KG)))


def _puts(band: Band, newton: float) -> Iterator[Put]:
    """The band at its measured lengths, and at the whole centimetres next to the pull asked for."""
    yield from (_put(band, pull.at_m) for pull in band.pulls)
    for short, long in pairwise(band.pulls):
        if short.newton < newton < long.newton:
            length = _length(short, long, newton)
            for whole in (math.floor(length * CM) / CM, math.ceil(length * CM) / CM):
                yield _put(band, min(max(whole, short.at_m), long.at_m))


def _length(short: BandPull, long: BandPull, newton: float) -> float:
    share = (newton - short.newton) / (long.newton - short.newton)
    return short.at_m + share * (long.at_m - short.at_m)


def _put(band: Band, at_m: float) -> Put:
    newton = pull_newton(band, at_m)
    assert newton is not None
    kg = Fraction(round(newton / NEWTON_A_KG * GRAMS), GRAMS)
    return Put(kg, f"{band.name} band to {at_m:g} m")
