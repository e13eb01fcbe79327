"""Lines and files as they are typed late in the evening: what is said of each, and that it helps at once.

Everyone is invented.
"""

import pytest

from setwright.checked import Checked
from setwright.findings import Level
from setwright.reading.text_rules import TEXT_RULES
from setwright.report.terminal import text as screen
from tests.report.test_read import said
from tests.rules.plans import checked, of

HEAD = "plan: Late\nunit: {unit}\ndose order: sets x reps\nsides: each\nwork:\n"


def plan(line: str, unit: str = "kg") -> Checked:
    return checked(f"{HEAD.format(unit=unit)}  - {line}\n")


def asked(line: str, unit: str = "kg") -> list[str]:
    """What is said of the text of a line: the change alone."""
    return [finding.change for finding in plan(line, unit).findings if finding.rule in TEXT_RULES]


@pytest.mark.parametrize(
    ("line", "change"),
    [
        ("bench press: 3 sets 12 reps", 'Write "3 sets of 12"'),
        ("bench press: 8 8 8", 'Write "sets of 8, 8, 8"'),
        ("bench press: 3x8 60/65/70", 'Set by set: "3x8 at 60, 65, 70". By week: `load: [60, 65, 70]`'),
        (
            "bench press: 3x5 70% / 3x3 80%",
            'One after the other: "3x5 70%, then 3x3 80%". Two groups: two lines with `for:`',
        ),
        ("back squat: 1x5 60%, 1x5 70%, 1x5 80%", 'Write "1x5 60%, then 1x5 70%, then 1x5 80%"'),
        ("push-up: 3 x 30 sec on 30 sec off", 'Write "3 x 30 s, rest 30 s"'),
        ("dip: BW+10 3x8", 'Write "3x8 at BW+10"'),
        ("deadlift: 3 x 5 ramping to 140 kg", 'Nearest: "3 x 5 rising to 140 kg". Remarks go under `note:`'),
        ("rowing ergometer: 500m x 4, rest 2'", 'Write "4 x 500m, rest 2\'"'),
        ("one-arm dumbbell row: 3 x 10 e/s", 'Write "3 x 10 each side" or "3 x 10 in all"'),
        ("bench press: 3 x 5 at .75", 'Write "3 x 5 at 75%"'),
        ("bench press: 3x8, 2 in the tank", 'Write "3x8, 2 RIR"'),
        (
            "bench press: 4x6, felt heavy last time, rest 2:00",
            'Write "4x6, rest 2:00", and the words underneath: `note: felt heavy last time`',
        ),
    ],
)
def test_a_line_is_asked_once_and_the_line_to_type_is_the_whole_line(line: str, change: str) -> None:
    assert asked(line) == [change]
    for mended in change.split('"')[1::2]:
        assert asked(f"{line.split(':', maxsplit=1)[0]}: {mended}") == []


def test_a_dash_for_the_colon_is_no_part_of_the_name() -> None:
    assert asked("Bench Press – 4 × 6 @ 75 %") == [
        "put a colon after the movement: `- Bench Press: 4 × 6 @ 75 %`"
    ]


def test_words_that_are_no_remark_are_left_as_a_question() -> None:
    assert asked("dip: 3 x 8-") == [
        'First how much, then how: "3 x 8 at 60 kg, rest 2:00". Remarks go under `note:`'
    ]


@pytest.mark.parametrize(
    ("dose", "read"),
    [
        ("3 x 1,5 min", "3 sets of 90 seconds"),
        ("3 x 0,5 km", "3 sets of 500 m"),
        ("3 x 2,5 m", "3 sets of 2.5 m"),
        ("1,5 km", "1.5 km"),
        ("sets of 12,10 at 60,5 kg", "2 sets of 12 and 10 with 60.5 kg"),
    ],
)
def test_a_decimal_comma_is_one_number_where_only_one_can_stand(dose: str, read: str) -> None:
    assert read in said(f"{HEAD.format(unit='kg')}  - push-up: {dose}\n")


def test_a_comma_between_two_whole_numbers_of_seconds_is_no_decimal() -> None:
    (change,) = asked("plank: 2 x 60,30 s")
    assert "rest 30 s" in change


