"""An on-duty crew of five in an interval circuit, as a fire station brings it. Everyone is invented."""

from setwright.checked import Checked
from setwright.findings import Level
from tests.rules.plans import checked, of

PLAN = """\
plan: Station 9 crew circuit
unit: kg
sides: each
people: 5
minutes: 40
if interrupted: finish the station, note its number, start again at the next one
work:
  - circuit:
      - dumbbell floor press: at 2 x 20 kg
      - sled drag: 15 m
      - chest-supported dumbbell row: at 2 x 20 kg
      - step-up
      - push-up
      - standing barbell overhead press
    rounds: 4
    each: 35 s
    between moves: 25 s
    rest: 2:00
  - front plank: 1 x 60 s
  - side plank: 1 x 30 s each side
gym:
  racks: 1
  benches: 1
  bars:
    20 kg: 1
  dumbbells:
    20 kg: 1 pair
  stations:
    sled: 1
    box: 1
"""


def circuit(text: str = PLAN) -> Checked:
    one = checked(text)
    assert one.coverage is not None
    return one


def test_one_pair_of_dumbbells_at_two_stations_at_once_is_a_gap() -> None:
    (found,) = (f for f in circuit().findings if f.rule == "too-few-stations")
    assert found.level is Level.gap
    assert found.message == (
        "the session's circuit needs 4 dumbbells of 20 kg at once, 2 there: "
        "dumbbell floor press and chest-supported dumbbell row"
    )
    assert not of(circuit(PLAN.replace("20 kg: 1 pair", "20 kg: 2 pairs")), "too-few-stations")


def test_it_fits_forty_minutes_and_an_empty_station_is_fine() -> None:
    """Four rounds of six times a minute and three rests of two: 30 min, then the planks."""
    one = circuit()
    assert one.coverage is not None
    assert 30 <= one.coverage.sessions[0].minutes <= 40
    assert not of(one, "session-over-time")
    assert [f.rule for f in one.findings if f.level >= Level.gap] == ["too-few-stations"]
