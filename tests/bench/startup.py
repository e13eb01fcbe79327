"""How long ``setwright check`` takes on a 200-line week, as a ratio to what any reader of it must do.

The floor is the same interpreter importing typer and yaml and building the models of the same plan. Two
stricter floors are told beside it: the imports alone, and a floor that neither collects garbage nor looks for
any on its way out, as the command does (docs/decisions/0004-start-up.md). Floors and command are interleaved
and their byte code is cached; processor time, medians and quartiles; ratios are medians, round by round.
"""

import os
import resource
import statistics
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path
from tempfile import TemporaryDirectory

from tests.bench.figures import Figure, at_most, seen

RUNS = 20
MOST = 1.15
"""Times the floor: above this the benchmark fails."""

IMPORTS = "import typer, yaml, setwright.model.plan"
FLOOR = f"""
{IMPORTS}
from pathlib import Path
from setwright.model.reader import read_block
read_block("week.yaml", Path({{plan!r}}).read_text(encoding="utf-8"), lambda name: None)
"""
LEAN = f"import gc; gc.disable()\n{FLOOR}gc.freeze()"
COMMAND = "import sys; from setwright.cli import main; sys.argv = ['setwright', 'check', {plan!r}]; main()"

SESSION = """\
  - day: {day}
    name: Session {number}
    minutes: 90
    warm-up: 8 min
    note: a line of plain words
    work:
      - superset:
          - flat barbell bench press: 3 x 6-8 at 2 RIR
            warm-up: 10 at bar, 5 at 40 kg, 3 at 50 kg
            priority: 1
          - level cable crossover: 2 x 10-12 at 1 RIR
        rest: 2:30
        priority: 1
      - bench pull: 3 x 8-10 at 2 RIR, rest 2:00
        tempo: 3-1-1-0
        priority: 1
      - superset:
          - incline 30 dumbbell bench press: 2 x 8-10 at 2 RIR
          - low-to-high cable crossover: 2 x 12 at 1 RIR
        rest: 2:00
      - pull-up: 3 x max at 2 RIR, rest 2:00
        next: repeat
      - goblet squat: 3 x 10-12 at 3 RIR, rest 90 s
      - face pull: 3 x 12-15 at 2 RIR, rest 60 s
        priority: 3
      - suitcase carry: 3 x 30 m each side at 24 kg, rest 60 s
        note: tall and slow
      - front plank: 3 x 40 s hold, rest 30 s
        priority: 3
"""


def long_week() -> str:
    """A plan of 200 lines that ``check`` can read whole."""
    days = ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday")
    sessions = "".join(SESSION.format(day=day, number=number) for number, day in enumerate(days, 1))
    head = "plan: A long week\nunit: kg\ndose order: sets x reps\nsides: each\nsessions:\n"
    return head + sessions + "note: the end\n"


def seconds(code: str) -> float:
    """Processor time of one fresh interpreter that runs ``code``, in seconds."""
    cached = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    before = resource.getrusage(resource.RUSAGE_CHILDREN)
    subprocess.run([sys.executable, "-c", code], capture_output=True, check=False, env=cached)
    after = resource.getrusage(resource.RUSAGE_CHILDREN)
    return after.ru_utime + after.ru_stime - before.ru_utime - before.ru_stime


def rounds(plan: Path) -> list[dict[str, float]]:
    """Seconds of floors and command, round by round."""
    codes = {
        "imports": IMPORTS,
        "floor": FLOOR.format(plan=str(plan)),
        "lean floor": LEAN.format(plan=str(plan)),
        "check": COMMAND.format(plan=str(plan)),
    }
    for code in codes.values():
        seconds(code)
    return [{name: seconds(code) for name, code in codes.items()} for _ in range(RUNS)]


def figures() -> Iterator[Figure]:
    """Every median with its quartiles, and command over floors."""
    with TemporaryDirectory() as folder:
        plan = Path(folder) / "week.yaml"
        plan.write_text(long_week(), encoding="utf-8")
        measured = rounds(plan)
    for name in measured[0]:
        low, middle, high = (1000 * one for one in statistics.quantiles([one[name] for one in measured], n=4))
        yield Figure(f"{name}: median, quartiles", f"{middle:.0f} ms, {low:.0f} to {high:.0f}")

    def over(floor: str) -> float:
        return statistics.median(one["check"] / one[floor] for one in measured)

    yield at_most("check over floor", over("floor"), MOST, "{:.2f} times")
    yield seen("check over lean floor", over("lean floor"), "{:.2f} times")
    yield seen("check over imports", over("imports"), "{:.2f} times")
