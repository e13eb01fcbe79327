"""A plan checked once, for whoever prints it: read, resolved, covered, judged, and what was allowed."""

from collections.abc import Callable, Mapping, Sequence
from typing import NamedTuple

from setwright.coverage import Coverage, cover
from setwright.findings import Finding, Level, in_order
from setwright.followed import Followed, NotFollowed, followed_by
from setwright.library.table import Library
from setwright.logo import unusable_logo
from setwright.model.plan import Week, asks_for_last_time
from setwright.model.reader.alone import FileRead, kind_of, read_alone
from setwright.own.plan import read_plan
from setwright.places import Source
from setwright.reading.text_rules import TEXT_RULES
from setwright.rules.aims import AimInForce, aim_in_force
from setwright.rules.allowing import Silenced
from setwright.rules.judging import Verdict, judge
from setwright.rules.matrix import MatrixRow, matrix
from setwright.rules.means import means
from setwright.rules.past import Past, pasts
from setwright.rules.rule import Case

Fed = Callable[[tuple[Week, ...], Library], tuple[Week, ...]]
"""The weeks of a plan with what its records say of last time."""


class CheckedWeek(NamedTuple):
    """One week of a plan: what it adds up to, what it is for, and what the rules say of it.

    ``told``: the verdict as it is told of the whole plan, with findings that several weeks share.
    """

    week: Week
    coverage: Coverage
    aim: AimInForce
    verdict: Verdict
    told: Verdict

    @property
    def matrix(self) -> tuple[MatrixRow, ...]:
        """The answers for each part of the chest, tied to what is told; empty in a week without chest."""
        return matrix(self.coverage, self.aim, self.told.marks) if self.week.sessions else ()


class Checked(NamedTuple):
    """The outcome of a check. ``weeks`` is empty when nothing could be read.

    ``findings`` are in the order of files and lines. ``complete`` is False when part of the plan or of its
    files could not be read: counts may then be lower than what was typed. ``waiting``: the error is in the
    plan itself, so what a week leaves out is not judged yet. ``table``: the library of the plan, its own
    movements in it. ``alone``: the squad, gym or record that the file holds instead of a plan. ``before``:
    the last week of the plan that it follows. ``block``: all weeks of the plan, where this is the check of
    ``only`` one of them.
    """

    file: str
    weeks: tuple[CheckedWeek, ...]
    findings: tuple[Finding, ...]
    allowed: tuple[Silenced, ...]
    sources: Mapping[str, Source]
    complete: bool
    waiting: bool = False
    table: Library | None = None
    alone: FileRead | None = None
    before: Followed | None = None
    block: tuple[CheckedWeek, ...] = ()

    @property
    def names(self) -> frozenset[str]:
        """The athletes who are named in the file or its squad."""
        if self.alone is not None:
            return self.alone.names
        squad = self.week.squad if self.week else None
        return frozenset(athlete.name for athlete in squad.athletes) if squad else frozenset()

    @property
    def week(self) -> Week | None:
        """The week of a plan of one week, the first of a block; None when nothing could be read."""
        return self.weeks[0].week if self.weeks else None

    @property
    def coverage(self) -> Coverage | None:
        """What that week adds up to."""
        return self.weeks[0].coverage if self.weeks else None

    @property
    def aim(self) -> AimInForce | None:
        """What that week is for."""
        return self.weeks[0].aim if self.weeks else None

    @property
    def matrix(self) -> tuple[MatrixRow, ...]:
        """The matrix of that week."""
        return self.weeks[0].matrix if self.weeks else ()

    @property
    def across(self) -> tuple[CheckedWeek, ...]:
        """Every week of the plan, that of ``only`` one of them too."""
        return self.block or self.weeks

    def only(self, number: int) -> "Checked":
        """The check of one week of a block, as if it were alone. Raises: IndexError."""
        one = self.weeks[number - 1]
        if len(self.weeks) == 1:
            return self
        typed = (finding for finding in self.findings if not finding.weeks)
        return self._replace(
            weeks=(one._replace(told=one.verdict),),
            findings=tuple(in_order((*typed, *one.verdict.findings))),
            allowed=one.verdict.silenced,
            block=self.weeks,
        )

    def revised(self, week: Week) -> "Checked":
        """The check of a plan of one week as that is done after all: judged anew, as typed."""
        assert self.table is not None, "a plan that was read has its library"
        planned = self.weeks[0].verdict.findings
        one = _week(cover(week, self.table), Past(), self.table, waiting=self.waiting)
        typed = (finding for finding in self.findings if finding not in planned)
        return self._replace(
            weeks=(one,),
            findings=tuple(in_order((*typed, *one.verdict.findings))),
            allowed=one.verdict.silenced,
        )


def check_file(file: str, text: str, beside: Callable[[str], str | None], fed: Fed | None = None) -> Checked:
    """The plan in ``text`` read and judged, or the squad, gym or record in it read; ``fed`` as for a plan."""
    kind = kind_of(text)
    if kind is None:
        return check_plan(file, text, beside, fed)
    read = read_alone(kind, file, text)
    told = tuple(in_order(read.findings))
    return Checked(file, (), told, (), read.sources, complete=read.complete, alone=read)


def check_plan(file: str, text: str, beside: Callable[[str], str | None], fed: Fed | None = None) -> Checked:
    """The plan in ``text`` read and judged; ``beside`` gives the text of files that the plan names.

    ``fed`` gives the weeks with what was lifted last time; it is asked only where a load asks for that.
    """
    read, table = read_plan(file, text, beside)
    if fed is not None and any(map(asks_for_last_time, read.weeks)):
        read = read._replace(weeks=fed(read.weeks, table))
    waiting = bool(read.weeks) and any(f.level is Level.error and f.place.file == file for f in read.findings)
    follows = followed_by(read.weeks[0], file, beside) if read.weeks else None
    before = follows if isinstance(follows, Followed) else None
    weeks = _checked(read.weeks, table, before, waiting=waiting)
    if len(weeks) > 1:
        from setwright.rules.over_weeks import told_once  # noqa: PLC0415 - only a block needs it

        told = told_once({one.week.number: one.verdict for one in weeks})
        weeks = tuple(one._replace(told=told[one.week.number]) for one in weeks)
    unread = [follows.finding] if isinstance(follows, NotFollowed) else []
    logo = unusable_logo(weeks[0].week, file) if weeks else None
    unread += [logo] if logo else []
    return Checked(
        file=file,
        weeks=weeks,
        findings=tuple(
            in_order(dict.fromkeys((*read.findings, *unread, *(f for w in weeks for f in w.told.findings))))
        ),
        allowed=tuple(dict.fromkeys(one for week in weeks for one in week.told.silenced)),
        sources=read.sources,
        complete=read.complete,
        waiting=waiting,
        table=table if weeks else None,
        before=before,
    )


def _checked(
    weeks: Sequence[Week], table: Library, before: Followed | None, *, waiting: bool
) -> tuple[CheckedWeek, ...]:
    coverages = [cover(week, table) for week in weeks]
    return tuple(
        _week(coverage, past, table, waiting=waiting)
        for coverage, past in zip(coverages, pasts(coverages, before, table), strict=True)
    )


def _week(coverage: Coverage, past: Past, table: Library, *, waiting: bool) -> CheckedWeek:
    week = coverage.week
    aim = aim_in_force(week, coverage)
    nothing = Verdict((), (), {})
    judged = week.sessions or waiting
    case = Case(coverage, aim, means(week, table), waiting, past)
    verdict = judge(case, TEXT_RULES) if judged else nothing
    return CheckedWeek(week, coverage, aim, verdict, verdict)
