"""Rule one-side-only: a one-sided move for one side, without a reason."""

from collections.abc import Iterator
from typing import Final

from setwright.coverage import Work
from setwright.rules.rule import ANATOMY, Case, Cure, Fault, Rule, counted, seen

BAD = """\
plan: One arm
unit: kg
dose order: sets x reps
sessions:
  - day: Monday
    work:
      - one-arm dumbbell row: 3 x 10 left at 20 kg
"""
GOOD = BAD.replace("3 x 10 left", "3 x 10 each arm")

OTHER: Final = {"left": "right", "right": "left"}


def find(case: Case) -> Iterator[Fault]:
    """One fault a line that names one side, when nothing trains the other and no note says why."""
    named = [(work, side) for work in case.coverage.works for side in _sides(work)]
    trained = {(work.movement["key"], side) for work, side in named}
    for work, side in named:
        item, other = work.item, OTHER[side]
        if item.note or item.private_note or (work.movement["key"], other) in trained:
            continue
        yield Fault(
            place=item.place,
            where=work.session.title,
            message=f"{item.name} trains the {side} side only",
            why=f"nothing in {case.week_word} trains the {other} side, and no note says that this is meant",
            cure=Cure(
                f'write "each side" for {side}, add a line for the {other} side, or say why under note:'
            ),
            seen=seen((work,), counted),
            day=work.day,
        )


def _sides(work: Work) -> list[str]:
    groups = work.item.dose.groups if work.item.dose else ()
    kinds = {group.sides.kind for group in groups if group.sides}
    return sorted(kinds & OTHER.keys()) if len(kinds) == 1 else []


RULE = Rule(
    id="one-side-only",
    looks_at="item",
    summary="a line names one side, and neither the other side nor a reason is written",
    why="one side named is either a slip or a decision; people follow the sheet as it is written",
    change="write each side, add the other side, or give the reason under note:",
    source=ANATOMY,
    bad=BAD,
    good=GOOD,
    find=find,
)
