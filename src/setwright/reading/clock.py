"""How long the sets of a dose last, every assumption an option."""

from collections.abc import Iterable, Iterator
from typing import NamedTuple

from setwright.reading.dose import Amount, Rest, SetGroup, SetWork, Tempo


class Clock(NamedTuple):
    """Seconds of things that say no time of their own.

    One repetition 3 s and one metre 1 s: common practice, no source. Choices: an open set lasts
    10 repetitions, a step 1 s; where words name one phase only, lowering takes 2 s and lifting 1 s; "X",
    as fast as possible, 1 s.
    """

    rep_s: float = 3.0
    metre_s: float = 1.0
    step_s: float = 1.0
    open_reps: float = 10.0
    lower_s: float = 2.0
    lift_s: float = 1.0
    fast_s: float = 1.0


class SetSeconds(NamedTuple):
    """Seconds of one set, both sides: lifting, and pauses inside the set."""

    work: float
    pause: float


def each_set(group: SetGroup) -> Iterator[SetWork]:
    """The work of every set that is surely done, in order; a total counts as one set."""
    sets = int(group.sets.low)
    for number in range(sets):
        last = number == sets - 1 and group.last is not None
        yield group.last if last and group.last else group.works[number % len(group.works)]


def set_seconds(group: SetGroup, clock: Clock) -> tuple[SetSeconds, ...]:
    """Seconds of each set of a group, without the rest between sets; with ``every``, of each interval."""
    if group.every_s is not None:
        return tuple(SetSeconds(group.every_s, 0.0) for _ in each_set(group))
    sides = group.sides.ways if group.sides is not None and group.sides.kind == "each" else 1
    parts = max(len(group.rungs), 1)
    return tuple(
        SetSeconds(sides * _work_s(work, group, clock), sides * _pause_s(group, max(parts, len(work.parts))))
        for work in each_set(group)
    )


def rest_seconds(groups: Iterable[tuple[SetGroup, Iterable[SetSeconds]]], clock: Clock) -> float | None:
    """Seconds of rest between the sets of a dose, one fewer than sets; None where one has no number.

    ``groups``: each with the seconds of its sets.
    """
    rests = [_rest_s(group, one.work, clock) for group, each in groups for one in each][:-1]
    known = [rest for rest in rests if rest is not None]
    return sum(known) if len(known) == len(rests) else None


def rep_seconds(tempo: Tempo | None, clock: Clock) -> float:
    """Seconds of one repetition."""
    if tempo is None:
        return clock.rep_s
    lower = clock.lower_s if tempo.lower_s is None else tempo.lower_s
    lift = clock.lift_s if tempo.lift_s is None else tempo.lift_s
    phases = (lower, tempo.bottom_s, lift, tempo.top_s, tempo.held_s)
    return sum(clock.fast_s if isinstance(phase, str) else phase or 0.0 for phase in phases)


def _work_s(work: SetWork, group: SetGroup, clock: Clock) -> float:
    rep_s = rep_seconds(group.tempo, clock)
    seconds = group.target_s or _amount_s(work.amount, group, rep_s, clock)
    seconds += (work.extra.reps if work.extra else 0) * rep_s
    return seconds + sum(_amount_s(drop.amount, group, rep_s, clock) for drop in work.drops)


def _amount_s(amount: Amount, group: SetGroup, rep_s: float, clock: Clock) -> float:
    number = amount.span.low
    if amount.unit == "s":
        return number
    if amount.unit == "m":
        return number * clock.metre_s
    if amount.unit == "steps":
        return number * clock.step_s
    if amount.span.high is None and not number:
        number = clock.open_reps
        if group.cap is not None and group.cap.unit == "reps":
            number = min(number, group.cap.span.low)
    return number * rep_s


def _pause_s(group: SetGroup, parts: int) -> float:
    return (parts - 1) * group.pause_s.low if group.pause_s is not None else 0.0


def _rest_s(group: SetGroup, work_s: float, clock: Clock) -> float | None:
    """Seconds after one set of ``work_s`` seconds; a partner takes as long as the set did."""
    if group.every_s is not None:
        return 0.0
    rest = group.rest or Rest(kind="as_needed")
    low = rest.low or 0.0
    by_kind = {
        "none": 0.0,
        "partner": work_s,
        "seconds": low,
        "metres": low * clock.metre_s,
        "times_work": low * work_s,
    }
    return by_kind.get(rest.kind)
