"""Limits on the load: broken, a question, not known or inside; and who reads of them. All are invented."""

import pytest

from setwright.findings import Finding, Level
from setwright.report.machine import json_text
from tests.rules.plans import checked

GYM = """\
gym:
  bars:
    20 kg: 1
  plates per rack:
    10 kg: 1 pair
    1.25 kg: 1 pair
  dumbbells:
    4-32 kg by 2: 1 pair
  cables:
    - name: tower
      number: 2
      stack: 5-90 kg by 5
"""
AT_THE_PIN = " at the pin; the gym file does not say the pulley"


def plan(line: str, limit: str = "20 kg", more: str = "", top: str = "") -> str:
    limits = f"      limits:\n        - load at most: {limit}\n          until: cleared\n"
    athlete = f"    - name: Isla\n{more}{limits}"
    head = "plan: A\nunit: kg\nsides: each\nstarts: 2027-02-01\ndose order: sets x reps\n"
    return (
        f"{head}{GYM}squad:\n{top}  athletes:\n{athlete}    - name: Rory\n"
        f"sessions:\n  - day: Monday\n    work:\n      - {line}\n"
    )


def found(line: str, limit: str = "20 kg", more: str = "", top: str = "") -> Finding | None:
    every = [f for f in checked(plan(line, limit, more, top)).findings if f.rule == "limit-broken"]
    return every[0] if every else None


@pytest.mark.parametrize(
    ("line", "limit"),
    [
        ("barbell row: 3 x 8 at 20 kg", "20 kg"),
        ("barbell row: 3 x 8 at 44 lb", "20 kg"),  # 19.96 kg, and the bar of 20 kg is put on
        ("barbell row: 3 x 8 at 22 kg\n        load:\n          Isla: 20 kg", "20 kg"),
        (
            "barbell row: 3 x 8 at 22 kg\n        instead:\n          Isla:\n            - dead bug: 3 x 8",
            "20 kg",
        ),
        ("barbell row: 3 x 8 at 22 kg\n        not for: [Isla]", "20 kg"),
        ("flat dumbbell bench press: 3 x 8 at 10 kg", "20 kg"),
        ("dip: 3 x 8 at bodyweight", "80 kg"),
        ("front plank: 3 x 30 s", "20 kg"),
        ("barbell row: 3 x 8 at 40 kg", "60%"),  # of 70 kg
        ("hanging leg raise: 3 x 8", "20 kg"),  # no published share of the body
        ("hanging leg raise: 3 x 8 at bodyweight + 5 kg", "20 kg"),
    ],
)
def test_inside_the_limit_nothing_is_said(line: str, limit: str) -> None:
    more = "      body mass: 80 kg\n      maxes:\n        barbell row: 70 kg tested 2027-01-04\n"
    assert found(line, limit, more) is None


@pytest.mark.parametrize(
    ("line", "limit", "asked"),
    [
        ("barbell row: 3 x 8 at 22.5 kg", "20 kg", "22.5 kg"),
        ("barbell row: 3 x 8 at 50 lb", "20 kg", "50 lb"),
        ("barbell row: 3 x 8 at 50%", "20 kg", "40 kg"),  # 35 kg, and what is put on for it
        ("barbell row: 3 x 8 at 19-21 kg", "20 kg", "21 kg"),
        ("barbell row: sets of 8, 6 at 20, 22.5 kg", "20 kg", "22.5 kg"),
        ("barbell row: 3 x 8 at 20 kg\n        warm-up: 5 at 25 kg", "20 kg", "25 kg"),
        ("barbell row: 3 x 8 at 20 kg, drop to 21 kg for max", "20 kg", "21 kg"),
        ("barbell row: 3 x 8 at 10 kg\n        load:\n          Isla: 40 kg", "20 kg", "40 kg"),
        ("barbell row: 3 x 8 at 42.5 kg", "60%", "42.5 kg"),
        ("flat dumbbell bench press: 3 x 8 at 22 kg", "20 kg", "22 kg"),
        ("dip: 3 x 8 at bodyweight + 25 kg", "20 kg", "25 kg"),
    ],
)
def test_more_than_the_limit_is_broken(line: str, limit: str, asked: str) -> None:
    one = found(line, limit, "      maxes:\n        barbell row: 70 kg tested 2027-01-04\n")
    assert one is not None
    assert one.level is Level.error
    at_most = limit.replace("%", " %")
    assert one.message.startswith(f"Isla: the written limit, load at most {at_most}, is broken")
    assert one.seen[0].text.endswith(f": {asked}")
    assert "`load:` under" in one.change
    assert "below it `Isla:`" in one.change


def test_what_the_rounding_makes_more_is_broken_too() -> None:
    one = found("barbell row: 3 x 8 at 22 kg", "22 kg", top="  rounding: up\n")
    assert one is not None
    assert one.seen[0].text == "Monday, barbell row: 22.5 kg"
    assert found("barbell row: 3 x 8 at 22 kg", "22 kg", top="  rounding: down\n") is None


