"""Loads typed in a line against what the gym has: what is said of them, and what is left alone."""

import pytest

from setwright.findings import Finding, Level
from setwright.report.machine import short
from tests.rules.plans import checked, week

GYM = """\
gym:
  bars:
    20 kg: 2
  plates per rack:
    20 kg: 2 pairs
    5 kg: 1 pair
    2.5 kg: 1 pair
    1.25 kg: 1 pair
  dumbbells:
    4-32 kg by 2: 1 pair
    35 lb: 1
  cables:
    - name: tower
      number: 2
      stack: 5-90 kg by 5
      pulley: 2 to 1
  bands:
    red: 60 N at 2 m
  stations:
    floor pivot: 1
"""
LOADS = ("load-not-loadable", "below-the-empty-bar")


def said(line: str, top: str = GYM) -> list[Finding]:
    return [f for f in checked(week(f"Monday\n{line}", top=top)).findings if f.rule in LOADS]


def change(line: str, top: str = GYM) -> str:
    (finding,) = said(line, top)
    return finding.change


@pytest.mark.parametrize(
    "line",
    [
        "back squat: 3 x 8 at 72.5 kg",
        "back squat: 3 x 8 at 75%",
        "back squat: 3 x 8 at 2 RIR",
        "back squat: 3 x 8 at bar",
        "back squat: 3 x 8 at bar + 20 kg a side",
        "back squat: 3 x 8 at 71-73 kg",
        "back squat: 3 x 8 at 72.6 kg",
        "back squat: 3 x 8 at 2 x 10 kg",
        "flat dumbbell bench press: 3 x 8 at 2 x 20 kg",
        "flat dumbbell bench press: 3 x 8 at 20 kg",
        "level cable crossover: 3 x 12 at 15 kg",
        "pull-up: 3 x 8 at bodyweight + 11 kg",
        "leg press: 3 x 8 at 123 kg",
        "one-arm band press across the body: 3 x 12 each side with red band",
        "back squat: 3 x 8 at last time + 1 kg",
        "back squat: 3 x 8 at 60 kg\n        warm-up: 8 at 33 kg",
    ],
)
def test_nothing_is_said_of_a_load_that_is_there_or_is_no_mass(line: str) -> None:
    assert said(line) == []


def test_without_a_gym_file_no_load_is_judged() -> None:
    assert said("back squat: 3 x 8 at 73.1 kg", top="") == []


@pytest.mark.parametrize(
    ("line", "instead"),
    [
        (
            "back squat: 3 x 8 at 73 kg",
            (
                "for 73 kg write 72.5 kg: 20 kg bar, 20 + 5 + 1.25 a side (0.5 kg or 0.7 % less), "
                "or 75 kg: 20 kg bar, 20 + 5 + 2.5 a side (2 kg or 2.7 % more)"
            ),
        ),
        (
            "back squat: 3 x 8 at bar + 6 kg a side",
            (
                "for 32 kg write 32.5 kg: 20 kg bar, 5 + 1.25 a side (0.5 kg or 1.6 % more), "
                "or 30 kg: 20 kg bar, 5 a side (2 kg or 6.2 % less)"
            ),
        ),
        (
            "flat dumbbell bench press: 3 x 8 at 13 kg",
            (
                "for 13 kg write 12 kg in each hand (1 kg or 7.7 % less) (of two equally far the lighter), "
                "or 14 kg in each hand (1 kg or 7.7 % more)"
            ),
        ),
        (
            "level cable crossover: 3 x 12 at 12 kg",
            (
                "for 12 kg write 10 kg: pin 10 kg, 5 kg at the handle on each side (2 kg or 16.7 % less), "
                "or 15 kg: pin 15 kg, 7.5 kg at the handle on each side (3 kg or 25.0 % more)"
            ),
        ),
        (
            "T-bar row: 3 x 8 at 31 kg",
            (
                "for 31 kg write 30 kg: 20 + 5 + 5 kg on the sleeve (1 kg or 3.2 % less), "
                "or 32.5 kg: 20 + 5 + 5 + 2.5 kg on the sleeve (1.5 kg or 4.8 % more)"
            ),
        ),
    ],
)
def test_the_load_to_write_instead(line: str, instead: str) -> None:
    small = GYM.replace("    1.25 kg: 1 pair\n", "") if "T-bar" in line else GYM
    assert change(line, small) == instead


