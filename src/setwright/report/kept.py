"""What is said of a form that is to be kept: what to mend in it, where it went, what nobody wrote down."""

from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path

from setwright.checked import Checked
from setwright.findings import Finding
from setwright.model.reader.alone import FileRead
from setwright.model.record import Record
from setwright.places import Source
from setwright.reading.words import plural
from setwright.records.fitting import Fitted
from setwright.records.form import training
from setwright.records.store import Kept, latest, same
from setwright.report.terminal import text
from setwright.report.wrapping import wrapped


def held_text(
    file: str, record: Record | None, findings: Sequence[Finding], sources: Mapping[str, Source]
) -> str:
    """The findings about a form, as ``check`` prints them, with a line end."""
    read = FileRead("record", record, tuple(findings), dict(sources))
    checked = Checked(file, (), tuple(findings), (), sources, complete=read.complete, alone=read)
    return text(checked, colour=False)


def kept_text(path: Path, fit: Fitted) -> str:
    """Where a record went, and what nobody wrote down, with a line end."""
    written = sum(line.is_written for one in fit.athletes for line in one.lines)
    lines = [f"{path}  (kept; {plural(written, 'line')} of {plural(len(fit.athletes), 'athlete')})"]
    if unwritten := "; ".join(_not_written(fit)):
        lines.append(wrapped(f"not written: {unwritten}", rest="  "))
    return "\n".join(lines) + "\n"


def _not_written(fit: Fitted) -> Iterator[str]:
    """Lines that nobody wrote down, with whose they are; whoever has none that was, only by name."""
    theirs: dict[str, list[str]] = {}
    for one in fit.athletes:
        empty = [line.name for line in one.lines if not line.is_written]
        if empty:
            theirs.setdefault("" if len(empty) == len(one.lines) else ", ".join(empty), []).append(one.name)
    named = {one.athlete.name for one in fit.athletes if one.athlete}
    nobody = theirs.pop("", []) + [one.name for one in training(fit.week) if one and one.name not in named]
    yield from (f"{lines} ({', '.join(names)})" for lines, names in theirs.items())
    if nobody:
        yield f"anything of {', '.join(nobody)}"


def already(kept: Kept, folder: Path, typed: str, form: Path) -> tuple[str, bool]:
    """What to say when a record of that name is kept, and whether it is the very same one."""
    if same(folder / kept.name, typed):
        return f"{folder / kept.name}  (kept already, the same)", True
    last = next((one for one in latest(folder) if one.session == kept.session), kept)
    told = (
        f"{folder / kept.name} is kept already and says something else;"
        f" to correct it write `corrects: {last.name}` at the top of {form} and keep it again"
    )
    return told, False
