"""What every reader of a plan shares: the findings, the habits of the file, and its named doses."""

from collections.abc import Mapping
from types import MappingProxyType
from typing import NamedTuple

from setwright.reading.gathering import Gathering
from setwright.reading.habits import Habits, Member
from setwright.reading.nodes import Scalar


class House(NamedTuple):
    """``schemes``: dose lines by their folded name, None where one can't be read yet.

    ``dose_may_wait``: a movement needs no dose here (in a timed circuit, in a warm-up).
    ``people``: the athletes that each name of the squad stands for, groups too; None when the squad could
    not be read.
    """

    found: Gathering
    habits: Habits
    schemes: Mapping[str, Scalar | None] = MappingProxyType({})
    dose_may_wait: bool = False
    people: Mapping[str, tuple[str, ...]] | None = MappingProxyType({})

    def inside(self, member: Member) -> "House":
        """The same house for the members of a group."""
        habits = self.habits.model_copy(update={"member": member})
        return self._replace(habits=habits, dose_may_wait=member == "each")

    def warming_up(self) -> "House":
        """The same house for the lines of a warm-up."""
        return self._replace(dose_may_wait=True)
