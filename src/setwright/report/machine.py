"""A check as programs read it: JSON in the form setwright-findings/1, short lines, and annotations.

Athletes' names and limits stay out unless they are asked for: logs are paper that others read.
"""

import math
import re
from collections.abc import Iterable, Iterator, Mapping
from typing import Any, Final

from setwright.checked import Checked, CheckedWeek
from setwright.coverage import Coverage, Sets, Work
from setwright.findings import Finding, Level
from setwright.library.table import MODEL_NOTE
from setwright.reading.weeks import say_weeks
from setwright.report.as_json import as_json
from setwright.report.wrapping import plain
from setwright.rules.aims import AimInForce
from setwright.rules.allowing import Silenced

FORMAT: Final = "setwright-findings/1"
NOBODY: Final = "an athlete"
ANNOTATIONS: Final[Mapping[Level, str]] = {Level.error: "error", Level.gap: "warning", Level.advice: "notice"}


def json_text(checked: Iterable[Checked], *, with_names: bool = False) -> str:
    """The findings of some plans as JSON; of one plan ``aim`` and ``coverage`` stand at the top."""
    every = tuple(checked)
    plans = [_plan(one) for one in every]
    only = plans[0] if len(plans) == 1 else {"aim": None, "coverage": None}
    findings = [
        _finding(f, _hidden(one, with_names=with_names))
        for one in every
        for f in _told(one, with_names=with_names)
    ]
    counts = {level.name: sum(f["level"] == level.name for f in findings) for level in Level}
    data = {
        "format": FORMAT,
        "files": [one.file for one in every],
        "aim": only["aim"],
        "coverage": only["coverage"],
        "plans": plans,
        "findings": findings,
        "counts": {**counts, "allowed": sum(len(one.allowed) for one in every)},
    }
    return as_json(data)


def short(checked: Checked, *, with_names: bool = False) -> str:
    """One line a finding: place, level, rule, message."""
    hide = _hidden(checked, with_names=with_names)
    return "".join(
        f"{plain(f.place.file)}:{f.place.line}:{f.place.column}: "
        f"{f.level.name} {f.rule}: {plain(_without(hide, _message(f)))}\n"
        for f in _told(checked, with_names=with_names)
    )


def github(checked: Checked, *, with_names: bool = False) -> str:
    """One annotation a finding, as workflow commands."""
    hide = _hidden(checked, with_names=with_names)
    return "".join(_annotation(f, hide) for f in _told(checked, with_names=with_names))


def _annotation(finding: Finding, hide: frozenset[str]) -> str:
    place = finding.place
    properties = {
        "file": place.file,
        "line": place.line,
        "endLine": place.end_line,
        "col": place.column,
        "endColumn": place.end_column,
        "title": finding.rule,
    }
    listed = ",".join(f"{key}={_property(str(value))}" for key, value in properties.items())
    message = _without(hide, f"{_message(finding)}\nwhy: {finding.why}\nchange: {finding.change}")
    return f"::{ANNOTATIONS[finding.level]} {listed}::{_data(message)}\n"


def _message(finding: Finding) -> str:
    """The message, with the weeks in which it holds."""
    return f"{say_weeks(finding.weeks)}: {finding.message}" if finding.weeks else finding.message


def _data(text: str) -> str:
    return "%0A".join(plain(line).replace("%", "%25") for line in text.split("\n"))


def _property(text: str) -> str:
    return _data(text).replace(":", "%3A").replace(",", "%2C")


def _plan(checked: Checked) -> dict[str, Any]:
    """One plan; a block has aim and coverage in each of its ``weeks``, a plan of one week at its top."""
    several = len(checked.weeks) > 1
    only = checked.weeks[0] if checked.weeks and not several else None
    return {
        "file": checked.file,
        "complete": checked.complete,
        "aim": _aim(only.aim) if only else None,
        "coverage": coverage_json(only.coverage) if only else None,
        "allowed": [_allowed(one) for one in checked.allowed],
    } | ({"weeks": [_week(one) for one in checked.weeks]} if several else {})


def _allowed(one: Silenced) -> dict[str, Any]:
    told = {"rule": one.finding.rule, "reason": one.reason}
    return told | ({"weeks": list(one.finding.weeks)} if one.finding.weeks else {})


def _week(one: CheckedWeek) -> dict[str, Any]:
    how = one.week.lighter
    return {
        "week": one.week.number,
        "lighter": how.text if how else None,
        "aim": _aim(one.aim),
        "coverage": coverage_json(one.coverage),
    }


def _aim(aim: AimInForce) -> dict[str, Any]:
    return {"row": aim.row, "came_from": aim.came_from, "held_back": aim.held_back}


def coverage_json(coverage: Coverage) -> dict[str, Any]:
    """What a week adds up to, as JSON."""
    return {
        "note": MODEL_NOTE,
        "chest_sets": _sets(coverage.chest),
        "parts": {
            part.part: {
                "sets": _sets(part.sets),
                "served_by": _names(part.served_by),
                "loaded_by": _names(part.loaded_by),
                "loaded_long": part.loaded_long,
                "loaded_long_percent": part.loaded_long_percent,
                "loaded_short": part.loaded_short,
                "across_deg": part.across_deg,
                "heaviest": part.heaviest.movement["name"] if part.heaviest else None,
            }
            for part in coverage.parts
        },
        "muscles": {group: _sets(sets) for group, sets in coverage.muscles.items()},
        "push": _sets(coverage.push),
        "pull": _sets(coverage.pull),
        "moves_not_scored": coverage.unscored,
        "effort_not_stated": _sets(coverage.effort_not_stated),
        "sessions": [
            {
                "title": one.session.title,
                "minutes": round(one.minutes, 1),
                "minutes_written": one.session.minutes,
                "chest_sets": _sets(one.chest),
            }
            for one in coverage.sessions
        ],
    }


def _sets(sets: Sets) -> dict[str, float | None]:
    """A span of sets; ``high`` null when it is open."""
    return {"low": sets.low, "high": None if sets.high == math.inf else sets.high}


def _names(works: tuple[Work, ...]) -> list[str]:
    return list(dict.fromkeys(work.movement["name"] for work in works))


def _finding(finding: Finding, hide: frozenset[str]) -> dict[str, Any]:
    place = finding.place
    return {
        "rule": finding.rule,
        "level": finding.level.name,
        "file": place.file,
        "line": place.line,
        "column": place.column,
        "end_line": place.end_line,
        "end_column": place.end_column,
        "where": _without(hide, finding.where),
        "message": _without(hide, finding.message),
        "why": _without(hide, finding.why),
        "change": _without(hide, finding.change),
        "source": finding.source,
        "seen": [{"text": _without(hide, one.text), "line": one.line} for one in finding.seen],
        "also": [_without(hide, one) for one in finding.also],
    } | ({"weeks": list(finding.weeks)} if finding.weeks else {})


def _told(checked: Checked, *, with_names: bool) -> Iterator[Finding]:
    """The findings as the reader of machine output may see them."""
    return (finding if with_names else finding.for_others() for finding in checked.findings)


def _hidden(checked: Checked, *, with_names: bool) -> frozenset[str]:
    return frozenset() if with_names else checked.names


def _without(names: frozenset[str], text: str) -> str:
    """The text with each athlete's name, as a whole word, replaced."""
    for name in sorted(names, key=len, reverse=True):
        text = re.sub(rf"(?<!\w){re.escape(name)}(?!\w)", NOBODY, text)
    return text
