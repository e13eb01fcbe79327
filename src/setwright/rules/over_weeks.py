"""Verdicts over the weeks of a block: what is found alike in several weeks is told once, with its weeks."""

import re
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from typing import Any, Final

from setwright.findings import Finding
from setwright.model.plan import DAYS
from setwright.reading.weeks import say_weeks
from setwright.rules import allow_silences_nothing
from setwright.rules.allowing import Silenced
from setwright.rules.judging import Verdict

_VARIES: Final = re.compile(rf"\d+(?:\.\d+)?|{'|'.join(DAYS)}|:.*")
"""What may differ between weeks in a message that says the same: numbers, days, and a list at its end."""


def told_once(verdicts: Mapping[int, Verdict]) -> dict[int, Verdict]:
    """The verdicts by week, with findings that are alike in several weeks made one that names them.

    Alike: one rule about the same; or at one level and place, in words that differ only in numbers, days and
    lists. The finding is that of the first week in which it is worst; what other weeks say instead follows
    under ``also``, and a change that is not the same in all of them says its weeks. An ``allow`` that is
    answered in some week is not idle in the others.
    """
    answered = {allowed.place for verdict in verdicts.values() for allowed in verdict.answered}
    needed = {
        week: verdict._replace(findings=tuple(f for f in verdict.findings if not _idle(f, answered)))
        for week, verdict in verdicts.items()
    }
    told = _merged((week, f) for week, verdict in needed.items() for f in verdict.findings)
    silenced = _merged((week, one.finding) for week, verdict in needed.items() for one in verdict.silenced)
    return {
        week: verdict._replace(
            findings=tuple(told[_alike(f)] for f in verdict.findings),
            silenced=tuple(Silenced(silenced[_alike(f)], reason) for f, reason in verdict.silenced),
            marks={cell: told[_alike(f)] for cell, f in verdict.marks.items()},
        )
        for week, verdict in needed.items()
    }


def _idle(finding: Finding, answered: set[Any]) -> bool:
    return finding.rule == allow_silences_nothing.RULE.id and finding.place in answered


def _alike(finding: Finding) -> tuple[Any, ...]:
    if finding.about:
        return finding.rule, finding.about
    return finding.rule, finding.level, finding.place, _VARIES.sub("", finding.message)


def _merged(found: Iterable[tuple[int, Finding]]) -> dict[tuple[Any, ...], Finding]:
    """One finding for all that are alike."""
    together: dict[tuple[Any, ...], list[tuple[int, Finding]]] = {}
    for week, finding in found:
        together.setdefault(_alike(finding), []).append((week, finding))
    return {alike: _one(same) for alike, same in together.items()}


def _one(same: Sequence[tuple[int, Finding]]) -> Finding:
    worst = max(same, key=lambda one: one[1].level)[1]
    others = _weeks_of((finding.message, week) for week, finding in same if finding.message != worst.message)
    told = (f"{say_weeks(weeks)}: {message}" for message, weeks in others.items())
    return replace(
        worst,
        weeks=tuple(dict.fromkeys(week for week, _ in same)),
        change=_change([(finding.change, week) for week, finding in same]),
        also=(*worst.also, *told),
    )


def _change(changes: Sequence[tuple[str, int]]) -> str:
    """One change for all weeks; what is not the same says its weeks, be it only what it costs at the end."""
    parted = [(*_costs_apart(change), week) for change, week in changes]
    what = {change for change, _, _ in parted}
    if len(what) > 1 or not all(cost for _, cost, _ in parted):
        return _by_week(_weeks_of(changes))
    return f"{what.pop()} ({_by_week(_weeks_of((cost, week) for _, cost, week in parted))})"


def _costs_apart(change: str) -> tuple[str, str]:
    what, _, costs = change.rpartition(" (")
    return (what, costs[:-1]) if what and costs.endswith(")") else (change, "")


def _by_week(said: Mapping[str, Sequence[int]]) -> str:
    if len(said) == 1:
        return next(iter(said))
    return "; ".join(f"{say_weeks(weeks)}: {text}" for text, weeks in said.items())


def _weeks_of(said: Iterable[tuple[str, int]]) -> dict[str, list[int]]:
    """The weeks in which each text is said, each week once."""
    weeks: dict[str, list[int]] = {}
    for text, week in said:
        if week not in weeks.setdefault(text, []):
            weeks[text].append(week)
    return weeks
