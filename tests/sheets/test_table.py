"""The week as CSV, read back by Python's csv and by NumPy's own reader; no cell is a formula."""

import csv
import io
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from setwright.checked import Checked
from setwright.sheets import Order, asked, print_sheets
from setwright.sheets.editions import all_sheets
from setwright.sheets.phrases import series
from setwright.sheets.table import FORMULA, harmless, plan_csv
from tests.pages.__main__ import PRINTED
from tests.pages.plans import AWKWARD, CIRCUIT, LONG, check

HOSTILE = """\
plan: Week
unit: kg
dose order: sets x reps
squad:
  athletes: ["=1+1", "+49 30", "-2", "@SUM(A1)", 'Quote "q", comma', "Line\\nbreak", "Plain"]
work:
  - goblet squat: 3 x 10 at 24 kg
    note: "=HYPERLINK(0)"
"""


def table_of(checked: Checked) -> str:
    return plan_csv(checked, all_sheets(checked)["session"])


def by_csv(text: str) -> list[list[str]]:
    return list(csv.reader(io.StringIO(text.removeprefix("\ufeff"), newline="")))


def by_numpy(path: Path) -> list[list[str]]:
    """NumPy's reader is a tokenizer of its own, in C (numpy/_core/src/multiarray/textreading)."""
    read = np.loadtxt(
        path, dtype=str, delimiter=",", quotechar='"', comments=None, encoding="utf-8-sig", ndmin=2
    )
    return [list(row) for row in read]


@pytest.mark.parametrize("plan", [LONG, CIRCUIT, AWKWARD, HOSTILE])
def test_two_readers_that_know_nothing_of_each_other_read_the_same(plan: str, tmp_path: Path) -> None:
    text = table_of(check(plan))
    file = tmp_path / "table.csv"
    file.write_bytes(text.encode())
    rows = by_csv(text)
    assert rows[0] == list(series("table.heads"))
    assert {len(row) for row in rows} == {len(series("table.heads"))}
    assert by_numpy(file) == rows


def test_a_row_says_what_the_sheet_says() -> None:
    rows = by_csv(table_of(check(LONG)))
    assert rows[1] == [
        "Tuesday", "Everything", "", "1a", "flat barbell bench press", "5", "5 × 5", "75 % of tested max",
        "Pair: 1a, then 1b straight after; rest 2:30 after both", "",
        "add 2.5 kg when every set reaches the top",
    ]  # fmt: skip


def test_no_cell_begins_a_formula() -> None:
    rows = by_csv(table_of(check(HOSTILE)))
    assert [row[2] for row in rows[1:5]] == ["'=1+1", "'+49 30", "'-2", "'@SUM(A1)"]
    assert rows[1][9] == "'=HYPERLINK(0)"
    assert not any(cell.startswith(FORMULA) for row in rows for cell in row)


@given(st.text())
def test_harmless_text_is_the_text_or_an_apostrophe_before_it(text: str) -> None:
    assert not harmless(text).startswith(FORMULA)
    assert harmless(text) in (text, f"'{text}")


@pytest.mark.parametrize("first", ["=", "+", "-", "@", "\t", "\r"])
def test_each_sign_that_begins_a_formula_is_kept_from_it(first: str) -> None:
    assert harmless(f"{first}1") == f"'{first}1"


def test_without_a_sheet_there_are_the_heads() -> None:
    assert by_csv(plan_csv(check(LONG), ())) == [list(series("table.heads"))]


def test_it_lies_beside_the_sheets(tmp_path: Path) -> None:
    lines = list(print_sheets(check(LONG), Order(asked("week", "a4"), tmp_path, csv=True), PRINTED))
    assert lines[-1] == f"{tmp_path / 'long-evening-table.csv'}  (table)"
    assert (tmp_path / "long-evening-table.csv").read_bytes().startswith(b"\xef\xbb\xbfday,session,athlete")
