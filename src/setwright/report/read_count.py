"""What each line counts: sets, hard sets and the rule that decided, amounts, seconds; then the sums."""

from collections.abc import Iterable, Iterator
from typing import Final

from setwright.coverage import Coverage, SessionCover, Sets, Work, cover
from setwright.coverage.clock import (
    REP_S,
    REST_S,
    SETUP_S,
    SWAP_S,
    WARM_UP_SET_S,
    entry_seconds,
)
from setwright.coverage.counts import NEVER_HARD, count_items, grouped
from setwright.coverage.shapes import Counts, total
from setwright.library.table import Library
from setwright.model.plan import Group, Item, Session, Week
from setwright.reading import words
from setwright.reading.counting import Counted
from setwright.reading.dose import Dose, SetGroup, SetWork, Span
from setwright.reading.hardness import Hard, decided_by, most_reps, percent_of_max, works_and_times

UNITS: Final = {"s": "s held or moving", "m": "m", "reps": "reps"}
"""Units of a line's work, as the line of its count says them."""

_RULE: Final = Hard()

METHOD: Final = (
    f"""Hard sets: at most {_RULE.rir_at_most:g} repetitions left (RPE {_RULE.rpe_at_least:g} or more) or to
    failure; without an effort by the percent (NSCA training load chart, handbook table after Baechle &
    Earle), else counted; by the clock, by distance, ladders and totals from 0 up. Warm-up sets, carries,
    jumps, throws, explosive lifts and locomotion never count (common practice, no source).""",
    f"""Minutes: a repetition {REP_S:g} s unless a tempo is written, rest {REST_S:g} s and a change inside a
    group {SWAP_S:g} s where none is written, setting up a line or group {SETUP_S:g} s, a warm-up set with its
    rest {WARM_UP_SET_S:g} s; cool-downs are not in it (common practice, no source).""",
)
"""How hard sets and minutes are counted, one paragraph each."""


class Tally:
    """The counts of a week, asked line by line; every answer is one or more sentences without a line end."""

    def __init__(self, week: Week, table: Library) -> None:
        self._table = table
        self._coverage = cover(week, table)
        self._counts: Counts = {
            place: counted
            for session in week.sessions
            for place, counted in count_items(session, table).items()
        }

    def item(self, item: Item, group: Group | None = None) -> str:
        """What a line of work counts, over all rounds of its group."""
        counted = self._counts.get(item.place)
        if item.key is None:
            return "not counted: the movement is not known"
        if counted is None and not (group and group.each_s):
            return "not counted: it has no dose that could be read"
        sets, hard = grouped(counted, group)
        pattern = self._table.movement(item.key)["pattern"]
        told = [f"{_sets(sets)}, {_hard(hard)}: {_why(item.dose, group, pattern)}"]
        if counted is not None:
            told += [*_amounts(counted, group), *_apart(item, counted)]
            told += [] if group else _seconds(item, counted)
        return "; ".join([*told, *_warm_up(item)])

    def group(self, group: Group) -> str:
        """How a group runs, and how long."""
        return f"{_rounds(group)}; {_clock(entry_seconds(group, self._counts))} with the rests between rounds"

    def session(self, session: Session) -> str:
        """The sums of a session."""
        one = next(one for one in self._coverage.sessions if one.session is session)
        return f"The session: {_sum(one.works)}; {one.minutes:.1f} minutes"

    def week(self) -> Iterator[str]:
        """The sums of the week, and how they were counted."""
        coverage = self._coverage
        yield f"{_sum(coverage.works)}; {_minutes(coverage.sessions)}"
        unsaid = coverage.effort_not_stated
        yield f"hard sets without a written effort: {'none' if unsaid == Sets() else unsaid}"
        yield f"pushes {coverage.push}, pulls {coverage.pull} hard sets"
        muscles = ", ".join(f"{group} {sets}" for group, sets in coverage.muscles.items())
        if muscles:
            yield f"hard sets a muscle, helpers half (pelland2024, abstract): {muscles}"
        yield from _uneven(coverage, self._counts)
        yield from (" ".join(said.split()) for said in METHOD)


def _sum(done: Iterable[Work]) -> str:
    works = tuple(done)
    return f"{_sets(total(work.sets for work in works))}, {_hard(total(work.hard for work in works))}"


def _sets(sets: Sets) -> str:
    return f"{sets} set{'' if sets.low == sets.high == 1 else 's'}"


def _hard(sets: Sets) -> str:
    """Hard sets; a span keeps both its ends."""
    return "none hard" if sets == Sets() else f"{sets} hard"


def _why(dose: Dose | None, group: Group | None, pattern: str) -> str:
    """The rule that decided how many sets are hard."""
    if pattern in NEVER_HARD:
        return f"a movement of this kind ({pattern}) never counts"
    decided = [
        _decided(work, one) for one in (dose.groups if dose else ()) for work, _ in works_and_times(one)
    ]
    if group and (group.each_s or group.time_s or group.every_s or group.ladder):
        rounds = "no effort written, and rounds by the clock or by rungs may be easy"
        decided = [rounds if said in (_NOTHING, _CLOCK) else said for said in decided] or [rounds]
    return ", ".join(dict.fromkeys(decided)) or "only warm-up sets"


