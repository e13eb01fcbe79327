"""A plan with its people for the tests of records. Everyone is invented."""

from pathlib import Path

from setwright.library.table import library
from setwright.model.plan import Week
from setwright.own.plan import read_plan

PLAN = """\
plan: Hall, week 3
starts: 2027-11-15
unit: kg
squad:
  athletes:
    - name: Ann
    - name: Ben
    - name: Cal
    - name: Dee
      participation: out
  groups:
    juniors: [Ben, Cal]
sessions:
  - day: Monday
    name: Press day
    work:
      - flat barbell bench press: 3 x 6-8
        load:
          Ann: 40 kg
          juniors: 50, 55, 60 kg
        instead:
          Cal:
            - push-up: 3 x 12
      - superset:
          - dip: 8 at bodyweight + 5 kg
          - pull-up: 6
        rounds: 3
        not for: [Cal]
      - front plank: 2 x 30 s hold
        for: [Ann]
  - day: Thursday
    work:
      - complex:
          - Romanian deadlift: 5
          - bent-over barbell row: 5
        rounds: 4
        load: 30 kg
      - front plank: 2 x 30 s hold
      - dip: 3 x 8
      - dip: 1 x max
"""


def week(text: str = PLAN, number: int = 1) -> Week:
    """A week of a plan that must be without faults."""
    read, _ = read_plan("week-3.yaml", text, lambda _: None)
    assert read.findings == ()
    return read.weeks[number - 1]


LIBRARY = library()


def hall(folder: Path, text: str = PLAN) -> Path:
    """The plan as a file in a folder."""
    plan = folder / "week-3.yaml"
    plan.write_text(text, encoding="utf-8")
    return plan
