"""The files themselves: self-contained, the same bytes each time, and safe whatever a name holds."""

import datetime as dt
import re
from html.parser import HTMLParser

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.checked import Checked
from setwright.places import Source
from setwright.sheets import sheet_html
from setwright.sheets.html import css_text
from setwright.sheets.kinds import KINDS, SIZES, Kind, Paper
from tests.pages.plans import AWKWARD, CLUB, check

PAPERS = [(kind, paper) for kind in KINDS for paper in KINDS[kind].papers]


class Tags(HTMLParser):
    """Every tag of a page with its attributes, and the text of its style."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.tags: list[tuple[str, dict[str, str | None]]] = []
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        self.tags.append((tag, dict(attrs)))

    def named(self, *names: str) -> list[dict[str, str | None]]:
        return [attributes for tag, attributes in self.tags if tag in names]


@pytest.mark.parametrize(("kind", "paper"), PAPERS)
def test_a_file_stands_alone_and_says_what_it_is(kind: Kind, paper: Paper) -> None:
    page = sheet_html(check(CLUB), kind, paper)
    tags = Tags(page)
    assert tags.named("html") == [{"lang": "en"}]
    assert {"charset": "utf-8"} in tags.named("meta")
    assert page.count("<title>Club evening: ") == 1
    assert not tags.named("script", "link", "img", "iframe", "object", "base")
    assert "url(" not in re.sub(r"url\(#", "", page)
    assert all(attributes.get("scope") for attributes in tags.named("th"))
    assert all(
        attributes.get("role") == "img" or attributes.get("aria-hidden") for attributes in tags.named("svg")
    )
    short, long = SIZES[paper]
    across, down = (short, long) if KINDS[kind].upright else (long, short)
    assert f"size: {across}mm {down}mm;" in page


@pytest.mark.parametrize(("kind", "paper"), PAPERS)
def test_the_same_plan_is_the_same_bytes(kind: Kind, paper: Paper) -> None:
    day = dt.date(2027, 11, 14)
    pages = {sheet_html(check(CLUB), kind, paper, day) for _ in range(2)}
    assert len(pages) == 1
    assert css_text("of 14 Nov 2027")[1:-1] in pages.pop()


@pytest.mark.parametrize("kind", KINDS)
def test_markup_in_names_is_text(kind: Kind) -> None:
    page = sheet_html(check(AWKWARD), kind, "a4")
    assert not Tags(page).named("script", "img")
    assert not re.search("<b>(one|Bold)|<i>x", page)
    assert "&lt;b&gt;one&lt;/b&gt;" in page
    assert page.count("</style>") == 1
    assert "{{ 7 * 7 }}" in page or kind == "summary"


@given(st.text())
@settings(max_examples=200)
def test_css_text_holds_no_sign_that_could_end_it(text: str) -> None:
    inside = css_text(text)[1:-1]
    assert re.fullmatch(r"(?:[0-9A-Za-z]|\\[0-9a-f]+ )*", inside)


def test_without_a_plan_there_is_nothing_to_print() -> None:
    unread = Checked("x.yaml", (), (), (), {"x.yaml": Source("x.yaml", "")}, complete=False)
    with pytest.raises(ValueError, match="no plan to print"):
        sheet_html(unread, "session", "a4")
