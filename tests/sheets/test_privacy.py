"""A squad full of limits, printed in every kind: none of what is private is in any file that is written."""

import datetime as dt
import html
import re
from pathlib import Path

import pytest

from setwright.sheets import Order, asked, print_sheets, sheet_html
from setwright.sheets.kinds import KINDS, SIZES
from tests.pages.plans import CLUB, check
from tests.rules.plans import checked
from tests.rules.test_limits import PRIVATE, full_of_limits

DAY = dt.date(2027, 11, 14)
PRINTED_ANYWAY = {"Isla"}
WORDS = (*(word for word in PRIVATE if word not in PRINTED_ANYWAY), "physio", "limit", "clears")
OF_ONE = """\
      born: 1987
      height: 173 cm
      arm length: 56.3 cm
      body mass: 61.7 kg
      avoid: [burpee]
      private note: slipped on the quay
      limits:
        - arm up at most: 87 deg
          until: 2027-12-24
          set by: Dr Onn
        - load at most: 33.3 kg
          until: cleared
        - no: [jumping, bar grip]
          until: cleared
"""
OF_ALL = "private note: fees are due\nsquad:\n  private note: key under the mat\n"
TOKENS = (
    "1987", "173 cm", "56.3 cm", "61.7", "burpee", "slipped on", "87 deg", "2027-12-24", "24 Dec",
    "24 December", "Dr Onn", "33.3 kg", "jumping", "bar grip", "fees are due", "under the mat", "limit",
)  # fmt: skip


def full_club() -> str:
    """The club with everything private about everyone."""
    squad, gym, rest = CLUB.partition("gym:\n")
    plan = re.sub(r"(    - name: .*\n)", lambda name: f"{name[1]}{OF_ONE}", squad) + gym + rest
    return plan.replace("squad:\n", OF_ALL, 1)


def shown(page: str) -> str:
    """What a file says, with the escapes of HTML and of CSS texts undone."""
    texts = html.unescape(page)
    return re.sub(r"\\([0-9a-f]{1,6}) ", lambda code: chr(int(code[1], 16)), texts)


def test_nothing_private_is_in_any_file_of_a_print(tmp_path: Path) -> None:
    plan = check(full_club())
    squad = plan.week.squad if plan.week else None
    assert squad
    assert all(one.body_mass == 61.7 and len(one.limits) == 3 for one in squad.athletes)
    for paper in SIZES:
        if paper != "a3":
            list(print_sheets(plan, Order(asked("all", paper), tmp_path, csv=True), DAY))
    list(print_sheets(plan, Order(asked("session", "a4"), tmp_path, apart=True), DAY))
    list(print_sheets(plan, Order(asked("session", "a4", large=True), tmp_path), DAY))
    files = [path for path in tmp_path.iterdir() if path.is_file()]
    among_all = {kind for kind, form in KINDS.items() if form.among_all}
    assert {kind for kind in among_all if any(f"-{kind}-" in path.name for path in files)} == among_all
    for path in files:
        told = shown(path.read_text(encoding="utf-8"))
        style, _, rest = told.rpartition("</style>")
        assert not [word for word in TOKENS if word in rest], path.name
        footers = "".join(re.findall(r'content: "[^"]*"', style))
        assert not [word for word in TOKENS if word in footers], path.name


def test_each_token_would_be_found() -> None:
    plan = CLUB.replace("note: elbows under the bar", "note: weighs 61.7 kg")
    assert "61.7" in shown(sheet_html(check(plan), "session", "a4"))


@pytest.mark.parametrize("paper", ["a4", "letter"])
@pytest.mark.parametrize("kind", ["session", "week"])
def test_no_limit_no_reason_no_body_mass_on_paper(kind: str, paper: str) -> None:
    ((name, on),) = asked(kind, "letter" if paper == "letter" else "a4")
    told = sheet_html(checked(full_of_limits()), name, on, DAY).split("</style>")[-1]
    assert "Isla" in told or kind == "week"
    assert not [word for word in WORDS if word in told]


def test_an_athlete_who_takes_part_with_changes_is_marked_by_that_word_alone() -> None:
    plan = full_of_limits().replace("      body mass", "      participation: modified\n      body mass")
    told = sheet_html(checked(plan), "session", "a4", DAY).split("</style>")[-1]
    assert "modified" in told
    assert not [word for word in WORDS if word in told]
