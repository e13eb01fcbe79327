"""Tables as cells with their places, held against the csv module of Python (RFC 4180)."""

import csv
import io

import pytest
from hypothesis import given
from hypothesis import strategies as st

from setwright.reading.cells import GUARDED, cells, guarded

CELL = st.text(st.characters(codec="utf-8", exclude_categories=["Cs"], exclude_characters="\x00"), max_size=8)
TABLE = st.lists(st.lists(CELL, min_size=2, max_size=4), min_size=1, max_size=5)


def read(text: str) -> list[list[str]]:
    return [[cell.text for cell in row] for row in cells("t.csv", text)]


@given(rows=TABLE, sign=st.sampled_from(",;\t"), quoting=st.sampled_from([csv.QUOTE_MINIMAL, csv.QUOTE_ALL]))
def test_it_reads_what_the_csv_module_writes(rows: list[list[str]], sign: str, quoting: int) -> None:
    out = io.StringIO()
    writer = csv.writer(out, delimiter=sign, quoting=quoting)  # type: ignore[arg-type]  # the number of a constant
    writer.writerow([*"abcdef"])
    writer.writerows([[guarded(cell) for cell in row] for row in rows])
    expected = [[cell.strip() for cell in row] for row in rows]
    told = read(out.getvalue())[1:]
    assert [row for row in expected if any(row)] == told


@pytest.mark.parametrize("typed", ["=1+1", "+5", "-10", "@here", "'quoted", "'=x"])
def test_no_cell_is_a_formula(typed: str) -> None:
    shown = guarded(typed)
    assert shown[0] == "'"
    assert not shown.startswith(tuple(set(GUARDED) - {"'"}))
    assert read(f"a,b\n{shown},x\n")[1] == [typed, "x"]


def test_cells_know_where_they_stand() -> None:
    rows = list(cells("t.csv", 'a,b,c\r\n  x ,"two\nlines",\'=z\r\n\r\n"say ""hi""",;,last'))
    places = {cell.text: (cell.place.line, cell.place.column) for row in rows for cell in row}
    assert places == {
        "a": (1, 1), "b": (1, 3), "c": (1, 5), "x": (2, 3), "two\nlines": (2, 7), "=z": (3, 9),
        'say "hi"': (5, 2), ";": (5, 14), "last": (5, 16),
    }  # fmt: skip
    assert [cell.lines for cell in rows[1]] == [1, 2, 1]


@given(st.text(max_size=60))
def test_any_text_is_read(text: str) -> None:
    """No cell is lost: every letter and digit typed is in some cell."""
    told = "".join(cell for row in read(text) for cell in row)
    assert [sign for sign in text if sign.isalnum()] == [sign for sign in told if sign.isalnum()]
