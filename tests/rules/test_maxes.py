"""The rules about maxes and loads: what they count together, whom they name, and when they are silent."""

import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.checked import Checked
from setwright.findings import Finding, Level
from setwright.report.machine import json_text, short
from tests.rules.plans import HEAD, checked, of

SQUAT = "barbell back squat"
PRESS = "flat barbell bench press"
STARTS = "starts: 2027-10-04\n"
NEW = "tested 2027-09-20"


def squad(**maxes: str) -> str:
    """Athletes with their maxes, each "movement: text", one a line; an empty text is an athlete without."""
    people = ""
    for name, best in maxes.items():
        lines = "".join(f"        {one}\n" for one in best.splitlines())
        people += f"    - name: {name}\n" + (f"      maxes:\n{lines}" if lines else "")
    return f"squad:\n  athletes:\n{people}"


def plan(*lines: str, top: str = "", squad: str = "") -> str:
    work = "".join(f"      - {line}\n" if not line.startswith(" ") else f"{line}\n" for line in lines)
    return f"{HEAD}{top}{squad}sessions:\n  - day: Monday\n    work:\n{work}"


def only(one: Checked, rule: str) -> Finding:
    (found,) = [finding for finding in one.findings if finding.rule == rule]
    return found


def test_a_missing_max_is_an_error_once_for_all_lines() -> None:
    lines = (f"{PRESS}: 3 x 8 at 65%", f"{PRESS}: 3 x 5 at 75%", f"{SQUAT}: 3 x 8 at 65%")
    ann = f"{PRESS}: 60 kg {NEW}\n{SQUAT}: 90 kg {NEW}"
    found = only(
        checked(plan(*lines, squad=squad(Ann=ann, Cass=f"{SQUAT}: 70 kg {NEW}"))), "no-max-for-percent"
    )
    assert found.level is Level.error
    assert found.message == f"{PRESS}: no max for Cass to take a percent of"
    assert "2 lines" in found.why
    assert [seen.line for seen in found.seen] == [None, 17, 18]
    assert f"`{PRESS}: from 30 kg x 8 on year-month-day`" in found.change
    assert f"`- {PRESS}: 3 x 8 at 4 RIR` and `for: [Cass]`" in found.change


def test_movements_that_the_same_athletes_lack_are_one_fault() -> None:
    one = checked(
        plan(f"{PRESS}: 3 x 8 at 65%", f"{SQUAT}: 3 x 8 at 8RM", squad=squad(Ann="", Cass="", Bo=""))
    )
    assert of(one, "no-max-for-percent") == [
        f"{PRESS} and {SQUAT}: no max for Ann, Cass and Bo to take a percent of"
    ]


def test_each_reason_is_told_with_its_athletes() -> None:
    people = squad(
        Ann=f"{PRESS}: none yet", Bo=f"{PRESS}: from 40 kg x 20 on 2027-09-20", Cass=f"{PRESS}: none yet"
    )
    found = only(checked(plan(f"{PRESS}: 3 x 8 at 65%", squad=people)), "no-max-for-percent")
    assert [seen.text for seen in found.seen][:2] == [
        f"{PRESS}: none yet, as the squad file says (Ann and Cass)",
        f"{PRESS}: lifted 20 times; a max is estimated from 10 repetitions at most (Bo)",
    ]


def test_a_training_max_is_asked_for_with_its_percent() -> None:
    text = plan(
        f"{PRESS}: 5 x cluster 2 + 2 at 65% of training max, pause 20 s",
        squad=squad(Ann=f"{PRESS}: 60 kg {NEW}"),
    )
    found = only(checked(text), "no-max-for-percent")
    assert "`training max 90%`" in found.change
    assert f"`- {PRESS}: 3 x 8 at 4 RIR`" in found.change


