"""The summary as a sheet: the answers of the screen in the type of paper, marked as the coach's own."""

import datetime as dt
from collections.abc import Callable

from setwright.glance import glance
from setwright.sheets import sheet_html, sheet_name
from setwright.sheets.summary import summary_sheet
from tests.pages.plans import check, example
from tests.rules.test_limits import PRIVATE, full_of_limits

DAY = dt.date(2027, 11, 14)


def told(html: str) -> str:
    return html.rsplit("</style>", maxsplit=1)[-1]


def test_the_answers_are_those_of_the_screen() -> None:
    flawed = example("week-flawed.yaml")
    sheet, screen = summary_sheet(flawed, "version abc"), glance(flawed)
    assert [question for question, _ in sheet.answers] == [answer.question for answer in screen.answers]
    assert sheet.answers[0][1] == screen.answers[0].lines
    assert "3 × 12 at 1 RIR" in sheet.answers[3][1][1]
    assert (sheet.title, sheet.aim, sheet.note) == (screen.title, screen.aim, screen.note)
    assert sheet.footer.endswith("version abc")


def test_it_is_marked_as_not_for_the_wall_on_the_page_and_in_its_foot() -> None:
    html = sheet_html(example("week-good.yaml"), "summary", "a4", DAY)
    assert "For the coach: not for the wall" in told(html)
    assert html.count("size: 210.0mm 297.0mm") == 1


def test_a_week_of_a_block_is_named_and_sees_the_whole_block() -> None:
    block = example("block.yaml").only(2)
    assert sheet_name(block, "summary", "letter") == "winter-block-week-2-8-summary-letter.html"
    assert "Lighter: week 4" in told(sheet_html(block, "summary", "letter"))


def test_names_of_the_limited_and_nothing_of_their_limits() -> None:
    html = told(sheet_html(check(full_of_limits()), "summary", "a4", DAY))
    assert "Isla" in html
    assert not [word for word in PRIVATE if word != "Isla" and word in html]


def test_a_week_without_chest_has_no_note() -> None:
    plan = "plan: Legs\nunit: kg\nsides: each\nwork:\n  - back squat: 3 x 8\n"
    assert "model-note" not in told(sheet_html(check(plan), "summary", "a4"))


def test_golden_summary(golden: Callable[[str, str], None]) -> None:
    golden("summary-flawed-a4.html", sheet_html(example("week-flawed.yaml"), "summary", "a4"))
