"""Squad and gym: files beside the plan or keys underneath, limits with their end, stock with its numbers."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from setwright.files import decode
from setwright.model.people import Squad
from setwright.model.reader import BlockRead, read_block
from setwright.model.room import Band, BandPull, Cable, Gym, Heights, Stock
from tests.reading.plans import read

WORK = "work:\n  - dip: 3 x 8\n"
SQUAD = """\
squad: Ostrel
unit: kg
rounding: down
pick in a range: low
athletes:
  - Bo
  - name: Tove
    born: 2001
    sex: female
    height: 1.71 m
    body mass: 63 kg
    level: intermediate
    handed: left
    weaker side: right
    participation: modified
    maxes:
      flat barbell bench press: 52.5 kg tested 2026-12-14, training max 90%
    avoid: [dip]
    limits:
      - arm behind at most: 0 deg
        side: left
        until: 2027-02-15
        set by: club physiotherapist
      - load at most: 20 kg
        until: cleared
      - no: [overhead, hanging]
        avoid: [dip, push-up]
        until: Cleared
    note: n
    private note: p
groups:
  light: [Tove]
"""
GYM = """\
gym: Hall
unit: kg
racks: 2
people per rack: 3
benches: 2
bars:
  20 kg: 2
  45 lb:
plates in the room:
  2,5: 2 pairs
dumbbells:
  4-32 kg by 2: 1 pair
cables:
  - twin tower
  - name: tower
    number: 2
    heights: floor to 2.1 m
    stack: 5-90 kg by 5
    pulley: 2 to 1
bands:
  Red:
    pull: 60 N at 2 m
    number: 4
  green: 110 N at 2 m
  blue:
stations:
  Dip bars: 1
  pull-up bar:
