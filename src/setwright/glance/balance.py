"""Question 4: pull against push, what each part of the chest gets, and the smallest change for each gap."""

from collections.abc import Iterator
from typing import Final

from setwright.checked import Checked, CheckedWeek
from setwright.glance.shapes import MOST_FINDINGS, few
from setwright.reading.words import span
from setwright.rules import RULES
from setwright.rules.matrix import MatrixRow

PLAIN: Final = ("yes", "cannot be")
"""Answers of the matrix that need no word here."""

OF_BALANCE: Final = frozenset(rule.id for rule in RULES if rule.cells) | {
    "push-without-pull",
    "half-a-pair",
    "one-side-only",
    "crossing-work-only",
    "no-cure-in-this-gym",
    "no-pull-from-overhead",
    "bottom-lines-hold-all-the-pulls",
    "light-before-heavy",
}
"""The rules about pull against push and about the parts of the chest."""


def balance(checked: Checked, one: CheckedWeek) -> Iterator[str]:
    """Pull and push with the parts of the chest, then what is missing with its change."""
    coverage = one.coverage
    yield f"Hard sets: pull {coverage.pull}, push {coverage.push}. {_parts(one)}"
    yield from _sides(one)
    found = [finding for finding in checked.findings if finding.rule in OF_BALANCE]
    found.sort(key=lambda finding: -finding.level)
    for finding in found[:MOST_FINDINGS]:
        yield f"{finding.level.name.capitalize()}: {finding.message}. Change: {finding.change}."
    if len(found) > MOST_FINDINGS:
        yield f"And {len(found) - MOST_FINDINGS} more: `setwright check` tells each."
    allowed = [f"{silenced.finding.rule} ({silenced.reason})" for silenced in checked.allowed]
    if allowed:
        yield f"Allowed on purpose: {few(allowed)}."
    if checked.waiting:
        yield "What the week leaves out is not judged until its errors are mended."
    elif not found:
        yield "No gap and no advice."


def _sides(one: CheckedWeek) -> Iterator[str]:
    """Lines that do more on one side than on the other."""
    uneven = [
        f"{work.name} (left {span(counted.left)}, right {span(counted.right)})"
        for covered in one.coverage.sessions
        for work in covered.works
        if (counted := covered.counts.get(work.item.place)) and counted.left and counted.right
    ]
    if uneven:
        yield f"More sets on one side: {few(uneven)}."


def _parts(one: CheckedWeek) -> str:
    if not one.matrix:
        sets = one.coverage.chest
        left = f"has {sets}, too few to say what is left out" if sets.high else "is not trained this week"
        return f"The chest {left}."
    return f"Chest: {'; '.join(map(_part, one.matrix))}."


def _part(row: MatrixRow) -> str:
    """A part with its sets, its heaviest lift and the answers that are not plainly yes."""
    answers = zip(("line", "long", "short", "across"), row.cells[1:5], strict=True)
    less = [f"{word} {cell.text.lower()}" for word, cell in answers if cell.tone not in PLAIN]
    return f"{row.part} {row.sets.text} ({', '.join([row.heaviest.text, *less])})"
