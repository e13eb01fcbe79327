"""What an athlete really did as a week of its own, so that it is counted like a plan."""

from collections.abc import Iterable, Iterator

from setwright.library.table import Library
from setwright.model.people import Athlete
from setwright.model.plan import Item, Session, Week
from setwright.reading.done import SetDone
from setwright.reading.dose import Dose, Effort, SetGroup, SetWork, Sides, Span
from setwright.records.fitting import Athletes, Fitted, Line
from setwright.records.outcome import by_sides
from setwright.records.planned import Planned, planned


def week_of_done(week: Week, records: Iterable[Fitted], name: str, table: Library) -> Week:
    """The week with the sessions that were recorded of somebody, and in them what was done.

    A set of no repetitions is none. An effort that nobody wrote down is the planned one.
    """
    sessions = []
    for fit in records:
        theirs = [one for one in fit.athletes if one.is_called(name)]
        work = tuple(item for one in theirs for item in _items(one, table))
        if work:
            sessions.append(fit.session.model_copy(update={"work": work}))
    return week.model_copy(update={"sessions": tuple(sessions), "held_back": ()})


def week_planned(week: Week, athlete: Athlete | None) -> Week:
    """The week as it is meant for an athlete: their lines, their movements."""
    sessions = (_planned(week, session, athlete) for session in week.sessions)
    return week.model_copy(update={"sessions": tuple(one for one in sessions if one.work), "held_back": ()})


def _planned(week: Week, session: Session, athlete: Athlete | None) -> Session:
    work = tuple(_whole(at) for at in planned(week, session, athlete) if at.line.dose is not None)
    return session.model_copy(update={"work": work})


def _items(one: Athletes, table: Library) -> Iterator[Item]:
    for line in one.lines:
        item = item_done(line, table)
        if item is not None:
            yield item


def item_done(line: Line, table: Library, *, tried: bool = False) -> Item | None:
    """The line as a dose that was done; None where nothing was, or of a movement that nobody knows.

    ``tried`` True: a set of no repetitions is one too.
    """
    done = line.done
    if done is None or done.done is None or done.done.kind in ("not done", "not written"):
        return None
    if done.done.kind == "done":
        return _whole(line.planned) if line.planned and line.planned.line.dose else None
    effort = line.planned.effort if line.planned else None
    works = tuple(_work(one, effort) for one in done.done.sets if tried or one.amount.span.high)
    key = line.planned.line.key if line.planned and not done.instead_of else table.find(done.name).key
    if not works or key is None:
        return None
    count = len(works) / (2 if by_sides(done.done.sets) else 1)
    group = SetGroup(
        kind="list" if len(works) == count else "straight",
        sets=Span(low=count, high=count),
        works=works,
        sides=_side(done.done.sets),
    )
    dose = Dose(groups=(group,), text=done.done.text, place=done.place)
    return Item(name=done.name, place=done.place, key=key, dose=dose)


def _side(sets: tuple[SetDone, ...]) -> Sides | None:
    """The one side that every set was for; None where it is not one."""
    sides = {one.sides for one in sets}
    only = sides.pop() if len(sides) == 1 else None
    return only if only and only.kind in ("left", "right") else None


def _work(one: SetDone, effort: Effort | None) -> SetWork:
    return SetWork(amount=one.amount, load=one.load, effort=one.effort or effort, extra=one.extra)


def _whole(at: Planned) -> Item:
    """A planned line with the sets of all rounds of its group, out of the group."""
    dose = at.line.dose
    assert dose is not None
    groups = tuple(group.model_copy(update={"sets": _times(group.sets, at.rounds)}) for group in at.sets)
    return at.line.model_copy(update={"dose": dose.model_copy(update={"groups": groups})})


def _times(sets: Span, rounds: int) -> Span:
    return Span(low=sets.low * rounds, high=None if sets.high is None else sets.high * rounds)
