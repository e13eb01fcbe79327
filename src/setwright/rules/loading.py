"""The loads that a week asks for, with what this gym can put on for each of them."""

from collections.abc import Callable, Iterable, Iterator
from typing import TYPE_CHECKING, NamedTuple

from setwright.findings import Seen
from setwright.loads.lines import Line
from setwright.rules.lifts import names, works
from setwright.rules.rule import Case, typed

if TYPE_CHECKING:
    from setwright.loads.typed import Carried


class Theirs(NamedTuple):
    """Loads of one movement that were worked out for some athletes, each with the line that asks for it."""

    every: "tuple[tuple[Line, Carried], ...]"

    @property
    def first(self) -> Line:
        """The first line that asks for one."""
        return self.every[0][0]

    @property
    def loads(self) -> "list[Carried]":
        """The loads alone."""
        return [one for _, one in self.every]

    @property
    def name(self) -> str:
        """The movement, as typed in the first line."""
        return self.first.name

    @property
    def who(self) -> str:
        """Everyone whose load it is, by name."""
        return names(athlete for one in self.loads for athlete in one.athletes)

    @property
    def lines(self) -> tuple[Seen, ...]:
        """The lines, each once, as they are typed."""
        lines = {line.item.place: line for line, _ in self.every}
        return tuple(Seen(typed(line.item), line.line) for line in lines.values())

    def told(self, say: "Callable[[Carried], str]") -> tuple[Seen, ...]:
        """The loads of each athlete in words, each once: "Ann: 39 lb, 43.5 lb"."""
        said: dict[str, dict[str, None]] = {}
        for one in self.loads:
            said.setdefault(names(one.athletes), {})[say(one)] = None
        return tuple(Seen(f"{name}: {', '.join(loads)}") for name, loads in said.items())


def carried(case: Case) -> "Iterator[tuple[Line, tuple[Carried, ...]]]":
    """Every line with the loads that it asks for; nothing without a gym file.

    What is hung on the body is left out: it may be a vest or a chain, of which no gym file says.
    """
    week = case.coverage.week
    if week.gym is None:
        return
    from setwright.loads.typed import carried_by  # noqa: PLC0415 - only a plan with a gym needs it

    for line in works(case):
        loads = carried_by(line, week, case.means.table)
        yield line, tuple(one for one in loads if one.loadable.by.kind != "belt")


def alike(case: Case) -> "Iterator[tuple[Line, list[Carried]]]":
    """Every line with those of its loads that are the same for everybody on it."""
    return ((line, [one for one in loads if one.everybody]) for line, loads in carried(case))


def theirs(case: Case, wanted: "Callable[[Carried], bool]") -> Iterator[Theirs]:
    """The loads of athletes' own for which ``wanted`` holds, those of one movement together."""
    by_movement: dict[str, list[tuple[Line, Carried]]] = {}
    for line, loads in carried(case):
        found = [(line, one) for one in loads if not one.everybody and wanted(one)]
        by_movement.setdefault(line.movement["key"], []).extend(found)
    return (Theirs(tuple(every)) for every in by_movement.values() if every)


def listed(loads: "Iterable[Carried]") -> str:
    """The loads as they were asked for, each once, side by side."""
    return ", ".join(dict.fromkeys(one.words for one in loads))
