"""A session in season, cut on the day: pairs, priorities, and one athlete whose press is another one."""

import re

import pytest

from setwright.findings import Level
from setwright.report.machine import json_text
from setwright.report.terminal import text as screen
from setwright.sheets import sheet_html
from setwright.sheets.sessions import session_sheets
from setwright.sheets.view import SessionSheet
from tests.report.test_read import said
from tests.rules.plans import checked

PLAN = """\
plan: Thursday lift
date: 2027-03-11
minutes: 50
days to match: 2
unit: kg
dose order: sets x reps
percent of: training max
squad:
  athletes:
    - name: Yvaine
      participation: modified
      private note: labrum
      limits:
        - avoid: [push press]
          until: cleared
          set by: the team doctor
      maxes:
        flat barbell bench press: 50 kg tested 2027-02-01, training max 90%
        barbell back squat: 80 kg tested 2027-02-01, training max 90%
    - name: Osk
      participation: out
    - name: Wilmot
      maxes:
        flat barbell bench press: 60 kg tested 2027-02-01, training max 90%
        barbell back squat: 95 kg tested 2027-02-01, training max 90%
warm-up: 8 min
work:
  - superset:
      - flat barbell bench press: 4 x 4 at 82.5%
      - barbell back squat: 4 x 4 at 80%
    rest: 2:00
    priority: 1
  - superset:
      - push press: 3 x 5
        instead:
          Yvaine:
            - barbell floor press: 3 x 6 at 2 RIR
      - pull-up: 3 x 6
    rest: 1:30
    priority: 2
  - superset:
      - low-to-high cable crossover: 3 x 12 at 1 RIR
      - face pull: 3 x 15 at 2 RIR
    rest: 60 s
    priority: 3
"""


def sheets() -> dict[str | None, SessionSheet]:
    one = checked(PLAN)
    assert one.week is not None
    return {sheet.athlete: sheet for sheet in session_sheets(one.week, "a", one.table)}


def names(sheet: SessionSheet) -> list[str]:
    return [line.name for block in sheet.blocks for line in block.lines]


def test_the_session_fits_its_minutes_and_has_no_error_and_no_gap() -> None:
    """Nothing is said against pairs, priorities, the days to the match, or who is out."""
    one = checked(PLAN)
    assert [f.rule for f in one.findings if f.level >= Level.gap] == []
    assert {f.rule for f in one.findings} == {
        "line-never-followed",
        "heavy-line-not-finished",
        "no-heavy-lift-for-part",
        "bottom-lines-hold-all-the-pulls",
    }
    assert re.search(r"1 session, \d\d of 50 minutes, 2 people", screen(one, colour=False))
    assert one.coverage is not None
    assert one.coverage.sessions[0].minutes < 50


@pytest.mark.parametrize("who", ["Yvaine", "Wilmot"])
def test_whole_pairs_are_dropped_the_least_first_and_the_first_is_kept(who: str) -> None:
    cut = dict(sheets()[who].rules)["Short of time?"]
    assert re.fullmatch(
        r"Leave out 3 first \(saves \d+ min\), then 2 \(\d+ min\)\. Keep 1\.", cut.replace("\xa0", " ")
    )


def test_one_athlete_does_another_press_and_nobody_else_does() -> None:
    mine, theirs = sheets()["Yvaine"], sheets()["Wilmot"]
    assert set(names(mine)) ^ set(names(theirs)) == {"barbell floor press", "push press"}
    assert "Osk" not in sheets()
    assert "Yvaine instead: barbell floor press: 3 sets of 6, 2 repetitions left" in said(PLAN)


def test_the_week_is_counted_as_written_for_all() -> None:
    one = checked(PLAN)
    assert one.coverage is not None
    assert [work.item.name for work in one.coverage.sessions[0].works][2] == "push press"
    without = checked(re.sub(r"        instead:\n.*\n.*\n", "", PLAN))
    assert without.coverage is not None
    assert without.coverage.muscles == one.coverage.muscles


def test_the_reason_stays_with_the_coach() -> None:
    one = checked(PLAN)
    for kind in ("session", "week"):
        page = re.sub(r"<svg.*?</svg>", "", sheet_html(one, kind, "a4").split("</head>")[1], flags=re.DOTALL)
        for word in ("labrum", "avoid", "doctor", "cleared", "instead"):
            assert word not in page
    machine = json_text([one])
    assert "Yvaine" not in machine
    assert "labrum" not in machine


def test_a_name_that_is_misspelt_is_an_error_and_nothing_is_printed_for_her() -> None:
    one = checked(PLAN.replace("          Yvaine:", "          Yvain:"))
    wrong = {finding.rule: finding.change for finding in one.findings if finding.level is Level.error}
    assert wrong.keys() == {"unknown-athlete", "avoided-move"}
    assert wrong["unknown-athlete"] == "write `Yvaine:`"


def test_a_press_she_is_to_avoid_without_another_one_is_an_error() -> None:
    one = checked(re.sub(r"        instead:\n.*\n.*\n", "", PLAN))
    (wrong,) = [finding for finding in one.findings if finding.level is Level.error]
    assert (wrong.rule, wrong.message) == (
        "avoided-move",
        'Yvaine avoids "push press", and push press is on the list',
    )
    bare = re.sub(
        r"      limits:\n(?:        .*\n|          .*\n)+?      maxes",
        "      maxes",
        one.sources[one.file].text,
    )
    (wrong,) = [finding for finding in checked(bare).findings if finding.level is Level.error]
    assert wrong.rule == "modified-but-nothing-changed"
