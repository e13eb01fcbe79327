"""What came of a planned line: the repetitions of each set, the load, the effort, and what is missing."""

from typing import NamedTuple

from setwright.model.people import Athlete
from setwright.model.plan import Week
from setwright.reading.done import SetDone
from setwright.reading.dose import Effort, Load, Span
from setwright.reading.words import number, plural
from setwright.records.fitting import Line
from setwright.records.planned import Planned, loads_of


class Outcome(NamedTuple):
    """What was done of a line by one athlete.

    ``reps``: of each set, empty when only "done" was written. ``load``: of the first set, else the planned
    one, None when neither is written. ``effort``: of the last set that has one. ``short``: why the line was
    not done in full, empty when it was.
    """

    reps: tuple[float, ...] = ()
    load: Load | None = None
    effort: Effort | None = None
    short: str = ""


def outcome(line: Line, week: Week, athlete: Athlete | None) -> Outcome:
    """What was done of a line of the plan; ``line.planned`` must be known."""
    assert line.planned is not None
    loads = loads_of(line.planned, week, athlete)
    load = loads[0] if len(loads) == 1 else None
    done = line.done.done if line.done else None
    if line.done is None or done is None or done.kind == "not written":
        return Outcome(load=load, short="nobody wrote it down")
    if line.done.instead_of is not None:
        return Outcome(load=load, short=f"{line.done.name} was done instead")
    if done.kind == "not done":
        return Outcome(load=load, short=f"not done, {done.reason}" if done.reason else "not done")
    if done.kind == "done":
        return Outcome(load=load, short="several loads are planned" if len(loads) > 1 else "")
    return _of_sets(done.sets, line.planned, load)


def _of_sets(sets: tuple[SetDone, ...], at: Planned, planned: Load | None) -> Outcome:
    reps = tuple(one.amount.span.low for one in sets if one.amount.unit == "reps")
    efforts = [one.effort for one in sets if one.effort is not None]
    loads = list(dict.fromkeys(one.load for one in sets))
    load = sets[0].load or planned
    found = Outcome(reps, load, efforts[-1] if efforts else None)
    least = sets_planned(at).low
    written = len(sets) / (2 if by_sides(sets) else 1)
    if written < least:
        return found._replace(short=f"{number(written)} of {plural(least, 'set')}")
    if len(loads) > 1:
        return found._replace(short="the load was changed between the sets")
    return found


def by_sides(sets: tuple[SetDone, ...]) -> bool:
    """Whether left and right stand as sets of their own."""
    return {"left", "right"} <= {one.sides.kind for one in sets if one.sides}


def reserve_off(wanted: Effort | None, had: Effort | None) -> float | None:
    """Repetitions in reserve over (easier) or under (harder) what was wanted, 0 within its span.

    None where one of the two is not known.
    """
    meant, felt = (one.rir if one else None for one in (wanted, had))
    if meant is None or felt is None:
        return None
    return min(0.0, felt[1] - meant[0]) or max(0.0, felt[0] - meant[1])


def sets_planned(at: Planned) -> Span:
    """The sets of a line over all rounds of its group."""
    low = sum(group.sets.low for group in at.sets) * at.rounds
    high = [group.sets.high for group in at.sets]
    return Span(low=low, high=None if None in high else sum(one or 0 for one in high) * at.rounds)
