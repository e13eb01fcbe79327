"""Lighter weeks and sessions that are taken in turn."""

import pytest

from setwright.model.plan import Group, Item
from setwright.model.theirs import lines_done
from setwright.reading.dose import Span
from tests.model.blocks import HEAD, block, entries, messages, weeks_of

AB = """\
  - name: A
    work:
      - push-up: 3 x 8
  - name: B
    work:
      - bench pull: 3 x 8
"""
THREE_DAYS = "training days: [Friday, Mon, Wednesday]\nrotate: [A, B]\n"


def plan(weeks: int, top: str, sessions: str = AB) -> str:
    return f"{HEAD}weeks: {weeks}\n{top}sessions:\n{sessions}"


def turns(text: str) -> list[str]:
    return [" ".join(session.name or "-" for session in week.sessions) for week in weeks_of(text)]


def test_two_sessions_on_three_days_go_a_b_a_and_b_a_b() -> None:
    assert turns(plan(4, THREE_DAYS)) == ["A B A", "B A B", "A B A", "B A B"]
    days = [session.day for session in weeks_of(plan(2, THREE_DAYS))[1].sessions]
    assert days == ["Monday", "Wednesday", "Friday"]


def test_a_week_without_training_takes_no_turn() -> None:
    text = plan(3, THREE_DAYS + "lighter weeks:\n  week 2: no training\n")
    assert turns(text) == ["A B A", "", "B A B"]


def test_sessions_that_are_not_named_stay_where_they_are() -> None:
    fixed = "  - day: Sunday\n    name: C\n    work:\n      - dip: 3 x 8\n"
    assert turns(plan(1, THREE_DAYS, AB + fixed)) == ["C A B A"]


@pytest.mark.parametrize(
    ("top", "sessions", "line", "change"),
    [
        ("rotate: [A, B]\n", AB, 5, "write `training days: [Monday, Wednesday, Friday]`"),
        ("training days: [Monday]\n", AB, 5, "write `rotate: [A, B]` with the names"),
        ("training days: [Monday]\nrotate: [A, Bee]\n", AB, 6, "write `- name: Bee` under `sessions:`"),
        (
            "training days: [Monday]\nrotate: [Pull, Push]\n",
            AB.replace("name: A", "name: Push").replace("name: B", "name: Pul"),
            6,
            "write `Pul`",
        ),
        (
            "training days: [Monday]\nrotate: [A, B]\n",
            AB.replace("name: B", "name: B\n    day: Friday"),
            6,
            "take its `day` and `date` out, or take it out of `rotate`",
        ),
        ("training days: [Monday]\nrotate: [A]\n", AB.replace("name: B", "name: A"), 6, "give each a name"),
        ("training days: [Wensday]\nrotate: [A, B]\n", AB, 5, "write `Wednesday`"),
    ],
)  # fmt: skip
def test_turns_that_cannot_be_dealt_are_told(top: str, sessions: str, line: int, change: str) -> None:
    ((_, at, told),) = messages(plan(2, top, sessions))
    assert at == line
    assert change in told


def test_a_session_in_turn_that_is_only_in_some_weeks_is_told() -> None:
    text = plan(3, THREE_DAYS, AB.replace("name: B", "name: B\n    only in: week 1"))
    assert [rule for rule, _, _ in messages(text)] == ["turns-unclear"]


LIGHT = "lighter weeks:\n  week 2: "


def second(work: str, how: str) -> Item | Group:
    return entries(block(2, work, f"{LIGHT}{how}\n"))[1][0]


@pytest.mark.parametrize(
    ("line", "low", "high"),
    [("3 x 8", 2, 2), ("4 x 8", 2, 2), ("3-5 x 8", 2, 3), ("1 x 8", 1, 1), ("50 total", 1, None)],
)
def test_half_the_sets_is_rounded_up(line: str, low: float, high: float | None) -> None:
    item = second(f"- push-up: {line}", "half the sets")
    assert isinstance(item, Item)
    assert item.dose is not None
    assert item.dose.groups[0].sets == Span(low=low, high=high)


def test_a_list_of_sets_keeps_its_first_half() -> None:
    item = second("- bench pull: sets of 10, 8, 6 at 50, 55, 60 kg", "half the sets")
    assert isinstance(item, Item)
    assert item.dose is not None
    assert [work.load.low for work in item.dose.groups[0].works if work.load] == [50, 55]


def test_half_the_rounds_of_a_group() -> None:
    group = second("- circuit:\n    - push-up: 10\n    - dip: 8\n  rounds: 5", "half the sets")
    assert isinstance(group, Group)
    assert group.rounds == 3
    assert [item.dose.groups[0].sets.low for item in group.items if item.dose] == [1, 1]
    pair = second("- superset:\n    - push-up: 3 x 10\n    - dip: 4 x 8", "80% of the load and half the sets")
    assert isinstance(pair, Group)
    assert pair.rounds is None
    assert [item.dose.groups[0].sets.low for item in pair.items if item.dose] == [2, 2]


