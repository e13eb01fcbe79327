"""The difference list: what a coach would say has changed between two prints of the same plan."""

from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import pairwise
from typing import Final

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
    """What one session held for these athletes; none are named on a sheet for everybody."""

    session: str
    athletes: tuple[str, ...]
    lines: tuple[KeptLine, ...]


_COMPARED: Final = ("dose", "load", "remarks")


def kept(sheets: Sequence[SessionSheet]) -> tuple[KeptSheet, ...]:
    """What is kept of session sheets: each session once for all who do the same in it.

    A session is called by its day, or by its title where a day has several or none.
    """
    days = Counter(day for day, _ in {(sheet.day, sheet.title) for sheet in sheets})
    shared: dict[tuple[str, tuple[KeptLine, ...]], list[str]] = {}
    for sheet in sheets:
        lines = tuple(_kept_line(line) for block in sheet.blocks for line in block.lines)
        session = sheet.day if sheet.day and days[sheet.day] == 1 else sheet.title
        shared.setdefault((session, lines), []).extend([sheet.athlete] if sheet.athlete else [])
    return tuple(
        KeptSheet(session=session, athletes=tuple(athletes), lines=lines)
        for (session, lines), athletes in shared.items()
    )


def _kept_line(line: Line) -> KeptLine:
    load = f"{line.load.large} {line.load.small}".strip()
    return KeptLine(
        number=line.number, name=line.name, dose=line.dose, load=load, remarks=", ".join(line.remarks)
    )


def changes(before: Sequence[KeptSheet], now: Sequence[KeptSheet]) -> tuple[str, ...]:
    """Sentences, session by session: added, dropped, swapped, another dose, load or remark.

    What changed for some athletes only ends in their names.
    """
    old, new = _by_session(before), _by_session(now)
    told = [one for session in new if session in old for one in _of_session(session, old, new)]
    told += [say("changes.new_session", session=session) for session in new if session not in old]
    told += [say("changes.no_session", session=session) for session in old if session not in new]
    return tuple(told)


_Session = dict[str | None, tuple[KeptLine, ...]]


def _by_session(sheets: Sequence[KeptSheet]) -> dict[str, _Session]:
    """The lines of each session by athlete; None stands for everybody."""
    found: dict[str, _Session] = {}
    for sheet in sheets:
        for athlete in sheet.athletes or (None,):
            found.setdefault(sheet.session, {})[athlete] = sheet.lines
    return found


def _of_session(session: str, before: dict[str, _Session], now: dict[str, _Session]) -> Iterator[str]:
    old, new = before[session], now[session]
    both = [athlete for athlete in new if athlete in old]
    whom: dict[str, list[str]] = {}
    for athlete in both:
        for told in _of_lines(old[athlete], new[athlete]):
            whom.setdefault(told, []).append(athlete or "")
    for told, athletes in whom.items():
        whose = f" ({', '.join(athletes)})" if len(athletes) < len(both) else ""
        yield say("changes.in_session", session=session, change=f"{told}{whose}")
    for athlete in (*new, *(one for one in old if one not in new)):
        if athlete is not None and athlete not in both:
            change = say("changes.new_sheet" if athlete in new else "changes.no_sheet", athlete=athlete)
            yield say("changes.in_session", session=session, change=change)


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