@pytest.mark.parametrize(
    ("line", "best"),
    [
        (f"{PRESS}: 3 x 8 at 3 RIR", ""),
        (f"{PRESS}: 3 x 8 at 40 kg", ""),
        (f"{PRESS}: 3 x 8 at 80% of today's max", ""),
        (f"{PRESS}: test 1RM", ""),
        (f"{PRESS}: work up to 5RM, then 2 x 5 at 90% of top set", ""),
        (f"{PRESS}: 3 x 8 at 65%", f"{PRESS}: from 40 kg x 6 on 2027-09-20"),
    ],
)
def test_no_max_is_asked_for_where_none_is_needed(line: str, best: str) -> None:
    assert of(checked(plan(line, squad=squad(Ann=best))), "no-max-for-percent") == []


def test_a_max_that_was_asked_about_is_not_missing_too() -> None:
    one = checked(plan(f"{PRESS}: 3 x 8 at 65%", squad=squad(Ann=f"{PRESS}: 60 kg")))
    assert [finding.rule for finding in one.findings] == ["max-without-how"]


def test_without_a_squad_and_for_those_who_are_out_nothing_is_missing() -> None:
    assert of(checked(plan(f"{PRESS}: 3 x 8 at 65%")), "no-max-for-percent") == []
    out = squad(Ann="").replace("name: Ann\n", "name: Ann\n      participation: out\n")
    assert of(checked(plan(f"{PRESS}: 3 x 8 at 65%", squad=out)), "no-max-for-percent") == []
    line = (f"{PRESS}: 3 x 8 at 65%", "        not for: [Ann]")
    assert of(checked(plan(*line, squad=squad(Ann=""))), "no-max-for-percent") == []


def test_names_stay_out_of_machine_output() -> None:
    one = checked(plan(f"{PRESS}: 3 x 8 at 65%", squad=squad(Ann="", Cass="")))
    assert "Cass" not in short(one)
    assert "Cass" not in json_text([one])
    assert "Ann and Cass" in json.loads(json_text([one], with_names=True))["findings"][0]["message"]


def test_the_load_of_a_complex_and_of_a_timed_circuit_is_asked_too() -> None:
    text = plan(
        "complex:", "          - barbell front squat: 5", f"          - {SQUAT}: 5",
        "        rounds: 3", "        load: 60%",
        squad=squad(Ann=f"{SQUAT}: 90 kg {NEW}"),
    )  # fmt: skip
    assert of(checked(text), "no-max-for-percent") == [
        "barbell front squat: no max for Ann to take a percent of"
    ]
    timed = plan(
        "circuit:", f"          - {PRESS}:", "            load: 60%", "          - push-up",
        "        each: 40 s", "        rounds: 2", squad=squad(Ann=""),
    )  # fmt: skip
    assert of(checked(timed), "no-max-for-percent") == [f"{PRESS}: no max for Ann to take a percent of"]


def test_a_load_above_the_max_names_whom_and_over_105_percent_is_an_error() -> None:
    people = squad(Ann=f"{SQUAT}: 60 kg {NEW}", Bo=f"{SQUAT}: 90 kg {NEW}")
    some = only(checked(plan(f"{SQUAT}: 3 x 1 at 62.5 kg", squad=people)), "above-tested-max")
    far = only(checked(plan(f"{SQUAT}: 3 x 1 at 95 kg", squad=people)), "above-tested-max")
    assert (some.level, some.message) == (Level.advice, f"{SQUAT} asks for 104 % of the tested max of Ann")
    assert (far.level, far.message) == (
        Level.error,
        f"{SQUAT} asks for 158 % of the tested max of Ann and Bo",
    )
    assert "below 60 kg" in some.change


def test_a_percent_above_the_max_is_told_without_names() -> None:
    found = only(
        checked(plan(f"{SQUAT}: 3 x 1 at 103%", squad=squad(Ann=f"{SQUAT}: 60 kg {NEW}"))), "above-tested-max"
    )
    assert found.message == f"{SQUAT} asks for 103 % of the max"
    assert "test 1RM" in found.change


