"""What text files and spreadsheets do to a plan: each found, in whole plans and beside other faults.

A row: what was typed below a movement, the rule (none: it is read as typed), the column, the line to write.
"""

import pytest

from setwright.findings import Finding
from tests.reading.plans import read

HEAD = "plan: A week\nunit: kg\nsides: each\nminutes: 60\nwork:\n"
BROKEN_HEAD = "plan: A week\nunit: kg\nsides: each\nthree loose words\nwork:\n"
FIRST = 6
DIP = "  - dip: 3 x 8\n"

FOUND = [
    ("    rest: 1:1", "ratio", 11, "    rest: rest equal to the work"),
    ("    rest: 1:2", "ratio", 11, "    rest: rest 2 times the work"),
    ("    rest: 1.30", "rest-without-unit", 11, "    rest: rest 1:30"),
    ("    rest: 2", "rest-without-unit", 11, "    rest: rest 2 min"),
    ("    rest: :120", "rest-without-unit", 11, "    rest: rest 120 s"),
    ("    tempo: 09", "tempo-incomplete", 12, "    tempo: tempo 0-9-0-1"),
    ("    tempo: “3010”", "words-not-read", 12, "    tempo: tempo 3010"),
    ("    load: 1_25", "words-not-read", 11, "    load: 25 kg"),
    ("    load: +5", "plus-without-base", 11, "    load: at last time + 5 kg"),
    ("    load: -10", "plus-without-base", 11, "    load: at bodyweight - 10 kg"),
    ("    effort: @8", "value-starts-with-sign", 13, "    effort: RPE 8"),
    ("    load: @ 75%", "value-starts-with-sign", 11, "    load: 75%"),
    ("    load: %70", "value-starts-with-sign", 11, "    load: 70%"),
    ("    note: `slow`", "value-starts-with-sign", 11, "    note: slow"),
    ("    stop: !go", "value-starts-with-sign", 11, "    stop: go"),
    ("    sides: *each side", "value-starts-with-sign", 12, "    sides: each side"),
    ("    load: 135 #", "text-lost-after-hash", 15, "    load: 135 lb"),
    ("    note: “Bench #2”", "text-lost-after-hash", 18, "    note: “Bench 2”"),
    ("    load: [62,5, 65, 67,5]", "list-not-one-a-week", 11, "    load: 62.5, 65, 67.5"),
    ("    note: |heavy", "value-starts-with-sign", 11, "    note: heavy"),
    ("    for: Ann\n    for: Bo", "double-key", 5, "    for: Ann"),
    ("    rest:\t2:00", "tab-in-file", 10, "    rest: 2:00"),
    ("\t  rest: 2:00", "tab-in-file", 1, "    rest: 2:00"),
    ("    rest: 2:00\t# hard", None, 0, None),
    ("\u00a0\u00a0\u00a0\u00a0rest: 2:00", "no-break-space", 1, "    rest: 2:00"),
    ("    rest:\u00a02:00", "no-break-space", 10, "    rest: 2:00"),
    ("    rest: 2:00\u00a0", None, 0, None),
    ("    rest: 2:\u200b00", "no-break-space", 13, "    rest: 2:00"),
    ("    rest\ufeff: 2:00", "no-break-space", 9, "    rest: 2:00"),
    ("    note: keep tight: no flare", "second-colon", 21, '    note: "keep tight: no flare"'),
    ("    note: 'til failure", "quote-not-closed", 11, "    note: til failure"),
    ("    rest: 1:30", None, 0, None),
    ("    rest: 0:45", None, 0, None),
    ("    tempo: 0310", None, 0, None),
    ("    tempo: 3:0:1:0", None, 0, None),
    ("    load: 62,5", None, 0, None),
    ("    for: [No, On, Null]", None, 0, None),
    ("  - dip: 3 x 8", None, 0, None),
    ("  - pull-up: 0x8", "nothing-to-do", 14, "  - pull-up: 3 x 8"),
    ("  - pull-up: 010", "sets-missing", 14, "  - pull-up: 1 x 010"),
    ("  - pull-up: 12_10_8", "hyphen-list", 14, "  - pull-up: sets of 12, 10, 8"),
    ("  - pull-up: >8", "value-starts-with-sign", 14, "  - pull-up: 1 x 8+"),
    ("  - pull-up: > 8", "value-starts-with-sign", 14, "  - pull-up: 1 x 8+"),
    ("  - pull-up: 3 x 8 #left", "text-lost-after-hash", 20, "  - pull-up: 3 x 8   # left shoulder"),
    ("  - pull-up #left: 3 x 8", "text-lost-after-hash", 13, "  - pull-up: 3 x 8"),
    ("  - {pull-up: 3 x 8 #2}", "text-lost-after-hash", 21, "  - pull-up: 3 x 8"),
    ("  - {move: pull-up, do: 12, 10, 8}", "split-by-comma-in-braces", 29, "  - pull-up: 12, 10, 8"),
    ("  - {pull-up: 3 x 8, note: slow, tight}", "split-by-comma-in-braces", 34, "  - pull-up: 3 x 8"),
    ("  - pull-up:3 x 8", "no-blank-after-colon", 12, "  - pull-up: 3 x 8"),
    ("  -pull-up: 3 x 8", "list-mark", 3, "  - pull-up: 3 x 8"),
    ("  • pull-up: 3 x 8", "list-mark", 3, "  - pull-up: 3 x 8"),
    ("  – pull-up: 3 x 8", "list-mark", 3, "  - pull-up: 3 x 8"),
    ("  1. pull-up 3x8", "list-mark", 3, "  - pull-up: 3x8"),
    ("   - pull-up: 3 x 8", "line-out-of-line", 4, "  - pull-up: 3 x 8"),
    ('  - pull-up: "5" x 3', "text-after-quote", 17, "  - pull-up: 5 x 3"),
    ("  - A: pull-up: 3x8", "second-colon", 15, "  - pull-up: 3x8"),
    ("  - pull-up: 10-Aug", "date-for-reps", 14, "  - pull-up: 3 x 8-10"),
    ("  - pull-up: 3 x 12-Aug", "date-for-reps", 18, "  - pull-up: 3 x 8-12"),
    ("  - pull-up: 2027-08-10", "date-for-reps", 14, "  - pull-up: 3 x 8-10"),
    ("  - pull-up:", "dose-missing", 5, "  - pull-up: 3 x 8"),
    ("  - **pull-up**: 3 x 8", "value-starts-with-sign", 5, "  - pull-up: 3 x 8"),
    ("  - pull-up: 3×8…10", "words-not-read", 16, "  - pull-up: 3 x 8-10"),
    ("  - pull-up: 3 x 8 -- rest 90 s", "words-not-read", 20, "  - pull-up: 3 x 8, rest 90 s"),
]  # fmt: skip
NAMES = [row[0].strip() for row in FOUND]
BREAKS = [row for row in FOUND if row[1] is not None]


