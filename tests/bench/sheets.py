"""How long the session sheets of a large squad take, as a ratio to Jinja rendering as many bytes.

30 athletes and 4 sessions, from a checked plan to the HTML text. The floor is Jinja alone: a template of
as much fixed text as the sheets have, and one escaped value for each tag, which gives the same number of
bytes. Both run in this process, interleaved, on processor time.
"""

import datetime as dt
import re
import statistics
import time
from collections.abc import Callable, Iterator

from jinja2 import Environment

from setwright.checked import Checked, check_plan
from setwright.sheets import sheet_html
from tests.bench.figures import Figure, at_most, seen

ATHLETES = 30
ROUNDS = 9
MOST = 3.0
"""Above this the benchmark fails (design goal)."""

SESSION = """\
  - day: {day}
    name: Session {number}
    minutes: 70
    warm-up: 8 min
    work:
      - superset:
          - flat barbell bench press: 4 x 6-8 at 2 RIR
            warm-up: 10 at bar, 5 at 40 kg, 3 at 50 kg
            load:
{loads}
          - level cable crossover: 3 x 10-12 at 1 RIR
        rest: 2:30
        priority: 1
      - bench pull: 4 x 8-10 at 2 RIR, rest 2:00
      - goblet squat: 3 x 10-12 at 24 kg, rest 90 s
      - face pull: 3 x 12-15 at 2 RIR, rest 60 s
        priority: 3
"""


def squad_week() -> Checked:
    """Four sessions in which every one of the athletes has a load of their own."""
    names = [f"Athlete {number:02}" for number in range(ATHLETES)]
    loads = "\n".join(f"              {name}: {40 + number} kg" for number, name in enumerate(names))
    sessions = "".join(
        SESSION.format(day=day, number=number, loads=loads)
        for number, day in enumerate(("Monday", "Tuesday", "Thursday", "Friday"), 1)
    )
    head = "plan: A large squad\nstarts: 2027-11-15\nunit: kg\ndose order: sets x reps\nsquad:\n"
    return check_plan("week.yaml", f"{head}  athletes: {names}\nsessions:\n{sessions}", lambda _name: None)


def floor(page: str) -> Callable[[], str]:
    """What renders the same bytes with Jinja alone: a loop over the tags of the page and its texts."""
    parts = re.findall(r"(<[^>]*>)([^<]*)", page)
    template = Environment(autoescape=True).from_string(
        "{% for tag, text in parts %}{{ tag | safe }}{{ text }}{% endfor %}"
    )
    return lambda: template.render(parts=parts)


def seconds(make: Callable[[], str]) -> float:
    """Processor time of one call."""
    start = time.process_time()
    make()
    return time.process_time() - start


def figures() -> Iterator[Figure]:
    """Both medians, and the median of the ratios round by round."""
    checked, day = squad_week(), dt.date(2027, 11, 14)
    page = sheet_html(checked, "session", "a4", day)
    jinja = floor(page)
    rounds = [
        (seconds(lambda: sheet_html(checked, "session", "a4", day)), seconds(jinja)) for _ in range(ROUNDS)
    ]
    ours, theirs = (statistics.median(times) for times in zip(*rounds, strict=True))
    ratio = statistics.median(one / other for one, other in rounds)
    yield seen(f"{len(page) / 1e6:.1f} MB of sheets", 1000 * ours, "{:.0f} ms")
    yield seen("Jinja alone", 1000 * theirs, "{:.0f} ms")
    yield at_most("sheets against Jinja alone", ratio, MOST, "{:.2f} times")
