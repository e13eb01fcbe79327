"""Rule nobody-can-use: a line needs what the gym file does not list."""

from collections.abc import Iterator

from setwright.coverage import Work
from setwright.findings import Seen
from setwright.rules.cures import at_hand_like
from setwright.rules.rule import Case, Cure, Fault, Rule
from setwright.rules.stations import missing

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
    """One fault a movement that the gym lacks something for, with every line of it."""
    gym = case.coverage.week.gym
    if gym is None:
        return
    lacking: dict[str, list[Work]] = {}
    for work in case.coverage.works:
        if missing(gym, work.movement):
            lacking.setdefault(work.movement["key"], []).append(work)
    for works in lacking.values():
        first = works[0]
        needs = " and ".join(missing(gym, first.movement))
        other = at_hand_like(case, first.movement)
        write = f"write {other['name']} instead, or " if other else ""
        yield Fault(
            place=first.item.place,
            where=first.session.title,
            message=f"{first.name} needs {needs}, and the gym file lists none",
            why="what the gym file does not name is not there",
            cure=Cure(f"{write}add `{missing(gym, first.movement)[0]}: 1` under `stations:` in the gym file"),
            seen=tuple(Seen(f"{work.session.title}, {work.name}", work.line) for work in works),
            day=first.day,
        )


RULE = Rule(
    id="nobody-can-use",
    looks_at="item",
    summary="a line needs a station or a piece of kit that the gym file does not name",
    why="the line can't be done as it is written, and on the day somebody improvises",
    change="write a movement that this gym has the kit for, or add the kit to the gym file",
    source="the gym file; common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
)
