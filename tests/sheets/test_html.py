"""The files themselves: self-contained, the same bytes each time, and safe whatever a name holds."""

import datetime as dt
import re
from html.parser import HTMLParser

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.checked import Checked
from setwright.places import Source
from setwright.sheets import sheet_html, sheet_name
from setwright.sheets.html import KINDS, SIZES, Kind, Paper, css_text, version_mark
from tests.pages.plans import AWKWARD, NO_CHEST, check

PAPERS = [(kind, paper) for kind in KINDS for paper in SIZES]


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
    page = sheet_html(check(NO_CHEST), kind, paper)
    tags = Tags(page)
    assert tags.named("html") == [{"lang": "en"}]
    assert {"charset": "utf-8"} in tags.named("meta")
    assert page.count("<title>Off week: ") == 1
    assert not tags.named("script", "link", "img", "iframe", "object", "base")
    assert "url(" not in re.sub(r"url\(#", "", page)
    assert all(attributes.get("scope") for attributes in tags.named("th"))
    assert all(
        attributes.get("role") == "img" or attributes.get("aria-hidden") for attributes in tags.named("svg")
    )
    short, long = SIZES[paper]
    across, down = (long, short) if kind == "week" else (short, long)
    assert f"size: {across}mm {down}mm;" in page


@pytest.mark.parametrize(("kind", "paper"), PAPERS)
def test_the_same_plan_is_the_same_bytes(kind: Kind, paper: Paper) -> None:
    day = dt.date(2027, 11, 14)
    pages = {sheet_html(check(NO_CHEST), kind, paper, day) for _ in range(2)}
    assert len(pages) == 1
    assert css_text("printed 14 Nov 2027")[1:-1] in pages.pop()


def test_the_mark_follows_the_text() -> None:
    one, other = check(NO_CHEST), check(NO_CHEST + "# changed\n")
    assert version_mark(one) == version_mark(check(NO_CHEST))
    assert version_mark(one) != version_mark(other)


@pytest.mark.parametrize("kind", KINDS)
def test_markup_in_names_is_text(kind: Kind) -> None:
    page = sheet_html(check(AWKWARD), kind, "a4")
    assert not Tags(page).named("script", "img")
    assert not re.search("<b>(one|Bold)|<i>x", page)
    assert "&lt;b&gt;one&lt;/b&gt;" in page
    assert page.count("</style>") == 1
    assert "{{ 7 * 7 }}" in page or kind == "summary"


def named(checked: Checked, name: str) -> Checked:
    (one,) = checked.weeks
    return checked._replace(weeks=(one._replace(week=one.week.model_copy(update={"name": name})),))


OFF_WEEK = check(NO_CHEST)


@given(st.text(min_size=1))
@settings(max_examples=200)
def test_a_file_name_never_leaves_its_folder(name: str) -> None:
    file = sheet_name(named(OFF_WEEK, name), "session", "a4")
    assert file.endswith("-2-session-a4.html")
    assert re.fullmatch(r"[\w-]+\.html", file)
    assert not file.startswith("-")
    assert len(file.encode()) <= 255


def test_file_names_sort_in_print_order() -> None:
    names = [sheet_name(OFF_WEEK, kind, "a4") for kind in KINDS]
    assert names == sorted(names)
    assert names == [f"off-week-{kind}-a4.html" for kind in ("1-week", "2-session", "3-summary")]
    assert sheet_name(named(OFF_WEEK, "../../etc"), "week", "letter") == "etc-1-week-letter.html"
    assert sheet_name(named(OFF_WEEK, "///"), "week", "letter") == "plan-1-week-letter.html"


@given(st.text())
@settings(max_examples=200)
def test_css_text_holds_no_sign_that_could_end_it(text: str) -> None:
    inside = css_text(text)[1:-1]
    assert re.fullmatch(r"(?:[0-9A-Za-z]|\\[0-9a-f]+ )*", inside)


def unread() -> Checked:
    return Checked("x.yaml", (), (), (), {"x.yaml": Source("x.yaml", "")}, complete=False)


def test_without_a_plan_there_is_nothing_to_print() -> None:
    with pytest.raises(ValueError, match="no plan to print"):
        sheet_html(unread(), "session", "a4")
    assert sheet_name(unread(), "session", "a4") == "plan-2-session-a4.html"
