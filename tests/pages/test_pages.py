"""The page tests in a real browser; see ``python -m tests.pages OUT``."""

import os
from collections.abc import Iterator
from pathlib import Path

import pytest

from setwright.sheets import sheet_html
from setwright.sheets.kinds import Paper
from tests.pages.__main__ import main
from tests.pages.browser import Browser, installed
from tests.pages.faults import faults
from tests.pages.measure import measure
from tests.pages.plans import CLUB, LONG, check
from tests.pages.reports import reports

needs_a_browser = pytest.mark.skipif(
    installed() is None and os.environ.get("CI") != "true", reason="not run: no Chromium"
)


@needs_a_browser
def test_every_sheet_prints_as_it_should(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(tmp_path) == 0, capsys.readouterr().out
    assert len(list(tmp_path.glob("*.html"))) == len(list(tmp_path.glob("*.pdf"))) > 0


@needs_a_browser
def test_every_report_prints_as_it_should(browser: Browser, tmp_path: Path) -> None:
    """A report is laid out as the summary is, on as many pages as it takes."""
    told = []
    for name, paper, html in reports(tmp_path):
        file = tmp_path / name
        file.write_text(html, encoding="utf-8")
        told += [f"{name}: {fault}" for fault in faults(measure(browser, file, "summary", paper))]
    assert told == []
    assert len(list(tmp_path.glob("*.pdf"))) == 2 * 2 * 3 * 2


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    path = installed()
    assert path, "no Chromium on this machine; set CHROMIUM to its path"
    with Browser(path) as running:
        yield running


@needs_a_browser
@pytest.mark.parametrize(
    ("css", "fault"),
    [
        (".remark { font-size: 11pt }", "body type of 11.0 pt"),
        (".columns th { font-size: 10pt }", "head type of 10.0 pt"),
        (".box .target { font-size: 8pt }", "type of 8.0 pt in the print"),
        (".box { width: 11mm }", "a box of 11.0 x 9.0 mm"),
        ("tbody { break-inside: auto }", "blocks split between pages"),
        (".do .name { white-space: nowrap; width: 200mm }", "text leaves its frame: "),
        (".sheet { margin-left: -6mm }", "text outside the margins: "),
        (
            'body::after { content: ""; display: block; break-before: page; height: 1mm }',
            "1 pages with nothing but a footer",
        ),
    ],
)
def test_each_fault_of_a_sheet_is_seen(browser: Browser, tmp_path: Path, css: str, fault: str) -> None:
    page = tmp_path / "sheet.html"
    page.write_text(sheet_html(check(LONG), "session", "a4").replace("</style>", f"{css}</style>"))
    told = list(faults(measure(browser, page, "session", "a4")))
    assert any(fault in one for one in told), told


@needs_a_browser
@pytest.mark.parametrize(
    ("paper", "css", "fault"),
    [
        ("a4", ".do b { font-size: 17mm }", "capitals of a block line of 11."),
        ("a3", ".time { font-size: 22mm }", "capitals of a time line of 16."),
        ("a3", ".groups { font-size: 17mm }", "capitals of a group line of 11."),
        ("a4", ".floor svg { width: 200mm; height: auto }", "capitals of a picture line of 9."),
        ("a4", ".time, .do b { font-size: 15mm }", "mm, said to be read from 1.4 m"),
        ("a4", "@page { @bottom-left { content: none !important } }", "does not say from where it is read"),
        ("a4", ".notes { color: #333 }", "unlike a sheet: rgb(51, 51, 51) on rgba(0, 0, 0, 0)"),
    ],
)
def test_each_fault_of_a_board_is_seen(
    browser: Browser, tmp_path: Path, paper: Paper, css: str, fault: str
) -> None:
    page = tmp_path / "board.html"
    page.write_text(sheet_html(check(CLUB), "board", paper).replace("</style>", f"{css}</style>"))
    told = list(faults(measure(browser, page, "board", paper)))
    assert any(fault in one for one in told), told


@needs_a_browser
def test_small_type_in_large_print_is_seen(browser: Browser, tmp_path: Path) -> None:
    page = tmp_path / "sheet.html"
    style = ".item .dose { font-size: 17pt }</style>"
    page.write_text(sheet_html(check(LONG), "session-large", "a4").replace("</style>", style))
    assert "body type of 17.0 pt, under 18" in list(faults(measure(browser, page, "session-large", "a4")))


@needs_a_browser
@pytest.mark.parametrize(
    ("written", "instead", "fault"),
    [
        ("<h1>", "<h3>", "headings 3"),
        ('<html lang="en">', "<html>", "no language"),
        ('<th scope="row"', "<th", "head without scope: warm-up"),
        ("<th", "<td", "a table without heads"),
    ],
)
def test_what_a_screen_reader_misses_is_seen(
    browser: Browser, tmp_path: Path, written: str, instead: str, fault: str
) -> None:
    page = tmp_path / "card.html"
    html = sheet_html(check(CLUB), "rack", "a4").replace(written, instead)
    page.write_text(html.replace("</th", "</td") if instead == "<td" else html)
    told = list(faults(measure(browser, page, "rack", "a4")))
    assert any(fault in one for one in told), told


@needs_a_browser
def test_what_is_run_or_fetched_is_seen(browser: Browser, tmp_path: Path) -> None:
    page = tmp_path / "sheet.html"
    page.write_text(sheet_html(check(LONG), "session", "a4").replace("</body>", "<script></script></body>"))
    assert list(faults(measure(browser, page, "session", "a4"))) == ["1 things that are run or fetched"]
