"""Two files as they arrive: pasted from a spreadsheet, and readable as something else."""

from pathlib import Path

from setwright.findings import Finding
from setwright.model.reader import BlockRead
from setwright.reading.dose import Tempo
from tests.reading.plans import read

HERE = Path(__file__).parent
PASTED = (HERE / "pasted.yaml").read_bytes().decode("utf-8")
MEANS = (HERE / "reads_as_something_else.yaml").read_text(encoding="utf-8")


def _said(text: str) -> set[tuple[str, int]]:
    return {(finding.rule, finding.place.line) for finding in read(text).findings}


def _at(one: BlockRead, rule: str, line: int) -> Finding:
    (finding,) = (f for f in one.findings if (f.rule, f.place.line) == (rule, line))
    return finding


def test_text_from_a_spreadsheet_and_a_word_processor() -> None:
    assert PASTED.startswith("\ufeff")
    assert "\r\n" in PASTED
    assert _said(PASTED) == {
        ("tab-in-file", 2),
        ("unknown-key", 3),
        ("unknown-key", 5),
        ("no-break-space", 6),
        ("value-starts-with-sign", 7),
        ("unknown-key", 9),
        ("date-for-reps", 9),
        ("value-starts-with-sign", 10),
        ("second-colon", 11),
        ("unknown-key", 13),
        ("date-for-reps", 13),
        ("unknown-key", 15),
        ("text-after-quote", 15),
        ("unknown-key", 16),
        ("value-starts-with-sign", 16),
        ("unknown-key", 17),
        ("value-starts-with-sign", 17),
        ("value-starts-with-sign", 18),
    }


def test_what_can_not_be_seen_is_named_and_the_line_is_printed() -> None:
    one = read(PASTED)
    assert "tab" in _at(one, "tab-in-file", 2).message
    assert "no-break space" in _at(one, "no-break-space", 6).message
    assert _at(one, "no-break-space", 6).change == "write `    rest: 2:00`"
    assert _at(one, "value-starts-with-sign", 7).change == "write `effort: RPE 8`"
    assert _at(one, "value-starts-with-sign", 10).change == "write `load: 75%`"
    assert '"3 x 8-10"' in _at(one, "date-for-reps", 9).change
    assert '"3 x 8-12"' in _at(one, "date-for-reps", 13).change
    assert _at(one, "second-colon", 11).change == 'write `note: "keep tight: no flare"`'


def test_signs_of_a_word_processor_are_read_as_what_they_stand_for() -> None:
    week = read(PASTED).week
    assert week is not None
    assert week.name == "“Upper body – third week”"
    dose = week.sessions[0].work[0].dose  # type: ignore[union-attr]  # the first line is a movement
    assert dose is not None
    assert (dose.groups[0].sets.low, dose.groups[0].works[0].amount.span.high) == (3, 10)


def test_a_file_that_every_yaml_reader_takes_for_something_else() -> None:
    assert _said(MEANS) == {
        ("unknown-key", 2),
        ("value-in-wrong-form", 2),
        ("unknown-key", 3),
        ("unknown-key", 5),
        ("unknown-key", 6),
        ("unknown-key", 7),
        ("value-in-wrong-form", 11),
        ("unknown-key", 14),
        ("double-key", 16),
        ("text-lost-after-hash", 17),
        ("unknown-key", 20),
        ("line-glued-to-the-one-above", 22),
        ("unknown-key", 27),
        ("value-starts-with-sign", 27),
        ("text-lost-after-hash", 28),
        ("unknown-key", 30),
        ("hyphen-list", 30),
        ("load-without-unit", 31),
        ("rest-without-unit", 35),
        ("unknown-key", 36),
        ("list-not-one-a-week", 36),
        ("unknown-key", 38),
        ("nothing-to-do", 38),
        ("plus-without-base", 39),
        ("unknown-key", 42),
        ("text-lost-after-hash", 42),
        ("unknown-key", 44),
        ("unknown-key", 45),
        ("unknown-key", 46),
        ("unknown-key", 49),
    }


def test_numbers_arrive_as_they_were_typed() -> None:
    text = (
        "plan: A\nunit: kg\nstart: 16:30\nwork:\n"
        "  - dip: 3 x 8, rest 0:45\n    tempo: 0310\n    load: 62,5\n    for: [Ann, No, On, Null]\n"
    )
    one = read(text)
    assert one.findings == ()
    assert one.week is not None
    (session,) = one.week.sessions
    item = session.work[0]
    assert session.start == "16:30"
    assert item.for_ == ("Ann", "No", "On", "Null")
    dose = item.dose  # type: ignore[union-attr]  # the line is a movement
    assert dose is not None
    (group,) = dose.groups
    assert group.rest is not None
    assert (group.rest.low, group.works[0].load.low) == (45, 62.5)  # type: ignore[union-attr]  # a load is typed
    assert group.tempo == Tempo(lower_s=0, bottom_s=3, lift_s=1, top_s=0)
