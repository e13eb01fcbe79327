"""The report for everybody: of the whole crew without a name, or of one athlete for them and their parents.

Nothing private stands in it: no limit, no reason, no remark, no body mass, no effort, nobody beside another.
"""

from collections.abc import Iterable, Iterator
from typing import Final

from setwright.library.table import Library
from setwright.model.dates import session_date
from setwright.model.plan import Session
from setwright.model.room import kilograms
from setwright.reading.done_typed import typed_done
from setwright.reading.words import listed, number, plural
from setwright.records.fitting import Fitted, Line
from setwright.records.form import training
from setwright.records.review import LookBack, Review
from setwright.records.told_shapes import Section, came, comes_next, day, loads_of, record_of

SOMETHING: Final = "another movement"
ASK: Final = "Nothing about a single person stands here: ask the coach."


def sections(_: LookBack, review: Review) -> tuple[Section, ...]:
    """Sessions and how many came, what was done, what was changed; nobody is named."""
    week = review.done.week
    every = [(session, record_of(review, session)) for session in week.sessions]
    done = [f"{session.title}: {listed(names)}." for session, fit in every if fit and (names := _done(fit))]
    changed = [line for session, fit in every for line in _changed(review, session, fit)]
    return (
        Section("Who came", tuple(_attended(session, fit, len(training(week))) for session, fit in every)),
        Section("What was done", tuple(done) or ("Nothing is on record.",)),
        Section("What was changed", tuple(changed) or ("Nothing.",)),
        Section("What comes next", (*comes_next(review), ASK)),
    )


def own_sections(found: LookBack, review: Review) -> tuple[Section, ...]:
    """One athlete's week, for them and their parents: ``found`` and ``review`` are of them alone."""
    (one,) = review.athletes
    days = dict.fromkeys(id(fit) for fit, _ in one.lines)
    lines: list[str] = []
    for at in days:
        of_day = [(fit, line) for fit, line in one.lines if id(fit) == at]
        fit = of_day[0][0]
        done = [told for _, line in of_day if (told := _own(line, review.plan.table))]
        lines += [f"{day(fit.session, fit.record.date)}: {'; '.join(done) or 'nothing is written down'}."]
    open_ = [line.name for _, line in one.lines if line.planned and not line.is_done]
    moved = [
        told
        for trend in loads_of(found, review, one.name)
        for told in _moved(trend.movement, trend.unit, [point.kg for point in trend.points])
    ]
    return (
        Section("Came to", (f"{came(one)}.",)),
        Section("What was done", tuple(lines) or ("Nothing is on record.",)),
        Section("Left open", (f"{listed(list(dict.fromkeys(open_)))}.",) if open_ else ("Nothing.",)),
        *((Section("Loads", tuple(moved)),) if moved else ()),
        Section("What comes next", comes_next(review) or ("The week goes on as planned.",)),
    )


def _attended(session: Session, fit: Fitted | None, people: int) -> str:
    if fit is None:
        return f"{session.title}: nothing is on record."
    there = sum(any(line.is_done for line in one.lines) for one in fit.athletes)
    of = f" of {people}" if fit.week.squad else ""
    return f"{day(session, fit.record.date)}: {there}{of} came."


def _done(fit: Fitted) -> list[str]:
    """The lines of the plan that somebody did, as the plan names them."""
    return list(dict.fromkeys(_base(line) for line in _planned(fit) if line.is_done))


def _changed(review: Review, session: Session, fit: Fitted | None) -> Iterator[str]:
    if fit is None:
        return
    meant = session_date(review.done.week, session)
    if meant and fit.record.date and fit.record.date != meant:
        yield f"{session.title} was moved from {meant} to {fit.record.date}."
    done = set(_done(fit))
    nobody = list(dict.fromkeys(_base(line) for line in _planned(fit) if _base(line) not in done))
    if nobody:
        yield f"{session.title}: nothing is on record of {listed(nobody)}."


def _planned(fit: Fitted) -> Iterable[Line]:
    return (line for one in fit.athletes for line in one.lines if line.planned)


def _base(line: Line) -> str:
    assert line.planned is not None
    return line.planned.base.name


def _own(line: Line, table: Library) -> str:
    """What was done of a line, without effort, reason or remark; empty where nothing was.

    A movement that neither plan nor library knows is free text, so it is not named.
    """
    done = line.done.done if line.done else None
    if line.done is None or done is None or not line.is_done:
        return ""
    sets = tuple(one.model_copy(update={"effort": None}) for one in done.sets)
    known = (line.planned and not line.done.instead_of) or table.find(line.name).key
    what = "as planned" if done.kind == "done" else typed_done(done.model_copy(update={"sets": sets}))
    return f"{line.name if known else SOMETHING} {what}"


def _moved(movement: str, unit: str, loads: list[float]) -> Iterator[str]:
    first, last = (number(round(kg / kilograms(1.0, unit), 1)) for kg in (loads[0], loads[-1]))
    records = plural(len(loads), "record")
    yield (
        f"{movement}: {first} {unit} in the first of {records}, {last} {unit} in the last."
        if first != last
        else f"{movement}: {first} {unit} in the first and the last of {records}."
    )