@pytest.mark.parametrize(
    "line",
    [
        f"{SQUAT}: 3 x 1 at 103% of training max",
        f"{SQUAT}: 3 x 1 at 60 kg",
        f"{SQUAT}: 3 x 5 at 1RM",
        "goblet squat: 3 x 8 at 100 kg",
        f"{SQUAT}: test 1RM",
    ],
)
def test_what_is_not_above_the_max(line: str) -> None:
    people = squad(Ann=f"{SQUAT}: 60 kg {NEW}, training max 90%")
    assert of(checked(plan(line, squad=people)), "above-tested-max") == []


def test_an_estimate_is_given_its_high_end() -> None:
    people = squad(Ann=f"{SQUAT}: from 50 kg x 5 on 2027-09-20")  # 56.2 to 59.5 kg
    assert of(checked(plan(f"{SQUAT}: 3 x 1 at 59 kg", squad=people)), "above-tested-max") == []
    assert of(checked(plan(f"{SQUAT}: 3 x 1 at 60 kg", squad=people)), "above-tested-max")


def test_bodyweight_moves_are_compared_with_the_body_in_them() -> None:
    people = squad(Ann=f"pull-up: bodyweight + 20 kg {NEW}").replace(
        "name: Ann\n", "name: Ann\n      body mass: 60 kg\n"
    )
    assert of(checked(plan("pull-up: 3 x 1 at bodyweight + 20 kg", squad=people)), "above-tested-max") == []
    # 0.96 x 60 + 22.5 = 80.1 of 77.6 kg
    assert of(checked(plan("pull-up: 3 x 1 at bodyweight + 22.5 kg", squad=people)), "above-tested-max") == [
        "pull-up asks for 103 % of the tested max of Ann"
    ]


@pytest.mark.parametrize(
    ("dose", "speaks"),
    [
        ("3 x 5 at 91%", False),  # the table has 87, four points are allowed
        ("3 x 5 at 91.5%", True),
        ("3 x 8 at 88%", False),  # 80, eight points
        ("3 x 8 at 88.5%", True),
        ("3 x 5 at 85%, 2 RIR", False),  # 7 in all: 83
        ("3 x 5 at 88%, 2 RIR", True),
        ("1 x 3+ at 97.5%", True),  # 93
        ("3 x 3 at 90%", False),
        ("3 x 20 at 75%", True),  # beyond the table: 65 at most
        ("3 x 20 at 70%", False),
        ("3 x max at 97.5%", False),
        ("3 x 5 at 102%", False),  # above-tested-max tells it
        ("3 x 5 at 98% of training max", False),
        ("5 x cluster 2 + 2 + 2 at 95%, pause 20 s", False),
        ("3 x 30 s at 95%", False),
        ("3 x 5 at 80-95%", False),
    ],
)
def test_repetitions_beside_the_handbook_table(dose: str, *, speaks: bool) -> None:
    assert bool(of(checked(plan(f"{PRESS}: {dose}")), "reps-not-possible-at-load")) is speaks


def test_explosive_lifts_and_both_sides_in_one_number_are_not_judged() -> None:
    assert of(checked(plan("power clean: 5 x 5 at 95%")), "reps-not-possible-at-load") == []
    assert of(checked(plan("one-arm dumbbell row: 3 x 10 in all at 90%")), "reps-not-possible-at-load") == []


def test_too_many_repetitions_are_one_fault_of_all_lines_and_ask_which_max() -> None:
    lines = (
        f"{PRESS}: 3 x 3 at 90%, then 1 x 3+ at 97.5%",
        f"{PRESS}: 3 x 5 at 95%",
        f"{SQUAT}: 3 x 5 at 95%",
    )
    open_kind = checked(plan(*lines))
    assert of(open_kind, "reps-not-possible-at-load") == [
        f"{PRESS} and {SQUAT}: 5 repetitions at 95 % of the tested max: possible?",
    ]
    first = next(f for f in open_kind.findings if f.rule == "reps-not-possible-at-load")
    assert [seen.line for seen in first.seen] == [8, 9, 10]
    assert "of training max" in first.change
    written = checked(plan(lines[2], top="percent of: tested max\n"))
    assert "training max" not in only(written, "reps-not-possible-at-load").change


