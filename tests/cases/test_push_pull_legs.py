"""Six days of which three repeat the first three, one machine under two names, last sets to failure."""

from setwright.checked import Checked
from setwright.findings import Level
from setwright.report.read import read_text
from setwright.report.terminal import text as screen
from tests.cases.told import told, told_by_week
from tests.reading.plans import read, rules
from tests.rules.plans import checked, of

HALF = """\
plan: Six days
unit: kg
dose order: sets x reps
aim: size
sessions:
  - day: Monday
    name: Push
    work:
      - bench press: 4 x 6-8, rest 1:30
      - incline dumbbell press: 4 x 8-10, rest 90
      - machine chest press: 3 x 10-12
      - pec deck: 3 x 12-15, last set to failure
      - machine fly: 3 x 12-15, last set to failure
      - overhead press: 3 x 8
      - lateral raise: 4 x 15, last set to failure
      - skull crusher: 3 x 10
  - day: Tuesday
    name: Pull
    work:
      - pulldown: 4 x 8-10
      - cable row: 4 x 10
      - dumbbell curl: 4 x 10 in all, last set to failure
  - day: Wednesday
    name: Legs
    work:
      - leg press: 4 x 10
      - leg curl: 4 x 12
"""
LIKE = """\
  - day: Thursday
    like: Push
{}  - day: Friday
    like: Pull
  - day: Saturday
    like: Legs
"""
WEEK = HALF + LIKE.format("")


def sets(one: Checked) -> dict[str, str]:
    assert one.coverage is not None
    return {group: str(sets) for group, sets in one.coverage.muscles.items()}


def test_a_repeated_day_is_a_copy_and_read_says_so() -> None:
    said = " ".join(read_text(read(WEEK)).split())
    for day, name in (("Thursday", "Push"), ("Friday", "Pull"), ("Saturday", "Legs")):
        assert f"{day} like {name}, a copy of its own: nothing changed" in said
    changed = checked(HALF + LIKE.format("    change:\n      - bench press: 1 x 6-8\n"))
    assert changed.coverage is not None
    assert [str(one.chest) for one in changed.coverage.sessions if one.chest.high] == ["17", "14"]


def test_two_names_of_one_machine_are_one_movement_and_two_lines_of_sets() -> None:
    said = " ".join(read_text(read(WEEK)).split())
    assert '4. machine fly: 3 sets of 12 to 15; last set: to failure; typed "pec deck"' in said
    assert 'lying triceps extension: 3 sets of 10; typed "skull crusher"' in said
    one = checked(WEEK)
    assert one.coverage is not None
    assert one.matrix[1].follows.text == "4 moves"
    fly = [
        work for one in one.coverage.sessions for work in one.works if work.movement["key"] == "machine-fly"
    ]
    assert [str(work.hard) for work in fly] == ["3", "3", "3", "3"]


def test_one_of_the_two_names_can_be_left_out() -> None:
    one = checked(HALF + LIKE.format("    leave out: [pec deck]\n"))
    assert one.coverage is not None
    assert [str(session.chest) for session in one.coverage.sessions if session.chest.high] == ["17", "14"]
    assert rules(HALF + LIKE.format("    leave out: [chest fly machine]\n")) == [
        "twice-in-the-day-it-is-like"
    ]


def test_chest_is_above_any_range_and_the_copies_are_counted() -> None:
    """2 x (4 + 4 + 3 + 3 + 3) sets; 20 of the triceps with helpers half, which the screen says."""
    one = checked(WEEK)
    (over,) = [finding for finding in one.findings if finding.rule == "sets-over-range"]
    assert over.level is Level.gap
    assert "chest 34 (over 25)" in over.message
    assert (sets(one)["chest"], sets(one)["triceps"]) == ("34", "20")
    assert "Sets a muscle, helpers half" in screen(one, colour=False)


