"""A session in season, cut on the day: pairs, priorities, and one athlete whose press is another one."""

import re

import pytest

from setwright.findings import Level
from setwright.floor.today import Change, Today, today
from setwright.report.floor import floor_text
from setwright.report.machine import json_text
from setwright.report.terminal import text as screen
from setwright.sheets import sheet_html
from setwright.sheets.sessions import session_sheets
from setwright.sheets.view import SessionSheet
from tests.cases.told import told
from tests.report.test_read import said
from tests.rules.plans import checked, of

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
    """Nothing is said against pairs, priorities, or who is out."""
    one = checked(PLAN)
    assert [f.rule for f in one.findings if f.level >= Level.gap] == []
    assert told(one) == [
        ("line-never-followed", "work:"),
        ("heavy-close-to-the-match", "- flat barbell bench press: 4 x 4 at 82.5%"),
        ("heavy-line-not-finished", "- flat barbell bench press: 4 x 4 at 82.5%"),
        ("bottom-lines-hold-all-the-pulls", "- pull-up: 3 x 6"),
        ("no-heavy-lift-for-part", "- low-to-high cable crossover: 3 x 12 at 1 RIR"),
    ]
    assert re.search(r"1 session, \d\d of 50 minutes, 2 people", screen(one, colour=False))
    assert one.coverage is not None
    assert one.coverage.sessions[0].minutes < 50


def test_three_days_before_the_match_it_was_fine_and_since_the_match_moved_it_is_asked_about() -> None:
    (moved,) = (f for f in checked(PLAN).findings if f.rule == "heavy-close-to-the-match")
    assert moved.level is Level.advice
    assert moved.message == "the session: 14 hard sets of heavy lifts 2 days before the match"
    assert not of(checked(PLAN.replace("days to match: 2", "days to match: 3")), "heavy-close-to-the-match")


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


def test_a_name_and_a_reason_in_the_public_title_are_said_and_nothing_new_beside_it() -> None:
    titled = checked(PLAN.replace("plan: Thursday lift", "plan: Thursday lift (Yvaine - labrum)"))
    assert told(titled) == [
        ("name-in-a-public-title", "plan: Thursday lift (Yvaine - labrum)"),
        *told(checked(PLAN)),
    ]
    assert "labrum" not in json_text([titled])


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


def test_loads_are_those_of_the_training_max_of_each() -> None:
    """82.5 % of 90 % of 50 and of 60 kg: 37.125 and 44.55 kg, not rounded without a gym file."""
    load = {who: sheet.blocks[0].lines[0].load.large for who, sheet in sheets().items()}
    assert load == {"Yvaine": "37.12 kg", "Wilmot": "44.55 kg"}


def test_a_limit_on_the_load_is_held_against_what_she_lifts() -> None:
    limited = PLAN.replace("        - avoid: [push press]", "        - load at most: 40 kg")
    (wrong,) = [f for f in checked(limited).findings if f.level is Level.error]
    assert wrong.rule == "limit-broken"
    assert "Yvaine" in wrong.message
    assert any(seen.text.endswith("barbell back squat: 57.6 kg") for seen in wrong.seen)
    assert not any("bench" in seen.text for seen in wrong.seen)


ROOM = """\
gym:
  unit: kg
  racks: 2
  people per rack: 4
  benches: 2
  bars:
    20 kg: 4
  plates per rack:
    20 kg: 2 pairs
    10 kg: 2 pairs
    5 kg: 2 pairs
    2.5 kg: 2 pairs
  cables:
    - name: twin tower
    - name: low cable
  stations:
    pull-up bar: 2
  spotter: yes
"""


ROUNDS = (
    ("warm-up: 8 min", f"{ROOM}warm-up: 8 min"),
    ("rest: 2:00", "rest: 3:25"),
    ("rest: 1:30", "rest: 2:15"),
)
"""In that room, with rounds of 4 minutes in the first pair and of 3 in the second."""


def cut_today(minutes: float = 25) -> Today:
    text = PLAN
    for old, new in ROUNDS:
        text = text.replace(old, new)
    one = checked(text)
    assert one.week is not None
    assert one.table is not None
    return today(one.week.sessions[0], one.week, one.table, Change(minutes))


def test_in_25_minutes_the_first_pair_and_its_warm_up_are_kept_and_whole_pairs_go() -> None:
    found = cut_today()
    assert found.cut is not None
    assert (found.cut.kept, [block.number for block in found.cut.dropped]) == ((1,), [2, 3])
    assert found.floor.warm_up_s == 8 * 60
    assert found.floor.finish_s <= 17 * 60
    assert not [one for one in found.conflicts if one.kind == "late"]


def test_the_only_pull_and_the_only_rear_shoulder_line_go_and_a_better_cut_is_offered() -> None:
    """No choice of whole pairs keeps the first and a pull: the pull is done in the place of the squat."""
    found = cut_today().cut
    assert found is not None
    assert found.lost == ("pull", "rear-shoulder line")
    assert found.better == ()
    assert found.exchange is not None
    assert (found.exchange.old.name, found.exchange.new.name) == ("barbell back squat", "pull-up")


def test_as_written_it_fits_the_room_in_its_50_minutes() -> None:
    found = cut_today(50)
    assert found.cut is not None
    assert found.cut.dropped == ()
    assert not [one for one in found.conflicts if one.kind in ("late", "stations", "iron")]


def test_the_difference_list_of_the_day_is_one_glance_and_gives_no_reason() -> None:
    printed = " ".join(floor_text(cut_today()).split())
    assert "left out: 2 push press with pull-up and 3 low-to-high cable crossover with face pull" in printed
    assert (
        "with that the only pull and the only rear-shoulder line goes; better: do pull-up in 1, in the place "
        "of barbell back squat"
    ) in printed
    assert not any(word in printed for word in ("labrum", "doctor", "Osk"))
