"""A session cut on the day: whole pairs, priorities, the only pull, and what is not there."""

import re
from typing import Any

import pytest

from setwright.floor.cut import Cut, cut
from setwright.floor.today import Change, NotHere, Today, today
from tests.floor.rooms import RACKS, plan, room_of, squad
from tests.rules.plans import checked

PUSH = "push-up: 3 x 10 at 2 RIR, rest 2:00"  # 60 + 3 x 30 + 2 x 120 s: 6 min 30 s
PULL = "pull-up: 3 x 10 at 2 RIR, rest 2:00"
LEGS = "goblet squat: 3 x 10 at 3 RIR, rest 2:00"
TRUNK = "front plank: 3 x 30 s hold, rest 2:00"
FACE = "face pull: 3 x 10 at 2 RIR, rest 2:00"


def by_priority(line: str, priority: int) -> str:
    return f"{line}\n        priority: {priority}"


def cut_of(*lines: str, minutes: str) -> Cut:
    text = plan(*lines, top="people: 4\n", minutes=minutes)
    table = checked(text).table
    assert table is not None
    return cut(room_of(text), table)


def test_what_matters_least_goes_first_and_of_equals_the_later_one() -> None:
    lines = (by_priority(TRUNK, 3), PULL, LEGS, PUSH)
    assert cut_of(*lines, minutes="26").kept == (1, 2, 3, 4)
    assert cut_of(*lines, minutes="20").kept == (2, 3, 4)
    assert cut_of(*lines, minutes="13").kept == (2, 3)
    assert [block.name for block in cut_of(*lines, minutes="13").dropped] == ["front plank", "push-up"]


def test_what_comes_first_stays_and_so_does_one_block() -> None:
    assert cut_of(by_priority(PULL, 1), by_priority(PUSH, 1), LEGS, minutes="5").kept == (1, 2)
    assert cut_of(PULL, LEGS, minutes="1").kept == (1,)


def test_the_only_pull_goes_and_another_choice_keeps_it() -> None:
    found = cut_of(by_priority(PUSH, 1), LEGS, PULL, minutes="13")
    assert (found.kept, found.lost, found.better) == ((1, 2), ("pull",), (1, 3))
    assert found.exchange is None


def test_the_better_cut_drops_as_little_as_can_be_of_what_matters() -> None:
    lines = (by_priority(PUSH, 1), LEGS, by_priority(TRUNK, 3), by_priority(PULL, 3))
    assert cut_of(*lines, minutes="20").better == (1, 2, 4)
    found = cut_of(*lines, minutes="13")
    assert (found.kept, found.better) == ((1, 2), (1, 4))


def test_the_pull_is_kept_before_the_rear_shoulder() -> None:
    """Two of the blocks fit. The face pull is both; of a pull-up and a reverse fly the pull-up stays."""
    found = cut_of(by_priority(PUSH, 1), LEGS, by_priority(PULL, 3), by_priority(FACE, 3), minutes="13")
    assert found.lost == ("pull", "rear-shoulder line")
    assert found.better == (1, 4)
    fly = "bent-over reverse fly: 3 x 10 at 2 RIR, rest 2:00"
    apart = cut_of(by_priority(PUSH, 1), LEGS, by_priority(PULL, 3), by_priority(fly, 3), minutes="13")
    assert apart.better == (1, 3)


def test_where_nothing_fits_there_is_nothing_better() -> None:
    found = cut_of(by_priority(PUSH, 1), PULL, minutes="7")
    assert (found.lost, found.better, found.exchange) == (("pull",), (), None)


def pair(first: str, second: str, priority: int, under: str = "rest: 2:00") -> str:
    moves = "".join(f"          - {move}: 3 x 10\n" for move in (first, second))
    return f"superset:\n{moves}        {under}\n        priority: {priority}"


