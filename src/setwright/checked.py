"""A plan checked once, for whoever prints it: read, resolved, covered, judged, and what was allowed."""

from collections.abc import Callable, Mapping
from typing import NamedTuple

from setwright.coverage import Coverage, cover
from setwright.findings import Finding, Level, in_order
from setwright.library.table import Library
from setwright.model.plan import Week
from setwright.own.plan import read_plan
from setwright.places import Source
from setwright.reading.text_rules import TEXT_RULES
from setwright.rules.aims import AimInForce, aim_in_force
from setwright.rules.allowing import Silenced
from setwright.rules.judging import judge
from setwright.rules.matrix import MatrixRow, matrix
from setwright.rules.means import means
from setwright.rules.rule import Case


class Checked(NamedTuple):
    """The outcome of a check. ``week``, ``coverage`` and ``aim`` are None when nothing could be read.

    ``findings`` are in the order of files and lines. ``matrix`` is empty in a week without chest.
    ``complete`` is False when part of the plan or of its files could not be read: counts may then be lower
    than what was typed. ``waiting``: the error is in the plan itself, so what the week leaves out is not
    judged yet. ``table``: the library of the plan, its own movements in it.
    """

    file: str
    week: Week | None
    coverage: Coverage | None
    aim: AimInForce | None
    matrix: tuple[MatrixRow, ...]
    findings: tuple[Finding, ...]
    allowed: tuple[Silenced, ...]
    sources: Mapping[str, Source]
    complete: bool
    waiting: bool = False
    table: Library | None = None


def check_plan(file: str, text: str, beside: Callable[[str], str | None]) -> Checked:
    """The plan in ``text`` read and judged; ``beside`` gives the text of files that the plan names."""
    read, table = read_plan(file, text, beside)
    if read.week is None:
        return Checked(
            file, None, None, None, (), tuple(in_order(read.findings)), (), read.sources, complete=False
        )
    coverage = cover(read.week, table)
    aim = aim_in_force(read.week, coverage)
    waiting = any(f.level is Level.error and f.place.file == file for f in read.findings)
    verdict = judge(Case(coverage, aim, means(read.week, table), waiting), TEXT_RULES)
    return Checked(
        file=file,
        week=read.week,
        coverage=coverage,
        aim=aim,
        matrix=matrix(coverage, aim, verdict.marks),
        findings=tuple(in_order((*read.findings, *verdict.findings))),
        allowed=verdict.silenced,
        sources=read.sources,
        complete=read.complete,
        waiting=waiting,
        table=table,
    )
