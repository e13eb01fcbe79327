"""Rule heavy-line-not-finished: a heavy press whose line no crossing move of the week follows on."""

from collections.abc import Iterator
from functools import partial

from setwright.coverage import Part, Work
from setwright.coverage.cover import NEVER_ACROSS
from setwright.rules.cures import finishing, straight_after
from setwright.rules.rule import NO_STUDY, Case, Fault, Rule, finishes, past, seen

BAD = """\
plan: Flat press, never finished
unit: kg
dose order: sets x reps
focus: [chest]
sessions:
  - day: Monday
    work:
      - flat barbell bench press: 4 x 6-8 at 2 RIR
      - high-to-low cable crossover: 2 x 12 at 1 RIR
      - bench pull: 4 x 8 at 2 RIR
  - day: Thursday
    work:
      - incline 30 barbell bench press: 4 x 6-8 at 2 RIR
      - low-to-high cable crossover: 3 x 12 at 1 RIR
      - dip: 3 x 8 at 2 RIR
      - pull-up: 4 x 8 at 2 RIR
"""
GOOD = BAD.replace(
    "      - high-to-low cable crossover: 2 x 12 at 1 RIR\n",
    "      - level cable crossover: 2 x 12 at 1 RIR\n      - high-to-low cable crossover: 2 x 12 at 1 RIR\n",
)


def find(case: Case) -> Iterator[Fault]:
    """One fault a line: its first heavy press, when no crossing move of the week finishes any of them."""
    lines: dict[str, list[Work]] = {}
    for press in case.presses():
        lines.setdefault(press.movement["line"], []).append(press)
    for presses in lines.values():
        if any(map(case.finished, {press.movement["key"]: press for press in presses}.values())):
            continue
        press = presses[0]
        session = case.coverage.sessions[press.day]
        yield Fault(
            place=press.item.place,
            where=press.session.title,
            message=f"{press.session.title}'s {press.name} is never finished past the midline",
            why=_why(press, press.serves[0]),
            cure=straight_after(case, press, finishing(case, press), session),
            seen=seen((*presses, *case.crossings()), _seen),
            parts=frozenset(press.serves),
            closed_by=partial(finishes, press=press.movement),
            day=press.day,
        )


def _why(press: Work, part: Part) -> str:
    stop = f"the hands stop {past(press)} of the midline"
    if part in NEVER_ACROSS:
        return f"{stop}; the rest of the arm's way along the {part} line is left out"
    end = press.movement["parts"][part]["length_end"]
    return f"{stop}, the {part} fibres at {end:.0f} % of their range; the rest of that line is left out"


def _seen(work: Work) -> str:
    return f"{work.name}: {past(work)}, {work.movement['line']} line"


RULE = Rule(
    id="heavy-line-not-finished",
    looks_at="week",
    summary="a heavy press whose line no crossing move of the same class finishes in the week",
    why="bars, handles, dip bars and the floor keep the hands apart, so a heavy press stops short of the "
    "midline; a crossing move of the same line takes the arm on from there. The crossing set is light, and "
    "the usual load drop after a heavy set is not known. On the costal line the fibres have little lever "
    "left past the midline: there the arm's travel goes on, no more is said",
    change="straight after the press, without rest, a crossing cable or band move of the same line",
    source=NO_STUDY,
    bad=BAD,
    good=GOOD,
    find=find,
    covers=("no-work-at-short-length",),
    cells=("across", "heaviest"),
)
