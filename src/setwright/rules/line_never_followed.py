"""Rule line-never-followed: a part is loaded on the way, but no movement follows its line."""

from collections.abc import Iterator
from functools import partial

from setwright.rules.cures import added, following
from setwright.rules.rule import ANATOMY, Case, Fault, Rule, counted, line_of, seen, serves

BAD = """\
plan: Flat and incline
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
      - incline 30 barbell bench press: 4 x 6-8 at 2 RIR
      - low-to-high cable crossover: 3 x 12 at 1 RIR
      - pull-up: 4 x 8 at 2 RIR
"""
GOOD = BAD + """\
      - dip: 3 x 8 at 2 RIR
      - high-to-low cable crossover: 3 x 12 at 1 RIR
"""  # fmt: skip


def find(case: Case) -> Iterator[Fault]:
    """One fault a part whose line no movement serves."""
    session = case.chest_session()
    for part in case.coverage.parts:
        if part.served_by:
            continue
        yield Fault(
            place=session.session.work_place,
            where=case.week_word,
            message=f"no movement of {case.week_word} follows {line_of(part)}",
            why=f"the {part.part} fibres are at most pulled along on the way: half a set each",
            cure=added(case, following(case, part.part), session),
            seen=seen(part.loaded_by, counted),
            parts=frozenset({part.part}),
            closed_by=partial(serves, part.part),
        )


RULE = Rule(
    id="line-never-followed",
    looks_at="week",
    summary="no movement of the week follows one of the three lines of pull of the chest",
    why="a part whose line nothing follows is only worked on the way to another line",
    change="add one movement that follows that line",
    source=f"{ANATOMY}; lines by our own model",
    bad=BAD,
    good=GOOD,
    find=find,
    cells=("follows",),
)
