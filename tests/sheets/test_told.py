"""The report on a week as a page: the one that was looked at."""

from collections.abc import Callable
from pathlib import Path

from tests.pages.reports import reports


def test_reports_are_those_that_were_looked_at(golden: Callable[[str, str], None], tmp_path: Path) -> None:
    made = {name: html for name, _, html in reports(tmp_path)}
    golden("report-crew-letter.html", made["autumn-block-week-3-9-report-crew-letter.html"])
    golden("report-coach-a4.html", made["autumn-block-week-3-9-report-coach-a4.html"])


def test_no_name_can_end_a_tag_or_the_style(tmp_path: Path) -> None:
    for _, _, html in reports(tmp_path):
        assert "<b>Bold" not in html
        assert html.count("</style>") == 1