def _found(head: str, typed: str) -> tuple[Finding, ...]:
    return read(f"{head}{DIP}{typed}\n").findings


@pytest.mark.parametrize(("typed", "rule", "column", "_write"), FOUND, ids=NAMES)
def test_it_is_found_once_at_its_place(typed: str, rule: str | None, column: int, _write: str | None) -> None:
    line = FIRST + 1 + typed.count("\n")
    found = [(f.rule, f.place.line, f.place.column) for f in _found(HEAD, typed)]
    assert found == ([(rule, line, column)] if rule else [])


@pytest.mark.parametrize(
    ("typed", "rule", "column", "_write"), BREAKS, ids=[row[0].strip() for row in BREAKS]
)
def test_it_is_found_in_a_file_that_is_broken_elsewhere(
    typed: str, rule: str, column: int, _write: str | None
) -> None:
    found = [(f.rule, f.place.line, f.place.column) for f in _found(BROKEN_HEAD, typed)]
    assert ("line-not-readable", 4, 1) in found
    assert (rule, FIRST + 1 + typed.count("\n"), column) in found


@pytest.mark.parametrize(
    ("_typed", "_rule", "_column", "write"), BREAKS, ids=[row[0].strip() for row in BREAKS]
)
def test_the_line_to_write_reads_clean(_typed: str, _rule: str, _column: int, write: str) -> None:
    assert _found(HEAD, write) == ()
