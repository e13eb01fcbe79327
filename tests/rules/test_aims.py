"""What the week is for: which row holds, and at which level rules then speak."""

import pytest

from setwright.findings import Level
from setwright.rules.aims import AimInForce
from tests.rules.plans import checked, of, rules_in, week

PRESSES = "flat barbell bench press: 4 x 8 at 2 RIR\nincline 30 barbell bench press: 3 x 8 at 2 RIR"
ROW = "bench pull: 5 x 8 at 2 RIR"
LIMITED = """\
  athletes:
    - name: Isla
      limits:
        - arm behind at most: 0 deg
          until: cleared
"""


def aim(text: str) -> AimInForce:
    found = checked(text).aim
    assert found is not None
    return found


@pytest.mark.parametrize(
    ("top", "row"),
    [
        ("", "general"),
        ("aim: general\n", "general"),
        ("aim: size\n", "size"),
        ("aim: size\nlevel: beginner\n", "size"),
        ("focus: [chest]\n", "chest focus"),
        ("aim: strength\nfocus: [chest]\n", "chest focus"),
        ("aim: strength\n", "strength"),
        ("level: beginner\n", "beginner"),
        ("aim: strength\nlevel: beginner\n", "beginner"),
        ("aim: sport\nsport: rowing\n", "sport"),
        ("aim: return\n", "return"),
    ],
)
def test_the_row_follows_from_what_is_written(top: str, row: str) -> None:
    assert aim(week(f"Monday\n{PRESSES}\n{ROW}", top=top)).row == row


def test_the_row_says_where_it_came_from() -> None:
    assert aim(week(f"Monday\n{PRESSES}", top="aim: size\n")).came_from == "written in line 5"
    assert aim(week(f"Monday\n{PRESSES}")).came_from == "no aim written"


def test_a_week_without_chest_has_no_matrix_and_no_chest_rule() -> None:
    one = checked(week("Monday\nback squat: 4 x 8 at 2 RIR\ndip: 3 x 8 at 2 RIR", top="aim: size\n"))
    assert one.aim is not None
    assert one.aim.row == "no chest"
    assert one.matrix == ()


def test_a_span_that_may_reach_four_sets_is_a_week_with_chest() -> None:
    assert aim(week("Monday\npush-up: 5 x 30 s")).row == "general"


def test_a_limit_of_everyone_who_trains_holds_the_chest_back() -> None:
    one = checked(week(f"Monday\n{PRESSES}", top=f"squad:\n  squad: Crew\n{LIMITED}"))
    assert one.aim is not None
    assert one.aim.row == "return"
    assert {cell.text for row in one.matrix for cell in row.cells if cell.tone == "held back"} == {
        "held back"
    }
    assert rules_in(one) == ["limit-broken"]


def test_a_limit_on_one_side_holds_that_side_back() -> None:
    side = LIMITED.replace("          until", "          side: left\n          until")
    assert (
        aim(week(f"Monday\n{PRESSES}", top=f"squad:\n  squad: Crew\n{side}")).held_back == "held back: left"
    )


def test_a_limit_of_one_among_several_does_not() -> None:
    others = f"{LIMITED}    - name: Tam\n"
    assert aim(week(f"Monday\n{PRESSES}", top=f"squad:\n  squad: Crew\n{others}")).row == "general"


def test_someone_who_is_out_does_not_count() -> None:
    others = f"{LIMITED}    - name: Tam\n      participation: out\n"
    assert aim(week(f"Monday\n{PRESSES}", top=f"squad:\n  squad: Crew\n{others}")).row == "return"


def test_under_six_chest_sets_a_general_week_is_not_asked_about_the_chest() -> None:
    few = week("Monday\nflat barbell bench press: 5 x 8 at 2 RIR\n" + ROW)
    more = few.replace("5 x 8 at 2 RIR", "6 x 8 at 2 RIR", 1)
    assert rules_in(checked(few)) == []
    assert of(checked(more), "line-never-followed")


def test_size_asks_beginners_for_less() -> None:
    text = week(
        "Monday\nflat barbell bench press: 5 x 8 at 2 RIR",
        "Thursday\nbench pull: 5 x 8 at 2 RIR",
        top="aim: size\n",
    )
    trained = [f.level for f in checked(text).findings if f.rule == "sets-under-range"]
    assert trained == [Level.gap]
    assert not of(checked(text.replace("aim: size", "aim: size\nlevel: beginner")), "sets-under-range")
