"""The page of notations is true: what is typed is read or asked as it says, and each line to type is read."""

import re
from pathlib import Path

import pytest

from setwright.model.reader import BlockRead
from setwright.own.plan import PlanRead, read_plan
from setwright.reading.done_typed import typed_done
from setwright.reading.habits import Habits
from setwright.reading.recordline import read_done
from setwright.report.read import read_text
from setwright.report.read_block import session_blocks
from setwright.report.read_session import session_lines
from tests.docs.notation_rows import HABITS, RECORD, Row, plan, rows
from tests.reading.dose_lines import KG, at
from tests.rules.plans import nothing_beside

PAGE = Path(__file__).parents[2] / "docs" / "notations.md"

ALL = rows(PAGE)
ROWS = [row for row in ALL if RECORD not in row.where]
TYPED = [(row, typed) for row in ROWS for typed in row.typed]
NAMED = [f"{row.number} {' / '.join(typed)} {', '.join(row.where)}" for row, typed in TYPED]
DONE = [(row, typed[0]) for row in ALL if RECORD in row.where for typed in row.typed]
WRITE = [(row, write) for row in ROWS for write in row.write]


def _read(typed: tuple[str, ...], row: Row) -> PlanRead:
    return read_plan("week.yaml", plan(typed, row.where), nothing_beside)


def _said(one: PlanRead) -> str:
    """The sentences of ``setwright read`` about the work, without numbers and the movement's name."""
    weeks = one.read.weeks
    habits = Habits(**weeks[0].model_dump(include={"unit", "dose_order", "percent_of", "sides"}))
    if len(weeks) > 1:
        ((_, lines),) = session_blocks(weeks, habits, one.table)
        return " / ".join(line.strip() for line in [*lines][1:])
    (session,) = weeks[0].sessions
    lines = [line.strip() for line in session_lines(session, habits, one.table)]
    bare = [re.sub(r"^\d+[a-z]?\.? ", "", line) for line in lines]
    return bare[0].partition(": ")[2] if len(bare) == 1 else " / ".join(bare)


def _changes(read: BlockRead) -> str:
    return " ".join(finding.change for finding in read.findings)


@pytest.mark.parametrize(("row", "typed"), TYPED, ids=NAMED)
def test_each_way_of_typing_is_read_or_asked(row: Row, typed: tuple[str, ...]) -> None:
    one = _read(typed, row)
    assert [finding.rule for finding in one.read.findings] == row.rules
    if row.rules:
        assert row.words in one.read.findings[0].message
    else:
        assert _said(one) == row.words


@pytest.mark.parametrize(("row", "write"), WRITE, ids=lambda one: one[0] if isinstance(one[0], str) else "")
def test_what_to_write_stands_in_the_change_and_reads_clean(row: Row, write: tuple[str, ...]) -> None:
    change = _changes(_read(row.typed[0], row).read)
    whole = write[0] in change or all(part in change for part in write[0].split(", "))
    assert whole or any(line.strip().split(": ")[0] in change for line in write)
    written = _read(write, row).read
    assert (written.findings, written.complete) == ((), True)


@pytest.mark.parametrize(
    "row", [row for row in ROWS if any(": " in word for word in row.where)], ids=lambda row: row.where[-1]
)
def test_the_answer_of_the_house_is_said_back(row: Row) -> None:
    told = read_text(_read(row.typed[0], row).read)
    for habit in row.where:
        key, _, value = habit.partition(": ")
        if key in HABITS and value:
            said = "loads without a unit" if key == "unit" else key
            assert f"  {said}: {value}" in told


@pytest.mark.parametrize(("row", "typed"), DONE, ids=[typed for _, typed in DONE])
def test_each_line_of_a_record_is_read_or_asked(row: Row, typed: str) -> None:
    done, findings = read_done(typed, at(typed), KG)
    assert [finding.rule for finding in findings] == row.rules
    if done is None:
        assert row.words in findings[0].message
    else:
        assert typed_done(done) == row.words
    for (write,) in row.write:
        assert f'"{write}"' in findings[0].change
        assert read_done(write, at(write), KG)[1] == ()


def test_no_notation_of_the_trade_is_left_out() -> None:
    assert {row.number for row in ALL} == set(range(1, 96))


def test_what_is_asked_can_be_typed_in_another_way() -> None:
    """Only a dash and the like have nothing to write: whoever typed it has to say what was meant."""
    assert [row.typed for row in ROWS if row.rules and not row.write] == [(("-",),)]
