"""Loads and movements under the names of athletes and groups."""

import pytest

from setwright.findings import Finding
from setwright.model.plan import Item
from tests.reading.plans import read, rules

SQUAD = """\
squad:
  athletes:
    - name: Ann
    - name: Pell
    - name: Bo
  groups:
    light: [Ann, Pell]
    early: [Ann, Bo]
"""


def plan(below: str, line: str = "dip: 3 x 8", squad: str = SQUAD) -> str:
    """A plan of one line with keys underneath, one a line."""
    keys = "".join(f"    {key}\n" for key in below.splitlines())
    return f"plan: A\nunit: kg\nsides: each\n{squad}work:\n  - {line}\n{keys}"


def item(below: str, line: str = "dip: 3 x 8") -> Item:
    result = read(plan(below, line))
    assert result.findings == ()
    assert result.week is not None
    return result.week.sessions[0].items()[0]


def told(text: str) -> Finding:
    (finding,) = read(text).findings
    return finding


def test_loads_by_name_none_zero_and_not_written_stay_apart() -> None:
    one = item("load:\n  light: 20, 25, 30 kg\n  bo: none\n  Ann: 0 kg")
    loads = {own.who: [load.low for load in own.loads] for own in one.loads}
    assert loads == {"Ann": [0], "Bo": [], "light": [20, 25, 30]}
    assert [own.who for own in one.loads] == ["Bo", "Ann", "light"]
    assert "Pell" not in loads
    assert one.dose is not None
    assert one.dose.groups[0].works[0].load is None


def test_the_load_of_the_line_is_for_everybody_else() -> None:
    one = item("load:\n  Pell: 10 kg", "dip: 3 x 8 at 20 kg")
    assert one.dose is not None
    load = one.dose.groups[0].works[0].load
    assert load is not None
    assert (load.low, [own.who for own in one.loads]) == (20, ["Pell"])


def test_a_movement_instead_has_the_dose_and_the_words_of_the_line() -> None:
    one = item("note: slow\nrest: 2:00\ninstead:\n  Pell: press-up")
    (instead,) = one.instead
    (line,) = instead.lines
    assert (line.key, line.dose, line.note, line.instead) == ("push-up", one.dose, "slow", ())
    assert line.place.line > one.place.line


def test_lines_instead_have_their_own_dose() -> None:
    one = item(
        "instead:\n  light:\n    - leg press: 3 x 10\n    - one-arm dumbbell row: 2 x 9\n      note: slow"
    )
    (instead,) = one.instead
    assert [line.key for line in instead.lines] == ["leg-press", "one-arm-dumbbell-row"]
    assert [line.note for line in instead.lines] == [None, "slow"]
    row = instead.lines[1].dose
    assert row is not None
    assert row.groups[0].sides is not None


def test_a_member_of_rounds_says_one_round_for_others_too() -> None:
    work = (
        "work:\n  - circuit:\n      - push-up: 10\n        instead:\n          Bo:\n            - dip: 12\n"
    )
    head = f"plan: A\n{SQUAD}"
    assert rules(f"{head}{work}    rounds: 3\n") == []
    assert rules(f"{head}{work.replace('dip: 12', 'dip: 3 x 12')}    rounds: 3\n") == ["sets-in-a-round"]


def test_in_a_warm_up_too() -> None:
    warm_up = "warm-up:\n  - push-up: 1 x 10\n    instead:\n      Bo: our own drill\n"
    week = read(f"plan: A\n{SQUAD}{warm_up}work:\n  - dip: 3 x 8\n").week
    assert week is not None
    (instead,) = week.sessions[0].warm_up[0].instead
    assert [(line.name, line.key) for line in instead.lines] == [("our own drill", None)]


@pytest.mark.parametrize("key", ["load:\n  {}: 10 kg", "instead:\n  {}: push-up"])
def test_a_name_that_nobody_has_is_met_with_the_nearest(key: str) -> None:
    near, far = told(plan(key.format("Pelle"))), told(plan(key.format("Xyz")))
    assert (near.rule, near.change) == ("unknown-athlete", "write `Pell:`")
    assert far.change == "write one of Ann, Pell, Bo, light, early"
    nobody = told(plan(key.format("Pell"), squad=""))
    assert nobody.rule == "unknown-athlete"
    assert nobody.change == "write the squad under `squad:`, with a `- name:` for each of its `athletes:`"
    assert all("Pelle" not in f"{one.message} {one.change}" for one in (near, far, nobody))


def test_a_squad_that_can_not_be_read_is_the_only_fault() -> None:
    assert rules(plan("instead:\n  Pell: push-up", squad="squad: gone.yaml\n")) == ["file-not-found"]


