"""What one person does of a session: what is meant for them, what they do instead, and their own load."""

from collections.abc import Iterator, Sequence
from typing import NamedTuple, TypeVar

from setwright.model.people import Athlete
from setwright.model.plan import AthleteLoad, Group, Instead, Item, Session, Week
from setwright.reading.merging import dose_of_own

One = TypeVar("One", AthleteLoad, Instead)
Known = frozenset[str] | None
"""A person's name with the groups they belong to; None for everybody."""


class Done(NamedTuple):
    """A line of work, in its group or in none, as the ``athletes`` do it: with a load of their own in it."""

    item: Item
    group: Group | None
    athletes: tuple[Athlete, ...]


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
    """A line or group as this person does it, as entries of the work; a group without lines is none."""
    if isinstance(entry, Item):
        return lines_of(entry, athlete)
    items = tuple(line for item in entry.items if meant(item, athlete) for line in lines_of(item, athlete))
    return (entry.model_copy(update={"items": items}),) if items else ()


def own_load(item: Item, athlete: Known) -> AthleteLoad | None:
    """The load that is written for this person alone or for a group of theirs."""
    return _theirs(item.loads, athlete)


def with_own_load(item: Item, athlete: Known) -> Item:
    """The line with the load of this person's own, or of a group of theirs, in the place of what it says."""
    own = own_load(item, athlete)
    if own is None:
        return item
    dose = item.dose and dose_of_own(item.dose, own.loads)
    return item.model_copy(update={"dose": dose, "load": next(iter(own.loads), None)})


def lines_done(session: Session, week: Week) -> Iterator[Done]:
    """Every line of a session's work as it is written, then as those do it who have something of their own.

    Somebody's own is a load or what they do instead. Without a squad the athletes are nobody's.
    """
    for item, group in session.lines():
        done: dict[tuple[int, str | None], Done] = {(id(item), None): Done(item, group, ())}
        for athlete in week.squad.training if week.squad else ():
            called = names_of(week, athlete)
            if not (meant(item, called) and (group is None or meant(group, called))):
                continue
            for line in lines_of(item, called):
                own = own_load(line, called)
                key = (id(line), own.who if own else None)
                so_far = done.get(key) or Done(with_own_load(line, called), _group_of(own, group), ())
                done[key] = so_far._replace(athletes=(*so_far.athletes, athlete))
        yield from done.values()


def named(entries: Sequence[Item | Group]) -> frozenset[str]:
    """Everyone for whom some line is meant, not meant, or another one."""
    items = [item for entry in entries for item in (entry.items if isinstance(entry, Group) else (entry,))]
    told = [name for entry in (*entries, *items) for name in (*entry.for_, *entry.not_for)]
    told += [load.who for item in items for load in item.loads]
    for instead in (one for item in items for one in item.instead):
        told += [instead.who, *named(instead.lines)]
    return frozenset(told)


def _group_of(own: AthleteLoad | None, group: Group | None) -> Group | None:
    """The group of a line; who has a load of their own has none of the group's."""
    return group and group.model_copy(update={"load": None}) if own else group


def _theirs(every: tuple[One, ...], athlete: Known) -> One | None:
    """The first that is for this person: athletes stand before groups."""
    return next((one for one in every if athlete and one.who in athlete), None)
