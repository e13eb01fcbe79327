"""Who does something else in the place of a line: at their own stations, for as long as that takes.

By hand, with 3 s a repetition, 60 s to set up, 20 s until the next one lifts: 3 sets of 8 with 2:00 of rest
take four at a rack 60 + 2 x 156 + 24 + 3 x 44 = 528 s, three 60 + 2 x 144 + 24 + 2 x 44 = 460 s.
"""

import pytest

from setwright.floor.conflicts import conflicts
from setwright.floor.room import Floor, Stay
from setwright.floor.setup import set_up
from tests.floor.rooms import RACKS, floor_of, plan, squad
from tests.report.test_floor import printed

SQUAT = "back squat: 3 x 8 at 3 RIR, rest 2:00"
GYM = RACKS.format(1) + "  stations:\n    leg press: 1\n"
FOUR = squad(Ada="", Bo="", Cy="", Di="")


def instead(of: str, **people: str) -> str:
    """A line with what some do in its place; several lines are split by a stroke."""
    told = ""
    for name, done in people.items():
        several = "".join(f"\n            - {line}" for line in done.split("|"))
        told += f"\n          {name}:{several if ':' in done else f' {done}'}"
    return f"{of}\n        instead:{told}"


def only_stay(*lines: str) -> Stay:
    (stay,) = floor_of(plan(*lines, top=FOUR, gym=GYM)).stays
    return stay


@pytest.mark.parametrize(
    ("theirs", "seconds"),
    [("leg press: 4 x 10, rest 60 s", 460), ("leg press: 10 x 10, rest 60 s", 60 + 10 * 30 + 9 * 60)],
)
def test_a_block_lasts_until_everybody_is_through_each_with_their_own_dose(
    theirs: str, seconds: float
) -> None:
    stay = only_stay(instead(SQUAT, Bo=theirs))
    assert stay.end_s - stay.start_s == seconds
    assert (stay.people, stay.everyone) == (("Ada", "Cy", "Di"), ("Ada", "Cy", "Di", "Bo"))
    assert stay.rest_s == 120
    assert stay.holds == {"rack": 1, "bar": 1, "leg press": 1}


def test_several_lines_are_done_one_after_the_other_and_a_group_of_the_squad_does_alike() -> None:
    both = "leg press: 4 x 10, rest 60 s|push-up: 2 x 10, rest 60 s"
    lines = instead(SQUAT, Ada=both, Bo=both.replace("2 x 10", "2 x 12"), beginners="push-up")
    top = f"{FOUR}  groups:\n    beginners: [Cy, Di]\n"
    (stay,) = floor_of(plan(lines, top=top, gym=GYM)).stays
    assert [way.people for way in stay.otherwise] == [("Ada",), ("Bo",), ("Cy", "Di")]
    assert [[block.name for block in way.blocks] for way in stay.ways] == [
        ["leg press", "push-up"],
        ["leg press", "push-up"],
        ["push-up"],
    ]
    at_the_press = 60 + 3 * max(90, 2 * 50 - 20) + 30 + 50
    assert stay.end_s == at_the_press + 60 + 2 * 36 + 60
    assert (stay.people, stay.rest_s, stay.sharing) == ((), None, 0)


def test_who_needs_the_same_station_takes_turns_at_it() -> None:
    stay = only_stay(instead(SQUAT, Bo="front squat"))
    assert (stay.sharing, stay.rest_s) == (4, 3 * 44)
    assert stay.end_s == 528
    assert stay.holds == {"rack": 1, "bar": 1}


PAIR = """superset:
          - back squat: 3 x 8 at 3 RIR{}
          - push-up: 3 x 10
        rest: 2:00"""


def test_a_move_of_a_pair_is_left_out_or_done_otherwise() -> None:
    """Without the squat Ada needs no rack; for whom no move is left has nothing to do."""
    stay = only_stay(PAIR.format("\n            not for: [Ada]"))
    assert [(way.people, way.holds) for way in stay.otherwise] == [(("Ada",), {})]
    other = only_stay(PAIR.format("\n            instead:\n              Ada: leg press"))
    assert other.otherwise[0].holds == {"leg press": 1}
    nothing = PAIR.format("\n            for: [Bo]").replace("3 x 10", "3 x 10\n            for: [Bo]")
    assert only_stay(nothing).everyone == ("Bo",)


def test_everything_that_somebody_needs_is_put_out_and_missed() -> None:
    one = floor_of(plan(instead(SQUAT, Bo="leg press", Cy="dip"), top=FOUR, gym=GYM))
    assert set_up(one)[0].stations == {"rack": 1, "bar": 1, "leg press": 1}
    assert [c.text for c in conflicts(one) if c.kind == "stations"] == [
        "dip wants 1 dip bars, and the room has none"
    ]


def iron(one: Floor) -> list[str]:
    return [c.text for c in conflicts(one) if c.kind == "iron"]


def test_iron_of_who_does_something_else_counts_too() -> None:
    line = instead("dumbbell floor press: 3 x 8 at 2 RIR", Bo="dumbbell bench press: 3 x 8 at 20 kg")
    line += "\n        load: {Ada: 20 kg, Cy: 20 kg}"
    gym = GYM + "  benches: 1\n  dumbbells:\n    20 kg: {} pairs\n"
    assert iron(floor_of(plan(line, top=FOUR, gym=gym.format(2)))) == [
        "minute 0, group A: 6 of 20 kg dumbbells wanted, 4 there"
    ]
    assert iron(floor_of(plan(line, top=FOUR, gym=gym.format(3)))) == []


def test_the_clock_says_who_does_what() -> None:
    told = printed(plan(instead(SQUAT, Bo="leg press: 4 x 10|push-up: 2 x 12"), top=FOUR, gym=GYM))
    said = " ".join(" ".join(told).split())
    assert "1 back squat (Ada, Cy and Di only); rest 2:00; Bo: leg press then push-up" in said
    nobody = printed(plan(instead(SQUAT, Ada="push-up"), top=squad(Ada=""), gym=GYM))
    assert any(line.endswith("  1 Ada: push-up") for line in nobody)