def test_the_front_of_the_shoulder_gets_every_press_and_the_rear_no_set_of_its_own() -> None:
    """The engine decides what a pull does for the rear deltoid: half a set each, which is enough."""
    one = checked(WEEK)
    (over,) = of(one, "sets-over-range")
    assert "front deltoid 27 (over 25)" in over
    assert one.coverage is not None
    direct = [work.item.name for work in one.coverage.works if "rear deltoid" in work.movement["prime"]]
    assert direct == []
    assert "rear deltoid" not in " ".join(of(one, "sets-under-range"))


def test_eight_such_weeks_have_no_lighter_one_and_a_week_without_end_is_not_asked() -> None:
    assert of(checked(WEEK), "no-lighter-week") == []
    block = checked(WEEK.replace("unit: kg", "unit: kg\nweeks: 8"))
    assert told_by_week(block) == [
        ("no-lighter-week", "plan: Six days", (6,)),
        *((rule, line, tuple(range(1, 9))) for rule, line in told(checked(WEEK))),
    ]


def test_what_is_only_told_is_no_finding() -> None:
    """Long and short length are covered by the fly; neither they nor the failure sets are faults."""
    one = checked(WEEK)
    assert told(one) == [
        ("sets-over-range", "plan: Six days"),
        ("sets-under-range", "plan: Six days"),
        ("line-never-followed", "work:"),
        ("no-work-across-the-midline", "work:"),
        ("no-work-across-the-midline", "like: Push"),
    ]
    assert one.complete
    assert (one.matrix[1].long.text, one.matrix[1].short.text) == ("yes", "yes")
    assert of(one, "line-never-followed") == ["no movement of the week follows the costal line"]


def test_a_finding_about_a_copy_points_at_the_words_and_says_the_day() -> None:
    one = checked(WEEK)
    lines = WEEK.splitlines()
    across = [f for f in one.findings if f.rule == "no-work-across-the-midline"]
    assert [lines[f.place.line - 1].strip() for f in across] == ["work:", "like: Push"]
    assert across[1].message.startswith("Thursday has 17 hard chest sets")
    told = [(seen.text, seen.line) for seen in across[1].seen]
    assert told[0] == ("bench press, 4 hard sets, 36 cm short, Thursday", 9)
    assert "Thursday" not in across[0].seen[0].text


def test_to_failure_is_the_last_set_only_on_four_lines_twice_a_week() -> None:
    one = checked(WEEK)
    assert one.coverage is not None
    doses = [work.item.dose for session in one.coverage.sessions for work in session.works]
    groups = [group for dose in doses if dose for group in dose.groups]
    failed = [group for group in groups if group.last is not None]
    assert len(failed) == 8
    assert {group.last.effort.rir for group in failed if group.last and group.last.effort} == {(0, 0)}
    assert not any(work.effort for group in groups for work in group.works)


def test_a_rest_of_90_is_the_rest_of_one_minute_thirty_and_a_rest_of_2_is_asked() -> None:
    week = read(WEEK).week
    assert week is not None
    bench, incline = (item.dose for item in week.sessions[3].items()[:2])
    assert bench is not None
    assert incline is not None
    assert bench.groups[0].rest == incline.groups[0].rest
    assert rules(WEEK.replace("rest 90", "rest 2")) == ["rest-without-unit"]


def test_a_superset_that_a_copy_leaves_with_one_move_is_half_a_pair() -> None:
    pair = "      - superset:\n          - dip: 3 x 8\n          - pull-up: 3 x 8\n"
    head = f"plan: A\nunit: kg\ndose order: sets x reps\nsessions:\n  - day: Monday\n    work:\n{pair}"
    one = checked(f"{head}  - day: Friday\n    like: Monday\n    leave out: [pull-up]\n")
    assert of(one, "half-a-pair") == ["a superset of Friday holds one move: dip"]


def test_an_allow_under_a_copied_line_is_told_once_where_it_is_idle() -> None:
    line = "      - dip: 3 x 8\n        allow:\n          one-side-only: on purpose\n"
    head = f"plan: A\nunit: kg\ndose order: sets x reps\nsessions:\n  - day: Monday\n    work:\n{line}"
    one = checked(f"{head}  - day: Friday\n    like: Monday\n")
    assert len(of(one, "allow-silences-nothing")) == 1
