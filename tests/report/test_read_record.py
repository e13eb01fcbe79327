"""A record, a squad and a gym read alone, as ``read`` and ``check`` say them."""

import json

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.checked import Checked, check_file
from setwright.model.reader.alone import kind_of, read_alone
from setwright.report import machine, terminal
from setwright.report.read import alone_text
from tests.model.test_record import LINES, PAPER

SQUAD = """\
squad: Hall
athletes:
  - name: Ann
    level: beginner
    limits:
      - arm up at most: 90 deg
        until: cleared
  - name: Bo
groups:
  light: [Ann]
rounding: down
note: our own
private note: nobody's business
"""


def checked(text: str) -> Checked:
    return check_file("one.yaml", text, lambda _: None)


def said(text: str) -> str:
    kind = kind_of(text)
    assert kind is not None
    return " ".join(alone_text(read_alone(kind, "one.yaml", text)).split())


def test_a_record_is_said_back_line_by_line() -> None:
    text = said(PAPER)
    for words in (
        "Record of First six weeks at the quay shed week: 1 session: A date: 2027-02-01",
        "loads without a unit: in the unit of the plan note: wet floor private note, never printed: short",
        "Marlo barbell back squat: 3 sets, 24 repetitions: 42.5 kg x 8, 8, 8 at RPE 7",
        "flat barbell bench press: 3 sets, 27 repetitions: 40 x 10, 9, 8",
        "one-arm band press across the body: done as the plan says",
        "one-arm dumbbell row: not written",
        "30 kg x 10, 10, 0; instead of one-arm dumbbell row; note: new handle; private note, never printed",
        "front plank: not done, ran out of time something nobody planned: not done; not in the library, kept",
        "note: slept badly note: left early private note, never printed: exams",
        "Pell nothing written",
    ):
        assert words in text


@pytest.mark.parametrize(
    ("line", "words"),
    [
        ("8", "1 set, 8 repetitions: 8"),
        ("10 each arm, 9 each arm", "2 sets, 19 repetitions a side: 10 each arm, 9 each arm"),
        ("30 s, 20 s", "2 sets: 30 s, 20 s"),
        ("62,5 kg x 8", "62.5 kg x 8; 62,5 is read as 62.5"),
        ("8 8", "dip: could not be read"),
    ],
)
def test_sums_are_told_where_they_mean_something(line: str, words: str) -> None:
    assert words in said(f"record: A\ndone:\n  Ann:\n    - dip: {line}\n")


def test_a_name_of_several_movements_is_known() -> None:
    assert said("record: A\ndone:\n  Ann:\n    - row: 8\n").endswith("row: 1 set, 8 repetitions: 8")


def test_a_record_without_its_week_says_so() -> None:
    assert "week: not written session: not written date: not written loads without a unit: kg" in said(
        "record: A\nunit: kg\ndone:\n"
    )


def test_a_squad_and_a_gym_are_said_back() -> None:
    text = said(SQUAD)
    assert "Squad: Hall Ann: beginner; arm up at most 90 degrees until cleared Bo group light: Ann" in text
    assert "rounded: down; of a range the low one is taken note: our own private note, never" in text
    assert "Gym: Hall racks: 2" in said("gym: Hall\nracks: 2\n")


@pytest.mark.parametrize(
    ("text", "head"),
    [
        (SQUAD, "one.yaml: 2 athletes read, nothing to mend\n"),
        ("squad: A\nathletes:\n  - Ann\n", "one.yaml: 1 athlete read, nothing to mend\n"),
        ("gym: Hall\n", "one.yaml: the gym read, nothing to mend\n"),
        (PAPER, "one.yaml: 7 lines of 2 athletes read, nothing to mend\n"),
    ],
)
def test_check_says_what_was_read(text: str, head: str) -> None:
    assert terminal.text(checked(text), colour=False) == head


def test_check_says_what_is_to_be_mended() -> None:
    screen = terminal.text(checked("record: A\ndone:\n  Ann:\n    - dip: 8 8\n"), colour=False)
    assert screen.startswith("one.yaml: 1 line of 1 athlete read, what to mend stands below\n\nerror [1]: ")
    assert screen.endswith("\n1 error\n")
    assert "\n4 |     - dip: 8 8\n" in screen
    broken = terminal.text(checked(f"gym: {'[' * 60}"), colour=False)
    assert broken.startswith("one.yaml: nothing of this gym could be read\n")


def test_what_can_not_be_read_at_all_is_only_its_faults() -> None:
    assert said(f"gym: {'[' * 60}").startswith("Could not be read as written one.yaml, line 1: ")


def test_names_stay_out_of_machine_output() -> None:
    one = checked("record: A\ndone:\n  Ann: done\n  Bo:\n    - dip: 8 8\n")
    for text in (json_of(one), machine.short(one), machine.github(one)):
        assert "Ann" not in text
        assert "Bo" not in text
    assert "Ann" in machine.short(one, with_names=True)
    report = json.loads(json_of(one))
    assert report["plans"][0]["complete"] is False
    assert [f["where"] for f in report["findings"]] == ["an athlete", "an athlete"]


def json_of(one: Checked) -> str:
    return machine.json_text([one])


@settings(max_examples=60, deadline=None)
@given(
    st.sampled_from(["record: A", "squad: A", "gym: A"]),
    st.lists(st.sampled_from([*LINES, *SQUAD.splitlines()]) | st.text(max_size=30), max_size=20),
)
def test_any_file_is_checked_and_said_back(first: str, lines: list[str]) -> None:
    text = "\n".join([first, *lines])
    one = checked(text)
    assert terminal.text(one, colour=False).endswith("\n")
    assert json.loads(machine.json_text([one]))["format"] == "setwright-findings/1"
    kind = kind_of(text)
    if kind is not None:
        assert alone_text(read_alone(kind, "one.yaml", text)).endswith("\n")
