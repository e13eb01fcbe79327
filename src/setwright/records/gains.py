"""More sets and repetitions of a line than are written, and what a line says without its load."""

from typing import NamedTuple

from setwright.model.next import Add
from setwright.reading.dose import SetGroup, Span
from setwright.records.planned import Planned


class Gain(NamedTuple):
    """Sets and repetitions over those that are written; below zero they are fewer."""

    sets: int = 0
    reps: int = 0

    def plus(self, add: Add | None) -> "Gain":
        """With what a rule adds, where that is sets or repetitions."""
        match add.unit if add else None:
            case "sets":
                return self._replace(sets=self.sets + int(add.amount if add else 0))
            case "reps":
                return self._replace(reps=self.reps + int(add.amount if add else 0))
            case _:
                return self


def sets_of(at: Planned) -> tuple[SetGroup, ...]:
    """The sets of a line without their loads."""
    return tuple(map(_bare, at.sets))


def with_gain(group: SetGroup, gain: Gain) -> SetGroup:
    """Sets of one kind with what is gained, at least one set of one repetition."""
    works = tuple(
        work.model_copy(
            update={"amount": work.amount.model_copy(update={"span": _plus(work.amount.span, gain.reps)})}
        )
        for work in group.works
    )
    return group.model_copy(update={"sets": _plus(group.sets, gain.sets), "works": works})


def gained(now: Planned, written: Planned) -> Gain | None:
    """What a line has over another one; None where it differs in something else than sets and repetitions."""
    more, less = sets_of(now), sets_of(written)
    if more == less:
        return Gain()
    if len(more) != 1 or len(less) != 1:
        return None
    sets = more[0].sets.low - less[0].sets.low
    reps = more[0].works[0].amount.span.low - less[0].works[0].amount.span.low
    gain = Gain(int(sets), int(reps))
    return gain if with_gain(less[0], gain) == more[0] else None


def _bare(group: SetGroup) -> SetGroup:
    works = tuple(work.model_copy(update={"load": None}) for work in group.works)
    last = group.last and group.last.model_copy(update={"load": None})
    return group.model_copy(update={"works": works, "last": last})


def _plus(span: Span, more: int) -> Span:
    if not more:
        return span
    high = None if span.high is None else max(span.high + more, 1)
    return Span(low=max(span.low + more, 1), high=high)
