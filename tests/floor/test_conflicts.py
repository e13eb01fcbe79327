"""What will go wrong on the floor, and what is left alone."""

import pytest

from setwright.floor.conflicts import Conflict, conflicts
from tests.floor.rooms import RACKS, floor_of, plan, squad

SQUAT = "back squat: 3 x 8 at 3 RIR, rest {}"
PRESS = "flat barbell bench press: 3 x 6 at {}, rest 3:00"
BENCH = "  benches: 2\n"


def found(
    *lines: str, kind: str, top: str = "people: 8\n", gym: str = RACKS.format(1), minutes: str = "60"
) -> list[Conflict]:
    told = conflicts(floor_of(plan(*lines, top=top, gym=gym, minutes=minutes)))
    return [one for one in told if one.kind == kind]


def test_a_rest_that_the_floor_makes_longer_says_which_rest_there_is() -> None:
    """Four at a rack, sets of 24 s and 20 s until the next one: 3 x 44 s."""
    (one,) = found(SQUAT.format("60 s"), kind="rest")
    assert one.text == "back squat: 4 at one station rest 132 s, and 60 s is written"
    assert one.change == "write rest 135 s, or let fewer share a station"
    assert not found(SQUAT.format("2:30"), kind="rest", top="people: 3\n")
    assert not found("back squat: 3 x 8 at 3 RIR", kind="rest")


PAIR = """superset:
          - flat barbell bench press: 3 x 6 at 2 RIR
          - {}: 3 x 12 at 2 RIR
        rest: 2:00"""
TOWER = "  cables:\n    - name: tower\n"


def test_a_pair_that_keeps_two_stations_apart_which_another_block_needs() -> None:
    gym = RACKS.format(1) + BENCH + TOWER
    (one,) = found(PAIR.format("triceps pushdown"), "face pull: 3 x 12 at 2 RIR", kind="pair", gym=gym)
    assert one.text == (
        "flat barbell bench press with triceps pushdown keeps rack and stack at once; "
        "face pull needs one of them"
    )
    assert not found(PAIR.format("triceps pushdown"), kind="pair", gym=gym)
    assert not found(PAIR.format("push-up"), "back squat: 3 x 8 at 2 RIR", kind="pair", gym=gym)


def test_too_few_of_a_station_for_one_block() -> None:
    (one,) = found("level cable crossover: 3 x 12 at 1 RIR", kind="stations", gym=RACKS.format(1) + TOWER)
    assert one.text == "level cable crossover wants 2 cables, and the room has 1"
    (none,) = found("level cable crossover: 3 x 12 at 1 RIR", kind="stations")
    assert none.text == "level cable crossover wants 2 cables, and the room has none"
    assert not found(SQUAT.format("60 s"), kind="stations")


@pytest.mark.parametrize(
    ("effort", "said"), [("1 RIR", True), ("RPE 9.5", True), ("3 RIR", False), ("70%", False)]
)
def test_who_is_alone_under_a_bar_near_failure_wants_a_spotter(effort: str, said: bool) -> None:  # noqa: FBT001 - what is expected
    gym = RACKS.format(1) + BENCH + "  spotter: none\n"
    assert bool(found(PRESS.format(effort), kind="spotter", top="people: 1\n", gym=gym)) is said
    assert not found(PRESS.format(effort), kind="spotter", top="people: 2\n", gym=gym)
    assert not found(PRESS.format(effort), kind="spotter", top="people: 1\n", gym=gym.replace("none", "yes"))


def test_a_pair_at_a_bar_near_failure_is_seen_too() -> None:
    gym = RACKS.format(1) + BENCH + "  spotter: none\n"
    pair = PAIR.format("push-up").replace("2 RIR", "1 RIR")
    (one,) = found(pair, kind="spotter", top="people: 1\n", gym=gym)
    assert one.text.endswith("goes near failure, and in group A nobody is there to spot")


