"""The smallest set of changes that closes the open gaps: one, two, three at a time, each really judged."""

from collections import Counter
from collections.abc import Iterable, Iterator
from typing import Final, NamedTuple

from setwright.coverage.clock import session_minutes
from setwright.model.plan import Week
from setwright.swapping.candidates import Candidates
from setwright.swapping.changes import Change, changed, only_added
from setwright.swapping.state import Judge, Key, State, lost

MOST_CHANGES: Final = 3
"""Changes that are tried together (choice: more is another plan)."""
MOST_TRIED: Final = 1500
"""Sets of changes that are judged before the search stops (choice: two or three seconds)."""
MORE_FOR_LESS: Final = 200
"""Further sets of two or three that are judged, once no smaller one is possible, for less cost (choice)."""
A_MINUTE: Final = 0.5
"""Minutes over those written that a session still holds (choice: half a minute is rounding)."""

_KINDS: Final = {"pair": 0, "add": 1, "replace": 2}
"""What is proposed first among changes that do the same: a pair leaves every line where it is."""


class Tried(NamedTuple):
    """A set of changes and the week with them.

    ``usual``: how many are what a finding proposes. ``left``: the gaps that stay open or that are only gone
    because work was left out.
    """

    changes: tuple[Change, ...]
    state: State
    usual: int
    left: Counter[Key]


class Found(NamedTuple):
    """The outcome of a search. ``best`` None: no set of changes closes a gap and opens none.

    ``tried``: sets of changes judged. ``stopped_at``: how many changes a set had when the search stopped
    with its budget spent, so that sets of that many were tried in part; None when no other could be better.
    """

    before: State
    best: Tried | None
    tried: int
    stopped_at: int | None = None

    @property
    def left(self) -> Counter[Key]:
        """The gaps that stay open."""
        return self.best.state.gaps if self.best else self.before.gaps


def search(week: Week, judge: Judge, *, most: int = MOST_CHANGES, budget: int = MOST_TRIED) -> Found:
    """The set of at most ``most`` changes that leaves the fewest gaps open, and of those the smallest.

    What counts as a set: its changes can be made one after another so that each closes a gap that is open by
    then, by what is done (``Candidates``), or adds to a muscle with too few sets; every session holds its
    work in the minutes written after each; and in the end no gap is open that was not, and nobody queues.

    Of these sets all are looked at, first one change, then two, then three at a time. Left out is only what
    can't leave fewer gaps than the best so far: one change closes no more gaps of a week than its movement is
    able to, so with r changes to go a set that has n gaps open ends with n less r times the most that any is
    able to. Minutes are known without judging, as each entry of a session takes its own. Only of single
    changes are all judged that close as much; among sets of two and three the one that costs least is that
    of MORE_FOR_LESS tried once no smaller one is possible. With the budget spent the best so far is taken.
    """
    trials = _Trials(judge(week), judge, most, budget)
    size = 0
    while size < most and not trials.spent and not trials.least:
        size += 1
        trials.all_of(size)
    stopped_at = size if trials.spent and not trials.least else None
    return Found(trials.before, trials.best, trials.count, stopped_at)


