"""What one person does of a session: what is meant for them, what they do instead, and their own load."""

from collections.abc import Sequence
from typing import TypeVar

from setwright.model.people import Athlete
from setwright.model.plan import AthleteLoad, Group, Instead, Item, Week

One = TypeVar("One", AthleteLoad, Instead)
Known = frozenset[str] | None
"""A person's name with the groups they belong to; None for everybody."""


def names_of(week: Week, athlete: Athlete) -> frozenset[str]:
    """The names that mean the athlete wherever a plan names people: their own and those of their groups."""
    groups = week.squad.groups if week.squad else {}
    return frozenset({athlete.name, *(name for name, members in groups.items() if athlete.name in members)})


def meant(entry: Item | Group, athlete: Known) -> bool:
    """Whether a line or group is for this person; everything is for nobody in particular."""
    if athlete is None:
        return True
    wanted = not entry.for_ or bool(athlete & set(entry.for_))
    return wanted and not athlete & set(entry.not_for)


def lines_of(item: Item, athlete: Known) -> tuple[Item, ...]:
    """A line as this person does it: itself, or what they do instead."""
    instead = _theirs(item.instead, athlete)
    return instead.lines if instead else (item,)


def entry_of(entry: Item | Group, athlete: Known) -> tuple[Item | Group, ...]:
    """A line or group as this person does it, as entries of the work."""
    if isinstance(entry, Item):
        return lines_of(entry, athlete)
    items = tuple(line for item in entry.items for line in lines_of(item, athlete))
    return (entry.model_copy(update={"items": items}),)


def own_load(item: Item, athlete: Known) -> AthleteLoad | None:
    """The load that is written for this person alone or for a group of theirs."""
    return _theirs(item.loads, athlete)


def named(entries: Sequence[Item | Group]) -> frozenset[str]:
    """Everyone for whom some line is meant, not meant, or another one."""
    items = [item for entry in entries for item in (entry.items if isinstance(entry, Group) else (entry,))]
    told = [name for entry in (*entries, *items) for name in (*entry.for_, *entry.not_for)]
    told += [load.who for item in items for load in item.loads]
    for instead in (one for item in items for one in item.instead):
        told += [instead.who, *named(instead.lines)]
    return frozenset(told)


def _theirs(every: tuple[One, ...], athlete: Known) -> One | None:
    """The first that is for this person: athletes stand before groups."""
    return next((one for one in every if athlete and one.who in athlete), None)
