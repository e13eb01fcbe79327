"""Plates: worked by hand, and against brute force and SciPy's integer programme on random racks."""

from fractions import Fraction
from itertools import product

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import Bounds, LinearConstraint, milp

from setwright.loads.plates import Rack, every_way, loads_around
from setwright.loads.put import Put
from setwright.loads.sums import sums_of
from setwright.model.room import kilograms
from setwright.reading.measures import Unit
from tests.loads.rooms import KG_PLATES, LB_PLATES, kg, piece, plates

SMALL = Rack((piece(20), piece(15)), plates(KG_PLATES))
SCHOOL = Rack((piece(45, "lb"),), plates(LB_PLATES, "lb"))


def words(asked: Fraction, rack: Rack) -> tuple[str | None, str | None]:
    below, above = loads_around(asked, rack)
    return below and below.words, above and above.words


@pytest.mark.parametrize(
    ("asked", "on_it"),
    [
        (20, "the empty 20 kg bar"),
        (72.5, "20 kg bar, 20 + 5 + 1.25 a side"),
        (60, "20 kg bar, 20 a side"),
        (100, "20 kg bar, 20 + 20 a side"),
        (17.5, "15 kg bar, 1.25 a side"),
        (137.5, "20 kg bar, 20 + 20 + 10 + 5 + 2.5 + 1.25 a side"),
    ],
)
def test_plates_a_side_in_words(asked: float, on_it: str) -> None:
    """Worked by hand (common practice, no source)."""
    assert words(kg(asked), SMALL) == (on_it, on_it)


def test_competition_discs() -> None:
    """140 kg on a 20 kg bar, worked by hand: 25 + 25 + 10 a side.

    The discs of the IWF Technical and Competition Rules (read second hand).
    """
    discs = dict.fromkeys((25, 20, 15, 10, 5, 2.5, 2, 1.5, 1, 0.5), 2)
    assert words(kg(140), Rack((piece(20),), plates(discs)))[0] == "20 kg bar, 25 + 25 + 10 a side"


@pytest.mark.parametrize(
    ("asked", "below", "above"),
    [
        (61.75, "45 lb bar, 5 + 2.5 a side", "45 lb bar, 10 a side"),
        (68.875, "45 lb bar, 10 a side", "45 lb bar, 10 + 2.5 a side"),
        (120.25, "45 lb bar, 35 + 2.5 a side", "45 lb bar, 35 + 5 a side"),
        (39, None, "the empty 45 lb bar"),
        (400, "45 lb bar, 45 + 35 + 25 + 10 + 10 + 5 + 2.5 a side", None),
    ],
)
def test_pounds_between_two_loads(asked: float, below: str | None, above: str | None) -> None:
    assert words(kg(asked, "lb"), SCHOOL) == (below, above)


def test_of_two_bars_for_one_load_the_first_listed() -> None:
    assert words(kg(20), Rack((piece(15), piece(20)), plates(KG_PLATES)))[0] == "15 kg bar, 2.5 a side"


def test_a_bar_takes_the_plates_of_its_own_unit() -> None:
    both = (*plates({20: 1}), *plates({45: 1}, "lb"))
    assert words(kg(61), Rack((piece(20),), both)) == ("20 kg bar, 20 a side", None)
    assert words(kg(136, "lb"), Rack((piece(45, "lb"),), both)) == ("45 lb bar, 45 a side", None)


def test_a_bar_without_plates_of_its_own_unit_takes_the_others() -> None:
    """20 kg and 2 x 45 lb are 60.82 kg (0.45359237 kg a pound, by definition)."""
    (put, _) = loads_around(kg(61), Rack((piece(20),), plates({45: 1}, "lb")))
    assert put is not None
    assert put.words == "20 kg bar, 45 lb a side"
    assert float(put.kg) == pytest.approx(60.8233133, abs=1e-9)


def test_plates_of_both_units_only_where_the_gym_says_so() -> None:
    both = Rack((piece(20),), (*plates({20: 1, 2.5: 1}), *plates({45: 1}, "lb")), mixed=True)
    assert words(kg(101), both)[0] == "20 kg bar, 45 lb + 20 kg a side"
    assert words(kg(66), both) == ("20 kg bar, 45 lb + 2.5 kg a side", "20 kg bar, 45 lb + 20 kg a side")


def test_one_sleeve_takes_both_plates_of_a_pair() -> None:
    one_end = Rack((piece(0),), plates({20: 1, 5: 1}), sleeves=1)
    assert words(kg(45), one_end) == ("20 + 20 + 5 kg on the sleeve", "20 + 20 + 5 kg on the sleeve")
    (pounds, _) = loads_around(kg(5, "lb"), Rack((piece(0),), plates({5: 1}, "lb"), sleeves=1))
    assert pounds is not None
    assert pounds.words == "5 lb on the sleeve"


def test_an_odd_plate_goes_on_no_bar() -> None:
    odd = tuple(stock.model_copy(update={"pairs": False, "number": 3}) for stock in plates({20: 0}))
    assert words(kg(200), Rack((piece(20),), odd))[0] == "20 kg bar, 20 a side"


def test_no_bar_no_load() -> None:
    assert loads_around(kg(60), Rack((), plates(KG_PLATES))) == (None, None)


SIZES = (0.25, 0.5, 1.25, 2, 2.5, 5, 7.5, 10, 15, 20, 25, 35)
PAIRS = st.dictionaries(st.sampled_from(SIZES), st.integers(0, 3), min_size=1, max_size=6)
ASKED = st.integers(0, 3000).map(lambda tenths: Fraction(tenths, 10))


