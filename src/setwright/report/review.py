"""A week looked back at: who came, planned against done, and what it added up to."""

from collections.abc import Iterable, Iterator

from setwright.coverage import Coverage
from setwright.library.table import MODEL_NOTE
from setwright.model.people import Athlete
from setwright.model.plan import Week
from setwright.reading.done_typed import typed_done
from setwright.reading.words import plural
from setwright.records.fitting import Line
from setwright.records.planned import in_short
from setwright.records.review import LookBack, Review, Reviewed, effort_off
from setwright.records.trend import Trend
from setwright.report.adds_up import matrix_lines
from setwright.report.trend import HOW_ESTIMATED, trends_text
from setwright.report.wrapping import plain, wrapped
from setwright.rules.aims import aim_in_force
from setwright.rules.matrix import Cell, matrix


def look_back_text(found: LookBack) -> str:
    """Every week, then how often each athlete came and how their loads went, with a line end."""
    blocks = [review_text(week) for week in found.weeks]
    charts = [trends_text(name, trends) for name, trends in found.loads]
    if len(found.weeks) > 1:
        blocks.append("".join(_came(found, name) for name in found.names))
    blocks += filter(None, charts)
    blocks += [f"{wrapped(HOW_ESTIMATED)}\n"] if any(_estimated(trends) for _, trends in found.loads) else []
    blocks += [f"{wrapped(MODEL_NOTE)}\n"] if any(_has_chest(one) for one in _reviewed(found)) else []
    return "\n".join(blocks)


def _reviewed(found: LookBack) -> Iterator[Reviewed]:
    return (one for week in found.weeks for one in week.athletes)


def _estimated(trends: Iterable[Trend]) -> bool:
    return any(point.estimate for trend in trends for point in trend.points)


def _came(found: LookBack, name: str) -> str:
    came, planned = found.came(name)
    sessions = f"{came} of {plural(planned, 'session')}"
    return f"{wrapped(f'{name}: {sessions} in the {len(found.weeks)} weeks with a record')}\n"


def review_text(found: Review) -> str:
    """One week of a plan, athlete by athlete, with a line end."""
    week = found.done.week
    sessions = len({id(fit.session) for fit in found.done.records})
    head = f"{week.title}: {sessions} of {plural(len(week.sessions), 'session')} recorded"
    blocks = [wrapped(head)]
    if gone := ", ".join(found.done.missed):
        blocks[0] += f"\n{wrapped(f'No record is kept of {gone}.')}"
    noted = [(fit.session.title, fit.record.note) for fit in found.done.records if fit.record.note]
    if noted:
        blocks.append("\n".join(wrapped(f"note on {title}: {note}", rest="  ") for title, note in noted))
    blocks += ["\n".join(_athlete(one, found)) for one in found.athletes]
    return "\n\n".join(blocks) + "\n"


def _athlete(one: Reviewed, found: Review) -> Iterator[str]:
    came = f"{one.came} of {plural(one.planned_sessions, 'session')}"
    yield wrapped(f"{one.name}: {came}")
    title = ""
    for fit, line in one.lines if _is_written(one) else ():
        if fit.session.title != title:
            title = fit.session.title
            yield f"  {plain(title)}{f', {fit.record.date}' if fit.record.date else ''}"
        yield wrapped(_line(line, found.done.week, one.athlete), "    ", "      ")
    yield from (wrapped(f"note: {note}", "  ", "    ") for note in one.notes)
    if _is_written(one):
        yield wrapped(_sums(one.planned, one.achieved), "  ", "    ")
        yield from _covered(one)


def _is_written(one: Reviewed) -> bool:
    return any(line.is_written for _, line in one.lines)


def _has_chest(one: Reviewed) -> bool:
    """Whether something of an athlete is written, and a part of the chest was planned or done."""
    parts = (*one.planned.parts, *one.achieved.parts)
    return _is_written(one) and any(part.sets.high for part in parts)


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
    if off := effort_off(line):
        yield f"{plural(abs(off), 'repetition')} {'easier' if off > 0 else 'harder'} than planned"


def _sums(planned: Coverage, achieved: Coverage) -> str:
    """Push and pull: what was achieved of what was planned."""
    pairs = (("push", achieved.push, planned.push), ("pull", achieved.pull, planned.pull))
    told = ", ".join(f"{name} {done} of {meant}" for name, done, meant in pairs if done.high or meant.high)
    return f"hard sets, done of planned: {told}" if told else "no hard set of a push or a pull was planned"


def _covered(one: Reviewed) -> list[str]:
    """The matrix of what was done, with the sets that were planned; empty where no chest was."""
    if not _has_chest(one):
        return []
    meant = {part.part: part.sets for part in one.planned.parts}
    rows = matrix(one.achieved, aim_in_force(one.planned.week, one.planned), {})
    return matrix_lines(
        [row._replace(sets=Cell(f"{row.sets.text}/{meant[row.part]}", "number")) for row in rows],
        indent="  ",
    )
