"""The smallest set of changes that closes the open gaps: one, two, three at a time, each really judged."""

from collections import Counter
from collections.abc import Iterator
from typing import Final, NamedTuple

from setwright.model.plan import Week
from setwright.swapping.candidates import changes
from setwright.swapping.changes import Change, changed
from setwright.swapping.state import Judge, Key, State, lost

MOST_CHANGES: Final = 3
"""Changes that are tried together (choice: more is another plan)."""
MOST_TRIED: Final = 2000
"""Sets of changes that are judged before the search stops (choice: a few seconds)."""
A_MINUTE: Final = 0.5
"""Minutes over those written that a session still holds (choice: half a minute is rounding)."""

_KINDS: Final = {"pair": 0, "add": 1, "replace": 2}
"""What is proposed first among changes that do the same: a pair leaves every line where it is."""


class Tried(NamedTuple):
    """A set of changes and the week with them; ``usual``: how many are what a finding proposes."""

    changes: tuple[Change, ...]
    state: State
    usual: int = 0

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

    Of single changes all that ``candidates`` lists are tried. Sets of two and three grow from those, one
    change at a time: each has to close a gap that is open by then, or to add to a muscle with too few sets;
    a gap that a change opens may be closed by the next. Of sets that change the same sessions and leave the
    same open, only the best by rank grows on. A set that opens a gap in the end, runs over the minutes
    written, or opens what no movement closes, is dropped. With the budget spent, the best so far is taken.
    """
    before = judge(week)
    trials = _Trials(before, judge, budget)
    best: Tried | None = None
    grown = [Tried((), before)] if before.gaps else []
    for _ in range(most):
        tried = [one for parent in grown for one in _next(parent, trials)]
        inside = [one for one in tried if _inside(before, one.state)]
        best = _best(before, [*filter(None, [best]), *inside])
        if trials.spent or (best and not best.state.gaps):
            break
        grown = list(_one_for_many(before, inside))
    return Found(before, best, trials.count, not trials.spent)


def _next(parent: Tried, trials: "_Trials") -> Iterator[Tried]:
    """A set of changes with one more that helps where it leaves off."""
    for change in changes(trials.before, parent.state, trials.means):
        parts = (*parent.changes, change)
        if trials.spent:
            return
        if trials.new(parts):
            usual = parent.usual + (change.movement["key"] in parent.state.proposed)
            one = Tried(parts, trials(parts), usual)
            if _helps(parent.state, one.state):
                yield one


class _Trials:
    """Judges sets of changes, none twice, and counts them."""

    def __init__(self, before: State, judge: Judge, budget: int) -> None:
        self.before, self.means = before, judge.means
        self._judge, self._budget = judge, budget
        self._seen: set[frozenset[object]] = set()

    def new(self, parts: tuple[Change, ...]) -> bool:
        """Whether the changes go together, each at a spot of its own, and were not tried before."""
        spots = {(part.kind == "add" and part.movement["key"], part.spot) for part in parts}
        added = {(part.spot.session, part.movement["key"]) for part in parts}
        return len(spots) == len(added) == len(parts) and _named(parts) not in self._seen

    def __call__(self, parts: tuple[Change, ...]) -> State:
        self._seen.add(_named(parts))
        return self._judge(changed(self.before.week, parts))

    @property
    def count(self) -> int:
        """Sets of changes judged."""
        return len(self._seen)

    @property
    def spent(self) -> bool:
        """Whether no more are to be judged."""
        return self.count >= self._budget


def _named(parts: tuple[Change, ...]) -> frozenset[object]:
    return frozenset((part.kind, part.spot, part.movement["key"]) for part in parts)


def _inside(before: State, after: State) -> bool:
    """Whether every session holds its work in the minutes written, and nothing is opened for good."""
    return not after.others - before.others and all(
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
    """Of sets that change the same sessions and leave the same open, the first by rank; best first."""
    seen: set[object] = set()
    for one in sorted(tried, key=lambda each: _rank(before, each)):
        muscles = one.state.coverage.muscles
        outcome = (
            tuple(sorted(change.spot.session for change in one.changes)),
            frozenset(one.state.gaps.items()),
            tuple(str(muscles.get(group)) for group in sorted(before.short)),
        )  # fmt: skip
        if outcome not in seen:
            seen.add(outcome)
            yield one


def _best(before: State, tried: list[Tried]) -> Tried | None:
    """The first by rank of those that close a gap and open none."""
    closing = [one for one in tried if one.closed(before) and not one.state.gaps - before.gaps]
    return min(closing, key=lambda one: _rank(before, one), default=None)


def _rank(before: State, one: Tried) -> tuple[float, ...]:
    """The better comes first: fewer gaps open, fewer changes, less lost, less advice, what check proposes."""
    after = one.state
    return (
        after.gaps.total(),
        len(one.changes),
        len(lost(before.coverage, after.coverage)),
        after.advice.total(),
        -one.usual,
        sum(_KINDS[change.kind] for change in one.changes),
        round(sum(after.minutes) - sum(before.minutes)),
    )
