"""Plans checked again whenever they, or the files they name, are saved."""

import gc
import time
from collections.abc import Callable, Iterable, Mapping, Sequence
from functools import partial
from pathlib import Path
from typing import Final, NamedTuple

from setwright.checked import Checked, check_file
from setwright.files import CannotRun, plans_in, read_beside, read_text, yaml_in
from setwright.reading.words import plural
from setwright.records.last_time import fed
from setwright.report.wrapping import WIDTH, plain

POLL_S: Final = 0.05
"""Seconds between two looks at the files (choice: with the check itself a save is answered in 0.2 s)."""
SETTLE_S: Final = 0.02
"""Seconds that files must stay as they are before they are read: a save may still be going on (choice)."""
GONE_S: Final = 0.5
"""Seconds that a file may be away or empty: editors save by taking the old one away first (choice)."""

Mark = tuple[int, int, int] | None
"""Time, size and number of a file as the file system knows it; None when there is no such file."""

CLEAR: Final = "\033[H\033[2J"
"""Cursor to the top left, screen cleared (ECMA-48: CUP, ED); the cursor is never hidden."""


def watch(
    named: Sequence[Path], say: Callable[[Checked], str], write: Callable[[str], object], *, redraw: bool
) -> None:
    """Check files and folders and ``write`` their reports, again at each save, until Ctrl-C.

    ``say`` makes the report of a checked plan. ``redraw``: clear the screen; else a line sets reports apart.
    """
    gc.enable()
    watched = Watched(named, say)
    before = CLEAR if redraw else f"{'-' * WIDTH}\n"
    try:
        while True:
            report = watched.report()
            write(f"{before}{watched.head()}\n\n{report}")
            watched.wait()
    except KeyboardInterrupt:
        write("\n")


class _Seen(NamedTuple):
    """A plan's report, and the files it came from as they were when they were read."""

    report: str
    marks: Mapping[Path, Mark]


class Watched:
    """Files and folders that are looked at. ``say`` makes the report of a checked plan."""

    def __init__(self, named: Sequence[Path], say: Callable[[Checked], str]) -> None:
        self._named = named
        self._say = say
        self._plans: dict[Path, _Seen] = {}
        self._marks: dict[Path, Mark] = {}

    def report(self) -> str:
        """The reports of all plans; only those with a changed file are checked again."""
        marks = _marks(self._listed())
        before, self._plans = self._plans, {}
        try:
            for plan in (plan for one in self._named for plan in plans_in(one)):
                known = before.get(plan)
                seen = known if known and known.marks == _marks(known.marks) else self._checked(plan)
                self._plans[plan] = seen
                marks |= seen.marks
        except CannotRun as stop:
            return f"{stop}\n"
        finally:
            self._marks = marks
        return "\n".join(seen.report for seen in self._plans.values()) or "There is no plan yet.\n"

    def head(self) -> str:
        """One line: what is watched, when it was checked, how to end."""
        beside = len(self._marks.keys() - self._plans.keys())
        others = f" and {plural(beside, 'file')} beside" if beside else ""
        rest = f"{others}; checked at {time.strftime('%H:%M:%S')}; Ctrl-C ends."
        names = plain(", ".join(map(str, self._named)))
        fits = len(f"Watching {names}{rest}") <= WIDTH
        return f"Watching {names if fits else f'{len(self._plans)} plans'}{rest}"

    def wait(self) -> None:
        """Come back when a file has changed and its save is over."""
        while (now := self._now()) == self._marks:
            time.sleep(POLL_S)
        patience = time.monotonic() + GONE_S
        while True:
            time.sleep(SETTLE_S)
            before, now = now, self._now()
            waiting = self._lost(now) and time.monotonic() < patience
            if now == before and not waiting:
                return

    def _checked(self, plan: Path) -> _Seen:
        marks = _marks([plan])

        def beside(name: str) -> str | None:
            marks.update(_marks([plan.parent / name]))
            return read_beside(plan, name)

        try:
            return _Seen(self._say(check_file(str(plan), read_text(plan), beside, partial(fed, plan))), marks)
        except CannotRun as stop:
            return _Seen(f"{stop}\n", marks)

    def _now(self) -> dict[Path, Mark]:
        return _marks({*self._marks, *self._listed()})

    def _listed(self) -> list[Path]:
        """The files of the folders that are watched."""
        try:
            return [yaml for one in self._named for yaml in yaml_in(one)]
        except CannotRun:
            return []

    def _lost(self, now: Mapping[Path, Mark]) -> bool:
        """Whether a file that was there is away or empty."""
        return any(self._marks.get(path) and not (mark and mark[1]) for path, mark in now.items())


def _marks(paths: Iterable[Path]) -> dict[Path, Mark]:
    return {path: _mark(path) for path in paths}


def _mark(path: Path) -> Mark:
    try:
        found = path.stat()
    except OSError:
        return None
    return found.st_mtime_ns, found.st_size, found.st_ino
