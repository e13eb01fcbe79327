"""Findings gathered while a file is read, each said once and only where no trap has spoken already."""

from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import replace

from setwright.findings import Finding
from setwright.places import Place
from setwright.reading.faults import TextRule

NOWHERE = "the text"


class Gathering:
    """What was found in one or more files so far; ``where`` says of which session, for people."""

    def __init__(self) -> None:
        self._found: list[Finding] = []
        self._known: set[tuple[str, Place, str]] = set()
        self._covers: dict[tuple[str, int], list[Place]] = {}
        self._where = NOWHERE

    @contextmanager
    def of(self, where: str) -> Iterator[None]:
        """Findings added inside belong to ``where``, unless they say otherwise."""
        outer, self._where = self._where, where
        yield
        self._where = outer

    def aside(self) -> "Gathering":
        """The same place with nothing found: for a reading that may turn out not to be the one meant."""
        other = Gathering()
        other._covers, other._where = self._covers, self._where
        return other

    def traps(self, findings: Iterable[Finding], covers: Iterable[Place]) -> None:
        """Findings of a trap pass, and the spans about which nothing more is to be said."""
        self._found += findings
        for cover in covers:
            self._covers.setdefault((cover.file, cover.line), []).append(cover)

    def add(self, *findings: Finding) -> None:
        """Findings, unless they are known already or a trap has spoken of the same span."""
        for finding in findings:
            if not self.is_covered(finding.place):
                placed = replace(finding, where=self._where) if finding.where == NOWHERE else finding
                known = (placed.rule, placed.place, placed.message)
                if known not in self._known:
                    self._known.add(known)
                    self._found.append(placed)

    def say(self, rule: TextRule, place: Place, message: str, change: str) -> None:
        """The finding of ``rule`` at ``place``."""
        self.add(rule.at(place, message, change))

    def is_covered(self, place: Place) -> bool:
        """Whether a trap has spoken of a span that touches ``place``."""
        covers = self._covers.get((place.file, place.line), ())
        end = place.end_column if place.end_line == place.line else place.column + 1
        return any(place.column < cover.end_column and end > cover.column for cover in covers)

    @property
    def findings(self) -> tuple[Finding, ...]:
        """Everything found, in the order it was found."""
        return tuple(self._found)
