"""Files that no schema may have anything against: the examples, and two with every word of the language."""

from pathlib import Path
from typing import get_args

from setwright.schema import Kind

ROOT = Path(__file__).parents[2]
EXAMPLES = sorted((ROOT / "examples").rglob("*.yaml"))
WEEKS = sorted((ROOT / "tests" / "weeks").glob("*.yaml"))


def kind_of(path: Path) -> Kind:
    """The kind of an example file, by its first key."""
    first = next(line for line in path.read_text(encoding="utf-8").splitlines() if not line.startswith("#"))
    kinds: tuple[Kind, ...] = get_args(Kind)
    return next(kind for kind in kinds if first.startswith(f"{kind}:"))


EVERYTHING = """\
plan: Everything at once
weeks: 6
starts: 2027-02-01
unit: lb
aim: Size
focus: [pecs, Back]
training days: [Monday, Wednesday]
rotate: [A, B]
lighter weeks:
  week 4: half the sets and 80% of the load
stages:
  pressing:
    earliest: week 3
    enter when: [no pain the day after]
    signed off: club physiotherapist, 2027-02-15
next:
  - add 2.5 kg every week
  - 12 or more: add 5 lb
  - otherwise: repeat
schemes:
  main lift: 5 x 5 at 80%
  other lift:
    week 1: 3 x 8 at 65%
    weeks 2-6: same
sets a week:
  chest: 8-12
  pull to push: at least 1
last week:
  push-up: 300 reps
squad:
  athletes:
    - Isla
    - name: No
      born: 1994
      maxes:
        dip: bodyweight + 20 lb tested 2027-01-20
        bench pull: [55 kg tested 2026-12-14, training max 90%]
      limits:
        - no: overhead, hanging
          until: 2027-03-01
          set by: team doctor
  groups:
    light: [Isla]
gym:
  spotter: no
  bars:
    45 lb: 1
  bands:
    red: 60 N at 2 m
    green:
      pull: [60 N at 1 m, 90 N at 2 m]
movements: ours.yaml
sessions:
  - name: A
    minutes: [60, 60, 60, 45, 60, 60]
    warm-up:
      - rope skipping: 3 min
      - push-up
    work:
      - move: Flat Barbell Bench Press
        do:
          week 1: 3 x 8
          weeks 2-6: as week 1
      - dip:
          do: 3 x 8
          rest: 90
        load:
          Isla: 10
          No: none
        instead:
          No:
            - leg press: 3 x 10
      - pull-up:
        load: [1, 2, 3, 2, 4, 5]
        only in: weeks 1-5
      - complex:
          - Romanian deadlift: 5
          - hang power clean: 3
        rounds: 4
        load: [30, 32.5, 35, 30, 37.5, 40]
      - circuit:
          - push-up
          - step-up:
            kit: [box]
        each: 0:40
        rounds: 3
  - day: Thu
    like: A
    stage: pressing
    leave out: [dip]
    swap:
      pull-up: chin-up
    change:
      - flat barbell bench press: 2 x 8
    add:
      - face pull: 3 x 15
"""

RECORD = """\
record: Autumn block, week 3
week: 3
session: Monday
date: 2027-11-15
done:
  Isla:
    - flat barbell bench press: 60 kg x 8, 8, 6 at RPE 8
    - dip: 8
    - pull-up:
    - machine row: 30 kg x 10, 10
      instead of: bench pull
    - front plank: not done, ran out of time
    - note: slept badly
  Tam:
"""
