"""The week added up: sessions by day, parts of the chest, muscles, pushes and pulls."""

import math
from collections.abc import Collection, Iterable, Iterator
from typing import Final

from setwright.coverage.clock import session_minutes
from setwright.coverage.counts import count_items, works
from setwright.coverage.muscles import WHOLE, shares_by_movement
from setwright.coverage.shapes import (
    CLASSES,
    PARTS,
    PULLS,
    PUSHES,
    Answer,
    Coverage,
    Part,
    PartCover,
    SessionCover,
    Sets,
    Work,
    total,
)
from setwright.library.table import Library, library
from setwright.model.plan import DAYS, Session, Week

NEVER_ACROSS: Final[frozenset[Part]] = frozenset({"costal"})
"""Parts whose lever is gone past the midline in every crossing move (docs/engine.md)."""

_NO_SETS: Final = Sets()


def cover(week: Week, table: Library | None = None) -> Coverage:
    """What the week adds up to. The order in which sessions are listed does not matter: days decide."""
    table = table or library()
    return added_up(week, tuple(cover_session(session, day, table) for day, session in in_turn(week)))


def in_turn(week: Week) -> Iterator[tuple[int, Session]]:
    """The sessions in the order of their days, each with its place in that order."""
    return enumerate(sorted(week.sessions, key=_day_order))


def added_up(week: Week, sessions: tuple[SessionCover, ...]) -> Coverage:
    """What a week adds up to, its sessions covered already and in the order of their days."""
    done = tuple(work for session in sessions for work in session.works)
    muscles, trained = _muscles(done)
    return Coverage(
        week=week,
        sessions=sessions,
        parts=tuple(_part(part, done) for part in PARTS),
        chest=total(session.chest for session in sessions),
        muscles=muscles,
        trained=trained,
        push=total(work.hard for work in done if work.movement["pattern"] in PUSHES),
        pull=total(work.hard for work in done if work.movement["pattern"] in PULLS),
        unscored=len({work.movement["key"] for work in done if not work.movement["scored"]}),
        effort_not_stated=total(work.hard for work in done if not work.effort_stated),
    )


def _day_order(session: Session) -> tuple[str, int]:
    day = DAYS.index(session.day) if session.day else len(DAYS)
    return session.date.isoformat() if session.date else "", day


def cover_session(session: Session, day: int, table: Library) -> SessionCover:
    """What one session adds up to; ``day`` is its place in the week."""
    counts = count_items(session, table)
    done = works(session, day, table, counts)
    chest = total(work.hard for work in done if work.direct_chest)
    return SessionCover(session, done, chest, session_minutes(session, counts), counts)


def _muscles(done: Collection[Work]) -> tuple[dict[str, Sets], frozenset[str]]:
    given = shares_by_movement(done)
    sums: dict[str, Sets] = {}
    trained = set()
    for work in done:
        if work.hard == _NO_SETS:
            continue
        for group, share in given[work.movement["key"]].items():
            sums[group] = sums.get(group, _NO_SETS) + work.hard.times(share)
            if share == WHOLE:
                trained.add(group)
    return sums, frozenset(trained)


def _part(part: Part, done: Iterable[Work]) -> PartCover:
    loaded = tuple(work for work in done if work.dose(part) and work.hard.high)
    scores = [work.movement["parts"][part] for work in loaded]
    percents = [score["loaded_long_percent"] for score in scores if score["loaded_long_percent"] is not None]
    across = [work.movement["past_midline"]["arm_deg"] for work in loaded if work.crossing]
    return PartCover(
        part=part,
        sets=total(work.hard.times(work.dose(part)) for work in loaded),
        served_by=tuple(work for work in loaded if part in work.serves),
        loaded_by=loaded,
        loaded_long=_best(score["loaded_long"] for score in scores),
        loaded_long_percent=max(percents, default=None),
        loaded_short=_best(score["loaded_short"] for score in scores),
        across_deg=None if part in NEVER_ACROSS else max(across, default=None),
        heaviest=max(loaded, key=lambda work: _weight(work, part), default=None),
    )


def _best(answers: Iterable[Answer]) -> Answer:
    given = set(answers)
    return "yes" if "yes" in given else "partly" if "partly" in given else "no"


def _weight(work: Work, part: Part) -> tuple[int, float, float]:
    sets = work.hard.high if math.isfinite(work.hard.high) else work.hard.low
    return CLASSES.index(work.load_class), work.dose(part), sets
