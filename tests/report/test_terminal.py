"""The screen of a check: 80 columns, ASCII, safe, and the same without colour."""

import re
from dataclasses import replace

import pytest

from setwright.checked import Checked
from setwright.places import Source
from setwright.report.terminal import text
from tests.rules.plans import HEAD, checked, example, week

FLAT = week(
    "Monday\nflat barbell bench press: 6 x 6 at 2 RIR\nbench pull: 4 x 8 at 2 RIR", top="focus: [chest]\n"
)


def screen(one: Checked) -> str:
    return text(one, colour=False)


@pytest.mark.parametrize("one", [example("week-good.yaml"), example("week-flawed.yaml"), checked(FLAT)])
def test_a_screen_is_ascii_and_80_columns_wide(one: Checked) -> None:
    shown = screen(one)
    assert shown.isascii()
    assert max(map(len, shown.splitlines())) <= 80
    assert shown.endswith("\n")


def test_the_flawed_week() -> None:
    shown = screen(example("week-flawed.yaml"))
    assert "Autumn block, week 3, first draft: 2 sessions, " in shown
    assert "of 135 minutes, 6 people" in shown
    assert "Aim: chest focus (focus: [chest])" in shown
    assert "flat bench press [1]" in shown
    assert shown.rstrip().endswith("2 gaps")
    head = shown.index("gap [1]: Monday's flat barbell bench press is never finished past the midline")
    quoted = shown[head:].splitlines()[1:5]
    assert quoted[0].startswith("  --> week-flawed.yaml:")
    assert "^" * len("flat barbell bench press") in quoted[3]
    assert quoted[2].index("flat barbell") == quoted[3].index("^")


def test_a_part_that_is_never_loaded_across_is_the_one_word_in_capitals() -> None:
    shown = screen(checked(week("Monday\nflat barbell bench press: 5 x 6 at 2 RIR", top="focus: [chest]\n")))
    assert "NEVER [" in shown


def test_colour_adds_nothing_but_colour() -> None:
    one = example("week-flawed.yaml")
    coloured = text(one, colour=True)
    assert "\033[33mgap\033[0m" in coloured
    assert re.sub(r"\033\[\d+m", "", coloured) == screen(one)


def test_what_is_taken_for_granted_is_said_in_one_line() -> None:
    assert "No gym and no squad written" in screen(checked(FLAT))
    assert "No gym" not in screen(example("week-good.yaml"))


def test_a_week_without_chest_has_one_line_and_no_note() -> None:
    shown = screen(checked(week("Monday\nback squat: 3 x 8 at 2 RIR")))
    assert "chest: not trained this week" in shown
    assert "Mechanical figures" not in shown
    assert "1 session, about" in shown


def test_a_week_with_a_little_chest_does_not_say_that_it_is_not_trained() -> None:
    shown = screen(checked(week("Monday\ndip: 3 x 8 at 2 RIR")))
    assert "chest: 3 hard sets, too few to say what is left out" in shown
    assert "not trained" not in shown


def test_what_was_allowed_is_told_with_its_reason() -> None:
    shown = screen(
        checked(FLAT + "allow:\n  heavy-line-not-finished: shared room\n  no-work-across-the-midline: too\n")
    )
    assert "allowed (" in shown
    assert "heavy-line-not-finished: shared room" in " ".join(shown.split())


def test_a_plan_with_errors_waits_to_be_judged() -> None:
    assert "Until the errors below are mended" in screen(checked(week("Monday\npush-up: a few")))
    assert "Until the errors" not in screen(checked(FLAT))


def test_a_plan_that_can_not_be_read_at_all() -> None:
    shown = screen(checked("- just\n- a list\n"))
    assert "nothing of this plan could be read" in shown
    assert "error" in shown


def test_people_and_efforts_that_are_not_written() -> None:
    shown = screen(
        checked(f"{HEAD}people: 28\nsessions:\n  - day: Monday\n    work:\n      - push-up: 3 x 10\n")
    )
    assert "28 people" in shown
    assert "3 hard sets without a written effort" in shown


def test_control_characters_of_a_plan_never_reach_the_terminal() -> None:
    one = example("week-flawed.yaml")
    source = one.sources["week-flawed.yaml"]
    hostile = Source(source.file, source.text.replace("at 2 RIR", "\033[31m\x07at 2 RIR"))
    shown = screen(one._replace(sources={source.file: hostile}))
    assert "\033" not in shown
    assert "?[31m?at" in shown


def test_a_finding_without_its_text_still_names_its_place() -> None:
    shown = screen(example("week-flawed.yaml")._replace(sources={}))
    assert "--> week-flawed.yaml:" in shown
    assert "^" not in shown


def test_a_long_line_shows_the_part_that_is_meant() -> None:
    one = example("week-flawed.yaml")
    source = one.sources["week-flawed.yaml"]
    note = "  # and a very long remark that runs far beyond the right edge of every screen there is"
    long_lines = Source(source.file, source.text.replace("rest 2:30\n", f"rest 2:30{note}\n"))
    shown = screen(one._replace(sources={source.file: long_lines}))
    assert max(map(len, shown.splitlines())) <= 80
    finding = one.findings[0]
    right = replace(finding.place, column=91, end_column=99)
    far = one._replace(findings=(replace(finding, place=right),), sources={source.file: long_lines})
    quoted = [line for line in screen(far).splitlines() if "^" in line]
    assert quoted[0].count("^") == 8
    assert len(quoted[0]) <= 80


def test_a_span_over_several_lines_is_shown_by_its_first() -> None:
    one = example("week-flawed.yaml")
    place = replace(one.findings[0].place, end_line=one.findings[0].place.line + 2, end_column=1)
    shown = screen(one._replace(findings=(replace(one.findings[0], place=place),)))
    assert "^^^^^^" in shown