@pytest.mark.parametrize(
    ("line", "low"),
    [
        ("3 x 8 at 62.5 kg", 50),
        ("3 x 8 at 75%", 60),
        ("3 x 8 rising to 80 kg", 64),
        ("3 x 8 at bodyweight + 10 kg", None),
    ],
)
def test_a_share_of_the_load(line: str, low: float | None) -> None:
    item = second(f"- bench pull: {line}", "80% of the load")
    assert isinstance(item, Item)
    assert item.dose is not None
    assert item.dose.groups[0].sets.low == 3
    load = item.dose.groups[0].works[0].load
    assert load is not None
    assert load.low == low


def test_a_share_of_loads_underneath_in_drops_and_in_a_complex() -> None:
    item = second("- bench pull: 3 x 8, last set drop to 30 kg for 8\n  load: 50 kg", "80 % of the load")
    assert isinstance(item, Item)
    assert item.load is not None
    assert item.dose is not None
    last = item.dose.groups[0].last
    assert last is not None
    assert last.drops[0].to is not None
    assert (item.load.low, last.drops[0].to.low) == (40, 24)
    bar = second(
        "- complex:\n    - power clean: 3\n  rounds: 4\n  load: 40 kg", "half the sets and 50% of the load"
    )
    assert isinstance(bar, Group)
    assert bar.load is not None
    assert (bar.rounds, bar.load.low) == (2, 20)


def test_the_week_itself_says_that_it_is_lighter() -> None:
    first, second_ = weeks_of(block(2, "- push-up: 3 x 8", f"{LIGHT}half the sets\n"))
    assert first.lighter is None
    assert second_.lighter is not None
    assert second_.lighter.half_the_sets


def test_every_so_many_weeks_is_lighter_where_no_week_is_named() -> None:
    often = "lighter weeks:\n  every 2 weeks: half the sets\n  week 4: 80% of the load\n"
    weeks = weeks_of(block(6, "- push-up: 3 x 8", often))
    assert [week.lighter and week.lighter.text for week in weeks] == [
        None, "half the sets", None, "80 % of the load", None, "half the sets",
    ]  # fmt: skip
    assert {often: how.text for often, how in weeks[0].lighter_every.items()} == {2: "half the sets"}


def test_in_a_plan_of_one_week_every_so_many_weeks_waits() -> None:
    (week,) = weeks_of(block(1, "- push-up: 3 x 8", "lighter weeks:\n  every 4 weeks: half the sets\n"))
    assert (week.lighter, list(week.lighter_every)) == (None, [4])


def test_every_so_many_weeks_may_be_unclear_too() -> None:
    ((rule, line, _),) = messages(block(3, "- push-up: 3 x 8", "lighter weeks:\n  every 2 weeks: half\n"))
    assert rule == "lighter-week-unclear"
    assert line == 6


@pytest.mark.parametrize(
    ("how", "rule"),
    [
        ("half", "lighter-week-unclear"),
        ("half the load", "lighter-week-unclear"),
        ("80%", "lighter-week-unclear"),
        ("no training and half the sets", "lighter-week-unclear"),
        ("half the sets, slowly", "lighter-week-unclear"),
        ("", "lighter-week-unclear"),
        ("[half the sets]", "value-in-wrong-form"),
        ("half the sets\n  week 3: no training", "no-such-week"),
        ("half the sets\n  weeks 1-2: no training", "week-named-twice"),
    ],
)
def test_a_lighter_week_that_does_not_say_what_is_less_is_asked(how: str, rule: str) -> None:
    ((found, _, change),) = messages(block(2, "- push-up: 3 x 8", f"{LIGHT}{how}\n"))
    assert found == rule
    if rule == "lighter-week-unclear":
        assert change == (
            "write `week 2: half the sets`, `80% of the load`, both with `and`, or `no training`"
        )


def test_lighter_weeks_that_are_no_keys() -> None:
    assert [rule for rule, _, _ in messages(block(2, "- push-up: 3 x 8", "lighter weeks: week 2\n"))] == [
        "value-in-wrong-form"
    ]


def test_somebodys_own_loads_and_lines_get_lighter_too() -> None:
    squad = "squad:\n  athletes:\n    - name: Ann\n    - name: Bo\n    - name: Cy\n"
    line = (
        "      - goblet squat: 3 x 8 at 20 kg\n        load:\n"
        "          Ann: 8, 10, 12 kg\n          Bo: 30 kg\n"
        "        instead:\n          Cy:\n            - leg press: 4 x 10 at 100 kg\n"
    )
    top = f"{squad}lighter weeks:\n  week 2: half the sets and 80% of the load\n"
    week = weeks_of(plan(2, top, f"  - name: A\n    work:\n{line}"))[1]
    done: dict[str, tuple[list[float | None], Span]] = {}
    for one in lines_done(week.sessions[0], week):
        assert one.item.dose is not None
        loads = [load.low for load in one.item.line_loads]
        done |= {athlete.name: (loads, one.item.dose.groups[0].sets) for athlete in one.athletes}
    two = Span(low=2, high=2)
    assert done == {"Ann": ([6.4, 8], two), "Bo": ([24], two), "Cy": ([80], two)}
