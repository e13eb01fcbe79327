"""What can't happen on the floor as it is written, or will not go well."""

import math
from collections.abc import Iterator
from itertools import pairwise
from typing import Final, Literal, NamedTuple

from setwright.floor.blocks import Block
from setwright.floor.kit import is_fixed
from setwright.floor.room import Floor, letter
from setwright.model.plan import Group, Item

LONG_WAIT_S: Final = 240.0
"""A wait between two blocks that is said (choice: longer than most written rests)."""
NEAR_FAILURE_RIR: Final = 1.0
"""Repetitions in reserve up to which a barbell set wants a spotter (choice)."""

Kind = Literal["stations", "pair", "rest", "spotter", "late", "wait"]


class Conflict(NamedTuple):
    """What is wrong, and what to do; ``entry``: the line or group it is about, None for the whole session."""

    kind: Kind
    text: str
    change: str
    entry: Item | Group | None = None


def conflicts(floor: Floor) -> tuple[Conflict, ...]:
    """Everything found, block by block, then what concerns the clock."""
    told = [one for block in floor.blocks for find in _OF_A_BLOCK for one in find(floor, block)]
    return (*told, *_late(floor), *_waits(floor))


def _too_few(floor: Floor, block: Block) -> Iterator[Conflict]:
    for pool, held in block.holds.items():
        there = floor.there.get(pool, math.inf)
        if held > there > 0:  # nothing at all: rule nobody-can-use
            when = " at the same moment" if block.at_once else ""
            yield Conflict(
                "stations",
                f"{block.name} wants {held} x {pool}{when}, and the room has {there:g}",
                "give one of the moves another load or another piece of kit, or make two blocks of it",
                block.entry,
            )


def _far_apart(floor: Floor, block: Block) -> Iterator[Conflict]:
    """A pair that keeps two stations which stand apart, one of which another block of the session needs."""
    kinds = {tuple(sorted(pool for pool in move.holds if is_fixed(pool))) for move in block.moves} - {()}
    kept = {pool for pools in kinds for pool in pools}
    others = [one for one in floor.blocks if one is not block and kept & one.holds.keys()]
    if len(kinds) > 1 and not block.at_once and others:
        yield Conflict(
            "pair",
            f"{block.name} keeps {' and '.join(sorted(kept))} at once; {others[0].name} waits for one",
            "take for the second move what can stand beside the first: a band, dumbbells",
            block.entry,
        )


def _rest(floor: Floor, block: Block) -> Iterator[Conflict]:
    """A written rest that the number of people at the station makes longer."""
    stays = [
        (stay.rest_s, stay.people) for stay in floor.stays if stay.block is block and stay.rest_s is not None
    ]
    rest, people = max(stays, default=(0.0, 0))
    if block.rest_written and rest > block.rest_s + 1:
        yield Conflict(
            "rest",
            f"{block.name}: {people} at one station rest {rest:.0f} s, and {block.rest_s:.0f} s is written",
            f"write rest {5 * math.ceil(rest / 5)} s, or let fewer share a station",
            block.entry,
        )


def _no_spotter(floor: Floor, block: Block) -> Iterator[Conflict]:
    """Somebody alone under a bar near failure."""
    alone = [stay for stay in floor.stays if stay.block is block and stay.people == 1]
    if alone and not floor.spotter and "bar" in block.holds and _near_failure(block):
        yield Conflict(
            "spotter",
            f"{block.name} goes near failure, and in group {letter(alone[0].group)} nobody is there to spot",
            "leave 3 repetitions in reserve, or use a rack with safeties",
            block.entry,
        )


_OF_A_BLOCK: Final = (_too_few, _far_apart, _rest, _no_spotter)


def _near_failure(block: Block) -> bool:
    items = block.entry.items if isinstance(block.entry, Group) else (block.entry,)
    works = [work for item in items if item.dose for group in item.dose.groups for work in group.works]
    left = {
        work.effort.low if work.effort.scale == "RIR" else 10 - work.effort.high
        for work in works
        if work.effort is not None and work.effort.scale in ("RIR", "RPE")
    }
    return min(left, default=math.inf) <= NEAR_FAILURE_RIR


def _late(floor: Floor) -> Iterator[Conflict]:
    if floor.available_s is None or floor.finish_s <= floor.available_s:
        return
    ends = {
        group: floor.of_group(group)[-1].end_s for group in range(len(floor.groups)) if floor.of_group(group)
    }
    behind = [letter(group) for group, end in ends.items() if end > floor.available_s]
    who = "every group" if len(behind) == len(ends) else f"group {' and '.join(behind)}"
    late = math.ceil((floor.finish_s - floor.available_s) / 60)
    least = math.ceil(max(floor.least_s - floor.available_s, 0) / 60)
    best = f", and in no order of the blocks less than {least}" if least else ""
    yield Conflict(
        "late", f"{who} ends {late} min after the time{best}", "leave something out: --minutes says what"
    )


def _waits(floor: Floor) -> Iterator[Conflict]:
    for group in range(len(floor.groups)):
        for one, two in pairwise(floor.of_group(group)):
            wait = two.start_s - one.end_s
            if wait > LONG_WAIT_S:
                yield Conflict(
                    "wait",
                    f"group {letter(group)} waits {wait / 60:.0f} min before {two.block.name}",
                    "let them do their warm-up sets for it, or trunk work on the floor",
                    two.block.entry,
                )