@pytest.mark.parametrize(
    ("dose", "said"),
    [
        ("1 x 3+ at 97.5%", "3 or more repetitions at 97.5 %"),
        ("3 x 3-4 at 98%", "3 to 4 repetitions at 98 %"),
        ("3 x 1 at 100%, 1 RIR", "1 repetition with 1 left at 100 %"),
        ("3 x 3 at 95%, 2-3 RIR", "3 repetitions with 2 to 3 left at 95 %"),
    ],
)
def test_how_the_sets_are_said(dose: str, said: str) -> None:
    (message,) = of(checked(plan(f"{PRESS}: {dose}")), "reps-not-possible-at-load")
    assert f"{said} of the tested max" in message


def test_other_repetitions_of_another_movement_are_a_fault_of_their_own() -> None:
    one = checked(plan(f"{PRESS}: 3 x 5 at 95%", f"{SQUAT}: 3 x 4 at 95%"))
    assert len(of(one, "reps-not-possible-at-load")) == 2


def test_kilograms_are_judged_by_each_max() -> None:
    people = squad(Ann=f"{PRESS}: 82 kg {NEW}", Bo=f"{PRESS}: 110 kg {NEW}")
    found = only(checked(plan(f"{PRESS}: 3 x 5 at 75 kg", squad=people)), "reps-not-possible-at-load")
    assert found.message == f"{PRESS}: 5 repetitions at 91.5 % of the max of Ann: possible?"
    assert found.change.startswith("write up to 71.3 kg")  # 0.87 x 82


@pytest.mark.parametrize(
    ("dose", "speaks"),
    [
        ("3 x 5 at 75%, RPE 8", False),  # 7 in all: 83, eight points are allowed
        ("3 x 5 at 74.5%, RPE 8", True),
        ("3 x 5 at 60%, RPE 9", True),
        ("3 x 8 at 70%, 4 RIR", False),
        ("3 x 8 at 60%, 4 RIR", True),
        ("3 x 5+ at 60%, RPE 9", False),
        ("3 x 12 at 40%, 5 RIR", False),  # beyond the table
        ("3 x 5 at 60%, Borg 15", False),
        ("3 x 5 at 60%", False),
        ("3 x 5 at 60%, to failure", True),
    ],
)
def test_effort_beside_the_percent(dose: str, *, speaks: bool) -> None:
    assert bool(of(checked(plan(f"{PRESS}: {dose}")), "effort-and-percent-disagree")) is speaks


def test_a_max_is_stale_after_eight_weeks_before_the_start() -> None:
    fresh = squad(Ann=f"{PRESS}: 60 kg tested 2027-08-09")  # eight weeks to the day
    old = squad(Ann=f"{PRESS}: 60 kg tested 2027-08-08", Bo=f"{PRESS}: 60 kg tested 2027-05-03")
    line = f"{PRESS}: 3 x 5 at 75%"
    assert of(checked(plan(line, top=STARTS, squad=fresh)), "stale-max") == []
    assert of(checked(plan(line, top=STARTS, squad=old)), "stale-max") == [
        "percents are taken of maxes up to 22 weeks old, of Ann and Bo"
    ]
    assert of(checked(plan(line, squad=old)), "stale-max") == []
    assert of(checked(plan(f"{PRESS}: 3 x 5 at 40 kg", top=STARTS, squad=old)), "stale-max") == []


def test_a_number_in_the_other_unit_is_asked_about_by_published_ratios_too() -> None:
    alone = squad(Ann=f"{PRESS}: 100 kg {NEW}\nclose-grip barbell bench press: 209 kg {NEW}")
    found = only(checked(plan("dip: 3 x 8", squad=alone)), "unit-looks-wrong")
    assert found.message == "close-grip barbell bench press of Ann, 209 kg: typed in lb?"
    assert "0.95 is usual (published for trained lifters)" in found.why
    assert found.place.line == 10


