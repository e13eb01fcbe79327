"""What a squad, gym or record file was found to hold, in one sentence for ``check``."""

from setwright.model.people import Squad
from setwright.model.reader.alone import FileRead
from setwright.model.record import Record
from setwright.reading.words import plural


def what_was_read(read: FileRead) -> str:
    """What the file holds, and whether something is to be mended: "3 athletes read, nothing to mend"."""
    if read.held is None:
        return f"nothing of this {read.kind} could be read"
    return f"{_held(read)} read, {'what to mend stands below' if read.findings else 'nothing to mend'}"


def _held(read: FileRead) -> str:
    held = read.held
    if isinstance(held, Squad):
        return plural(len(held.athletes), "athlete")
    if isinstance(held, Record):
        lines = sum(len(athlete.lines) for athlete in held.athletes)
        return f"{plural(lines, 'line')} of {plural(len(held.athletes), 'athlete')}"
    return "the gym"
