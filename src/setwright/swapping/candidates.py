"""The changes worth trying: movements that can touch what is open, one for many alike, at every spot."""

from collections.abc import Iterator
from typing import Final

from setwright.coverage import PARTS, Movement, Part
from setwright.coverage.muscles import GROUPS
from setwright.coverage.shapes import PULLS
from setwright.model.plan import Group
from setwright.rules.means import Means
from setwright.rules.rule import doses, serves
from setwright.rules.spoken import Spoken
from setwright.swapping.changes import Change, Spot, lines
from setwright.swapping.state import State

FIXED: Final = 1
"""Priority of lines that are never replaced: the coach keeps them to the last."""


def pool(state: State, means: Means) -> tuple[Movement, ...]:
    """The movements at hand that can touch an open fault; of those that the rules can't tell apart, one.

    The one is the movement that a finding proposes, else the one with the most work on the parts that are
    open, else the first of the library.
    """
    parts = [part for part in PARTS if any(part in one.fault.parts for one in state.found)]
    cures = [one.fault.cure.movement for one in state.found if one.fault.cure and one.fault.cure.movement]
    proposed = {movement["key"] for movement in cures}
    alike: dict[object, list[Movement]] = {}
    for movement in means.movements:
        if any(_may_touch(one, movement, state) for one in state.found):
            alike.setdefault(_facts(movement, means, state), []).append(movement)
    return tuple(
        max(some, key=lambda m: (m["key"] in proposed, sum(_work(m, part) for part in parts)))
        for some in alike.values()
    )


def changes(state: State, means: Means, movements: tuple[Movement, ...]) -> Iterator[Change]:
    """Every change with some movements: paired with a press it finishes, in a line's place, at the end.

    A session that holds the movement already gets it no second time; lines of timed groups stay as they are.
    """
    week = state.week
    held = [{item.key for item in session.items()} for session in week.sessions]
    for movement in movements:
        load_class = means.load_class(movement)
        for spot, item, group in lines(week):
            if movement["key"] in held[spot.session] or not _open(group):
                continue
            if item.key and _finishes(movement, means.table.movement(item.key)):
                yield Change("pair", spot, movement, load_class)
            if item.priority != FIXED and item.dose is not None:
                yield Change("replace", spot, movement, load_class)
        for at, keys in enumerate(held):
            if movement["key"] not in keys:
                yield Change("add", Spot(at, len(week.sessions[at].work)), movement, load_class)


def _open(group: Group | None) -> bool:
    """Whether a group's members may change: none is timed and none a ladder."""
    return group is None or not (group.each_s or group.time_s or group.every_s or group.ladder)


def _finishes(movement: Movement, press: Movement) -> bool:
    return any(one["finishes"] and one["key"] == movement["key"] for one in press.get("partners", ()))


def _may_touch(one: Spoken, movement: Movement, state: State) -> bool:
    """Whether a movement can have to do with a fault; generous, so that nothing that closes one is missed."""
    rule, parts = one.rule.id, one.fault.parts
    if rule == "push-without-pull":
        return movement["pattern"] in PULLS
    if rule == "sets-under-range":
        return any(_trains(movement, group) for group in state.short)
    if rule == "nobody-can-use":
        lines = (work.movement for work in state.coverage.works if work.item.place == one.fault.place)
        return any(movement["pattern"] == line["pattern"] for line in lines)
    return any(doses(part, movement) or serves(part, movement) for part in parts)


def _trains(movement: Movement, group: str) -> bool:
    chest = group == "chest" and any(doses(part, movement) for part in PARTS)
    return chest or bool(GROUPS[group] & {*movement["prime"], *movement["assist"]})


def _facts(movement: Movement, means: Means, state: State) -> object:
    """All that the rules, the counts and the clock look at in a movement."""
    parts = movement.get("parts") or {}
    done = (work.movement for work in state.coverage.works)
    return (
        movement["pattern"], movement["sides"], means.load_class(movement), movement["scored"],
        movement["hands"], movement.get("crossing"), tuple(movement.get("serves", ())),
        tuple((part["dose"], part["loaded_long"], part["loaded_short"]) for part in parts.values()),
        tuple((bool(GROUPS[g] & {*movement["prime"]}), _trains(movement, g)) for g in GROUPS),
        frozenset(press["key"] for press in done if _finishes(movement, press)),
    )  # fmt: skip


def _work(movement: Movement, part: Part) -> float:
    figures = (movement.get("parts") or {}).get(part)
    return float(figures["work"]) if figures and figures["trust"] == "solid" else 0.0
