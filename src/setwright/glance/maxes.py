"""Planned loads against the tested max of everyone who does the line, week by week."""

from collections.abc import Iterator, Sequence

from setwright.checked import CheckedWeek
from setwright.glance.shapes import few
from setwright.library.table import Library
from setwright.loads.maxes import WHOLE
from setwright.reading.dose import Load
from setwright.rules.lifts import Share, lifts, shares
from setwright.rules.means import means
from setwright.rules.rule import Case


def max_sentences(weeks: Sequence[CheckedWeek], table: Library) -> Iterator[str]:
    """The first week in which a planned load passes the tested max, and the lifts of which nobody knows."""
    cases = [Case(week.coverage, week.aim, means(week.week, table)) for week in weeks]
    held = [list(shares(case)) for case in cases]
    over = [[share for share in each if share.percent.low > WHOLE] for each in held]
    first = next((at for at, found in enumerate(over) if found), None)
    if first is not None:
        week = f"Week {weeks[first].week.number} is the first" if len(weeks) > 1 else "The week is one"
        yield f"{week} with a load over the tested max: {few([_named(share) for share in over[first]])}."
    elif any(held):
        yield "No planned load passes the tested max."
    known = {share.lift.work.movement["key"] for each in held for share in each}
    loaded = [lift.work for case in cases for lift in lifts(case) if _in_kilograms(lift.load)]
    unknown = [work.name for work in loaded if work.movement["key"] not in known]
    if unknown:
        yield f"No tested max is given to hold these loads against: {few(unknown)}."


def _in_kilograms(load: Load) -> bool:
    """Whether a load is so many kilograms, and not a band, a pin, or the bare body."""
    return load.kind in ("mass", "percent", "bar") or (load.kind == "bodyweight" and load.plus is not None)


def _named(share: Share) -> str:
    return share.lift.work.name + (f" ({share.athlete.name})" if share.athlete else "")
