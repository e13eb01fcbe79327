"""Session sheets from whole plans."""

import html
import re
from collections.abc import Callable

import pytest

from setwright.model.dates import session_date
from setwright.sheets import asked, sheet_html
from setwright.sheets.sessions import session_sheets
from setwright.sheets.view import LoadWords, SessionSheet
from tests.pages.plans import CIRCUIT, CLUB, LONG, check, example, school

SQUAD = """\
plan: Two groups
starts: 2027-11-17
unit: kg
dose order: sets x reps
sides: each
next: repeat
squad:
  squad: Old hall
  athletes:
    - name: Isla
    - name: Tam
      participation: modified
      body mass: 63.7 kg
      private note: sore since the match
      limits:
        - arm up at most: 91 deg
          until: 2027-12-24
          set by: the physiotherapist
    - name: Gone
      participation: out
  groups:
    light: [Isla]
sessions:
  - day: Thursday
    private note: he fell out with the crew
    work:
      - superset:
          - flat barbell bench press: 3 x 6 at 75%
          - level cable crossover: 3 x 12 at 1 RIR
            not for: [Tam]
        rest: 2:00
      - front plank: 3 x 40 s hold
        for: [light]
        private note: watch the back
      - pull-up: 3 x 5
  - day: Saturday
    work:
      - superset:
          - front plank: 3 x 40 s hold
            for: [light]
          - pull-up: 3 x 5
            for: [light]
"""


def sheets(text: str) -> tuple[SessionSheet, ...]:
    week = check(text).week
    assert week is not None
    return session_sheets(week, "version abc")


def names(sheet: SessionSheet) -> list[str]:
    return [f"{line.number} {line.name}" for block in sheet.blocks for line in block.lines]


def test_one_sheet_a_session_and_athlete_in_print_order() -> None:
    assert [(sheet.title, sheet.athlete) for sheet in sheets(SQUAD)] == [
        ("Thursday", "Isla"),
        ("Thursday", "Tam"),
        ("Saturday", "Isla"),
    ]


def test_everyone_sees_their_own_lines_under_the_same_numbers() -> None:
    isla, tam, _ = sheets(SQUAD)
    assert names(isla) == [
        "1a flat barbell bench press",
        "1b level cable crossover",
        "2 front plank",
        "3 pull-up",
    ]
    assert names(tam) == ["1a flat barbell bench press", "3 pull-up"]
    assert tam.blocks[0].heading == "1a on its own; rest 2:00 after each set"


def test_head_of_a_sheet() -> None:
    isla, tam, _ = sheets(SQUAD)
    assert isla.when == ("Thursday 18 November 2027", "Two groups · status: full")
    assert tam.when[-1] == "Two groups · status: modified"
    assert isla.footer == "Old hall · Two groups · Thu · version abc"


def test_nothing_private_reaches_the_paper() -> None:
    checked = check(SQUAD)
    for kind in ("session", "week"):
        page = sheet_html(checked, kind, "a4").split("</head>")[1]
        html = re.sub(r"<svg.*?</svg>", "", page, flags=re.DOTALL)
        assert "Isla" in html or "2 people" in html or "3 people" in html
        for private in ("63.7", "sore", "91", "physio", "2027-12-24", "24 December", "fell out", "the back"):
            assert private not in html


def test_without_a_squad_there_is_a_line_for_the_name() -> None:
    (sheet,) = sheets(LONG)
    assert sheet.athlete is None
    assert "Name <i></i>" in sheet_html(check(LONG), "session", "a4")


