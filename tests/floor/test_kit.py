"""Stations as pools: what a gym file lists, in its own words, and what a movement holds of it."""

import math

import pytest

from setwright.floor.kit import holds, is_fixed, missing, pool_words, there
from setwright.library.table import library
from setwright.model.room import Gym
from setwright.reading.dose import Load
from tests.rules.plans import checked

FULL = """\
plan: A room
unit: kg
dose order: sets x reps
people: 4
gym:
  unit: kg
  racks: 2
  benches: 3
  bars:
    20 kg: 4
    trap bar 25 kg: 1
  dumbbells:
    4-20 kg by 2: 1 pair
    45 lb: 2
  kettlebells:
    24 kg: 2
  cables:
    - name: twin tower
    - name: low row
  bands:
    red:
      pull: 60 N at 2 m
      number: 4
  stations:
    dip bars: 1
sessions:
  - day: Monday
    work:
      - push-up: 3 x 8 at 2 RIR
"""


def gym(text: str = FULL) -> Gym:
    week = checked(text).week
    assert week is not None
    assert week.gym is not None
    return week.gym


def held(name: str, load: Load | None = None, room: Gym | None = None) -> dict[str, int]:
    key = library().find(name).key
    assert key is not None
    return dict(holds(library().movement(key), load, room or gym()))


@pytest.mark.parametrize(
    ("name", "pools"),
    [
        ("flat barbell bench press", {"rack": 1, "bar": 1, "bench": 1}),
        ("deadlift", {"bar": 1}),
        ("level cable crossover", {"stack": 2}),
        ("triceps pushdown", {"stack": 1}),
        ("face pull", {"stack": 1}),
        ("dip", {"dip bars": 1}),
        ("push-up", {}),
        ("flat dumbbell bench press", {"bench": 1}),
        ("goblet squat", {}),
    ],
)
def test_a_movement_holds_what_its_needs_say(name: str, pools: dict[str, int]) -> None:
    assert held(name) == pools


def test_dumbbells_are_told_by_the_mass_of_the_line() -> None:
    press = Load(kind="mass", low=20, high=20, unit="kg")
    assert held("flat dumbbell bench press", press) == {"bench": 1, "20 kg dumbbell": 2}
    assert there("20 kg dumbbell", gym()) == 2
    assert there("45 lb dumbbell", gym()) == 2
    assert there("23 kg dumbbell", gym()) == 0
    a_range = press.model_copy(update={"high": 24})
    assert held("flat dumbbell bench press", a_range) == {"bench": 1}
    plain = press.model_copy(update={"unit": None})
    assert held("flat dumbbell bench press", plain) == {"bench": 1, "20 kg dumbbell": 2}


def test_of_two_weights_the_one_that_is_there_is_held() -> None:
    heavy = Load(kind="mass", low=24, high=24, unit="kg")
    assert held("goblet squat", heavy) == {"24 kg kettlebell": 1}
    assert held("goblet squat", heavy.model_copy(update={"low": 20, "high": 20})) == {"20 kg dumbbell": 1}
    nowhere = heavy.model_copy(update={"low": 70, "high": 70})
    assert held("goblet squat", nowhere) == {"70 kg dumbbell": 1}


def test_what_nobody_counts_is_never_short() -> None:
    bare = gym(
        FULL.replace("  racks: 2\n", "").replace("  benches: 3\n", "").replace("      number: 4\n", "")
    )
    assert [there(pool, bare) for pool in ("rack", "bench", "band", "dumbbell", "floor")] == [math.inf] * 5
    assert there("band", gym()) == 4
    assert there("trap bar", gym()) == 1
    assert there("kettlebell", gym()) == math.inf
    assert there("pull-up bar", gym()) == 0


def test_a_station_listed_by_its_name_comes_before_all() -> None:
    own = gym(FULL.replace("    dip bars: 1\n", "    dip bars: 1\n    flat bench: 5\n"))
    assert held("flat dumbbell bench press", room=own) == {"flat bench": 5 // 5}
    assert there("flat bench", own) == 5


@pytest.mark.parametrize(
    ("name", "taken", "lacks"),
    [
        ("pull-up", "", ("pull-up bar",)),
        ("flat barbell bench press", "  racks: 2\n", ()),
        ("level cable crossover", "    - name: twin tower\n", ("cable pair",)),
        ("dip", "  stations:\n    dip bars: 1\n", ("dip bars",)),
    ],
)
def test_what_a_gym_lacks_is_what_it_has_too_few_of(name: str, taken: str, lacks: tuple[str, ...]) -> None:
    key = library().find(name).key or ""
    assert missing(gym(FULL.replace(taken, "")), library().movement(key)) == lacks


def test_every_need_of_the_library_is_a_pool_that_some_gym_has() -> None:
    """No station is misspelt: listed under `stations:` by its name, nothing is missing."""
    table = library()
    needs = {need for key in table.keys() for need in table.movement(key)["needs"]}  # noqa: SIM118 - keys() of the library
    room = gym().model_copy(update={"stations": dict.fromkeys(needs, 1)})
    for key in table.keys():  # noqa: SIM118 - keys() of the library
        assert missing(room, table.movement(key)) == ()


def test_racks_and_stations_stay_where_they_stand() -> None:
    assert all(map(is_fixed, ("rack", "stack", "dip bars")))
    assert not any(map(is_fixed, ("bench", "bar", "20 kg dumbbell", "band")))


@pytest.mark.parametrize(
    ("number", "pool", "said"),
    [
        (1, "bench", "1 bench"),
        (3, "box", "3 boxes"),
        (2, "dip bars", "2 dip bars"),
        (4, "rack", "4 racks"),
        (2, "24 kg kettlebell", "2 kettlebells of 24 kg"),
    ],
)
def test_pools_are_counted_in_words(number: int, pool: str, said: str) -> None:
    assert pool_words(number, pool) == said
