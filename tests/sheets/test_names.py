"""What the files of a print are called: they sort, nobody's file is lost, and no name leads elsewhere."""

import re

from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.checked import Checked
from setwright.places import Source
from setwright.sheets import sheet_name
from setwright.sheets.editions import Edition, all_sheets
from setwright.sheets.html import pages_html
from setwright.sheets.kinds import KINDS
from tests.pages.plans import AWKWARD, NO_CHEST, check

OFF_WEEK = check(NO_CHEST)
EDITION = Edition("0a1b2c")
TWO_OF_ONE_NAME = """\
plan: Two alike
unit: kg
dose order: sets x reps
squad:
  athletes: [Ailsa, Ailsa Muir, ailsa, Rory]
sessions:
  - day: Monday
    work:
      - goblet squat: 3 x 10
  - day: Thursday
    work:
      - goblet squat: 3 x 10
"""


def named(checked: Checked, name: str) -> Checked:
    (one,) = checked.weeks
    return checked._replace(weeks=(one._replace(week=one.week.model_copy(update={"name": name})),))


def apart(plan: str) -> list[str]:
    checked = check(plan)
    return [name for name, _ in pages_html(checked, all_sheets(checked), "session", "a4", EDITION)]


@given(st.text(min_size=1))
@settings(max_examples=200, deadline=None)
def test_a_file_name_never_leaves_its_folder(name: str) -> None:
    file = sheet_name(named(OFF_WEEK, name), "session", "a4")
    assert file.endswith("-2-session-a4.html")
    assert re.fullmatch(r"[\w-]+\.html", file)
    assert not file.startswith("-")
    assert len(file.encode()) <= 200


def test_the_longest_names_leave_room_for_the_file_that_is_written_beside() -> None:
    long = TWO_OF_ONE_NAME.replace("Two alike", "𝔞" * 99).replace("Rory", "𝔯" * 99).replace("Monday", "Mon")
    assert all(len(name.encode()) <= 230 for name in apart(long))


def test_file_names_sort_in_print_order() -> None:
    names = [sheet_name(OFF_WEEK, kind, "a4") for kind in KINDS]
    assert names == sorted(names)
    assert names[:2] == ["off-week-1-week-a4.html", "off-week-2-session-a4.html"]
    assert sheet_name(named(OFF_WEEK, "../../etc"), "week", "letter") == "etc-1-week-letter.html"
    assert sheet_name(named(OFF_WEEK, "///"), "week", "letter") == "plan-1-week-letter.html"


def test_one_file_a_sheet_sorts_by_session_and_then_as_in_the_squad() -> None:
    names = apart(TWO_OF_ONE_NAME)
    assert names == sorted(names)
    assert names[:5] == [
        "two-alike-2-session-01-monday-ailsa-a-a4.html",
        "two-alike-2-session-02-monday-ailsa-muir-a4.html",
        "two-alike-2-session-03-monday-ailsa-b-a4.html",
        "two-alike-2-session-04-monday-rory-a4.html",
        "two-alike-2-session-05-thursday-ailsa-a-a4.html",
    ]


def test_hostile_names_make_safe_files_and_a_sheet_of_their_own() -> None:
    names = apart(AWKWARD)
    assert len(set(names)) == len(names) == 10
    assert all(re.fullmatch(r"[\w-]+\.html", name) for name in names)
    assert "-03-monday-ليلى-بنت-الساحل-a4" in names[2]
    assert "-04-monday-ola-a4" in names[3]


def test_without_a_plan_there_is_still_a_name() -> None:
    unread = Checked("x.yaml", (), (), (), {"x.yaml": Source("x.yaml", "")}, complete=False)
    assert sheet_name(unread, "session", "a4") == "plan-2-session-a4.html"
