"""What every reader of a plan shares: the findings, the habits of the file, its named doses, and the week."""

from collections.abc import Mapping
from types import MappingProxyType
from typing import NamedTuple

from setwright.reading.gathering import Gathering
from setwright.reading.habits import Habits, Member
from setwright.reading.nodes import Scalar


class Absent(NamedTuple):
    """Nothing in a week, on purpose; ``word`` as typed: none or stop."""

    word: Scalar


Value = Scalar | Absent | None
"""What holds in one week; None where nothing can be read."""


class House(NamedTuple):
    """What is known while a plan is read.

    ``tables``: values by week read already, by the identity of their node and the weeks they are for.

    ``schemes``: dose lines by their folded name, one a week. ``dose_may_wait``: a movement needs no dose here
    (in a timed circuit, in a warm-up). ``week``: the one that is read, of ``weeks``; ``there``: the weeks in
    which what is read now takes place. ``people``: the athletes that each name of the squad stands for,
    groups too; None when the squad could not be read.
    """

    found: Gathering
    habits: Habits
    tables: dict[tuple[int, tuple[int, ...]], tuple[Value, ...]]
    schemes: Mapping[str, tuple[Value, ...]] = MappingProxyType({})
    dose_may_wait: bool = False
    people: Mapping[str, tuple[str, ...]] | None = MappingProxyType({})
    week: int = 1
    weeks: int = 1
    there: tuple[int, ...] = (1,)

    def inside(self, member: Member) -> "House":
        """The same house for the members of a group."""
        habits = self.habits.model_copy(update={"member": member})
        return self._replace(habits=habits, dose_may_wait=member == "each")

    def warming_up(self) -> "House":
        """The same house for the lines of a warm-up."""
        return self._replace(dose_may_wait=True)

    def narrowed(self, weeks: tuple[int, ...]) -> "House | None":
        """The same house for what takes place only in some of the weeks; None when not in this one."""
        there = tuple(week for week in self.there if week in weeks)
        return self._replace(there=there) if self.week in there else None
