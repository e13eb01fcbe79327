"""The week overview from a checked plan: days, matrix, gaps with their cure, and a row of pictures."""

import datetime as dt
from collections.abc import Iterator
from dataclasses import replace
from math import ceil
from typing import Final

from setwright.checked import Checked
from setwright.coverage import Coverage, PartCover, SessionCover, Work
from setwright.findings import Finding, Level
from setwright.library.table import Library, library
from setwright.model.plan import Group, Item, Session, Week
from setwright.reading.words import MINUTE_S
from setwright.rules.matrix import Cell as Answer
from setwright.rules.matrix import MatrixRow
from setwright.sheets import overview_words, words
from setwright.sheets.blocks import Writer, dose_text
from setwright.sheets.brief import brief
from setwright.sheets.figures import is_drawn
from setwright.sheets.floors import Floors
from setwright.sheets.phrases import say
from setwright.sheets.sessions import day_title
from setwright.sheets.view import Cell, DayColumn, Entry, PartRow, Picture, Remark, WeekSheet

DAYS_IN_A_ROW: Final = 3
"""Day columns side by side (choice: the longest movement name fits in two lines)."""

SHORT_COLUMN: Final = 4
"""Moves of a session that stand in one column before a second one is begun (choice)."""

PICTURES: Final = 4
"""Pictures in the row (choice: what 60 mm pictures leave room for on both papers)."""

PROPOSED: Final = 2
"""Places of the row that proposed moves may take (choice)."""

NAMES_IN_A_CELL: Final = 2
"""Moves named in a cell; more are counted (choice)."""

BRIEF: Final = 15
"""Letters of a movement's name in a cell from which dispensable words go (choice: two fit in a line)."""


_TONES: Final = {"yes": "much", "partly": "some", "no": "none", "cannot be": "none"}


def week_sheet(checked: Checked, week: Week, coverage: Coverage, mark: str, floors: Floors) -> WeekSheet:
    """What stands on the overview of ``week``; ``mark``: version and print date for the footer."""
    writer = Writer(week, checked.table or library())
    gaps = [f for f in checked.findings if f.level >= Level.gap and not f.to_others]
    columns = tuple(_day(session, writer, floors) for session in coverage.sessions)
    if len(columns) == 1:
        columns = tuple(_spread(columns[0]))
    counts = overview_words.counts(str(coverage.pull), str(coverage.push), coverage.unscored)
    rows = zip(checked.matrix, coverage.parts, strict=False)
    return WeekSheet(
        title=week.title,
        subtitle=words.joined(_facts(week)),
        footer=words.footer(week, mark),
        note=week.note,
        days=tuple(columns[n : n + DAYS_IN_A_ROW] for n in range(0, len(columns), DAYS_IN_A_ROW)),
        matrix=tuple(_row(row, part, gaps) for row, part in rows),
        counts=counts if checked.matrix else overview_words.without_matrix(coverage.chest, counts),
        remarks_title=overview_words.remarks_title(len(gaps), len(checked.allowed)),
        remarks=tuple(_remarks(gaps, checked)),
        pictures=tuple(_pictures(gaps, coverage, library())) if checked.matrix else (),
    )


def _facts(week: Week) -> Iterator[str]:
    """Start, people, room."""
    if week.starts:
        begins = week.starts + dt.timedelta(weeks=week.number - 1)
        yield say("overview.begins", date=words.long_date(begins))
    if week.lighter:
        yield week.lighter.text
    people = len(week.squad.athletes) if week.squad and week.squad.athletes else week.people
    if people:
        yield say("page.one_person") if people == 1 else say("page.people", count=people)
    if week.gym and week.gym.name:
        yield week.gym.name


def _day(covered: SessionCover, writer: Writer, floors: Floors) -> DayColumn:
    session = covered.session
    used, limit = _minutes(covered, floors), session.minutes
    longest = max(used, limit or 0) or 1
    return DayColumn(
        title=day_title(session, writer.week),
        minutes=overview_words.minutes(used, limit),
        used=round(100 * used / longest, 1),
        limit=round(100 * limit / longest, 1) if limit else None,
        entries=tuple(_entries(session, writer)),
    )


