"""Wall boards from whole plans."""

from collections.abc import Callable

import pytest

from setwright.floor.room import letter
from setwright.floor.today import Change, today
from setwright.library.table import library
from setwright.sheets import WrongPaper, asked, sheet_html
from setwright.sheets.board import Board, boards, shared_groups
from setwright.sheets.clock_plan import of_the_day
from setwright.sheets.floors import floors_of
from setwright.sheets.station import station_cards
from tests.pages.plans import CIRCUIT, CLUB, EVENING, LONG, check, example


def walls(text: str) -> tuple[Board, ...]:
    checked = check(text)
    assert checked.week is not None
    table = checked.table or library()
    return boards(checked.week, "version abc", table, floors_of(checked.week, table))


NO_ROOM = CLUB[: CLUB.index("gym:\n")] + CLUB[CLUB.index("sessions:\n") :]
"""The same club, and nothing known of its gym."""


def rows(text: str) -> list[tuple[str, str]]:
    return [(row.block, row.groups) for row in walls(text)[0].rows]


def test_a_board_is_the_clock_plan_of_one_where_the_room_is_not_known_and_says_so() -> None:
    (one,) = walls(NO_ROOM)
    assert (one.title, one.ends, one.on_the_clock) == ("Monday: Press and circuit", "ends 19:22", True)
    assert [row.time for row in one.rows] == ["18:30", "18:38", "18:55", "19:05"]
    assert one.footer == "Old hall club · Club evening · Mon · version abc"
    assert one.notes[-1] == ("Groups", "No groups and turns: the plan names no gym.")
    assert one.floor is None
    squad = CLUB[CLUB.index("squad:\n") : CLUB.index("gym:\n")]
    (nobody,) = walls(CLUB.replace(squad, "").replace("            for: [red]\n", ""))
    assert nobody.notes[-1] == ("Groups", "No groups and turns: the plan says nobody who comes.")


def test_in_a_room_it_is_the_timetable_of_the_floor_in_letters() -> None:
    (one,) = walls(CLUB)
    assert one.ends == "ends 19:56"
    assert [(row.time, row.block, row.groups.replace("\xa0", " ")) for row in one.rows] == [
        ("18:30", "warm-up", ""),
        ("18:38", "1 flat press + low-to-high crossover", "18:38 A · 19:02 B"),
        ("18:38", "2 barbell back squat", "18:38 B · 19:02 A · red"),
        ("19:22", "3 circuit of 4", "19:22 A · 19:39 B · start: blue 1, red 3"),
    ]
    assert one.floor is not None
    assert "Groups" not in [label for label, _ in one.notes]


def test_board_cards_and_floor_say_the_same() -> None:
    """Every turn of the timetable stands on the board with its time, in the picture and on the cards."""
    week, table = check(EVENING).week, library()
    assert week is not None
    floor, floors = today(week.sessions[0], week, table, Change()).floor, floors_of(week, table)
    (one,) = boards(week, "version abc", table, floors)
    told = {row.block.partition(" ")[0]: row.groups for row in one.rows[1:]}
    cards = station_cards(week, "version abc", table, floors)
    assert one.floor is not None
    for stay in floor.stays:
        begins, ends = (of_the_day("18:30", (floor.warm_up_s + at) / 60) for at in (stay.start_s, stay.end_s))
        turn = next(one for one in told[str(stay.block.number)].split(" · ") if one.startswith(begins))
        assert letter(stay.group) in turn.split("\xa0")
        assert stay.block.number in [bar.number for bar in one.floor.groups[stay.group]]
        if stay.block.at_once:
            assert all(f"{begins}\xa0to\xa0{ends}" in card.who for card in cards)
    assert one.ends == f"ends {of_the_day('18:30', (floor.warm_up_s + floor.finish_s) / 60)}"


def test_groups_that_are_all_together_need_no_letters_and_no_picture() -> None:
    (one,) = walls(EVENING.replace("benches: 3", "benches: 6").replace("number: 2", "number: 6"))
    assert one.floor is not None
    only = EVENING[: EVENING.index("      - pull-up")].replace("benches: 3", "benches: 6")
    (together,) = walls(only)
    assert together.floor is None
    assert [row.groups for row in together.rows] == ["", "", ""]
    assert [row.block for row in together.rows][1:] == ["barbell back squat", "flat bench press"]


