"""The lines of a session: a movement with its dose, and groups of movements done in turn."""

from typing import Literal

from setwright.model.next import NextTime
from setwright.model.own import Word
from setwright.places import Place
from setwright.reading.dose import Amount, Dose, Load, Rest, Sides, Tempo, WarmUp
from setwright.reading.frozen import Frozen
from setwright.reading.habits import Member


class Allowed(Frozen):
    """A rule that is silenced here, with the coach's reason."""

    rule: str
    reason: str
    place: Place


class AthleteLoad(Frozen):
    """What an athlete or group lifts in a line: one load for all sets or one a set.

    Empty: no load, on purpose.
    """

    who: str
    place: Place
    loads: tuple[Load, ...] = ()


class Item(Frozen):
    """One movement with its dose. ``name`` as typed; ``key`` is the library's, from ``library.resolve``.

    ``loads`` and ``instead``: those of athletes before those of groups, each person in one of them at most
    unless a line names them. ``none``: what is none this week on purpose, by field.
    """

    name: str
    place: Place
    key: str | None = None
    dose: Dose | None = None
    rest: Rest | None = None
    tempo: Tempo | None = None
    sides: Sides | None = None
    load: Load | None = None
    loads: tuple[AthleteLoad, ...] = ()
    none: tuple[str, ...] = ()
    warm_up: WarmUp | None = None
    next: NextTime | None = None
    priority: int = 2
    for_: tuple[str, ...] = ()
    not_for: tuple[str, ...] = ()
    instead: tuple["Instead", ...] = ()
    kit: tuple[str, ...] = ()
    stop: str | None = None
    allow: tuple[Allowed, ...] = ()
    note: str | None = None
    private_note: str | None = None

    @property
    def warm_up_sets(self) -> WarmUp | None:
        """The warm-up sets of the line, typed in it or under it; None where none are written."""
        return self.dose.warm_up if self.dose and self.dose.warm_up else self.warm_up

    @property
    def line_loads(self) -> tuple[Load, ...]:
        """Every load that the line says of its work sets; the item's own where it has no dose."""
        if self.dose is None:
            return () if self.load is None else (self.load,)
        works = (work for group in self.dose.groups for work in group.every_work)
        return tuple(work.load for work in works if work.load is not None)


class Instead(Frozen):
    """What an athlete or group does in place of a line.

    ``movement``: another one with the dose of the line; ``lines`` has it then once ``library.resolve`` has
    looked it up. Without it ``lines`` is what was typed.
    """

    who: str
    place: Place
    movement: Word | None = None
    lines: tuple[Item, ...] = ()


class Group(Frozen):
    """Movements done in turn: superset, circuit or complex. Times in seconds; ``none`` as in an item."""

    kind: Literal["superset", "circuit", "complex"]
    place: Place
    items: tuple[Item, ...]
    rounds: int | None = None
    rest: Rest | None = None
    between_moves: Rest | None = None
    each_s: float | None = None
    time_s: float | None = None
    cap: Amount | None = None
    every_s: float | None = None
    ladder: tuple[int, ...] = ()
    load: Load | None = None
    none: tuple[str, ...] = ()
    next: NextTime | None = None
    priority: int = 2
    for_: tuple[str, ...] = ()
    not_for: tuple[str, ...] = ()
    stop: str | None = None
    allow: tuple[Allowed, ...] = ()
    note: str | None = None
    private_note: str | None = None

    @property
    def member(self) -> Member:
        """What a line of the group may say."""
        if self.each_s is not None:
            return "each"
        if self.ladder:
            return "ladder"
        return "alone" if self.rounds is None and self.time_s is None else "rounds"
