"""The floor on the coach's screen: 80 columns, every part where it applies."""

from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.floor.today import Change, Today, today
from setwright.report.floor import floor_text, how_good
from setwright.report.floor_chart import chart
from tests.floor.rooms import RACKS, plan, squad
from tests.rules.plans import checked

SQUAT = "back squat: 3 x 8 at 3 RIR, rest 2:00"
SIX = "people: 6\n"
GOES = (
    "left out: 3 pull-up; kept: 1 push-up and 2 goblet squat; "
    "with that the only pull goes; better: do 1 and 3 and leave out the others"
)


def of(text: str, **change: Any) -> Today:
    one = checked(text)
    assert one.week is not None
    assert one.table is not None
    return today(one.week.sessions[0], one.week, one.table, Change(**change))


def printed(text: str, **change: Any) -> list[str]:
    return floor_text(of(text, **change)).splitlines()


def test_the_head_says_people_minutes_and_how_good_it_is() -> None:
    assert printed(plan(SQUAT, top=SIX, gym=RACKS.format(2)))[:2] == [
        "Monday: 6 people in 2 groups, 8 of 60 minutes",
        "No order of the blocks ends earlier.",
    ]
    open_end = plan(SQUAT, top="people: 1\n").replace("    minutes: 60\n", "")
    assert printed(open_end)[0] == "Monday: 1 person in 1 group, 6 minutes"


def test_how_far_it_is_from_the_least_possible() -> None:
    found = of(plan(SQUAT, top=SIX, gym=RACKS.format(1))).floor
    assert found.proved
    assert how_good(found) == "No order of the blocks ends earlier."
    later = found._replace(least_s=found.finish_s - 120)
    assert how_good(later) == "Every order of the blocks was tried; none is better."
    assert how_good(later._replace(proved=False)) == (
        "Not every order was tried: at most 2 min could be saved."
    )


def test_the_chart_has_a_column_a_minute_and_says_what_the_clock_says() -> None:
    text = plan(SQUAT, "push-up: 3 x 10, rest 60 s", top=SIX, gym=RACKS.format(1)).replace(
        "    work:", "    warm-up: 5 min\n    work:"
    )
    lines = list(chart(of(text).floor))
    assert lines[0] == "Groups down, minutes across (a minute a column; w warm-up, . free)"
    assert lines[1] == "     0         10        20"
    assert [line[:5] for line in lines[2:]] == ["  A  ", "  B  "]
    assert lines[2][5:].startswith("wwwww1")


@settings(max_examples=20, deadline=None)
@given(sets=st.integers(1, 30), people=st.integers(1, 12), racks=st.integers(1, 3))
def test_everything_fits_80_columns(sets: int, people: int, racks: int) -> None:
    text = plan(
        f"back squat: {sets} x 8 at 3 RIR, rest 2:00",
        "push-up: 3 x 10, rest 60 s",
        top=f"people: {people}\n",
        gym=RACKS.format(racks),
    )
    assert max(map(len, printed(text))) <= 80


def test_idle_groups_are_told_what_to_do() -> None:
    warm = plan(f"{SQUAT}\n        warm-up: 8 at bar", top=SIX, gym=RACKS.format(1))
    assert any("wait for 1: warm-up sets for it at the side" in line for line in printed(warm))
    cold = plan(SQUAT, top=SIX, gym=RACKS.format(1))
    assert any("wait for 1: easy trunk work on the floor" in line for line in printed(cold))


def test_a_short_wait_is_a_wait_and_who_alone_does_a_line_is_named() -> None:
    top = squad(Ada="", Bo="", Cy="", Di="")
    lines = ("back squat: 1 x 8 at 3 RIR\n        for: [Ada]", "back squat: 1 x 8 at 3 RIR")
    told = printed(
        plan(*lines, top=top, gym=RACKS.format(1).replace("racks", "racks")).replace(
            "per rack: 4", "per rack: 2"
        )
    )
    assert any("1 back squat (Ada only)" in line for line in told)
    assert any(line.endswith("  wait") for line in told)


def test_what_is_put_out_in_the_order_it_is_needed() -> None:
    top = squad(Ada="", Bo="")
    lines = (
        "back squat: 3 x 5 at 80 kg, rest 2:00",
        "flat dumbbell bench press: 3 x 8 at 20 kg, rest 2:00\n        load: {Bo: 24 kg}",
        "band pull-apart: 3 x 15 with red band",
        "push-up: 3 x 10",
    )
    gym = (
        RACKS.format(1)
        + "  benches: 2\n  dumbbells:\n    10-30 kg by 2: 1 pair\n"
        + "  bands:\n    red:\n      pull: 60 N at 2 m\n"
    )
    told = printed(plan(*lines, top=top, gym=gym))
    start = told.index("Put out, in this order")
    assert sorted(told[start + 1 : start + 6]) == [
        "     kg, 20 kg",
        "  1  back squat: 1 rack, 1 bar; on each side, at most, 1 x 20 kg, 1 x 10 kg",
        "  2  flat dumbbell bench press: 1 bench, 2 dumbbells of 20 kg; dumbbells of 24",
        "  3  band pull-apart: bands: red",
        "  4  push-up: nothing that is counted",
    ]


@pytest.mark.parametrize(
    ("minutes", "said"),
    [
        (60, "nothing has to be left out"),
        (
            14,
            GOES,
        ),
    ],
)
def test_the_difference_list_of_a_cut(minutes: float, said: str) -> None:
    lines = (
        "push-up: 3 x 10, rest 2:00\n        priority: 1",
        "goblet squat: 3 x 10, rest 2:00",
        "pull-up: 3 x 10, rest 2:00",
    )
    told = printed(plan(*lines, top=squad(Ada="", Bo="")), minutes=minutes, absent=("Bo",))
    start = told.index("Today, against the plan")
    end = told.index("Groups") - 1
    items = " ".join(" ".join(told[start + 1 : end]).split()).removeprefix("- ").split(" - ")
    assert items[:2] == [f"{minutes} minutes", "absent: Bo"]
    assert "; ".join(items[2:]) == said


def test_kit_out_of_order_is_a_difference_though_nothing_is_cut() -> None:
    told = printed(plan(SQUAT, top=SIX, gym=RACKS.format(2)), without=("rack-2",))
    assert told[3:5] == ["Today, against the plan", "  - without rack-2"]
    assert told[5] == ""


def test_a_cut_that_takes_nothing_the_last_of_its_kind_says_no_more() -> None:
    told = printed(plan("pull-up: 3 x 10, rest 2:00", "push-up: 3 x 10, rest 2:00", top=SIX), minutes=7)
    assert told[3:8] == [
        "Today, against the plan", "  - 7 minutes", "  - left out: 2 push-up", "  - kept: 1 pull-up", "",
    ]  # fmt: skip


def test_where_no_choice_keeps_the_pull_that_is_said_too() -> None:
    lines = ("push-up: 3 x 10, rest 2:00\n        priority: 1", "pull-up: 3 x 10, rest 2:00")
    told = " ".join(" ".join(printed(plan(*lines, top=SIX), minutes=7)).split())
    assert "with that the only pull goes; no other choice of whole blocks fits" in told
