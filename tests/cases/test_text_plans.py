"""Plans as coaches bring them, one week of each in the plan language: what is asked about text and doses."""

import pytest

from tests.reading.plans import read

SCHOOL = """plan: Autumn full-body block, week 4
unit: lb
sides: each
sessions:
  - day: Monday
    minutes: 30
    work:
      - flat barbell bench press: 3 x 3 at 90%, then 1x3+ at 97.5%
        rest: 2:00
        priority: 1
      - one-arm dumbbell row: 3x10 each
      - barbell curl: 3x12
        priority: 3
      - dip: 3xmax
  - day: Wednesday
    work:
      - incline 30 barbell bench press: 3x8
        load: challenging
      - power clean: 5x3
        load: 70
      - forward lunge: 3x10
  - day: Friday
    work:
      - barbell front squat: 3x5
        load: 70% of back squat
      - pull-up: 3xmax
      - push-up: 2x20
"""
CREW = """plan: Station circuit
unit: kg
sides: each
people: 5
minutes: 40
work:
  - circuit:
      - dumbbell floor press: 35/25
        load: 2 x 20 kg
      - bent-over barbell row:
      - push-up:
    rounds: 4
    each: 35 s
    between moves: 25 s
    rest: 2:00
  - front plank: 1 x 1:00
  - side plank: 1 x 0:30
  - push-up: to failure x2
    rest: 1:1
"""
MASTERS = """plan: Bench and shoulder care, week 1
unit: kg
sides: each
sessions:
  - day: Monday
    work:
      - flat barbell bench press: 3x5 at 62,5, rest 3:00
        tempo: 0310
      - flat barbell bench press: top single @8
      - close-grip bench press: 3x8
        load: [62,5, 65, 67,5, 70, 72,5, 75]
      - incline 30 dumbbell bench press: 3x10
        load: 35
      - behind-neck press: 2x10
      - one-arm dumbbell row: 2x12
"""


@pytest.mark.parametrize(
    ("plan", "asked"),
    [
        (SCHOOL, {("load-without-number", "challenging"), ("steps-or-each-leg", "3x10")}),
        (CREW, {("slash-in-dose", "35/25"), ("ratio", "1:1"), ("sets-missing", "to failure x2")}),
        (MASTERS, {("words-not-read", "single @8"), ("list-not-one-a-week", "")}),
    ],
    ids=["school", "crew", "masters"],
)
def test_what_has_two_meanings_is_asked_and_nothing_else(plan: str, asked: set[tuple[str, str]]) -> None:
    rows = plan.splitlines()
    assert {
        (f.rule, rows[f.place.line - 1][f.place.column - 1 : f.place.end_column - 1])
        for f in read(plan).findings
    } == asked
