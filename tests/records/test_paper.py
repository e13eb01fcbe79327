"""Records as YAML and as tables: both say the same, and any text comes back as it was."""

import csv
import io

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from setwright.model.reader.record import RecordRead, read_record
from setwright.reading.done_typed import typed_done
from setwright.records.paper import Row, Sheet, as_yaml, sheet_of, typed
from setwright.records.table import as_csv, read_table

WORDS = st.text(st.characters(codec="utf-8", exclude_categories=["C", "Z"]), min_size=1, max_size=12).filter(
    lambda text: not {"'", '"'} <= set(text)
)
DONE = st.sampled_from(
    ["", "done", "not done", "not done, out of time",
     "60 kg x 8, 8, 6", "62,5 kg x 5", "8, 8, 0", "135 lb x 5",
     "bodyweight - 20 kg x 6", "60 kg x 8, then 55 kg x 8 at RPE 8", "40, 35 s", "12 left, 10 right"]
)  # fmt: skip
NAMES = st.from_regex(r"[A-Za-z][a-z]{1,8}", fullmatch=True).filter(lambda name: name.casefold() != "note")
ROWS = st.builds(
    Row, movement=NAMES, done=DONE, planned=WORDS, instead_of=st.just("") | NAMES, note=st.just("") | NAMES,
    private_note=st.just("") | NAMES,
)  # fmt: skip
SHEETS = st.builds(
    Sheet,
    st.fixed_dictionaries({"record": NAMES, "session": NAMES, "date": st.just("2027-11-15")}),
    st.lists(
        st.tuples(NAMES, st.lists(ROWS, max_size=4).map(tuple)), min_size=1, max_size=3,
        unique_by=lambda pair: pair[0].casefold(),
    ).map(tuple),
)  # fmt: skip


def meant(read: RecordRead) -> object:
    """What a record says, wherever it stands."""
    assert read.findings == ()
    record = read.record
    assert record is not None
    return (
        record.plan, record.session, record.date, record.unit, record.note, record.private_note,
        [
            (one.name, one.notes, one.private_notes,
             [(line.name, line.done and (line.done.kind, typed_done(line.done)), line.instead_of, line.note,
               line.private_note) for line in one.lines])
            for one in record.athletes
        ],
    )  # fmt: skip


@settings(max_examples=40)
@given(SHEETS)
def test_yaml_and_table_say_the_same(sheet: Sheet) -> None:
    yaml = read_record("form.yaml", as_yaml(sheet))
    table = read_table("form.csv", as_csv(sheet))
    assert meant(yaml) == meant(table)
    assert yaml.record is not None
    assert meant(read_record("again.yaml", as_yaml(sheet_of(yaml.record)))) == meant(yaml)


@given(WORDS, WORDS, WORDS)
def test_any_name_and_remark_come_back(athlete: str, movement: str, planned: str) -> None:
    sheet = Sheet({"record": movement}, ((athlete, (Row(f"{movement} x", planned=planned, note=planned),)),))
    read = read_record("form.yaml", as_yaml(sheet))
    assert read.record is not None, as_yaml(sheet)
    (one,) = read.record.athletes
    (line,) = one.lines
    assert (one.name, line.name, line.note, read.record.plan) == (athlete, f"{movement} x", planned, movement)
    assert line.done is not None
    assert line.done.kind == "not written"


def test_remarks_are_rows_of_a_table() -> None:
    text = (
        "record: A\nunit: kg\nnote: wet floor\nprivate note: short\ndone:\n  Ann:\n    - dip: done\n"
        "      instead of: row\n    - note: slept badly\n    - private note: exams\n  Ben:\n"
    )
    read = read_record("a.yaml", text)
    assert read.record is not None
    table = as_csv(sheet_of(read.record))
    rows = list(csv.DictReader(io.StringIO(table)))
    assert [(row["athlete"], row["movement"], row["done"]) for row in rows] == [
        ("", "note", "wet floor"), ("", "private note", "short"), ("Ann", "dip", "done"),
        ("Ann", "note", "slept badly"), ("Ann", "private note", "exams"), ("Ben", "", ""),
    ]  # fmt: skip
    assert meant(read_table("a.csv", table)) == meant(read)


def test_no_cell_of_a_table_is_worked_out() -> None:
    sheet = Sheet({"record": "=cmd"}, (("@Ann", (Row("+dip", "not done"),)),))
    assert "'=cmd,,,,,,'@Ann,'+dip,,not done," in as_csv(sheet)
    read = read_table("a.csv", as_csv(sheet))
    assert read.record is not None
    assert (read.record.plan, read.record.athletes[0].name, read.record.athletes[0].lines[0].name) == (
        "=cmd", "@Ann", "+dip",
    )  # fmt: skip


def test_signs_that_no_eye_sees_are_spelt_out() -> None:
    assert typed("a\u0085b") == '"a\\u0085b"'
    assert typed("") == ""
    assert typed("62,5 kg x 8") == "62,5 kg x 8"


def test_a_table_of_a_spreadsheet_with_semicolons_and_a_mark() -> None:
    text = "\ufeffRecord;Athlete;Movement;Done\r\nA;Ann;dip;62,5 kg x 8, 8\r\n"
    read = read_table("a.csv", text)
    assert read.findings == ()
    assert read.record is not None
    assert typed_done(read.record.athletes[0].lines[0].done) == "62.5 kg x 8, 8"  # type: ignore[arg-type]  # it was read


def test_a_fault_is_shown_in_the_cell_it_stands_in() -> None:
    read = read_table("a.csv", 'record,athlete,movement,done\nA,Ann,dip,"60 kg x 8, ok"\n')
    (finding,) = read.findings
    assert (finding.place.line, finding.where) == (2, "Ann")
    assert read.sources["a.csv"].line(2)[finding.place.column - 1 :].startswith("ok")


def test_an_empty_table_is_said() -> None:
    read = read_table("a.csv", "")
    assert read.record is None
    assert [finding.rule for finding in read.findings] == ["table-without-columns"]


@pytest.mark.parametrize(
    ("table", "rules"),
    [
        ("athlete,movement,done,zzz\nAnn,dip,done,x\n", ["table-column-unknown"]),
        ("athlete,movement,done,done\nAnn,dip,8,9\n", ["table-column-unknown"]),
        ("athlete,movement,done,\nAnn,dip,done,,\n", []),
        ("athlete,movement,done\nAnn,dip,60 kg x 8, 8\n", ["table-column-unknown"]),
        ("athlete,movement,done\nAnn,,8\nBen,,\n", ["table-row-without-name"]),
        ("athlete,movement,done\n,note,wet floor\n,note,\nAnn,dip,done\n", []),
    ],
)
def test_tables_with_a_fault(table: str, rules: list[str]) -> None:
    found = read_table("t.csv", table).findings
    assert [finding.rule for finding in found if finding.rule != "name-missing"] == rules
