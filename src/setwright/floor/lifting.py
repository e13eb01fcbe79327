"""What everybody lifts in a session, as far as it comes to kilograms, and how it is put on here."""

from collections.abc import Iterable, Iterator
from typing import TYPE_CHECKING, NamedTuple

from setwright.library.table import Library
from setwright.loads.asked_for import Kilograms, load_asked_for
from setwright.loads.lines import Line, lines, work_loads
from setwright.model.people import Athlete
from setwright.model.plan import Session, Week
from setwright.model.room import exactly

if TYPE_CHECKING:
    from setwright.loads.put import Put


class Lift(NamedTuple):
    """The heaviest work set of somebody in a line of a block. ``kg``: as asked for, in each hand for two.

    ``put``: how it is put on in this gym; None without a gym file, or where that says no mass.
    """

    person: str
    block: int
    kg: float
    put: "Put | None"


def lifts(session: Session, week: Week, table: Library, names: Iterable[str]) -> Iterator[Lift]:
    """What each of the squad's athletes named lifts, line by line; lines without kilograms are left out."""
    here = frozenset(names)
    for number, entry in enumerate(session.work, 1):
        for line in lines(session.model_copy(update={"work": (entry,)}), 0, week, table):
            for athlete in line.athletes:
                if athlete.name in here:
                    yield from _of(athlete, number, line, week, table)


def _of(athlete: Athlete, block: int, line: Line, week: Week, table: Library) -> Iterator[Lift]:
    asked = (load_asked_for(load, line.item, athlete, week, table) for load in work_loads(line))
    most = max((one.pick for one in asked if isinstance(one, Kilograms)), default=0.0)
    if most > 0:
        yield Lift(athlete.name, block, most, _put(most, line, week))


def _put(kg: float, line: Line, week: Week) -> "Put | None":
    from setwright.loads.loadable import loadable  # noqa: PLC0415 - a check asks for no load here
    from setwright.loads.means_of import means_of  # noqa: PLC0415 - the same
    from setwright.loads.typed import TYPED_DECIMALS  # noqa: PLC0415 - the same

    if week.gym is None:
        return None
    by = means_of(line.movement, week.gym)
    if by.kind in ("bodyweight", "band", "other"):
        return None
    rounding = week.squad.rounding if week.squad else "nearest"
    return loadable(by, week.gym, exactly(round(kg, TYPED_DECIMALS)), rounding).put
