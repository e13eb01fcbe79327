"""The report for the coach: each athlete's week, what was changed, what stands out, limits kept or not."""

from collections.abc import Iterator

from setwright.reading.done_typed import typed_done
from setwright.reading.words import listed, number, plural
from setwright.records.limits_kept import limits_kept
from setwright.records.outcome import outcome
from setwright.records.review import LookBack, Review, Reviewed, effort_off
from setwright.records.told_medical import limit_lines
from setwright.records.told_shapes import Section, came, comes_next, day, loads_of


def sections(found: LookBack, review: Review) -> tuple[Section, ...]:
    """What has no record and what was noted of the sessions, then every athlete in the order of the squad."""
    notes = (
        f"{day(fit.session, fit.record.date)}: {fit.record.note}"
        for fit in review.done.records
        if fit.record.note
    )
    heads = (Section("Not on record", comes_next(review)), Section("Notes on the sessions", tuple(notes)))
    athletes = (Section(one.name, tuple(_athlete(found, review, one))) for one in review.athletes)
    return (*(head for head in heads if head.lines), *athletes)


def _athlete(found: LookBack, review: Review, one: Reviewed) -> Iterator[str]:
    yield f"Came to {came(one)}."
    changed = list(_changed(one))
    unwritten = list(
        dict.fromkeys(line.name for _, line in one.lines if line.planned and not line.is_written)
    )
    if any(line.is_written for _, line in one.lines):
        yield f"Changed: {'; '.join(changed)}." if changed else "Changed: nothing."
    if unwritten:
        yield f"Not written down: {listed(unwritten)}."
    if flagged := [*_efforts(one), *_loads(found, review, one)]:
        yield f"Flagged: {'; '.join(flagged)}."
    yield from (f"Note: {note}" for note in one.notes)
    if one.athlete:
        for kept in limits_kept(review.done.records, one.athlete, review.plan.table):
            yield from limit_lines(kept)


def _changed(one: Reviewed) -> Iterator[str]:
    """Lines that were not done as planned, and what nobody planned."""
    for fit, line in one.lines:
        if line.planned is None and line.is_done:
            assert line.done is not None
            assert line.done.done is not None
            yield f"{line.name}, not planned: {typed_done(line.done.done)}"
        elif line.planned and line.is_written and (short := outcome(line, fit.week, one.athlete).short):
            yield f"{line.planned.line.name}: {short}"


def _efforts(one: Reviewed) -> Iterator[str]:
    for _, line in one.lines:
        off = effort_off(line)
        if off < 0:
            yield f"{line.name} was {plural(-off, 'repetition')} harder than planned"


def _loads(found: LookBack, review: Review, one: Reviewed) -> Iterator[str]:
    for trend in loads_of(found, review, one.name):
        if trend.stalled:
            yield f"{trend.movement} is the same or less for {number(trend.stalled)} records"
        if trend.jump:
            yield f"{trend.movement} went up by {trend.jump:.0%} in the last record"
