"""What the gym file does not list is told one by one, or together when it is much."""

import pytest

from setwright.checked import Checked
from setwright.findings import Finding
from tests.rules.plans import checked, week

BARE = "gym:\n  dumbbells:\n    20 kg: 1 pair\n"
FOUR = (
    "flat barbell bench press: 2 x 8 at 2 RIR",
    "barbell back squat: 2 x 8 at 2 RIR",
    "wide-grip pulldown: 2 x 8 at 2 RIR",
    "leg press: 2 x 8 at 2 RIR",
)
ALLOWED = "\n        allow:\n          nobody-can-use: we borrow one"


def lacking(one: Checked) -> list[Finding]:
    return [finding for finding in one.findings if finding.rule == "nobody-can-use"]


def test_three_movements_are_told_one_by_one() -> None:
    told = lacking(checked(week("\n".join(("Monday", *FOUR[:3])), top=BARE)))
    assert [finding.message for finding in told] == [
        "flat barbell bench press needs rack, and the gym file lists none",
        "barbell back squat needs rack, and the gym file lists none",
        "wide-grip pulldown needs pulldown station, and the gym file lists none",
    ]


def test_more_are_told_together_with_the_way_out() -> None:
    (told,) = lacking(checked(week("\n".join(("Monday", *FOUR)), top=BARE)))
    assert told.message.startswith("4 movements need what the gym file does not list: rack, ")
    assert [seen.text for seen in told.seen][:2] == [
        "flat barbell bench press needs rack",
        "barbell back squat needs rack",
    ]
    assert "take `gym:` out until the whole room is written down" in told.change


def test_a_line_that_is_allowed_stays_out_of_the_rest() -> None:
    one = checked(week("\n".join(("Monday", *FOUR[:3], FOUR[3] + ALLOWED)), top=BARE))
    assert len(lacking(one)) == 3
    assert [silenced.reason for silenced in one.allowed] == ["we borrow one"]


def test_an_allow_of_the_day_serves_what_stands_in_that_day_alone() -> None:
    text = week("\n".join(("Monday", *FOUR)), top=BARE)
    day = "    allow:\n      nobody-can-use: borrowed\n    work:"
    assert lacking(checked(text.replace("    work:", day))) == []
    two = week("\n".join(("Monday", *FOUR[:2])), "\n".join(("Tuesday", *FOUR[2:])), top=BARE)
    assert len(lacking(checked(two))) == 1


@pytest.mark.parametrize(
    ("name", "number", "enough"),
    [("tower", 1, False), ("tower", 2, True), ("Twin tower", 1, True), ("cable crossover", 1, True)],
)
def test_a_crossover_needs_two_stacks(name: str, number: int, *, enough: bool) -> None:
    gym = f"gym:\n  cables:\n    - name: {name}\n      number: {number}\n"
    told = lacking(checked(week("Monday\nlevel cable crossover: 2 x 12 at 1 RIR", top=gym)))
    assert (told == []) is enough


def test_what_the_session_holds_already_or_does_not_cross_is_no_answer() -> None:
    gym = "gym:\n  racks: 1\n  benches: 1\n  bars:\n    20 kg: 1\n"
    lines = "flat barbell bench press: 2 x 8 at 2 RIR\nlevel cable crossover: 2 x 12 at 1 RIR"
    (told,) = lacking(checked(week(f"Monday\n{lines}", top=gym)))
    assert told.change == "add `- name: twin cable` under `cables:` in the gym file"
    (dips,) = lacking(checked(week("Monday\ndip: 2 x 8 at 2 RIR\nbench dip: 2 x 8 at 2 RIR", top=gym)))
    assert "bench dip" not in dips.change
