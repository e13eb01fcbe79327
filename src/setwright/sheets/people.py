"""Whose sheet it is: who trains, what means them in a plan, and what they are called on shared paper."""

from collections import Counter
from collections.abc import Callable, Sequence

from setwright.model.people import Athlete
from setwright.model.plan import Week
from setwright.model.theirs import Known, names_of
from setwright.sheets.words import letter


def who_trains(week: Week) -> tuple[Athlete | None, ...]:
    """The athletes who take part, in the order of the squad; one None for a plan without any."""
    squad = week.squad.athletes if week.squad else ()
    training = tuple(athlete for athlete in squad if athlete.participation != "out")
    return training or (None,)


def known_as(week: Week, athlete: Athlete | None) -> Known:
    """An athlete's name and the groups they are in; None for a sheet that is for everybody."""
    return None if athlete is None else names_of(week, athlete)


def full_names(names: Sequence[str]) -> tuple[str, ...]:
    """Names as typed, those of one name told apart by a letter.

    >>> full_names(["Isla Marrack", "Tam", "Isla Marrack"])
    ('Isla Marrack (a)', 'Tam', 'Isla Marrack (b)')
    """
    count, seen = Counter(map(str.casefold, names)), Counter[str]()
    told = []
    for name in names:
        alike = name.casefold()
        told.append(f"{name} ({letter(seen[alike])})" if count[alike] > 1 else name)
        seen[alike] += 1
    return tuple(told)


def first_names(names: Sequence[str]) -> tuple[str, ...]:
    """First names; who shares one gets the initial of the last name too, or else a letter.

    >>> first_names(["Isla Marrack", "Isla Rae", "Tam Rae", "Tam"])
    ('Isla M.', 'Isla R.', 'Tam R.', 'Tam')
    """
    return full_names(_told_apart(names, _first, _with_initial))


def _told_apart(names: Sequence[str], short: Callable[[str], str], longer: Callable[[str], str]) -> list[str]:
    count = Counter(short(name).casefold() for name in names)
    return [longer(name) if count[short(name).casefold()] > 1 else short(name) for name in names]


def _first(name: str) -> str:
    return _words(name)[0]


def _with_initial(name: str) -> str:
    first, *more = _words(name)
    return f"{first} {more[-1][0]}." if more else first


def _words(name: str) -> list[str]:
    """The words of a name that hold a letter, where one does."""
    every = name.split()
    return [word for word in every if any(map(str.isalpha, word))] or every