def test_a_group_that_finishes_late() -> None:
    """One rack, two groups, each 60 + 2 x 156 + 24 + 132 s: 528 s, so 17.6 min in all."""
    (one,) = found(SQUAT.format("2:00"), kind="late", minutes="15")
    assert one.text == "group B ends up to 3 min after the time; in no order of the blocks less than 3"
    (all_late,) = found(SQUAT.format("2:00"), kind="late", minutes="5")
    assert all_late.text.startswith("every group ends up to 13 min after")
    (alone,) = found(SQUAT.format("2:00"), kind="late", minutes="5", top="people: 2\n")
    assert alone.text.startswith("group A ends")
    assert not found(SQUAT.format("2:00"), kind="late", minutes="18")


def test_late_in_the_order_found_though_the_bound_says_it_might_fit() -> None:
    lines = ("back squat: 3 x 8 at 3 RIR, rest 2:00", "dip: 3 x 8 at 3 RIR, rest 2:00")
    gym = RACKS.format(1) + "  stations:\n    dip bars: 1\n"
    assert not found(*lines, kind="late", gym=gym, minutes="19")


def test_a_long_wait_is_said_with_what_to_do_meanwhile() -> None:
    (one,) = found(SQUAT.format("2:00"), kind="wait")
    assert one.text == "group B waits 9 min before back squat"
    assert not found(SQUAT.format("2:00"), kind="wait", gym=RACKS.format(2))
    (both,) = found(SQUAT.format("2:00"), kind="wait", top="people: 12\n")
    assert both.text == "groups B and C wait up to 18 min before back squat"


def iron(text: str) -> list[str]:
    alone = text.replace("people per rack: 4", "people per rack: 1")
    return [one.text for one in conflicts(floor_of(alone)) if one.kind == "iron"]


def test_one_pair_of_dumbbells_for_two_groups_at_the_same_time() -> None:
    """A and C press at two benches at the same moment, and 20 kg is written for both."""
    loads = "{A: 20 kg, B: 10 kg, C: 20 kg, D: 10 kg}"
    line = f"flat dumbbell bench press: 3 x 8 at 2 RIR, rest 2:00\n        load: {loads}"
    gym = "  benches: 4\n  dumbbells:\n    10-30 kg by 10: 1 pair\n"
    text = plan(line, top=squad(A="", B="", C="", D=""), gym=gym)
    assert iron(text) == [
        "minute 0, groups A and B: 4 of 20 kg dumbbells wanted, 2 there",
        "minute 0, groups C and D: 4 of 10 kg dumbbells wanted, 2 there",
    ]
    assert iron(text.replace("1 pair", "2 pairs")) == []


def test_where_nobody_waits_for_a_turn_everybody_has_their_own() -> None:
    line = "dumbbell floor press: 3 x 8 at 2 RIR, rest 2:00\n        load: {A: 20 kg, B: 20 kg, C: 20 kg}"
    gym = "  dumbbells:\n    20 kg: 1 pair\n"
    text = plan(line, top=squad(A="", B="", C=""), gym=gym)
    (one,) = [c for c in conflicts(floor_of(text)) if c.kind == "iron"]
    assert one.text == "minute 0, group A: 6 of 20 kg dumbbells wanted, 2 there"


def test_plates_of_the_room_are_exhausted_and_plates_of_each_rack_are_not() -> None:
    """60 kg is a 20 kg bar with 20 a side: one pair of 20 kg does for one rack of two."""
    gym = "  racks: 2\n  bars:\n    20 kg: 2\n  plates in the room:\n    20 kg: 1 pair\n"
    text = plan("back squat: 3 x 8 at 60 kg, rest 2:00", top=squad(A="", B=""), gym=gym)
    assert iron(text) == ["minute 0, groups A and B: 2 pairs of 20 kg plates wanted, 1 there"]
    assert iron(text.replace("1 pair", "2 pairs")) == []
    assert iron(text.replace("plates in the room", "plates per rack")) == []
    half = text.replace("  plates in the room:\n", "  plates in the room:\n    10 kg: 2 pairs\n")
    assert iron(half) == []
