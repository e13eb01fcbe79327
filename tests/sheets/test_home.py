"""Home sheets from whole plans."""

from collections.abc import Callable

import pytest

from setwright.library.table import library
from setwright.sheets import sheet_html
from setwright.sheets.home import HomeMove, HomeSheet, home_sheets
from tests.pages.plans import CLUB, LONG, check


def sheets(text: str) -> tuple[HomeSheet, ...]:
    checked = check(text)
    assert checked.week is not None
    return home_sheets(checked.week, "version abc", checked.table or library())


def moves(sheet: HomeSheet) -> list[HomeMove]:
    return [move for block in sheet.blocks for move in block.moves]


def alone(line: str, more: str = "") -> HomeMove:
    plan = f"plan: A\nunit: kg\nsides: each\nplace: home\nwork:\n  - {line}\n{more}"
    (sheet,) = sheets(plan)
    (move,) = moves(sheet)
    return move


def test_everyone_gets_their_own_moves_of_a_session_at_home() -> None:
    told = sheets(CLUB)
    assert [sheet.athlete for sheet in told] == [
        "Isla Marrack", "Tam Rae", "Isla Rae", "Struan Corr", "Wren Tolquhoun",
    ]  # fmt: skip
    assert [move.name for move in moves(told[0])] == ["push-up on knees", "band pull-apart", "side plank"]
    assert [move.number for move in moves(told[2])] == ["1", "2", "4"]
    assert (told[0].title, told[0].plan) == ("Wednesday: On your own", "Club evening")
    assert told[0].footer == "Old hall club · Club evening · Wed · version abc"


@pytest.mark.parametrize("place", ["home", "Home", "at home"])
def test_the_place_says_that_it_is_at_home(place: str) -> None:
    (sheet,) = sheets(LONG.replace("place: old hall", f"place: {place}"))
    assert sheet.athlete is None
    assert sheet.before == (("Warm-up:", "band pull-apart 2 × 15, push-up 1 × 10"),)
    assert sheets(LONG) == ()


@pytest.mark.parametrize(
    ("line", "more", "sentences"),
    [
        ("push-up: 3 x 8-10 at 2 RIR, rest 60 s", "",
         "3 sets of 8 to 10; 1 minute between sets. Stop when 2 more would still go."),
        ("push-up: 2 x 10 at 1-3 RIR", "", "2 sets of 10. Stop when 1 to 3 more would still go."),
        ("push-up: 2 x max to failure", "", "2 sets of as many as possible. Go on until no more would go."),
        ("push-up: 3 x 10 at RPE 3", "", "3 sets of 10."),
        ("side plank: 2 x 20 s each side", "    rest: 45 s\n",
         "2 sets of 20 seconds on each side; 45 seconds between sets."),
        ("push-up: 3 x 5", "    tempo: 3-1-1-0\n",
         "3 sets of 5; 3 s down, 1 s at the bottom, 1 s up, no pause at the top."),
        ("push-up", "", ""),
    ],
)  # fmt: skip
def test_a_dose_in_whole_sentences(line: str, more: str, sentences: str) -> None:
    assert alone(line, more).sentences == sentences


def test_load_kit_and_when_to_stop_stand_by_themselves() -> None:
    move = alone(
        "goblet squat: 3 x 8 at 12 kg, last set max at 8 kg", "    stop: it gets dark\n    kit: [mat]\n"
    )
    told = dict(move.lines)
    assert move.sentences == "3 sets of 8; last set: as many as possible."
    assert told["Load"] == "12, 8 kg"
    assert told["Stop"] == "When it gets dark."
    assert told["Kit"] == "mat, dumbbell or kettlebell"
    assert move.picture is None
    assert alone("push-up: 3 x 8").picture == "push-up"


IN_TURN = """\
      - circuit:
          - knee push-up: 8
          - front plank: 20 s
            for: [red]
        rounds: 3
        rest: 60 s
        not for: [Isla Marrack]
"""


def test_moves_in_turn_say_how_and_count_over_all_rounds() -> None:
    before, after = CLUB.split("      - knee push-up")
    plan = before + IN_TURN + after[after.index("      - band pull-apart") :]
    isla, tam, isla_rae, *_ = sheets(plan)
    assert [move.number for move in moves(isla)] == ["2", "3"]
    assert isla_rae.blocks[0].heading == (
        "Circuit, 3 rounds: 1a, then 1b straight after; rest 1:00 after each round."
    )
    assert [move.sentences for move in isla_rae.blocks[0].moves] == ["3 sets of 8.", "3 sets of 20 seconds."]
    assert [move.number for move in tam.blocks[0].moves] == ["1a"]
    assert tam.blocks[0].heading == "Circuit, 3 rounds; rest 1:00 after each round."


def test_nobody_gets_a_sheet_without_a_move() -> None:
    plan = CLUB[: CLUB.index("      - knee push-up")] + "      - front plank: 2 x 20 s\n        for: [blue]\n"
    assert [sheet.athlete for sheet in sheets(plan)] == ["Isla Marrack", "Tam Rae"]


def test_cool_down_and_note_come_after_the_moves() -> None:
    plan = CLUB.replace(
        "    place: home\n", "    place: home\n    cool-down: [easy walk]\n    note: any day will do\n"
    )
    assert sheets(plan)[0].after == (("Cool-down:", "easy walk"), ("Note:", "any day will do"))


def test_sheets_are_those_that_were_looked_at(golden: Callable[[str, str], None]) -> None:
    golden("home-club-letter.html", sheet_html(check(CLUB), "home", "letter"))
