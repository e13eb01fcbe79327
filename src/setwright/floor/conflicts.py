"""What can't happen on the floor as it is written, or will not go well."""

import math
from collections.abc import Iterator
from typing import Final, Literal, NamedTuple

from setwright.coverage.cut import KEEP
from setwright.floor.blocks import Block
from setwright.floor.kit import is_fixed, pool_words
from setwright.floor.room import Floor, Stay, letter
from setwright.floor.schedule import LONG_WAIT_S
from setwright.floor.shared import wanted_twice
from setwright.model.plan import Group, Item
from setwright.reading.words import MINUTE_S, listed

NEAR_FAILURE_RIR: Final = 1.0
"""Repetitions in reserve up to which a barbell set wants a spotter (choice)."""
FIVE_S: Final = 5

Kind = Literal["stations", "pair", "rest", "spotter", "iron", "late", "wait"]


class Conflict(NamedTuple):
    """What is wrong, and what to do; ``entry``: the line or group it is about, None for the whole session."""

    kind: Kind
    text: str
    change: str
    entry: Item | Group | None = None


def conflicts(floor: Floor) -> tuple[Conflict, ...]:
    """Everything found, block by block, then what concerns the clock."""
    told = [one for block in floor.blocks for find in _OF_A_BLOCK for one in find(floor, block)]
    return (*told, *_iron(floor), *_late(floor), *_waits(floor))


def _too_few(floor: Floor, block: Block) -> Iterator[Conflict]:
    stays = [stay for stay in floor.stays if stay.block is block]
    people = max((len(stay.everyone) for stay in stays), default=0)
    if block.at_once and people <= len(block.moves) / 2:  # never at two stations at the same moment
        return
    for done in {one.name: one for stay in stays for way in stay.ways for one in way.blocks}.values():
        for pool, held in done.holds.items():
            there = floor.there.get(pool, math.inf)
            if held > there:
                when = " at the same moment" if block.at_once else ""
                yield Conflict(
                    "stations",
                    f"{done.name} wants {pool_words(held, pool)}{when}, and the room has "
                    f"{int(there) or 'none'}",
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
            f"{block.name} keeps {' and '.join(sorted(kept))} at once; {others[0].name} needs one of them",
            "take for the second move what can stand beside the first: a band, dumbbells",
            block.entry,
        )


def _rest(floor: Floor, block: Block) -> Iterator[Conflict]:
    """A written rest that the number of people at the station makes longer."""
    stays = [stay for stay in floor.stays if stay.block is block and stay.rest_s is not None]
    rest, people = max(((stay.rest_s or 0.0, stay.sharing) for stay in stays), default=(0.0, 0))
    if block.rest_written and rest > block.rest_s + 1:
        yield Conflict(
            "rest",
            f"{block.name}: {people} at one station rest {rest:.0f} s, and {block.rest_s:.0f} s is written",
            f"write rest {FIVE_S * math.ceil(rest / FIVE_S)} s, or let fewer share a station",
            block.entry,
        )


def _no_spotter(floor: Floor, block: Block) -> Iterator[Conflict]:
    """Somebody alone under a bar near failure."""
    alone = [stay for stay in floor.stays if stay.block is block and len(stay.people) == 1]
    under = any(move.under_the_bar for move in block.moves)
    if alone and under and not floor.spotter and _near_failure(block):
        who = listed([letter(stay.group) for stay in alone])
        yield Conflict(
            "spotter",
            f"{block.name} goes near failure, and in group {who} nobody is there to spot",
            "leave 3 repetitions in reserve, use a rack with safeties, or let two share the rack",
            block.entry,
        )


_OF_A_BLOCK: Final = (_too_few, _far_apart, _rest, _no_spotter)


def _near_failure(block: Block) -> bool:
    works = [
        work for item in block.items if item.dose for group in item.dose.groups for work in group.every_work
    ]
    left = [work.effort.rir[0] for work in works if work.effort is not None and work.effort.rir is not None]
    return min(left, default=math.inf) <= NEAR_FAILURE_RIR


def _iron(floor: Floor) -> Iterator[Conflict]:
    for short, stays in wanted_twice(floor):
        groups = listed(sorted({letter(stay.group) for stay in stays}))
        at = (floor.warm_up_s + stays[-1].start_s) / MINUTE_S
        several = "s" if len({stay.group for stay in stays}) > 1 else ""
        yield Conflict(
            "iron",
            f"minute {at:.0f}, group{several} {groups}: {short.words}",
            "give some of them the next load that is there, or put the lines further apart in the plan",
            stays[-1].block.entry,
        )


def _late(floor: Floor) -> Iterator[Conflict]:
    if floor.available_s is None or floor.finish_s <= floor.available_s:
        return
    ends = {stay.group: stay.end_s for stay in sorted(floor.stays, key=lambda one: one.end_s)}
    behind = [letter(group) for group in sorted(ends) if ends[group] > floor.available_s]
    who = "every group" if len(behind) == len(ends) > 1 else f"group {listed(behind)}"
    late = math.ceil((floor.finish_s - floor.available_s) / MINUTE_S)
    least = math.ceil(max(floor.least_s - floor.available_s, 0) / MINUTE_S)
    best = f"; in no order of the blocks less than {least}" if least else ""
    goes = len(floor.blocks) > 1 and any(block.entry.priority > KEEP for block in floor.blocks)
    change = (
        "leave something out: --minutes says what goes first" if goes else "do fewer sets of what is left"
    )
    yield Conflict("late", f"{who} ends up to {late} min after the time{best}", change)


def _waits(floor: Floor) -> Iterator[Conflict]:
    """One for each block before which some group waits long."""
    waits: dict[int, list[tuple[float, Stay]]] = {}
    for group in range(len(floor.groups)):
        end = 0.0
        for stay in floor.of_group(group):
            if stay.start_s - end > LONG_WAIT_S:
                waits.setdefault(stay.block.number, []).append((stay.start_s - end, stay))
            end = stay.end_s
    for _, found in sorted(waits.items()):
        groups, block = [letter(stay.group) for _, stay in found], found[0][1].block
        who = f"group {groups[0]} waits" if len(groups) == 1 else f"groups {listed(groups)} wait up to"
        yield Conflict(
            "wait",
            f"{who} {max(wait for wait, _ in found) / MINUTE_S:.0f} min before {block.name}",
            "let them do their warm-up sets for it, or trunk work on the floor",
            block.entry,
        )
