"""New loads, sets and repetitions written into the lines of a plan; all others stay as typed."""

import re
from collections.abc import Callable, Iterator, Mapping, Sequence
from typing import Any, Final, NamedTuple

from setwright.model.next import Add
from setwright.model.people import Athlete
from setwright.model.plan import AthleteLoad, Item, Week
from setwright.reading.done_typed import load_typed
from setwright.reading.dose import Load, SetGroup, Span
from setwright.reading.words import number
from setwright.records.form import training
from setwright.records.planned import Planned, loads_of, planned

_HEAD: Final = re.compile(
    r"(?P<sets>\d+)(?P<x>\s*[x×*]\s*)(?P<low>\d+)(?:(?P<to>\s*[-–]\s*)(?P<high>\d+))?", re.IGNORECASE
)
_VALUE: Final = re.compile(r"(?P<key>\s*[^:]+:\s*)(?P<value>[^#]*?)(?P<remark>\s+#\s.*)?$")
_LEAD: Final = re.compile(r"(?:,\s*|\s+)(?:at|@|with)\s+[^,#]+?(?=\s+(?:at|@|with)\s|\s*(?:,|#|$))")
_LOAD_KEY: Final = re.compile(r"\s*load\s*:\s*\S", re.IGNORECASE)

Read = Callable[[str], Week | None]
Who = str | None


class Wanted(NamedTuple):
    """What a line is to say next week. ``loads``: of everybody who does it, by name; None as a name: of all.

    ``more``: repetitions or sets, for everybody.
    """

    item: Item
    loads: Mapping[Who, Load]
    more: Add | None = None


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
    rows = text.splitlines()
    expected = _Expected(week)
    for one in sorted(wanted, key=lambda one: one.item.place, reverse=True):
        for candidate in _candidates(rows, one, week.squad.groups if week.squad else {}):
            if expected.is_met(read("\n".join(candidate) + "\n"), one):
                rows = candidate
                expected.take(one)
                break
        else:
            left.append(one)
    return Rewritten("\n".join(rows) + "\n", tuple(left))


class _Expected:
    """What every line of a week says to everybody, with the changes made so far."""

    def __init__(self, week: Week) -> None:
        self._lines = [(at.line.place, who, _said(at, week, athlete)) for at, who, athlete in _lines(week)]

    def is_met(self, new: Week | None, one: Wanted) -> bool:
        """Whether a week says all that, and what is wanted."""
        if new is None:
            return False
        return [_said(at, new, athlete) for at, _, athlete in _lines(new)] == self._with(one)

    def take(self, one: Wanted) -> None:
        """What is wanted is expected from now on."""
        said = self._with(one)
        self._lines = [(place, who, new) for (place, who, _), new in zip(self._lines, said, strict=True)]

    def _with(self, one: Wanted) -> list[Any]:
        return [
            _changed(said, who, one) if place == one.item.place else said for place, who, said in self._lines
        ]


def _lines(week: Week) -> Iterator[tuple[Planned, Who, Athlete | None]]:
    for session in (*week.sessions, *week.held_back):
        for athlete in training(week):
            for at in planned(week, session, athlete):
                yield at, athlete.name if athlete else None, athlete


def _said(at: Planned, week: Week, athlete: Athlete | None) -> tuple[Any, ...]:
    groups = at.line.dose.groups if at.line.dose else ()
    return at.line.name, tuple(map(_bare, groups)), loads_of(at, week, athlete)


def _bare(group: SetGroup) -> SetGroup:
    works = tuple(work.model_copy(update={"load": None}) for work in group.works)
    return group.model_copy(
        update={"works": works, "last": group.last and group.last.model_copy(update={"load": None})}
    )


def _changed(said: tuple[Any, ...], who: Who, one: Wanted) -> tuple[Any, ...]:
    name, groups, loads = said
    new = one.loads.get(who)
    return name, tuple(_more(group, one.more) for group in groups), loads if new is None else (new,)


def _more(group: SetGroup, more: Add | None) -> SetGroup:
    if more is None:
        return group
    if more.unit == "sets":
        return group.model_copy(update={"sets": _plus(group.sets, more)})
    works = tuple(
        work.model_copy(
            update={"amount": work.amount.model_copy(update={"span": _plus(work.amount.span, more)})}
        )
        for work in group.works
    )
    return group.model_copy(update={"works": works})


def _plus(span: Span, more: Add) -> Span:
    high = None if span.high is None else span.high + more.amount
    return Span(low=max(span.low + more.amount, 1), high=high)


def _candidates(rows: list[str], one: Wanted, groups: Mapping[str, tuple[str, ...]]) -> Iterator[list[str]]:
    """Ways to write what is wanted, the plainest first."""
    if one.more is not None:
        yield from _with_more(rows, one.item, one.more)
    elif one.item.loads:
        yield _by_name(rows, one.item.loads, _with_groups(one, groups))
    else:
        common = set(one.loads.values())
        if len(common) == 1:
            (load,) = common
            yield from _in_place(rows, one.item, load)
            yield _beneath(rows, one.item, [f"load: {load_typed(load)}"])
        names = [f"  {who}: {load_typed(load)}" for who, load in one.loads.items() if who is not None]
        for bare in _without_load(rows, one.item):
            yield _beneath(bare, one.item, ["load:", *names])


