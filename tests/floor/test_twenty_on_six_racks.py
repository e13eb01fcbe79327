"""A room of our own: twenty athletes on six racks in 45 minutes, and how far the timetable is from the best.

No timetable is under the bound, so the optimum is no farther away than the bound is.
"""

from itertools import pairwise

import pytest

from setwright.floor.conflicts import conflicts
from setwright.floor.room import Floor
from setwright.report.floor import how_good
from tests.floor.rooms import RACKS, floor_of, plan

LINES = (
    "back squat: 4 x 5 at 3 RIR, rest 2:00",
    "flat barbell bench press: 3 x 6 at 2 RIR, rest 2:00",
    "pull-up: 3 x 6 at 2 RIR, rest 90 s",
    "face pull: 2 x 12 at 2 RIR, rest 60 s",
    "front plank: 2 x 30 s hold, rest 30 s",
)
ROOM = (
    RACKS.format(6)
    + "  benches: 3\n  cables:\n    - name: tower\n      number: {}\n  stations:\n    pull-up bar: {}\n"
)
FARTHEST = 0.07
"""Share of the bound (choice)."""


def evening(towers: int, bars: int) -> Floor:
    return floor_of(plan(*LINES, top="people: 20\n", gym=ROOM.format(towers, bars), minutes="45"))


def test_with_two_of_what_is_scarce_nothing_can_be_better() -> None:
    one = evening(2, 2)
    assert [len(group) for group in one.groups] == [4] * 5
    assert one.finish_s == one.least_s
    assert how_good(one) == "No order of the blocks ends earlier."
    assert not [c for c in conflicts(one) if c.kind == "late"]


@pytest.mark.parametrize(("towers", "bars", "minutes"), [(1, 1, 2), (2, 1, 3)])
def test_with_one_the_distance_to_the_bound_is_small_and_is_told(
    towers: int, bars: int, minutes: int
) -> None:
    one = evening(towers, bars)
    assert one.least_s < one.finish_s <= (1 + FARTHEST) * one.least_s
    assert how_good(one) == f"Not every order was tried: at most {minutes} min could be saved."
    assert one.finish_s <= 45 * 60


def test_every_group_does_every_block_one_at_a_time_and_no_station_is_given_twice() -> None:
    one = evening(1, 1)
    for group in range(5):
        mine = one.of_group(group)
        assert sorted(stay.block.number for stay in mine) == [1, 2, 3, 4, 5]
        assert all(before.end_s <= after.start_s for before, after in pairwise(mine))
    for stay in one.stays:
        meeting = [other for other in one.stays if other.start_s <= stay.start_s < other.end_s]
        for pool, there in one.there.items():
            assert sum(other.holds.get(pool, 0) for other in meeting) <= there
