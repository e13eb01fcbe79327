"""The week overview from whole plans."""

import pytest

from setwright.library.table import library
from setwright.sheets.floors import floors_of
from setwright.sheets.overview import week_sheet
from setwright.sheets.overview_room import FEWEST_CHANGES, MOST_CHANGES, fitted
from setwright.sheets.view import WeekSheet
from tests.pages.plans import CIRCUIT, NO_CHEST, SIX_DAYS, check, example


def overview(text: str | None = None, *, of: str = "week-flawed.yaml") -> WeekSheet:
    checked = check(text) if text else example(of)
    assert checked.week is not None
    assert checked.coverage is not None
    floors = floors_of(checked.week, checked.table or library())
    return week_sheet(checked, checked.week, checked.coverage, "version abc", floors)


def test_head_and_days() -> None:
    sheet = overview(of="week-good.yaml")
    assert sheet.title == "Autumn block, week 3"
    assert sheet.subtitle == "from Monday 15 November 2027 · 6 people · Skerrow Bay boathouse gym"
    ((monday, *_),) = sheet.days
    assert monday.title == "Monday: Flat press and row"
    assert monday.minutes.endswith(" of 70 min")
    assert monday.limit == 100 or monday.used == 100
    press, crossover, pull, *_ = monday.entries
    assert (press.name, press.dose, press.line) == ("flat barbell bench press", "4 × 6–8", "sternal")
    assert press.group == crossover.group == 0
    assert (pull.line, pull.group) == (None, None)


def test_the_overview_of_a_week_of_a_block() -> None:
    checked = example("block.yaml").only(4)
    (one,) = checked.weeks
    sheet = week_sheet(checked, one.week, one.coverage, "version abc", {})
    assert sheet.title == "Winter block, week 4 of 4"
    assert sheet.subtitle.startswith("from Monday 20 December 2027 · half the sets · 6 people")
    assert sheet.days[0][0].entries[0].dose == "2 × 8–10"


def test_more_than_three_days_go_on_in_a_further_row() -> None:
    assert [[day.title.split(":")[0] for day in row] for row in overview(SIX_DAYS).days] == [
        ["Monday", "Tuesday", "Wednesday"],
        ["Thursday", "Friday", "Saturday"],
    ]


def test_a_gap_has_a_frame_a_number_and_its_cure() -> None:
    sheet = overview()
    framed = [cell for row in sheet.matrix for cell in (row.across, row.heaviest, row.short) if cell.gap]
    assert framed
    assert all("(" in cell.text for cell in framed)
    assert sheet.remarks_title == "Two gaps"
    assert sheet.remarks[0].title.startswith("1. ")
    assert "level cable crossover" in sheet.remarks[0].text


def test_what_is_proposed_is_drawn_beside_the_lead_lifts() -> None:
    pictures = overview().pictures
    assert pictures[0].key == "incline-30-barbell-bench-press"
    assert any(picture.caption == "add: level cable crossover" for picture in pictures)
    assert len(pictures) <= 4


def test_a_week_without_gaps_shows_its_crossing_moves() -> None:
    sheet = overview(of="week-good.yaml")
    assert sheet.remarks_title == "No gaps"
    assert [picture.caption for picture in sheet.pictures[-1:]] == ["level cable crossover"]


def test_a_week_without_chest_says_so() -> None:
    sheet = overview(NO_CHEST)
    assert (sheet.matrix, sheet.pictures) == ((), ())
    assert sheet.counts.startswith("Chest: not trained this week. Pull 3 sets, push 0 sets; 1 move counted")
    little = overview(NO_CHEST + "      - dip: 3 x 8 at 2 RIR\n")
    assert little.matrix == ()
    assert little.counts.startswith("Chest: 3 hard sets, too few to say what is left out. Pull 3 sets")


def test_accepted_gaps_are_named_with_their_reason() -> None:
    allowed = SIX_DAYS + "allow:\n  line-never-followed: no dip bars here\n"
    sheet = overview(allowed)
    assert any(remark.text == "Accepted: “no dip bars here”." for remark in sheet.remarks)
    assert sheet.remarks_title.endswith("accepted")


@pytest.mark.parametrize(("people", "words"), [(1, "1 person"), (28, "28 people")])
def test_people_without_a_squad(people: int, words: str) -> None:
    assert overview(f"people: {people}\n{NO_CHEST}").subtitle == words


def test_a_session_without_minutes_has_no_limit() -> None:
    ((day,),) = overview(NO_CHEST).days
    assert day.limit is None
    assert day.minutes.startswith("about ")


def test_a_session_that_stands_alone_is_spread_with_its_groups_whole() -> None:
    (columns,) = overview(CIRCUIT).days
    assert [[entry.name for entry in day.entries] for day in columns] == [
        ["dumbbell floor press", "bent-over barbell row", "step-up", "push-up"],
        ["push-up", "goblet squat", "front plank", "front plank"],
        ["side plank"],
    ]
    assert [day.continued for day in columns] == [False, True, True]


CHANGES = tuple(f"Monday: {n} bench pull: {n} × 8 (was 3 × 8)" for n in range(1, 31))


def test_a_week_with_room_keeps_its_pictures_and_a_list_that_fits() -> None:
    sheet = overview(of="week-good.yaml")
    assert fitted(sheet, (), letterhead=False) == ((), sheet.pictures)
    told, pictures = fitted(sheet, CHANGES, letterhead=False)
    assert pictures == sheet.pictures
    assert FEWEST_CHANGES <= len(told) < MOST_CHANGES
    assert told[-1] == f"and {len(CHANGES) - len(told) + 1} more"


def test_without_room_the_pictures_go_and_the_list_is_long() -> None:
    assert fitted(overview(), (), letterhead=True)[1] == ()
    told, pictures = fitted(overview(), CHANGES, letterhead=False)
    assert FEWEST_CHANGES < len(told) <= MOST_CHANGES
    assert pictures == ()
    assert fitted(overview(SIX_DAYS), (), letterhead=False) == ((), ())
    assert FEWEST_CHANGES <= len(fitted(overview(SIX_DAYS), CHANGES, letterhead=False)[0]) < MOST_CHANGES


def test_a_list_without_pictures_is_as_long_as_any() -> None:
    sheet = overview(NO_CHEST)
    assert fitted(sheet, CHANGES[:2], letterhead=False) == (CHANGES[:2], ())
