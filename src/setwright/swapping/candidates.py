"""The changes worth trying: movements that can close what is open, one for many alike, at every spot."""

from collections.abc import Iterable, Iterator
from typing import Final

from setwright.coverage import PARTS, Movement, Part
from setwright.coverage.muscles import GROUPS
from setwright.model.plan import Item, Session, Week
from setwright.rules.cures import PULLS_TO_PROPOSE
from setwright.rules.means import Means
from setwright.rules.rule import doses, nothing_closes
from setwright.rules.spoken import Spoken
from setwright.swapping.changes import Change, Spot, dosable, lines
from setwright.swapping.likeness import like
from setwright.swapping.state import State

FIXED: Final = 1
"""Priority of lines that are never replaced: the coach keeps them to the last."""


def changes(before: State, state: State, means: Means) -> Iterator[Change]:
    """Every change of the week ``before`` that can close a gap of ``state``, a later stage of it.

    A movement that closes a gap by being done is added, paired with a press it finishes, or put in any
    line's place; one that is of the kind of a line that a gap is about is put in that line's place. A gap is
    closed by doing something: never by leaving work out. A session gets no movement that it holds already;
    lines of timed groups and of priority 1 stay as they are.
    """
    held = [{item.key for item in session.items()} for session in state.week.sessions]
    for movement in closing(state, means):
        yield from _by_doing(movement, before, held, means)
    for spot, item in _open_lines(before.week):
        if _replaceable(item) and any(_about(one, item) for one in state.found):
            for movement in _kin(item, state, means):
                if movement["key"] not in held[spot.session]:
                    yield Change("replace", spot, movement, means.load_class(movement))


def _by_doing(
    movement: Movement, before: State, held: list[set[str | None]], means: Means
) -> Iterator[Change]:
    load_class = means.load_class(movement)
    for spot, item in _open_lines(before.week):
        if movement["key"] in held[spot.session]:
            continue
        if item.key and _finishes(movement, means.table.movement(item.key)):
            yield Change("pair", spot, movement, load_class)
        if _replaceable(item):
            yield Change("replace", spot, movement, load_class)
    for at, keys in enumerate(held):
        if movement["key"] not in keys:
            entry = _place_for(movement, before.week.sessions[at], means)
            yield Change("add", Spot(at, entry), movement, load_class)


def _place_for(movement: Movement, session: Session, means: Means) -> int:
    """Where a movement is added: a lift for the chest before the first crossing move, else at the end."""
    if movement.get("serves") and not movement["crossing"]:
        for at, entry in enumerate(session.work):
            key = entry.key if isinstance(entry, Item) else None
            if key and means.table.movement(key).get("crossing"):
                return at
    return len(session.work)


def closing(state: State, means: Means) -> tuple[Movement, ...]:
    """The movements at hand that close a gap by being done; of those alike, one."""
    return _one_of_each(
        (m for m in means.movements if dosable(m) and any(_closes(one, m, state) for one in state.found)),
        state,
        means,
    )


def facts(movement: Movement, means: Means) -> object:
    """All that the rules, the counts and the clock look at in a movement: alike here is alike to them.

    For a press these are also the moves that finish it, for a crossing move the presses that it finishes.
    """
    parts = movement.get("parts") or {}
    prime, assist = {*movement["prime"]}, {*movement["assist"]}
    return (
        movement["pattern"], movement["sides"], means.load_class(movement), movement["scored"],
        movement["hands"], movement.get("crossing"), movement.get("line"), tuple(movement.get("serves", ())),
        tuple((part["dose"], part["loaded_long"], part["loaded_short"]) for part in parts.values()),
        tuple((bool(muscles & prime), bool(muscles & assist)) for muscles in GROUPS.values()),
        frozenset(partner["key"] for partner in movement.get("partners", ()) if partner["finishes"]),
        frozenset(press["key"] for press in means.movements if _finishes(movement, press)),
        frozenset(
            item.key
            for _, item, _ in lines(means.week)
            if item.key and _finishes(movement, means.table.movement(item.key))
        ),
    )  # fmt: skip


def _kin(item: Item, state: State, means: Means) -> tuple[Movement, ...]:
    """The movements at hand that can stand for a line, the most like it first; of those alike, one."""
    assert item.key is not None
    at_hand = filter(dosable, means.movements)
    return _one_of_each(like(means.table.movement(item.key), at_hand, means), state, means)


def _one_of_each(some: Iterable[Movement], state: State, means: Means) -> tuple[Movement, ...]:
    """Of movements with the same facts one: what a finding proposes, else what works the open parts most."""
    parts = [part for part in PARTS if any(part in one.fault.parts for one in state.found)]
    proposed = state.proposed
    alike: dict[object, list[Movement]] = {}
    for movement in some:
        alike.setdefault(facts(movement, means), []).append(movement)
    return tuple(
        max(each, key=lambda m: (m["key"] in proposed, sum(_work(m, part) for part in parts)))
        for each in alike.values()
    )


def _open_lines(week: Week) -> Iterator[tuple[Spot, Item]]:
    """The lines that may change: those of no group that is timed, and of no ladder."""
    for spot, item, group in lines(week):
        if group is None or not (group.each_s or group.time_s or group.every_s or group.ladder):
            yield spot, item


def _replaceable(item: Item) -> bool:
    return item.priority != FIXED and item.dose is not None and item.key is not None


def _finishes(movement: Movement, press: Movement) -> bool:
    """Whether one is a crossing move and follows the line of the other, a press, past the midline."""
    if not movement.get("crossing") or press.get("crossing"):
        return False
    return any(one["finishes"] and one["key"] == movement["key"] for one in press.get("partners", ()))


def _closes(one: Spoken, movement: Movement, state: State) -> bool:
    """Whether doing a movement somewhere in the week can close a gap, by what its rule asks for."""
    rule, fault = one.rule.id, one.fault
    if rule == "push-without-pull":
        return movement["key"] in PULLS_TO_PROPOSE
    if rule == "sets-under-range":
        return any(_trains(movement, group) for group in state.short)
    if rule == "crossing-work-only":
        return bool(movement.get("serves")) and not movement["crossing"]
    if rule == "no-work-across-the-midline":
        return bool(movement.get("crossing"))
    return fault.closed_by is not nothing_closes and fault.closed_by(movement)


def _about(one: Spoken, item: Item) -> bool:
    """Whether a gap is about a line itself, so that another movement there closes it."""
    return one.rule.looks_at == "item" and one.fault.place == item.place


def _trains(movement: Movement, group: str) -> bool:
    chest = group == "chest" and any(doses(part, movement) for part in PARTS)
    return chest or bool(GROUPS[group] & {*movement["prime"], *movement["assist"]})


def _work(movement: Movement, part: Part) -> float:
    figures = (movement.get("parts") or {}).get(part)
    return float(figures["work"]) if figures and figures["trust"] == "solid" else 0.0
