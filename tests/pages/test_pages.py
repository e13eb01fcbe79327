"""The page tests in a real browser; see ``python -m tests.pages OUT``."""

import os
from collections.abc import Iterator
from pathlib import Path

import pytest

from setwright.sheets import sheet_html
from tests.pages.__main__ import main
from tests.pages.browser import Browser, installed
from tests.pages.faults import faults
from tests.pages.measure import measure
from tests.pages.plans import LONG, check

needs_a_browser = pytest.mark.skipif(
    installed() is None and os.environ.get("CI") != "true", reason="not run: no Chromium"
)


@needs_a_browser
def test_every_sheet_prints_as_it_should(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(tmp_path) == 0, capsys.readouterr().out
    assert len(list(tmp_path.glob("*.html"))) == len(list(tmp_path.glob("*.pdf"))) > 0


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
def test_each_fault_is_seen(browser: Browser, tmp_path: Path, css: str, fault: str) -> None:
    page = tmp_path / "sheet.html"
    page.write_text(sheet_html(check(LONG), "session", "a4").replace("</style>", f"{css}</style>"))
    told = list(faults(measure(browser, page, "session", "a4")))
    assert any(fault in one for one in told), told


@needs_a_browser
def test_what_is_run_or_fetched_is_seen(browser: Browser, tmp_path: Path) -> None:
    page = tmp_path / "sheet.html"
    page.write_text(sheet_html(check(LONG), "session", "a4").replace("</body>", "<script></script></body>"))
    assert list(faults(measure(browser, page, "session", "a4"))) == ["1 things that are run or fetched"]
