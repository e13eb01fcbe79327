"""The page of notations is true: what is typed is read or asked as it says, and each line to type is read."""

import re
from pathlib import Path

import pytest

from setwright.model.reader import BlockRead
from setwright.own.plan import PlanRead, read_plan
from setwright.reading.habits import Habits
from setwright.report.read import read_text
from setwright.report.read_session import session_lines
from tests.docs.notation_rows import HABITS, Row, plan, rows
from tests.rules.plans import nothing_beside

PAGE = Path(__file__).parents[2] / "docs" / "notations.md"
LATER = Path(__file__).parent / "notations_later.md"
"""Rows that need several weeks, records or stages: to be moved into the page once those are read."""

ROWS = rows(PAGE)
TYPED = [(row, typed) for row in ROWS for typed in row.typed]
NAMED = [f"{row.number} {' / '.join(typed)} {', '.join(row.where)}" for row, typed in TYPED]
WRITE = [(row, write) for row in ROWS for write in row.write]


def _read(typed: tuple[str, ...], row: Row) -> PlanRead:
    return read_plan("week.yaml", plan(typed, row.where), nothing_beside)


def _said(one: PlanRead) -> str:
    """The sentences of ``setwright read`` about the work, without numbers and the movement's name."""
    week = one.read.week
    assert week is not None
    habits = Habits(unit=week.unit, dose_order=week.dose_order, percent_of=week.percent_of, sides=week.sides)
    lines = [line.strip() for session in week.sessions for line in session_lines(session, habits, one.table)]
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


def test_no_notation_of_the_trade_is_left_out() -> None:
    assert {row.number for row in (*ROWS, *rows(LATER))} == set(range(1, 96))


def test_what_is_asked_can_be_typed_in_another_way() -> None:
    """Only a dash and the like have nothing to write: whoever typed it has to say what was meant."""
    assert [row.typed for row in ROWS if row.rules and not row.write] == [(("-",),)]