def test_a_long_session_says_all_that_was_written() -> None:
    (sheet,) = sheets(LONG)
    assert sheet.when == (
        "Tuesday 16 November 2027, 18:30",
        "old hall, 150 minutes",
        "Long evening",
        "4 days to the match",
    )
    assert sheet.warm_up == ("Warm-up:", "band pull-apart 2 × 15, push-up 1 × 10")
    assert dict(sheet.after) == {"Note:": "the hall closes at nine"}
    lines = {line.number: line for block in sheet.blocks for line in block.lines}
    assert [ramp.text for ramp in lines["1a"].ramps] == [
        "warm-up: 10 reps",
        "warm-up: 5 reps",
        "warm-up: 3 reps",
    ]
    assert lines["1a"].load == LoadWords("75 %", "of tested max", "kg")
    assert lines["1a"].next_time == "add 2.5 kg when every set reaches the top"
    assert lines["2"].remarks == ("rest 2:00, tempo 3-1-X-0", "ribs down, feet flat")
    assert len(lines["2"].boxes) == 6
    assert lines["3b"].load == LoadWords("body")
    assert lines["4"].remarks[-1] == "stop: the chest leaves the bench"
    assert lines["6"].load == LoadWords("80, 90, 100 kg")
    assert lines["8"].remarks[-1] == "kit: kettlebell"
    assert [box.target for box in lines["9"].boxes] == [str(rung) for rung in range(1, 11)]


def test_rules_at_the_foot() -> None:
    (sheet,) = sheets(LONG)
    rules = dict(sheet.rules)
    assert rules["Short of time?"].startswith("Leave out 9 first (saves ")
    assert rules["Short of time?"].endswith("Keep 1.")
    assert rules["Interrupted?"] == "Finish the set, note its number, go on there."
    assert rules["Next time:"] == "Repeat, unless a line says otherwise."
    assert rules["Stop and tell the coach"] == "if something hurts, feels unstable or numb."


def test_a_timed_circuit_has_a_box_a_round() -> None:
    (sheet,) = sheets(CIRCUIT)
    timed, free, *_ = sheet.blocks
    assert timed.heading == "Circuit, 4 rounds: 35 s at each, 25 s to change; rest 2:00 after each round"
    assert [len(line.boxes) for line in timed.lines] == [4, 4, 4, 4]
    assert [box.target for box in timed.lines[1].boxes] == ["12"] * 4
    assert timed.lines[0].load == LoadWords("2 × 20 kg", "one a hand")
    assert timed.lines[2].load == LoadWords(blank="kg each")
    assert timed.lines[2].remarks == ("kit: box, weight vest",)
    assert [line.dose for line in timed.lines] == ["4 × 35 s", "4 × 12", "4 × 35 s", "4 × 35 s"]
    assert free.rounds_box
    assert [line.boxes for line in free.lines] == [(), (), ()]
    assert [line.dose for line in free.lines] == ["10 reps", "15 reps", "30 s"]


def test_for_whom_is_said_where_there_is_no_squad() -> None:
    (sheet,) = sheets(
        "plan: Open hour\nunit: kg\nwork:\n"
        "  - pull-up: 3 x 5\n    for: [Isla, Tam]\n  - front plank: 3 x 40 s hold\n    not for: [Tam]\n"
    )
    assert [block.lines[0].remarks[-1] for block in sheet.blocks] == ["for Isla, Tam", "not for Tam"]


def test_a_complex_has_one_load_and_warm_up_sets_without_one_are_shares_of_the_work() -> None:
    (sheet,) = sheets(
        "plan: Hour\nunit: kg\nsides: each\ndose order: sets x reps\nwork:\n"
        "  - complex:\n      - Romanian deadlift: 5\n      - bent-over barbell row: 5\n"
        "    rounds: 4\n    load: 40 kg\n    next: repeat\n    note: light grip\n"
        "  - flat barbell bench press: 2 warm-up sets, then 3 x 8 at 60 kg\n"
        "  - dumbbell curl: 3 x 10\n"
        "cool-down: [walk, breathe]\n"
    )
    complex_, press, curl = sheet.blocks
    assert complex_.heading == "One bar, not put down, 4 rounds: 1a, then 1b straight after; 40 kg"
    assert complex_.remarks == ("light grip",)
    assert complex_.next_time == "repeat"
    assert [line.load for line in complex_.lines] == [LoadWords(), LoadWords()]
    assert [ramp.load for ramp in press.lines[0].ramps] == [LoadWords("30 kg"), LoadWords("42 kg")]
    assert press.lines[0].load == LoadWords("60 kg")
    assert curl.lines[0].load == LoadWords(blank="kg each")
    assert sheet.after == (("Cool-down:", "walk, breathe"),)


