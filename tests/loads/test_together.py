"""Several lifters at once: what is shared, another way to the same load, and what is short."""

from itertools import product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.loads.loadable import loadable
from setwright.loads.means_of import LoadedBy
from setwright.loads.plates import Rack, every_way
from setwright.loads.put import Put
from setwright.loads.together import Together, together
from setwright.model.room import Gym, Stock
from tests.loads.rooms import bar, kg, piece, plates, room


def shared(pairs: dict[float, int], bars: int = 3) -> Gym:
    return room(bars=(bar(20, number=bars),), plates=plates(pairs), plates_per_rack=False)


def lifting(gym: Gym, *loads: float) -> Together:
    puts = [loadable(LoadedBy("bar", stock=gym.bars), gym, kg(load)).put for load in loads]
    return together([put for put in puts if put is not None], gym)


def test_plates_of_the_room_may_not_do_for_two() -> None:
    one = lifting(shared({20: 1}), 60, 60)
    assert not one.fits
    assert [short.words for short in one.short] == ["2 pairs of 20 kg plates wanted, 1 there"]


def test_another_way_to_the_same_load_is_found() -> None:
    """One takes 20 a side, the other 10 + 10."""
    one = lifting(shared({20: 1, 10: 2}), 60, 60)
    assert one.fits
    assert {put.words for put in one.puts} == {"20 kg bar, 20 a side", "20 kg bar, 10 + 10 a side"}


def test_who_comes_third_has_none_whoever_takes_which() -> None:
    assert not lifting(shared({20: 1, 10: 2}), 60, 60, 60).fits


def test_plates_of_each_rack_are_never_short_but_bars_are() -> None:
    gym = room(bars=(bar(20),), plates=plates({20: 1}))
    assert [short.words for short in lifting(gym, 60, 60).short] == ["2 of 20 kg bars wanted, 1 there"]
    assert lifting(gym.model_copy(update={"bars": (bar(20, number=2),)}), 60, 60).fits


def test_one_pair_of_dumbbells_serves_one_lifter() -> None:
    gym = room(dumbbells=(Stock(low=10, high=20, step=2, unit="kg", pairs=True),))
    (first, second) = (loadable(LoadedBy("weight", 2, gym.dumbbells), gym, kg(mass)).put for mass in (12, 14))
    assert first is not None
    assert second is not None
    assert together([first, second], gym).fits
    assert [short.words for short in together([first, first], gym).short] == [
        "4 of 12 kg dumbbells wanted, 2 there"
    ]


def test_nobody_lifts_nothing() -> None:
    assert together([], room()) == Together()


@settings(max_examples=40, deadline=None)
@given(
    st.dictionaries(st.sampled_from((2.5, 5, 10, 20)), st.integers(1, 3), min_size=1),
    st.lists(st.sampled_from((30, 40, 45, 50, 60)), min_size=1, max_size=3),
)
def test_as_brute_force_over_every_way_of_everybody(pairs: dict[float, int], loads: list[float]) -> None:
    gym = shared(pairs)
    rack = Rack((piece(20),), gym.plates)
    ways = [list(every_way(kg(load), rack)) for load in loads]
    if not all(ways):
        return
    first = [options[0] for options in ways]
    one = together(first, gym)
    assert one.fits == any(enough(puts, pairs) for puts in product(*ways))
    if one.fits:
        assert enough(one.puts, pairs)
        assert [put.kg for put in one.puts] == [kg(load) for load in loads]
    else:
        assert all(short.wanted > short.there for short in one.short)


def enough(puts: tuple[Put, ...], pairs: dict[float, int]) -> bool:
    for mass, number in pairs.items():
        used = sum(
            u.number for put in puts for u in put.uses if u.what == "plates" and u.piece == piece(mass)
        )
        if used > 2 * number:
            return False
    return True


@pytest.mark.parametrize("per_rack", [True, False])
def test_a_landmine_takes_plates_and_no_bar(*, per_rack: bool) -> None:
    gym = room(plates=plates({20: 1}), plates_per_rack=per_rack)
    put = loadable(LoadedBy("sleeve"), gym, kg(40)).put
    assert put is not None
    assert together([put], gym).fits
    assert together([put, put], gym).fits == per_rack
