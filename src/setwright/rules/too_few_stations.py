"""Rule too-few-stations: everybody's sets at a place take longer than the session."""

from collections.abc import Iterator
from typing import TYPE_CHECKING

from setwright.coverage import SessionCover, Work
from setwright.findings import Seen
from setwright.floor.blocks import Block
from setwright.floor.kit import noun, pool_words
from setwright.floor.timing import NEXT_PERSON_S, seconds
from setwright.model.plan import Group
from setwright.rules.queues import rooms, sharing, works_of
from setwright.rules.rule import CHOICE, Case, Cure, Fault, Option, Rule

if TYPE_CHECKING:
    from setwright.floor.room import Room

BAD = """\
plan: A class at two benches
unit: kg
dose order: sets x reps
level: beginner
people: 24
gym:
  benches: 2
  dumbbells:
    4-20 kg by 2: 8 pairs
sessions:
  - day: Monday
    minutes: 45
    work:
      - flat dumbbell bench press: 4 x 10 at 3 RIR, rest 60 s
      - one-arm dumbbell row: 4 x 10 each arm at 3 RIR, rest 60 s
"""
GOOD = BAD.replace("people: 24", "people: 6")

FULL = Option("share of the session in which a place may be in use", 100, "%", CHOICE)


def find(case: Case) -> Iterator[Fault]:
    """One fault a session and kind of place; one a circuit that moves by the clock and kind of thing.

    About the same kind of place they are one, on every day. Sessions without minutes are judged by their
    circuits only.
    """
    for session, room in rooms(case):
        yield from _at_once(session, room)
        if room.available_s is None:
            continue
        in_turn = room.only({block.number for block in room.blocks if block.whole_s is None})
        for pool in _fullest(in_turn):
            if in_turn.taken_s(pool) > room.available_s * FULL.value / 100:
                yield _fault(session, in_turn, pool)


def _fullest(room: "Room") -> Iterator[str]:
    """The pools, but of those that the same blocks hold (a rack and its bar) the one in use for longest."""
    alike: dict[tuple[int, ...], list[str]] = {}
    for pool in dict.fromkeys(pool for block in room.blocks for pool in block.holds):
        if room.there[pool]:
            holding = tuple(block.number for block in room.blocks if pool in block.holds)
            alike.setdefault(holding, []).append(pool)
    return (max(pools, key=room.taken_s) for pools in alike.values())


def _at_once(session: SessionCover, room: "Room") -> Iterator[Fault]:
    """Circuits by the clock whose stations want more of one thing at a time than there is.

    Any two stations of a circle are in use at some time once more than half of them are.
    """
    for block in room.blocks:
        by_the_clock = isinstance(block.entry, Group) and block.entry.each_s
        if not by_the_clock or len(room.people) <= len(block.moves) / 2:
            continue
        for pool, number in block.holds.items():
            if number > room.there[pool] > 0:
                names = [move.name for move in block.moves if pool in move.holds]
                works = [work for work in works_of(session, block) if work.name in names]
                yield _fault_of_circuit(pool_words(number, pool), int(room.there[pool]), works)


def _fault_of_circuit(what: str, there: int, works: list[Work]) -> Fault:
    names = " and ".join(work.name for work in works)
    return Fault(
        place=works[0].item.place,
        where=works[0].session.title,
        message=f"{works[0].session.title}'s circuit needs {what} at once, {there} there: {names}",
        why="everybody moves on together, so both stations are in use at the same time",
        cure=Cure(
            f"give {works[-1].name} another load or another movement, or do the two in different rounds"
        ),
        seen=tuple(Seen(work.name, work.line) for work in works),
        day=works[0].day,
        about=f"{what} at once: {names}",
    )


def _fault(session: SessionCover, room: "Room", pool: str) -> Fault:
    blocks = [block for block in room.blocks if pool in block.holds]
    works = [work for block in blocks for work in works_of(session, block)]
    there, needed = room.there[pool], room.taken_s(pool) / 60
    return Fault(
        place=works[0].item.place,
        where=session.session.title,
        message=f"{session.session.title}: everybody's sets take about {needed:.0f} minutes at the "
        f"{noun(there, pool)} ({there:g} there), {session.session.minutes:g} are written",
        why=f"{len(room.people)} people in {len(room.groups)} groups one after the other, the places never "
        "empty: it does not fit in any order",
        cure=Cure(
            "give part of the group another movement that trains the same, do fewer sets there, or take two "
            "days"
        ),
        seen=tuple(
            Seen(
                f"{block.name}: about {_minutes(room, block)} min for {sharing(room, block)} at one place",
                block.entry.place.line,
            )
            for block in blocks
        ),
        day=works[0].day,
        about=pool,
    )


def _minutes(room: "Room", block: Block) -> int:
    return round(seconds(block, sharing(room, block)) / 60)


RULE = Rule(
    id="too-few-stations",
    looks_at="session",
    summary="everybody's sets at one kind of place take longer than the session, however they are dealt out; "
    "or a circuit by the clock needs more of one thing at once than there is",
    why="the groups of the floor, one after the other at the places that the gym file counts; who waits for "
    "whom is not looked at, so a plan that passes may still jam: `setwright floor` looks",
    change="another movement for part of the group, fewer sets there, or a second day",
    source="common practice, no source",
    bad=BAD,
    good=GOOD,
    find=find,
    options=(FULL, Option("change of lifters at a place", NEXT_PERSON_S, "s", "common practice, no source")),
)
