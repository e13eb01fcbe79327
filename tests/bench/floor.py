"""What a timetable costs: 30 athletes, 12 stations, 10 lines in under 2 s; how it grows to 120 athletes."""

import time
from collections.abc import Iterator
from functools import partial
from pathlib import Path

from setwright.floor.conflicts import conflicts
from setwright.floor.room import floor, room
from setwright.own.plan import read_plan
from tests.bench.figures import Figure, at_most, seen

LONGEST_S = 2.0
"""Of processor time, for 30 athletes."""
ATHLETES = (15, 30, 60, 120)
JUDGED = 30
GYM = """\
gym:
  unit: kg
  racks: 4
  people per rack: 4
  benches: 2
  bars:
    20 kg: 6
  plates per rack:
    20 kg: 3 pairs
    10 kg: 2 pairs
    5 kg: 2 pairs
    2.5 kg: 2 pairs
  dumbbells:
    4-40 kg by 2: 2 pairs
  cables:
    - name: cable tower
      number: 4
  stations:
    pull-up bar: 1
    dip bars: 1
"""
LINES = (
    "back squat: 4 x 5 at 75%, rest 2:30", "flat barbell bench press: 4 x 5 at 75%, rest 2:30",
    "pull-up: 3 x 6 at 2 RIR, rest 90 s", "dip: 3 x 6 at 2 RIR, rest 90 s",
    "face pull: 3 x 12 at 2 RIR, rest 60 s", "triceps pushdown: 3 x 12 at 2 RIR, rest 60 s",
    "flat dumbbell bench press: 3 x 8 at 20 kg, rest 90 s", "Romanian deadlift: 3 x 8 at 60 kg, rest 2:00",
    "front plank: 3 x 30 s hold, rest 30 s", "push-up: 3 x 10 at 2 RIR, rest 60 s",
)  # fmt: skip
MAXES = """\
      maxes:
        back squat: {} kg tested 2027-02-01
        flat barbell bench press: {} kg tested 2027-02-01
"""


def evening(athletes: int) -> str:
    """A plan of ten lines on twelve stations for so many, each with maxes of their own."""
    squad = "".join(
        f"    - name: Athlete {n}\n{MAXES.format(80 + n % 60, 60 + n % 40)}" for n in range(athletes)
    )
    work = "".join(f"      - {line}\n" for line in LINES)
    head = "plan: An evening\nstarts: 2027-03-01\nunit: kg\ndose order: sets x reps\nsides: each\n"
    people = f"squad:\n  unit: kg\n  athletes:\n{squad}"
    return f"{head}{people}{GYM}sessions:\n  - day: Monday\n    minutes: 90\n    work:\n{work}"


def cost(athletes: int) -> tuple[float, str]:
    """Seconds of processor time from the plan that was read to its conflicts, and what came out."""
    read, table = read_plan("evening.yaml", evening(athletes), partial(_nothing, Path()))
    (week,) = read.weeks
    start = time.process_time()
    found = floor(room(week.sessions[0], week, table))
    wrong = conflicts(found)
    took = time.process_time() - start
    off = (found.finish_s - found.least_s) / 60
    return took, f"{len(found.groups)} groups, {off:.0f} min over the bound, {len(wrong)} conflicts"


def _nothing(_folder: Path, _name: str) -> None:
    return None


def figures() -> Iterator[Figure]:
    """The timetable of each squad and what came out; 30 athletes are asked to have it in time."""
    for athletes in ATHLETES:
        took, told = cost(athletes)
        what = f"{athletes} athletes, 12 stations, 10 lines: {told}"
        judged = athletes == JUDGED
        yield at_most(what, took, LONGEST_S, "{:.2f} s") if judged else seen(what, took, "{:.2f} s")
