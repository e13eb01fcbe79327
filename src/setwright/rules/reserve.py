"""Sets whose repetitions, percent and effort can be laid beside the handbook table."""

from collections.abc import Callable, Hashable, Iterable, Iterator
from typing import Final, NamedTuple

from setwright.coverage.counts import NEVER_HARD
from setwright.findings import Seen
from setwright.loads.handbook import percent_for
from setwright.reading.dose import Span
from setwright.reading.hardness import HANDBOOK_REPS_PERCENT
from setwright.rules.lifts import Share, by_movement, lines_of, shares
from setwright.rules.rule import Case

TABLE: Final = (
    "NSCA training load chart (mirror); that repetitions and those in reserve make one row is common practice"
)
MOST_IN_THE_TABLE: Final = max(HANDBOOK_REPS_PERCENT)


class Judged(NamedTuple):
    """A share of the max with the repetitions done at it; ``rir``: those in reserve, None when unwritten."""

    share: Share
    reps: Span
    rir: tuple[float, float] | None

    @property
    def heaviest(self) -> float:
        """The table's percent for the fewest repetitions, with the fewest in reserve that are written.

        Beyond the table's end that of its last row, which is more than they can be done with.
        """
        fewest = self.reps.low + (self.rir[0] if self.rir else 0.0)
        return percent_for(min(fewest, MOST_IN_THE_TABLE)) or 0.0

    @property
    def lightest(self) -> float | None:
        """The table's percent for the most repetitions and in reserve; None when open or beyond the table."""
        if self.reps.high is None or self.rir is None:
            return None
        return percent_for(self.reps.high + self.rir[1])

    @property
    def said(self) -> str:
        """The repetitions and those in reserve: "5 repetitions with 2 left"."""
        low, high = f"{self.reps.low:g}", self.reps.high
        reps = f"{low} or more" if high is None else low if high == self.reps.low else f"{low} to {high:g}"
        if self.rir is None:
            return f"{reps} repetition{'' if reps == '1' else 's'}"
        left = " to ".join(dict.fromkeys(f"{end:g}" for end in self.rir))
        return f"{reps} repetition{'' if reps == '1' else 's'} with {left} left"


class Together(NamedTuple):
    """Sets that are one fault, and the worst of them."""

    worst: Judged
    every: tuple[Judged, ...]

    @property
    def movements(self) -> str:
        """The movements as typed, each once."""
        return " and ".join(dict.fromkeys(one.share.lift.work.name for one in self.every))

    @property
    def seen(self) -> tuple[Seen, ...]:
        """Their lines."""
        return lines_of(one.share.lift for one in self.every)


def together(found: Iterable[Judged], how_bad: Callable[[Judged], float]) -> list[Together]:
    """What is one fault: sets of one movement, and those of others with the same percent for as many."""
    alike: dict[Hashable, tuple[Judged, ...]] = {}
    for every in by_movement(found, lambda one: one.share):
        worst = max(every, key=how_bad)
        share = worst.share
        key = (worst.said, share.percent) if share.athlete is None else share.lift.work.movement["key"]
        alike[key] = (*alike.get(key, ()), *every)
    return [Together(max(every, key=how_bad), every) for every in alike.values()]


def judged(case: Case) -> Iterator[Judged]:
    """Plain sets of repetitions with a share of the max.

    Not explosive lifts, which end before they slow down, and not clusters, ladders or totals, whose breaks
    the table does not know.
    """
    for share in shares(case):
        sets, group = share.lift.sets, share.lift.group
        if sets is None or group is None or group.kind not in ("straight", "list"):
            continue
        counted = sets.amount.unit == "reps" and sets.amount.span.low >= 1
        both_sides = group.sides is not None and group.sides.kind == "in_all"
        if counted and not both_sides and share.lift.work.movement["pattern"] not in NEVER_HARD:
            yield Judged(share, sets.amount.span, sets.effort.rir if sets.effort else None)