def test_what_could_not_be_read_leaves_room_to_write() -> None:
    (sheet,) = sheets("plan: Hour\nunit: kg\nwork:\n  - pull-upp: 3 x 5\n  - pull-up: what\n")
    unknown, unread = (block.lines[0] for block in sheet.blocks)
    assert (unknown.name, unknown.load) == ("pull-upp", LoadWords(blank="kg"))
    assert (unread.dose, unread.boxes) == ("", ())


@pytest.mark.parametrize("day", ["Monday", "Wednesday", "Sunday"])
def test_days_are_dated_from_the_start_of_the_plan(day: str) -> None:
    week = check(SQUAD).week
    assert week is not None
    session = week.sessions[0].model_copy(update={"day": day})
    date = session_date(week, session)
    assert date is not None
    assert week.starts is not None
    assert 0 <= (date - week.starts).days < 7
    assert date.strftime("%A") == day


def test_a_session_without_day_or_name_is_called_like_its_plan() -> None:
    (sheet,) = sheets("plan: Hour\nunit: kg\nwork:\n  - pull-up: 3 x 5\n")
    assert (sheet.title, sheet.when, sheet.warm_up) == ("Hour", (), None)


def test_a_sheet_of_a_block_names_its_week_and_dates_it() -> None:
    block = example("block.yaml").weeks[2].week
    sheet = session_sheets(block, "version abc")[0]
    assert sheet.when[0] == "Monday 13 December 2027"
    assert sheet.when[2].startswith("Winter block, week 3 of 4")
    assert "Winter block · week 3 · Mon" in sheet.footer
    (alone, *_) = check("plan: Hour\nweeks: 2\nunit: kg\nwork:\n  - pull-up: 3 x 5\n").weeks
    assert session_sheets(alone.week, "")[0].title == "Hour, week 1 of 2"


def test_golden_session(golden: Callable[[str, str], None]) -> None:
    golden("session-long-a4.html", sheet_html(check(LONG), "session", "a4"))
    golden("session-loads-a4.html", sheet_html(school(), "session", "a4"))
    golden("session-circuit-letter.html", sheet_html(check(CIRCUIT), "session", "letter"))


def test_golden_example(golden: Callable[[str, str], None]) -> None:
    golden("week-flawed-a4.html", sheet_html(example("week-flawed.yaml"), "week", "a4"))


def test_large_print_is_the_one_that_was_looked_at(golden: Callable[[str, str], None]) -> None:
    golden("session-large-long-a4.html", sheet_html(check(LONG), "session-large", "a4"))


def test_large_print_says_all_that_the_session_sheet_says() -> None:
    for plan in (LONG, CIRCUIT, CLUB):
        for sheet in sheets(plan):
            page = words_of(sheet_html(check(plan), "session-large", "a4"))
            for block in sheet.blocks:
                lines = [text for line in block.lines for text in (line.name, line.dose, *line.remarks)]
                for text in (block.heading or "", *block.remarks, *lines):
                    assert plain(text) in page


def test_large_print_is_asked_for_by_an_option() -> None:
    assert asked("session", "a4", large=True) == (("session-large", "a4"),)
    assert asked("week", "letter", large=True) == (("week", "letter"),)
    small, large = (
        [kind for kind, _ in asked("all", "a4", large=print_) if kind.startswith("session")]
        for print_ in (False, True)
    )
    assert (small, large) == (["session"], ["session-large"])


def plain(text: str) -> str:
    return " ".join(text.replace("\u00a0", " ").split())


def words_of(page: str) -> str:
    return plain(html.unescape(re.sub("<[^>]+>", "", page.split("</head>")[1])))