def test_dumbbells_are_compared_as_a_pair() -> None:
    pair = squad(Ann=f"{PRESS}: 100 kg {NEW}\nflat dumbbell bench press: 41 kg {NEW}")
    assert of(checked(plan("dip: 3 x 8", squad=pair)), "unit-looks-wrong") == []


@pytest.mark.parametrize(
    "best",
    [
        f"{PRESS}: 100 kg {NEW}\nclose-grip barbell bench press: 95 kg {NEW}",
        f"{PRESS}: 100 kg {NEW}\nclose-grip barbell bench press: 30 kg {NEW}",  # off, but no unit explains it
        f"{PRESS}: 100 kg {NEW}\n{SQUAT}: 300 kg {NEW}",  # nobody knows the usual ratio
        f"{PRESS}: 100 kg {NEW}\nclose-grip barbell bench press: none yet",
        f"{PRESS}: 100 kg {NEW}\npull-up: bodyweight + 10 kg {NEW}",
    ],
)
def test_no_unit_is_asked_about(best: str) -> None:
    assert of(checked(plan("dip: 3 x 8", squad=squad(Ann=best))), "unit-looks-wrong") == []


def test_an_unknown_movement_in_the_maxes_is_left_to_its_own_finding() -> None:
    one = checked(plan("dip: 3 x 8", squad=squad(Ann=f"benchh presss: 100 kg {NEW}")))
    assert [finding.rule for finding in one.findings] == ["unknown-movement"]


def test_an_allow_under_a_line_of_the_plan_leaves_the_same_line_of_the_squad_file_alone() -> None:
    people = squad(Ann=f"{PRESS}: 100 kg {NEW}\nclose-grip barbell bench press: 209 kg {NEW}")
    text = plan(
        "dip: 3 x 8", "        allow:", "          unit-looks-wrong: not here", top="squad: people.yaml\n"
    )
    line = 1 + text.splitlines().index("      - dip: 3 x 8")
    beside = {"people.yaml": "\n" * (line - 5) + people.removeprefix("squad:\n")}
    one = checked(text, beside.get)
    assert [(f.rule, f.place.file, f.place.line == line) for f in one.findings] == [
        ("unit-looks-wrong", "people.yaml", True),
        ("allow-silences-nothing", "week.yaml", False),
    ]


@pytest.mark.parametrize(
    ("line", "who", "level", "speaks"),
    [
        ("test 1RM", "", "beginner", ["beginners"]),
        ("test 3RM", "", "beginner", ["beginners"]),
        ("test 5RM", "", "beginner", []),
        ("work up to 1RM", "", "beginner", ["beginners"]),
        ("test max reps", "", "beginner", []),
        ("test 1RM", "", "intermediate", []),
        ("test 1RM", "Ann", "beginner", ["Ann"]),
        ("test 1RM", "Ann", "intermediate", []),
    ],
)
def test_a_maximal_test_of_a_beginner(line: str, who: str, level: str, speaks: list[str]) -> None:
    people = squad(**{who: ""}) if who else ""
    one = checked(plan(f"{PRESS}: {line}", top=f"level: {level}\n", squad=people))
    assert of(one, "beginner-maximal-test") == [f"{PRESS} is a maximal test for {name}" for name in speaks]


def test_the_level_of_an_athlete_comes_before_that_of_the_plan() -> None:
    people = squad(Ann="", Bo="").replace("name: Bo\n", "name: Bo\n      level: beginner\n")
    one = checked(plan(f"{PRESS}: test 1RM", f"{SQUAT}: test 1RM", squad=people))
    assert of(one, "beginner-maximal-test") == [f"{PRESS} is a maximal test for Bo"]


