"""Which sets are hard: by their written effort, or by the reserve that a percent leaves."""

from collections.abc import Iterator, Mapping
from itertools import pairwise
from types import MappingProxyType
from typing import Literal, NamedTuple

from setwright.reading.dose import MAX_KINDS, Effort, Load, SetGroup, SetWork, Span

HANDBOOK_REPS_PERCENT: Mapping[int, float] = MappingProxyType(
    {1: 100, 2: 95, 3: 93, 4: 90, 5: 87, 6: 85, 7: 83, 8: 80, 9: 77, 10: 75, 11: 73, 12: 70, 15: 65}
)
"""Most repetitions, and the percent of the one-repetition maximum they are done with.

Source: NSCA training load chart, handbook table after Baechle & Earle; 1-10 and 12 read from a copy of the
chart, 11 and 15 from secondary copies. Between its rows the table is read along straight lines.
"""

REPETITIONS = ("reps", "rung", "steps")
"""Units that are counted toward failure; seconds, metres and the like are not."""

_OF_A_MAX = (None, *MAX_KINDS)
_SHARED = (None, "training max")


Decider = Literal["effort", "limit", "clock", "percent", "nothing"]
"""What decides whether a set is hard: a written effort; as many as possible; nothing, and the set is one by
the clock, by distance, a ladder or a total, which may be easy; a percent; nothing, and the set is counted."""


class Hard(NamedTuple):
    """When a set is hard. Common practice, no source.

    ``rir_at_most``: repetitions in reserve. ``rpe_at_least``: RPE. ``max_share``: share of the tested max
    that a percent of the training max, or of nothing named, stands for (0.9 with a training max of 90 %).
    """

    rir_at_most: float = 4
    rpe_at_least: float = 6
    max_share: float = 1.0


def hard_sets(group: SetGroup, rule: Hard) -> Span:
    """Hard sets of a group, from those that surely are to those that may be.

    Sets that rise to a load are 1 to n; sets by the clock, ladders and totals without an effort 0 to n.
    """
    low, high = 0.0, 0.0
    rungs = len(group.rungs) or 1
    for work, times in works_and_times(group):
        each = _hard(work, group, rule)
        low += each.low * times.low * rungs
        high += (each.high or 0.0) * (times.low if times.high is None else times.high) * rungs
    if low and any(work.load is not None and work.load.rising for work in group.works):
        low = 1.0
    return Span(low=low, high=None if group.sets.high is None and high else high)


def is_decided(work: SetWork, group: SetGroup, rule: Hard) -> bool:
    """Whether the line itself says how hard a set is."""
    return _said(work, group) or (work.effort is None and _by_percent(work, rule) is not None)


def works_and_times(group: SetGroup) -> Iterator[tuple[SetWork, Span]]:
    """Each kind of set of a group with how many there are; a ladder's rungs are its sets."""
    alone = len(group.works) == 1
    times = group.sets if alone else Span(low=1, high=1)
    last = group.last
    for number, work in enumerate(group.works):
        if last is not None and number == len(group.works) - 1:
            before = Span(low=times.low - 1, high=None if times.high is None else times.high - 1)
            yield work, before
            yield last, Span(low=1, high=1)
        else:
            yield work, times


def _said(work: SetWork, group: SetGroup) -> bool:
    is_max = work.amount.span.high is None and work.amount.span.low == 0 and work.amount.unit == "reps"
    return work.effort is not None or is_max or group.kind in ("top_set", "test")


def decided_by(work: SetWork, group: SetGroup) -> Decider:
    """What decides whether a set is hard."""
    if work.effort is not None:
        return "effort"
    if _said(work, group):
        return "limit"
    if group.kind in ("ladder", "total") or group.every_s is not None or work.amount.unit not in REPETITIONS:
        return "clock"
    if work.load is not None and work.load.kind == "percent" and work.load.of in _OF_A_MAX:
        return "percent"
    return "nothing"


def _hard(work: SetWork, group: SetGroup, rule: Hard) -> Span:
    """0, 1, or from 0 to 1 where it can't be told."""
    if work.effort is not None:
        return _by_effort(work.effort, rule)
    decider, unsure = decided_by(work, group), Span(low=0, high=1)
    if decider == "percent":
        return _by_percent(work, rule) or unsure
    return unsure if decider == "clock" else Span(low=1, high=1)


def _by_effort(effort: Effort, rule: Hard) -> Span:
    if effort.scale == "RIR":
        hard = (effort.high <= rule.rir_at_most, effort.low <= rule.rir_at_most)
    elif effort.scale == "RPE":
        hard = (effort.low >= rule.rpe_at_least, effort.high >= rule.rpe_at_least)
    else:
        hard = (False, True)
    return Span(low=hard[0], high=hard[1])


def _by_percent(work: SetWork, rule: Hard) -> Span | None:
    """What the handbook table says; None without a percent of a max, and where the table ends."""
    load, reps = work.load, work.amount.span
    if load is None or load.kind != "percent" or load.of not in _OF_A_MAX or work.amount.unit != "reps":
        return None
    most, exact = most_reps(percent_of_max(load, rule))
    surely = most - reps.low <= rule.rir_at_most
    maybe = reps.high is None or most - reps.high <= rule.rir_at_most
    if maybe and not exact:
        return None
    return Span(low=surely, high=maybe)


def percent_of_max(load: Load, rule: Hard) -> float:
    """The low end of a percent load, in percent of the tested max."""
    return (load.low or 0.0) * (rule.max_share if load.of in _SHARED else 1.0)


def most_reps(percent: float) -> tuple[float, bool]:
    """Most repetitions with a percent of the one-repetition maximum.

    False with it where the table ends, and more may be done.

    >>> most_reps(75)
    (10.0, True)
    >>> most_reps(50)
    (15.0, False)
    """
    rows = list(HANDBOOK_REPS_PERCENT.items())
    if percent >= rows[0][1]:
        return float(rows[0][0]), True
    for (few, heavy), (many, light) in pairwise(rows):
        if percent >= light:
            return few + (many - few) * (heavy - percent) / (heavy - light), True
    return float(rows[-1][0]), False
