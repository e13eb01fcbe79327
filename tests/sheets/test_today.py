"""The sheets of a session cut on the day: what is written, what has changed, and who gets none."""

import datetime as dt
import json
import re
from pathlib import Path
from typing import Any

import pytest

from setwright.checked import Checked
from setwright.floor.revised import session_of_today
from setwright.floor.today import Change, Today, today
from setwright.sheets import Order, asked, print_sheets
from setwright.sheets.today import print_today
from tests.pages.plans import CLUB, EVENING, check

DAY = dt.date(2027, 11, 18)
FILE = "thursday-evening-{}-a4.html"


def cut(text: str = EVENING, **change: Any) -> tuple[Checked, Today]:
    checked = check(text)
    assert checked.week is not None
    assert checked.table is not None
    return checked, today(checked.week.sessions[0], checked.week, checked.table, Change(**change))


def printed(out: Path, text: str = EVENING, **change: Any) -> list[str]:
    checked, done = cut(text, **change)
    return [line.removeprefix(f"{out}/") for line in print_today(checked, done, out, "a4", DAY)]


def page(out: Path, kind: str, stem: str = FILE) -> str:
    return (out / stem.format(kind)).read_text(encoding="utf-8")


def body(out: Path, kind: str, stem: str = FILE) -> str:
    """What is read of a page, without tags."""
    html = page(out, kind, stem).split("</head>")[1]
    return " ".join(re.sub(r"<[^>]+>", " ", html).replace("\xa0", " ").split())


def test_the_usual_files_are_written_and_what_has_no_sheet_is_said(tmp_path: Path) -> None:
    assert printed(tmp_path, minutes=30) == [
        "thursday-evening-1-week-a4.html  (week, a4)",
        "thursday-evening-2-session-a4.html  (session, a4)",
        "thursday-evening-3-rack-a4.html  (rack, a4)",
        "thursday-evening-4-board-a4.html  (board, a4)",
        "no station sheet: there is no circuit in it",
    ]


def test_what_is_left_out_is_on_no_sheet_and_the_overview_has_the_list(tmp_path: Path) -> None:
    printed(tmp_path, minutes=30, absent=("Tove",), without=("rack-2",))
    for kind in ("2-session", "4-board"):
        assert "pull-up" not in body(tmp_path, kind)
    told = body(tmp_path, "1-week")
    changes = told[told.index("Changed since version ") :]
    for said in (
        "Thursday: 30 minutes today",
        "Thursday: without rack-2",
        "Thursday: the only pull, rear-shoulder line goes with what is dropped",
        "Thursday: dropped 3 pull-up",
        "Thursday: no sheet for Tove any more",
    ):
        assert said in changes
    assert "today" not in body(tmp_path, "4-board")


def test_who_is_absent_has_no_sheet_and_no_column(tmp_path: Path) -> None:
    printed(tmp_path, absent=("tove",))
    for kind in ("2-session", "3-rack", "4-board"):
        assert "Tove" not in page(tmp_path, kind)
    assert "Sorrel" in page(tmp_path, "2-session")
    assert "Sorrel" in page(tmp_path, "3-rack")
    assert "Sorrel" not in page(tmp_path, "4-board")


def test_the_board_is_the_floor_that_was_printed(tmp_path: Path) -> None:
    checked, done = cut(minutes=45, without=("rack", "rack-2", "tower"))
    list(print_today(checked, done, tmp_path, "a4", DAY))
    ends = round((done.floor.warm_up_s + done.floor.finish_s) / 60)
    assert f"ends {18 + (30 + ends) // 60}:{(30 + ends) % 60:02}" in body(tmp_path, "4-board")


def test_the_mark_changes_and_the_last_print_is_known(tmp_path: Path) -> None:
    checked = check(EVENING)
    list(print_sheets(checked, Order(asked("all", "a4"), tmp_path), DAY))
    record = tmp_path / ".thursday-evening-last-print.json"
    before = json.loads(record.read_text(encoding="utf-8"))
    printed(tmp_path, minutes=30)
    after = json.loads(record.read_text(encoding="utf-8"))
    assert after["mark"] != before["mark"]
    assert before["mark"] in after["since"]
    assert after["mark"] in body(tmp_path, "1-week") or after["mark"] in page(tmp_path, "1-week")
    again = record.read_bytes()
    printed(tmp_path, minutes=30)
    assert record.read_bytes() == again
    list(print_sheets(checked, Order(asked("all", "a4"), tmp_path), DAY))
    back = json.loads(record.read_text(encoding="utf-8"))
    assert back["mark"] == before["mark"]
    assert any("added 3 pull-up" in change for change in back["changes"])


def test_a_pair_is_kept_or_left_out_whole(tmp_path: Path) -> None:
    _, done = cut(CLUB, minutes=40)
    kept = [len(getattr(entry, "items", (entry,))) for entry in session_of_today(done).work]
    whole = [len(getattr(entry, "items", (entry,))) for entry in done.floor.session.work]
    assert 0 < len(kept) < len(whole)
    assert all(size in whole for size in kept)
    assert kept[0] == 2
    lines = printed(tmp_path, CLUB, minutes=40)
    assert any("rack" in line for line in lines)
    assert "On your own" in body(tmp_path, "1-week", "club-evening-{}-a4.html")
    assert "On your own" not in body(tmp_path, "2-session", "club-evening-{}-a4.html")


@pytest.mark.parametrize("change", [{}, {"minutes": 90}])
def test_where_nothing_changes_only_what_was_asked_is_told(tmp_path: Path, change: dict[str, Any]) -> None:
    printed(tmp_path, **change)
    record = json.loads((tmp_path / ".thursday-evening-last-print.json").read_text(encoding="utf-8"))
    assert record["changes"] == (
        [] if not change else ["Thursday: 90 minutes today", "Only times, words or gaps."]
    )
