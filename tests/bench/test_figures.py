"""Figures, and the page of a run."""

import datetime as dt
from types import ModuleType

import pytest

from tests.bench.figures import Figure, at_least, at_most, seen, shown
from tests.bench.table import Ran, page


def test_a_figure_holds_up_to_its_limit_and_is_told_with_its_goal() -> None:
    assert at_most("a", 2, 2, "{} s") == Figure("a", "2 s", "at most 2 s", holds=True)
    assert at_most("a", 2.1, 2, "{} s", goal=1) == Figure(
        "a", "2.1 s", "at most 1 s, fails above 2 s", holds=False
    )
    assert at_least("a", 9, 10, "{} times") == Figure("a", "9 times", "at least 10 times", holds=False)


def test_figures_are_printed_as_they_come(capsys: pytest.CaptureFixture[str]) -> None:
    figures = [seen("one", 1.234, "{:.1f} ms"), at_most("other", 3, 2, "{} s")]
    assert shown(iter(figures)) == figures
    assert capsys.readouterr().out == "one: 1.2 ms\nother: 3 s (at most 2 s: MISSED)\n"


def test_the_page_names_the_machine_and_the_day_and_what_is_missed() -> None:
    bench = ModuleType("again", "What ``check`` costs.\n\nAnd more.")
    told = page([Ran("again", bench, [seen("one", 1, "{} ms"), at_most("other", 3, 2, "{} s")])])
    assert f"on {dt.datetime.now(tz=dt.UTC).date()};" in told
    assert "cores" in told
    assert told.endswith(
        "## again\n\nWhat `check` costs. And more.\n\n| what | measured | asked |\n|---|---|---|\n"
        "| one | 1 ms |  |\n| other | 3 s | **missed**: at most 2 s |\n"
    )
