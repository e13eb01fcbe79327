"""The changes worth trying: movements that can close what is open, one for many alike, at every spot."""

from collections.abc import Iterable, Iterator
from functools import cached_property
from itertools import combinations_with_replacement
from typing import Final

from setwright.coverage import PARTS, Movement
from setwright.model.plan import Item, Session, Week
from setwright.rules.cures import SETS
from setwright.rules.means import Means
from setwright.rules.rule import trusted_work
from setwright.swapping.abilities import (
    SHORT,
    Shares,
    able,
    about,
    can_close,
    covers,
    facts,
    finishing,
    shares,
)
from setwright.swapping.changes import Change, Spot, dosable, lines
from setwright.swapping.likeness import like
from setwright.swapping.state import State

FIXED: Final = 1
"""Priority of lines that are never replaced: the coach keeps them to the last."""

Alike = tuple[Movement, ...]
"""Movements that the rules can't tell apart, the one to propose first."""


class Candidates:
    """The changes of one week that can close a gap of it, or of a later stage of it.

    A movement that closes a gap by being done is added, paired with a press it finishes, or put in any
    line's place; one that is of the kind of a line that a gap is about is put in that line's place. A gap is
    closed by doing something: never by leaving work out. Of movements alike (``facts``) a session gets the
    first that it does not hold. Lines of timed groups, ladders, and lines of priority 1 stay as they are.
    """

    def __init__(self, before: State, means: Means) -> None:
        self.means = means
        self._before = before
        self._dosable = tuple(filter(dosable, means.movements))
        self._class = {movement["key"]: means.load_class(movement) for movement in self._dosable}
        self._shares: dict[tuple[str, ...], list[Shares]] = {}
        self._open = dict(_open_lines(before.week))

    @cached_property
    def _facts(self) -> dict[str, object]:
        return {movement["key"]: facts(movement, self.means) for movement in self._dosable}

    def listed(self, state: State, least: int = 1, later: int = 0) -> Iterator[Change]:
        """The changes that can close ``least`` gaps of a state, by what each gap's rule asks for.

        Too few sets count as closed where those of the change and of ``later`` more are enough a muscle.
        """
        held = [{item.key for item in session.items()} for session in state.week.sessions]
        most_about = self._most_about(state)
        for alike in self._alike(self._dosable, state):
            closes = able(alike[0], state)
            at_most = closes + any(shares(alike[0], tuple(state.short)))
            if not at_most or at_most + most_about < least:
                continue
            for change in self._by_doing(alike, held):
                here = closes + self._fills(change, state, later)
                if here and here + self._about(change, state) >= least:
                    yield change
        for change in self._in_place(state, held):
            closes = able(change.movement, state) + self._fills(change, state, later)
            if closes + self._about(change, state) >= least:
                yield change

    def most(self, state: State) -> int:
        """The most gaps of a state that one change can close."""
        closes = max((able(movement, state) for movement in self._dosable), default=0)
        return self._most_about(state) + closes + bool(state.short)

    def never(self, state: State, changes: int) -> int:
        """How many gaps of a state no number of ``changes`` closes, whatever movements they take."""
        groups, missing = tuple(state.short), tuple(state.short.values())
        return bool(groups and not self._within_reach(groups, missing, changes)) + sum(
            one.rule.looks_at != "item" and not any(can_close(one, each, state) for each in self._dosable)
            for one in state.found
            if one.rule.id != SHORT
        )

    def _by_doing(self, alike: Alike, held: list[set[str | None]]) -> Iterator[Change]:
        """One of some movements at every spot: paired with each press that it finishes, in place, added."""
        for spot, item in self._open.items():
            movement = _free(alike, held[spot.session])
            if movement and item.key and finishing(movement, self.means.table.movement(item.key)):
                yield Change("pair", spot, movement, self._class[movement["key"]])
            if movement and _replaceable(item):
                yield Change("replace", spot, movement, self._class[movement["key"]])
        for at, session in enumerate(self._before.week.sessions):
            if movement := _free(alike, held[at]):
                entry = _place_for(movement, session, self.means)
                yield Change("add", Spot(at, entry), movement, self._class[movement["key"]])

    def _in_place(self, state: State, held: list[set[str | None]]) -> Iterator[Change]:
        """What can stand for a line that gaps are about, whatever else it closes."""
        for spot, item in self._open.items():
            if not about(item, state) or not _replaceable(item):
                continue
            kin = like(self.means.table.movement(str(item.key)), self._dosable, self.means)
            for alike in self._alike(kin, state):
                if movement := _free(alike, held[spot.session]):
                    yield Change("replace", spot, movement, self._class[movement["key"]])

    def _most_about(self, state: State) -> int:
        return max((about(item, state) for item in self._open.values()), default=0)

    def _about(self, change: Change, state: State) -> int:
        return about(self._open[change.spot], state) if change.kind == "replace" else 0

    def _fills(self, change: Change, state: State, later: int) -> bool:
        """Whether a change trains a muscle that has too few sets, and ``later`` more can give the rest."""
        if not state.short:
            return False
        sets = SETS if change.kind == "add" else self._sets[change.spot]
        groups = tuple(state.short)
        given = shares(change.movement, groups)
        rest = tuple(
            missing - share * sets for missing, share in zip(state.short.values(), given, strict=True)
        )
        return any(given) and self._within_reach(groups, rest, later)

    def _within_reach(self, groups: tuple[str, ...], missing: tuple[float, ...], changes: int) -> bool:
        """Whether some movements have the sets that are missing, as many a change as any line has."""
        sets = max((SETS, *self._sets.values()))
        return any(
            all(need <= sets * sum(each) for need, *each in zip(missing, *some, strict=True))
            for some in combinations_with_replacement(self._best_shares(groups), changes)
        )

    def _best_shares(self, groups: tuple[str, ...]) -> list[Shares]:
        """What a set of any movement gives some muscle groups, without what another gives at least."""
        if groups not in self._shares:
            given = {shares(movement, groups) for movement in self._dosable}
            self._shares[groups] = [
                one for one in given if not any(other != one and covers(other, one) for other in given)
            ]
        return self._shares[groups]

    @cached_property
    def _sets(self) -> dict[Spot, float]:
        """The most sets that a new movement at a line can have: those of the line, or the usual ones."""
        works = {work.item.place: work.sets.low for work in self._before.coverage.works}
        return {spot: max(SETS, works.get(item.place, SETS)) for spot, item in self._open.items()}

    def _alike(self, some: Iterable[Movement], state: State) -> list[Alike]:
        """Movements sorted by facts; of each kind what a finding proposes, then what works most, first."""
        parts = [part for part in PARTS if any(part in one.fault.parts for one in state.found)]
        proposed = state.proposed
        alike: dict[object, list[Movement]] = {}
        for movement in some:
            alike.setdefault(self._facts[movement["key"]], []).append(movement)

        def later(movement: Movement) -> tuple[bool, float]:
            return movement["key"] not in proposed, -sum(trusted_work(part, movement) for part in parts)

        return [tuple(sorted(each, key=later)) for each in alike.values()]


def _free(alike: Alike, held: set[str | None]) -> Movement | None:
    return next((movement for movement in alike if movement["key"] not in held), None)


def _place_for(movement: Movement, session: Session, means: Means) -> int:
    """Where a movement is added: a lift for the chest before the first crossing move, else at the end."""
    if movement.get("serves") and not movement["crossing"]:
        for at, entry in enumerate(session.work):
            key = entry.key if isinstance(entry, Item) else None
            if key and means.table.movement(key).get("crossing"):
                return at
    return len(session.work)


def _open_lines(week: Week) -> Iterator[tuple[Spot, Item]]:
    """The lines that may change: those of no group that is timed, and of no ladder."""
    for spot, item, group in lines(week):
        if group is None or not (group.each_s or group.time_s or group.every_s or group.ladder):
            yield spot, item


def _replaceable(item: Item) -> bool:
    return item.priority != FIXED and item.dose is not None and item.key is not None
