"""Findings: what is wrong or missing, where, why, what to change, and on whose word."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from enum import IntEnum
from typing import NamedTuple

from setwright.places import Place


class Level(IntEnum):
    """How bad a finding is; higher is worse, and the names are what the coach reads.

    ``advice``: worth a look. ``gap``: the plan leaves something out. ``error``: the plan can't be
    carried out as written.
    """

    advice = 1
    gap = 2
    error = 3


class Seen(NamedTuple):
    """One thing that was looked at before the finding was raised, with the line it stands on."""

    text: str
    line: int | None = None


@dataclass(frozen=True, slots=True)
class Finding:
    """One fault: plain data, printed by the writers in ``report``.

    ``where`` is a word for people ("Monday", "the week"); ``why``, ``change`` and ``source`` are
    never empty. ``also`` holds sentences of findings that this one covers. ``to_others``: what may be said of
    an athlete's own affair where others read it; empty when nothing in the finding is private. ``weeks``:
    those of a plan of several weeks in which it holds; empty where it does not depend on the week. ``who``:
    the athlete it is about, where it is about one. ``about``: what is at fault where it is one fault in every
    week, however much of it and wherever it stands; no writer prints it.

    Raises: ValueError when a text that must not be empty is.
    """

    rule: str
    level: Level
    place: Place
    where: str
    message: str
    why: str
    change: str
    source: str
    seen: tuple[Seen, ...] = ()
    also: tuple[str, ...] = ()
    to_others: str = ""
    weeks: tuple[int, ...] = ()
    who: str = ""
    about: str = ""

    def for_others(self) -> "Finding":
        """The finding as others may read it: without what belongs to one athlete and the coach."""
        if not self.to_others:
            return self
        return replace(
            self,
            where="the squad",
            message=self.to_others,
            why="it is between the athlete, whoever set the limit, and the coach",
            change="run the check on the coach's own screen: it names the athlete and the line",
            seen=(),
            also=(),
            who="",
        )

    def __post_init__(self) -> None:
        for name in ("rule", "where", "message", "why", "change", "source"):
            if not getattr(self, name).strip():
                raise ValueError(f"a finding of {self.rule!r} has no {name}")


def in_order(findings: Iterable[Finding]) -> list[Finding]:
    """Findings sorted by file, line, column and rule, so that the same input prints the same bytes."""
    return sorted(findings, key=lambda f: (f.place.file, f.place.line, f.place.column, f.rule, f.message))


def has_errors(findings: Iterable[Finding]) -> bool:
    """Whether something in a file can't be carried out as written."""
    return any(finding.level is Level.error for finding in findings)


def exit_status(findings: Iterable[Finding], fail_on: Level = Level.gap) -> int:
    """0 when nothing reaches ``fail_on``, else 1 (2, "could not run", is the command line's)."""
    return int(any(f.level >= fail_on for f in findings))