def test_groups_that_share_somebody_need_a_line_for_them() -> None:
    finding = told(plan("load:\n  light: 10 kg\n  early: 20 kg"))
    assert finding.message == "Ann is in light and in early; which of the two holds?"
    assert finding.change == "write a line for Ann too"
    assert [own.who for own in item("load:\n  light: 10 kg\n  early: 20 kg\n  Ann: 15 kg").loads] == [
        "Ann",
        "light",
        "early",
    ]


@pytest.mark.parametrize(
    ("below", "rule"),
    [
        ("load:\n  Ann: 10 kg\n  ann: 20 kg", "double-key"),
        ("load:\n  Ann: 10 kg\n  week 2: 20 kg\n  week 3: 20 kg", "weeks-and-other-keys"),
        ("load:\n  week 2: 20 kg", "no-such-week"),
        ("load:\n  Ann:", "value-in-wrong-form"),
        ("load:\n  Ann: [10 kg, 20 kg]", "value-in-wrong-form"),
        ("load:\n  Ann: heavier", "words-not-read"),
        ("load:\n  Ann: 10, 20 kg", "set-count-differs"),
        ("for: [heavy]", "unknown-athlete"),
        ("not for: [Anne]", "unknown-athlete"),
        ("not for:\n  Ann: yes", "value-in-wrong-form"),
        ("instead: push-up", "value-in-wrong-form"),
        ("instead:\n  Ann:", "value-in-wrong-form"),
        ("instead:\n  Ann: none", "value-in-wrong-form"),
        ("instead:\n  Ann: |\n    push-up\n    dip", "value-over-two-lines"),
        ("instead:\n  Ann: leg press: 3 x 10", "second-colon"),
        ('instead:\n  Ann: "leg press: 3 x 10"', "value-in-wrong-form"),
        ("instead:\n  Ann:\n    leg press: 3 x 10", "value-in-wrong-form"),
        ("instead:\n  Ann:\n    - leg press", "dose-missing"),
        ("instead:\n  Ann:\n    - rest: 2:00", "key-among-movements"),
        ("instead:\n  Ann:\n    - superset:\n        - dip: 3 x 8", "value-in-wrong-form"),
        ("instead:\n  Ann:\n    - dip: 3 x 8\n      instead:\n        Bo: push-up", "value-in-wrong-form"),
        ("instead:\n  Ann: xyzzy", "unknown-movement"),
        ("instead:\n  Ann: front plank", "number-without-unit"),
        ("instead:\n  Ann: row", "movement-unclear"),
    ],
)
def test_each_slip_is_one_finding(below: str, rule: str) -> None:
    assert rules(plan(below)) == [rule]


@pytest.mark.parametrize(
    ("below", "who"),
    [
        ("not for: [Ann]\nload:\n  Ann: 10 kg", "Ann"),
        ("not for: [light]\ninstead:\n  Pell: push-up", "Pell"),
        ("not for: [Ann, Pell]\ninstead:\n  light: push-up", "light"),
        ("for: [Ann]\nload:\n  Bo: none", "Bo"),
    ],
)
def test_who_is_kept_from_a_line_has_nothing_of_their_own_in_it(below: str, who: str) -> None:
    finding = told(plan(below))
    assert finding.rule == "line-not-for-them"
    assert finding.message == f"the line is not for {who}, who has a value of their own in it"


def test_who_is_kept_from_a_group_has_nothing_of_their_own_in_its_lines() -> None:
    own = "        load:\n          Bo: 5 kg\n"
    work = f"work:\n  - superset:\n      - dip: 3 x 8\n{own}      - push-up: 3 x 8\n"
    assert rules(f"plan: A\n{SQUAD}{work}    not for: [Bo]\n") == ["line-not-for-them"]
    assert rules(f"plan: A\n{SQUAD}{work}    not for: [Ann]\n") == []


def test_a_line_for_some_of_a_group_may_have_a_value_for_all_of_it() -> None:
    assert [own.who for own in item("not for: [Ann]\nload:\n  light: 10 kg").loads] == ["light"]


def test_a_line_behind_a_name_goes_on_a_line_of_its_own() -> None:
    finding = told(plan('instead:\n  Ann: "leg press: 3 x 10"'))
    assert finding.change == "write `Ann:` and, on the next line and further in, `- leg press: 3 x 10`"


def test_a_load_in_a_timed_circuit_needs_no_dose() -> None:
    work = "work:\n  - circuit:\n      - goblet squat:\n        load:\n          Bo: 10 kg\n    each: 40 s\n"
    assert rules(f"plan: A\n{SQUAD}{work}") == []
