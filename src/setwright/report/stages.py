"""Stages in words: what was written of each, and whose sessions are left out."""

from collections.abc import Iterator

from setwright.model.plan import Session, Week
from setwright.model.stages import Stage, current


def stage_lines(week: Week) -> Iterator[str]:
    """Each stage said back, one a line."""
    for stage in week.stages:
        yield f"stage {stage.name}: {'; '.join(_written(stage))}"


def left_out(week: Week) -> Iterator[str]:
    """One sentence a stage that has sessions and is not in force."""
    for stage in week.stages:
        number = sum(_of(session, stage) for session in week.held_back)
        if number:
            sessions = "its session is" if number == 1 else f"its {number} sessions are"
            yield f"stage {stage.name}: {_why(week, stage)}, {sessions} left out"


def stage_of(session: Session, week: Week) -> str | None:
    """The stage of a session and whether it is in force, in words; None for a session without."""
    if session.stage is None:
        return None
    if session not in week.held_back:
        return f"stage {session.stage.text}, in force"
    why = next((_why(week, stage) for stage in week.stages if _of(session, stage)), "no stage of the plan")
    return f"stage {session.stage.text}, not in force: {why}"


def _of(session: Session, stage: Stage) -> bool:
    return session.stage is not None and stage.is_called(session.stage.text)


def _why(week: Week, stage: Stage) -> str:
    """Why a stage is not the current one."""
    if stage.signed_off is None:
        return "not signed off"
    now = current(week.stages, week.number)
    if now is None or not stage.is_open(week.number):
        return f"signed off, but not before week {stage.earliest}"
    return f"over since the later stage {now.name} is signed off"


def _written(stage: Stage) -> Iterator[str]:
    if stage.earliest:
        yield f"not before week {stage.earliest}"
    if stage.latest:
        yield f"by week {stage.latest} at the latest, which opens and closes nothing"
    yield from (f"enter when: {one}" for one in stage.enter_when)
    signed = stage.signed_off
    yield f"signed off by {signed.who} on {signed.on.isoformat()}" if signed else "not signed off"
    if stage.stop:
        yield f"stop: {stage.stop}"
    if stage.note:
        yield f"note: {stage.note}"
    if stage.private_note:
        yield f"private note, never printed: {stage.private_note}"