def _minutes(covered: SessionCover, floors: Floors) -> float:
    """Minutes of the session: those of its timetable, or of one person where it has none."""
    floor = floors.get(covered.session.place)
    return floor.whole_s / MINUTE_S if floor else covered.minutes


def _spread(day: DayColumn) -> Iterator[DayColumn]:
    """A session that stands alone, over the columns of the page; groups stay whole."""
    height = max(ceil(len(day.entries) / DAYS_IN_A_ROW), SHORT_COLUMN)
    columns: list[list[Entry]] = [[]]
    for entry in day.entries:
        last = columns[-1]
        if len(last) >= height and (entry.group is None or entry.group != last[-1].group):
            columns.append([])
        columns[-1].append(entry)
    for number, entries in enumerate(columns):
        yield replace(day, entries=tuple(entries), continued=number > 0)


def _entries(session: Session, writer: Writer) -> Iterator[Entry]:
    for number, entry in enumerate(session.work):
        group = entry if isinstance(entry, Group) else None
        for item in (entry,) if isinstance(entry, Item) else entry.items:
            line = writer.library.movement(item.key).get("line") if item.key else None
            yield Entry(
                name=writer.name(item),
                dose=words.sets_only(dose_text(item, group)),
                line=None if line == "none" else line,
                group=number if group else None,
            )


def _row(row: MatrixRow, cover: PartCover, gaps: list[Finding]) -> PartRow:
    return PartRow(
        part=row.part,
        sets=_cell(row.sets, gaps),
        follows=_cell(row.follows, gaps, _names(cover.served_by)),
        long=_cell(row.long, gaps),
        short=_cell(row.short, gaps),
        across=_cell(row.across, gaps),
        heaviest=replace(
            _cell(row.heaviest, gaps, brief(cover.heaviest.name, BRIEF) if cover.heaviest else ""), tone=None
        ),
    )


def _cell(answer: Answer, gaps: list[Finding], text: str = "") -> Cell:
    """An answer in the words of paper; a gap carries the number of the remark that speaks of it."""
    told = words.decimals((text or answer.text).lower().replace(" deg", "°"))
    gap = answer.finding in gaps if answer.finding else False
    number = f" ({gaps.index(answer.finding) + 1})" if gap and answer.finding else ""
    return Cell(f"{told}{number}", _TONES.get(answer.tone), gap)


def _names(works: tuple[Work, ...]) -> str:
    names = list(dict.fromkeys(brief(work.name, BRIEF) for work in works))
    more, named = len(names) - NAMES_IN_A_CELL, ", ".join(names[:NAMES_IN_A_CELL])
    return say("list.and_more", named=named, count=more) if more > 0 else named


def _remarks(gaps: list[Finding], checked: Checked) -> Iterator[Remark]:
    for number, finding in enumerate(gaps, start=1):
        yield Remark(
            f"{number}. {words.sentence(finding.message)}", words.sentence(words.typeset(finding.change))
        )
    for silenced in checked.allowed:
        yield Remark(
            words.sentence(silenced.finding.message), say("overview.accepted", reason=silenced.reason)
        )


def _pictures(gaps: list[Finding], coverage: Coverage, table: Library) -> Iterator[Picture]:
    """Lead lifts, then what is proposed; without a proposal, the crossing moves of the week.

    Movements of the plan's own have no picture yet.
    """
    proposed = [key for key in dict.fromkeys(_proposed(gap, table) for gap in gaps) if key][:PROPOSED]
    lifts = [part.heaviest for part in coverage.parts if part.heaviest]
    crossing = [work for work in coverage.works if work.crossing]
    shown = dict.fromkeys(
        str(work.movement["key"]) for work in (*lifts, *crossing) if is_drawn(work.movement)
    )
    for key in list(shown)[: PICTURES - len(proposed)]:
        yield Picture(key, str(table.movement(key)["name"]))
    for key in proposed:
        yield Picture(key, say("overview.add", name=table.movement(key)["name"]))


def _proposed(finding: Finding, table: Library) -> str | None:
    """The scored movement that a finding proposes: the longest library name that stands before a dose."""
    named = [name for name in table.names() if f"{name}: " in finding.change]
    key = table.find(max(named, key=len)).key if named else None
    return key if key and table.movement(key)["scored"] else None
