"""Rule no-heavy-lift-for-part: the line of a part is followed by light work only."""

from collections.abc import Iterator
from functools import partial

from setwright.coverage import Movement, Part
from setwright.rules.cures import added, following
from setwright.rules.rule import ANATOMY, Case, Fault, Rule, line_of, seen, serves

BAD = """\
plan: Light on the incline
unit: kg
dose order: sets x reps
sessions:
  - day: Monday
    work:
      - flat barbell bench press: 4 x 6-8 at 2 RIR
      - level cable crossover: 3 x 12 at 1 RIR
      - one-arm dumbbell row: 4 x 10 each arm at 2 RIR
  - day: Thursday
    work:
      - low-to-high cable crossover: 3 x 12 at 1 RIR
      - dip: 3 x 8 at 2 RIR
      - high-to-low cable crossover: 2 x 12 at 1 RIR
      - pull-up: 4 x 8 at 2 RIR
"""
GOOD = BAD.replace(
    "      - low-to-high", "      - incline 30 barbell bench press: 3 x 6-8 at 2 RIR\n      - low-to-high"
)


def find(case: Case) -> Iterator[Fault]:
    """One fault a part whose line is served, but by nothing of the hardest class this gym gives."""
    for part in case.coverage.parts:
        if not part.served_by or any(case.heavy(work) for work in part.served_by):
            continue
        first = part.served_by[0]
        session = case.coverage.sessions[first.day]
        yield Fault(
            place=first.item.place,
            where=case.week_word,
            message=f"{line_of(part)} gets light work only, and no heavy lift",
            why="a light movement makes the fibres active; it can't be loaded the way a press on it can",
            cure=added(case, following(case, part.part, heavy=True), session),
            seen=seen(part.served_by, lambda work: f"{work.name}, {case.means.load_class(work.movement)}"),
            parts=frozenset({part.part}),
            closed_by=partial(_heavy_on, case, part.part),
        )


def _heavy_on(case: Case, part: Part, movement: Movement) -> bool:
    return serves(part, movement) and case.means.is_heavy(movement)


RULE = Rule(
    id="no-heavy-lift-for-part",
    looks_at="week",
    summary="the line of a part is followed, but by nothing heavy (by the hardest class the gym gives)",
    why="activity is not overload: what builds strength on a line is the lift that can be loaded",
    change="add a heavy lift of that line, before the light work",
    source=f"{ANATOMY}; classes by equipment",
    bad=BAD,
    good=GOOD,
    find=find,
    cells=("heaviest",),
)