@pytest.mark.parametrize(
    ("line", "asked"),
    [
        ("flat dumbbell bench press: 3 x 8 at 12 kg", "2 x 12 kg"),
        ("level cable crossover: 3 x 12 at 15 kg", f"2 x 15 kg{AT_THE_PIN}"),
    ],
)
def test_two_hands_are_a_question_unless_the_limit_is_for_one_side(line: str, asked: str) -> None:
    one = found(line)
    assert one is not None
    assert one.level is Level.advice
    assert "is just reached" in one.message
    assert one.seen[0].text.endswith(f": {asked}")
    assert "which is meant, only whoever set it knows" in one.why
    assert found(line, "20 kg\n          side: left") is None


@pytest.mark.parametrize(
    ("line", "more", "asked"),
    [
        ("barbell row: 3 x 8 at 2 RIR", "", ""),
        ("barbell row: 3 x 8 at own choice", "", ": a load in words, no number"),
        ("barbell row: 3 x 8 at 60%", "", ": bent-over barbell row: no tested max on file"),
        ("dip: 3 x 8 at bodyweight", "      body mass: 80 kg\n", ": 76.8 kg with the body"),
        ("dip: 3 x 8", "      body mass: 80 kg\n", ": 76.8 kg with the body"),
        ("dip: 3 x 8", "", ": the body mass is not written"),
    ],
)
def test_an_open_load_and_the_body_itself_are_not_known(line: str, more: str, asked: str) -> None:
    one = found(line, more=more)
    assert one is not None
    assert one.level is Level.advice
    assert "may be broken" in one.message
    assert one.seen[0].text == f"Monday, {line.split(':', maxsplit=1)[0]}{asked}"


def test_a_percent_of_a_max_that_is_not_on_file_and_a_limit_without_a_unit_are_not_known() -> None:
    for limit, head in (("60%", plan), ("20", lambda *a: plan(*a).replace("unit: kg\n", "", 1))):
        every = checked(head("barbell row: 3 x 8 at 10 kg", limit)).findings
        assert ["may be broken" in f.message for f in every if f.rule == "limit-broken"] == [True]


def test_a_load_for_a_whole_complex_is_held_too() -> None:
    members = "          - barbell row: 6\n          - barbell front squat: 6\n"
    one = found(f"complex:\n{members}        rounds: 3\n        load: 30 kg")
    assert one is not None
    assert one.level is Level.error
    assert [seen.text for seen in one.seen] == [
        "Monday, barbell row: 30 kg",
        "Monday, barbell front squat: 30 kg",
    ]


def test_others_read_neither_the_name_nor_the_limit_nor_the_load() -> None:
    machine = json_text([checked(plan("barbell row: 3 x 8 at 22.5 kg"))])
    assert "a limit of an athlete stands against barbell row" in machine
    for word in ("Isla", "at most", "20 kg", '22.5 kg"'):
        assert word not in machine.replace("barbell row: 3 x 8 at 22.5 kg", "")


TWO_TO_ONE = GYM + "      pulley: 2 to 1\n"


@pytest.mark.parametrize(
    ("line", "gym", "asked"),
    [
        ("one-arm cable crossover: 3 x 12 at 30 kg", TWO_TO_ONE, None),  # 15 kg at the handle
        ("one-arm cable crossover: 3 x 12 at 45 kg", TWO_TO_ONE, "22.5 kg at the handle, pin 45 kg"),
        ("level cable crossover: 3 x 12 at 15 kg", TWO_TO_ONE, None),  # twice 7.5 kg
        ("level cable crossover: 3 x 12 at 30 kg", TWO_TO_ONE, "2 x 15 kg at the handle, pin 30 kg"),
        ("one-arm cable crossover: 3 x 12 at 30 kg", TWO_TO_ONE.replace("2 to 1", "1 to 1"), "30 kg"),
        (
            "one-arm cable crossover: 3 x 12 at 30 kg",
            GYM,
            f"30 kg{AT_THE_PIN}",
        ),
        (
            "one-arm cable crossover: 3 x 12 at 30 kg",
            f"{TWO_TO_ONE}    - name: old one\n      stack: 5-50 kg by 5\n      pulley: 1 to 1\n",
            "30 kg",
        ),
    ],
)
def test_a_pin_is_held_against_the_limit_by_what_it_pulls_at_the_handle(
    line: str, gym: str, asked: str | None
) -> None:
    """By hand: with a pulley of 2 to 1 the handle pulls half of the pin."""
    every = [f for f in checked(plan(line).replace(GYM, gym)).findings if f.rule == "limit-broken"]
    assert [f.seen[0].text.partition(": ")[2] for f in every] == ([asked] if asked else [])