spotter: no
note: n
private note: p
"""


def squad(text: str) -> tuple[Squad | None, list[str]]:
    result = read(f"plan: A\nsquad: s.yaml\n{WORK}", {"s.yaml": text})
    assert result.week is not None
    return result.week.squad, [f.rule for f in result.findings]


def gym(text: str) -> tuple[Gym | None, list[str]]:
    result = read(f"plan: A\ngym: g.yaml\n{WORK}", {"g.yaml": text})
    assert result.week is not None
    return result.week.gym, [f.rule for f in result.findings]


def test_a_squad() -> None:
    read_squad, found = squad(SQUAD)
    assert found == []
    assert read_squad is not None
    assert (read_squad.name, read_squad.rounding, read_squad.groups) == (
        "Ostrel",
        "down",
        {"light": ("Tove",)},
    )
    bo, tove = read_squad.athletes
    assert bo.name == "Bo"
    assert (tove.height_cm, tove.body_mass, tove.body_mass_unit, tove.born) == (171, 63, "kg", 2001)
    assert tove.maxes[0].text == "52.5 kg tested 2026-12-14, training max 90%"
    angle, load, kinds = tove.limits
    assert (angle.angle, angle.at_most_deg, angle.side, angle.until) == (
        "arm behind",
        0,
        "left",
        "2027-02-15",
    )
    assert (load.load_at_most, load.unit, load.until) == (20, "kg", "cleared")
    assert (kinds.no, kinds.avoid, kinds.until) == (("overhead", "hanging"), ("dip", "push-up"), "cleared")


@pytest.mark.parametrize("typed", ["171", "171 cm", "171 CM", "1.71 m", "1,71 M"])
def test_a_height_is_told_in_centimetres_or_metres(typed: str) -> None:
    read_squad, found = squad(SQUAD.replace("1.71 m", typed))
    assert found == []
    assert read_squad is not None
    assert read_squad.athletes[1].height_cm == pytest.approx(171)


def test_a_gym() -> None:
    read_gym, found = gym(GYM)
    assert found == []
    assert read_gym is not None
    assert read_gym.bars == (
        Stock(low=20, high=20, unit="kg", number=2),
        Stock(low=45, high=45, unit="lb", number=1),
    )
    assert read_gym.plates == (Stock(low=2.5, high=2.5, unit="kg", number=2, pairs=True),)
    assert not read_gym.plates_per_rack
    assert read_gym.dumbbells == (Stock(low=4, high=32, step=2, unit="kg", number=1, pairs=True),)
    assert read_gym.cables == (
        Cable(name="twin tower"),
        Cable(
            name="tower",
            number=2,
            heights=Heights(at_m=(0, 2.1), between=True),
            stack=(Stock(low=5, high=90, step=5, unit="kg"),),
            pulley=2,
        ),
    )
    assert read_gym.bands == (
        Band(name="Red", pulls=(BandPull(newton=60, at_m=2),), written="60 N at 2 m", number=4),
        Band(name="green", pulls=(BandPull(newton=110, at_m=2),), written="110 N at 2 m"),
        Band(name="blue"),
    )
    assert read_gym.stations == {"dip bars": 1, "pull-up bar": 1}
    assert read_gym.spotter == "none"


def test_keys_underneath_are_the_same() -> None:
    result = read(
        f"plan: A\nunit: lb\nsquad:\n  athletes:\n    - name: Ann\ngym:\n  bars:\n    45: 1\n{WORK}"
    )
    assert result.complete
    assert result.week is not None
    assert result.week.squad is not None
    assert result.week.gym is not None
    assert result.week.gym.bars[0].unit == "lb"
    assert result.week.gym.place.line == 7


def test_findings_of_a_squad_file_carry_its_name() -> None:
    result: BlockRead = read(f"plan: A\nsquad: ../s.yaml\n{WORK}", {"../s.yaml": "squad: S\nunits: kg\n"})
    (finding,) = result.findings
    assert (finding.place.file, finding.place.line, finding.where) == ("../s.yaml", 2, "the squad")
    assert set(result.sources) == {"week.yaml", "../s.yaml"}


def test_a_limit_without_an_end_is_asked_and_stays_in_force() -> None:
    read_squad, found = squad("squad: S\nathletes:\n  - name: A\n    limits:\n      - arm up at most: 90\n")
    assert found == ["limit-without-end"]
    assert read_squad is not None
    assert read_squad.athletes[0].limits[0].until == "cleared"


@pytest.mark.parametrize(
    ("text", "rule"),
    [
        ("athletes: Ann", "value-in-wrong-form"),
        ("athletes:\n  - [a]", "value-in-wrong-form"),
        ("athletes:\n  - name: A\n    limits: none", "value-in-wrong-form"),
        ("athletes:\n  - name: A\n    limits:\n      - overhead", "value-in-wrong-form"),
        (
            "athletes:\n  - name: A\n    limits:\n      - no: [flying]\n        until: cleared",
            "not-one-of-the-words",
        ),
        (
            "athletes:\n  - name: A\n    limits:\n      - no: overhead\n        until: soon",
            "date-not-readable",
        ),
        (
            "athletes:\n  - name: A\n    limits:\n      - no: overhead\n        until: [a]",
            "value-in-wrong-form",
        ),
        (
            "athletes:\n  - name: A\n    limits:\n      - arm up at most: high\n        until: cleared",
            "number-expected",
        ),
        ("athletes:\n  - name: A\n    height: tall", "number-expected"),
        ("athletes:\n  - name: A\n    body mass: 12 stone", "number-expected"),
        ("athletes:\n  - name: A\n    body mass: [63]", "value-in-wrong-form"),
        ("athletes:\n  - name: A\n    maxes:\n      dipp: 10 kg tested 2027-01-01", "unknown-movement"),
        ("athletes:\n  - name: A\n    avoid: [dipp]", "unknown-movement"),
        (
            "athletes:\n  - name: A\n    limits:\n      - avoid: [dipp]\n        until: cleared",
            "unknown-movement",
        ),
        ("athletes:\n  - name: A\ngroups:\n  light: [B]", "not-one-of-the-words"),
        ("athletes:\n  - name: A\n    born: young", "number-expected"),
    ],
)
def test_each_fault_in_a_squad_is_one_finding(text: str, rule: str) -> None:
    assert squad(f"squad: S\n{text}\n")[1] == [rule]


@pytest.mark.parametrize(
    ("text", "rule"),
    [
        ("bars: two", "value-in-wrong-form"),
        ("bars:\n  heavy: 2", "number-expected"),
        ("bars:\n  20 kg: some", "number-expected"),
        ("bars:\n  20 kg: [2]", "value-in-wrong-form"),
        ("cables: one", "value-in-wrong-form"),
        ("cables:\n  - number: 2", "name-missing"),
        ("cables:\n  - [a]", "name-missing"),
        ("cables:\n  - name: a\n    colour: red", "unknown-key"),
        ("stations:\n  dip bars: some", "number-expected"),
        ("bands:\n  red: [60]", "band-pull-not-readable"),
        ("spotter: perhaps", "not-one-of-the-words"),
    ],
)
def test_each_fault_in_a_gym_is_one_finding(text: str, rule: str) -> None:
    assert gym(f"gym: G\n{text}\n")[1] == [rule]


def test_files_that_hold_something_else() -> None:
    assert squad("- a\n")[1] == ["value-in-wrong-form"]
    assert gym("just words\n")[1] == ["value-in-wrong-form"]
    assert squad("")[0] is None
    assert gym("")[0] is None


@pytest.mark.parametrize("text", ["", "---\n", "# nothing yet\n"])
@pytest.mark.parametrize("what", ["squad", "gym", "movements"])
def test_a_file_that_holds_nothing_is_said(what: str, text: str) -> None:
    (finding,) = read(f"plan: A\n{what}: ours.yaml\nwork:\n  - dip: 3 x 8\n", {"ours.yaml": text}).findings
    assert finding.message == f"{what}: ours.yaml holds nothing"
    assert finding.change == f"write the keys of the {what} into it, or take `{what}:` out"


def test_a_file_that_is_no_text_is_said_with_its_line() -> None:
    def beside(name: str) -> str:
        return decode("squad: Hall\nathletes:\n  - name: Zoë\n".encode("cp1252"), name)

    plan = "plan: A\nsquad: squad.yaml\nwork:\n  - dip: 3 x 8\n"
    (finding,) = read_block("week.yaml", plan, beside).findings
    assert finding.rule == "file-not-found"
    assert finding.message.startswith(
        "squad: squad.yaml, line 3: not UTF-8 text; it looks like an 8-bit file"
    )
    assert finding.change == "save it again in the editor with the encoding UTF-8"


@given(st.text(max_size=150), st.text(max_size=150))
def test_any_text_beside_a_plan_gives_people_and_room_or_findings(squad: str, gym: str) -> None:
    result = read(
        f"plan: A\nsquad: squad.yaml\ngym: gym.yaml\n{WORK}", {"squad.yaml": squad, "gym.yaml": gym}
    )
    assert result.week is not None
    told = {word for f in result.findings for word in (f.place.file, f.message.partition(":")[0])}
    assert result.week.squad is not None or told & {"squad", "squad.yaml"}
    assert result.week.gym is not None or told & {"gym", "gym.yaml"}
