"""Rule no-work-at-short-length: a part of the chest is never loaded where it is short."""

from collections.abc import Iterator
from functools import partial

from setwright.coverage import Movement, Part, Work
from setwright.rules.cures import added, short_for
from setwright.rules.rule import CHOICE, NO_STUDY, Case, Fault, Option, Rule, doses, seen

BAD = """\
plan: Dips and what finishes them
unit: kg
dose order: sets x reps
sessions:
  - day: Monday
    work:
      - dip: 3 x 8 at 2 RIR
      - high-to-low cable crossover: 3 x 12 at 1 RIR
      - bench pull: 4 x 8 at 2 RIR
allow:
  line-never-followed: the other lines come back next week
"""
GOOD = BAD.split("allow:", maxsplit=1)[0] + """\
      - close-grip barbell bench press: 3 x 8 at 2 RIR
      - low-to-high cable crossover: 2 x 12 at 1 RIR
"""  # fmt: skip

SHORT = Option("short", 33, "% of the part's range", f"{CHOICE} (docs/engine.md)")


def find(case: Case) -> Iterator[Fault]:
    """One fault a part that is loaded, but nowhere short."""
    session = case.chest_session()
    for part in case.coverage.parts:
        if not part.loaded_by or part.loaded_short != "no":
            continue
        yield Fault(
            place=part.loaded_by[0].item.place,
            where=case.week_word,
            message=f"the {part.part} part is never loaded at short length",
            why=f"no movement loads the {part.part} fibres down to {SHORT.value:g} % of their range",
            cure=added(case, short_for(case, part.part), session),
            seen=seen(part.loaded_by, partial(_seen, part.part)),
            parts=frozenset({part.part}),
            closed_by=partial(_short, part.part),
        )


def _seen(part: Part, work: Work) -> str:
    return f"{work.name} ends at {work.movement['parts'][part]['length_end']:.0f} %"


def _short(part: Part, movement: Movement) -> bool:
    return doses(part, movement) and movement["parts"][part]["loaded_short"] == "yes"


RULE = Rule(
    id="no-work-at-short-length",
    looks_at="week",
    summary="a part of the chest is loaded in the week, but never where its fibres are short",
    why="presses end before the fibres are short, or with no load left there; only moves that keep pulling "
    "toward or past the midline work them short",
    change="add a crossing cable or band move; without one, machine fly or squeeze press",
    source=NO_STUDY,
    bad=BAD,
    good=GOOD,
    find=find,
    options=(SHORT,),
    cells=("short",),
)
