"""A YAML text as nodes, with everything that YAML would lose, change or refuse in it."""

from typing import Final, NamedTuple

import yaml

from setwright.findings import Finding
from setwright.places import Place
from setwright.reading import file_rules as rules
from setwright.reading.broken import block_of, explain
from setwright.reading.builder import DEEPEST, TOO_DEEP, Builder, TooBigError
from setwright.reading.nodes import Node
from setwright.reading.traps import find_traps

MOST_CHARACTERS: Final = 1_000_000
"""Largest text, in characters (choice: a plan of 10,000 lines is under 600,000)."""
MOST_BREAKS: Final = 20
"""Lines that the parser stumbles over before reading ends (choice)."""


class Tree(NamedTuple):
    """A file as nodes; ``root`` is None when nothing could be read."""

    root: Node | None
    findings: tuple[Finding, ...]
    covers: tuple[Place, ...] = ()


def read_tree(file: str, text: str) -> Tree:
    """The nodes of a YAML text, and everything that YAML would lose, change or refuse in it.

    Lines that can't be read are left out, and reading goes on.
    """
    whole = Place.top(file)
    if len(text) > MOST_CHARACTERS:
        return Tree(None, (_too_big(whole, f"more than {MOST_CHARACTERS:,} characters"),))
    typed = text.removeprefix("\ufeff").splitlines()
    traps = find_traps(file, typed)
    rows = traps.text.split("\n")
    for line in traps.dropped:
        _leave_out(rows, line - 1)
    findings = list(traps.findings)
    root = None
    for _ in range(MOST_BREAKS):
        builder = Builder(file, typed, traps.shifts)
        try:
            root = builder.document("\n".join(rows))
        except yaml.YAMLError as error:
            if TOO_DEEP in str(error):
                return Tree(None, (*findings, _too_big(whole, f"values more than {DEEPEST} levels deep")))
            broken = explain(error, file, rows)
            if broken.row + 1 not in traps.lines:
                findings.append(broken.finding)
            _leave_out(rows, broken.row)
        except TooBigError as limit:
            return Tree(None, (*findings, _too_big(whole, str(limit))))
        else:
            findings += builder.findings
            break
    return Tree(root, tuple(findings), traps.covers)


def _too_big(place: Place, what: str) -> Finding:
    return rules.TOO_BIG.at(
        place, f"the file has {what}, which no plan has", "write a plan of its own for each week"
    )


def _leave_out(rows: list[str], row: int) -> None:
    for one in block_of(rows, row):
        rows[one] = ""
