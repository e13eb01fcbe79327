"""Sets that end with nothing left."""

from collections.abc import Iterator

from setwright.reading.dose import SetGroup, SetWork


def to_failure(group: SetGroup) -> bool:
    """Whether some set of a group is a max, a test, or goes to failure."""
    return group.kind in ("top_set", "test") or any(_reaches_failure(work) for work in every_kind(group))


def every_kind(group: SetGroup) -> Iterator[SetWork]:
    """The sets of a group, each kind once, and what its last set is instead."""
    yield from group.works
    if group.last:
        yield group.last


def _reaches_failure(work: SetWork) -> bool:
    """Written as none in reserve, or as many repetitions as there are without a reserve."""
    if work.effort is not None:
        return work.effort.rir is not None and work.effort.rir[0] == 0
    return work.amount.unit == "reps" and work.amount.span.low == 0 and work.amount.span.high is None
