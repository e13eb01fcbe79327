"""The gym file in full: weights, cables and bands typed, each fault with what to type, and said back."""

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.findings import Finding
from setwright.model.room import Gym, Stock, kilograms
from setwright.report.read import read_text
from tests.reading.plans import read

WORK = "work:\n  - pull-up: 3 x 8\n"


def read_gym(text: str, unit: str = "kg") -> tuple[Gym, tuple[Finding, ...]]:
    result = read(f"plan: A\nunit: {unit}\ngym: g.yaml\n{WORK}", {"g.yaml": f"gym: Hall\n{text}\n"})
    assert result.week is not None
    assert result.week.gym is not None
    return result.week.gym, result.findings


def fault(text: str) -> Finding:
    (finding,) = read_gym(text)[1]
    return finding


def masses(text: str, unit: str = "kg") -> tuple[tuple[float, ...], str]:
    gym, findings = read_gym(f"dumbbells:\n  {text}: 1 pair", unit)
    assert findings == ()
    (stock,) = gym.dumbbells
    return tuple(float(mass) for mass in stock.masses()), stock.unit


@pytest.mark.parametrize(
    ("typed", "weights", "unit"),
    [
        ("20 kg", (20,), "kg"),
        ("20", (20,), "kg"),
        ("2,5 kg", (2.5,), "kg"),
        ("25-40 lb by 5", (25, 30, 35, 40), "lb"),
        ("4 to 10 kg in steps of 2", (4, 6, 8, 10), "kg"),
        ("4 kg - 10 kg by 2 kg", (4, 6, 8, 10), "kg"),
        ("1-2 by 0.1", (1, 1.1, 1.2, 1.3, 1.4, 1.5, 1.6, 1.7, 1.8, 1.9, 2), "kg"),
        ("35 lb dumbbells", (35,), "lb"),
    ],
)
def test_a_run_of_weights_is_every_weight_in_it(typed: str, weights: tuple[float, ...], unit: str) -> None:
    assert masses(typed) == (weights, unit)


def test_a_weight_without_a_unit_has_the_gyms_then_the_plans() -> None:
    assert masses("20", unit="lb")[1] == "lb"
    gym, _ = read_gym("unit: lb\ncables:\n  - name: tower\n    stack: 10-100 by 10", unit="kg")
    assert gym.cables[0].stack[0].unit == "lb"


def test_a_pound_is_exact() -> None:
    """0.453 592 37 kg by definition: NIST Handbook 44, appendix C."""
    assert kilograms(Fraction(100), "lb") == Fraction(45359237, 1000000)
    assert kilograms(Fraction(100), "kg") == 100


def test_bars_may_carry_a_name() -> None:
    gym, findings = read_gym("bars:\n  20 kg: 2\n  EZ bar 10 kg: 1\n  25 kg trap bar: 1\n  15 kg bar: 1")
    assert findings == ()
    assert [bar.name for bar in gym.bars] == [None, "EZ bar", "trap bar", None]
    assert [bar.low for bar in gym.straight_bars] == [20, 15]
    assert [bar.low for bar in gym.bars_named("trap")] == [25]


def test_a_pair_is_two() -> None:
    assert Stock(low=20, high=20, unit="kg", number=3, pairs=True).singles == 6
    assert Stock(low=20, high=20, unit="kg", number=3).singles == 3


@pytest.mark.parametrize(
    ("typed", "at_m", "between"),
    [
        ("floor to 2.1 m", (0, 2.1), True),
        ("20 cm - 210 cm", (0.2, 2.1), True),
        ("[floor, 1.2 m, 2.1 m]", (0, 1.2, 2.1), False),
        ("floor, 1,2 m, 2,1 m", (0, 1.2, 2.1), False),
        ("1 m", (1,), False),
    ],
)
def test_heights_of_a_pulley(typed: str, at_m: tuple[float, ...], *, between: bool) -> None:
    gym, findings = read_gym(f"cables:\n  - name: tower\n    heights: {typed}")
    assert findings == ()
    heights = gym.cables[0].heights
    assert heights is not None
    assert (heights.at_m, heights.between) == (at_m, between)


@pytest.mark.parametrize(("typed", "ratio"), [("2 to 1", 2), ("1 to 1", 1), ("2:1", 2), ("3 to 2", 1.5)])
def test_the_pulley_divides_the_pin(typed: str, ratio: float) -> None:
    gym, findings = read_gym(f"cables:\n  - name: tower\n    pulley: {typed}")
    assert findings == ()
    assert gym.cables[0].pulley == ratio


