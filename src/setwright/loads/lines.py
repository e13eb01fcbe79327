"""The lines of a session with a movement of the library, as they are done and by whom."""

from collections.abc import Iterator
from typing import NamedTuple

from setwright.library.table import Library
from setwright.loads.bodyweight import Movement
from setwright.model.people import Athlete
from setwright.model.plan import Group, Item, Session, Week
from setwright.model.theirs import lines_done


class Line(NamedTuple):
    """A line of work as the ``athletes`` do it; ``day`` is the place of its session in the week."""

    day: int
    session: Session
    item: Item
    group: Group | None
    movement: Movement
    athletes: tuple[Athlete, ...]

    @property
    def name(self) -> str:
        """The movement's name as the coach typed it."""
        return self.item.name

    @property
    def line(self) -> int:
        """The line of the plan it stands on."""
        return self.item.place.line


def lines(session: Session, day: int, week: Week, table: Library) -> Iterator[Line]:
    """Every line of a session as written, then as those do it who have a load or a movement of their own.

    Lines whose movement nobody knows are left out.
    """
    for item, group, athletes in lines_done(session, week):
        if item.key is not None:
            yield Line(day, session, item, group, table.movement(item.key), athletes)
