"""Weekly sets a muscle: what the coach asks for under `sets a week`, and how a count is shown."""

import math
from collections.abc import Mapping

from setwright.coverage import Coverage, Sets, Work, total
from setwright.coverage.muscles import shares_by_movement
from setwright.findings import Seen
from setwright.model.plan import Week
from setwright.model.weekly import PULL_TO_PUSH, WeeklySets


def asked_for(week: Week) -> Mapping[str, tuple[float, float]]:
    """The coach's own ranges by muscle group, low and high; high is endless for "at least"."""
    return {
        asked.group: (asked.low, math.inf if asked.high is None else asked.high)
        for asked in week.sets_a_week
        if asked.group != PULL_TO_PUSH
    }


def pull_to_push(week: Week) -> WeeklySets | None:
    """How many pulls a push the coach asks for; None when nothing is written."""
    return next((asked for asked in week.sets_a_week if asked.group == PULL_TO_PUSH), None)


def sets_of(coverage: Coverage, group: str) -> Sets:
    """Fractional hard sets of a muscle group."""
    return coverage.muscles.get(group, Sets())


def how_counted(coverage: Coverage, group: str) -> Seen:
    """Where a group's sets come from: each movement with the whole or half sets of all its lines."""
    given = shares_by_movement(coverage.works)
    credited: dict[str, list[tuple[Work, float]]] = {}
    for work in coverage.works:
        share = given[work.movement["key"]].get(group) if work.hard.high else None
        if share:
            credited.setdefault(work.name, []).append((work, share))
    lines = ", ".join(_movement(name, works) for name, works in credited.items())
    return Seen(f"{group} {sets_of(coverage, group)}: {lines or 'no line'}")


def _movement(name: str, works: list[tuple[Work, float]]) -> str:
    where = f"line {works[0][0].line}" if len(works) == 1 else f"{len(works)} lines"
    return f"{name} {total(work.hard.times(share) for work, share in works)} ({where})"
