"""How long a block lasts, by hand; and rest at a rack as practice knows it.

A set of 15 repetitions lasts 45 s by ``coverage.clock`` (3 s each), and 20 s go by until the next one lifts.
"""

import pytest

from setwright.floor.blocks import Block
from setwright.floor.timing import rest_given, seconds
from tests.floor.rooms import RACKS, floor_of, plan

SQUAT = "back squat: 4 x 15 at 3 RIR, rest {}"
ROOM = RACKS.format(1)


def block(*lines: str, gym: str = ROOM, minutes: str = "60") -> Block:
    (one,) = floor_of(plan(*lines, gym=gym, minutes=minutes)).blocks
    return one


@pytest.mark.parametrize(("people", "practice_s"), [(4, 195), (3, 130)])
def test_rest_at_a_rack_is_what_practice_knows(people: int, practice_s: float) -> None:
    """Common practice, no source: with sets of about 45 s four rest about 195 s, three about 130 s."""
    assert rest_given(block(SQUAT.format("60 s")), people) == pytest.approx(practice_s, abs=1)


def test_alone_or_with_few_the_written_rest_is_the_rest() -> None:
    one = block(SQUAT.format("3:00"))
    assert [rest_given(one, people) for people in (1, 2, 3)] == [180, 180, 180]
    assert rest_given(one, 4) == 3 * 65


def test_a_block_lasts_until_the_last_one_is_through() -> None:
    one = block(SQUAT.format("60 s"))
    assert seconds(one, 1) == 60 + 4 * 45 + 3 * 60
    assert seconds(one, 4) == 60 + 3 * (4 * 65 - 20) + 45 + 3 * 65


def test_warm_up_sets_of_each_further_person_take_half_as_long() -> None:
    one = block(f"{SQUAT.format('60 s')}\n        warm-up: 10 at bar, 5 at 40 kg")
    assert seconds(one, 3) - seconds(block(SQUAT.format("60 s")), 3) == 2 * 90 * (1 + 2 * 0.5)


def test_what_needs_no_station_is_done_by_all_at_once() -> None:
    one = block("push-up: 3 x 10 at 2 RIR, rest 60 s\n        warm-up: 1 set")
    assert seconds(one, 8) == seconds(one, 1) == 60 + 90 + 3 * 30 + 2 * 60


def test_the_busiest_station_of_a_pair_decides() -> None:
    pair = "superset:\n          - back squat: 3 x 10\n          - push-up: 3 x 20\n        rest: 30 s"
    one = block(pair)
    assert one.set_s == 30 + 60 + 10
    assert rest_given(one, 4) == 4 * 50 - 20 - 100
    assert rest_given(one, 2) == 30


def test_a_circuit_by_the_clock_lasts_as_long_for_any_number() -> None:
    moves = "          - push-up\n          - front plank\n"
    one = block(f"circuit:\n{moves}        rounds: 3\n        each: 40 s\n        rest: 60 s")
    assert seconds(one, 2) == seconds(one, 6)
    assert one.name == "push-up with front plank"
