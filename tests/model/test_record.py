"""Record files: every key, the four states, what is kept, what is asked, and which file is which."""

import datetime as dt

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.model.people import Squad
from setwright.model.reader.alone import FileRead, kind_of, read_alone
from setwright.model.reader.record import read_record
from setwright.model.record import Record
from setwright.model.room import Gym

PAPER = """\
record: First six weeks at the quay shed
week: 1
session: A
date: 2027-02-01
note: wet floor
private note: short of staff
done:
  Marlo:
    - barbell back squat: 42.5 kg x 8, 8, 8 at RPE 7
    - flat barbell bench press: 40 x 10, 9, 8
    - one-arm band press across the body: done
    - one-arm dumbbell row:
    - machine row: 30 kg x 10, 10, 0
      instead of: one-arm dumbbell row
      note: new handle
      private note: elbow
    - front plank: not done, ran out of time
    - something nobody planned: not done
    - note: slept badly
    - note: left early
    - private note: exams
  Pell:
"""


def record(text: str) -> Record:
    read = read_record("monday.yaml", text)
    assert read.findings == ()
    assert read.complete
    assert read.record is not None
    return read.record


def asked(body: str) -> list[tuple[str, int, str]]:
    read = read_record("monday.yaml", f"record: A\nunit: kg\ndone:\n  Ann:\n{body}")
    return [(f.rule, f.place.line, f.where) for f in read.findings]


def test_the_top_of_a_record() -> None:
    one = record(PAPER)
    assert (one.plan, one.week, one.session) == ("First six weeks at the quay shed", 1, "A")
    assert (one.date, one.unit, one.place.line) == (dt.date(2027, 2, 1), None, 1)
    assert (one.note, one.private_note) == ("wet floor", "short of staff")
    assert [athlete.name for athlete in one.athletes] == ["Marlo", "Pell"]


def test_blank_zero_not_done_and_done_stay_apart() -> None:
    lines = {line.name: line.done for line in record(PAPER).athletes[0].lines}
    kinds = {name: done.kind for name, done in lines.items() if done}
    assert kinds == {
        "barbell back squat": "sets",
        "flat barbell bench press": "sets",
        "one-arm band press across the body": "done",
        "one-arm dumbbell row": "not written",
        "machine row": "sets",
        "front plank": "not done",
        "something nobody planned": "not done",
    }
    row, plank, other = (lines[n] for n in ("machine row", "front plank", "something nobody planned"))
    assert row is not None
    assert row.sets[-1].amount.span.low == 0
    assert [done.reason for done in (plank, other) if done] == ["ran out of time", None]


def test_remarks_and_what_was_changed_to_are_kept() -> None:
    marlo, pell = record(PAPER).athletes
    row = marlo.lines[4]
    assert (row.instead_of, row.note, row.private_note) == ("one-arm dumbbell row", "new handle", "elbow")
    assert (marlo.notes, marlo.private_notes) == (("slept badly", "left early"), ("exams",))
    assert (pell.lines, pell.notes) == ((), ())


@pytest.mark.parametrize(
    ("top", "plans", "unit"), [("", None, None), ("", "lb", "lb"), ("unit: kg\n", "lb", "kg")]
)
def test_the_unit_is_the_records_then_the_plans(top: str, plans: str | None, unit: str | None) -> None:
    text = f"record: A\n{top}done:\n  Ann:\n    - dip: 20 x 5\n"
    read = read_record("monday.yaml", text, plans)  # type: ignore[arg-type]
    assert read.record is not None
    done = read.record.athletes[0].lines[0].done
    assert done is not None
    assert done.sets[0].load is not None
    assert done.sets[0].load.unit == unit


@pytest.mark.parametrize(
    ("body", "rule"),
    [
        ("    - dip: ✓\n", "record-tick"),
        ("    - dip: -\n", "value-starts-with-sign"),
        ("    - dip: 3 x 8\n", "record-sets-first"),
        ("    - dip\n", "value-in-wrong-form"),
        ("    - [dip]\n", "value-in-wrong-form"),
        ("    - dip: [8, 8]\n", "value-in-wrong-form"),
        ("    - instead of: dip\n", "key-among-movements"),
        ("    - dip: 8\n      insted of: row\n", "unknown-key"),
        ("    - dip: 8\n    - dip: 8 8\n", "record-not-read"),
        ("    - note: [a]\n", "value-in-wrong-form"),
        ('    - ""\n', "value-in-wrong-form"),
        ('    - "": 8\n', "value-in-wrong-form"),
    ],
)
def test_what_can_not_be_read_is_one_finding_of_the_athlete(body: str, rule: str) -> None:
    ((found, line, where),) = asked(body)
    assert found == rule
    assert line == 4 + body.count("\n") - ("insted" not in body and body.count("\n") - 1 > 1)
    assert where in ("Ann", "the text")


@pytest.mark.parametrize(
    ("body", "change"),
    [
        ("  Ann:\n    - dip\n", "`- dip: done`; nothing behind it is not written"),
        ("  Ann:\n    - 8, 8, 6\n", "write the movement in front, for example `- dip: 8, 8, 6`"),
        ("  Ann: not done, ill\n", "`- dip: 8, 8, 6`; a remark is `- note: not done, ill`"),
        ("  Ann:\n    dip: 8\n", "write one line a movement under `Ann:`, for example `- dip: 8, 8, 6`"),
    ],
)
def test_what_to_type_instead(body: str, change: str) -> None:
    (finding,) = read_record("monday.yaml", f"record: A\ndone:\n{body}").findings
    assert finding.change.endswith(change)