def test_a_stack_may_change_its_step() -> None:
    gym, findings = read_gym("cables:\n  - name: tower\n    stack: 5-10 kg by 2.5, 15-25 kg by 5")
    assert findings == ()
    assert [float(mass) for run in gym.cables[0].stack for mass in run.masses()] == [5, 7.5, 10, 15, 20, 25]


@pytest.mark.parametrize(
    ("typed", "pulls"),
    [
        ("60 N at 2 m", [(60, 2)]),
        ("90 N at 2,5 m, 60 N at 200 cm", [(60, 2), (90, 2.5)]),
        ("[60 N at 2 m, 90 N to 2.5 m]", [(60, 2), (90, 2.5)]),
        ("6 kg at 2 m", [(58.8399, 2)]),
        ("10 lb at 2 m", [(44.4822, 2)]),
    ],
)
def test_a_band_by_its_pulls(typed: str, pulls: list[tuple[float, float]]) -> None:
    """Standard gravity 9.80665 (CGPM 1901); 1 lbf = 4.448 222 N (NIST SP 811, appendix B)."""
    gym, findings = read_gym(f"bands:\n  red: {typed}")
    assert findings == ()
    assert [(pull.newton, pull.at_m) for pull in gym.bands[0].pulls] == [
        pytest.approx(pull, abs=1e-4) for pull in pulls
    ]


@pytest.mark.parametrize(
    ("text", "rule", "change"),
    [
        ("dumbbells:\n  4-31 kg by 2: 1 pair", "run-of-weights", "write `4-30 kg by 2` or `4-32 kg by 2`"),
        ("dumbbells:\n  4-32 kg: 1 pair", "run-of-weights", "`4-32 kg by 2`"),
        ("dumbbells:\n  32-4 kg by 2: 1 pair", "run-of-weights", "`4-32 kg by 2`"),
        ("dumbbells:\n  4-32 kg by 0: 1 pair", "run-of-weights", "the step between two neighbours"),
        ("dumbbells:\n  1-100 kg by 0.001: 1 pair", "run-of-weights", "at most 200"),
        ("cables:\n  - name: tower\n    stack: 5-90 kg", "run-of-weights", "`5-90 kg by 2`"),
        ("bars:\n  20 kg (45 lb): 2", "two-units-in-one-weight", "`20 kg` or `45 lb`"),
        ("dumbbells:\n  4-40 kg by 5 lb: 1 pair", "two-units-in-one-weight", "a line of its own"),
        ("plates per rack:\n  20 kg: 2 pairs\n  20: 1 pair", "weight-listed-twice", "each weight once"),
        ("plates per rack:\n  125 kg: 1 pair", "weight-unlikely", "from 0.1 to 60 kg is read"),
        ("plates per rack:\n  0 kg: 1 pair", "weight-unlikely", "what is stamped on it"),
        ("bars:\n  450 lb: 1", "weight-unlikely", "from 2.2 to 132 lb is read"),
        ("plates per rack:\n  green 10 kg: 1 pair", "number-expected", "write the weight first"),
        (
            "plates per rack:\n  5 kg: 1 pair\nplates in the room:\n  5 kg: 9 pairs",
            "weight-listed-twice",
            "keep `plates per rack:`",
        ),
        ("cables:\n  - name: tower\n    pulley: 1 to 2", "number-expected", "`2 to 1`"),
        ("cables:\n  - name: tower\n    pulley: 0 to 0", "number-expected", "`2 to 1`"),
        ("cables:\n  - name: tower\n    pulley: half", "number-expected", "`2 to 1`"),
        ("cables:\n  - name: tower\n    heights: high", "number-expected", "`floor to 2.1 m`"),
        ("cables:\n  - name: tower\n    heights: 2 m to 1 m", "number-expected", "`floor to 2.1 m`"),
        ("bands:\n  red: 60 N", "band-pull-not-readable", "`60 N at 2 m`"),
        ("bands:\n  red: 4", "band-pull-not-readable", "`number: 2`"),
        ("bands:\n  red: 60 N at 2 m, 50 N at 2.5 m", "band-pull-not-readable", "the longer the harder"),
        ("bands:\n  red: 60 N at 2 m, 50 N at 200 cm", "band-pull-not-readable", "one pull for each length"),
        ("stations:\n  dipping bars: 1", "unknown-station", "write `dip bars`"),
        ("stations:\n  wobbly log: 1", "unknown-station", "under `kit:` of a movement of your own"),
    ],
)
def test_each_fault_says_what_to_type(text: str, rule: str, change: str) -> None:
    finding = fault(text)
    assert (finding.rule, finding.where) == (rule, "the gym")
    assert change in finding.change


