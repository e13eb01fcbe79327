"""One week of a block as a plan of its own: the same lines, and nothing of the other weeks."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

import pytest

from setwright.model.plan import Week
from setwright.own.plan import read_plan
from setwright.records.gains import sets_of
from setwright.records.line_keys import lines_of
from setwright.records.one_week import one_week, without_lighter
from setwright.records.planned import loads_of

EXAMPLES = Path(__file__).parents[2] / "examples"
EVERYTHING = """\
plan: All ways   # of saying a week
weeks: 3
unit: kg
sides: each
follows: before.yaml
lighter weeks:
  week 3: half the sets
schemes:
  press:
    week 1: 3 x 8
    weeks 2-3: 4 x 6
  pull: [3 x 8, 3 x 10, 3 x 12]
  plain: 2 x 10
sessions:
  - day: Monday
    minutes:    # the hall closes
      week 1: 60
      weeks 2-3: 75
    warm-up:
      - push-up: 2 x 8
    work: &monday
      - flat barbell bench press: press
        load: [40, 42.5, 45]
      - bench pull: pull
      - goblet squat: [2 x 8, 2 x 9, 2 x 10]
      - superset:
          - dip: plain
          - face pull: 2 x 12
            only in: weeks 2-3
        rest: [60 s, none, 90 s]
      - front plank:
          week 1: 2 x 30 s hold
          week 2: none
          week 3: as week 1
        note: breathe
      - move: pull-up
        do: {week 1: 2 x 5, week 2: "2 x 6", week 3: stop}
        effort:
          - 3 RIR
          - 2 RIR
          - 1 RIR
        rest: [
          60 s,
          90 s, 2:00
        ]
        load:
          week 1: none
          weeks 2-3: bodyweight
      - circuit:
          - push-up
          - goblet squat
          - burpee
        each: 40 s
        only in: week 2
  - day: Thursday
    only in: weeks 2-3
    work: *monday
"""


def weeks_of(text: str, beside: Callable[[str], str | None] = lambda _: None) -> tuple[Week, ...]:
    read, _ = read_plan("block.yaml", text, beside)
    assert read.complete, read.findings
    return read.weeks


def said(week: Week) -> list[Any]:
    """What every line of a week says to everybody."""
    lines = [
        (told.key, sets_of(told.planned), loads_of(told.planned, week, told.athlete))
        for told in lines_of(week)
    ]
    return [[(session.title, session.minutes, len(session.warm_up)) for session in week.sessions], lines]


def alone(text: str, number: int) -> str:
    bare = without_lighter("block.yaml", text)
    return one_week("block.yaml", bare, weeks_of(bare), number)


@pytest.mark.parametrize("number", [1, 2, 3])
def test_each_week_says_the_same_as_in_the_block(number: int) -> None:
    bare = without_lighter("block.yaml", EVERYTHING)
    (week,) = weeks_of(alone(EVERYTHING, number))
    assert week.of == 1
    assert said(week) == said(weeks_of(bare)[number - 1])


@pytest.mark.parametrize("number", [1, 2, 3, 4])
def test_the_crews_block_week_by_week(number: int) -> None:
    folder = EXAMPLES / "skerrow-bay"
    text = (folder / "block.yaml").read_text(encoding="utf-8")

    def beside(name: str) -> str:
        return (folder / name).read_text(encoding="utf-8")

    bare = without_lighter("block.yaml", text)
    weeks = weeks_of(bare, beside)
    (week,) = weeks_of(one_week("block.yaml", bare, weeks, number), beside)
    assert said(week) == said(weeks[number - 1])


def test_all_else_stays_as_it_was_typed() -> None:
    assert alone(EVERYTHING, 2) == (
        "plan: All ways   # of saying a week\nunit: kg\nsides: each\nschemes:\n  press: 4 x 6\n"
        "  pull: 3 x 10\n  plain: 2 x 10\nsessions:\n  - day: Monday\n    minutes: 75    # the hall closes\n"
        "    warm-up:\n      - push-up: 2 x 8\n    work: &monday\n      - flat barbell bench press: press\n"
        "        load: 42.5\n      - bench pull: pull\n      - goblet squat: 2 x 9\n      - superset:\n"
        "          - dip: plain\n          - face pull: 2 x 12\n        rest: none\n      - move: pull-up\n"
        '        do: "2 x 6"\n        effort: 2 RIR\n        rest: 90 s\n'
        "        load: bodyweight\n      - circuit:\n"
        "          - push-up\n          - goblet squat\n          - burpee\n        each: 40 s\n"
        "  - day: Thursday\n    work: *monday\n"
    )