def _with_more(rows: list[str], item: Item, more: Add) -> Iterator[list[str]]:
    step = int(more.amount)
    for at, start in _doses(item):
        if match := _HEAD.search(rows[at], start):
            sets, low, high = int(match["sets"]), int(match["low"]), match["high"]
            sets, low = (sets + step, low) if more.unit == "sets" else (sets, low + step)
            to = "" if high is None else f"{match['to']}{int(high) + (step if more.unit == 'reps' else 0)}"
            head = f"{max(sets, 1)}{match['x']}{max(low, 1)}{to}"
            yield _with_row(rows, at, rows[at][: match.start()] + head + rows[at][match.end() :])


def _in_place(rows: list[str], item: Item, load: Load) -> Iterator[list[str]]:
    """The number of the load that is written, changed where it stands."""
    old = _written(item)
    value, new = (_number(old), _number(load)) if old and old.kind == load.kind else (None, None)
    if value is None or new is None:
        return
    typed = number(value).replace(".", "[.,]")
    figure = re.compile(rf"(?<![\d.,:-]){typed}(?![\d.,:%-]|\s*x)")
    for at, start in [*_doses(item), *_load_rows(rows, item)]:
        for match in reversed(list(figure.finditer(rows[at], start))):
            yield _with_row(rows, at, rows[at][: match.start()] + number(new) + rows[at][match.end() :])


def _number(load: Load) -> float | None:
    return load.plus if load.kind == "bodyweight" else load.low


def _written(item: Item) -> Load | None:
    groups = item.dose.groups if item.dose else ()
    return next((work.load for group in groups for work in group.works if work.load), None)


def _without_load(rows: list[str], item: Item) -> Iterator[list[str]]:
    """The rows without the load that is written for everybody, in the line or underneath."""
    if _written(item) is None:
        yield rows
        return
    for at, start in _doses(item):
        typed = rows[at]
        for match in _LEAD.finditer(typed[start:]):
            before, behind = typed[: start + match.start()], typed[start + match.end() :]
            yield _with_row(rows, at, before + behind)
    for at, _ in _load_rows(rows, item):
        yield _with_row(rows, at, "")


def _with_groups(one: Wanted, groups: Mapping[str, tuple[str, ...]]) -> dict[Who, Load]:
    """What is wanted with the name of a group in place of its members, where it has one load for them all."""
    loads = dict(one.loads)
    for group in (load.who for load in one.item.loads if load.who in groups):
        members = groups[group]
        same = {one.loads.get(member) for member in members}
        if len(same) == 1 and None not in same:
            loads = {who: load for who, load in loads.items() if who not in members}
            loads[group] = one.loads[members[0]]
    return loads


def _by_name(rows: list[str], written: tuple[AthleteLoad, ...], loads: Mapping[Who, Load]) -> list[str]:
    """Loads under names: each own one is changed, or a new one put above those of the groups."""
    new = list(rows)
    own = {load.who: load.place.line - 1 for load in written}
    first = min(own.values())
    indent = rows[first][: len(rows[first]) - len(rows[first].lstrip())]
    added = [f"{indent}{who}: {load_typed(load)}" for who, load in loads.items() if who not in own]
    for who, at in own.items():
        if who in loads and (match := _VALUE.match(new[at])):
            new[at] = f"{match['key']}{load_typed(loads[who])}{match['remark'] or ''}"
    return [*new[:first], *added, *new[first:]]


def _beneath(rows: list[str], item: Item, lines: list[str]) -> list[str]:
    """The rows with lines in line with the movement, under its first line."""
    at = item.place.line - 1
    head = rows[at]
    indent = " " * (len(head) - len(head.lstrip()) + 2)
    return [*rows[: at + 1], *(f"{indent}{line}" for line in lines), *rows[at + 1 :]]


def _doses(item: Item) -> Iterator[tuple[int, int]]:
    """Where the dose is typed: its row, and the column it starts at."""
    if item.dose is not None:
        yield item.dose.place.line - 1, item.dose.place.column - 1


def _load_rows(rows: list[str], item: Item) -> Iterator[tuple[int, int]]:
    """Rows under a line that hold a load for everybody."""
    head = rows[item.place.line - 1]
    depth = len(head) - len(head.lstrip())
    for at in range(item.place.line, len(rows)):
        row = rows[at]
        if row.strip() and len(row) - len(row.lstrip()) <= depth:
            return
        if _LOAD_KEY.match(row):
            yield at, row.index(":") + 1


def _with_row(rows: list[str], at: int, row: str) -> list[str]:
    return [*rows[:at], *([row.rstrip()] if row.strip() else []), *rows[at + 1 :]]