def test_an_unreadable_line_leaves_the_others() -> None:
    read = read_record("monday.yaml", "record: A\ndone:\n  Ann:\n    - dip: 8 8\n    - row: 8\n    -\n")
    assert read.record is not None
    assert not read.complete
    dip, row = read.record.athletes[0].lines
    assert dip.done is None
    assert row.done is not None


@pytest.mark.parametrize(
    ("text", "rules"),
    [
        ("", ["value-in-wrong-form"]),
        ("{}", ["value-in-wrong-form"]),
        ("record:\ndone:\n", ["name-missing"]),
        ("record: A\n", ["work-missing"]),
        ("week: 1\n", ["name-missing", "work-missing"]),
        ("record: A\ndone: all\n", ["value-in-wrong-form"]),
        ("record: A\ndone:\n  Ann: done\n", ["value-in-wrong-form"]),
        ("record: A\ndone:\n  Ann:\n    - x@: 8\n   - y: 8\n", ["line-out-of-line"]),
    ],
)
def test_what_is_missing_at_the_top(text: str, rules: list[str]) -> None:
    assert [f.rule for f in read_record("monday.yaml", text).findings] == rules


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("squad: A\nathletes:\n", "squad"),
        ("# a remark: with a colon\n---\n\nGym: Hall\n", "gym"),
        ("\ufeffrecord: A\n", "record"),
        ("squad: squad.yaml\nplan: A\n", None),
        ("gym: Hall\nwork:\n  - dip: 3 x 8\n", None),
        ("squad: A\nexercises:\n", None),
        ("athletes:\n  - Ann\nsquad: A\n", None),
        ("  squad: A\n", None),
        ("plan: A\n", None),
        ("squad\n", None),
        ("", None),
    ],
)
def test_the_first_key_tells_the_kind(text: str, kind: str | None) -> None:
    assert kind_of(text) == kind


def test_each_kind_is_read_alone() -> None:
    squad = read_alone("squad", "squad.yaml", "squad: A\nathletes:\n  - name: Ann\n  - name: Bo\n")
    assert isinstance(squad.held, Squad)
    assert squad.names == {"Ann", "Bo"}
    gym = read_alone("gym", "gym.yaml", "gym: Hall\nracks: 2\n")
    assert isinstance(gym.held, Gym)
    assert (gym.held.racks, gym.names, gym.complete) == (2, frozenset(), True)
    paper = read_alone("record", "monday.yaml", PAPER)
    assert isinstance(paper.held, Record)
    assert paper.names == {"Marlo", "Pell"}
    assert list(paper.sources) == ["monday.yaml"]


@pytest.mark.parametrize("kind", ["squad", "gym"])
def test_a_file_that_breaks_off_is_no_squad(kind: str) -> None:
    read = read_alone(kind, "one.yaml", f"{kind}: [A\n")  # type: ignore[arg-type]
    assert read.findings
    assert not read.complete


def test_an_athlete_without_a_name_is_said_and_read() -> None:
    read = read_record("monday.yaml", 'record: A\ndone:\n  " ":\n    - dip: 8 8\n')
    assert [(f.rule, f.where) for f in read.findings] == [
        ("name-missing", "the text"),
        ("record-not-read", "an athlete"),
    ]
    assert read.record is not None
    assert len(read.record.athletes[0].lines) == 1


VALUES = st.sampled_from(
    [
        "",
        '""',
        '" "',
        "8",
        "60 kg x 8",
        "done",
        "[a, b]",
        "{a: 8}",
        "not done, x",
        "*a",
        "&a 8",
        "|",
        "~",
        "'",
    ]
)
KEYS = st.sampled_from(
    ["dip", '""', '" "', "note", "instead of", "move", "8", "private note", "Ann", "[a]", "~"]
)


@settings(max_examples=200, deadline=None)
@given(
    st.lists(st.tuples(st.sampled_from(["    - ", "      ", "  ", ""]), KEYS, VALUES), max_size=8),
    st.sampled_from(["done", "done:\n  Ann", 'done:\n  ""', "note"]),
)
def test_any_lines_of_a_record_are_read_or_asked(rows: list[tuple[str, str, str]], head: str) -> None:
    body = "\n".join(f"{lead}{key}: {value}" for lead, key, value in rows)
    read = read_record("monday.yaml", f"record: A\n{head}:\n{body}\n")
    assert read.record is not None or read.findings
    assert all(f.where and f.why and f.change for f in read.findings)


LINES = PAPER.splitlines()


@settings(max_examples=100, deadline=None)
@given(
    st.lists(st.sampled_from(LINES) | st.text(max_size=30), max_size=25).map("\n".join),
    st.sampled_from(["squad", "gym", "record"]),
)
def test_any_text_is_read_or_asked_and_never_breaks(text: str, kind: str) -> None:
    read: FileRead = read_alone(kind, "one.yaml", text)  # type: ignore[arg-type]
    assert read.held is not None or read.findings
    assert all(f.why and f.change and f.place.line >= 1 for f in read.findings)
