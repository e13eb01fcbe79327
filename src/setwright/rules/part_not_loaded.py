"""Rule part-not-loaded: no hard set of the week loads a part of the chest along its line."""

from collections.abc import Iterator
from functools import partial

from setwright.rules.cures import added, following
from setwright.rules.rule import ANATOMY, Case, Fault, Option, Rule, counted, doses, seen

BAD = """\
plan: Incline only
unit: kg
dose order: sets x reps
sessions:
  - day: Monday
    work:
      - incline 30 dumbbell bench press: 4 x 8 at 2 RIR
      - one-arm low-to-high cable fly across: 3 x 12 each arm at 1 RIR
      - one-arm dumbbell row: 4 x 10 each arm at 2 RIR
"""
GOOD = BAD + """\
  - day: Thursday
    work:
      - dip: 3 x 8 at 2 RIR
      - high-to-low cable crossover: 3 x 12 at 1 RIR
"""  # fmt: skip

LEVER = Option("least lever", 10, "mm", "choice, no source (docs/engine.md)")
COSINE = Option("least cosine", 0.3, "1", "choice, no source (docs/engine.md)")


def find(case: Case) -> Iterator[Fault]:
    """One fault a part without a hard set along its line."""
    session = case.chest_session()
    chest = tuple(work for work in case.coverage.works if work.direct_chest and work.hard.high)
    for part in case.coverage.parts:
        if part.loaded_by:
            continue
        yield Fault(
            place=session.session.work_place,
            where=case.week_word,
            message=f"no hard set of {case.week_word} loads the {part.part} part along its line",
            why=f"no movement pulls along the {part.part} fibres with a lever of {LEVER.value:g} mm or more "
            f"and a cosine of {COSINE.value:g} or more, so they do next to no work",
            cure=added(case, following(case, part.part), session),
            seen=seen(chest, counted),
            parts=frozenset({part.part}),
            closed_by=partial(doses, part.part),
        )


RULE = Rule(
    id="part-not-loaded",
    looks_at="week",
    summary="no hard set of the week loads one of the three parts of the chest along its line",
    why="a part that no load pulls along does next to no work, however hard the other parts work",
    change="add one movement that follows the line of that part",
    source=f"{ANATOMY}; levers by our own model",
    bad=BAD,
    good=GOOD,
    find=find,
    options=(LEVER, COSINE),
    covers=("line-never-followed", "no-work-at-long-length", "no-work-at-short-length"),
    cells=("sets",),
)
