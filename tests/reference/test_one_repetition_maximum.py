"""Estimates of a max against examples printed by other libraries.

Each formula has a small open library of its own, whose page prints an example: read on npmjs.com and
github.com (one-rep-max, wathen, mayhew, brzycki, lander-formula, lombardi; kenany/epley). The test file of
tiaanduplessis/one-rep-max adds two for Epley. Some of them cut the decimals off, so those are compared as
whole numbers cut off. "mcGlothin" in one-rep-max is Lander's formula under its other name.
"""

import pytest

from setwright.loads.estimates import FORMULAS


@pytest.mark.parametrize(
    ("formula", "load", "reps", "printed"),
    [
        ("Epley", 100, 10, 133.33333333333331),  # one-rep-max, README
        ("Epley", 100, 9, 130),  # one-rep-max, test.js
        ("Epley", 120, 2, 128),  # one-rep-max, test.js
        ("Brzycki", 100, 10, 133.33333333333331),  # one-rep-max, README
        ("Lander", 100, 10, 134.0703628078088),  # one-rep-max, README ("mcGlothin")
        ("Lombardi", 100, 10, 125.89254117941672),  # one-rep-max, README
        ("O'Conner", 100, 10, 125),  # one-rep-max, README
        ("Wathan", 100, 10, 134.74669948168537),  # wathen, README
    ],
)
def test_examples_printed_in_full(formula: str, load: float, reps: int, printed: float) -> None:
    assert FORMULAS[formula](load, reps) == pytest.approx(printed, rel=1e-12)


@pytest.mark.parametrize(
    ("formula", "reps", "printed"),
    [
        ("Epley", 6, 120),  # epley, README
        ("Brzycki", 6, 116),  # brzycki, README
        ("Lander", 6, 117),  # lander-formula, README
        ("Lombardi", 10, 125),  # lombardi, README
        ("Mayhew", 10, 130),  # mayhew, README
    ],
)
def test_examples_printed_as_whole_numbers(formula: str, reps: int, printed: int) -> None:
    assert int(FORMULAS[formula](100, reps)) == printed
