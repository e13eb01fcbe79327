"""What must hold of every check, whatever was typed."""

import datetime as dt
import json
import signal
from collections.abc import Iterator
from contextlib import contextmanager

from setwright.checked import Checked, check_file
from setwright.files import CannotRun, decode
from setwright.findings import Finding, Level
from setwright.own.plan import read_plan
from setwright.places import Place, Source
from setwright.report.machine import github, json_text, short
from setwright.report.read import alone_text, read_text
from setwright.report.terminal import text
from setwright.sheets import sheet_html
from tests.fuzz.seeds import NAMES, Input

LONGEST_S = 2.0
"""Processor time of one check, in seconds."""
PRINTED = dt.date(2027, 10, 18)
PLAN = NAMES[0]


class TooSlow(Exception):
    """A check that is not over in time."""


def fault(one: Input, *, printed: bool) -> str | None:
    """What is wrong with the check of an input, in one line; None when all holds.

    ``printed``: whether every form of output is made and looked at too.
    """
    try:
        with _in_time():
            checked = _checked(one)
            if checked is None:
                return None
            wrong = next(_wrong_findings(checked), None)
            return wrong or (next(_wrong_output(checked, one), None) if printed else None)
    except Exception as error:  # noqa: BLE001 - any exception at all is the fault that is looked for
        frame = _last_frame(error)
        return f"{type(error).__name__} in {frame}: {error}"


def _checked(one: Input) -> Checked | None:
    """The check, or None when the plan is no text that can be read."""
    try:
        return check_file(PLAN, decode(one.plan, PLAN), _Beside(one))
    except CannotRun as stop:
        if "\n" in str(stop) or not str(stop).startswith(PLAN):
            raise AssertionError(f"not one sentence about the file: {stop}") from stop
        return None


class _Beside:
    """The files beside a plan."""

    def __init__(self, one: Input) -> None:
        self._files = dict(zip(NAMES[1:], one[1:], strict=True))

    def __call__(self, name: str) -> str | None:
        return decode(self._files[name], name) if name in self._files else None


def _wrong_findings(checked: Checked) -> Iterator[str]:
    for finding in checked.findings:
        texts = (finding.message, finding.why, finding.change, finding.source, finding.where)
        if not all(one.strip() for one in texts):
            yield f"{finding.rule} has an empty text"
        source = checked.sources.get(finding.place.file)
        if source is None:
            yield f"{finding.rule} names a file that was not read, {finding.place.file}"
        elif not _inside(finding.place, source):
            yield f"{finding.rule} stands outside the text, {finding.place}"
    if len(set(map(_said, checked.findings))) < len(checked.findings):
        yield "a finding is told twice"


def _said(finding: Finding) -> tuple[object, ...]:
    return finding.rule, finding.place, finding.message, finding.change


def _inside(place: Place, source: Source) -> bool:
    lines = source.text.splitlines() or [""]
    if not 1 <= place.line <= place.end_line <= len(lines):
        return False
    ordered = place.line < place.end_line or place.column <= place.end_column
    return (
        ordered
        and 1 <= place.column <= len(lines[place.line - 1]) + 1
        and (1 <= place.end_column <= len(lines[place.end_line - 1]) + 1)
    )


def _wrong_output(checked: Checked, one: Input) -> Iterator[str]:
    told = {
        "text": text(checked, colour=False),
        "short": short(checked),
        "github": github(checked),
        "read": _read_back(checked, decode(one.plan, PLAN), _Beside(one)),
    }
    yield from (f"{form} could move the cursor" for form, said in told.items() if _moves_the_cursor(said))
    for form in ("short", "github"):
        if told[form].count("\n") != len(checked.findings):
            yield f"{form} is not one line a finding"
    if checked.week and all(finding.level < Level.error for finding in checked.findings):
        for kind in ("session", "week"):
            if not sheet_html(checked.only(1), kind=kind, paper="a4", printed=PRINTED).endswith("</html>\n"):
                yield f"the {kind} sheet is not whole"
    report = json.loads(json_text([checked]))
    if len(report["findings"]) != len(checked.findings):
        yield "the JSON holds another number of findings"


def _read_back(checked: Checked, text: str, beside: "_Beside") -> str:
    if checked.alone is not None:
        return alone_text(checked.alone)
    return read_text(*read_plan(PLAN, text, beside), count=True)


def _moves_the_cursor(said: str) -> bool:
    return any(ord(char) < 32 or 127 <= ord(char) < 160 for char in said.replace("\n", ""))


@contextmanager
def _in_time() -> Iterator[None]:
    """Raise TooSlow in what takes longer than ``LONGEST_S`` of this process's time."""

    def ring(*_: object) -> None:
        raise TooSlow(f"over {LONGEST_S:g} s")

    before = signal.signal(signal.SIGVTALRM, ring)
    signal.setitimer(signal.ITIMER_VIRTUAL, LONGEST_S)
    try:
        yield
    finally:
        signal.setitimer(signal.ITIMER_VIRTUAL, 0)
        signal.signal(signal.SIGVTALRM, before)


def _last_frame(error: BaseException) -> str:
    """Where in the package an exception came from: file and line."""
    frame, place = error.__traceback__, "tests"
    while frame is not None:
        path = frame.tb_frame.f_code.co_filename
        if "setwright" in path:
            place = f"{path.rpartition('/')[2]}:{frame.tb_lineno}"
        frame = frame.tb_next
    return place
