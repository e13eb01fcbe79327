"""Station cards from whole plans."""

from collections.abc import Callable
from xml.etree import ElementTree as ET

import pytest

from setwright.library.table import library
from setwright.sheets import sheet_html
from setwright.sheets.figures import PLAIN, fibre_svg
from setwright.sheets.floors import floors_of
from setwright.sheets.station import StationCard, station_cards
from tests.pages.plans import CIRCUIT, CLUB, LONG, check


def cards(text: str) -> tuple[StationCard, ...]:
    checked = check(text)
    assert checked.week is not None
    table = checked.table or library()
    return station_cards(checked.week, "version abc", table, floors_of(checked.week, table))


def test_one_card_a_station_with_its_number_and_how_long() -> None:
    told = cards(CLUB)
    assert [(card.number, card.name) for card in told] == [
        (1, "push-up"),
        (2, "low-to-high cable crossover"),
        (3, "step-up"),
        (4, "front plank"),
    ]
    assert {card.timing for card in told} == {"40 s on, 20 s to change, 3 rounds"}
    assert told[1].where == "Monday: Press and circuit · 3b on the session sheet"
    assert told[0].footer == "Old hall club · Club evening · Mon · version abc"


def test_numbers_run_on_through_the_circuits_of_a_session() -> None:
    told = cards(CIRCUIT)
    assert [card.number for card in told] == [1, 2, 3, 4, 5, 6, 7]
    assert told[4].where == "Station crew circuit · 2a on the session sheet"


@pytest.mark.parametrize(
    ("station", "timing"),
    [
        (0, "35 s on, 25 s to change, 4 rounds"),
        (1, "35 s on, 12 reps, 25 s to change, 4 rounds"),
        (4, "10 reps, as many rounds as fit in 12:00"),
        (6, "30 s, as many rounds as fit in 12:00"),
    ],
)
def test_how_long_and_how_many(station: int, timing: str) -> None:
    assert cards(CIRCUIT)[station].timing == timing


@pytest.mark.parametrize(
    ("written", "timing"),
    [
        ("push-up: 10", "10 reps, 3 rounds"),
        ("side plank: 20 s each side", "20 s each side, 3 rounds"),
        ("suitcase carry: 30 m each side at 24 kg", "30 m each side, 3 rounds"),
        ("push-up: max", "max, 3 rounds"),
    ],
)
def test_what_is_done_once_round(written: str, timing: str) -> None:
    plan = f"plan: A\nunit: kg\nsides: each\nwork:\n  - circuit:\n      - {written}\n    rounds: 3\n"
    (card,) = cards(plan)
    assert card.timing == timing


def test_a_card_says_what_is_known_and_leaves_out_the_rest() -> None:
    _, crossover, step, plank = (dict(card.lines) for card in cards(CLUB))
    assert crossover["Do"] == "One foot forward, sweep both hands up and inward, come back slowly."
    assert crossover["Watch"].startswith("Keep the elbows a little bent")
    assert crossover["Kit"] == "cable pair"
    assert step["Load"] == "2 × 12 kg one a hand"
    assert step["Kit"] == "box, dumbbell pair"
    assert list(plank) == ["Watch", "Easier"]


def test_easier_and_harder_are_the_librarys_and_there_in_the_gym() -> None:
    push_up = dict(cards(CLUB)[0].lines)
    known = library().movement("push-up")
    there = [library().movement(key)["name"] for key in known["easier"]]
    assert push_up["Easier"] == " or ".join(there)
    assert push_up["Harder"] == "feet-raised push-up"
    assert "deep-push-up" in known["harder"]  # needs blocks, which that gym does not have
    without = dict(cards(CIRCUIT)[3].lines)
    assert without["Harder"] == "feet-raised push-up or deep push-up on blocks"


def test_when_to_stop_stands_in_the_frame() -> None:
    plan = CLUB.replace("        rounds: 3", "        stop: the bell rings\n        rounds: 3")
    assert cards(plan)[2].stop == "Stop when the knee falls inward. Stop when the bell rings."
    assert cards(plan)[3].stop == "Stop when the bell rings."


OWN = """\
plan: A
unit: kg
sides: each
movements:
  narrow arched bench:
    like: flat barbell bench press
    arch: 10 deg
  tray carry:
    pattern: carry
    counted in: s
    muscles:
      direct: [forearm flexors]
work:
  - circuit:
      - narrow arched bench: 5 at 70 kg
      - tray carry: 40 s
    rounds: 2
"""


def test_a_movement_of_the_plans_own_has_no_picture_and_no_harder_version() -> None:
    bench, tray = cards(OWN)
    assert (bench.name, bench.picture) == ("narrow arched bench", None)
    assert dict(bench.lines)["Load"] == "70 kg"
    assert (tray.timing, tray.lines) == ("40 s, 2 rounds", ())
    assert sheet_html(check(OWN), "station", "a4").count('<table class="lines">') == 1


def test_a_picture_where_the_model_can_draw_the_movement() -> None:
    assert [card.picture for card in cards(CLUB)] == ["push-up", "low-to-high-cable-crossover", None, None]


def test_the_picture_has_plain_names_inside_its_view() -> None:
    svg = fibre_svg("push-up", "120", "a", PLAIN)
    assert "collarbone" in svg
    assert "clavicular" not in svg
    label = ET.fromstring(svg).get("aria-label")
    assert label is not None
    assert label.startswith("push-up: collarbone some, breastbone much, ribs some; ")


def test_supersets_and_circuits_at_home_have_no_card() -> None:
    assert cards(LONG) == ()
    assert cards(CLUB.replace("place: old hall", "place: home")) == ()


def test_cards_are_those_that_were_looked_at(golden: Callable[[str, str], None]) -> None:
    golden("station-club-a4.html", sheet_html(check(CLUB), "station", "a4"))
