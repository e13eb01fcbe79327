"""The half-minute summary as plain frozen data: eight questions, each with one to three plain lines."""

from collections.abc import Iterable, Iterator, Sequence
from typing import Final, NamedTuple

from setwright.findings import Finding
from setwright.reading.words import listed

MOST_NAMED: Final = 3
"""Things named in a line; more are counted (choice)."""
MOST_FINDINGS: Final = 2
"""Findings told in full; more are counted (choice)."""


class Answer(NamedTuple):
    """A question that is asked before a week is published, and what the plan says to it."""

    question: str
    lines: tuple[str, ...]


class Glance(NamedTuple):
    """A week in half a minute. It names athletes: for the coach alone.

    ``note``: how far the model's figures in it go; empty where there are none.
    """

    title: str
    aim: str
    answers: tuple[Answer, ...]
    note: str = ""


def few(names: Sequence[str], most: int = MOST_NAMED) -> str:
    """Names in a row, the last ones counted where there are many; each once.

    >>> few(["a", "b", "a"]), few(["a", "b", "c", "d", "e"])
    ('a and b', 'a, b, c and 2 more')
    """
    every = list(dict.fromkeys(names))
    if len(every) <= most + 1:
        return listed(every)
    return f"{', '.join(every[:most])} and {len(every) - most} more"


def told(findings: Iterable[Finding], rules: frozenset[str]) -> Iterator[str]:
    """What some rules found, one sentence each with its level; more than two are counted."""
    found = [finding for finding in findings if finding.rule in rules]
    for finding in found[:MOST_FINDINGS]:
        yield f"{finding.level.name.capitalize()}: {finding.message}."
    if len(found) > MOST_FINDINGS:
        yield f"And {len(found) - MOST_FINDINGS} more: `setwright check` tells each."
