"""How many sets, hard sets and repetitions a dose is, and how long it takes."""

from collections.abc import Iterable, Iterator, Mapping
from typing import NamedTuple

from setwright.reading.clock import Clock, each_set, rest_seconds, set_seconds
from setwright.reading.dose import Amount, Dose, SetGroup, Span
from setwright.reading.hardness import Hard, hard_sets, is_decided, works_and_times

NOTHING = Span(low=0, high=0)
ONCE = Span(low=1, high=1)
_OTHER = {"left": ("right", "stronger"), "right": ("left", "weaker")}
"""The sides that do not work when the left (or weaker), the right (or stronger) one does."""


class Counted(NamedTuple):
    """What a dose comes to. Spans are totals; ``high`` None is open ("or more").

    ``sets`` and ``hard``: sets, those of the busier side where a line names left or right; ``left`` and
    ``right`` hold each side's sets when they differ. ``amounts``: totals by unit (reps, s, m ...), of one
    side where ``per_side``. ``extras``: helped or partial repetitions, never part of ``amounts``.
    ``effort_stated``: every set says an effort or a percent that decides. Seconds: ``work_s`` lifting,
    both sides; ``pause_s`` inside sets; ``rest_s`` between sets as far as it is written (``rest_known``).
    """

    sets: Span
    hard: Span
    effort_stated: bool
    amounts: Mapping[str, Span]
    per_side: bool
    extras: int
    work_s: float
    pause_s: float
    rest_s: float
    rest_known: bool
    left: Span | None = None
    right: Span | None = None

    @property
    def reps(self) -> Span:
        """Repetitions, of one side where ``per_side``; 0 when the dose is counted in something else."""
        return self.amounts.get("reps", NOTHING)

    @property
    def seconds(self) -> float:
        """The whole time in seconds."""
        return self.work_s + self.pause_s + self.rest_s


def count(
    dose: Dose, *, counts: bool = True, rule: Hard | None = None, clock: Clock | None = None
) -> Counted:
    """Sets, hard sets, totals and seconds of ``dose``; warm-up sets are never counted.

    ``counts``: False for explosive, carry, warm-up and technique movements, which have no hard sets.
    """
    rule, clock = rule or Hard(), clock or Clock()
    left, right = ([group for group in dose.groups if _works(group, side)] for side in _OTHER)
    left_sets, right_sets = total(map(sets, left)), total(map(sets, right))
    busier, busier_sets = (right, right_sets) if right_sets.low > left_sets.low else (left, left_sets)
    differ = left_sets != right_sets
    timed = [(group, set_seconds(group, clock)) for group in dose.groups]
    seconds = [one for _, each in timed for one in each]
    rests = rest_seconds(timed, clock)
    return Counted(
        sets=busier_sets,
        hard=total(hard_sets(group, rule) for group in busier) if counts else NOTHING,
        effort_stated=all(is_decided(work, group, rule) for group in dose.groups for work in each_set(group)),
        amounts=_amounts(busier),
        per_side=any(group.sides is not None for group in dose.groups),
        extras=sum(work.extra.reps for group in busier for work in each_set(group) if work.extra),
        work_s=sum(one.work for one in seconds),
        pause_s=sum(one.pause for one in seconds),
        rest_s=rests or 0.0,
        rest_known=rests is not None,
        left=left_sets if differ else None,
        right=right_sets if differ else None,
    )


def total(spans: Iterable[Span]) -> Span:
    """The sum of spans, open when one of them is."""
    low, high = 0.0, 0.0
    is_open = False
    for span in spans:
        low += span.low
        high += span.high or 0.0
        is_open = is_open or span.high is None
    return Span(low=low, high=None if is_open else high)


def sets(group: SetGroup) -> Span:
    """Dose sets of a group: one a rung in a ladder, one for a cluster or a drop set."""
    return _times(group.sets, len(group.rungs) or 1)


def _times(span: Span, factor: float) -> Span:
    return Span(low=span.low * factor, high=None if span.high is None else span.high * factor)


def _works(group: SetGroup, side: str) -> bool:
    """Whether a group works the left (or weaker) or the right (or stronger) side."""
    return group.sides is None or group.sides.kind not in _OTHER[side]


def _amounts(groups: Iterable[SetGroup]) -> dict[str, Span]:
    """Totals of one side by unit; drops count, extras do not."""
    totals: dict[str, Span] = {}
    for group in groups:
        share = 0.5 if group.sides is not None and group.sides.kind == "in_all" else 1.0
        for amount, times in _done(group):
            span = _times(amount.span, share)
            if span.high is None and group.cap is not None and group.cap.unit == amount.unit:
                span = Span(low=span.low, high=group.cap.span.low * share)
            high = None if span.high is None or times.high is None else span.high * times.high
            done = Span(low=span.low * times.low, high=high)
            totals[amount.unit] = total((totals.get(amount.unit, NOTHING), done))
    return totals


def _done(group: SetGroup) -> Iterator[tuple[Amount, Span]]:
    """Each amount of a group and how many times it is done."""
    for work, times in works_and_times(group):
        # a total is done once, in however many sets
        yield work.amount, ONCE if group.kind == "total" else times
        for drop in work.drops:
            yield drop.amount, times
