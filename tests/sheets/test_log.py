"""Log sheets from whole plans."""

from collections.abc import Callable

from setwright.library.table import library
from setwright.sheets import sheet_html
from setwright.sheets.log import DATES, LogSheet, log_sheets
from tests.pages.plans import CIRCUIT, CLUB, check, example


def logs(text: str) -> tuple[LogSheet, ...]:
    checked = check(text)
    assert checked.week is not None
    return log_sheets(checked.week, "version abc", checked.table or library())


def test_everyone_has_a_log_of_their_own_lines() -> None:
    told = logs(CLUB)
    assert [log.athlete for log in told] == [
        "Isla Marrack", "Tam Rae", "Isla Rae", "Struan Corr", "Wren Tolquhoun",
    ]  # fmt: skip
    isla, _, isla_rae, *_ = told
    numbers = [line.number for block in isla.blocks for line in block.lines]
    assert numbers == ["1a", "1b", "3a", "3b", "3c", "3d"]
    assert [line.load.large for line in isla.blocks[0].lines] == ["52.5 kg", ""]
    assert isla_rae.blocks[1].lines[0].name == "barbell back squat"
    assert (isla.title, isla.plan) == ("Monday: Press and circuit", "Club evening")
    assert isla.footer == "Old hall club · Club evening · Mon · version abc"


def test_the_date_of_the_week_is_printed_and_the_others_are_written() -> None:
    assert logs(CLUB)[0].dates == ("15 Nov", *[""] * (DATES - 1))
    (alone,) = logs(CIRCUIT)
    assert alone.dates == ("",) * DATES
    assert (alone.athlete, alone.title) == (None, "Station crew circuit")


def test_a_log_of_a_block_is_that_of_its_week() -> None:
    checked = example("block.yaml").only(4)
    assert checked.week is not None
    first = log_sheets(checked.week, "", checked.table or library())[0]
    assert first.plan == "Winter block, week 4 of 4"
    assert first.dates[0] == "20 Dec"
    assert first.blocks[0].lines[0].dose == "2 × 8–10, 3 left"


def test_people_of_one_name_have_logs_that_are_told_apart() -> None:
    told = logs(CLUB.replace("name: Isla Rae", "name: Isla Marrack").replace("Isla Rae", "Isla Marrack"))
    assert [log.athlete for log in told][:3] == ["Isla Marrack (a)", "Tam Rae", "Isla Marrack (b)"]


def test_what_is_done_at_home_is_ticked_on_the_home_sheet() -> None:
    assert "On your own" not in {log.title for log in logs(CLUB)}


def test_logs_are_those_that_were_looked_at(golden: Callable[[str, str], None]) -> None:
    golden("log-circuit-letter.html", sheet_html(check(CIRCUIT), "log", "letter"))
