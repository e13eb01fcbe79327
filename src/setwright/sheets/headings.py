"""The first line of a group: what is done in turn, how often, how to get from move to move, and the rest."""

from typing import Final

from setwright.model.plan import Group
from setwright.sheets.phrases import say
from setwright.sheets.words import amount, clock, rest

GROUP_NAMES: Final = {2: "group.pair", 3: "group.three", 4: "group.four", 5: "group.five"}
"""Phrases for a superset of so many moves."""


def group_heading(group: Group, numbers: list[str]) -> str:
    """What a group does, in the words of the floor.

    "Pair: 2a, then 2b straight after; rest 2:00 after both"; "Circuit, 4 rounds: 35 s at each, 25 s to
    change; rest 2:00 after the round". A group of which one line is left says only its rest.
    """
    ending = _ending(group, numbers)
    if group.kind == "superset" and len(numbers) == 1:
        return say("group.alone", number=numbers[0]) + ending
    told = f", {pace(group)}" if pace(group) else ""
    return f"{_lead(group, numbers)}{told}{_course(group, numbers)}{ending}"


def _ending(group: Group, numbers: list[str]) -> str:
    """The rest after a group, where one is written."""
    if group.rest is None:
        return ""
    after = _after(group, numbers)
    if group.rest.kind == "none":
        return say("group.no_pause", after=after)
    return say("group.pause", rest=rest(group.rest), after=after)


def _lead(group: Group, numbers: list[str]) -> str:
    if group.kind == "superset":
        return say(GROUP_NAMES.get(len(numbers), "group.more"), count=len(numbers))
    return say("group.circuit") if group.kind == "circuit" else say("group.complex")


def pace(group: Group) -> str:
    """How often a group is done: "4 rounds", "as many rounds as fit in 12:00"; or nothing."""
    if group.time_s is not None:
        return say("group.fit_in", time=clock(group.time_s))
    told = []
    if group.rounds:
        told.append(say("group.rounds", count=group.rounds))
    if group.ladder:
        told.append(_ladder(group.ladder))
    if group.cap:
        stop = say("group.for_time", time=amount(group.cap))
        told = [*told[:-1], f"{told[-1]} {stop}" if told else stop]
    if group.every_s is not None:
        told.append(say("group.every", time=clock(group.every_s)))
    return ", ".join(told)


def _ladder(rungs: tuple[int, ...]) -> str:
    top = max(rungs)
    turns = rungs[0] != top != rungs[-1]
    if turns:
        return say("group.ladder_back", first=rungs[0], top=top, last=rungs[-1])
    return say("group.ladder", first=rungs[0], last=rungs[-1])


def _course(group: Group, numbers: list[str]) -> str:
    """How to get from move to move."""
    between = group.between_moves
    if group.each_s is not None:
        at_each = say("group.at_each", time=clock(group.each_s))
        slow = between and between.low
        return f": {at_each}{say('group.change', time=clock(slow)) if slow else say('group.straight_on')}"
    if len(numbers) == 1:
        return ""
    if between and between.kind != "none":
        return f": {say('group.between', numbers=', '.join(numbers), rest=rest(between))}"
    if len(numbers) == 2:  # noqa: PLR2004 - a pair
        return f": {say('group.then', first=numbers[0], second=numbers[1])}"
    return f": {say('group.in_turn', first=numbers[0], last=numbers[-1])}"


def _after(group: Group, numbers: list[str]) -> str:
    if group.kind == "superset" and not group.rounds:
        return say({1: "group.each_set", 2: "group.both"}.get(len(numbers), "group.all"))
    return say("group.each_round")