def loads_of(pairs: dict[float, int], the_bar: float) -> dict[Fraction, int]:
    """Every load of a bar by brute force, with the fewest plates a side that make it."""
    found: dict[Fraction, int] = {}
    for counts in product(*(range(number + 1) for number in pairs.values())):
        side = sum((Fraction(str(mass)) * n for mass, n in zip(pairs, counts, strict=True)), Fraction(0))
        total = Fraction(str(the_bar)) + 2 * side
        found[total] = min(found.get(total, 99), sum(counts))
    return found


@settings(max_examples=120, deadline=None)
@given(PAIRS, ASKED)
def test_the_loads_next_to_the_one_asked_for_are_those_of_brute_force(
    pairs: dict[float, int], asked: Fraction
) -> None:
    rack = Rack((piece(20),), plates(pairs))
    below, above = loads_around(asked, rack)
    there = loads_of(pairs, 20)
    assert (below and below.kg) == max((kg for kg in there if kg <= asked), default=None)
    assert (above and above.kg) == min((kg for kg in there if kg >= asked), default=None)
    for put in filter(None, (below, above)):
        check_put(put, pairs)
        assert sum(use.number for use in put.uses[1:]) == 2 * there[put.kg]


def check_put(put: Put, pairs: dict[float, int]) -> None:
    """The pieces add up to the load, and none is used more often than it is there."""
    assert sum(use.piece.kg * use.number for use in put.uses) == put.kg
    for use in put.uses:
        if use.what == "plates":
            assert 0 < use.number <= 2 * pairs[float(use.piece.mass)]


@settings(max_examples=25, deadline=None)
@given(PAIRS.filter(lambda pairs: any(pairs.values())), ASKED)
def test_the_load_below_is_the_optimum_of_an_integer_programme(
    pairs: dict[float, int], asked: Fraction
) -> None:
    """SciPy's milp (HiGHS): the heaviest side up to half of what the bar leaves, in whole hundredths."""
    (below, _) = loads_around(max(asked, Fraction(20)), Rack((piece(20),), plates(pairs)))
    assert below is not None
    masses = np.array([mass * 100 for mass in pairs])
    most = int((max(asked, Fraction(20)) - 20) / 2 * 100)
    best = milp(
        -masses,
        integrality=np.ones(len(pairs)),
        bounds=Bounds(0, np.array(list(pairs.values()))),
        constraints=LinearConstraint(masses[None, :], ub=most),
    )
    assert float(below.kg) == pytest.approx(20 + 2 * round(-best.fun) / 100)


FEW = st.dictionaries(st.sampled_from(SIZES), st.integers(0, 3), min_size=1, max_size=3)


@settings(max_examples=60, deadline=None)
@given(FEW, FEW, st.sampled_from(["kg", "lb"]), ASKED)
def test_mixed_plates_are_those_of_brute_force_over_both_units(
    kilos: dict[float, int], pounds: dict[float, int], unit: Unit, asked: Fraction
) -> None:
    the_bar = piece(20, unit)
    found = loads_around(asked, Rack((the_bar,), (*plates(kilos), *plates(pounds, "lb")), mixed=True))
    both = product(loads_of(kilos, 0), loads_of(pounds, 0))
    there = {the_bar.kg + light + kilograms(heavy, "lb") for light, heavy in both}
    assert [put and put.kg for put in found] == [
        max((load for load in there if load <= asked), default=None),
        min((load for load in there if load >= asked), default=None),
    ]
    for put in filter(None, found):
        assert sum(use.piece.kg * use.number for use in put.uses) == put.kg


def test_of_the_ways_to_one_sum_the_fewest_plates_then_the_largest() -> None:
    """20 = 20, not 10 + 10; 30 in two plates = 20 + 10 and 25 + 5, of which 25 comes first."""
    sums = sums_of(tuple((Fraction(mass), there) for mass, there in ((25, 1), (20, 1), (10, 2), (5, 2))))
    assert list(sums.ways(Fraction(20))) == [(0, 1, 0, 0), (0, 0, 2, 0), (0, 0, 1, 2)]
    assert next(sums.ways(Fraction(30))) == (1, 0, 0, 1)
    assert list(sums.ways(Fraction(7, 2))) == []


def test_no_more_than_twenty_plates_go_on_a_side() -> None:
    sums = sums_of(((Fraction(5, 4), 50),))
    assert sums.above(Fraction(25)) == 25
    assert sums.above(Fraction(26)) is None
    assert sums.below(Fraction(99)) == 25
    assert sums.below(Fraction(-1)) is None


@settings(max_examples=40, deadline=None)
@given(PAIRS)
def test_every_way_to_a_load_is_found_once(pairs: dict[float, int]) -> None:
    rack = Rack((piece(20),), plates(pairs))
    target = Fraction(20) + 2 * sum((Fraction(str(mass)) for mass, n in pairs.items() if n), Fraction(0))
    ways = list(every_way(target, rack))
    assert len({put.uses for put in ways}) == len(ways)
    assert all(put.kg == target for put in ways)
    counts = product(*(range(number + 1) for number in pairs.values()))
    by_force = [
        c for c in counts if sum(n * mass for n, mass in zip(c, pairs, strict=True)) * 2 + 20 == target
    ]
    assert len(ways) == len(by_force)
