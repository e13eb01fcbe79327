"""The key explains what stands on the sheet, and nothing else."""

import pytest

from setwright.sheets.key import key
from setwright.sheets.view import Block, Box, Line, LoadWords


def line(dose: str = "", *remarks: str, load: LoadWords | None = None, boxes: tuple[Box, ...] = ()) -> Line:
    return Line("1", "front plank", dose, remarks, load or LoadWords(), boxes)


@pytest.mark.parametrize(
    ("shown", "meaning"),
    [
        (line("4 × 6–8, 2 left"), ("4 × 6–8", "4 sets of 6 to 8")),
        (line("4 × 6, 1–2 left"), ("1–2 left", "stop when 1 or 2 more would still go")),
        (line("", "rest 2:30"), ("2:30", "2 min 30 s")),
        (line("", "rest 3:00"), ("3:00", "3 min")),
        (line("", "tempo 3-1-X-0"), ("3-1-X-0", "seconds down, at the bottom, up, at the top, X fast")),
        (line("", "tempo 3-1-1-0"), ("3-1-1-0", "seconds down, at the bottom, up, at the top")),
        (line("3 × max"), ("max", "as many as good form allows")),
        (line(boxes=(Box("8+"),)), ("8+", "at least that many, more if form holds")),
        (line(load=LoadWords("10RM")), ("RM", "most reps that a load goes")),
        (line("3 × 8, RPE 8"), ("RPE", "effort out of 10; 10 = nothing left")),
        (line(load=LoadWords("bar + 20", "kg a side")), ("a side", "on each end of the bar")),
        (line(load=LoadWords("2 × 24 kg", "one a hand")), ("a hand", "in each hand")),
        (line(load=LoadWords("body + 10", "kg added")), ("body", "your own weight")),
        (line(boxes=(Box("8", reserve=True),)), ("cut corner of a box", "reps left")),
        (line(boxes=(Box("8"),)), ("–", "not done")),
    ],
)
def test_what_stands_there_is_explained(shown: Line, meaning: tuple[str, str]) -> None:
    assert meaning in key((Block((shown,)),))


def test_nothing_else_is_explained() -> None:
    assert key((Block((line("40 m", load=LoadWords("75 %", "of tested max")),)),)) == ()


def test_a_clock_in_a_heading_is_explained() -> None:
    assert key((Block((line(),), heading="Pair: 1a, then 1b straight after; rest 2:00 after both"),)) == (
        ("2:00", "2 min"),
    )
