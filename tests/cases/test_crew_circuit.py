"""A circuit of a crew on duty, with one pair of dumbbells for two of its stations. Everyone is invented."""

import pytest

from setwright.floor.conflicts import conflicts
from setwright.floor.room import Floor
from tests.floor.rooms import floor_of
from tests.rules.plans import checked

PLAN = """\
plan: Station circuit
unit: kg
dose order: sets x reps
sides: each
people: 5
minutes: 40
if interrupted: the round that was begun is done again; later than 30 minutes, finish here
gym:
  unit: kg
  dumbbells:
    20 kg: 1 pair
  stations:
    sled: 1
    box: 1
work:
  - circuit:
      - dumbbell floor press: at 20 kg
      - sled drag
      - one-arm dumbbell row: at 20 kg
      - step-up
      - push-up
      - front plank
    rounds: 4
    each: 35 s
    between moves: 25 s
    rest: 2:00
  - push-up: 2 x max
    rest: 60 s
"""


def crew(text: str = PLAN) -> Floor:
    return floor_of(text)


def test_one_pair_of_dumbbells_is_used_at_two_stations_at_the_same_moment() -> None:
    (wrong,) = [one for one in conflicts(crew()) if one.kind == "stations"]
    assert wrong.text == "the circuit wants 3 x 20 kg dumbbell at the same moment, and the room has 2"
    assert wrong.change.startswith("give one of the moves another load or another piece of kit")


@pytest.mark.parametrize(
    ("old", "new"),
    [("20 kg: 1 pair", "20 kg: 2 pairs"), ("dumbbell row: at 20 kg", "dumbbell row: at 16 kg")],
)
def test_two_pairs_or_another_load_are_no_fault(old: str, new: str) -> None:
    room = PLAN.replace("20 kg: 1 pair", "20 kg: 1 pair\n    16 kg: 1 pair").replace(old, new)
    assert not [one for one in conflicts(crew(room)) if one.kind == "stations"]


def test_three_of_six_stations_are_never_all_neighbours() -> None:
    assert not [
        one for one in conflicts(crew(PLAN.replace("people: 5", "people: 3"))) if one.kind == "stations"
    ]


def test_five_go_round_six_stations_together_and_the_time_is_the_sum() -> None:
    """By hand: 6 x (35 + 25) s x 4 rounds are 24 min, three rests of 2 min make 30, setting up 31."""
    one = crew()
    assert [len(group) for group in one.groups] == [5]
    circuit, _ = one.stays
    assert circuit.end_s - circuit.start_s == 31 * 60
    assert one.finish_s < 40 * 60


def test_nothing_else_is_said_of_the_floor() -> None:
    assert [one.kind for one in conflicts(crew())] == ["stations"]
    assert checked(PLAN).complete
