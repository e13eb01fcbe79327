"""The sheet of somebody who does something else, or lifts a load of their own; and everybody else's."""

import re

import pytest

from setwright.sheets import sheet_html
from setwright.sheets.sessions import session_sheets
from setwright.sheets.view import Line, LoadWords, SessionSheet
from tests.pages.plans import check

PLAN = """\
plan: Thursday lift
unit: kg
dose order: sets x reps
sides: each
squad:
  athletes:
    - name: Yule
      participation: modified
      limits:
        - avoid: [push press]
          until: cleared
          set by: the doctor
    - name: Ott
    - name: Wim
  groups:
    new: [Ott]
work:
  - flat barbell bench press: 4 x 4 at 60 kg
    load:
      new: 40 kg
      Yule: none
  - superset:
      - push press: 3 x 5
        instead:
          Yule:
            - barbell floor press: 3 x 6 at 2 RIR
            - face pull: 2 x 15
      - pull-up: 3 x 6
        load:
          Ott: 5, 7.5, 10 kg
    rest: 1:30
  - dumbbell lateral raise: 3 x 15
    instead:
      Yule: level cable crossover
    load:
      Wim: 8 kg
  - complex:
      - power clean: 3
        load:
          Ott: 30 kg
      - barbell front squat: 3
    rounds: 3
    load: 40 kg
"""


def sheets(text: str = PLAN) -> dict[str | None, SessionSheet]:
    checked = check(text)
    assert [f.message for f in checked.findings if f.level.name == "error"] == []
    assert checked.week is not None
    return {sheet.athlete: sheet for sheet in session_sheets(checked.week, "version abc", checked.table)}


def lines(sheet: SessionSheet) -> list[Line]:
    return [line for block in sheet.blocks for line in block.lines]


def line(sheet: SessionSheet, name: str) -> Line:
    (found,) = (one for one in lines(sheet) if one.name == name)
    return found


def test_the_sheet_shows_what_is_done_instead_under_the_numbers_of_the_room() -> None:
    yule = sheets()["Yule"]
    assert [f"{one.number} {one.name}" for one in lines(yule)] == [
        "1 flat barbell bench press",
        "2a barbell floor press",
        "2a face pull",
        "2b pull-up",
        "3 level cable crossover",
        "4a power clean",
        "4b barbell front squat",
    ]
    assert line(yule, "barbell floor press").dose == "3 × 6, 2 left"
    crossover = line(yule, "level cable crossover")
    assert (crossover.dose, len(crossover.boxes)) == ("3 × 15", 3)
    assert yule.blocks[1].heading == "Pair: 2a, then 2b straight after; rest 1:30 after both"


def test_everybody_else_does_what_is_written() -> None:
    for name in ("Ott", "Wim"):
        assert [one.name for one in lines(sheets()[name])] == [
            "flat barbell bench press",
            "push press",
            "pull-up",
            "dumbbell lateral raise",
            "power clean",
            "barbell front squat",
        ]


@pytest.mark.parametrize(
    ("who", "name", "load"),
    [
        ("Yule", "flat barbell bench press", LoadWords("no load")),
        ("Ott", "flat barbell bench press", LoadWords("40 kg")),
        ("Wim", "flat barbell bench press", LoadWords("60 kg")),
        ("Ott", "pull-up", LoadWords("5, 7.5, 10 kg")),
        ("Wim", "dumbbell lateral raise", LoadWords("2 × 8 kg", "one a hand")),
        ("Ott", "dumbbell lateral raise", LoadWords(blank="kg each")),
        ("Ott", "power clean", LoadWords("30 kg")),
        ("Wim", "power clean", LoadWords()),
    ],
)
def test_loads_of_ones_own(who: str, name: str, load: LoadWords) -> None:
    assert line(sheets()[who], name).load == load


def test_nothing_says_that_or_why_somebody_does_something_else() -> None:
    for kind in ("session", "week"):
        body = sheet_html(check(PLAN), kind, "a4").split("</head>")[1]
        page = re.sub(r"<svg.*?</svg>", "", body, flags=re.DOTALL)
        for word in ("instead", "overhead", "doctor", "cleared", "new"):
            assert word not in page
        assert ("barbell floor press" in page) is (kind == "session")


def test_where_everybody_is_out_the_sheet_for_all_is_as_written() -> None:
    (sheet,) = sheets(
        PLAN.replace("- name: Ott", "- name: Ott\n      participation: out")
        .replace("- name: Wim", "- name: Wim\n      participation: out")
        .replace("modified", "out")
    ).values()
    assert line(sheet, "push press").number == "2a"
    assert line(sheet, "flat barbell bench press").load == LoadWords("60 kg")


def test_a_line_instead_that_is_for_others_only_is_their_line_still() -> None:
    warm_up = "warm-up:\n  - push-up: 1 x 10\n    instead:\n      Wim: pull-up\nwork:"
    told = {name: sheet.warm_up for name, sheet in sheets(PLAN.replace("work:", warm_up)).items()}
    assert told == {
        "Yule": ("Warm-up:", "push-up 1 × 10"),
        "Ott": ("Warm-up:", "push-up 1 × 10"),
        "Wim": ("Warm-up:", "pull-up 1 × 10"),
    }


def test_minutes_saved_are_those_of_what_is_done_instead() -> None:
    long = PLAN.replace("face pull: 2 x 15", "face pull: 9 x 15, rest 3:00").replace(
        "    rest: 1:30\n", "    rest: 1:30\n    priority: 3\n"
    )
    saved = {name: dict(sheet.rules)["Short of time?"] for name, sheet in sheets(long).items()}
    minutes = {name: int(re.findall(r"saves (\d+) min", text)[0]) for name, text in saved.items()}
    assert minutes["Ott"] == minutes["Wim"] < minutes["Yule"]
    assert all(text.startswith("Leave out 2 first") for text in saved.values())
