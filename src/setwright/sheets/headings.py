"""The first line of a group: what is done in turn, how often, how to get from move to move, and the rest."""

from typing import Final

from setwright.model.plan import Group
from setwright.sheets.words import amount, clock, rest

GROUP_NAMES: Final = {2: "Pair", 3: "Three in turn", 4: "Four in turn", 5: "Five in turn"}


def group_heading(group: Group, numbers: list[str]) -> str:
    """What a group does, in the words of the floor.

    "Pair: 2a, then 2b straight after; rest 2:00 after both"; "Circuit, 4 rounds: 35 s at each, 25 s to
    change; rest 2:00 after the round". A group of which one line is left says only its rest.
    """
    ending = f"; rest {rest(group.rest)} after {_after(group, numbers)}" if group.rest else ""
    ending = ending.replace("rest none", "no rest")
    if group.kind == "superset" and len(numbers) == 1:
        return f"{numbers[0]} on its own{ending}"
    told = f", {pace(group)}" if pace(group) else ""
    return f"{_lead(group, numbers)}{told}{_course(group, numbers)}{ending}"


def _lead(group: Group, numbers: list[str]) -> str:
    if group.kind == "superset":
        return GROUP_NAMES.get(len(numbers), f"{len(numbers)} in turn")
    return "Circuit" if group.kind == "circuit" else "One bar, not put down"


def pace(group: Group) -> str:
    """How often a group is done: "4 rounds", "as many rounds as fit in 12:00"; or nothing."""
    if group.time_s is not None:
        return f"as many rounds as fit in {clock(group.time_s)}"
    told = []
    if group.rounds:
        told.append(f"{group.rounds} rounds")
    if group.ladder:
        told.append(_ladder(group.ladder))
    if group.cap:
        stop = f"for time, stop at {amount(group.cap)}"
        told = [*told[:-1], f"{told[-1]} {stop}" if told else stop]
    if group.every_s is not None:
        told.append(f"one every {clock(group.every_s)}")
    return ", ".join(told)


def _ladder(rungs: tuple[int, ...]) -> str:
    top = max(rungs)
    turns = rungs[0] != top != rungs[-1]
    return f"{rungs[0]} to {top} to {rungs[-1]} reps" if turns else f"{rungs[0]} to {rungs[-1]} reps"


def _course(group: Group, numbers: list[str]) -> str:
    """How to get from move to move."""
    between = group.between_moves
    if group.each_s is not None:
        change = f", {clock(between.low)} to change" if between and between.low else ", straight on"
        return f": {clock(group.each_s)} at each{change}"
    if len(numbers) == 1:
        return ""
    if between and between.kind != "none":
        return f": {', '.join(numbers)}; {rest(between)} between moves"
    if len(numbers) == 2:  # noqa: PLR2004 - a pair
        return f": {numbers[0]}, then {numbers[1]} straight after"
    return f": {numbers[0]} to {numbers[-1]}, each straight after the last"


def _after(group: Group, numbers: list[str]) -> str:
    if group.kind == "superset" and not group.rounds:
        return {1: "each set", 2: "both"}.get(len(numbers), "all of them")
    return "each round"
