"""Rule rest-shorter-than-the-floor-allows: so many share a rack that turns come later than written."""

from collections.abc import Iterator
from typing import Final

from setwright.coverage import Work
from setwright.findings import Seen
from setwright.floor.timing import NEXT_PERSON_S, rest_given
from setwright.reading.dose import Rest
from setwright.rules.queues import rooms, sharing, works_of
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule

BAD = """\
plan: Four at a rack
unit: kg
dose order: sets x reps
people: 8
gym:
  racks: 2
  people per rack: 4
  bars:
    20 kg: 2
  plates per rack:
    20 kg: 2 pairs
    10 kg: 2 pairs
  spotter: yes
sessions:
  - day: Monday
    work:
      - barbell back squat: 4 x 8 at 3 RIR, rest 60 s
"""
GOOD = BAD.replace("rest 60 s", "rest 2:30")

LONGER = Option("time until the next turn, beyond the rest written", 30, "s", CHOICE)

RACKS: Final = frozenset({"rack", "rack set low"})
"""Stations that several people share, as the library names them."""


def find(case: Case) -> Iterator[Fault]:
    """One fault for each line at a rack; lines of a group are left to the clock of the floor."""
    for session, room in rooms(case):
        if room.gym is None or room.gym.people_per_rack is None:
            continue
        for block in room.blocks:
            for work in works_of(session, block):
                rest, people = _rest(work), sharing(room, block)
                if rest is None or work.group is not None or not RACKS & set(work.movement["needs"]):
                    continue
                wait = rest_given(block, people)
                if wait >= rest + LONGER.value:
                    yield _fault(work, rest, people, wait, block.set_s + NEXT_PERSON_S)


def _fault(work: Work, rest: float, people: int, wait: float, turn: float) -> Fault:
    return Fault(
        place=work.item.place,
        where=work.session.title,
        message=f"{work.session.title}'s {work.name}: rest {_clock(rest)} is written, and with {people} at "
        f"a rack the next turn comes after about {_clock(wait)}",
        why="the others' sets and the changes between them take that long, whatever the sheet says",
        cure=Cure(f"write rest {_clock(wait)}, or fewer to a rack"),
        seen=(Seen(f"a set and the change take about {turn:.0f} s"),),
        day=work.day,
    )


def _rest(work: Work) -> float | None:
    """The shortest rest written for the line, in seconds."""
    groups = work.item.dose.groups if work.item.dose else ()
    rests = [rest for rest in (*(group.rest for group in groups), work.item.rest) if _is_timed(rest)]
    return min((rest.low for rest in rests if rest and rest.low is not None), default=None)


def _is_timed(rest: Rest | None) -> bool:
    return rest is not None and rest.kind == "seconds"


def _clock(seconds: float) -> str:
    """Minutes and seconds, to the nearest five: "2:30"."""
    minutes, rest = divmod(5 * round(seconds / 5), 60)
    return f"{minutes}:{rest:02d}"


RULE = Rule(
    id="rest-shorter-than-the-floor-allows",
    looks_at="item",
    summary="with so many at a rack the next turn comes clearly later than the rest that is written",
    why="the groups of the floor: the others at the rack do one set each, with a change after each",
    change="write the rest that there will be, put fewer to a rack, or give the waiting ones something to do",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    folds=True,
    options=(LONGER, Option("change of lifters at a rack", NEXT_PERSON_S, "s", "common practice, no source")),
)
