"""New loads, sets and repetitions written into the lines of a plan; all others stay as typed."""

from collections.abc import Callable, Mapping, Sequence
from typing import Any, NamedTuple

from setwright.model.plan import Item, Week
from setwright.reading.dose import Load
from setwright.records.gains import Gain, sets_of, with_gain
from setwright.records.line_keys import Told, lines_of
from setwright.records.planned import loads_of
from setwright.records.ways import Who, Written, ways

Read = Callable[[str], Week | None]


class Wanted(NamedTuple):
    """What a line of a session is to say of everybody who does it, by name; None as a name: of all."""

    item: Item
    session: str | None
    loads: Mapping[Who, Load]
    gains: Mapping[Who, Gain]


class Rewritten(NamedTuple):
    """The new text, and the lines that could not be changed by it."""

    text: str
    left: tuple[Wanted, ...]


def rewritten(text: str, week: Week, wanted: Sequence[Wanted], read: Read) -> Rewritten:
    """The text of a plan in which each line says what is wanted.

    ``read`` gives the week of a text, None where it can't be read in full. A change counts only when the new
    text is read back as the old plan with just that change in it.
    """
    left: list[Wanted] = []
    expected = _Expected(week)
    groups = week.squad.groups if week.squad else {}
    for one in sorted(wanted, key=lambda one: one.item.place, reverse=True):
        written = Written(one.item, expected.loads(one), one.loads, one.gains, groups)
        for candidate in ways(text, written):
            if expected.is_met(read(candidate), one):
                text = candidate
                expected.take(one)
                break
        else:
            left.append(one)
    return Rewritten(text, tuple(left))


class _Expected:
    """What every line of a week says to everybody, with the changes made so far."""

    def __init__(self, week: Week) -> None:
        self._lines = [(told.planned.line.place, told.key.who, _said(told, week)) for told in lines_of(week)]

    def loads(self, one: Wanted) -> dict[Who, tuple[Load, ...]]:
        """The loads that a line has now for everybody who does it."""
        return {who: said[2] for place, who, said in self._lines if place == one.item.place}

    def is_met(self, new: Week | None, one: Wanted) -> bool:
        """Whether a week says all that, and what is wanted."""
        if new is None:
            return False
        return [_said(told, new) for told in lines_of(new)] == self._with(one)

    def take(self, one: Wanted) -> None:
        """What is wanted is expected from now on."""
        said = self._with(one)
        self._lines = [(place, who, new) for (place, who, _), new in zip(self._lines, said, strict=True)]

    def _with(self, one: Wanted) -> list[Any]:
        return [
            _changed(said, who, one) if place == one.item.place else said for place, who, said in self._lines
        ]


def _said(told: Told, week: Week) -> tuple[Any, ...]:
    return told.planned.line.name, sets_of(told.planned), loads_of(told.planned, week, told.athlete)


def _changed(said: tuple[Any, ...], who: Who, one: Wanted) -> tuple[Any, ...]:
    name, groups, loads = said
    gain, new = one.gains.get(who, Gain()), one.loads.get(who)
    return name, tuple(with_gain(group, gain) for group in groups), loads if new is None else (new,)
