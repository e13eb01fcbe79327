"""Warm-up sets whose loads the plan leaves open, and who can lift at the same time."""

from itertools import pairwise

import pytest

from setwright.library.table import library
from setwright.loads.asked_for import Kilograms
from setwright.loads.at_once import at_once
from setwright.loads.lines import lines
from setwright.loads.loadable import loadable
from setwright.loads.means_of import LoadedBy
from setwright.loads.sets import ramp_percents, sets_of
from setwright.loads.together import MOST_WAYS, together
from setwright.model.people import Athlete
from setwright.model.room import Gym
from setwright.places import Place
from tests.loads.plans import week
from tests.loads.rooms import bar, kg, plates, room


@pytest.mark.parametrize("count", range(1, 8))
def test_warm_up_sets_rise_evenly_below_the_work(count: int) -> None:
    percents = ramp_percents(count)
    steps = {round(b - a, 9) for a, b in pairwise(percents)}
    assert len(percents) == count
    assert len(steps) <= 1
    assert 40 < percents[0] <= percents[-1] < 80


def asked(line: str) -> list[tuple[str, list[float]]]:
    """Of each kind of sets, what it is and the kilograms asked of the athlete."""
    one = week(line)
    (only,) = lines(one.sessions[0], 0, one, library())
    return [
        (sets.what, [w.asked.pick for w in sets.wanted if isinstance(w.asked, Kilograms)])
        for sets in sets_of(only, one, library())
    ]


def test_warm_up_sets_come_first_with_their_own_loads() -> None:
    told = asked("barbell back squat: 3 x 5 at 60, 65, 70 kg\n    warm-up: 8 at 20 kg, 5, 3 at 50%")
    assert told == [
        ("warm-up", [20]), ("warm-up", []), ("warm-up", []), ("work", [60]), ("work", [65]), ("work", [70]),
    ]  # fmt: skip


def test_open_warm_up_sets_are_shares_of_the_first_work_load() -> None:
    told = asked("barbell back squat: 3 x 5 at 60, 70, 80 kg\n    warm-up: 2 sets")
    assert told[:2] == [("warm-up", [30]), ("warm-up", [42])]
    assert asked("barbell back squat: 3 x 5 at 2 RIR\n    warm-up: 2 sets") == [("warm-up", [])] * 2
    assert asked("dip: 3 x 5 at bodyweight + 10 kg\n    warm-up: 1 set")[0] == ("warm-up", [10])


def at(number: int) -> Athlete:
    return Athlete(name=f"A{number}", place=Place("squad.yaml", number, 1, number, 2))


def crowd(gym: Gym, *loads: float) -> list[str]:
    """Who can't lift at the same time, and what is short, as one list of words."""
    by = LoadedBy("bar", stock=gym.bars) if gym.bars else LoadedBy("weight", 2, gym.dumbbells)
    puts = [loadable(by, gym, kg(load)).put for load in loads]
    one = at_once([(at(n), put) for n, put in enumerate(puts, 1) if put], gym)
    return [] if one is None else [athlete.name for athlete in one.lifters] + [s.words for s in one.short]


def test_neighbours_in_load_share_a_rack() -> None:
    """Of 100, 60, 100 and 60 kg on two racks, a 60 and a 100 are lifted at once, never two of 100."""
    pairs = {20.0: 3, 10.0: 1}
    gym = room(bars=(bar(20, number=2),), plates=plates(pairs), plates_per_rack=False, racks=2)
    assert crowd(gym, 100, 60, 100, 60) == []
    assert crowd(gym, 100, 100) == ["A1", "A2", "4 pairs of 20 kg plates wanted, 3 there"]


def test_without_racks_each_bar_is_one() -> None:
    pairs = {20.0: 1}
    gym = room(bars=(bar(20, number=2),), plates=plates(pairs), plates_per_rack=False)
    assert crowd(gym, 60, 60) == ["A1", "A2", "2 pairs of 20 kg plates wanted, 1 there"]
    assert crowd(gym, 60, 20, 60, 20) == []


def test_dumbbells_are_wanted_by_everybody_at_once() -> None:
    gym = room(dumbbells=plates({10: 1, 12: 1}))
    assert crowd(gym, 10, 12) == []
    assert crowd(gym, 10, 10, 12) == ["A1", "A2", "A3", "4 of 10 kg dumbbells wanted, 2 there"]


def test_many_ways_to_heavy_loads_end_soon() -> None:
    """Eight lifters and more iron than is there: no more than the first ways to each load are tried."""
    sizes = (20, 15, 10, 5, 2.5, 1.25, 0.5)
    gym = room(
        bars=(bar(20, number=8),), plates=plates(dict.fromkeys(sizes, 6)), plates_per_rack=False, racks=8
    )
    loads = range(100, 180, 10)
    puts = [loadable(LoadedBy("bar", stock=gym.bars), gym, kg(load)).put for load in loads]
    assert MOST_WAYS == 100
    assert not together([put for put in puts if put], gym).fits