_NOTHING: Final = "effort not stated, so counted"
_CLOCK: Final = "no effort written, and such sets may be easy"


def _decided(work: SetWork, group: SetGroup) -> str:
    match decided_by(work, group):
        case "effort" if work.effort is not None:
            return f"effort written ({words.effort(work.effort)})"
        case "limit":
            return "as many as possible"
        case "clock":
            return _CLOCK
        case "percent" if work.load is not None:
            most, exact = most_reps(percent_of_max(work.load, _RULE))
            many = f"about {round(most, 1):g}" if exact else f"{most:.0f} or more"
            return f"{words.number(work.load.low or 0)} % allows {many} repetitions by the handbook table"
        case _:
            rising = work.load is not None and work.load.rising
            return "only the last set is sure to be hard" if rising else _NOTHING


def _amounts(counted: Counted, group: Group | None) -> Iterator[str]:
    """Repetitions, seconds or metres, over all rounds."""
    side = " a side" if counted.per_side else ""
    for unit, span in counted.amounts.items():
        word = "reps" if unit == "rung" else UNITS.get(unit, unit)
        yield f"{words.span(_in_rounds(span, unit, group))} {word}{side}"


def _in_rounds(span: Span, unit: str, group: Group | None) -> Span:
    """The amount of one round over all of them; a rung is as many repetitions as its number says."""
    if group is None:
        return span
    times = (sum(group.ladder) if unit == "rung" else len(group.ladder)) or group.rounds or 1
    is_open = span.high is None or group.time_s is not None
    return Span(low=span.low * times, high=None if is_open else (span.high or 0) * times)


def _apart(item: Item, counted: Counted) -> Iterator[str]:
    """What is never added to the rest: unequal sides, helped and partial repetitions."""
    if counted.left is not None and counted.right is not None:
        yield f"left {words.span(counted.left)}, right {words.span(counted.right)} sets"
    if counted.extras and item.dose is not None:
        kinds = dict.fromkeys(
            work.extra.kind for group in item.dose.groups for work in group.works if work.extra is not None
        )
        yield f"{counted.extras} {' or '.join(kinds)} repetitions apart"


def _seconds(item: Item, counted: Counted) -> list[str]:
    """Seconds of work, of pauses inside sets, of rest between them."""
    groups = item.dose.groups if item.dose else ()
    if groups and all(group.every_s is not None for group in groups):
        return [f"{words.number(counted.work_s)} s of work and rest together"]
    told = [f"{words.number(counted.work_s)} s of work"]
    if counted.pause_s:
        told.append(f"{words.number(counted.pause_s)} s of pauses inside sets")
    if counted.sets.high is None:
        told.append("breaks as they come")
    elif not counted.rest_known:
        taken = words.number((counted.sets.low - 1) * REST_S)
        written = any(group.rest is not None for group in groups)
        told.append(f"rest {'without a number' if written else 'not written'}, {taken} s taken")
    elif counted.rest_s:
        told.append(f"{words.number(counted.rest_s)} s of rest")
    return [", ".join(told)]


def _warm_up(item: Item) -> Iterator[str]:
    warm_up = item.warm_up_sets
    sets = (warm_up.count or sum(step.sets for step in warm_up.steps)) if warm_up else 0
    if sets:
        yield f"{words.plural(sets, 'warm-up set')} never counted"


def _rounds(group: Group) -> str:
    moves = words.plural(len(group.items), "move")
    if group.time_s is not None:
        return f"as many rounds of {moves} as fit"
    if group.ladder:
        rungs = words.plural(len(group.ladder), "rung")
        return f"{rungs} x {moves}; a rung comes to {sum(group.ladder)} repetitions"
    if group.rounds is not None:
        return f"{words.plural(group.rounds, 'round')} x {moves}"
    return f"{moves} in turn"


def _clock(seconds: float) -> str:
    """A time with its seconds: "10:12 (612 s)"."""
    minutes, rest = divmod(round(seconds), 60)
    return f"{minutes}:{rest:02d} ({seconds:.0f} s)"


def _minutes(sessions: Iterable[SessionCover]) -> str:
    each = [round(one.minutes, 1) for one in sessions]
    parts = f" ({' + '.join(f'{one:g}' for one in each)})" if len(each) > 1 else ""
    return f"{sum(each):.1f} minutes{parts}"


def _uneven(coverage: Coverage, counts: Counts) -> Iterator[str]:
    """Lines of the week that work one side more than the other."""
    for work in coverage.works:
        counted = counts.get(work.item.place)
        if counted is not None and counted.left is not None and counted.right is not None:
            left, right = words.span(counted.left), words.span(counted.right)
            yield f"one side more than the other: {work.name}, left {left}, right {right} sets"
