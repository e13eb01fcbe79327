"""The timetables on the sheets: those of ``setwright floor``, worked out once for all sheets of a week."""

from collections.abc import Mapping
from contextlib import suppress
from types import MappingProxyType
from typing import Final

from setwright.floor.room import Floor
from setwright.floor.today import Change, NotHere, today
from setwright.library.table import Library
from setwright.model.plan import Week
from setwright.places import Place

Floors = Mapping[Place, Floor]
"""The timetable of each session that has one, by the place of the session."""

Changes = Mapping[Place, Change]
"""What is otherwise on the day, by the place of the session."""

AS_PLANNED: Final[Changes] = MappingProxyType({})


def floors_of(week: Week, table: Library, changes: Changes = AS_PLANNED) -> Floors:
    """The timetables of a week; none where the plan names no gym, or nobody says who comes."""
    found: dict[Place, Floor] = {}
    for session in week.sessions if week.gym else ():
        with suppress(NotHere):
            found[session.place] = today(session, week, table, changes.get(session.place, Change())).floor
    return found