def test_a_weight_with_a_fault_is_left_out_and_the_others_are_read() -> None:
    gym, _ = read_gym("plates per rack:\n  125 kg: 1 pair\n  20 kg: 2 pairs")
    assert [plate.low for plate in gym.plates] == [20]


def test_plates_listed_both_ways_are_those_of_the_rack() -> None:
    gym, _ = read_gym("plates in the room:\n  5 kg: 9 pairs\nplates per rack:\n  5 kg: 1 pair")
    assert (gym.plates[0].number, gym.plates_per_rack) == (1, True)


@pytest.mark.parametrize("typed", ["pull up bar", "Pull-Up Bars", "pull-up bar"])
def test_a_station_is_found_whatever_its_spelling(typed: str) -> None:
    gym, findings = read_gym(f"stations:\n  {typed}: 2")
    assert findings == ()
    assert gym.stations == {"pull-up bar": 2}


def test_a_station_of_ones_own_movement_is_known() -> None:
    muscles = "    pattern: carry\n    muscles:\n      direct: [forearm flexors]\n"
    own = f"movements:\n  tray carry:\n{muscles}    kit: [tray]\n"
    result = read(f"plan: A\n{own}gym:\n  stations:\n    tray: 2\n{WORK}")
    assert result.findings == ()


def test_everything_in_the_gym_is_said_back() -> None:
    room = """\
gym: Hall
bars:
  20 kg: 2
  EZ bar 10 kg: 1
plates per rack:
  20 kg: 2 pairs
  45 lb: 1 pair
mixed plates: yes
cables:
  - name: tower
    heights: [floor, 1.2 m]
    stack: 5-50 kg by 5, 60-100 kg by 10
    pulley: 1 to 1
bands:
  red: 6 kg at 2 m
note: quiet after nine
private note: key under the mat"""
    result = read(f"plan: A\ngym: g.yaml\n{WORK}", {"g.yaml": room})
    assert result.findings == ()
    said = " ".join(read_text(result).split())
    for words in (
        "bars: 2 of 20 kg, 1 of 10 kg EZ bar",
        "plates on each rack: 2 pairs of 20 kg, 1 pair of 45 lb",
        "plates in kg and lb on one bar: yes",
        "1 x tower, pulley at the floor, 1.2 m, stack 5 to 50 kg in steps of 5, 60 to 100 kg in steps of 10",
        "in steps of 10, the handle pulls what the pin says",
        "bands: red 58.8 N at 2 m (typed 6 kg at 2 m)",
        "note: quiet after nine",
        "private note, never printed: key under the mat",
    ):
        assert words in said


PIECES = st.sampled_from(
    [
        "20",
        "2,5",
        "4-32",
        "kg",
        "lb",
        "by",
        "2",
        "0",
        "pair",
        "EZ bar",
        "to",
        "1",
        ":",
        "N",
        "at",
        "m",
        "-",
        "/",
    ]
)
TYPED = st.lists(PIECES, min_size=1, max_size=7).map(" ".join)


@settings(max_examples=150, deadline=None)
@given(TYPED, TYPED, st.sampled_from(["bars", "plates per rack", "dumbbells", "bands", "stations"]))
def test_any_text_in_a_gym_is_read_or_asked_and_never_breaks(name: str, value: str, key: str) -> None:
    gym, findings = read_gym(f'{key}:\n  "{name}": "{value}"')
    kept = (*gym.bars, *gym.plates, *gym.dumbbells, *gym.bands, *gym.stations)
    assert kept or findings
    for stock in (*gym.bars, *gym.plates, *gym.dumbbells):
        assert all(0 < mass < 1000 for mass in stock.masses())


@settings(max_examples=60, deadline=None)
@given(TYPED, st.sampled_from(["heights", "stack", "pulley"]))
def test_any_text_in_a_cable_is_read_or_asked_and_never_breaks(value: str, key: str) -> None:
    gym, findings = read_gym(f'cables:\n  - name: tower\n    {key}: "{value}"')
    assert getattr(gym.cables[0], key) or findings
