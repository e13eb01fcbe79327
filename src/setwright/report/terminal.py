"""A check as people read it: the aim, the matrix, then the findings in the order of the plan."""

from collections.abc import Iterator, Mapping
from typing import Final

from setwright.checked import Checked
from setwright.coverage import Coverage, Sets
from setwright.findings import Finding, Level
from setwright.library.table import MODEL_NOTE
from setwright.model.plan import Week
from setwright.places import Source
from setwright.report.working import work_in
from setwright.report.wrapping import WIDTH, plain, wrapped
from setwright.rules.aims import training
from setwright.rules.matrix import Cell

HEADS: Final = (
    ("chest part", "sets", "follows", "loaded", "loaded", "loaded", "heaviest"),
    ("", "", "its line", "long", "short", "across", "lift"),
)
WIDTHS: Final = (12, 7, 10, 8, 8, 13, 0)
"""Least widths of the columns of the matrix, in letters (choice)."""

COLOURS: Final[Mapping[str, str]] = {"error": "31", "gap": "33", "advice": "36", "NEVER": "1"}
"""Colours of the words that stand out (ANSI); they add nothing to the words."""


def text(checked: Checked, *, colour: bool) -> str:
    """The whole screen of ``check``, with a line end; ``colour`` True only for a terminal."""
    blocks = [
        *_head(checked),
        *(_finding(f, n, checked, colour=colour) for n, f in enumerate(checked.findings, 1)),
    ]
    return "\n\n".join([*blocks, _counts(checked)]) + "\n"


def _head(checked: Checked) -> Iterator[str]:
    if checked.week is None or checked.coverage is None or checked.aim is None:
        yield f"{plain(checked.file)}: nothing of this plan could be read"
        return
    lines = [
        _title(checked.week, checked.coverage),
        wrapped(f"Aim: {checked.aim.row} ({checked.aim.came_from})"),
    ]
    if checked.waiting:
        lines.append("Until the errors below are mended, what the week leaves out is not judged.")
    missing = [
        word for word, there in (("gym", checked.week.gym), ("squad", checked.week.squad)) if there is None
    ]
    if missing:
        lines.append(wrapped(f"No {' and no '.join(missing)} written: {_taken_for_granted(missing)}."))
    yield "\n".join(lines)
    yield matrix_text(checked)
    yield "\n".join(_sums(checked))


def _taken_for_granted(missing: list[str]) -> str:
    told = {"gym": "the whole library counts as there", "squad": "nobody's limits are known"}
    return " and ".join(told[word] for word in missing)


def _title(week: Week, coverage: Coverage) -> str:
    number = len(coverage.sessions)
    used = round(sum(session.minutes for session in coverage.sessions))
    written = [session.session.minutes for session in coverage.sessions]
    there = sum(minutes for minutes in written if minutes is not None)
    minutes = f"{used} of {there:g} minutes" if None not in written else f"about {used} minutes"
    people = len(training(week)) or week.people
    told = [f"{number} session{'' if number == 1 else 's'}", minutes]
    return wrapped(f"{week.name}: {', '.join([*told, _heads(people)] if people else told)}")


def matrix_text(checked: Checked) -> str:
    """The matrix of a check, each answer with the number of its finding."""
    if not checked.matrix:
        return "chest: not trained this week"
    rows = [*HEADS, *([row.part, *(_cell(cell, checked) for cell in row.cells)] for row in checked.matrix)]
    widths = [max(least, *(len(row[at]) + 2 for row in rows)) for at, least in enumerate(WIDTHS)]
    return "\n".join(
        "".join(word.ljust(width) for word, width in zip(row, widths, strict=True))[:WIDTH].rstrip()
        for row in rows
    )


def _cell(cell: Cell, checked: Checked) -> str:
    return f"{cell.text} [{checked.findings.index(cell.finding) + 1}]" if cell.finding else cell.text