class _Trials:
    """Judges sets of changes, none twice, and keeps the best."""

    def __init__(self, before: State, judge: Judge, most: int, budget: int) -> None:
        self.before = before
        self.best: Tried | None = None
        self.candidates = Candidates(before, judge.means)
        self._never = self.candidates.never(before, most)
        self._judge, self._budget = judge, budget
        self._states: dict[frozenset[object], State] = {}
        self._minutes: dict[object, float] = {}
        self._settled_at: int | None = None

    @property
    def count(self) -> int:
        """Sets of changes judged."""
        return len(self._states)

    @property
    def spent(self) -> bool:
        """Whether the budget is spent."""
        return self.count >= self._budget

    @property
    def wanted(self) -> int:
        """The most gaps that a set may leave open to be better than the best so far."""
        return (self.best.left if self.best else self.before.gaps).total() - 1

    def all_of(self, size: int) -> None:
        """Looks at every set of that many changes that may close more than the best so far."""
        root = Tried((), self.before, 0, self.before.gaps)
        grown: set[frozenset[object]] = set()
        for one in self._grow(root, size, grown):
            if _closes(self.before, one) and self._better(one) and not self._crowds(one):
                self.best = one
                if size > 1 and self._settled_at is None and self.least:
                    self._settled_at = self.count

    def _better(self, one: Tried) -> bool:
        return self.best is None or self._rank(one) < self._rank(self.best)

    def _crowds(self, one: Tried) -> bool:
        """Whether more people would want one station at a time than the gym has."""
        return self._judge.queues(one.state.week) > self._judge.queues(self.before.week)

    @property
    def least(self) -> bool:
        """Whether nothing stays open but what no changes close."""
        return self.wanted < self._never

    @property
    def _done(self) -> bool:
        enough = self._settled_at is not None and self.count >= self._settled_at + MORE_FOR_LESS
        return self.spent or enough

    def _grow(self, parent: Tried, more: int, grown: set[frozenset[object]]) -> Iterator[Tried]:
        """The sets that have ``more`` changes than a smaller one."""
        children = self._with_one_more(parent, more)
        if more == 1:
            yield from children
            return
        helpful = [one for one in children if _helps(parent.state, one.state)]
        for one in sorted(helpful, key=self._rank):
            if self._done:
                return
            if _named(one.changes) not in grown:
                grown.add(_named(one.changes))
                yield from self._grow(one, more - 1, grown)

    def _with_one_more(self, parent: Tried, more: int) -> Iterator[Tried]:
        """A smaller set with each change that may still lead to what is wanted, where the minutes hold it."""
        wanted = self.wanted + bool(self.best and self.least)
        if self.candidates.never(parent.state, more) > wanted:
            return
        later = (more - 1) * self.candidates.most(parent.state)
        least = parent.state.gaps.total() - wanted - later
        for change in self.candidates.listed(parent.state, least, more - 1):
            if self._done:
                return
            parts = (*parent.changes, change)
            if _fit(parts) and self._hold(parts):
                state = self._state(parts)
                if not state.others - self.before.others and self._held(state.minutes):
                    usual = parent.usual + (change.movement["key"] in parent.state.proposed)
                    yield Tried(parts, state, usual, self._left(parts, state))

    def _state(self, parts: tuple[Change, ...]) -> State:
        name = _named(parts)
        if name not in self._states:
            self._states[name] = self._judge(changed(self.before.week, parts))
        return self._states[name]

    def _left(self, parts: tuple[Change, ...], state: State) -> Counter[Key]:
        """The gaps open, and those that are closed by nothing but the work that a replacement leaves out."""
        closed = self.before.gaps - state.gaps
        if not closed or all(change.kind != "replace" for change in parts):
            return state.gaps
        kept = self._judge(only_added(self.before.week, parts)).gaps
        about_lines = {one.rule.id for one in self.before.found if one.rule.looks_at == "item"}
        gone = Counter({key: number for key, number in kept.items() if key.rule not in about_lines})
        return state.gaps | (gone & self.before.gaps)

    def _hold(self, parts: tuple[Change, ...]) -> bool:
        """Whether the sessions hold their work, by what each change adds; True where that is not known."""
        entries = [(part.spot.session, part.spot.entry) for part in parts if part.kind != "add"]
        if len({*entries}) < len(entries):
            return True
        added = [0.0] * len(self.before.minutes)
        for part in parts:
            added[part.spot.session] += self._takes(part)
        return self._held(then + more for then, more in zip(self.before.minutes, added, strict=True))

    def _takes(self, change: Change) -> float:
        """Minutes that a change adds to its session."""
        name, at = _name(change), change.spot.session
        if name not in self._minutes:
            session = changed(self.before.week, (change,)).sessions[at]
            self._minutes[name] = session_minutes(session) - self.before.minutes[at]
        return self._minutes[name]

    def _held(self, minutes: Iterable[float]) -> bool:
        return all(
            session.minutes is None or now <= max(session.minutes + A_MINUTE, then)
            for session, then, now in zip(
                self.before.week.sessions, self.before.minutes, minutes, strict=True
            )
        )

    def _rank(self, one: Tried) -> tuple[float, ...]:
        """The better comes first: fewer gaps open, fewer changes, less lost, less advice, the usual cure."""
        after, before = one.state, self.before
        return (
            one.left.total(),
            len(one.changes),
            len(lost(before.coverage, after.coverage)),
            after.advice.total(),
            -one.usual,
            sum(_KINDS[change.kind] for change in one.changes),
            round(sum(after.minutes) - sum(before.minutes)),
        )


def _fit(parts: tuple[Change, ...]) -> bool:
    """Whether changes go together, each at a spot of its own and no movement twice in a session."""
    spots = {(part.movement["key"] if part.kind == "add" else None, part.spot) for part in parts}
    added = {(part.spot.session, part.movement["key"]) for part in parts}
    return len(spots) == len(added) == len(parts)


def _named(parts: tuple[Change, ...]) -> frozenset[object]:
    return frozenset(map(_name, parts))


def _name(change: Change) -> object:
    return change.kind, change.spot, change.movement["key"]


def _closes(before: State, one: Tried) -> bool:
    """Whether a set closes a gap and opens none."""
    return bool(before.gaps - one.left) and not one.state.gaps - before.gaps


def _helps(before: State, after: State) -> bool:
    """Whether a gap is closed, or a muscle with too few sets has more."""
    if before.gaps - after.gaps:
        return True
    old, new = before.coverage.muscles, after.coverage.muscles
    return any(
        group in new and (group not in old or new[group].high > old[group].high) for group in before.short
    )
