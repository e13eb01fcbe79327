"""Rule no-work-at-long-length: a part of the chest is never loaded where it is long."""

from collections.abc import Iterator
from functools import partial

from setwright.coverage import Movement, Part, Work
from setwright.rules.cures import added, long_for
from setwright.rules.rule import CHOICE, Case, Fault, Option, Rule, doses, seen

BAD = """\
plan: Close grip, no dips
unit: kg
dose order: sets x reps
sessions:
  - day: Monday
    work:
      - close-grip barbell bench press: 4 x 6-8 at 2 RIR
      - low-to-high cable crossover: 3 x 12 at 1 RIR
      - bench pull: 4 x 8 at 2 RIR
allow:
  line-never-followed: no dips this block
"""
GOOD = BAD.replace("      - bench", "      - flat dumbbell fly: 3 x 12 at 1 RIR\n      - bench")


LONG = Option("long", 67, "% of the part's range", f"{CHOICE} (docs/engine.md)")


def find(case: Case) -> Iterator[Fault]:
    """One fault a part that is loaded, but nowhere long; costal length is printed and never judged."""
    session = case.chest_session()
    for part in case.coverage.parts:
        if part.part == "costal" or not part.loaded_by or part.loaded_long != "no":
            continue
        yield Fault(
            place=part.loaded_by[0].item.place,
            where=case.week_word,
            message=f"the {part.part} part is never loaded at long length",
            why=f"no movement loads the {part.part} fibres from {LONG.value:g} % of their range up",
            cure=added(case, long_for(case, part.part), session),
            seen=seen(part.loaded_by, partial(_seen, part.part)),
            parts=frozenset({part.part}),
            closed_by=partial(_long, part.part),
        )


def _seen(part: Part, work: Work) -> str:
    return f"{work.name} starts at {work.movement['parts'][part]['length_start']:.0f} %"


def _long(part: Part, movement: Movement) -> bool:
    return doses(part, movement) and movement["parts"][part]["loaded_long"] == "yes"


RULE = Rule(
    id="no-work-at-long-length",
    looks_at="week",
    summary="a part of the chest is loaded in the week, but never where its fibres are long",
    why="fibres that are never loaded long do nothing for the outer part of the range; training long muscles "
    "compares well with training the whole range",
    change="add a movement that starts deep, or take the press deeper",
    source="anatomy and common practice; wolf2023: long partials no worse than full range (review, abstract)",
    sources=("wolf2023",),
    bad=BAD,
    good=GOOD,
    find=find,
    options=(LONG,),
    cells=("long",),
)
