"""Weekly sets a muscle: what the coach asks for under `sets a week`, and how a count is shown."""

import re
from collections.abc import Mapping
from typing import Final

from setwright.coverage import Coverage, Sets, Work, total
from setwright.coverage.muscles import group_named, shares
from setwright.findings import Seen
from setwright.model.plan import Week

_RANGE: Final = re.compile(r"^\s*(?:(?P<low>\d+)\s*(?:-\s*(?P<high>\d+))?|at least (?P<least>\d+))\s*$")
PULL_TO_PUSH: Final = "pull to push"


def asked_for(week: Week) -> Mapping[str, tuple[float, float]]:
    """The coach's own ranges by muscle group, low and high; "8-12", "10" and "at least 8" are read."""
    asked = {}
    for word, text in week.sets_a_week.items():
        group, found = group_named(word), _RANGE.match(text)
        if group and found:
            low = float(found["low"] or found["least"])
            asked[group] = (low, float("inf") if found["least"] else float(found["high"] or low))
    return asked


def least_pull_to_push(week: Week) -> float:
    """How many pulls a push the coach asks for; 0 when nothing is written."""
    found = re.search(r"\d+(?:\.\d+)?", week.sets_a_week.get(PULL_TO_PUSH, ""))
    return float(found[0]) if found else 0.0


def sets_of(coverage: Coverage, group: str) -> Sets:
    """Fractional hard sets of a muscle group."""
    return coverage.muscles.get(group, Sets())


def how_counted(coverage: Coverage, group: str) -> Seen:
    """Where a group's sets come from: each movement with the whole or half sets of all its lines."""
    credited: dict[str, list[tuple[Work, float]]] = {}
    for work in coverage.works:
        share = shares(work).get(group) if work.hard.high else None
        if share:
            credited.setdefault(work.name, []).append((work, share))
    lines = ", ".join(_movement(name, works) for name, works in credited.items())
    return Seen(f"{group} {sets_of(coverage, group)}: {lines or 'no line'}")


def _movement(name: str, works: list[tuple[Work, float]]) -> str:
    where = f"line {works[0][0].line}" if len(works) == 1 else f"{len(works)} lines"
    return f"{name} {total(work.hard.times(share) for work, share in works)} ({where})"
