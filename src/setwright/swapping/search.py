"""The smallest set of changes that closes the open gaps: one, two, three at a time, each really judged."""

from collections import Counter
from collections.abc import Iterator
from itertools import combinations
from typing import Final, NamedTuple

from setwright.model.plan import Week
from setwright.swapping.candidates import changes, pool
from setwright.swapping.changes import Change, changed
from setwright.swapping.state import Judge, Key, State, lost

MOST_CHANGES: Final = 3
"""Changes that are tried together (choice: more is another plan)."""
MOST_TRIED: Final = 3000
"""Sets of changes that are judged before the search stops (choice: a few seconds)."""
A_MINUTE: Final = 0.5
"""Minutes over those written that a session still holds (choice: half a minute is rounding)."""

_KINDS: Final = {"pair": 0, "add": 1, "replace": 2}
"""What is proposed first among changes that do the same: a pair leaves every line where it is."""


class Tried(NamedTuple):
    """A set of changes and the week with them."""

    changes: tuple[Change, ...]
    state: State

    def closed(self, before: State) -> Counter[Key]:
        """The gaps that it closes."""
        return before.gaps - self.state.gaps


class Found(NamedTuple):
    """The outcome of a search. ``best`` None: no set of changes closes a gap and opens none.

    ``tried``: sets of changes judged; ``exhausted`` False when the search stopped at MOST_TRIED.
    """

    before: State
    best: Tried | None
    tried: int
    exhausted: bool

    @property
    def left(self) -> Counter[Key]:
        """The gaps that stay open."""
        return self.best.state.gaps if self.best else self.before.gaps


def search(week: Week, judge: Judge, *, most: int = MOST_CHANGES, budget: int = MOST_TRIED) -> Found:
    """The best set of at most ``most`` changes: it closes most gaps, is the smallest, and costs least.

    Tried are all single changes, then all pairs and triples of those that close a gap by themselves, or add
    to a muscle with too few sets, and open none; of single changes in one session that do the same, the
    cheapest stands for all. A set that opens a gap or runs over the minutes written is dropped.
    """
    before = judge(week)
    trials = _Trials(before, judge, budget)
    best: Tried | None = None
    useful: list[Tried] = []
    if before.gaps:
        singles = [
            Tried((one,), trials(one)) for one in changes(before, judge.means, pool(before, judge.means))
        ]
        good = [one for one in singles if _keeps(before, one.state)]
        useful = list(_one_for_many(before, [one for one in good if _helps(before, one.state)]))
        best = _best(before, useful)
    for size in range(2, most + 1):
        if trials.spent or (best and not best.state.gaps):
            break
        together = (Tried(parts, trials(*parts)) for parts in _combined(useful, size) if not trials.spent)
        best = _best(before, [*filter(None, [best]), *(one for one in together if _keeps(before, one.state))])
    return Found(before, best, trials.count, not trials.spent)


class _Trials:
    """Judges sets of changes and counts them."""

    def __init__(self, before: State, judge: Judge, budget: int) -> None:
        self._before, self._judge, self._budget = before, judge, budget
        self.count = 0

    def __call__(self, *parts: Change) -> State:
        self.count += 1
        return self._judge(changed(self._before.week, parts))

    @property
    def spent(self) -> bool:
        return self.count >= self._budget


def _keeps(before: State, after: State) -> bool:
    """Whether no gap is opened and every session holds its work in the minutes written."""
    return not after.gaps - before.gaps and all(
        session.minutes is None or now <= max(session.minutes + A_MINUTE, then)
        for session, then, now in zip(before.week.sessions, before.minutes, after.minutes, strict=True)
    )


def _helps(before: State, after: State) -> bool:
    """Whether a gap is closed, or a muscle with too few sets has more."""
    if before.gaps - after.gaps:
        return True
    old, new = before.coverage.muscles, after.coverage.muscles
    return any(
        group in new and (group not in old or new[group].high > old[group].high) for group in before.short
    )


def _one_for_many(before: State, tried: list[Tried]) -> Iterator[Tried]:
    """Of single changes of one session that come to the same, the first by rank."""
    seen: set[object] = set()
    for one in sorted(tried, key=lambda each: _rank(before, each)):
        (change,) = one.changes
        muscles = one.state.coverage.muscles
        outcome = (
            change.spot.session, frozenset(one.closed(before).items()), frozenset(one.state.advice.items()),
            tuple(str(muscles.get(group)) for group in sorted(before.short)),
        )  # fmt: skip
        if outcome not in seen:
            seen.add(outcome)
            yield one


def _combined(useful: list[Tried], size: int) -> Iterator[tuple[Change, ...]]:
    for some in combinations(useful, size):
        parts = tuple(change for one in some for change in one.changes)
        spots = {
            (part.kind == "add", part.spot, part.movement["key"] if part.kind == "add" else "")
            for part in parts
        }
        twice = {(part.spot.session, part.movement["key"]) for part in parts}
        if len(spots) == len(twice) == size:
            yield parts


def _best(before: State, tried: list[Tried]) -> Tried | None:
    closing = [one for one in tried if one.closed(before)]
    return min(closing, key=lambda one: _rank(before, one), default=None)


def _rank(before: State, one: Tried) -> tuple[float, ...]:
    """The better comes first: more gaps closed, fewer changes, nothing lost, less advice, fewer minutes."""
    after = one.state
    return (
        -one.closed(before).total(),
        len(one.changes),
        len(lost(before.coverage, after.coverage)),
        after.advice.total(),
        sum(_KINDS[change.kind] for change in one.changes),
        round(sum(after.minutes) - sum(before.minutes)),
    )
