"""Rule nobody-can-use: a line needs what the gym file does not list."""

from collections import Counter
from collections.abc import Iterator, Sequence
from typing import Final

from setwright.coverage import Work
from setwright.findings import Seen
from setwright.floor.kit import missing
from setwright.model.room import Gym
from setwright.rules.cures import at_hand_like
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule
from setwright.rules.stations import lines_to_add

ID: Final = "nobody-can-use"
WHY: Final = "what the gym file does not name is not there"
TOLD_APART: Final = Option(
    "told_apart", 3, "movements that are told one by one; more are told together", CHOICE
)

BAD = """\
plan: No dip bars here
unit: kg
dose order: sets x reps
gym:
  racks: 1
  benches: 1
  bars:
    20 kg: 1
sessions:
  - day: Monday
    work:
      - dip: 2 x 8 at 2 RIR
      - bent-over barbell row: 2 x 8 at 2 RIR
"""
GOOD = BAD.replace("sessions:", "  stations:\n    dip bars: 1\nsessions:")


def find(case: Case) -> Iterator[Fault]:
    """One fault a movement that the gym lacks something for, with its lines; one for all if they are many."""
    gym = case.coverage.week.gym
    if gym is None:
        return
    lacking: dict[str, list[Work]] = {}
    for work in case.coverage.works:
        if missing(gym, work.movement):
            lacking.setdefault(work.movement["key"], []).append(work)
    apart = [works for works in lacking.values() if any(_allowed(work) for work in works)]
    rest = [works for works in lacking.values() if works not in apart]
    if len(rest) > TOLD_APART.value:
        yield _together(gym, rest)
    else:
        apart += rest
    yield from (_alone(case, gym, works) for works in apart)


def _allowed(work: Work) -> bool:
    return any(one.rule == ID for one in work.item.allow)


def _alone(case: Case, gym: Gym, works: Sequence[Work]) -> Fault:
    first = works[0]
    lacks = missing(gym, first.movement)
    held = {work.movement["key"] for work in case.coverage.works if work.day == first.day}
    other = at_hand_like(case, first.movement, held)
    write = f"write {other['name']} instead, or " if other else ""
    return Fault(
        place=first.item.place,
        where=first.session.title,
        message=f"{first.name} needs {' and '.join(lacks)}, and the gym file lists none",
        why=WHY,
        cure=Cure(f"{write}add {lines_to_add(lacks)} in the gym file"),
        seen=tuple(Seen(f"{work.session.title}, {work.name}", work.line) for work in works),
        day=first.day,
    )


def _together(gym: Gym, lacking: Sequence[Sequence[Work]]) -> Fault:
    first = lacking[0][0]
    needs = [need for works in lacking for need in missing(gym, works[0].movement)]
    most = [need for need, _ in Counter(needs).most_common()]
    return Fault(
        place=first.item.place,
        where=first.session.title,
        message=f"{len(lacking)} movements need what the gym file does not list: {', '.join(most)}",
        why=WHY,
        cure=Cure(
            "add what is there to the gym file (`racks: 2`, `bars:`, `stations:`), or take `gym:` out until "
            "the whole room is written down: without it everything counts as there"
        ),
        seen=tuple(
            Seen(f"{works[0].name} needs {' and '.join(missing(gym, works[0].movement))}", works[0].line)
            for works in lacking
        ),
        day=first.day if len({work.day for works in lacking for work in works}) == 1 else None,
    )


RULE = Rule(
    id=ID,
    looks_at="item",
    summary="a line needs a station or a piece of kit that the gym file does not name",
    why="the line can't be done as it is written, and on the day somebody improvises",
    change="write a movement that this gym has the kit for, or add the kit to the gym file",
    source="the gym file; common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    options=(TOLD_APART,),
)
