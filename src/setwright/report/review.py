"""A week looked back at: who came, planned against done, what it added up to, and how loads went."""

from collections.abc import Iterator, Sequence
from typing import Final

from setwright.coverage import PARTS, Coverage
from setwright.model.people import Athlete
from setwright.model.plan import Week
from setwright.reading.done_typed import typed_done
from setwright.reading.dose import Effort
from setwright.reading.words import number, plural
from setwright.records.fitting import Line
from setwright.records.planned import in_short
from setwright.records.review import Point, Review, Reviewed, Trend
from setwright.report.wrapping import WIDTH, plain, wrapped

BAR: Final = 40
"""Columns of the longest bar of a chart (choice)."""
SIGN: Final = "#"
"""What a bar is made of; no colour, and any terminal has it."""


def review_text(found: Review) -> str:
    """One week of a plan, athlete by athlete, with a line end."""
    week = found.done.week
    sessions = len({id(fit.session) for fit in found.done.records})
    head = f"{week.title}: {sessions} of {plural(len(week.sessions), 'session')} recorded"
    blocks = [wrapped(head)]
    if gone := ", ".join(found.done.missed):
        blocks[0] += f"\n{wrapped(f'No record is kept of {gone}.')}"
    blocks += ["\n".join(_athlete(one, found)) for one in found.athletes]
    return "\n\n".join(blocks) + "\n"


def _athlete(one: Reviewed, found: Review) -> Iterator[str]:
    came = f"{one.came} of {plural(one.planned_sessions, 'session')}"
    yield wrapped(f"{one.name}: {came}")
    title = ""
    lines = one.lines if any(line.is_written for _, line in one.lines) else ()
    for fit, line in lines:
        if fit.session.title != title:
            title = fit.session.title
            yield f"  {plain(title)}{f', {fit.record.date}' if fit.record.date else ''}"
        yield wrapped(_line(line, found.done.week, one.athlete), "    ", "      ")
    yield from (wrapped(f"note: {note}", "  ", "    ") for note in one.notes)
    if lines:
        yield wrapped(_sums(one.planned, one.achieved), "  ", "    ")


def _line(line: Line, week: Week, athlete: Athlete | None) -> str:
    """What was done, what was planned, and how far the effort was off."""
    done = line.done.done if line.done else None
    what = "not written" if done is None or done.kind == "not written" else typed_done(done)
    if line.planned is None:
        return f"{line.name}: {what}; not planned"
    plan = in_short(line.planned, week, athlete)
    instead = f" instead of {line.planned.line.name}" if line.done and line.done.instead_of else ""
    return "; ".join([f"{line.name}{instead}: {what}", f"planned {plan or 'without a dose'}", *_effort(line)])


def _effort(line: Line) -> Iterator[str]:
    """How much harder or easier the last set was than planned, in repetitions left."""
    done = line.done.done if line.done else None
    dose = line.planned.line.dose if line.planned else None
    meant = next(
        (work.effort for group in (dose.groups if dose else ()) for work in group.works if work.effort), None
    )
    felt = next((one.effort for one in reversed(done.sets) if one.effort), None) if done else None
    off = _off(meant, felt)
    if off:
        yield f"{plural(abs(off), 'repetition')} {'easier' if off > 0 else 'harder'} than planned"


def _off(meant: Effort | None, felt: Effort | None) -> float:
    """Repetitions in reserve over (easier) or under (harder) the planned span; 0 within it or unknown."""
    wanted, had = (one.rir if one else None for one in (meant, felt))
    if wanted is None or had is None:
        return 0.0
    return min(0.0, had[1] - wanted[0]) or max(0.0, had[0] - wanted[1])


def _sums(planned: Coverage, achieved: Coverage) -> str:
    """What was achieved of what was planned: push, pull, the parts of the chest."""
    pairs = [("push", achieved.push, planned.push), ("pull", achieved.pull, planned.pull)]
    parts = {one.part: one.sets for one in planned.parts}
    pairs += [(part, one.sets, parts[part]) for part in PARTS for one in achieved.parts if one.part == part]
    told = ", ".join(f"{name} {done} of {meant}" for name, done, meant in pairs if done.high or meant.high)
    return (
        f"hard sets, done of planned: {told}"
        if told
        else "no hard set of a push, a pull or the chest was planned"
    )


def trends_text(name: str, trends: Sequence[Trend]) -> str:
    """The loads of one athlete through the records, as a chart a movement, with a line end."""
    blocks = [f"{plain(name)}: the heaviest set of each record"]
    blocks += ["\n".join(_chart(one)) for one in trends]
    return "\n\n".join(blocks) + "\n"


def _chart(trend: Trend) -> Iterator[str]:
    said = [f"the same or less for {trend.stalled} records"] if trend.stalled else []
    said += [f"up by {trend.jump:.0%} in the last one"] if trend.jump else []
    more = " added to the body" if trend.added else ""
    told = f": {', '.join(said)}" if said else ""
    yield wrapped(f"{trend.movement}, kg{more}{told}", "  ", "    ")
    most = max(point.kg for point in trend.points)
    yield from (
        f"    {point.on}  {_figure(point)}  {_bar(point.kg, most)}"[:WIDTH].rstrip() for point in trend.points
    )


def _figure(point: Point) -> str:
    return f"{number(round(point.kg, 1)):>6} x {number(point.reps):<2}"


def _bar(kg: float, most: float) -> str:
    return SIGN * round(BAR * kg / most) if most > 0 else ""
