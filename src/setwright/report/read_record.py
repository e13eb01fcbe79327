"""A record said back: for each athlete what was done, what was not, and what nobody wrote down."""

from collections.abc import Iterator

from setwright.library.table import library
from setwright.model.record import AthleteDone, LineDone, Record
from setwright.reading.done import Done
from setwright.reading.done_typed import typed_done
from setwright.reading.words import plural

STATES = {"done": "done as the plan says", "not done": "not done", "not written": "not written"}


def record_blocks(record: Record) -> Iterator[tuple[str, list[str]]]:
    """Heads with their lines: the record itself, then each athlete."""
    yield f"Record of {record.plan}", list(_top(record))
    for athlete in record.athletes:
        yield athlete.name, list(_athlete(athlete)) or ["nothing written"]


def _top(record: Record) -> Iterator[str]:
    for word, value in (("week", record.week), ("session", record.session), ("date", record.date)):
        yield f"{word}: {'not written' if value is None else value}"
    yield f"loads without a unit: {record.unit or 'in the unit of the plan'}"
    if record.corrects:
        yield f"takes the place of {record.corrects}"
    if record.note:
        yield f"note: {record.note}"
    if record.private_note:
        yield f"private note, never printed: {record.private_note}"


def _athlete(athlete: AthleteDone) -> Iterator[str]:
    yield from map(_line, athlete.lines)
    yield from (f"note: {note}" for note in athlete.notes)
    yield from (f"private note, never printed: {note}" for note in athlete.private_notes)


def _line(line: LineDone) -> str:
    told = [f"{line.name}: {'could not be read' if line.done is None else _done(line.done)}"]
    told += [f"instead of {line.instead_of}"] if line.instead_of else []
    told += [] if _is_known(line.name) else ["not in the library, kept as typed"]
    told += line.done.notes if line.done else ()
    told += [f"note: {line.note}"] if line.note else []
    told += [f"private note, never printed: {line.private_note}"] if line.private_note else []
    return "; ".join(told)


def _is_known(name: str) -> bool:
    """Whether the library has the movement, or asks which of several it is."""
    match = library().find(name)
    return match.key is not None or bool(match.ask)


def _done(done: Done) -> str:
    if done.kind != "sets":
        return f"{STATES[done.kind]}{f', {done.reason}' if done.reason else ''}"
    return f"{plural(len(done.sets), 'set')}{_repetitions(done)}: {typed_done(done)}"


def _repetitions(done: Done) -> str:
    """The repetitions of all sets together, where every set counts them."""
    if any(one.amount.unit != "reps" for one in done.sets):
        return ""
    a_side = " a side" if {one.sides.kind if one.sides else "" for one in done.sets} == {"each"} else ""
    return f", {plural(sum(one.amount.span.low for one in done.sets), 'repetition')}{a_side}"
