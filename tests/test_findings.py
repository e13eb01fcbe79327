"""A finding is whole, or it is not made."""

from dataclasses import replace
from typing import Any

import pytest

from setwright.findings import Finding, Level, exit_status, in_order
from setwright.places import Place, Source

FINDING = Finding("a-rule", Level.gap, Place("week.yaml", 2, 3, 2, 9), "Monday", "m", "w", "c", "s")


@pytest.mark.parametrize("name", ["rule", "where", "message", "why", "change", "source"])
def test_no_text_may_be_empty(name: str) -> None:
    empty: dict[str, Any] = {name: " "}
    with pytest.raises(ValueError, match=f"has no {name}"):
        replace(FINDING, **empty)


def test_order_is_file_line_column_rule() -> None:
    later = replace(FINDING, place=Place("week.yaml", 10, 1, 10, 2))
    other = replace(FINDING, place=Place("squad.yaml", 30, 1, 30, 2))
    assert in_order([later, FINDING, other]) == [other, FINDING, later]


def test_exit_status_counts_from_the_level_asked_for() -> None:
    assert exit_status([FINDING], Level.gap) == 1
    assert exit_status([FINDING], Level.error) == 0
    assert exit_status([]) == 0


def test_a_source_gives_its_lines_and_nothing_beyond() -> None:
    source = Source("week.yaml", "one\r\ntwo")
    assert [source.line(n) for n in (0, 1, 2, 3)] == ["", "one", "two", ""]
