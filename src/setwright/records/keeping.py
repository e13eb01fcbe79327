"""Keeping a form: find its plan, hold it against it, and name the record that it becomes."""

import re
import unicodedata
from collections.abc import Iterable, Iterator
from functools import partial
from pathlib import Path
from typing import NamedTuple

from setwright.files import CannotRun, plans_in, read_beside, read_text
from setwright.findings import Finding, Level, in_order
from setwright.library.names import fold
from setwright.library.table import Library
from setwright.model.plan import Week
from setwright.model.reader.record import RecordRead, read_record
from setwright.model.record import Record
from setwright.own.plan import read_plan
from setwright.places import Source
from setwright.reading.gathering import Gathering
from setwright.reading.kept_rules import CORRECTS
from setwright.reading.measures import Unit
from setwright.reading.nearest import nearest
from setwright.reading.nodes import Pairs, Scalar
from setwright.reading.tree import read_tree
from setwright.records.fitting import Fitted, fitted
from setwright.records.form import called
from setwright.records.paper import as_yaml, sheet_of
from setwright.records.store import FOLDER, Kept, kept_named, latest


class Plan(NamedTuple):
    """A plan that was read for its records: its file, its weeks, and the library of its names."""

    file: Path
    weeks: tuple[Week, ...]
    table: Library

    @property
    def folder(self) -> Path:
        """Where its records are kept."""
        return self.file.parent / FOLDER


class Held(NamedTuple):
    """A form held against its plan. ``kept`` None: it can't be kept as it is, and the findings say why."""

    record: Record | None
    fitted: Fitted | None
    findings: tuple[Finding, ...]
    sources: dict[str, Source]
    kept: Kept | None
    text: str


def read_form(file: Path, text: str, unit: Unit | None = None) -> RecordRead:
    """The record in a form, YAML or a table; ``unit``: the plan's."""
    if _is_table(file):
        from setwright.records.table import read_table  # noqa: PLC0415 - only a table needs it

        return read_table(str(file), text, unit)
    return read_record(str(file), text, unit)


def _is_table(file: Path) -> bool:
    return file.suffix.casefold() in (".csv", ".tsv")


def plan_of(file: Path) -> Plan:
    """A plan with its names looked up. Raises: CannotRun when nothing in it can be read."""
    return plan_in(file, read_text(file))


def plan_in(file: Path, text: str) -> Plan:
    """The same of a text that stands in a file, or is to. Raises: CannotRun as there."""
    read, table = read_plan(str(file), text, partial(read_beside, file))
    if not read.weeks:
        raise CannotRun(f"{file} can't be read as a plan; `setwright check {file}` says why")
    return Plan(file, read.weeks, table)


def plans_of(named: Path) -> list[Path]:
    """The plan named, or those of a folder. Raises: CannotRun when there is none."""
    files = plans_in(named)
    found = [file for file in files if file == named or any(_titles(file))]
    if not found:
        raise CannotRun(f"there is no plan in {named}")
    return found


def plan_called(name: str, form: Path) -> Path:
    """The file of the plan of that name, in the folder of a form or in the one above.

    Raises: CannotRun when none or several are called so.
    """
    folders = dict.fromkeys((form.parent, form.resolve().parent.parent))
    plans = [(file, title) for folder in folders for file in plans_in(folder) for title in _titles(file)]
    found = [file for file, title in plans if fold(title) == fold(name)]
    near = nearest(name, [title for _, title in plans])
    if not found:
        like = f'; the nearest is "{near[0]}"' if near else ""
        raise CannotRun(
            f'no plan beside {form} is called "{name}"{like}: mend `record:`, or name it with --plan FILE'
        )
    if len({file.resolve() for file in found}) > 1:
        files = " and ".join(map(str, found))
        raise CannotRun(f'{files} are both called "{name}": name the one that is meant with --plan FILE')
    return found[0]


def _titles(file: Path) -> Iterator[str]:
    """The name of the plan in a file, if it is one that can be read."""
    text = read_beside(file, file.name) or ""
    root = read_tree(str(file), text).root if "plan" in text else None
    pairs = root.pairs if isinstance(root, Pairs) else ()
    yield from (value.text for key, value in pairs if key.text == "plan" and isinstance(value, Scalar))


def hold(file: Path, text: str, plan: Plan) -> Held:
    """The form read again with the plan's unit, held against the plan, and the record that it becomes."""
    read = read_form(file, text, plan.weeks[0].unit)
    found = Gathering()
    fit = fitted(read.record, plan.weeks, plan.table, found) if read.record else None
    kept = _kept(fit, latest(plan.folder), found) if fit else None
    findings = tuple(in_order((*read.findings, *found.findings)))
    faulty = any(one.level is Level.error for one in findings)
    typed = as_yaml(sheet_of(read.record)) if read.record and _is_table(file) else text
    return Held(read.record, fit, findings, read.sources, None if faulty else kept, _ended(typed))


def _ended(text: str) -> str:
    """The text with the line ends of Unix, the last line too."""
    return "\n".join(text.removeprefix("\ufeff").splitlines()) + "\n"


def _kept(fit: Fitted, there: Iterable[Kept], found: Gathering) -> Kept | None:
    """The record that a form becomes: the first of its session and date, or a correction."""
    record = fit.record
    if record.corrects is None:
        return Kept(f"{record.date}-{slug(called(fit.week, fit.session))}", 1) if record.date else None
    named = kept_named(record.corrects.strip())
    last = next((one for one in there if named and one.session == named.session), None)
    if named is None or last is None or last.number < named.number:
        names = [one.name for one in there]
        near = nearest(record.corrects, names) or names[-1:]
        change = f"write `corrects: {near[0]}`" if near else "take `corrects` out: nothing is kept yet"
        found.say(CORRECTS, record.place, f"{record.corrects} is no kept record", change)
        return None
    return named.correction()


def slug(title: str) -> str:
    """A title as part of a file name: letters and digits without accents, small, joined by hyphens.

    >>> slug("Press day, école")
    'press-day-ecole'
    """
    plain = unicodedata.normalize("NFKD", title.casefold()).encode("ascii", "ignore").decode()
    return "-".join(re.findall("[a-z0-9]+", plain)) or "session"