def test_groups_are_named_where_not_everyone_does_everything() -> None:
    assert rows(NO_ROOM) == [
        ("warm-up", ""),
        ("flat press + low-to-high crossover", ""),
        ("barbell back squat", "red"),
        ("circuit of 4", "start: blue 1, red 3"),
    ]


def test_a_group_with_another_movement_is_told_which() -> None:
    instead = "            note: elbows"
    plan = NO_ROOM.replace(instead, f"            instead:\n              blue: push-up\n{instead}")
    for load in ("Tam Rae: 75 kg", "Isla Marrack: 52.5 kg"):
        plan = plan.replace(f"              {load}\n", "")
    assert rows(plan)[1] == (
        "flat press + low-to-high crossover",
        "blue: push-up + low-to-high crossover · red",
    )


def test_what_is_for_one_person_by_name_is_on_their_own_sheet_only() -> None:
    whole = rows(NO_ROOM.replace("for: [red]", "for: [Tam Rae]"))
    assert whole[2] == ("your own sheet", "")
    note = "            note: one foot"
    member = rows(NO_ROOM.replace(note, f"            for: [Tam Rae]\n{note}"))
    assert member[3][0] == "circuit of 3"
    nobody = NO_ROOM.replace("          - push-up\n", "          - push-up:\n            for: [Tam Rae]\n")
    first = nobody[: nobody.index("          - low-to-high cable crossover:\n            note")]
    only = first + nobody[nobody.index("        rounds: 3") :]
    assert rows(only)[3] == ("your own sheet", "")


def test_nobody_by_name_is_on_the_wall() -> None:
    page = sheet_html(check(CLUB), "board", "a4").split("</head>")[1]
    assert not [name for name in ("Isla", "Tam", "Struan", "Wren", "Gone", "modified") if name in page]


def test_a_group_of_one_or_of_a_name_says_something_about_one_person() -> None:
    plan = CLUB.replace("    blue:", "    tam rae: [Isla Marrack, Isla Rae]\n    late: [Tam Rae]\n    blue:")
    week = check(plan).week
    assert week is not None
    assert shared_groups(week) == ("blue", "red")
    assert shared_groups(week.model_copy(update={"squad": None})) == ()


def test_minutes_from_the_start_and_many_moves_in_turn() -> None:
    (one,) = walls(CIRCUIT)
    assert (one.title, one.ends, one.on_the_clock) == ("Station crew circuit", "40 min in all", False)
    assert [row.block for row in one.rows] == ["circuit of 4", "circuit of 3", "front plank", "side plank"]
    assert [row.time for row in one.rows] == ["0 min", "23 min", "36 min", "38 min"]
    assert rows(LONG)[3][0] == "leaning dip + pull-up + front plank"


def test_what_to_do_when_interrupted_and_the_safety_line_hang_there_too() -> None:
    (one,) = walls(CIRCUIT)
    assert [label for label, _ in one.notes] == [
        "Stop and tell the coach",
        "Interrupted?",
        "Groups",
    ]


def test_sessions_at_home_and_without_work_hang_nowhere() -> None:
    assert walls(CLUB.replace("place: old hall", "place: home")) == ()


def test_a3_is_for_the_board_alone() -> None:
    assert asked("board", "a3") == (("board", "a3"),)
    assert {paper for kind, paper in asked("all", "a3") if kind != "board"} == {"a4"}
    with pytest.raises(WrongPaper, match="a session sheet comes on a4 or letter, not on a3"):
        asked("session", "a3")


def test_the_letters_say_how_far_they_are_meant_for() -> None:
    # 25 mm of letter for every 3 m.
    checked = example("week-good.yaml")
    for paper, distance in (("a4", "from 1.4 m"), ("a3", "from 2.4 m, groups from 1.6 m")):
        page = sheet_html(checked, "board", paper)  # type: ignore[arg-type]  # the two papers
        assert distance.replace(" ", "\\20 ").replace(".", "\\2e ").replace(",", "\\2c ") in page


def test_boards_are_those_that_were_looked_at(golden: Callable[[str, str], None]) -> None:
    golden("board-club-a3.html", sheet_html(check(CLUB), "board", "a3"))
