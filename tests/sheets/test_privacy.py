"""A squad full of limits, printed in every kind: none of what is private is on any sheet."""

import datetime as dt
from typing import Literal

import pytest

from setwright.sheets import sheet_html
from tests.rules.plans import checked
from tests.rules.test_limits import PRIVATE, full_of_limits

WORDS = (*(word for word in PRIVATE if word != "Isla"), "physio", "limit", "clears")


@pytest.mark.parametrize("kind", ["session", "week"])
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_no_limit_no_reason_no_body_mass_on_paper(
    kind: Literal["session", "week"], paper: Literal["a4", "letter"]
) -> None:
    html = sheet_html(checked(full_of_limits()), kind=kind, paper=paper, printed=dt.date(2027, 11, 14))
    told = html.split("</style>")[-1]
    assert "Isla" in told or kind == "week"
    assert not [word for word in WORDS if word in told]


def test_an_athlete_who_takes_part_with_changes_is_marked_by_that_word_alone() -> None:
    plan = full_of_limits().replace("      body mass", "      participation: modified\n      body mass")
    html = sheet_html(checked(plan), kind="session", paper="a4", printed=dt.date(2027, 11, 14))
    told = html.split("</style>")[-1]
    assert "modified" in told
    assert not [word for word in WORDS if word in told]