def test_one_line_is_one_finding_with_every_load_of_it() -> None:
    (finding,) = said("back squat: sets of 8, 6, 5, 1 at 61, 62.5, 63, 61 kg, drop to 41 kg for 5")
    assert finding.message == "back squat at 61 kg, 41 kg, 63 kg: what is here makes no such load"
    assert finding.level is Level.advice
    assert finding.change.count("write") == 3


def test_a_load_for_all_movements_of_a_complex_is_judged_for_each() -> None:
    members = "          - barbell row: 6\n          - back squat: 6\n"
    lines = f"complex:\n{members}        rounds: 3\n        load: 31 kg"
    found = said(lines)
    assert [f.message for f in found] == [
        "barbell row at 31 kg: what is here makes no such load",
        "back squat at 31 kg: what is here makes no such load",
    ]


def test_the_squads_rounding_is_followed_and_said() -> None:
    up = GYM + "squad:\n  rounding: up\n  athletes: [Ann]\n"
    (finding,) = said("back squat: 3 x 8 at 73 kg", up)
    assert finding.change.startswith("for 73 kg write 75 kg")
    assert [one.text for one in finding.seen] == ["the squad rounds up"]


@pytest.mark.parametrize(
    ("line", "message", "instead"),
    [
        (
            "back squat: 3 x 8 at 300 kg",
            "back squat at 300 kg: more than anything here",
            (
                "write at most 117.5 kg: 20 kg bar, 20 + 20 + 5 + 2.5 + 1.25 a side "
                "(182.5 kg or 60.8 % less), or list in the gym file what else there is"
            ),
        ),
        (
            "flat dumbbell bench press: 3 x 8 at 2 kg",
            "flat dumbbell bench press at 2 kg: less than anything here",
            (
                "write at least 4 kg in each hand (2 kg or 100.0 % more), "
                "or list in the gym file what else there is"
            ),
        ),
        (
            "one-arm dumbbell row: 3 x 8 each arm at 35 kg",
            "one-arm dumbbell row at 35 kg: more than anything here",
            (
                "write `35 lb` if that is stamped on it, else write at most 32 kg with one dumbbell "
                "(3 kg or 8.6 % less), or list in the gym file what else there is"
            ),
        ),
    ],
)
def test_out_of_reach_is_an_error(line: str, message: str, instead: str) -> None:
    (finding,) = said(line)
    assert (finding.level, finding.message, finding.change) == (Level.error, message, instead)


def test_a_band_can_be_stretched_a_little_more() -> None:
    (finding,) = said("one-arm band press across the body: 3 x 12 each side at 7 kg")
    assert finding.level is Level.advice
    assert "uchida2016" in finding.seen[0].text


def test_one_dumbbell_without_the_other_is_said() -> None:
    (finding,) = said("flat dumbbell bench press: 3 x 8 at 35 lb")
    assert [one.text for one in finding.seen] == [
        "35 lb: there is one 35 lb only, and none for the other hand"
    ]
    assert "35.27 lb: 16 kg in each hand (0.27 lb or 0.8 % more)" in finding.change


def test_below_the_bar_names_what_to_do_here() -> None:
    (finding,) = said("flat barbell bench press: 3 x 8 at 17-19 kg, drop to 15 kg for max")
    assert finding.level is Level.error
    assert finding.message == "flat barbell bench press at 17-19 kg, 15 kg is less than the empty 20 kg bar"
    assert finding.why == "the bar alone is 5 kg or 33.3 % more than 15 kg, and nothing can be taken off it"
    assert (
        finding.change
        == "do flat dumbbell bench press instead, or take a bar of at most 15 kg and list it under `bars:` "
        "in the gym file"
    )


def test_without_anything_easier_a_lighter_bar_is_asked_for() -> None:
    bars = "gym:\n  bars:\n    20 kg: 1\n"
    assert change("back squat: 3 x 8 at 15 kg", bars).startswith(
        "write a lighter movement that needs no bar, or take a bar of at most 15 kg"
    )


def test_a_lighter_bar_serves_where_it_is_there() -> None:
    assert said("back squat: 3 x 8 at 15 kg", GYM.replace("20 kg: 2\n", "20 kg: 2\n    15 kg: 1\n")) == []


