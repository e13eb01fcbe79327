"""Loads worked out on a session sheet, for each athlete and with plates; else as they are written."""

import pytest

from setwright.sheets.sessions import session_sheets
from setwright.sheets.view import Line, LoadWords
from tests.pages.plans import check

GYM = """\
gym:
  bars:
    20 kg: 2
  plates per rack:
    20 kg: 2 pairs
    10 kg: 1 pair
    5 kg: 1 pair
    1.25 kg: 1 pair
  dumbbells:
    4-32 kg by 2: 1 pair
  cables:
    - name: tower
      number: 2
      heights: floor to 2.1 m
      stack: 5-90 kg by 5
      pulley: 2 to 1
  bands:
    red: 60 N at 2 m, 85 N at 2.5 m
  stations:
    dip bars: 1
    pull-up bar: 1
    floor pivot: 1
    assistance machine: 1
"""
PEOPLE = """\
squad:
  athletes:
    - name: Ann
      body mass: 70 kg
      maxes:
        barbell back squat: 100 kg tested 2027-09-20
        pull-up: bodyweight + 20 kg tested 2027-09-20
        one-arm dumbbell row: 40 kg tested 2027-09-20
        flat dumbbell bench press: 30 kg tested 2027-09-20
        barbell front squat: 220 lb tested 2027-09-20
"""
HEAD = "plan: A\nunit: kg\nsides: each\nstarts: 2027-10-04\ndose order: sets x reps\npercent of: tested max\n"


def line(work: str, *, gym: str = GYM, people: str = PEOPLE) -> Line:
    """The only line of a sheet."""
    checked = check(f"{HEAD}{gym}{people}work:\n  - {work}\n")
    assert checked.week is not None
    ((one,),) = [block.lines for block in session_sheets(checked.week, "a", checked.table)[0].blocks]
    return one


@pytest.mark.parametrize(
    ("work", "words"),
    [
        ("barbell back squat: 3 x 5 at 75%", LoadWords("72.5 kg", "20 + 5 + 1.25 a side")),
        ("barbell back squat: 3 x 5 at 60 kg", LoadWords("60 kg", "20 a side")),
        ("barbell back squat: 3 x 5 at bar", LoadWords("20 kg", "empty bar")),
        ("barbell back squat: 3 x 5 at 8RM", LoadWords("80 kg", "20 + 10 a side")),
        ("barbell back squat: 3 x 5 rising to 80%", LoadWords("up to 80 kg", "20 + 10 a side")),
        ("barbell back squat: 2 x 3 at 80%, then 1 x 3 at 90%",
         LoadWords("80, 90 kg", "20 + 10; 20 + 10 + 5 a side")),
        ("barbell back squat: 3 x 5 at 60-62.5 kg", LoadWords("60–62.5 kg", "20; 20 + 1.25 a side")),
        ("barbell back squat: 3 x 5 at 61-64 kg", LoadWords("62.5 kg", "20 + 1.25 a side")),
        ("barbell back squat: 3 x 5 at 61-62 kg", LoadWords("60 kg", "20 a side")),
        ("flat dumbbell bench press: 3 x 8 at 15-19 kg", LoadWords("2 × 16–18 kg", "one a hand")),
        ("level cable crossover: 3 x 12 at 9-16 kg", LoadWords("pin 10–15 kg")),
        ("barbell back squat: work up to 5RM, then 2 x 5 at 90% of top set",
         LoadWords("5RM, 90 %", "", "kg")),
        ("barbell front squat: 3 x 5 at 50%", LoadWords("50 kg", "10 + 5 a side")),  # 110 lb
        ("flat barbell bench press: 3 x 5 at 75%", LoadWords("75 %", "of tested max", "kg")),
        ("flat dumbbell bench press: 3 x 8 at 80%", LoadWords("2 × 24 kg", "one a hand")),
        ("one-arm dumbbell row: 3 x 8 at 60%", LoadWords("24 kg")),
        ("level cable crossover: 3 x 12 at 10 kg", LoadWords("pin 10 kg", "5 kg at the handle on each side")),
        ("one-arm band press across the body: 3 x 12 at 7 kg", LoadWords("red band", "to 2.17 m")),
        ("T-bar row: 3 x 8 at 30 kg", LoadWords("30 kg", "20 + 10 kg on the sleeve")),
        ("dip: 3 x 8 at bodyweight + 10 kg", LoadWords("body + 10", "kg added")),
        ("dip: 3 x 8 at bodyweight + 11.25 kg", LoadWords("body + 11.25", "kg added: 10 + 1.25")),
        ("pull-up: 3 x 5 at 60%", LoadWords("body − 14.88", "kg of help")),
        ("assisted pull-up: 3 x 8 at 20 kg", LoadWords("20 kg")),
        ("barbell back squat: 3 x 5 at 2 RIR", LoadWords(blank="kg")),
        ("barbell back squat: 3 x 5 at 60 kg\n    load:\n      Ann: 55%",
         LoadWords("52.5 kg", "10 + 5 + 1.25 a side")),
        ("barbell back squat: 3 x 5 at 60 kg\n    load:\n      Ann: none", LoadWords("no load")),
    ],
)  # fmt: skip
def test_the_load_column(work: str, words: LoadWords) -> None:
    assert line(work).load == words


