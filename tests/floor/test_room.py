"""A session in its room: who comes, in which groups, on which stations, with which loads."""

import pytest

from setwright.floor.groups import Person, groups_of
from setwright.floor.room import NobodyKnown
from tests.floor.rooms import RACKS, floor_of, plan, squad

SQUAT = "back squat: 3 x 8 at 3 RIR, rest 2:00"
ROW = "bench pull: 3 x 10 at 2 RIR, rest 90 s"


def test_groups_are_alike_in_load_then_in_height_and_even_in_number() -> None:
    people = [
        Person("Ada", 60, 170),
        Person("Bo", 100, 190),
        Person("Cy", 60, 180),
        Person("Di"),
        Person("Ed", 90),
    ]
    named = [[one.name for one in group] for group in groups_of(people, 2)]
    assert named == [["Bo", "Ed"], ["Cy", "Ada"], ["Di"]]
    assert groups_of([], 4) == ()


def test_twenty_athletes_on_six_racks() -> None:
    """Twenty by four are five groups; six racks take them all at once, so nobody waits for a rack.

    Four at a rack, sets of 24 s and 20 s until the next one: each rests 3 x 44 s, and 120 s is written.
    """
    text = plan(SQUAT, top="people: 20\n", gym=RACKS.format(6))
    one = floor_of(text)
    assert [len(group) for group in one.groups] == [4] * 5
    assert one.finish_s == one.least_s == 60 + 2 * (24 + 3 * 44) + 24 + 3 * 44
    assert {stay.rest_s for stay in one.stays} == {3 * 44}
    assert one.proved


def test_fewer_racks_take_longer_and_a_rack_out_of_order_is_not_used() -> None:
    text = plan(SQUAT, top="people: 20\n", gym=RACKS.format(6))
    two = floor_of(text, without={"rack": 4, "bar": 4})
    assert two.there == {"rack": 2, "bar": 2}
    assert two.finish_s >= 5 / 2 * floor_of(text).finish_s
    busiest = max(sum(s.start_s <= at.start_s < s.end_s for s in two.stays) for at in two.stays)
    assert busiest == 2


def test_the_squad_comes_but_for_those_who_are_out_or_absent() -> None:
    top = squad(Ada="height: 170 cm", Bo="participation: out", Cy="", Di="")
    one = floor_of(plan(SQUAT, top=top, gym=RACKS.format(2)), absent=("Cy",))
    assert [person.name for group in one.groups for person in group] == ["Ada", "Di"]


def test_a_line_for_some_takes_no_time_of_the_others() -> None:
    top = squad(Ada="", Bo="", Cy="", Di="")
    one = floor_of(plan(f"{SQUAT}\n        for: [Ada]", ROW, top=top, gym=RACKS.format(1)))
    stays = [stay for stay in one.stays if stay.block.number == 1]
    assert [stay.people for stay in stays] == [("Ada",)]


@pytest.mark.parametrize("top", ["", squad(Ada="participation: out")])
def test_a_plan_that_says_nobody_has_no_floor(top: str) -> None:
    with pytest.raises(NobodyKnown):
        floor_of(plan(SQUAT, top=top))


def test_without_a_gym_everybody_works_at_once() -> None:
    one = floor_of(plan(SQUAT, top="people: 9\n"))
    assert one.there == {}
    assert one.spotter
    assert {stay.start_s for stay in one.stays} == {0}


def test_the_minutes_are_those_after_the_common_warm_up() -> None:
    text = plan(SQUAT).replace("    work:", "    warm-up: 8 min\n    work:")
    assert floor_of(text).available_s == 52 * 60
    assert floor_of(plan(SQUAT).replace("    minutes: 60\n", "")).available_s is None


CIRCUIT = (
    "circuit:\n          - push-up\n          - front plank\n          - bench pull\n"
    "          - goblet squat\n          - dip\n          - pull-up\n        rounds: 3\n        each: 40 s"
)


def test_as_many_go_round_a_circuit_as_it_has_moves() -> None:
    assert [len(group) for group in floor_of(plan(CIRCUIT, top="people: 11\n")).groups] == [6, 5]


def test_where_somebody_waits_for_a_rack_groups_are_as_large_as_a_rack_takes() -> None:
    one = floor_of(plan(CIRCUIT, SQUAT, top="people: 11\n", gym=RACKS.format(3)))
    assert max(len(group) for group in one.groups) == 4


def test_loads_of_each_lifter_make_the_groups_and_are_put_on() -> None:
    """By hand: 80 % of 100 kg is 80 kg, a 20 kg bar with 20 + 10 a side; of 75 kg it is 60 kg, 20 a side."""
    maxes = "maxes:\n        back squat: {} kg tested 2027-02-01"
    top = "starts: 2027-03-01\n" + squad(
        Ada=maxes.format(75), Bo=maxes.format(100), Cy="", Di=maxes.format(100)
    ).replace("        back", "          back")
    line = "back squat: 3 x 5 at 80% of tested max, rest 2:00"
    one = floor_of(plan(line, top=top, gym=RACKS.format(1)))
    assert [person.load_kg for person in one.groups[0]] == [80, 80, 60, None]
    assert [(lift.person, lift.put and lift.put.words) for lift in one.lifts] == [
        ("Ada", "20 kg bar, 20 a side"),
        ("Bo", "20 kg bar, 20 + 10 a side"),
        ("Di", "20 kg bar, 20 + 10 a side"),
    ]
    nowhere = floor_of(plan(line, top=top))
    assert [lift.put for lift in nowhere.lifts] == [None, None, None]


def test_of_several_loads_the_heaviest_counts_and_a_band_has_none() -> None:
    top = squad(Ada="")
    moves = "          - Romanian deadlift: 6\n          - bent-over barbell row: 6\n"
    lines = (
        "back squat: 3 x 5 at 60, 65, 70 kg",
        "face pull: 3 x 12 with red band",
        "dip: 3 x 6 at bodyweight + 5 kg",
        f"complex:\n{moves}        rounds: 3\n        load: 40 kg",
    )
    one = floor_of(plan(*lines, top=top, gym=RACKS.format(1)))
    assert [(lift.block, lift.kg) for lift in one.lifts] == [(1, 70), (3, 5), (4, 40), (4, 40)]
    assert one.lifts[1].put is None
