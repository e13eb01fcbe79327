"""What a week adds up to, in words: the aim, the matrix, the sums under it."""

from collections.abc import Iterator, Sequence
from typing import Final

from setwright.checked import Checked, CheckedWeek
from setwright.coverage import Coverage, Sets
from setwright.findings import Finding
from setwright.library.table import MODEL_NOTE
from setwright.model.plan import Week
from setwright.reading.words import listed
from setwright.report.stages import left_out
from setwright.report.working import work_in
from setwright.report.wrapping import WIDTH, wrapped
from setwright.rules.aims import training
from setwright.rules.matrix import Cell, MatrixRow

HEADS: Final = (
    ("chest part", "sets", "follows", "loaded", "loaded", "loaded", "heaviest"),
    ("", "", "its line", "long", "short", "across", "lift"),
)
WIDTHS: Final = (12, 7, 10, 8, 8, 13, 0)
"""Least widths of the columns of the matrix, in letters (choice)."""


def aim(one: CheckedWeek) -> str:
    """The row of the table of aims, and where it came from."""
    return wrapped(f"Aim: {one.aim.row} ({one.aim.came_from})")


def in_force(checked: Checked) -> Iterator[str]:
    """What is said of the whole plan: that it is not judged yet, and what was not written."""
    week = checked.weeks[0].week
    yield from map(wrapped, left_out(week))
    if checked.waiting:
        yield "Until the errors below are mended, what the week leaves out is not judged."
    missing = [word for word, there in (("gym", week.gym), ("squad", week.squad)) if there is None]
    if missing:
        yield wrapped(f"No {' and no '.join(missing)} written: {_taken_for_granted(missing)}.")


def _taken_for_granted(missing: list[str]) -> str:
    told = {"gym": "the whole library counts as there", "squad": "nobody's limits are known"}
    return " and ".join(told[word] for word in missing)


def sessions_and_minutes(weeks: Sequence[CheckedWeek]) -> tuple[str, str]:
    """How many sessions, and how many minutes they take, of those written; a range over several weeks."""
    sessions = [week.coverage.sessions for week in weeks]
    number = _span([len(each) for each in sessions])
    used = _span([round(sum(session.minutes for session in each)) for each in sessions])
    written = [[session.session.minutes for session in each] for each in sessions]
    there = _span([sum(minutes for minutes in each if minutes is not None) for each in written])
    whole = all(None not in each for each in written)
    minutes = f"{used} of {there} minutes" if whole else f"about {used} minutes"
    return f"{number} session{'' if number == '1' else 's'}", minutes


def _span(values: Sequence[float]) -> str:
    low, high = min(values), max(values)
    return f"{low:g}" if low == high else f"{low:g} to {high:g}"


def matrix_text(one: CheckedWeek, findings: Sequence[Finding]) -> str:
    """The matrix, each answer with the number of its finding among ``findings``."""
    if one.matrix:
        return "\n".join(matrix_lines(one.matrix, findings))
    few = one.coverage.chest
    told = f"{few} hard sets, too few to say what is left out" if few.high else "not trained this week"
    return f"chest: {told}"


def matrix_lines(
    matrix: Sequence[MatrixRow], findings: Sequence[Finding] = (), indent: str = ""
) -> list[str]:
    """The lines of a matrix in 80 columns; ``findings`` as above."""
    rows = [*HEADS, *([row.part, *(_cell(cell, findings) for cell in row.cells)] for row in matrix)]
    widths = [max(least, *(len(row[at]) + 2 for row in rows)) for at, least in enumerate(WIDTHS)]
    lines = ("".join(word.ljust(width) for word, width in zip(row, widths, strict=True)) for row in rows)
    return [f"{indent}{line}"[:WIDTH].rstrip() for line in lines]


def _cell(cell: Cell, findings: Sequence[Finding]) -> str:
    return f"{cell.text} [{findings.index(cell.finding) + 1}]" if cell.finding in findings else cell.text


def sums(one: CheckedWeek) -> Iterator[str]:
    """Pulls and pushes, what is not scored or not stated, sets a muscle, and the work in the chest."""
    coverage = one.coverage
    facts = [f"pull {coverage.pull} sets, push {coverage.push} sets"]
    if coverage.unscored:
        facts.append(f"{coverage.unscored} move{'' if coverage.unscored == 1 else 's'} counted, not scored")
    if coverage.effort_not_stated != Sets():
        facts.append(f"{coverage.effort_not_stated} hard sets without a written effort")
    if lines := _for_some(coverage):
        facts.append(f"{lines} for some athletes only, counted as if for all")
    yield wrapped(f"Also: {'; '.join(facts)}.")
    muscles = ", ".join(f"{group} {sets}" for group, sets in coverage.muscles.items())
    if muscles:
        yield wrapped(f"Sets a muscle, helpers half (pelland2024, abstract): {muscles}.")
    if one.matrix and (worked := work_in(coverage)):
        yield wrapped(worked)


def _for_some(coverage: Coverage) -> str:
    """The lines that name for whom they are, in words."""
    some = {str(work.line) for work in coverage.works if work.item.for_ or (work.group and work.group.for_)}
    return f"line{'' if len(some) == 1 else 's'} {listed(sorted(some, key=int))}" if some else ""


def note(weeks: Sequence[CheckedWeek]) -> Iterator[str]:
    """The note on mechanical figures, where there are any."""
    if any(one.matrix for one in weeks):
        yield MODEL_NOTE


def heads(week: Week) -> str:
    """How many people, or nothing when nobody says."""
    people = len(training(week)) or week.people
    return "" if not people else "1 person" if people == 1 else f"{people} people"
