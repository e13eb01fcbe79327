"""The sessions of several weeks said back: what is the same once, what changes week by week."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from typing import NamedTuple

from setwright.library.table import Library
from setwright.model.plan import Session, Week
from setwright.places import Place
from setwright.reading.habits import Habits
from setwright.reading.weeks import say_weeks
from setwright.report.phrases import joined
from setwright.report.read_session import (
    WARM_UP,
    Row,
    first_lines,
    last_lines,
    letter,
    session_head,
    warm_up_rows,
    work_rows,
)

NOT_DONE = "not done, on purpose"
"""Only `none`, `stop` and `only in` take a line out of a week."""


class Block(NamedTuple):
    """A head and the lines under it."""

    head: str
    lines: Iterable[str]


def session_blocks(weeks: Sequence[Week], habits: Habits, table: Library) -> Iterator[Block]:
    """Each session once, in the order of the plan, over all weeks in which it takes place."""
    done: dict[Place, dict[int, list[Session]]] = {}
    for place, week, session in _in_plan_order(weeks):
        done.setdefault(place, {}).setdefault(week, []).append(session)
    for by_week in done.values():
        heads = {week: session_head(same[0], _days(same)) for week, same in by_week.items()}
        yield Block(_head(heads, len(weeks)), _lines({w: s[0] for w, s in by_week.items()}, habits, table))


def _in_plan_order(weeks: Sequence[Week]) -> list[tuple[Place, int, Session]]:
    found = [(session.place, week.number, session) for week in weeks for session in week.sessions]
    return sorted(found, key=lambda one: one[:2])


def _days(sessions: Sequence[Session]) -> str | None:
    return joined([session.day for session in sessions if session.day], "and") or None


def _head(heads: Mapping[int, str], weeks: int) -> str:
    alike = _alike(heads)
    if len(alike) == 1 and len(heads) == weeks:
        return next(iter(alike))
    return "; ".join(f"{head} ({say_weeks(at)})" for head, at in alike.items())


def _lines(sessions: Mapping[int, Session], habits: Habits, table: Library) -> Iterator[str]:
    first = next(iter(sessions.values()))
    yield from first_lines(first)
    warm_up = {week: list(warm_up_rows(session, habits, table)) for week, session in sessions.items()}
    for rows in _together(warm_up):
        yield from _said(rows, sessions, WARM_UP)
    work = {week: list(work_rows(session, habits, table)) for week, session in sessions.items()}
    for number, rows in enumerate(_together(work), 1):
        yield from _said(rows, sessions, f"{number}. ")
        members = {week: row.members for week, row in rows.items()}
        for at, inside in enumerate(_together(members)):
            yield from _said(inside, rows, f"   {number}{letter(at)} ")
    yield from last_lines(first)


def _together(weeks: Mapping[int, Sequence[Row]]) -> list[dict[int, Row]]:
    """The rows of all weeks in their order, each with the weeks in which it is done."""
    order: list[tuple[Place, int]] = []
    found: dict[tuple[Place, int], dict[int, Row]] = {}
    for week, rows in weeks.items():
        after = 0
        times: dict[Place, int] = {}
        for row in rows:
            times[row.place] = times.get(row.place, 0) + 1
            key = row.place, times[row.place]
            if key not in found:
                order.insert(after, key)
            found.setdefault(key, {})[week] = row
            after = order.index(key) + 1
    return [found[key] for key in order]


def _said(rows: Mapping[int, Row], there: Iterable[int], lead: str) -> Iterator[str]:
    """A row on one line where all weeks agree; else what they share, and what is said of some weeks only."""
    first = next(iter(rows.values()))
    same = [phrase for phrase in first.said if all(phrase in row.said for row in rows.values())]
    others = {week: _rest(rows.get(week), same) for week in there}
    yield f"{lead}{first.name}{': ' * bool(same)}{'; '.join(same)}"
    further = " " * (len(lead) - len(lead.lstrip()) + 4)
    yield from (f"{further}{say_weeks(at)}: {said}" for said, at in _alike(others).items() if said)


def _rest(row: Row | None, same: Sequence[str]) -> str:
    return NOT_DONE if row is None else "; ".join(phrase for phrase in row.said if phrase not in same)


def _alike(by_week: Mapping[int, str]) -> dict[str, list[int]]:
    """Texts with the weeks that say them."""
    alike: dict[str, list[int]] = {}
    for week, said in by_week.items():
        alike.setdefault(said, []).append(week)
    return alike