@pytest.mark.parametrize(
    ("work", "told"),
    [
        ("barbell back squat: 3 x 5 at 75%, drop 20% for max", ("drop to 60 kg (20 a side)",)),
        ("barbell back squat: 3 x 5 at 80 kg, drop 20% for max, drop 20% for max",
         ("drop to 62.5 kg (20 + 1.25 a side), then 50 kg (10 + 5 a side)",)),
        ("flat dumbbell bench press: 3 x 8 at 20 kg, drop 20% for max", ("drop to 2 × 16 kg (one a hand)",)),
        ("barbell back squat: 3 x 5 at 22.5 kg, drop 50% for max", ("drop to 20 kg (empty bar)",)),
        ("barbell back squat: 3 x 5 at 80 kg, drop to 60 kg for max", ()),
        ("barbell back squat: 3 x 5 at 80 kg, drop to 60 kg for max, drop 50% for max",
         ("drop to 30 kg (5 a side)",)),
        ("flat barbell bench press: 3 x 5 at 75%, drop 20% for max", ()),
        ("dip: 3 x 8 at bodyweight + 10 kg, drop 20% for max", ()),
        ("barbell back squat: 3 x 5 at 2 RIR, drop 20% for max", ()),
    ],
)  # fmt: skip
def test_drops_by_a_percent_are_worked_out(work: str, told: tuple[str, ...]) -> None:
    assert line(work).remarks == told


def test_drops_without_a_gym_stand_as_they_come_out() -> None:
    work = "barbell back squat: 3 x 5 at 80 kg, drop 20% for max"
    assert line(work, gym="").remarks == ("drop to 64 kg",)


def test_without_a_gym_kilograms_stand_as_they_come_out() -> None:
    assert line("barbell back squat: 3 x 5 at 72%", gym="").load == LoadWords("72 kg")
    assert line("flat dumbbell bench press: 3 x 8 at 75%", gym="").load == LoadWords(
        "2 × 22.5 kg", "one a hand"
    )
    assert line("barbell front squat: 3 x 5 at 50%", gym="").load == LoadWords("110 lb")
    assert line("pull-up: 3 x 5 at 96.2%\n", gym="").load.small == "kg added"


def test_for_nobody_in_particular_what_is_the_same_for_all_is_worked_out() -> None:
    assert line("barbell back squat: 3 x 5 at 60 kg", people="").load == LoadWords("60 kg", "20 a side")
    assert line("barbell back squat: 3 x 5 at 75%", people="").load.blank == "kg"


def test_of_bars_of_two_weights_the_bar_is_said() -> None:
    two = GYM.replace("20 kg: 2\n", "20 kg: 2\n    15 kg: 1\n", 1)
    one = line("barbell back squat: sets of 8, 6 at 60, 80 kg\n    warm-up: 8 at bar", gym=two)
    assert one.load == LoadWords("60, 80 kg", "20 kg bar, 20; 20 + 10 a side")
    assert one.ramps[0].load == LoadWords(small="empty 20 kg bar")


def ramps(work: str, **more: str) -> list[tuple[str, str, LoadWords]]:
    return [(ramp.text, ramp.at, ramp.load) for ramp in line(work, **more).ramps]


def test_ramps_have_their_load_beside_the_repetitions_and_the_plates_in_the_column() -> None:
    told = ramps("barbell back squat: 3 x 5 at 75%\n    warm-up: 10 at bar, 2 x 5 at 50%, 3 at 65%")
    assert told == [
        ("warm-up: 10 reps", "20 kg", LoadWords(small="empty bar")),
        ("warm-up: 5 reps", "50 kg", LoadWords(small="10 + 5 a side")),
        ("warm-up: 5 reps", "50 kg", LoadWords(small="10 + 5 a side")),
        ("warm-up: 3 reps", "62.5 kg", LoadWords(small="20 + 1.25 a side")),
    ]


def test_less_than_the_bar_is_warmed_up_with_the_bar() -> None:
    assert ramps("barbell back squat: 3 x 5 at 75%\n    warm-up: 5 at 10%") == [
        ("warm-up: 5 reps", "20 kg", LoadWords(small="empty bar"))
    ]


def test_open_warm_up_sets_are_shares_of_the_work_or_have_room() -> None:
    two = "\n    warm-up: 2 sets"
    assert [at for _, at, _ in ramps(f"barbell back squat: 3 x 5 at 80%{two}")] == ["40 kg", "52.5 kg"]
    assert (
        ramps(f"barbell back squat: 3 x 5 at 2 RIR{two}") == [("warm-up set", "", LoadWords(blank="kg"))] * 2
    )
    assert ramps("barbell back squat: 3 x 5 at 80%\n    warm-up: 5") == [("warm-up: 5 reps", "", LoadWords())]


def test_each_athlete_has_their_own_and_nothing_of_the_others() -> None:
    bo = "    - name: Bo\n      maxes:\n        barbell back squat: 60 kg tested 2027-09-20\n"
    people = f"{PEOPLE}{bo}    - name: Cy\n"
    checked = check(f"{HEAD}{GYM}{people}work:\n  - barbell back squat: 3 x 5 at 75%\n")
    assert checked.week is not None
    sheets = session_sheets(checked.week, "a", checked.table)
    loads = {sheet.athlete: sheet.blocks[0].lines[0].load.large for sheet in sheets}
    assert loads == {"Ann": "72.5 kg", "Bo": "42.5 kg", "Cy": "75 %"}
