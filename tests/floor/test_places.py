"""Which rack a group is at: no two at one, and back at its own where that is free."""

from setwright.floor.places import places
from tests.floor.rooms import RACKS, floor_of, plan

SQUAT = "back squat: 3 x 8 at 3 RIR, rest 2:00"
PUSH = "push-up: 3 x 10, rest 60 s"
PRESS = "standing barbell overhead press: 3 x 8 at 3 RIR, rest 2:00"


def test_no_two_groups_are_at_one_rack_at_a_time() -> None:
    one = floor_of(plan(SQUAT, PUSH, PRESS, top="people: 12\n", gym=RACKS.format(2)))
    racks = places(one, "rack")
    at_rack = [stay for stay in one.stays if stay.holds.get("rack")]
    assert set(racks.values()) == {1, 2}
    assert len(racks) == len(at_rack)
    for stay in at_rack:
        meeting = [s for s in at_rack if s.start_s <= stay.start_s < s.end_s]
        assert len({racks[s.group, s.block.number] for s in meeting}) == len(meeting)


def test_a_group_goes_back_to_its_own_and_what_nobody_needs_has_no_number() -> None:
    one = floor_of(plan(SQUAT, PRESS, top="people: 8\n", gym=RACKS.format(3)))
    racks = places(one, "rack")
    assert [racks[group, 1] == racks[group, 2] for group in (0, 1)] == [True, True]
    assert places(one, "stack") == {}