def _sums(checked: Checked) -> Iterator[str]:
    coverage = checked.coverage
    assert coverage is not None
    facts = [f"pull {coverage.pull} sets, push {coverage.push} sets"]
    if coverage.unscored:
        facts.append(f"{coverage.unscored} move{'' if coverage.unscored == 1 else 's'} counted, not scored")
    if coverage.effort_not_stated != Sets():
        facts.append(f"{coverage.effort_not_stated} hard sets without a written effort")
    yield wrapped(f"Also: {'; '.join(facts)}.")
    muscles = ", ".join(f"{group} {sets}" for group, sets in coverage.muscles.items())
    if muscles:
        yield wrapped(f"Sets a muscle, helpers half (pelland2024, abstract): {muscles}.")
    if checked.matrix:
        if worked := work_in(coverage):
            yield wrapped(worked)
        yield MODEL_NOTE


def _heads(people: int) -> str:
    return "1 person" if people == 1 else f"{people} people"


def _finding(finding: Finding, number: int, checked: Checked, *, colour: bool) -> str:
    level = _paint(finding.level.name, colour=colour)
    head = wrapped(f"{finding.level.name} [{number}]: {finding.message}", rest="  ")
    parts = [
        head.replace(finding.level.name, level, 1),
        _quoted(finding, checked.sources.get(finding.place.file)),
        _said("why", finding.why),
        *([_said("seen", "; ".join(_seen(finding)))] if finding.seen else ()),
        *(_said("also", other) for other in finding.also),
        _said("change", finding.change),
        _said("source", finding.source),
        _rule(finding.rule),
    ]
    return "\n".join(parts)


def _seen(finding: Finding) -> Iterator[str]:
    for one in finding.seen:
        yield f"{one.text} (line {one.line})" if one.line else one.text


def _said(word: str, what: str) -> str:
    first = f"   = {word}: "
    return wrapped(what, first, " " * min(len(first), 10))


def _rule(rule: str) -> str:
    """The rule and how to ask about it, on one line or on two."""
    ask = f"(setwright explain {rule})"
    line = f"   = rule: {rule}   {ask}"
    return line if len(line) <= WIDTH else f"   = rule: {rule}\n          {ask}"


def _quoted(finding: Finding, source: Source | None) -> str:
    """The place of a finding, with its line and the span under it."""
    place = finding.place
    gutter = " " * len(str(place.line))
    where = f"{gutter}--> {plain(place.file)}:{place.line}:{place.column}"
    if source is None:
        return where
    line = plain(source.line(place.line))
    end = place.end_column if place.end_line == place.line else len(line) + 1
    line, start, length = _window(line, place.column - 1, max(end - place.column, 1), WIDTH - len(gutter) - 3)
    return f"{where}\n{gutter} |\n{place.line} | {line}\n{gutter} | {' ' * start}{'^' * length}"


def _window(line: str, start: int, length: int, room: int) -> tuple[str, int, int]:
    """The stretch of a line that fits and shows the span, with the span's start and length in it."""
    if len(line) <= room:
        return line, start, length
    left = max(0, min(start - 8, len(line) - room))
    return line[left : left + room], start - left, min(length, room - (start - left))


def _counts(checked: Checked) -> str:
    words = []
    for level, plural in ((Level.error, "errors"), (Level.gap, "gaps"), (Level.advice, "pieces of advice")):
        number = sum(f.level is level for f in checked.findings)
        if number:
            words.append(f"{number} {level.name if number == 1 else plural}")
    if checked.allowed:
        reasons = "; ".join(f"{one.finding.rule}: {one.reason}" for one in checked.allowed)
        words.append(f"{len(checked.allowed)} allowed ({reasons})")
    return wrapped(", ".join(words) or "No findings.")


def _paint(word: str, *, colour: bool) -> str:
    return f"\033[{COLOURS[word]}m{word}\033[0m" if colour else word