@pytest.mark.parametrize("typed", ["bars", "racks"])
def test_what_is_not_there_at_all_is_no_question_of_loads(typed: str) -> None:
    bare = "gym:\n  racks: 1\n" if typed == "racks" else "gym:\n  bars:\n    20 kg: 0\n"
    assert said("back squat: 3 x 8 at 33 kg", bare) == []
    assert said("back squat: 3 x 8 at bar + 33 kg a side", "gym:\n  racks: 1\n") == []


def test_an_allow_under_the_line_silences_it() -> None:
    line = "back squat: 3 x 8 at 73 kg\n        allow:\n          load-not-loadable: small discs are on order"
    assert said(line) == []


SCHOOL = """\
gym:
  unit: lb
  bars:
    45 lb: 2
  plates per rack:
    45 lb: 2 pairs
    35 lb: 1 pair
    10 lb: 1 pair
    5 lb: 1 pair
    2.5 lb: 1 pair
  dumbbells:
    10-50 lb by 5: 1 pair
squad:
  athletes:
"""
BENCH = "flat barbell bench press"
PERCENTS = f"{BENCH}: 3 x 8 at 65%\n{BENCH}: 3 x 6 at 72.5%"


def school(**pounds: float) -> str:
    """A squad and its room, each athlete with a max of the bench press in lb."""
    people = "".join(
        f"    - name: {name}\n      maxes:\n        {BENCH}: {best:g} lb tested 2027-09-20\n"
        for name, best in pounds.items()
    )
    return f"starts: 2027-10-04\n{SCHOOL}{people}"


def test_a_share_of_a_small_max_is_less_than_the_bar_once_for_all_lines_and_athletes() -> None:
    found = said(PERCENTS, school(Emi=60, Bo=185, Cy=50))
    (finding,) = [one for one in found if one.rule == "below-the-empty-bar"]
    assert finding.level is Level.error
    assert finding.message == (
        f"{BENCH}: 39 lb, 32.5 lb, 43.5 lb, 36.25 lb for Emi and Cy, less than the empty 45 lb bar"
    )
    assert [one.text for one in finding.seen][:2] == ["Emi: 39 lb, 43.5 lb", "Cy: 32.5 lb, 36.25 lb"]
    assert finding.change.startswith(
        "write `instead:` under the line, below it `Cy:`, and below that `- flat dumbbell bench press: 3 x 8"
    )
    assert finding.change.endswith("take a bar of at most 32.5 lb and list it under `bars:` in the gym file")


def test_a_rounding_that_is_felt_is_told_once_for_the_movement() -> None:
    (finding,) = said(PERCENTS, school(Ann=95, Bo=185))
    assert finding.level is Level.advice
    assert finding.message == f"{BENCH}: what is here does not make the loads of Ann"
    assert finding.seen[0].text == (
        "Ann: 61.75 lb asked, 60 lb: 45 lb bar, 5 + 2.5 a side (1.75 lb or 2.8 % less)"
    )
    assert "`load:` under the line and below it `Ann: 60 lb`" in finding.change


@pytest.mark.parametrize(("best", "how"), [(600, "more than anything here"), (10, "less than the empty")])
def test_what_is_out_of_reach_for_an_athlete_is_an_error(best: float, how: str) -> None:
    (finding,) = said(f"{BENCH}: 3 x 8 at 65%", school(Cy=best))
    assert finding.level is Level.error
    assert f"for Cy, {how}" in finding.message


def test_a_range_of_which_one_load_is_there_is_loadable() -> None:
    """An estimated max is a range: 72 % of it is 43.7 to 46.3 lb, and the bar weighs 45."""
    top = school(Cy=60).replace("60 lb tested 2027-09-20", "from 54 lb x 5 on 2027-09-20")
    assert said(f"{BENCH}: 3 x 8 at 72%", top) == []


def test_others_read_neither_the_name_nor_the_load() -> None:
    one = checked(week(f"Monday\n{PERCENTS}", top=school(Emi=60, Ann=95, Cy=600)))
    lines = [line for line in short(one).splitlines() if any(rule in line for rule in LOADS)]
    assert len(lines) == 3
    for line in lines:
        assert "an athlete" in line
        assert not any(name in line for name in ("Emi", "Ann", "Cy"))
        assert "39" not in line