@pytest.mark.parametrize(
    ("dose", "change"),
    [
        ("3 x 1.000 m", 'Write "3 x 1000 m" or "3 x 1 m"'),
        ("1 x 10.000 steps", 'Write "1 x 10000 steps" or "1 x 10 steps"'),
        ("3 x 8 at 1.250 kg", 'Write "3 x 8 at 1250 kg" or "3 x 8 at 1.25 kg"'),
    ],
)
def test_a_point_between_thousands_is_asked_and_never_a_thousandth(dose: str, change: str) -> None:
    assert asked(f"push-up: {dose}") == [change]
    assert asked("push-up: 3 x 0.125 km") == asked("bench press: 3 x 8 at 68.875 lb") == []


@pytest.mark.parametrize("unit", ["kg", "lb"])
def test_a_pair_of_fifties_is_asked_in_the_unit_of_the_plan(unit: str) -> None:
    (change,) = asked("incline dumbbell bench press: 3x10 @ 50s", unit)
    assert f'"3x10 at 2 x 50 {unit}" for the pair' in change


def test_every_minute_is_said_once_with_the_movement_behind_the_colon() -> None:
    assert asked("EMOM 12: burpee 10") == ["Write the movement first: `- burpee: 12 x 10 every 1:00`"]
    assert asked("E2MOM: 5 push-up") == ["Write the movement first: `- push-up: 10 x 5 every 2:00`"]
    assert asked("EMOM 10: 3 x 8")[0].startswith("Write the movement first, for example")


def test_a_row_of_a_spreadsheet_gets_its_colon_from_both_findings() -> None:
    assert asked("Bench Press\t4x8\t60") == [
        "put a colon after the movement: `- Bench Press: 4x8 60`",
        "write `- Bench Press: 4x8 60`",
    ]


SQUAD = """\
plan: Two of one name
unit: kg
dose order: sets x reps
starts: 2027-04-19
squad:
  athletes:
    - name: Lea
      maxes:
        bench press: 45 kg tested 2027-04-12
    - name: lea
      maxes:
        bench press: 60 kg tested 15.04.2027
sessions:
  - day: Monday
    work:
      - bench press: 3 x 8 at 2 RIR
        for: [Lea]
      - bench pull: 3 x 8 at 2 RIR
"""


def test_two_athletes_of_one_name_are_an_error_and_a_date_of_one_meaning_is_offered_once() -> None:
    found = {f.rule: (f.level, f.change) for f in checked(SQUAD).findings}
    assert found["name-twice"] == (
        Level.error,
        "write more of the name, for example `name: lea B`, here and where it stands",
    )
    assert found["date-not-readable"][1] == "write `2027-04-15`, year-month-day"
    mended = checked(SQUAD.replace("- name: lea", "- name: Lea B"))
    assert not of(mended, "name-twice")


def test_what_is_no_station_is_added_under_its_own_key() -> None:
    text = f"{HEAD.format(unit='kg')}  - {{}}: 3 x 8\ngym:\n  benches: 1\n"
    for movement, key in {
        "incline dumbbell bench press": "add `10 kg: 1 pair` under `dumbbells:`",
        "parallel-bar dip": "add `dip bars: 1` under `stations:`",
        "level cable crossover": "add `- name: twin cable` under `cables:`",
    }.items():
        (found,) = (f for f in checked(text.format(movement)).findings if f.rule == "nobody-can-use")
        assert key in found.change


def test_lines_for_some_are_told_beside_the_sums_they_are_counted_in() -> None:
    people = "squad:\n  athletes:\n    - name: Ann\n    - name: Bo\n"
    lines = "  - bench pull: 4 x 8 at 2 RIR\n    for: [Ann]\n  - bench pull: 5 x 8 at 2 RIR\n    for: [Bo]\n"
    told = " ".join(screen(checked(f"{HEAD.format(unit='kg')}{lines}{people}"), colour=False).split())
    assert "pull 9 sets, push 0 sets; lines 6 and 8 for some athletes only, counted as if for all." in told


@pytest.mark.parametrize(
    ("typed", "change"),
    [
        ("5, 7.5, 10, 12.5 kg", "write them as a run: `5-12.5 kg by 2.5: 1 pair`"),
        ("4, 6, 10", "write each weight on a line of its own: `4: 1 pair`"),
        ("light ones", "write the weight first, for example `20 kg: 2` or `4-32 kg by 2: 1 pair`"),
    ],
)
def test_several_dumbbells_on_one_line_are_a_run_or_a_line_each(typed: str, change: str) -> None:
    gym = f"gym:\n  dumbbells:\n    {typed}: 1 pair\n"
    assert [f.change for f in checked(f"{HEAD.format(unit='kg')}  - push-up: 3 x 8\n{gym}").findings] == [
        change
    ]
