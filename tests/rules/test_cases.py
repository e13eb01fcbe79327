"""Plans as coaches bring them, in our own words: what must be said of them, and what must not."""

from setwright.findings import Level
from tests.rules.plans import checked, of, rules_in, week

PUSH_DAY = """
flat barbell bench press: 4 x 6-8, rest 1:30
incline 30 dumbbell bench press: 4 x 8-10, rest 90 s
machine chest press: 3 x 10-12
{}: 3 x 12-15, last set to failure
standing barbell overhead press: 3 x 8
dumbbell lateral raise: 4 x 15, last set to failure
lying triceps extension: 3 x 10"""
PULL_DAY = "\nwide-grip pulldown: 4 x 8-10\nclose-grip seated cable row: 4 x 10\ndumbbell curl: 4 x 10"
LEG_DAY = "\nleg press: 4 x 10\nleg curl: 4 x 12"
SIX_DAYS = week(
    f"Monday{PUSH_DAY.format('pec deck')}",
    f"Tuesday{PULL_DAY}",
    f"Wednesday{LEG_DAY}",
    f"Thursday{PUSH_DAY.format('machine fly')}",
    f"Friday{PULL_DAY}",
    f"Saturday{LEG_DAY}",
    top="aim: size\n",
)

SCHOOL = week(
    "Monday\nflat barbell bench press: 5 x 5 at 80%\nbarbell back squat: 5 x 5 at 80%\n"
    "one-arm dumbbell row: 3 x 10 each arm\n"
    "barbell curl: 3 x 12\ndip: 3 x max",
    "Wednesday\nincline 30 barbell bench press: 3 x 8\npower clean: 5 x 3 at 70%\n"
    "standing barbell overhead press: 3 x 8\n"
    "forward lunge: 3 x 10 each leg",
    "Friday\nflat barbell bench press: 5 x 5 at 80%\nbarbell front squat: 3 x 5\npull-up: 3 x max\n"
    "push-up: 2 x 20",
)


def test_push_pull_legs_twice_has_more_chest_than_any_range() -> None:
    one = checked(SIX_DAYS)
    over = [f for f in one.findings if f.rule == "sets-over-range"]
    assert [f.level for f in over] == [Level.gap]
    assert "chest 28 (over 25)" in over[0].message
    assert any(
        "pec deck 3 (line" in s.text and "machine chest press 6 (2 lines)" in s.text for s in over[0].seen
    )


def test_two_names_of_one_machine_are_one_movement() -> None:
    sternal = checked(SIX_DAYS).matrix[1]
    assert sternal.follows.text == "4 moves"


def test_the_costal_line_is_reached_only_through_flat_work() -> None:
    one = checked(SIX_DAYS)
    assert of(one, "line-never-followed") == ["no movement of the week follows the costal line"]
    assert one.matrix[2].sets.text != "0"


def test_the_machine_fly_loads_short_and_stops_at_the_midline() -> None:
    one = checked(SIX_DAYS)
    assert one.matrix[1].short.text == "yes"
    assert one.matrix[1].across.text == "NEVER"
    assert not of(one, "no-work-at-long-length")


def test_three_school_days_push_over_twice_what_they_pull() -> None:
    found = [f for f in checked(SCHOOL).findings if f.rule == "push-without-pull"]
    assert [(f.level, f.message) for f in found] == [
        (Level.advice, "21 hard pushes and only 6 hard pulls in the week")
    ]


def test_flat_incline_and_dip_leave_no_line_out() -> None:
    one = checked(SCHOOL)
    assert "line-never-followed" not in rules_in(one)
    assert "part-not-loaded" not in rules_in(one)
    assert all(f.level < Level.gap for f in one.findings)


def test_curls_as_the_only_direct_work_of_a_muscle_are_fine() -> None:
    assert all("elbow" not in message for message in of(checked(SCHOOL), "sets-under-range"))
