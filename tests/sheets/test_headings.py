"""The first line of a group on paper."""

from typing import Any

import pytest

from setwright.reading.dose import Rest
from setwright.sheets.headings import group_heading
from tests.sheets.hand import amount, group, item

TWO_MINUTES = Rest(kind="seconds", low=120, high=120)


@pytest.mark.parametrize(
    ("keys", "numbers", "heading"),
    [
        ({"rest": TWO_MINUTES}, ["2a", "2b"], "Pair: 2a, then 2b straight after; rest 2:00 after both"),
        ({}, ["2a", "2b"], "Pair: 2a, then 2b straight after"),
        ({"rest": Rest(kind="none")}, ["2a", "2b"], "Pair: 2a, then 2b straight after; no rest after both"),
        (
            {"rest": TWO_MINUTES},
            ["2a", "2b", "2c"],
            "Three in turn: 2a to 2c, each straight after the last; rest 2:00 after all of them",
        ),
        (
            {"between_moves": Rest(kind="seconds", low=15, high=15)},
            ["1a", "1b"],
            "Pair: 1a, 1b; 15 s between moves",
        ),
        ({"rest": TWO_MINUTES}, ["2a"], "2a on its own; rest 2:00 after each set"),
        ({}, [f"1{letter}" for letter in "abcdef"], "6 in turn: 1a to 1f, each straight after the last"),
        (
            {"rounds": 3, "rest": TWO_MINUTES},
            ["1a", "1b"],
            "Pair, 3 rounds: 1a, then 1b straight after; rest 2:00 after each round",
        ),
        (
            {
                "kind": "circuit",
                "rounds": 4,
                "each_s": 35,
                "between_moves": Rest(kind="seconds", low=25, high=25),
                "rest": TWO_MINUTES,
            },
            ["1a", "1b"],
            "Circuit, 4 rounds: 35 s at each, 25 s to change; rest 2:00 after each round",
        ),
        (
            {"kind": "circuit", "rounds": 2, "each_s": 35},
            ["1a", "1b"],
            "Circuit, 2 rounds: 35 s at each, straight on",
        ),
        (
            {"kind": "circuit", "time_s": 720},
            ["1a", "1b", "1c"],
            "Circuit, as many rounds as fit in 12:00: 1a to 1c, each straight after the last",
        ),
        (
            {"kind": "circuit", "rounds": 5, "cap": amount(900, unit="s")},
            ["1a", "1b"],
            "Circuit, 5 rounds for time, stop at 15:00: 1a, then 1b straight after",
        ),
        (
            {"kind": "circuit", "rounds": 5, "every_s": 180},
            ["1a", "1b"],
            "Circuit, 5 rounds, one every 3:00: 1a, then 1b straight after",
        ),
        (
            {"kind": "circuit", "ladder": (1, 2, 3)},
            ["1a", "1b"],
            "Circuit, 1 to 3 reps: 1a, then 1b straight after",
        ),
        (
            {"kind": "circuit", "ladder": (1, 2, 1)},
            ["1a", "1b"],
            "Circuit, 1 to 2 to 1 reps: 1a, then 1b straight after",
        ),
        (
            {"kind": "complex", "rounds": 4},
            ["1a", "1b"],
            "One bar, not put down, 4 rounds: 1a, then 1b straight after",
        ),
    ],
)
def test_group_heading(keys: dict[str, Any], numbers: list[str], heading: str) -> None:
    assert group_heading(group(item(), item(), **keys), numbers) == heading
