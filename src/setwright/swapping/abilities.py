"""What a movement can do about what is open, and which movements the rules can't tell apart."""

from collections.abc import Callable, Iterator
from typing import Final

from setwright.coverage import PARTS, Movement
from setwright.coverage.muscles import GROUPS, HALF, WHOLE
from setwright.coverage.shapes import PULLS
from setwright.model.plan import Item
from setwright.rules.means import Means
from setwright.rules.rule import doses, finishes, nothing_closes
from setwright.rules.spoken import Spoken
from setwright.swapping.changes import lines
from setwright.swapping.state import State

Shares = tuple[float, ...]
"""The most of a set that muscle groups get, in the order of the groups."""

SHORT: Final = "sets-under-range"
"""The rule whose gap closes little by little."""


def facts(movement: Movement, means: Means) -> object:
    """All that the rules, the counts and the clock look at in a movement: alike here is alike to them.

    For a press that is heavy here these are also the moves that finish it, for a crossing move the heavy
    presses, at hand or in the week, that it finishes.
    """
    parts = movement.get("parts") or {}
    prime, assist = {*movement["prime"]}, {*movement["assist"]}
    heavy = means.is_heavy(movement)
    return (
        movement["pattern"], movement["sides"], means.load_class(movement), movement["scored"],
        movement["hands"], tuple(movement["needs"]),
        movement.get("crossing"), tuple(movement.get("serves", ())), heavy and movement.get("line"),
        tuple((part["dose"], part["loaded_long"], part["loaded_short"]) for part in parts.values()),
        tuple((bool(muscles & prime), bool(muscles & assist)) for muscles in GROUPS.values()),
        heavy and frozenset(one["key"] for one in movement.get("partners", ()) if one["finishes"]),
        frozenset(press["key"] for press in _heavy_presses(means) if finishing(movement, press)),
    )  # fmt: skip


def finishing(movement: Movement, press: Movement) -> bool:
    """Whether one is a crossing move and follows the line of the other, a press, past the midline."""
    crosses = bool(movement.get("crossing")) and not press.get("crossing")
    return crosses and finishes(movement, press)


def _heavy_presses(means: Means) -> Iterator[Movement]:
    written = (means.table.movement(item.key) for _, item, _ in lines(means.week) if item.key)
    return (movement for movement in (*means.movements, *written) if means.is_heavy(movement))


def able(movement: Movement, state: State) -> int:
    """How many gaps of a state a movement can close by being done, too few sets left out."""
    return sum(one.rule.id != SHORT and can_close(one, movement, state) for one in state.found)


def can_close(one: Spoken, movement: Movement, state: State) -> bool:
    """Whether doing a movement somewhere in the week can close a gap, by what its rule asks for."""
    asked = _ASKED.get(one.rule.id)
    if asked is not None:
        return asked(movement, state)
    return one.fault.closed_by is not nothing_closes and one.fault.closed_by(movement)


def about(item: Item, state: State) -> int:
    """How many gaps are about a line itself, so that another movement there closes them."""
    return sum(
        one.rule.looks_at == "item" and item.place.line in {seen.line for seen in one.fault.seen}
        for one in state.found
    )


def shares(movement: Movement, groups: tuple[str, ...]) -> Shares:
    """The most of a set that each of some muscle groups can get from a movement."""
    return tuple(_share(movement, group) for group in groups)


def _share(movement: Movement, group: str) -> float:
    """The most of a set that a muscle group can get from a movement."""
    muscles = GROUPS[group]
    chest = group == "chest"
    if muscles & {*movement["prime"]} or (chest and movement.get("serves")):
        return WHOLE
    helps = chest and any(doses(part, movement) for part in PARTS)
    return HALF if helps or muscles & {*movement["assist"]} else 0.0


def covers(one: Shares, other: Shares) -> bool:
    """Whether one gives every group as much as the other."""
    return all(more >= less for more, less in zip(one, other, strict=True))


_ASKED: Final[dict[str, Callable[[Movement, State], bool]]] = {
    "push-without-pull": lambda movement, _: movement["pattern"] in PULLS,
    SHORT: lambda movement, state: any(_share(movement, group) for group in state.short),
    "crossing-work-only": lambda movement, _: bool(movement.get("serves")) and not movement["crossing"],
    "heavy-line-not-finished": lambda movement, state: any(
        finishing(movement, work.movement) or finishing(work.movement, movement)
        for work in state.coverage.works
    ),
    "no-work-across-the-midline": lambda movement, _: bool(movement.get("crossing")),
}
"""What may close a gap of a rule that does not say it whole of one movement; more is no harm."""
