"""The difference list: what a coach would say has changed between two prints of the same plan."""

from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from itertools import pairwise
from typing import Any, Final, NamedTuple

from setwright.reading.frozen import Frozen
from setwright.sheets.phrases import say
from setwright.sheets.view import Line, SessionSheet


class KeptLine(Frozen):
    """One movement as it was printed."""

    number: str
    name: str
    dose: str
    load: str
    remarks: str


class KeptSheet(Frozen):
    """What one session held for these athletes; none are named on a sheet for everybody.

    ``session``: how it is called, unlike every other of the week. ``title``: None where it has no name.
    """

    session: str
    day: str | None = None
    title: str | None = None
    athletes: tuple[str, ...]
    lines: tuple[KeptLine, ...]


_COMPARED: Final = ("dose", "load", "remarks")


def kept(sheets: Sequence[SessionSheet]) -> tuple[KeptSheet, ...]:
    """What is kept of session sheets: each session once for all who do the same in it.

    A session is called by its day, by its title where a day has several or none, and by a number after that
    where they have the same.
    """
    alike = Counter[tuple[str | None, str, str | None]]()
    days: dict[str | None, set[tuple[str, int]]] = {}
    numbered = []
    for sheet in sheets:
        alike[sheet.day, sheet.title, sheet.athlete] += 1
        number = alike[sheet.day, sheet.title, sheet.athlete]
        days.setdefault(sheet.day, set()).add((sheet.title, number))
        numbered.append((sheet, number))
    shared: dict[tuple[str, str | None, str | None, tuple[KeptLine, ...]], list[str]] = {}
    for sheet, number in numbered:
        lines = tuple(_kept_line(line) for block in sheet.blocks for line in block.lines)
        title = None if sheet.title == sheet.day else sheet.title
        key = (_called(sheet, number, days[sheet.day]), sheet.day, title, lines)
        shared.setdefault(key, []).extend([sheet.athlete] if sheet.athlete else [])
    return tuple(
        KeptSheet(session=session, day=day, title=title, athletes=tuple(athletes), lines=lines)
        for (session, day, title, lines), athletes in shared.items()
    )


def _called(sheet: SessionSheet, number: int, of_the_day: set[tuple[str, int]]) -> str:
    if sheet.day and len(of_the_day) == 1:
        return sheet.day
    twins = sum(title == sheet.title for title, _ in of_the_day) > 1
    return say("changes.nth", session=sheet.title, number=number) if twins else sheet.title


def _kept_line(line: Line) -> KeptLine:
    load = f"{line.load.large} {line.load.small}".strip()
    return KeptLine(
        number=line.number, name=line.name, dose=line.dose, load=load, remarks=", ".join(line.remarks)
    )


def changes(before: Sequence[KeptSheet], now: Sequence[KeptSheet]) -> tuple[str, ...]:
    """Sentences, session by session: added, dropped, swapped, another dose, load or remark.

    What changed for some athletes only ends in their names.
    """
    old, new = _sessions(before), _sessions(now)
    pairs = _pairs(old, new)
    told = [one for session, was in pairs for one in _of_session(session, was)]
    kept_now, kept_before = ([pair[side].called for pair in pairs] for side in (0, 1))
    told += [say("changes.new_session", session=one.called) for one in new if one.called not in kept_now]
    told += [say("changes.no_session", session=one.called) for one in old if one.called not in kept_before]
    return tuple(told)


_Lines = dict[str | None, tuple[KeptLine, ...]]


class _Session(NamedTuple):
    """One session of a print: its lines by athlete; None stands for everybody."""

    called: str
    day: str | None
    title: str | None
    lines: _Lines


_SAME: Final[tuple[Callable[[_Session], Any], ...]] = (
    lambda one: (one.day, one.title, one.called),
    lambda one: one.title and (one.title,),
    lambda one: one.called,
    lambda one: one.day,
)
"""What tells that a session is the same as in the last print, the surest first."""


def _sessions(sheets: Sequence[KeptSheet]) -> list[_Session]:
    found: dict[str, _Session] = {}
    for sheet in sheets:
        session = found.setdefault(sheet.session, _Session(sheet.session, sheet.day, sheet.title, {}))
        session.lines.update(dict.fromkeys(sheet.athletes or (None,), sheet.lines))
    return list(found.values())


def _pairs(old: list[_Session], new: list[_Session]) -> list[tuple[_Session, _Session]]:
    """Each session of now with the one it was, in the order of now."""
    waiting, was = list(old), dict[str, _Session]()
    for same in _SAME:
        for session in new:
            if session.called not in was:
                known = same(session)
                found = next((one for one in waiting if known and same(one) == known), None)
                if found:
                    waiting.remove(found)
                    was[session.called] = found
    return [(session, was[session.called]) for session in new if session.called in was]


def _of_session(session: _Session, was: _Session) -> Iterator[str]:
    told = [*_renamed(session, was), *_of_people(session.lines, was.lines)]
    return (say("changes.in_session", session=session.called, change=change) for change in told)


def _renamed(session: _Session, was: _Session) -> Iterator[str]:
    """Another name, or another day."""
    if session.title and was.title and session.title != was.title:
        yield say("changes.renamed", now=session.title, was=was.title)
    elif session.title == was.title and session.day and was.day and session.day != was.day:
        yield say("changes.moved", now=session.day, was=was.day)


def _of_people(now: _Lines, before: _Lines) -> Iterator[str]:
    """What changed for those who have a sheet in both prints, who has a new one, and who has none now."""
    both = [athlete for athlete in now if athlete in before]
    whom: dict[str, list[str]] = {}
    for athlete in both:
        for told in _of_lines(before[athlete], now[athlete]):
            whom.setdefault(told, []).append(athlete or "")
    for told, athletes in whom.items():
        yield f"{told} ({', '.join(athletes)})" if len(athletes) < len(both) else told
    for athlete in (*now, *(one for one in before if one not in now)):
        if athlete is not None and athlete not in both:
            yield say("changes.new_sheet" if athlete in now else "changes.no_sheet", athlete=athlete)


def _of_lines(before: tuple[KeptLine, ...], now: tuple[KeptLine, ...]) -> Iterator[str]:
    """What changed in the lines of one session for one athlete; lines are told apart by their movement."""
    waiting, pairs, added = list(before), [], []
    for line in now:
        same = next((one for one in waiting if one.name == line.name), None)
        if same is None:
            added.append(line)
        else:
            waiting.remove(same)
            pairs.append((same, line))
    for old, new in pairs:
        yield from _reworded(old, new)
    for line in added:
        left = next((one for one in waiting if one.number == line.number), None)
        if left:
            waiting.remove(left)
        said = _said(line)
        yield say("changes.swapped", line=said, name=left.name) if left else say("changes.added", line=said)
    for line in waiting:
        yield say("changes.dropped", line=f"{line.number} {line.name}")
    places = [before.index(old) for old, _ in pairs]
    if any(later < sooner for sooner, later in pairwise(places)):
        yield say("changes.reordered")


def _reworded(old: KeptLine, new: KeptLine) -> Iterator[str]:
    for field in _COMPARED:
        was, now = getattr(old, field), getattr(new, field)
        if was != now:
            nothing = say(f"changes.no_{field}")
            line = f"{new.number} {new.name}"
            yield say("changes.reworded", line=line, now=now or nothing, was=was or nothing)


def _said(line: KeptLine) -> str:
    return ", ".join(part for part in (f"{line.number} {line.name}", line.dose, line.load) if part)