def test_the_pull_takes_the_place_of_the_last_line_of_what_stays() -> None:
    found = cut_of(pair("push-up", "goblet squat", 1), pair("dip", "pull-up", 2), minutes="10")
    assert found.exchange is not None
    assert (found.exchange.old.name, found.exchange.new.name) == ("goblet squat", "pull-up")
    assert found.exchange.block.number == 1


@pytest.mark.parametrize(
    ("first", "second"),
    [
        (pair("push-up", "goblet squat", 1), PULL),
        (by_priority(PUSH, 1), pair("dip", "pull-up", 2)),
        (
            pair("push-up", "goblet squat", 1),
            pair("dip", "pull-up", 2, "rounds: 3").replace(": 3 x 10", ": 10"),
        ),
    ],
)
def test_a_line_is_not_put_where_it_is_done_otherwise(first: str, second: str) -> None:
    found = cut_of(first, second, minutes="10")
    assert found.lost == ("pull",)
    assert found.exchange is None


WITH_SQUAD = plan(
    "back squat: 3 x 8 at 3 RIR, rest 2:00", "dip: 3 x 8 at 2 RIR, rest 2:00",
    top=squad(Ada="", Bo="", Cy="participation: out", Di=""),
    gym=RACKS.format(2) + "  cables:\n    - name: twin tower\n  stations:\n    dip bars: 1\n",
)  # fmt: skip


def asked(text: str = WITH_SQUAD, **change: Any) -> Today:
    one = checked(text)
    assert one.week is not None
    assert one.table is not None
    return today(one.week.sessions[0], one.week, one.table, Change(**change))


def test_who_is_absent_is_not_there_and_what_is_out_of_order_is_not_used() -> None:
    found = asked(absent=("ada",), without=("rack-2", "Twin tower"))
    assert [one.name for group in found.floor.groups for one in group] == ["Bo", "Di"]
    assert found.floor.there == {"rack": 1, "bar": 2, "dip bars": 1}
    assert found.cut is None
    none = asked(without=("rack", "rack-2", "rack"))
    assert none.floor.there["rack"] == 0
    assert none.conflicts[0].text == "back squat wants 1 rack, and the room has none"


def test_fewer_minutes_are_kept_and_more_than_enough_cut_nothing() -> None:
    found = asked(minutes=90)
    assert found.cut is not None
    assert found.cut.dropped == ()
    assert found.floor.session.minutes == 90
    short = asked(minutes=12)
    assert [block.name for block in short.floor.blocks] == ["back squat"]


@pytest.mark.parametrize(
    ("change", "said"),
    [
        ({"absent": ("Adda",)}, "nobody in the squad is called Adda; write `--absent Ada`"),
        ({"absent": ("Zzz",)}, "write `--absent Ada`, `--absent Bo` or `--absent Cy`"),
        ({"absent": ("Ada", "Bo", "Di")}, "nobody of the squad is there"),
        ({"without": ("reck-1",)}, 'the gym file has no reck; write `--without "rack"`'),
        ({"without": ("rack-3",)}, "the gym file has 2 x rack, no rack-3; write `--without rack`"),
        ({"without": ("sled",)}, 'write `--without "rack"`, `--without "bar"` or `--without "cable"`'),
    ],
)
def test_what_is_not_there_is_said_with_what_to_type(change: dict[str, Any], said: str) -> None:
    with pytest.raises(NotHere, match=re.escape(said)):
        asked(**change)


def test_a_plan_without_squad_people_or_gym_says_what_to_write() -> None:
    bare = plan(PUSH, top="people: 4\n")
    for change, said in (({"absent": ("Ada",)}, "names no squad"), ({"without": ("rack",)}, "names no gym")):
        with pytest.raises(NotHere, match=said):
            asked(bare, **change)
    empty = plan(PUSH, top="people: 4\n", gym="  spotter: yes\n")
    with pytest.raises(NotHere, match="the gym file has no rack; write nothing that it does not list"):
        asked(empty, without=("rack",))
    with pytest.raises(NotHere, match="write `people: 8`"):
        asked(plan(PUSH, top=""))