def test_movements_of_the_coachs_own_have_maxes_too() -> None:
    own = "movements:\n  our press:\n    like: flat barbell bench press\n    grip: 70 cm\n"
    people = squad(Ann=f"our press: 60 kg {NEW}", Bo="")
    one = checked(
        plan("our press: 3 x 5 at 75%", "push press: 3 x 5 at 50% of our press", top=own, squad=people)
    )
    assert of(one, "no-max-for-percent") == ["our press: no max for Bo to take a percent of"]


NUMBERS = st.integers(min_value=0, max_value=300)
MOVEMENTS = st.sampled_from([PRESS, SQUAT, "pull-up", "push-up", "assisted dip", "flat dumbbell bench press"])
MAXES = st.builds(
    str.format,
    st.sampled_from(
        [
            "{} kg tested 2027-09-20", "bodyweight - {} kg tested 2027-06-20", "from {} lb x 7 on 2027-09-20",
            "{} reps tested 2027-09-20", "100 kg tested 2027-09-20, training max {}%", "none yet",
        ]
    ),
    NUMBERS,
)  # fmt: skip
DOSES = st.builds(
    str.format,
    st.sampled_from(
        [
            "3 x 5 at {}%", "3 x 5-8 at {} kg, 2 RIR", "3 x 5 at bodyweight - {} kg", "3 x 5 at {}RM",
            "1 x 5+ at {}% of back squat, RPE 8", "3 x 5 at {}% of training max", "test {}RM",
            "3 x 5 at {}% of bodyweight", "3 x 20 rising to {} lb",
        ]
    ),
    NUMBERS,
)  # fmt: skip


@settings(max_examples=60, deadline=None)
@given(
    st.dictionaries(MOVEMENTS, MAXES, max_size=4),
    st.lists(st.tuples(MOVEMENTS, DOSES), min_size=1, max_size=4),
)
def test_any_max_and_load_end_in_findings_that_say_what_to_change(
    maxes: dict[str, str], lines: list[tuple[str, str]]
) -> None:
    best = "\n".join(f"{movement}: {text}" for movement, text in maxes.items())
    people = squad(Ann=best).replace("name: Ann\n", "name: Ann\n      body mass: 60 kg\n")
    one = checked(plan(*(f"{movement}: {dose}" for movement, dose in lines), top=STARTS, squad=people))
    assert all(finding.change and finding.why for finding in one.findings)
    places = [(finding.rule, finding.place, finding.message) for finding in one.findings]
    assert len(places) == len(set(places))


def test_who_does_another_movement_or_has_a_load_of_their_own_needs_no_max() -> None:
    people = squad(Ann=f"{SQUAT}: 90 kg {NEW}", Bo="", Cass="")
    others = ("        instead:", "          Bo: goblet squat", "        load:", "          Cass: 40 kg")
    assert of(checked(plan(f"{SQUAT}: 3 x 8 at 65%", squad=people)), "no-max-for-percent") == [
        f"{SQUAT}: no max for Bo and Cass to take a percent of"
    ]
    assert of(checked(plan(f"{SQUAT}: 3 x 8 at 65%", *others[2:], squad=people)), "no-max-for-percent") == [
        f"{SQUAT}: no max for Bo to take a percent of"
    ]
    assert of(checked(plan(f"{SQUAT}: 3 x 8 at 65%", *others, squad=people)), "no-max-for-percent") == [
        "goblet squat: no max for Bo to take a percent of"
    ]


def test_a_load_of_ones_own_is_held_against_ones_own_max() -> None:
    people = squad(Ann=f"{SQUAT}: 90 kg {NEW}", Bo=f"{SQUAT}: 60 kg {NEW}")
    own = ("        load:", "          Bo: 70 kg")
    found = only(checked(plan(f"{SQUAT}: 3 x 1 at 80 kg", *own, squad=people)), "above-tested-max")
    assert found.message == f"{SQUAT} asks for 117 % of the tested max of Bo"
