"""What holds of every kind of sheet: nothing private where others read, the safety line, page numbers."""

import html
import re

import pytest

from setwright.sheets import asked, sheet_html
from setwright.sheets.kinds import KINDS, Kind
from tests.pages.plans import CLUB, check

PUBLIC = [name for name, kind in KINDS.items() if kind.readers == "public"]

SECRETS = """\
      body mass: 63.7 kg
      born: 1991
      note: has a new job
      private note: sore since the match
      limits:
        - arm up at most: 91 deg
          until: 2027-12-24
          set by: the physiotherapist
        - no: [hanging]
          until: cleared
      avoid: [upright row]
"""
MODIFIED = "      participation: modified\n"
MONDAY = "  - day: Monday\n"
PRIVATE = CLUB.replace(MODIFIED, MODIFIED + SECRETS).replace(
    MONDAY, f"{MONDAY}    private note: he fell out with the crew\n"
)
HIDDEN = (
    "63.7", "1991", "new job", "the match", "91", "physio", "24 December", "2027-12-24", "hanging", "cleared",
    "upright row", "fell out", "limit",
)  # fmt: skip


def told(kind: Kind, plan: str) -> str:
    """Everything that stands on the pages and in their margins, without the drawings."""
    page = sheet_html(check(plan), kind, "a4")
    drawn = re.sub(r"<svg.*?</svg>", "", page.split("</head>")[1], flags=re.DOTALL)
    margins = "".join(re.findall(r'content: "(.*?)"', page))
    letters = re.sub(r"\\([0-9a-f]+) ", lambda code: chr(int(code[1], 16)), margins)
    return html.unescape(re.sub("<[^>]+>", "", drawn)) + letters


@pytest.mark.parametrize("kind", PUBLIC)
def test_nothing_private_is_on_a_sheet_that_others_read(kind: Kind) -> None:
    page = told(kind, PRIVATE)
    assert "Tam" in page or kind in ("board", "station")
    assert not [word for word in HIDDEN if word in page]


@pytest.mark.parametrize("kind", PUBLIC)
def test_what_is_private_changes_no_public_sheet(kind: Kind) -> None:
    without_mark = re.compile(r"version [0-9a-f]+")
    assert without_mark.sub("", told(kind, PRIVATE)) == without_mark.sub("", told(kind, CLUB))


@pytest.mark.parametrize("kind", PUBLIC)
def test_every_public_sheet_has_the_safety_line_on_each_of_its_parts(kind: Kind) -> None:
    page = sheet_html(check(CLUB), kind, "a4")
    text = " ".join(re.sub("<[^>]+>", "", page.split("</head>")[1]).split())
    sections = page.count("<section")
    assert sections > 0
    assert text.count("Stop and tell the coach if something hurts, feels unstable or numb.") == sections


@pytest.mark.parametrize("kind", KINDS)
def test_pages_are_counted(kind: Kind) -> None:
    assert '"page " counter(page) " of " counter(pages)' in sheet_html(check(CLUB), kind, "a4")


def test_the_overview_and_the_summary_are_the_coachs() -> None:
    assert [name for name in KINDS if name not in PUBLIC] == ["week", "summary"]


def test_the_numbers_of_the_kinds_are_their_order() -> None:
    numbers = [kind.number for kind in KINDS.values()]
    assert numbers == sorted(numbers)
    assert all(name == kind.name for name, kind in KINDS.items())


def test_the_coach_s_folder_gets_the_overview_and_the_summary() -> None:
    assert asked("coach", "letter") == (("week", "letter"), ("summary", "letter"))
    assert asked("coach", "a3") == (("week", "a4"), ("summary", "a4"))
