"""What there is to train with: the library narrowed to this gym and to the limits of everyone who trains."""

from collections.abc import Iterable
from functools import cached_property
from typing import TYPE_CHECKING, Final

from setwright.coverage import Movement
from setwright.coverage.shapes import CLASSES
from setwright.library.table import Library, library
from setwright.model.people import Athlete
from setwright.model.plan import Session, Week
from setwright.model.room import Stock, kilograms
from setwright.places import Place
from setwright.rules.aims import training
from setwright.rules.limits import avoids, nears
from setwright.rules.stations import has

if TYPE_CHECKING:
    from setwright.floor.room import Room

HEAVY_DUMBBELL_KG: Final = 20.0
"""Heaviest dumbbell, a hand, from which a dumbbell press counts as heavy (choice, no source)."""


class Means:
    """What may be proposed for a week, in the order of the library."""

    def __init__(self, week: Week, table: Library) -> None:
        self.week = week
        self.table = table
        self._rooms: dict[Place, Room | None] = {}

    def room(self, session: Session) -> "Room | None":
        """The session with everyone who comes, in groups that no load has made; None: nobody is known."""
        from setwright.floor.room import NobodyKnown, room  # noqa: PLC0415 - only a plan with a gym needs it

        if session.place not in self._rooms:
            try:
                found = room(session, self.week, self.table, by_load=False)
            except NobodyKnown:
                found = None
            self._rooms[session.place] = found
        return self._rooms[session.place]

    @cached_property
    def movements(self) -> tuple[Movement, ...]:
        """Every movement that this gym has and that nears no limit of anyone who trains."""
        return self.within(training(self.week))

    def within(self, athletes: Iterable[Athlete], *, touching: bool = False) -> tuple[Movement, ...]:
        """What this gym has that nears no limit of some athletes and that none of them is to avoid.

        ``touching`` True: what is just at a limit too.
        """
        athletes = tuple(athletes)
        avoided = {self.table.find(name).key for athlete in athletes for name in avoids(athlete)}
        return tuple(
            movement
            for movement in self.in_the_gym
            if movement["key"] not in avoided
            and not any(nears(movement, athlete, touching=touching) for athlete in athletes)
        )

    @cached_property
    def in_the_gym(self) -> tuple[Movement, ...]:
        """Every movement of the library that this gym has what it takes for; without a gym file all of them.

        A coach's own movements are known by name and never proposed.
        """
        gym = self.week.gym
        every = self.table.movements().values()
        return tuple(m for m in every if not m.get("own") and (gym is None or has(gym, m)))

    def easier(self, movement: Movement) -> str | None:
        """The name of an easier movement that may be proposed, None when there is none."""
        at_hand = {other["key"]: str(other["name"]) for other in self.movements}
        return next((at_hand[key] for key in movement["easier"] if key in at_hand), None)

    @cached_property
    def hardest(self) -> str:
        """The hardest class that this gym gives a movement along a line of the chest."""
        classes = (self.load_class(m) for m in self.in_the_gym if m.get("serves"))
        return max(classes, key=CLASSES.index, default=CLASSES[-1])

    def load_class(self, movement: Movement) -> str:
        """The class of a movement here: with light dumbbells a dumbbell press is no more than moderate."""
        light = self._light_dumbbells and "dumbbell" in movement["implement"]
        return min(str(movement["class"]), "moderate" if light else "heavy", key=CLASSES.index)

    @cached_property
    def _light_dumbbells(self) -> bool:
        gym = self.week.gym
        return gym is not None and not any(
            _heaviest_kg(stock) >= HEAVY_DUMBBELL_KG for stock in gym.dumbbells
        )

    def is_heavy(self, movement: Movement) -> bool:
        """Whether the movement is of the hardest class of this gym or above it."""
        return CLASSES.index(self.load_class(movement)) >= CLASSES.index(self.hardest)


def means(week: Week, table: Library | None = None) -> Means:
    """What may be proposed for ``week``."""
    return Means(week, table or library())


def _heaviest_kg(stock: Stock) -> float:
    return float(kilograms(stock.masses()[-1], stock.unit))
